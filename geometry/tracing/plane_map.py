"""Plane perspective: a flat thing in a photo, set straight and to scale.

A pinhole camera maps a plane by a projective map of eight numbers; four points
of which no three lie on a line fix it. Source: any textbook on projective
geometry (direct linear transformation).
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
from msgspec import Struct

from geometry.errors import GeometryError
from geometry.saying import say
from geometry.vectors import Vec2


class PlaneMap(Struct, frozen=True):
    """x' = (a x + b y + c) / (g x + h y + i), y' = (d x + e y + f) / (g x + h y + i): nine numbers, row by row."""

    rows: tuple[float, float, float, float, float, float, float, float, float] = (1, 0, 0, 0, 1, 0, 0, 0, 1)

    def __call__(self, p: Vec2) -> Vec2:
        """The mapped point. GeometryError on the horizon, where it runs off to infinity."""
        a, b, c, d, e, f, g, h, i = self.rows
        w = g * p[0] + h * p[1] + i
        if abs(w) < 1e-12:
            raise GeometryError(say("This point of the picture lies on the horizon: choose one nearer the head."))
        return ((a * p[0] + b * p[1] + c) / w, (d * p[0] + e * p[1] + f) / w)

    def many(self, points: np.ndarray) -> np.ndarray:
        """(n, 2) mapped points."""
        m = self.matrix
        out = np.asarray(points, dtype=float) @ m[:, :2].T + m[:, 2]
        return out[:, :2] / out[:, 2:]

    @property
    def matrix(self) -> np.ndarray:
        """The 3 x 3 matrix."""
        return np.array(self.rows, dtype=float).reshape(3, 3)

    def after(self, first: PlaneMap) -> PlaneMap:
        """The map that applies `first`, then this one."""
        return _of(self.matrix @ first.matrix)

    def inverse(self) -> PlaneMap:
        """The way back. GeometryError when the map flattens the plane."""
        m = self.matrix
        scale = np.abs(m).max()
        if not abs(np.linalg.det(m / scale)) > 1e-18:
            raise GeometryError(say("This map flattens the picture to a line."))
        return _of(np.linalg.inv(m))

    def size_at(self, p: Vec2) -> float:
        """Length in the target of one unit at p: the root of the area factor there, always positive."""
        a, b, c, d, e, f, g, h, i = self.rows
        w = g * p[0] + h * p[1] + i
        x, y = self(p)
        det = (a - g * x) * (e - h * y) - (b - h * x) * (d - g * y)
        return math.sqrt(abs(det)) / abs(w)

    def sees(self, width: float, height: float) -> bool:
        """Whether a whole picture of that size lies on one side of the horizon."""
        g, h, i = self.rows[6:]
        ws = [g * x + h * y + i for x in (0.0, width) for y in (0.0, height)]
        return min(ws) > 1e-9 or max(ws) < -1e-9


def _of(m: np.ndarray) -> PlaneMap:
    m = m / np.abs(m).max()
    if m[2, 2] < 0:
        m = -m
    return PlaneMap(tuple(float(v) for v in m.ravel()))


def through_four(source: Sequence[Vec2], target: Sequence[Vec2]) -> PlaneMap:
    """The one map that takes four points to four others, in order.

    GeometryError when three of either four lie (nearly) on a line, or when the
    corners run round in another order, so that the horizon cuts between them.
    """
    for four in (source, target):
        _four(four)
    src, away = _normal(source)
    dst, home = _normal(target)
    rows, right = [], []
    for (x, y), (u, v) in zip(src, dst, strict=True):
        rows += [[x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]]
        right += [u, v]
    try:
        found = np.linalg.solve(np.array(rows), np.array(right))
    except np.linalg.LinAlgError as error:
        raise GeometryError(say("These four corners fix no plane: move them apart.")) from error
    made = _of(np.linalg.inv(home) @ np.append(found, 1.0).reshape(3, 3) @ away)
    g, h, i = made.rows[6:]
    ws = [g * x + h * y + i for x, y in source]
    if min(ws) * max(ws) <= 0:
        raise GeometryError(say("The four corners do not run round a rectangle: put them in order, one at each corner."))
    return made


def straightened(corners: Sequence[Vec2], width: float, height: float) -> PlaneMap:
    """From the picture to mm, for a rectangle width x height mm whose corners lie at these points of the picture.

    Corners in order: upper left, upper right, lower right, lower left as seen
    in the picture. The rectangle's lower left corner becomes the origin, y up.
    """
    if not (math.isfinite(width) and math.isfinite(height) and width > 0 and height > 0):
        raise GeometryError(say("The rectangle needs a width and a height above zero."))
    return through_four(corners, ((0.0, height), (width, height), (width, 0.0), (0.0, 0.0)))


def scaled(a: Vec2, b: Vec2, distance: float) -> PlaneMap:
    """From the picture to mm, for two of its points that are `distance` mm apart; y turns up, nothing is straightened."""
    pixels = math.dist(a, b)
    if not (math.isfinite(distance) and distance > 0):
        raise GeometryError(say("The two points need a distance above zero between them."))
    if pixels < 2:
        raise GeometryError(say("The two points lie on one another: move them apart, the farther the better."))
    k = distance / pixels
    return PlaneMap((k, 0, 0, 0, -k, 0, 0, 0, 1))


def laid(flat: PlaneMap, bass: Vec2, treble: Vec2, mirrored: bool = False) -> PlaneMap:
    """`flat` moved and turned so that the nut's ends (points of the picture) lie on the nut line, its middle at 0, 0.

    `mirrored` for a picture of the back: bass and treble change places in it.
    """
    p, q = flat(bass), flat(treble)
    if math.dist(p, q) < 1.0:
        raise GeometryError(say("The ends of the nut lie on one another: put them at either side of the neck."))
    angle = math.atan2(q[1] - p[1], q[0] - p[0])
    c, s = math.cos(angle), math.sin(angle)
    x, y = (p[0] + q[0]) / 2, (p[1] + q[1]) / 2
    up = -1.0 if mirrored else 1.0
    place = PlaneMap((c, s, -c * x - s * y, -s * up, c * up, (s * x - c * y) * up, 0, 0, 1))
    return place.after(flat)


def moved(map_: PlaneMap, shift: Vec2 = (0.0, 0.0), turn: float = 0.0) -> PlaneMap:
    """The map with its result turned about the origin (rad) and then shifted (mm)."""
    c, s = math.cos(turn), math.sin(turn)
    return PlaneMap((c, -s, shift[0], s, c, shift[1], 0, 0, 1)).after(map_)


def _four(points: Sequence[Vec2]) -> None:
    if len(points) != 4 or not all(math.isfinite(c) for p in points for c in p):
        raise GeometryError(say("A rectangle has four corners."))
    size = max(math.dist(p, q) for p in points for q in points)
    for i in range(4):
        a, b, c = (points[(i + k) % 4] for k in range(3))
        cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
        if not abs(cross) > 1e-3 * size * size:
            raise GeometryError(say("Three of the corners lie on one line, or two on one another: move them apart."))


def _normal(points: Sequence[Vec2]) -> tuple[np.ndarray, np.ndarray]:
    """(points about their middle at size 1, the matrix that did it): keeps the equations well conditioned."""
    p = np.array(points, dtype=float)
    middle = p.mean(axis=0)
    k = 1.0 / np.abs(p - middle).max()
    return (p - middle) * k, np.array([[k, 0, -k * middle[0]], [0, k, -k * middle[1]], [0, 0, 1]])
