"""Drillings square to the face against the slots and the outline, on the exact curves.

A slot's wall stands from the face to the slot's bottom; a drilling that ends
above or below that is measured round the corner. The outline stands full height.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec import Struct

from geometry import vectors as v
from geometry.checks import drill_points
from geometry.checks.items import Item, plan
from geometry.checks.kinds import outline_kind, slot_kind
from geometry.checks.pockets import clear_of, wall_of
from geometry.checks.scene import Opening
from geometry.checks.snags import Snag, grade, short
from geometry.checks.words import clearance, first, gap_text, into, mm, name, sort_of
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.pointed import beside_cone
from geometry.solids.walls import Wall
from geometry.solids.ways_out import from_slot, upright_from_outside
from geometry.tolerance import FLAT
from geometry.vectors import Vec2


def wanted_to_slot(drilling: Drilling, margins: Margins) -> float:
    """Wood wanted between a drilling and a slot's wall, mm."""
    return {"screw": margins.screw_any, "pin hole": margins.screw_any,
            "locating pin": margins.pin_any}.get(sort_of(drilling), margins.bore_slot)


def wanted_to_outline(drilling: Drilling, margins: Margins) -> float:
    """Wood wanted between a drilling and the outline, mm."""
    return {"screw": margins.screw_outline, "pin hole": margins.screw_outline,
            "locating pin": margins.pin_any}.get(sort_of(drilling), margins.bore_outline)


def reaches(items: Sequence[Item], margins: Margins) -> list[list[float]]:
    """How far about the middle of each upright drilling of each item there may be a wall that matters, mm."""
    most = 2 * FLAT + max(margins.bore_outline, margins.screw_outline, margins.pin_any, margins.bore_slot, margins.screw_any)
    return [[item.drillings[i].radius + most for i in item.upright] for item in items]


class Miss(Struct, frozen=True):
    """What a drilling has of the wood that it wants beside a wall (mm), and the plan move that it lacks; nothing is said of it yet."""

    drilling: Drilling
    measured: float
    needed: float
    push: Vec2

    @property
    def lacks(self) -> float:
        """mm"""
        return self.needed - self.measured


def at_outline(item: Item, near: list[int], outline: Wall, margins: Margins) -> list[Snag]:
    """Snags of some upright drillings of an item, by their numbers, with the outline."""
    return [_said_of_outline(miss, outline) for miss in _worst(item, near, [
        _at_outline(item.drillings[i], outline, margins) for i in near])]


def at_slot(item: Item, near: list[int], opening: Opening, margins: Margins) -> list[Snag]:
    """The same with a slot."""
    found = [_said_of_slot(miss, opening) for miss in _worst(item, near, [_at_slot(item.drillings[i], opening, margins) for i in near])]
    for i in near:
        # From the face a drill's point goes down beside the wall, narrower than the full diameter.
        if item.ahead[i] and item.drillings[i].direction[2] < 0:
            found += _by_point(item, item.drillings[i], item.ahead[i], opening, margins)
    return found


def _by_point(item: Item, drilling: Drilling, ahead: float, opening: Opening, margins: Margins) -> list[Snag]:
    """The snag of a drill's point that comes up from the back too near to a slot's floor."""
    above, aside = drilling.end[2] - opening.depth, max(0.0, -opening.wall.inside(plan(drilling.start)))
    if above < 0:
        return []
    wood = wanted_to_slot(drilling, margins)
    needed = drill_points.wanted(drilling, wood, slot_gap(aside - drilling.radius, above))
    measured = beside_cone(drilling.radius, ahead, aside, above)
    if not short(measured, needed):
        return []
    return [drill_points.snag(item, drilling, ahead, say("floor of {slot}", slot=opening.id), (item.id, opening.id), measured, needed, wood,
                              lambda less: beside_cone(less.radius, ahead, aside, less.end[2] - opening.depth))]


def _worst(item: Item, met: list[int], found: list[Miss | None]) -> list[Miss]:
    """Of each hole only the drilling that misses most."""
    best: dict[int, Miss] = {}
    for i, miss in zip(met, found, strict=True):
        hole = item.hole_of[i]
        if miss is not None and (hole not in best or miss.lacks > best[hole].lacks):
            best[hole] = miss
    return list(best.values())


def _at_outline(drilling: Drilling, outline: Wall, margins: Margins) -> Miss | None:
    needed = wanted_to_outline(drilling, margins)
    pin = drilling.waste_too
    centre = plan(drilling.start)
    inside = outline.inside(centre)
    measured = (abs(inside) if pin else inside) - drilling.radius
    if not short(measured, needed):
        return None
    if measured < 0:
        out = upright_from_outside(centre, drilling.radius, outline, either_side=pin)
        if out is not None and out.depth > -measured + FLAT:
            return Miss(drilling, -out.depth, needed, v.scale(out.plan, out.depth + needed))
    return Miss(drilling, measured, needed, _lacking(drilling, outline, None, margins))


def _said_of_outline(miss: Miss, outline: Wall) -> Snag:
    drilling, measured, needed = miss.drilling, miss.measured, miss.needed
    centre = plan(drilling.start)
    inside, pin, called = outline.inside(centre), drilling.role == "locating", first(name(drilling))
    cure = say("Reshape the outline, or choose other hardware.")
    if inside <= -drilling.radius and not drilling.waste_too:
        cure = say("Move {part} onto the head, or take it away.", part=drilling.of)
        text = say("{called} lies outside the outline, {inside} mm from it to the middle.",
                   called=called, inside=into(inside))
    elif measured < 0 and pin:
        text = say("{called} is cut by the outline: put it at least {needed} mm inside or outside it.",
                   called=called, needed=mm(needed))
    else:
        text = clearance(measured, needed, "{called} breaks out of the outline by {measured} mm; {needed} mm of wood wanted.",
                         "{called} leaves {a} mm of wood to the outline; {b} mm wanted.", called=called, needed=mm(needed))
    foot = outline.foot(centre)
    where = (*v.middle(foot.point, _rim(drilling, foot.point)), drilling.start[2])
    return Snag(outline_kind(sort_of(drilling)), grade(measured), (drilling.of, OUTLINE), where, measured, needed,
                text, cure, push=miss.push)


def _at_slot(drilling: Drilling, opening: Opening, margins: Margins) -> Miss | None:
    if drilling.there and opening.there:
        return None  # whatever is between them, nothing of it is cut
    needed = wanted_to_slot(drilling, margins)
    above = _above(drilling, opening)
    if above >= needed:
        return None
    aside = -opening.wall.inside(plan(drilling.start)) - drilling.radius
    measured = slot_gap(aside, above)
    if not short(measured, needed):
        return None
    if measured < 0:
        out = from_slot(drilling, opening.slot, opening.wall)
        return Miss(drilling, -out.depth, needed, v.scale(out.plan, out.depth + needed))
    return Miss(drilling, measured, needed, _lacking(drilling, opening.wall, opening, margins))


def _above(drilling: Drilling, opening: Opening) -> float:
    """How much wood there is between a slot's floor and a drilling that ends below it, mm."""
    return max(0.0, min(drilling.start[2], drilling.end[2]) - opening.depth)


def _said_of_slot(miss: Miss, opening: Opening) -> Snag:
    drilling, measured, needed = miss.drilling, miss.measured, miss.needed
    foot = opening.wall.foot(plan(drilling.start))
    ends = drilling.start[2], drilling.end[2]
    level = min(ends) if _above(drilling, opening) else sum(ends) / 2
    return Snag(slot_kind(sort_of(drilling)), grade(measured), (drilling.of, opening.id),
                (*v.middle(foot.point, _rim(drilling, foot.point)), level), measured, needed,
                gap_text(name(drilling), wall_of(opening), measured, needed),
                clear_of(opening.id) if opening.there else say("Reshape {opening}, or choose other hardware.", opening=opening.id),
                push=miss.push)


def slot_gap(aside: float, above: float) -> float:
    """Gap in mm from the gap in plan (negative: overlap) and the wood between the slot's bottom and the drilling."""
    if above > 0:
        return math.hypot(max(0.0, aside), above)
    return aside


def _rim(drilling: Drilling, toward_: Vec2) -> Vec2:
    centre = plan(drilling.start)
    return v.along(centre, v.unit(v.sub(toward_, centre)), drilling.radius)


def _lacking(drilling: Drilling, wall: Wall, opening: Opening | None, margins: Margins) -> Vec2:
    """The plan move that a drilling needs to be clear of the outline or of a slot by the nearest way."""
    centre = plan(drilling.start)
    foot = wall.foot(centre)
    away = v.sub(centre, foot.point)
    inside = wall.inside(centre)
    if v.norm(away) < 1e-9:
        # On the wall itself: leave to the side where the drilling belongs, in the outline or out of the slot.
        away, keep = v.left(foot.tangent) if opening is None else v.right(foot.tangent), 1.0
    elif opening is None:
        keep = 1.0 if inside > 0 or drilling.waste_too else -1.0
    else:
        keep = 1.0 if inside < 0 else -1.0
    has = keep * foot.distance - drilling.radius
    if opening is None:
        needed = wanted_to_outline(drilling, margins)
    else:
        has = slot_gap(has, _above(drilling, opening))
        needed = wanted_to_slot(drilling, margins)
    return v.scale(v.unit(away), keep * (needed - has)) if short(has, needed) else (0.0, 0.0)
