"""The drills that the layout asks for, against those in the rack, and the drill press that turns them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from geometry.checks.around import Around
from geometry.checks.drills import Drills
from geometry.checks.items import Item
from geometry.checks.said import length
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, Snag, short
from geometry.checks.words import both, listed, size
from geometry.layout.shop import Drill
from geometry.saying import say
from geometry.solids.drilling import Drilling, misfit
from geometry.terms import term

_NAMED = 3


def snags(scene: Scene) -> Iterable[Snag]:
    """Notes of diameters that the rack lacks, or holds a drill for that is a little wider or narrower."""
    return scene.memo.of(_told, scene.memo.snags_together(_unmet, scene.items, scene.drills))


def _told(found: tuple[tuple[Drill | None, str, Drilling], ...]) -> tuple[Snag, ...]:
    unmet: dict[tuple[float, str], list[tuple[Drill | None, str, Drilling]]] = {}
    for drill, id, drilling in found:
        unmet.setdefault((drilling.diameter, drill.id if drill else ""), []).append((drill, id, drilling))
    told = []
    for (diameter, _), wanted in sorted(unmet.items()):
        drill, _, drilling = wanted[0]
        ids = tuple(dict.fromkeys(id for _, id, _ in wanted))
        named = listed(list(ids[:_NAMED]) + ([say("{n} more", n=len(ids) - _NAMED)] if len(ids) > _NAMED else []))
        if drill is None:
            told.append(Snag("no-drill", NOTE, ids, drilling.start, None, None,
                             say("The rack holds no {diameter} mm drill for {named}.", diameter=size(diameter), named=named),
                             say("Enter the drill in the rack, or change the hardware pattern to one you have.")))
        else:
            told.append(_other_size(drill, drilling, ids, named))
    return tuple(told)


def _other_size(drill: Drill, drilling: Drilling, ids: tuple[str, ...], named: str) -> Snag:
    wider = misfit(drill, drilling)
    words = {"drill": drill.id, "named": named, "by": length(abs(wider), 2), "diameter": size(drilling.diameter)}
    said, advice = (
        (say("The nearest drill in the rack for {named} is {drill}: it drills {by} mm wider than the {diameter} mm asked for.", **words),
         say("What is pressed or screwed in would sit looser: try the part in scrap first, or enter a drill of that size in the rack."))
        if wider > 0 else
        (say("The nearest drill in the rack for {named} is {drill}: it drills {by} mm narrower than the {diameter} mm asked for.", **words),
         say("The part may not go in: try it in scrap first, or enter a drill of that size in the rack.")))
    return Snag("drill-size", NOTE, ids, drilling.start, None, None, said, advice)


def _unmet(items: Sequence[Item], drills: Drills) -> list[tuple[tuple[Drill | None, str, Drilling], ...]]:
    """(the nearest drill that the rack has, the item, its first drilling so wide) of each diameter of an item that the rack does not hold."""
    found = []
    for item in items:
        unmet: dict[tuple[float, str], tuple[Drill | None, str, Drilling]] = {}
        for drilling in item.drillings:
            if not drilling.there:
                drill = drills.find(drilling)
                if drill is None or drill.diameter != drilling.diameter and misfit(drill, drilling):
                    unmet.setdefault((drilling.diameter, drilling.drill), (drill, item.id, drilling))
        found.append(tuple(unmet.values()))
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
    there, wanted = both(most, deep)
    words = {"operation": term(drilling.operation), "item": item.id, "deep": wanted, "most": there}
    return Snag(kind, NOTE, (item.id,), drilling.mark or drilling.start, most, deep,
                say("The {operation} of {item} goes {deep} mm deep, to the drill's point; the quill travels {most} mm.", **words)
                if kind == "quill" else
                say("The {operation} of {item} goes {deep} mm deep, to the drill's point; the drill is only {most} mm long.",
                    **words), cure)
