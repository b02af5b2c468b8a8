"""The strings of a scene with their tuners, remembered while nut, string and tuner stay the same."""

from __future__ import annotations

from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.layout.strings import String
from geometry.strings.nut import nut_places
from geometry.strings.runs import Run, run_to


def scene_runs(scene: Scene) -> list[tuple[Run, Item]]:
    """(run, tuner in its place) of every string that has one, in the order of the tuners."""
    layout = scene.layout
    known = dict(zip((s.id for s in layout.strings), zip(
        layout.strings, scene.memo.of(nut_places, layout.nut, layout.strings), strict=True), strict=True))
    found = []
    for item in scene.items:
        if item.frame is not None and item.tuner.string in known:
            string, x = known[item.tuner.string]
            run = scene.memo.of(_run, item, string, x, layout.nut.height)
            if run is not None:
                found.append((run, item))
    return found


def _run(item: Item, string: String, x: float, nut_height: float) -> Run | None:
    return run_to(item.tuner, item.frame, item.pattern.post, string, x, nut_height)
