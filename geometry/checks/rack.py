"""The drills that the layout asks for, against those in the rack, and the drill press that turns them."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.side_reach import drill_of
from geometry.checks.snags import NOTE, Snag, short
from geometry.checks.words import listed, mm
from geometry.layout.shop import Drill, DrillPress
from geometry.solids.drilling import Drilling, point_length

_NAMED = 3


def snags(scene: Scene) -> Iterable[Snag]:
    """Notes of diameters that the rack lacks, and of holes deeper than the drill or the quill goes."""
    rack = scene.layout.rack
    lacking: dict[float, list[tuple[str, Drilling]]] = {}
    for item in scene.items:
        for diameter, drilling in scene.memo.of(_missing, item, rack.drills):
            lacking.setdefault(diameter, []).append((item.id, drilling))
        yield from scene.memo.of(_deep, item, rack.drills, rack.press)
    for diameter, wanted in sorted(lacking.items()):
        ids = tuple(dict.fromkeys(id for id, _ in wanted))
        named = list(ids[:_NAMED]) + ([f"{len(ids) - _NAMED} more"] if len(ids) > _NAMED else [])
        yield Snag("no-drill", NOTE, ids, wanted[0][1].start, None, None,
                   f"The rack holds no {diameter:g} mm drill for {listed(named)}.",
                   "Enter the drill in the rack, or change the hardware pattern to one you have.")


def _missing(item: Item, drills: tuple[Drill, ...]) -> tuple[tuple[float, Drilling], ...]:
    found: dict[float, Drilling] = {}
    for drilling in item.drillings:
        if drilling.diameter not in found and drill_of(drills, drilling) is None:
            found[drilling.diameter] = drilling
    return tuple(found.items())


def _deep(item: Item, drills: tuple[Drill, ...], press: DrillPress) -> tuple[Snag, ...]:
    """The deepest drilling of an item that goes farther than the quill in one travel, or farther than its drill."""
    found = []
    for limit, kind, said, cure in (
            (lambda d, drill: press.quill, "quill", "the quill travels",
             "Raise the table and drill on in a second travel."),
            (lambda d, drill: drill.length if drill else None, "drill-short", "the drill is long",
             "Enter a longer drill in the rack.")):
        worst: tuple[float, float, Drilling] | None = None
        for drilling in item.drillings:
            drill = drill_of(drills, drilling)
            most = limit(drilling, drill)
            deep = drilling.stop + (point_length(drill) if drill else 0.0)
            if most is not None and short(most, deep) and (worst is None or deep - most > worst[1] - worst[0]):
                worst = (most, deep, drilling)
        if worst is not None:
            most, deep, drilling = worst
            found.append(Snag(kind, NOTE, (item.id,), drilling.mark or drilling.start, most, deep,
                              f"A {drilling.operation} of {item.id} goes {mm(deep)} mm deep, to the drill's point; "
                              f"{said} {mm(most)} mm.", cure))
    return tuple(found)
