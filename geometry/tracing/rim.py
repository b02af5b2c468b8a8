"""A thin rim in another colour beside an edge that was followed, as the binding of a head is."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import Polygon

from geometry.tracing.colours import GRAIN
from geometry.tracing.plane_map import PlaneMap
from geometry.vectors import Vec2

WIDTH = (0.6, 4.0)
"""mm: of a rim, its lines beside it counted (common practice, no source)."""
STEP = 0.2
"""mm from one line beside the edge to the next"""
BEYOND = 6.0
"""mm beside the edge where the colour of what lies behind the head is taken"""
SHARP = 0.4
"""mm within which a rim ends; a shadow that goes all round fades away over more"""
ROUND, ELSEWHERE = 0.8, 0.35
"""Part of the edge along which there is a rim, at the least, and beyond it something else than what is behind, at the most"""
UNLIKE = 6.0 * GRAIN
"""Levels by which one of the colours of a rim differs from what is behind it, and what is within it too"""
OFF_NUT = 6.0
"""mm before the nut line from which on the edge is looked at: behind it is the neck"""


class Rim(Struct, frozen=True):
    """How wide a rim is, and its colours."""

    width: float
    """mm from the edge that was followed"""
    own: np.ndarray
    """(n, 3) colours along its outer edge"""
    behind: np.ndarray
    """(n, 3) colours just beyond it"""


def rim_about(colours: np.ndarray, place: PlaneMap, edge: Polygon, ahead: Vec2) -> Rim | None:
    """The rim of even width that goes round the edge of a head (mm, in the layout's frame) in a (height, width, 3) picture.

    `ahead`: the unit vector square to the nut line, which goes through (0, 0), towards the tip. None where
    there is none, as with a shadow to one side or one that fades, with an edge out of focus, with a head drawn in lines on what is
    behind it, or where the picture does not show enough of it.
    """
    far = np.arange(STEP, BEYOND + STEP / 2, STEP)
    seen = [seen_at(colours, place, along(edge, d, ahead)) for d in (-1.5, *far)]
    if min(len(points) for points, _ in seen) < 50:
        return None
    (_, within), *_, (base, behind) = seen
    about = shapely.STRtree(shapely.points(base))

    def unlike(points: np.ndarray, there: np.ndarray) -> np.ndarray:
        return np.abs(there - behind[about.nearest(shapely.points(points))]).max(axis=1)
    off = [unlike(points, there) for points, there in seen[1:]]
    share = np.array([(one > UNLIKE).mean() for one in off])
    middle = np.array([np.median(one) for one in off])
    if np.median(unlike(seen[0][0], within)) <= UNLIKE:
        return None
    first = round(WIDTH[0] / STEP) - 1
    last = first + int(np.argmax(share[first:] < ROUND)) - 1
    after = last + round(SHARP / STEP)
    if last < first or far[last] > WIDTH[1] or share[after] > ELSEWHERE:
        return None
    inner = last - 1
    if middle[inner] < 0.5 * middle[1:last + 1].max() or middle[after] > 0.4 * middle[inner]:
        return None
    if max(_between(np.median(there, axis=0), np.median(within, axis=0), np.median(behind, axis=0)) for _, there in seen[2:last + 2]) <= UNLIKE:
        return None
    return Rim(float(far[last] + STEP / 2), seen[inner + 1][1], seen[after + 2][1])


def _between(colour: np.ndarray, one: np.ndarray, other: np.ndarray) -> float:
    """Levels by which a colour differs from any that two others blend into, as they do at an edge that is out of focus."""
    way = other - one
    return float(np.abs(colour - one - way * np.clip((colour - one) @ way / max(way @ way, 1.0), 0.0, 1.0)).max())


def along(edge: Polygon, far: float, ahead: Vec2) -> np.ndarray:
    """Points a mm apart on the line `far` mm outside the edge (mm), without those by the nut line and behind it."""
    line = shapely.get_coordinates(shapely.segmentize(shapely.boundary(edge.buffer(far)), 1.0))
    return line[line @ np.array(ahead) > OFF_NUT]


def seen_at(colours: np.ndarray, place: PlaneMap, points: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Those of the points (mm) that are in the picture, and their colours."""
    there = place.inverse().many(points)
    inside = ((there >= 0) & (there < colours.shape[1::-1])).all(axis=1)
    u, v = there[inside].T.astype(int)
    return points[inside], colours[v, u].astype(float)
