"""Drillings against the ramps of slots: wood above, beside and before a slope that goes down from the face.

A side bore may pass the ramp of the slot that it opens into, but for what of
that is wider than the slot and lies over the rail; a locating pin has done its
work when the ramp is filed.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import drill_points
from geometry.checks.hole_walls import wanted_to_slot
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening, Scene
from geometry.checks.side_walls import first_on_the_way
from geometry.checks.snags import Snag, grade, short
from geometry.checks.words import gap_text, name, sort_of
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.ramp_gap import from_ramp
from geometry.solids.ramps import RampCut, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.tolerance import TOUCH


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every drilling with every ramp; of each hole the worst."""
    for opening in scene.openings:
        if opening.slot.ramp is not None:
            yield from scene.memo.snags(_ramp, scene.items, opening, scene.openings, scene.layout.margins)


def _ramp(item: Item, opening: Opening, openings: tuple[Opening, ...], margins: Margins) -> tuple[Snag, ...]:
    if not item.drillings or item.what == "pin":
        return ()
    cut = ramp_cut(opening.slot)
    taken = Wall(cut.path()).area
    axes = shapely.linestrings([[plan(d.start), plan(d.end)] for d in item.drillings])
    far = shapely.distance(axes, taken)
    worst: dict[int, Snag] = {}
    pointed: list[Snag] = []
    for i, drilling in enumerate(item.drillings):
        needed = wanted_to_slot(drilling, margins)
        ahead = item.ahead[i]
        if far[i] - drilling.radius - ahead >= needed or not _at_its_height(drilling, cut, needed + ahead):
            continue
        own = sort_of(drilling) == "side bore" and first_on_the_way(drilling, drilling.depth, openings) is opening
        ways = [from_ramp(*beside) for beside in in_the_rail(drilling, opening, cut)] if own else [from_ramp(drilling, cut)]
        if not ways:
            continue
        out = max(ways, key=lambda way: way.depth)
        measured = -out.depth
        if ahead and measured >= 0 and not own:
            pointed += _by_point(item, drilling, ahead, opening, cut, measured, needed)
        if not short(measured, needed):
            continue
        hole = item.hole_of[i]
        if hole not in worst or needed - measured > worst[hole].lacks:
            worst[hole] = Snag(
                "hole-to-ramp", grade(measured), (item.id, opening.id), look_at(drilling, cut), measured, needed,
                gap_text(name(drilling), say("ramp of {slot}", slot=opening.id), measured, needed),
                say("Make the ramp of {slot} shorter, narrower or less deep there, or move one of the two.", slot=opening.id),
                push=v.scale(out.plan, needed - measured) if v.norm(out.plan) > TOUCH else None)
    return (*worst.values(), *pointed)


def in_the_rail(bore: Drilling, opening: Opening, cut: RampCut) -> list[tuple[Drilling, RampCut]]:
    """(the bore up to its slot, what of the slot's own ramp is wider than the slot on one side), left of the ramp's axis and then right of
    it; nothing where the ramp is no wider.

    Between the walls the bore runs into the slot anyway.
    """
    half = nut_end(opening.slot).width / 2
    if cut.half <= half + TOUCH:
        return []
    enters = opening.wall.stretches(plan(bore.start), plan(bore.direction))[0][0]
    rail = replace(bore, depth=max(enters, TOUCH))
    return [(rail, replace(cut, start=v.along(cut.start, v.left(cut.axis), side * (cut.half + half) / 2), half=(cut.half - half) / 2))
            for side in (1.0, -1.0)]


def _by_point(item: Item, drilling: Drilling, ahead: float, opening: Opening, cut: RampCut, bare: float, wood: float) -> list[Snag]:
    """The snag of a drill's point that comes too near to a ramp; its drilling leaves `bare` mm."""
    out = from_ramp(drilling, cut, ahead)
    needed, measured = drill_points.wanted(drilling, wood, bare), -out.depth
    if measured < -TOUCH:
        # Drawn back along its axis it has farther to go than straight out.
        backwards = -sum(a * b for a, b in zip(out.way, drilling.direction, strict=True))
        measured = -min(out.depth / backwards, drilling.depth) if backwards > TOUCH else -drilling.depth
    if not short(measured, needed):
        return []
    return [drill_points.snag(item, drilling, ahead, say("ramp of {slot}", slot=opening.id), (item.id, opening.id), measured, needed, wood,
                              lambda less: -from_ramp(less, cut, ahead).depth)]


def _at_its_height(drilling: Drilling, cut: RampCut, needed: float) -> bool:
    """Whether the top of a drilling comes within what is needed of the ramp's deepest place."""
    top = min(drilling.start[2], drilling.end[2]) - (0.0 if drilling.upright else drilling.radius)
    return top - cut.reach * cut.slope < needed


def look_at(drilling: Drilling, cut: RampCut) -> tuple[float, float, float]:
    """Between the drilling's axis and the nearest place of the ramp's middle line."""
    line = shapely.LineString([cut.start, v.along(cut.start, cut.axis, cut.length)])
    axis = shapely.LineString([plan(drilling.start), plan(drilling.end)])
    (ax, ay), (bx, by) = shapely.shortest_line(axis, line).coords
    return (ax + bx) / 2, (ay + by) / 2, float(np.clip(cut.along((bx, by)), 0.0, cut.length)) * cut.slope
