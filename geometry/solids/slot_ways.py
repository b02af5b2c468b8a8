"""How deep two slots overlap, or a slot reaches beyond the outline: the least shift in plan that mends it, and its direction.

Straight slots are measured in closed form against each other; shapes that are
drawn are taken as chords within SAGITTA of them.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import lru_cache

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves.blunted import blunted
from geometry.layout.slots import Slot, StraightSlot
from geometry.solids.sums import NO_SHIFT, SEAM, area_sum, convex_sum, swept, united, way_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import SAGITTA, fine_wall, plain_wall
from geometry.tolerance import QUAD_SEGS, TOUCH
from geometry.vectors import Vec2

_SAME = 1e-9
"""share of its hull by which an area may miss being convex"""
_ROUGH, _MORE = 0.1, 0.5
"""mm: how far chords stray that only tell about how long a shift will be, and what is added to be sure"""
_HARDLY = 1.2
_TRIES, _STEPS = 8, 5


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


def into_outline(slot: Slot, wall: Wall, outline: Wall, least: float = 0.0) -> tuple[float, Vec2] | None:
    """(least shift in mm that brings a slot inside an outline that it leaves, unit direction).

    `least`: what the shift is known to be at least, mm. None where it lies inside already, or has no place inside with a tenth of a mm to spare. A hollow-sided slot is taken as its hull.
    """
    core, radius, _ = _core(slot, wall)
    found = _end_first(core, radius, outline) if isinstance(slot.shape, StraightSlot) else None
    return found or back_inside(core, radius, wall.area, outline, least)


def _end_first(core: np.ndarray, radius: float, outline: Wall) -> tuple[float, Vec2] | None:
    """The way of a straight slot by which the end that misses most gets inside; None where that does not bring in the rest too.

    No way is shorter: a shift changes how far inside a point lies by no more than its own length.
    """
    fine = fine_wall(outline)
    depths = fine.about(core)
    k = int(np.argmin(depths))
    near = shapely.shortest_line(shapely.Point(core[k]), fine.line).coords[1]
    away, depth = v.sub((float(core[k, 0]), float(core[k, 1])), near), radius - float(depths[k])
    if v.norm(away) < _ROUGH or depth <= 0:
        return None
    way = v.scale(v.unit(away), 1.0 if depths[k] > 0 else -1.0)

    def lacks(depth: float) -> float:
        there = shapely.LineString(core + depth * np.array(way))
        return radius - float(shapely.distance(fine.line, there)) if shapely.intersects(fine.area, there) else math.inf
    return _enough(depth, way, lacks)


def _enough(depth: float, way: Vec2, lacks: Callable[[float], float]) -> tuple[float, Vec2] | None:
    """A shift that is no longer than the least, lengthened by the little that it may lack beside chords of a curve; None for more."""
    for _ in range(_STEPS):
        lacking = lacks(depth)
        if lacking <= TOUCH / 10:
            return depth, way
        if lacking > SAGITTA:
            return None
        depth += lacking
    return None


def back_inside(core: np.ndarray, radius: float, area: shapely.Geometry, outline: Wall,
                least: float = 0.0) -> tuple[float, Vec2] | None:
    """The same for any area that is the hull of (n, 2) points grown by a radius."""
    fine, by = plain_wall(outline)
    radius += by
    hull = shapely.MultiPoint(core).convex_hull
    if least:
        # Most often straight back is the way: then the shift is hardly more than the least that it can be.
        near = _MORE + _HARDLY * least
        found = _way_in(_forbidden_near(hull, radius, fine, near, {}), radius)
        if found is not None and found[0] <= near and _touches(area, found, outline):
            return found
    # In rough chords first: the shift cannot be much longer than theirs, so that only what lies within it counts.
    simple = shapely.get_coordinates(shapely.simplify(hull, _ROUGH))
    found, near = _way_in(_forbidden(simple, area, fine if by else _rough_wall(outline)), radius), 0.0
    known: dict[tuple[int, int, bytes], shapely.Geometry] = {}
    if found is not None and not _touches(area, found, outline):
        return None
    for _ in range(_TRIES):
        near = max(2 * near, _MORE + (0.0 if found is None else found[0]))
        found = _way_in(_forbidden_near(hull, radius, fine, near, known), radius)
        if found is None or found[0] <= near:
            break
    return found if found is not None and found[0] <= near and _touches(area, found, outline) else None


def _touches(area: shapely.Geometry, found: tuple[float, Vec2], outline: Wall) -> bool:
    """Whether a shift leads into an outline, and not away from all wood."""
    there = shapely.transform(area, lambda xy: xy + found[0] * np.array(found[1]))
    return bool(shapely.distance(there, outline.area) == 0)


def _way_in(forbidden: shapely.Geometry, radius: float) -> tuple[float, Vec2] | None:
    """The least shift that leaves some shifts grown by a radius; None where no shift at all is none of them."""
    if not shapely.dwithin(forbidden, NO_SHIFT, radius + SEAM):
        return None
    found = (_straight_out(forbidden, radius) if radius > _ROUGH else None) or way_out(_grown(forbidden, radius))
    return found if found is not None and found[0] >= -1e-9 else None


def _straight_out(forbidden: shapely.Geometry, radius: float) -> tuple[float, Vec2] | None:
    """The same without growing them: straight through the nearest point of their rim, where that leads out.

    No way is shorter: it has to reach the rim, and then be a radius away from it. Along chords of a curve it may
    take a little more. None where something else is nearer there.
    """
    x, y = shapely.shortest_line(NO_SHIFT, shapely.boundary(forbidden)).coords[1]
    size, inside = math.hypot(x, y), bool(shapely.intersects(forbidden, NO_SHIFT))
    depth = radius + size if inside else radius - size
    if size < _ROUGH or depth <= 0:
        return None
    way = (x / size, y / size) if inside else (-x / size, -y / size)
    return _enough(depth, way, lambda depth: radius - float(
        shapely.distance(forbidden, shapely.Point(way[0] * depth, way[1] * depth))))


def _forbidden(core: np.ndarray, area: shapely.Geometry, outline: Wall) -> shapely.Geometry:
    """The shifts at which the hull of some points is not all inside an outline."""
    # All that lies outside, as far as it takes from anywhere in or about area and outline to anywhere else.
    x0, y0, x1, y1 = shapely.bounds([outline.area, area]).T
    low, high = np.array([x0.min(), y0.min()]), np.array([x1.max(), y1.max()])
    far = float(np.hypot(*(high - low)))
    outside = shapely.difference(shapely.box(*(low - far), *(high + far)), outline.area)
    return area_sum(outside, outline.points, -core)


def _forbidden_near(hull: shapely.Geometry, radius: float, outline: Wall, most: float,
                    known: dict[tuple[int, int, bytes], shapely.Geometry]) -> shapely.Geometry:
    """As _forbidden, true only for shifts of up to `most` mm of the hull grown by a radius: so much is looked at as they bring together.

    `known`: what was swept with a smaller `most`; where that was all there is, it is not swept again.
    """
    reach = most + radius + _MORE
    core = shapely.get_coordinates(hull)
    if len(core) > 3:
        longest = float(np.hypot(*np.diff(core, axis=0).T).max())
        core = core[outline.about(core) <= reach + longest]
        if not len(core):
            return shapely.Polygon()
    x, y = core[0]
    outside = shapely.difference(shapely.box(x - reach, y - reach, x + reach, y + reach), outline.area)
    points = outline.points
    near = np.flatnonzero(shapely.dwithin(_chords(outline), shapely.MultiPoint(core).convex_hull, reach))
    runs = np.split(near, np.flatnonzero(np.diff(near) > 1) + 1) if near.size else []
    return united([shapely.transform(outside, lambda xy: xy - core[0]),
                   *(_swept(points, run, core, known) for run in runs if len(core) > 1)])


@lru_cache(maxsize=2)
def _chords(outline: Wall) -> np.ndarray:
    """Each chord of an outline as a line of its own."""
    return shapely.linestrings(np.stack([outline.points[:-1], outline.points[1:]], axis=1))


def _swept(points: np.ndarray, run: np.ndarray, core: np.ndarray,
           known: dict[tuple[int, int, bytes], shapely.Geometry]) -> shapely.Geometry:
    """What the mirror image of some points sweeps along a run of chords."""
    key = int(run[0]), int(run[-1]), core.tobytes()
    if key not in known:
        known[key] = swept(points[run[0]:run[-1] + 2], -core)
    return known[key]


def _grown(area: shapely.Geometry, radius: float) -> shapely.Geometry:
    return shapely.buffer(area, radius, quad_segs=4 * QUAD_SEGS) if radius else area


@lru_cache(maxsize=8)
def _rough_wall(outline: Wall) -> Wall:
    return Wall(outline.path, _ROUGH)


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
