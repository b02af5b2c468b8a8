"""Sums of plane shapes (every point of one plus every point of the other), and the shortest way out of one.

Two shapes share area as long as the shift between them lies in the sum of the
one and the mirror image of the other. So the least shift that parts them is the
distance from no shift at all to the rim of that sum.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from geometry.vectors import Vec2

NO_SHIFT = shapely.Point(0.0, 0.0)
SEAM = 1e-6
"""mm: where areas that were united meet, rounding may leave holes and cracks; narrower ones than twice this are none"""
GRID = 1e-9
"""mm: the grid on which areas are united. Without one the library loses a whole corner of the sum of turned shapes
now and then (2 of 3,000), and what is not there reads as room."""
_MANY = 9
"""corners of a shape above which it is swept along each chord by itself"""
_LOOKS, _FARTHER = 3, 4.0
"""how often less than a whole sum is looked at, and how much farther each time"""
_ADDED = 3
"""parts of a sum that are added at a time, see way_out_among"""
_AT_ONCE = 50_000
"""corners that are brought together at a time: a long chain and a shape of many corners would take gigabytes together"""


def united(areas: Sequence[BaseGeometry]) -> BaseGeometry:
    """What areas cover together, its corners true to GRID."""
    return shapely.union_all(areas, grid_size=GRID)


def convex_sum(a: np.ndarray, b: np.ndarray) -> BaseGeometry:
    """The sum of the convex hulls of two sets of points (n, 2) and (k, 2)."""
    return shapely.MultiPoint((a[:, None] + b[None]).reshape(-1, 2)).convex_hull


def area_sum(area: BaseGeometry, rim: np.ndarray, b: np.ndarray) -> BaseGeometry:
    """The sum of an area, whose rim runs through (n, 2) points, and the convex hull of (k, 2) points."""
    parts = area_parts(area, rim, b)
    return parts[0] if len(parts) == 1 else united(parts)


def area_parts(area: BaseGeometry, rim: np.ndarray, b: np.ndarray) -> list[BaseGeometry]:
    """Areas that together are area_sum."""
    if shapely.area(area) >= (1 - 1e-12) * shapely.area(shapely.convex_hull(area)):
        return [convex_sum(rim, b)]
    moved = shapely.transform(area, lambda xy: xy + b[0])
    return [moved] if len(b) == 1 else [moved, *_swept(rim, b)]


def drawn_out(area: BaseGeometry, half: np.ndarray) -> BaseGeometry:
    """The sum of any area and the straight line from -half to half (2,), mm."""
    ends = np.array([-half, half])
    rings = [ring for part in shapely.get_parts(area) if part.geom_type == "Polygon" for ring in (part.exterior, *part.interiors)]
    moved = shapely.transform(area, lambda xy: xy - half)
    return united([moved, *(one for ring in rings for one in _swept(shapely.get_coordinates(ring), ends))])


def beyond_parts(chain: np.ndarray, far: float, b: np.ndarray) -> np.ndarray:
    """Areas that together are the sum of what lies up to `far` mm to the right of a chain and the convex hull of (k, 2) points.

    The right of an outline that runs counter-clockwise is its outside. Where
    the chain turns left the gap between the two sides is filled.
    """
    ends = np.stack([chain[:-1], chain[1:]], axis=1)
    along = ends[:, 1] - ends[:, 0]
    size = np.hypot(along[:, 0], along[:, 1])
    keep = size > 1e-9
    ends, along = ends[keep], along[keep] / size[keep, None]
    out = far * np.stack([along[:, 1], -along[:, 0]], axis=1)
    bands = np.concatenate([ends, ends + out[:, None]], axis=1)
    follows = np.flatnonzero(np.all(ends[:-1, 1] == ends[1:, 0], axis=1))
    corners = ends[follows, 1]
    wedges = np.stack([corners, corners + out[follows], corners + out[follows + 1],
                       corners + (out[follows] + out[follows + 1]) / 2], axis=1)
    if len(ends) > 1 and np.all(ends[-1, 1] == ends[0, 0]):
        wedges = np.concatenate([wedges, [[ends[0, 0], ends[0, 0] + out[-1], ends[0, 0] + out[0],
                                           ends[0, 0] + (out[-1] + out[0]) / 2]]])
    pieces = np.concatenate([bands, wedges])
    return _hulls((pieces[:, :, None] + b[None, None]).reshape(len(pieces), -1, 2))


def about_no_shift(parts: Sequence[BaseGeometry], look: float) -> list[BaseGeometry]:
    """The parts of a sum that come within `look` mm of no shift at all, cut to somewhat more than that where they are large.

    Within that distance they cover together what all parts cover.
    """
    near = np.asarray(parts)[shapely.dwithin(parts, NO_SHIFT, look)]
    reach = 1.01 * look + SEAM
    large = np.abs(shapely.bounds(near)).max(axis=1, initial=0.0) > 2 * reach
    near[large] = shapely.intersection(near[large], shapely.box(-reach, -reach, reach, reach))
    return near.tolist()


def way_out_looking(first: float, about: Callable[[float], BaseGeometry]) -> tuple[float, Vec2] | None:
    """As way_out of a sum of very many parts, of which no more are united than the way out takes.

    `about` gives the sum as it is within so many mm of no shift at all (math.inf: all of it); `first`: what is tried first, mm.
    """
    look = first
    for _ in range(_LOOKS):
        found = way_out(about(look))
        # A rim through no shift at all is judged by all of the sum.
        if found is not None and 2 * SEAM < abs(found[0]) <= look:
            return found
        look *= _FARTHER
    return way_out(about(math.inf))


def way_out_among(parts: Sequence[BaseGeometry]) -> tuple[float, Vec2] | None:
    """As way_out of a sum of very many parts, of which only those are united that lie across the way; None where none covers no shift.

    Out of some of the parts the way is never longer than out of all. Where it ends, all is told: if another part lies there, the
    deepest of such parts are added; if none does, the way leads out of all of them.
    """
    every, found, at, summed = np.asarray(parts, object), None, NO_SHIFT, []
    if not np.any(shapely.intersects(every, NO_SHIFT)):
        return None
    rims, left = shapely.boundary(every), np.ones(len(every), bool)
    while len(there := np.flatnonzero(left & shapely.dwithin(every, at, 2 * SEAM))):
        deepest = there[np.argsort(-shapely.distance(rims[there], at), kind="stable")[:_ADDED]]
        left[deepest] = False
        summed = [united([*summed, *every[deepest]])]
        found = way_out(summed[0])
        at = shapely.Point(found[0] * found[1][0], found[0] * found[1][1])
    return found


def way_out(summed: BaseGeometry, round: float = 0.0) -> tuple[float, Vec2] | None:
    """(least shift in mm, its unit direction) that leaves a sum grown by a radius `round` mm.

    The sum must be convex where `round` is given. Below zero by how far no shift at all lies outside
    already. None where the sum is empty.
    """
    if summed.is_empty:
        return None
    if not round and _has_seams(summed):
        depth, way = _way_out(shapely.buffer(summed, SEAM, join_style="mitre"), 0.0)
        return depth - SEAM, way
    return _way_out(summed, round)


def _has_seams(summed: BaseGeometry) -> bool:
    """Whether a sum may have been united of parts: one that is its own hull was not."""
    return bool(shapely.get_num_coordinates(summed) != shapely.get_num_coordinates(shapely.convex_hull(summed)))


def _way_out(summed: BaseGeometry, round: float) -> tuple[float, Vec2]:
    rim = summed.boundary if summed.geom_type in ("Polygon", "MultiPolygon") else summed
    near = shapely.shortest_line(NO_SHIFT, rim).coords[1]
    size = float(np.hypot(*near))
    inside = rim is not summed and bool(shapely.intersects(summed, NO_SHIFT))
    if size < 1e-12:
        return round, _square_to_rim(summed)
    way = (near[0] / size, near[1] / size)
    return (size + round, way) if inside else (round - size, (-way[0], -way[1]))


def _square_to_rim(summed: BaseGeometry) -> Vec2:
    """The direction out of a sum whose rim runs through no shift at all: square to the rim, away from its middle."""
    rim = shapely.get_coordinates(shapely.convex_hull(summed))
    ahead = np.diff(rim, axis=0)
    size = np.hypot(*ahead.T)
    off = np.abs(rim[:-1, 0] * ahead[:, 1] - rim[:-1, 1] * ahead[:, 0]) / np.maximum(size, 1e-300)
    k = int(np.argmin(np.where(size > 1e-12, off, np.inf))) if len(ahead) else -1
    if k < 0 or size[k] <= 1e-12:
        return (1.0, 0.0)
    x, y = (float(c) for c in ahead[k] / size[k])
    return (y, -x) if rim.mean(axis=0) @ (y, -x) <= 0 else (-y, x)


def _swept(chain: np.ndarray, b: np.ndarray) -> list[BaseGeometry]:
    """Areas that together are what the convex hull of (k, 2) points sweeps along a chain.

    Whatever it covers at some place of the chain it covers at the start, or one of its sides has passed over it since.
    """
    hull = shapely.MultiPoint(b).convex_hull
    rim = shapely.get_coordinates(hull)
    if len(rim) > _MANY:
        ends = np.stack([chain[:-1], chain[1:]], axis=1)
        step = max(1, _AT_ONCE // (2 * len(rim)))
        # United all together by the caller: where parts united before meet, rounding may leave a hole, which reads as a way out.
        return [hull for part in (ends[k:k + step] for k in range(0, len(ends), step))
                for hull in _hulls((part[:, :, None] + rim[None, None, :-1]).reshape(len(part), -1, 2))]
    sides = [rim[k:k + 2] for k in range(len(rim) - 1)]
    swept = [ribbon for side in sides for ribbon in _ribbons(chain, side)]
    return swept if len(sides) < 2 else [*swept, shapely.transform(hull, lambda xy: xy + chain[0])]


def _ribbons(chain: np.ndarray, b: np.ndarray) -> list[BaseGeometry]:
    """What a straight line between two points (2, 2) sweeps along a chain: one area for each part that keeps to one side of it.

    Where a part runs along the line but for rounding, its area may cross itself: then each chord has an area of its own.
    """
    ahead, step = np.diff(chain, axis=0), b[1] - b[0]
    side = np.sign(ahead[:, 0] * step[1] - ahead[:, 1] * step[0])
    parts = np.split(np.arange(len(side)), np.flatnonzero(np.diff(side)) + 1)
    runs = [chain[part[0]:part[-1] + 2] for part in parts if side[part[0]]]
    ribbons = [shapely.Polygon(np.concatenate([run + b[0], run[::-1] + b[1]])) for run in runs]
    if np.all(shapely.is_valid(ribbons)):
        return ribbons
    return [piece for run, ribbon in zip(runs, ribbons, strict=True)
            for piece in ([ribbon] if shapely.is_valid(ribbon) else
                          _hulls((np.stack([run[:-1], run[1:]], axis=1)[:, :, None] + b[None, None]).reshape(-1, 4, 2)))]


def _hulls(points: np.ndarray) -> np.ndarray:
    """The convex hull of each row of (m, k, 2) points."""
    return shapely.convex_hull(shapely.linestrings(points))
