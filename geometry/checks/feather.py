"""The feather edges of a scarf joint: on a face or back without a veneer over it the wood runs out to nothing at the glue line."""

from __future__ import annotations

from collections.abc import Iterable

from geometry.checks.items import Item
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import NOTE, TIGHT, Snag, short
from geometry.checks.words import both, few, into, name, tenths
from geometry.layout.blank import Blank
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.scarf import scarf_of

MOST_NAMED = 6
"""Features that one note names."""


def snags(scene: Scene) -> Iterable[Snag]:
    """A snag for every screw or pin that comes near a feather edge; one note a surface for bores and slots that do."""
    blank, pitch, margin = scene.layout.blank, scene.layout.nut.pitch, scene.layout.margins.feather
    for back in (False, True):
        y = line_y(blank, pitch, back)
        if y is None:
            continue
        yield from scene.memo.snags(_screws, scene.items, blank, pitch, back, margin)
        near = scene.memo.each(_bored, scene.items, blank, pitch, back, margin)
        cut = [opening.id for opening in scene.to_rout if _cut(opening, y, back, margin)]
        names = [item.id for item, is_near in zip(scene.items, near, strict=True) if is_near] + cut
        if names:
            where = (0.0, y, blank.thickness if back else 0.0)
            some = few(names, MOST_NAMED)
            yield Snag("feather-edge", NOTE, tuple(names), where, None, None,
                       say("The feather edge of the scarf joint on the back meets {some}.", some=some) if back else
                       say("The feather edge of the scarf joint on the face meets {some}.", some=some),
                       say("It chips and lifts where a tool comes out of it: clamp a board over it, use sharp tools and go slowly there. "
                           "A veneer glued over it holds it down."))


def line_y(blank: Blank, pitch: float, back: bool) -> float | None:
    """y of the feather edge on the face or the back (mm); None where there is none in the head, or a veneer lies over it."""
    joint = scarf_of(blank, pitch)
    if joint is None or (blank.back_veneer if back else blank.face_veneer):
        return None
    y = joint.back if back else joint.face
    return y if 0.0 <= y <= blank.tip else None


def _opened(item: Item, back: bool, pilots: bool) -> list[Drilling]:
    """What is drilled square to the face and open at that surface: pilots of screws and pins, or all the rest."""
    return [d for i in item.upright if (item.ranks[i] == 1) == pilots and not (d := item.drillings[i]).there
            and (d.through or d.surface == ("back" if back else "face"))]


def _screws(item: Item, blank: Blank, pitch: float, back: bool, margin: float) -> tuple[Snag, ...]:
    y = line_y(blank, pitch, back)
    found = []
    for d in _opened(item, back, True):
        measured = abs(d.start[1] - y) - d.radius
        if not short(measured, margin):
            continue
        if measured < 0:
            said = say("The feather edge of the scarf joint runs {measured} mm inside the {name}.", measured=into(measured), name=name(d))
        else:
            is_there, wanted = both(measured, margin)
            said = say("{is_there} mm from the {name} to the feather edge of the scarf joint, {wanted} mm wanted.",
                       is_there=is_there, name=name(d), wanted=wanted)
        away = margin - measured
        found.append(Snag("feather-screw", TIGHT, (item.id,), (d.start[0], y, d.start[2]), measured, margin, said,
                          say("Move {item} {away} mm along the head, or glue a veneer over the joint.", item=item.id, away=tenths(away)),
                          push=(0.0, away if d.start[1] >= y else -away)))
    return tuple(found)


def _bored(item: Item, blank: Blank, pitch: float, back: bool, margin: float) -> bool:
    y = line_y(blank, pitch, back)
    return any(short(abs(d.start[1] - y) - d.radius, margin) for d in _opened(item, back, False))


def _cut(opening: Opening, y: float, back: bool, margin: float) -> bool:
    """Whether a slot's wall at that surface comes near the line."""
    if back and opening.slot.depth is not None:
        return False
    low, high = opening.wall.line.bounds[1::2]
    return short(max(low - y, y - high), margin)
