"""String retainers: whether each is screwed to the face, holds a string down, and has its screw beside the strings."""

from __future__ import annotations

from collections.abc import Iterable

from geometry import vectors as v
from geometry.checks.scene import Scene
from geometry.checks.snags import FACE, NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import both, into
from geometry.layout.slots import SingleHole
from geometry.saying import say
from geometry.strings.retainers import over, pressed
from geometry.strings.runs import Run


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every hole that carries a retainer."""
    runs = [run for run, _ in scene.runs]
    for hole in scene.layout.holes:
        if hole.retainer is None:
            continue
        if not hole.opens(scene.layout.blank.thickness):
            yield Snag("retainer-no-hole", TIGHT, (hole.id, FACE), (*hole.at, 0.0), None, None,
                       say("The retainer on {hole} is screwed to the face, where there is no hole: it is drilled from the back and does not come "
                           "through.", hole=hole.id),
                       say("Drill it from the face."))
            continue
        if not any(_holds(hole, run) for run in runs):
            yield Snag("retainer-idle", NOTE, (hole.id,), (*hole.at, 0.0), None, None,
                       say("The retainer on {hole} holds no string down: none passes under it higher than it reaches.", hole=hole.id),
                       say("Set it lower, make it wider, or move it under the strings."))
        for run in runs:
            yield from _beside(hole, run, scene.layout.margins.string_air)


def _holds(hole: SingleHole, run: Run) -> bool:
    """Whether a retainer by itself holds a string down."""
    return bool(pressed(run.nut_height, run.length, run.height, over(run.nut, run.post, (hole,))))


def _beside(hole: SingleHole, run: Run, needed: float) -> Iterable[Snag]:
    """The air between the screw and a string that passes it above the face, as seen on the face; the screw is no thinner than its pilot."""
    near = v.nearest_between(run.nut, run.post, hole.at)
    apart = v.distance(near, hole.at)
    measured = apart - (hole.diameter + run.diameter) / 2
    height = run.level(v.distance(run.nut, near))
    if not short(measured, needed) or height < -run.diameter / 2:
        return
    a, b = both(measured, needed)
    words = {"string": run.string, "tuner": run.tuner, "hole": hole.id}
    text = (say("String {string} on its way to {tuner} runs {measured} mm into the screw of the retainer on {hole}.", measured=into(measured), **words)
            if measured < 0 else
            say("String {string} on its way to {tuner} passes {a} mm from the screw of the retainer on {hole}; {b} mm wanted.", a=a, b=b, **words))
    way = v.unit(v.sub(run.post, run.nut))
    aside = v.right(way) if v.cross(way, v.sub(hole.at, run.nut)) <= 0 else v.left(way)
    yield Snag("string-to-screw", grade(measured), (hole.id, run.tuner), (*near, -height), measured, needed, text,
               say("Set the screw between two strings, or beside all of them."), push=v.scale(aside, needed - measured))
