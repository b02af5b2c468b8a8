"""The drills that the layout asks for, against those in the rack, and the drill press that turns them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from geometry.checks.around import Around
from geometry.checks.drills import Drills
from geometry.checks.items import Item
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, Snag, short
from geometry.checks.words import listed, mm, size
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.terms import term

_NAMED = 3


def snags(scene: Scene) -> Iterable[Snag]:
    """Notes of diameters that the rack lacks."""
    lacking: dict[float, list[tuple[str, Drilling]]] = {}
    for diameter, id, drilling in scene.memo.snags_together(_missing, scene.items, scene.drills):
        lacking.setdefault(diameter, []).append((id, drilling))
    for diameter, wanted in sorted(lacking.items()):
        ids = tuple(dict.fromkeys(id for id, _ in wanted))
        named = list(ids[:_NAMED]) + ([say("{n} more", n=len(ids) - _NAMED)] if len(ids) > _NAMED else [])
        yield Snag("no-drill", NOTE, ids, wanted[0][1].start, None, None,
                   say("The rack holds no {diameter} mm drill for {named}.",
                       diameter=size(diameter), named=listed(named)),
                   say("Enter the drill in the rack, or change the hardware pattern to one you have."))


def _missing(items: Sequence[Item], drills: Drills) -> list[tuple[tuple[float, str, Drilling], ...]]:
    """(diameter that the rack lacks in mm, the item, its first drilling of it) of each item."""
    found = []
    for item in items:
        lacking: dict[float, tuple[float, str, Drilling]] = {}
        for drilling in item.drillings:
            if not drilling.there and drills.find(drilling) is None:
                lacking.setdefault(drilling.diameter, (drilling.diameter, item.id, drilling))
        found.append(tuple(lacking.values()))
    return found


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Notes of the deepest drilling of an item that goes farther than the quill in one travel, or farther than its drill."""
    drills, press = around.drills, around.press
    beyond_quill: tuple[float, float, Drilling] | None = None
    beyond_drill: tuple[float, float, Drilling] | None = None
    for drilling in item.drillings:
        if drilling.there:
            continue
        drill, point = drills.both(drilling)
        deep = drilling.stop + point
        if drilling.role == "locating":  # through the template too
            deep += around.template.thickness
        if deep <= press.quill and (drill is None or deep <= drill.length):
            continue
        if short(press.quill, deep) and (beyond_quill is None or deep > beyond_quill[0]):
            beyond_quill = (deep, press.quill, drilling)
        if drill and short(drill.length, deep) and (beyond_drill is None or deep > beyond_drill[0]):
            beyond_drill = (deep, drill.length, drilling)
    found = []
    if beyond_quill:
        found.append(_too_deep("quill", item, *beyond_quill,
                               say("Raise the table and drill on in a second travel.")))
    if beyond_drill:
        found.append(_too_deep("drill-short", item, *beyond_drill,
                               say("Enter a longer drill in the rack.")))
    return tuple(found)


def _too_deep(kind: str, item: Item, deep: float, most: float, drilling: Drilling, cure: str) -> Snag:
    words = {"operation": term(drilling.operation), "item": item.id, "deep": mm(deep), "most": mm(most)}
    return Snag(kind, NOTE, (item.id,), drilling.mark or drilling.start, most, deep,
                say("A {operation} of {item} goes {deep} mm deep, to the drill's point; the quill travels {most} mm.", **words)
                if kind == "quill" else
                say("A {operation} of {item} goes {deep} mm deep, to the drill's point; the drill is as long as {most} mm.",
                    **words), cure)
