"""Proof that no direction parts two overlapping cylinders by a shorter shift than the one found; or a shorter one.

The shift h(n) along n is the support of the convex body of all differences
between points of the two. A point p of that body, taken where it is farthest along the
middle of a spherical triangle, bounds h from below on all of it: h(n) >= n . p, and a linear
function that is positive at the three corners is nowhere less between them. Triangles whose bound
is no better than the best shift known are done with; the others are cut in sixteen.
The bound strays from h by the square of the triangle's size, so few are cut often.
Where the middle of one is better than all before, Newton's method goes to the bottom of that hollow.
"""

from __future__ import annotations

import math

import numpy as np

AGREE = 0.005
"""mm within which the shift is proved to be the least"""
_LEVELS = 6
_LOOKS = (0, 1, 2)
"""levels at which what is nearly as good is looked at too: about the size of a hollow"""
_BESIDE = math.cos(0.06)
"""cosine of the angle within which two directions lead into the same hollow"""
_THERE = 1e-9
"""rad: from so near the bottom of a hollow nothing more is to be gained"""
_MOST = 6000
"""triangles of one pair at a time; beyond it the best shift known stands without its proof"""


class Pairs:
    """n pairs in frames of their own: the first axis is (1, 0, 0), the second (c, s, 0) with c and s never negative.

    `w` in mm runs from the start of the first to that of the second, its third component never positive.
    """

    __slots__ = ("c", "length_a", "length_b", "radius_a", "radius_b", "rows", "s", "wx", "wy", "wz")

    def __init__(self, rows: np.ndarray) -> None:
        """`rows` (9, n): w, c, s, length and radius of the first, length and radius of the second."""
        self.rows = rows
        (self.wx, self.wy, self.wz, self.c, self.s, self.length_a, self.radius_a, self.length_b, self.radius_b) = rows

    def ring(self) -> np.ndarray:
        """Directions (3, 8, n) in the plane of both axes: along one or square to it, in order round m."""
        ring = np.zeros((3, 8, len(self.c)))
        ring[0, 0] = ring[1, 2] = 1.0
        ring[0, 1], ring[1, 1], ring[0, 3], ring[1, 3] = self.c, self.s, -self.s, self.c
        ring[:, 4:] = -ring[:, :4]
        return ring

    def shift(self, n: np.ndarray) -> np.ndarray:
        """How far the first has to go along unit directions n (3, ..., n) to be clear of the second, mm."""
        x, y, z = n
        along = self.c * x + self.s * y
        across = self.c * y - self.s * x
        return (x * self.wx + y * self.wy + z * self.wz
                + self.length_a * np.maximum(0.0, -x) + self.radius_a * np.sqrt(y * y + z * z)
                + self.length_b * np.maximum(0.0, along) + self.radius_b * np.sqrt(across * across + z * z))


def proved(pairs: Pairs, value: np.ndarray, way: np.ndarray, owner: np.ndarray, corners: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(least shift (n,) in mm, its direction (3, n)), begun from the best ones known.

    `owner` (k,), `corners` (3, 3, k): the triangles in which it may be, each in one lune of its pair; first the coordinate, then the
    corner. Lunes have sides where an axis is met squarely, so that in each the same ends of both cylinders are farthest. Only
    the half of all directions that leans towards m is looked at: the other is never better.
    """
    if not len(owner):
        return value, way
    value, way, visited = value.copy(), way.copy(), way.copy()
    count = len(value)
    ends = _ends(pairs, owner, corners)
    start, corners = np.tile(np.arange(len(owner)), 16), _cut(corners)
    first = owner
    for level in range(_LEVELS):
        x, y, z = middle = corners[:, 0] + corners[:, 1] + corners[:, 2]
        middle /= np.sqrt(x * x + y * y + z * z)
        px, py, pz = _farthest(ends[:, start], middle)
        owner = first[start]
        here, known = x * px + y * py + z * pz, value[owner]
        near = AGREE if level in _LOOKS else 0.0
        if (here < known + near).any():
            _descend(pairs, owner, middle, here, near, value, way, visited)
            known = value[owner]
        least = (corners[0] * px + corners[1] * py + corners[2] * pz).min(axis=0)
        open_ = (least < known - AGREE).nonzero()[0]
        if len(open_) > _MOST:
            open_ = open_[np.bincount(owner[open_], minlength=count)[owner[open_]] <= _MOST]
        if not len(open_):
            break
        start, corners = np.tile(start[open_], 16), _cut(corners[:, :, open_])
    return value, way


def _ends(pairs: Pairs, owner: np.ndarray, corners: np.ndarray) -> np.ndarray:
    """What is the same all over each of some triangles (7, k): the difference of the ends that are farthest, c, s and both radii."""
    x, y, _ = corners[:, 0] + corners[:, 1] + corners[:, 2]
    wx, wy, wz, c, s, length_a, radius_a, length_b, radius_b = pairs.rows[:, owner]
    end_b = length_b * (c * x + s * y > 0)
    return np.array([wx - length_a * (x < 0) + end_b * c, wy + end_b * s, wz, c, s, radius_a, radius_b])


def _farthest(ends: np.ndarray, n: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The point of the body of differences that is farthest along n (3, k), each in a triangle of which `ends` (7, k) tells."""
    x, y, z = n
    ex, ey, ez, c, s, radius_a, radius_b = ends
    across, upwards = c * y - s * x, z * z
    ratio_a, ratio_b = radius_a / np.sqrt(y * y + upwards), radius_b / np.sqrt(across * across + upwards)
    across *= ratio_b
    return ex - across * s, ey + ratio_a * y + across * c, ez + (ratio_a + ratio_b) * z


_CORNERS = np.array([(i, k, 4 - i - k) for i in range(5) for k in range(5 - i)]).T[:, None, :, None] / 4
"""Weights (3, 1, 15, 1) of a triangle's own corners at the corners of its sixteen parts."""


def _parts() -> np.ndarray:
    """Which corners the sixteen parts (3, 16) have, by their places in _CORNERS."""
    at = {(i, k): place for place, (i, k) in enumerate((i, k) for i in range(5) for k in range(5 - i))}
    upright = [(at[i, k], at[i + 1, k], at[i, k + 1]) for i in range(4) for k in range(4 - i)]
    turned = [(at[i + 1, k], at[i + 1, k + 1], at[i, k + 1]) for i in range(3) for k in range(3 - i)]
    return np.array(upright + turned).T


_PARTS = _parts()


def _cut(corners: np.ndarray) -> np.ndarray:
    """The sixteen parts (3, 3, 16 k) of each triangle (3, 3, k), sides cut in four: all first parts, all second, and so on."""
    one, two, three = _CORNERS
    whole = corners[:, 0, None] * one + corners[:, 1, None] * two + corners[:, 2, None] * three
    x, y, z = whole
    whole /= np.sqrt(x * x + y * y + z * z)
    return whole[:, _PARTS].reshape(3, 3, -1)


def _descend(pairs: Pairs, owner: np.ndarray, middle: np.ndarray, here: np.ndarray, near: float, value: np.ndarray,
             way: np.ndarray, visited: np.ndarray) -> None:
    """Newton's method from the best middle of each pair that may be above a better hollow; `value`, `way` are brought up to date.

    A middle may be above one that is better than the best known, or up to `near` mm worse unless it lies beside
    that or where one was just now: `visited` (3, n) holds the bottom last come to.
    """
    limit = value[owner]
    if near:
        beside = np.maximum((middle * way[:, owner]).sum(axis=0), (middle * visited[:, owner]).sum(axis=0)) >= _BESIDE
        limit = np.where(beside, limit, limit + near)
    promising = np.flatnonzero(here < limit)
    # Of each pair the best: what else is computed at the same time does not matter.
    order = promising[np.lexsort((here[promising], owner[promising]))]
    seen = -1
    for at, i in zip(order.tolist(), owner[order].tolist(), strict=True):
        if i != seen:
            seen = i
            found, least = _bottom(tuple(pairs.rows[:, i].tolist()), tuple(middle[:, at].tolist()))
            visited[:, i] = least
            if found < value[i]:
                value[i], way[:, i] = found, least


def _bottom(row: tuple[float, ...], n: tuple[float, float, float]) -> tuple[float, tuple[float, float, float]]:
    """The bottom (mm, direction) of the hollow about a direction; never above where it starts."""
    best = _shift(row, n)
    for _ in range(30):
        step = _newton(row, n, best)
        if step is None:
            break
        (x, y, z), (dx, dy, dz) = n, step
        if abs(dx) + abs(dy) + abs(dz) < _THERE:
            break
        for _ in range(8):
            tx, ty, tz = x + dx, y + dy, z + dz
            size = math.hypot(tx, ty, tz)
            trial = (tx / size, ty / size, tz / size)
            found = _shift(row, trial)
            if found < best:
                break
            dx, dy, dz = dx / 3, dy / 3, dz / 3
        else:
            break
        gained, n, best = best - found, trial, found
        if gained < 1e-13:
            break
    return best, n


def _shift(row: tuple[float, ...], n: tuple[float, float, float]) -> float:
    """As Pairs.shift, of one."""
    wx, wy, wz, c, s, length_a, radius_a, length_b, radius_b = row
    x, y, z = n
    along, across = c * x + s * y, c * y - s * x
    return (x * wx + y * wy + z * wz + length_a * max(0.0, -x) + radius_a * math.hypot(y, z)
            + length_b * max(0.0, along) + radius_b * math.hypot(across, z))


def _newton(row: tuple[float, ...], n: tuple[float, float, float], value: float) -> tuple[float, float, float] | None:
    """A step square to n towards the least shift: Newton's where the surface is a bowl, else down its slope.

    The bend of the shift in a direction is the radius of the body's surface there, less the shift itself;
    a rim of radius r that is met s (sine) off its axis adds r / s across. None where there is no slope.
    """
    wx, wy, wz, c, s, length_a, radius_a, length_b, radius_b = row
    x, y, z = n
    along, across = c * x + s * y, c * y - s * x
    sine_a, sine_b = math.hypot(y, z), math.hypot(across, z)
    if sine_a < 1e-9 or sine_b < 1e-9:
        return None
    end_b = length_b if along > 0 else 0.0
    p = (wx - (length_a if x < 0 else 0.0) + end_b * c - radius_b * across * s / sine_b,
         wy + radius_a * y / sine_a + end_b * s + radius_b * across * c / sine_b,
         wz + (radius_a / sine_a + radius_b / sine_b) * z)
    # One tangent square to the first axis, the other square to it.
    t = (0.0, -z / sine_a, y / sine_a)
    u = (y * t[2] - z * t[1], z * t[0] - x * t[2], x * t[1] - y * t[0])
    g, k = _dot(t, p), _dot(u, p)
    if math.hypot(g, k) < 1e-12:
        return None
    rim = (s * z / sine_b, -c * z / sine_b, across / sine_b)
    rt, ru = _dot(rim, t), _dot(rim, u)
    a, b, d = radius_a / sine_a + radius_b / sine_b * rt * rt - value, radius_b / sine_b * rt * ru, radius_b / sine_b * ru * ru - value
    bowl = a * d - b * b
    if a > 0 and bowl > 1e-12 * a * a:
        first, second = (b * k - d * g) / bowl, (b * g - a * k) / bowl
    else:
        first, second = -g, -k
    size = math.hypot(first, second)
    if size > 0.3:
        first, second = first * 0.3 / size, second * 0.3 / size
    return first * t[0] + second * u[0], first * t[1] + second * u[1], first * t[2] + second * u[2]


def _dot(a: tuple[float, float, float], b: tuple[float, float, float]) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
