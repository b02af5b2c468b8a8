"""Circles and straight slots with round ends through the edge of an opening in a picture."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import shapely
from msgspec import Struct

from geometry.curves import Arc, Line, Path, circle

ROUNDS = 12
"""Steps in which a shape is brought nearer to its points, at the most"""
STILL = 1e-4
"""mm by which the last step may still change it"""


class Round(Struct, frozen=True):
    """All that is `radius` mm or less from a straight line between two points, which may be one."""

    ends: tuple[tuple[float, float], tuple[float, float]]
    """mm"""
    radius: float
    """mm"""
    off: float
    """mm by which the points stray from its edge: the root of the mean square"""
    farthest: float
    """mm by which any of them does"""

    def path(self) -> Path:
        """Its edge, counter-clockwise."""
        (ax, ay), (bx, by) = self.ends
        length = math.hypot(bx - ax, by - ay)
        if length == 0:
            return circle((ax, ay), self.radius)
        nx, ny = -(by - ay) / length * self.radius, (bx - ax) / length * self.radius
        p, q, r, s = (ax - nx, ay - ny), (bx - nx, by - ny), (bx + nx, by + ny), (ax + nx, ay + ny)
        return Path((Line(p, q), Arc.bulging(q, r, 1.0), Line(r, s), Arc.bulging(s, p, 1.0)), closed=True)


def through_circle(points: np.ndarray) -> Round:
    """The circle nearest to (n, 2) points (mm) in the sense of least squares, however far they stray from one."""
    middle = points.mean(axis=0)
    begin = np.array([*middle, np.hypot(*(points - middle).T).mean()])
    x, y, radius = _nearest(lambda c: np.hypot(points[:, 0] - c[0], points[:, 1] - c[1]) - c[2], begin)
    off = np.hypot(points[:, 0] - x, points[:, 1] - y) - radius
    return _round((x, y), (x, y), radius, off)


def through_slot(points: np.ndarray) -> Round:
    """The straight slot with round ends nearest to (n, 2) points (mm), however far they stray from one."""
    corners = shapely.get_coordinates(shapely.oriented_envelope(shapely.multipoints(points)))
    sides = np.diff(corners[:3], axis=0)
    size = np.hypot(*sides.T)
    along = sides[int(size.argmax())] / max(size.max(), 1e-9)
    middle = corners[:4].mean(axis=0)
    half = max(float(size.max() - size.min()) / 2, 0.0)
    begin = np.array([*middle, math.atan2(along[1], along[0]), half, float(size.min()) / 2])

    def off(s: np.ndarray) -> np.ndarray:
        c, k = math.cos(s[2]), math.sin(s[2])
        d = points - s[:2]
        u, v = d @ (c, k), d @ (-k, c)
        return np.hypot(np.maximum(np.abs(u) - max(s[3], 0.0), 0.0), v) - s[4]
    x, y, angle, half, radius = found = _nearest(off, begin)
    half = max(half, 0.0)
    dx, dy = half * math.cos(angle), half * math.sin(angle)
    return _round((x - dx, y - dy), (x + dx, y + dy), radius, off(found))


def _round(one: tuple[float, float], other: tuple[float, float], radius: float, off: np.ndarray) -> Round:
    ends = tuple((float(x), float(y)) for x, y in (one, other))
    return Round(ends, float(radius), float(np.sqrt((off**2).mean())), float(np.abs(off).max()))


def _nearest(off: Callable[[np.ndarray], np.ndarray], begin: np.ndarray) -> np.ndarray:
    """The numbers at which the sum of the squares of `off` is least, from a place near there (Gauss and Newton)."""
    now, step = begin, 1e-5
    for _ in range(ROUNDS):
        here = off(now)
        slopes = np.stack([(off(now + step * unit) - here) / step for unit in np.eye(len(now))], axis=1)
        change = np.linalg.lstsq(slopes, -here, rcond=None)[0]
        now = now + change
        if np.abs(change).max() <= STILL:
            break
    return now
