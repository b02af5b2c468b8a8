"""How deep two slots overlap, or a slot reaches beyond the outline: the least shift in plan that mends it, and its direction.

Straight slots are measured in closed form against each other; shapes that are
drawn are taken as chords within SAGITTA of them. The way back inside an outline
is that of its chords within _CHORDS, and rather too long than too short.
"""

from __future__ import annotations

import math

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Line
from geometry.curves.blunted import blunted
from geometry.layout.slots import Slot, StraightSlot
from geometry.solids.sums import NO_SHIFT, SEAM, area_sum, convex_sum, way_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import SAGITTA, fine_wall, plain_wall
from geometry.tolerance import QUAD_SEGS, TOUCH
from geometry.vectors import Vec2

_SAME = 1e-9
"""share of its hull by which an area may miss being convex"""
_BESIDE = 0.1
"""mm: an end of a slot nearer to the outline than this does not tell the way back inside"""
_CHORDS = 0.01
"""mm: how far outline and slot are flattened for the way back inside; so much farther inside is counted as inside"""
_STEPS = 5


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
    depth, way = way_out(shapely.buffer(blunted(summed, grown), grown, quad_segs=4 * QUAD_SEGS) if grown else summed)
    return depth, (turn * way[0], turn * way[1])


def into_outline(slot: Slot, wall: Wall, outline: Wall) -> tuple[float, Vec2] | None:
    """(least shift in mm that brings a slot inside an outline that it leaves, unit direction).

    Between curves it may be that of a slot that is 2 _CHORDS larger all round, never less than it takes. None where it lies inside
    already, or has no place inside with a tenth of a mm to spare. A hollow-sided slot is taken as its hull.
    """
    core, radius, _ = _core(slot, wall)
    found = _end_first(core, radius, outline) if isinstance(slot.shape, StraightSlot) else None
    return found or back_inside(core, radius, wall.area, outline)


def _end_first(core: np.ndarray, radius: float, outline: Wall) -> tuple[float, Vec2] | None:
    """The way of a straight slot by which the end that misses most gets inside; None where that does not bring in the rest too.

    No way is shorter: a shift changes how far inside a point lies by no more than its own length.
    """
    fine = fine_wall(outline)
    depths = fine.about(core)
    k = int(np.argmin(depths))
    near = shapely.shortest_line(shapely.Point(core[k]), fine.line).coords[1]
    away, depth = v.sub((float(core[k, 0]), float(core[k, 1])), near), radius - float(depths[k])
    if v.norm(away) < _BESIDE or depth <= 0:
        return None
    way = v.scale(v.unit(away), 1.0 if depths[k] > 0 else -1.0)

    def lacks(depth: float) -> float:
        there = shapely.LineString(core + depth * np.array(way))
        return radius - float(shapely.distance(fine.line, there)) if shapely.intersects(fine.area, there) else math.inf
    # Lengthened by the little that it may lack beside chords of a curve.
    for _ in range(_STEPS):
        lacking = lacks(depth)
        if lacking <= TOUCH / 10:
            return depth, way
        if lacking > SAGITTA:
            return None
        depth += lacking
    return None


def back_inside(core: np.ndarray, radius: float, area: shapely.Geometry, outline: Wall) -> tuple[float, Vec2] | None:
    """The same for any area that is the hull of (n, 2) points grown by a radius."""
    plain, by = plain_wall(outline, _CHORDS)
    hull = shapely.MultiPoint(core).convex_hull
    corners = shapely.get_coordinates(shapely.simplify(hull, _CHORDS))
    curved = not all(isinstance(piece, Line) for piece in outline.path.segments)
    more = radius + by + _CHORDS * (curved + (len(corners) < shapely.get_num_coordinates(hull)))
    forbidden = _forbidden(corners, area, plain)
    if not shapely.dwithin(forbidden, NO_SHIFT, more + SEAM):
        return None
    found = way_out(shapely.buffer(forbidden, more, quad_segs=4 * QUAD_SEGS) if more else forbidden)
    if found is None or found[0] < -1e-9 or not _touches(area, found, outline):
        return None
    return found if by else _no_farther(found, hull, radius, fine_wall(outline))


def _no_farther(found: tuple[float, Vec2], hull: shapely.Geometry, radius: float, outline: Wall) -> tuple[float, Vec2]:
    """A way inside less what a hull grown by a radius has to spare there: so much shorter it is inside still."""
    depth, way = found
    spare = shapely.distance(outline.line, shapely.transform(hull, lambda xy: xy + depth * np.array(way))) - radius
    return max(0.0, depth - max(0.0, spare)), way


def _touches(area: shapely.Geometry, found: tuple[float, Vec2], outline: Wall) -> bool:
    """Whether a shift leads into an outline, and not away from all wood."""
    there = shapely.transform(area, lambda xy: xy + found[0] * np.array(found[1]))
    return bool(shapely.distance(there, outline.area) == 0)


def _forbidden(core: np.ndarray, area: shapely.Geometry, outline: Wall) -> shapely.Geometry:
    """The shifts at which the hull of some points is not all inside an outline."""
    # All that lies outside, as far as it takes from anywhere in or about area and outline to anywhere else.
    x0, y0, x1, y1 = shapely.bounds([outline.area, area]).T
    low, high = np.array([x0.min(), y0.min()]), np.array([x1.max(), y1.max()])
    far = float(np.hypot(*(high - low)))
    outside = shapely.difference(shapely.box(*(low - far), *(high + far)), outline.area)
    return area_sum(outside, outline.points, -core)


def _core(slot: Slot, wall: Wall) -> tuple[np.ndarray, float, shapely.Geometry | None]:
    """(points, a radius about them, the area where it is not convex and so not their hull)."""
    if isinstance(slot.shape, StraightSlot):
        ends = np.array([slot.shape.nut_end, slot.shape.tip_end])
        # Next to nothing is nothing, as in a wall's points: the polygon library divides by what is left of it.
        ends[np.abs(ends) < TOUCH * TOUCH] = 0.0
        return ends, slot.shape.width / 2, None
    fine = fine_wall(wall)
    convex = fine.area.area >= (1 - _SAME) * fine.area.convex_hull.area
    return fine.points, 0.0, None if convex else fine.area
