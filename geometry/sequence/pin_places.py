"""Where a locating pin may stand: areas in plan that hold the centres of legal pins."""

from __future__ import annotations

import math

import shapely
from msgspec import Struct
from shapely.geometry import LineString, Polygon, box
from shapely.geometry.base import BaseGeometry

from geometry.curves.polygons import grown
from geometry.layout import OTHER, Headstock
from geometry.sequence.shadows import drilled, outline_area, outline_line
from geometry.solids.drilling import once_plugged, to_drill
from geometry.solids.ears import bare
from geometry.solids.slot_area import slot_area
from geometry.tolerance import FLAT
from geometry.vectors import Vec2

AXIS = 0.01
"""How far (mm) from the centreline a point still counts as on it."""
LEAST_PIN = 3.0
"""Pins thinner than this bend, mm (common practice, no source)."""
LEAST_HELD = 4.0
"""A bore that is no longer does not hold a pin upright, mm (common practice, no source)."""


class LaterHole(Struct, frozen=True):
    """A through bore that may serve as pin hole first: same centre, same diameter (mm)."""

    at: Vec2
    diameter: float
    of: str


def _obstacles(layout: Headstock) -> BaseGeometry:
    """Everything in plan that a pin keeps its margin to: bores from every side, slots, glue lines, and where no ear is.

    A pin goes through the whole thickness and every bore lies level or upright,
    so the distance in plan is the true distance.
    """
    shapes: list[BaseGeometry] = [drilled(d) for hole in once_plugged(layout) for d in hole.drillings if d.role != "locating"]
    shapes += [area for slot in layout.slots if (area := slot_area(slot)) is not None]
    for ear in layout.ears:
        x = layout.blank.glue_x(ear)
        shapes.append(LineString([(x, ear.start), (x, ear.end)]))
    shapes += [bare(layout.blank, layout.ears, side) for side in OTHER]
    return shapely.union_all(shapes)


def head_face(layout: Headstock) -> Polygon:
    """The face of the blank from the nut line to its far end."""
    blank = layout.blank
    return box(-blank.bass, 0.0, blank.treble, blank.tip)


def places(layout: Headstock, radius: float) -> tuple[BaseGeometry, BaseGeometry]:
    """(centres in the waste, centres inside the outline) for a pin of that radius, margins kept, in mm.

    Inside the outline the wood at the nut is spared too, by the margin that slots
    keep to the nut. Curves are flattened to within FLAT, so FLAT more is kept.
    """
    clear = layout.margins.pin_any + radius
    face = grown(head_face(layout), -max(clear, layout.margins.blank_edge + radius))
    free = face - grown(_obstacles(layout), clear + FLAT) - grown(outline_line(layout.outline), clear + FLAT)
    wood = outline_area(layout.outline)
    return free - wood, free & wood & _before_nut(layout, layout.margins.slot_nut + radius)


def _before_nut(layout: Headstock, by: float) -> Polygon:
    """What of the blank lies that far (mm) and farther before the nut line, slanted or not."""
    blank, lift = layout.blank, by / layout.nut.ahead[1]
    (a, low), (b, high) = layout.nut.at(-blank.bass), layout.nut.at(blank.treble)
    top = max(blank.tip, low + lift, high + lift)
    return Polygon(((b, high + lift), (b, top), (a, top), (a, low + lift)))


def later_holes(layout: Headstock) -> list[LaterHole]:
    """Through bores square to the face inside the outline, the narrowest of their hole, that clear everything else by the pins' margin.

    Where they are counterbored, enough of them is left to hold a pin.
    """
    every = [(d.hole, drilled(d)) for hole in once_plugged(layout) for d in hole.drillings if d.role != "locating"]
    walls = [area for slot in layout.slots if (area := slot_area(slot)) is not None]
    walls.append(outline_line(layout.outline))
    too_near = math.nextafter(layout.margins.pin_any - FLAT, -math.inf)
    head, thick = outline_area(layout.outline), layout.blank.thickness
    found = []
    for hole in to_drill(layout):
        d = min(hole.drillings, key=lambda one: one.diameter)
        if not d.upright or not d.through or d.role in ("screw", "pin", "locating") or d.diameter < LEAST_PIN:
            continue
        # Of several that go in from one surface the deepest takes what the others do.
        if thick - sum(max((e.depth for e in hole.drillings if not e.through and e.surface == surface), default=0.0)
                       for surface in ("face", "back")) < LEAST_HELD:
            continue
        others = [*walls, *(area for other, area in every if other != d.hole)]
        if not shapely.dwithin(drilled(d), others, too_near).any() and head.contains(shapely.Point(d.start[:2])):
            found.append(LaterHole(d.start[:2], d.diameter, d.of))
    return found
