"""The feather edges of a scarf joint: on a face or back without a veneer over it the wood runs out to nothing at the glue line."""

from __future__ import annotations

from collections.abc import Iterable

from geometry import vectors as v
from geometry.checks.items import Item
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import NOTE, TIGHT, Snag, short
from geometry.checks.words import aslant, clearance, few, name, tenths
from geometry.layout.blank import Blank
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.ramps import ramp_cut
from geometry.solids.scarf import Scarf, scarf_of

MOST_NAMED = 6
"""Features that one note names."""


def snags(scene: Scene) -> Iterable[Snag]:
    """A snag for every screw or pin that comes near a feather edge; one note a surface for bores and slots that do."""
    blank, nut, margin = scene.layout.blank, scene.layout.nut, scene.layout.margins.feather
    for back in (False, True):
        if open_joint(blank, nut, back) is None:
            continue
        yield from scene.memo.snags(_screws, scene.items, blank, nut, back, margin)
        bored = scene.memo.each(_bored, scene.items, blank, nut, back, margin)
        cut = scene.memo.each(_cut, scene.to_rout, blank, nut, back, margin)
        names = [one.id for one, is_near in zip((*scene.items, *scene.to_rout), (*bored, *cut), strict=True) if is_near]
        if names:
            yield scene.memo.of(_met, blank, nut, back, *names)


def _met(blank: Blank, nut: Nut, back: bool, *names: str) -> Snag:
    where = (0.0, open_joint(blank, nut, back).y(0.0, back), blank.thickness if back else 0.0)
    some = few(names, MOST_NAMED)
    return Snag("feather-edge", NOTE, names, where, None, None,
                say("The feather edge of the scarf joint on the back meets {some}.", some=some) if back else
                say("The feather edge of the scarf joint on the face meets {some}.", some=some),
                say("It chips and lifts where a tool comes out of it: clamp a board over it, use sharp tools and go slowly there. "
                    "A veneer glued over it holds it down."))


def open_joint(blank: Blank, nut: Nut, back: bool) -> Scarf | None:
    """The joint where its feather edge on the face or the back lies bare in the head; None elsewhere, and under a veneer."""
    joint = scarf_of(blank, nut)
    if joint is None or (blank.back_veneer if back else blank.face_veneer) or not 0.0 <= joint.y(0.0, back) <= blank.tip:
        return None
    return joint


def _opened(item: Item, back: bool, pilots: bool) -> list[Drilling]:
    """What is drilled square to the face and open at that surface: pilots of screws and pins, or all the rest."""
    return [d for i in item.upright if (item.ranks[i] == 1) == pilots and not (d := item.drillings[i]).there
            and (d.through or d.surface == ("back" if back else "face"))]


def _screws(item: Item, blank: Blank, nut: Nut, back: bool, margin: float) -> tuple[Snag, ...]:
    joint, found = open_joint(blank, nut, back), []
    for d in _opened(item, back, True):
        off = joint.off(d.start[:2], back)
        measured = abs(off) - d.radius
        if not short(measured, margin):
            continue
        said = clearance(measured, margin, "The feather edge of the scarf joint runs {measured} mm inside the {name}.",
                         "{a} mm from the {name} to the feather edge of the scarf joint, {b} mm wanted.", name=name(d))
        away = margin - measured
        found.append(Snag("feather-screw", TIGHT, (item.id,), (d.start[0], joint.y(d.start[0], back), d.start[2]), measured, margin, said,
                          say("Move {item} by {away} mm along the head, or glue a veneer over the joint.", item=item.id,
                              away=tenths(aslant(away, nut.ahead[1]))),
                          push=v.scale(nut.ahead, away if off >= 0 else -away)))
    return tuple(found)


def _bored(item: Item, blank: Blank, nut: Nut, back: bool, margin: float) -> bool:
    joint = open_joint(blank, nut, back)
    return any(short(abs(joint.off(d.start[:2], back)) - d.radius, margin) for d in _opened(item, back, False))


def _cut(opening: Opening, blank: Blank, nut: Nut, back: bool, margin: float) -> bool:
    """Whether a slot's wall at that surface, or its ramp on the face, comes near the line."""
    if back and opening.slot.depth is not None:
        return False
    joint, ramp = open_joint(blank, nut, back), None if back else ramp_cut(opening.slot)
    points = [*opening.wall.points.tolist(), *(() if ramp is None else (one.start for one in ramp.path().segments))]
    off = [joint.off(point, back) for point in points]
    return short(max(min(off), -max(off)), margin)
