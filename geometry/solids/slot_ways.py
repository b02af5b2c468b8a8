"""How deep two slots overlap, or a slot reaches beyond the outline: the least shift in plan that mends it, and its direction.

Straight slots are measured in closed form against each other; shapes that are
drawn are taken as chords within SAGITTA of them.
"""

from __future__ import annotations

import numpy as np
import shapely

from geometry.layout.slots import Slot, StraightSlot
from geometry.solids.sums import NO_SHIFT, area_sum, convex_sum, way_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import fine_wall
from geometry.tolerance import QUAD_SEGS
from geometry.vectors import Vec2

_SAME = 1e-9
"""share of its hull by which an area may miss being convex"""


def out_of_slot(one: Slot, one_wall: Wall, two: Slot, two_wall: Wall) -> tuple[float, Vec2] | None:
    """(least shift in mm of `one` that parts two slots that share area, unit direction); None where both are hollow-sided."""
    first, first_radius, first_area = _core(one, one_wall)
    second, second_radius, second_area = _core(two, two_wall)
    grown = first_radius + second_radius
    if first_area is None and second_area is None:
        return way_out(convex_sum(second, -first), grown)
    if first_area is not None and second_area is not None:
        return None
    if second_area is not None:
        summed, turn = area_sum(second_area, second, -first), 1.0
    else:
        summed, turn = area_sum(first_area, first, -second), -1.0
    depth, way = way_out(shapely.buffer(summed, grown, quad_segs=4 * QUAD_SEGS) if grown else summed)
    return depth, (turn * way[0], turn * way[1])


def into_outline(slot: Slot, wall: Wall, outline: Wall) -> tuple[float, Vec2] | None:
    """(least shift in mm that brings a slot inside an outline that it leaves, unit direction).

    None where it lies inside already, or has no place inside. A hollow-sided slot is taken as its hull.
    """
    core, radius, _ = _core(slot, wall)
    return back_inside(core, radius, wall.area, outline)


def back_inside(core: np.ndarray, radius: float, area: shapely.Geometry, outline: Wall) -> tuple[float, Vec2] | None:
    """The same for any area that is the hull of (n, 2) points grown by a radius."""
    fine = fine_wall(outline)
    # All that lies outside, as far as it takes from anywhere in or about area and outline to anywhere else.
    x0, y0, x1, y1 = shapely.bounds([fine.area, area]).T
    low, high = np.array([x0.min(), y0.min()]), np.array([x1.max(), y1.max()])
    far = float(np.hypot(*(high - low)))
    outside = shapely.difference(shapely.box(*(low - far), *(high + far)), fine.area)
    summed = area_sum(outside, fine.points, -core)
    summed = shapely.buffer(summed, radius, quad_segs=4 * QUAD_SEGS) if radius else summed
    if not shapely.intersects(summed, NO_SHIFT):
        return None
    depth, way = way_out(summed)
    there = shapely.transform(area, lambda xy: xy + depth * np.array(way))
    return (depth, way) if shapely.distance(there, outline.area) == 0 else None


def _core(slot: Slot, wall: Wall) -> tuple[np.ndarray, float, shapely.Geometry | None]:
    """(points, a radius about them, the area where it is not convex and so not their hull)."""
    if isinstance(slot.shape, StraightSlot):
        return np.array([slot.shape.nut_end, slot.shape.tip_end]), slot.shape.width / 2, None
    fine = fine_wall(wall)
    convex = fine.area.area >= (1 - _SAME) * fine.area.convex_hull.area
    return fine.points, 0.0, None if convex else fine.area
