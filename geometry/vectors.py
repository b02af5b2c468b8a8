"""Small tuple arithmetic in the plane and in space. Units follow the arguments."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

Vec2 = tuple[float, float]
Vec3 = tuple[float, float, float]
Box = tuple[float, float, float, float]
"""(min x, min y, max x, max y)"""


def add(a: Vec2, b: Vec2) -> Vec2:
    """Sum of two plane vectors."""
    return (a[0] + b[0], a[1] + b[1])


def sub(a: Vec2, b: Vec2) -> Vec2:
    """Vector from b to a."""
    return (a[0] - b[0], a[1] - b[1])


def scale(a: Vec2, k: float) -> Vec2:
    """Vector a stretched by k."""
    return (a[0] * k, a[1] * k)


def along(a: Vec2, direction: Vec2, distance: float) -> Vec2:
    """Point reached from a by walking `distance` along a unit `direction`."""
    return (a[0] + direction[0] * distance, a[1] + direction[1] * distance)


def dot(a: Vec2, b: Vec2) -> float:
    """Scalar product."""
    return a[0] * b[0] + a[1] * b[1]


def cross(a: Vec2, b: Vec2) -> float:
    """z of the vector product; positive when b lies counter-clockwise of a."""
    return a[0] * b[1] - a[1] * b[0]


def turn(a: Vec2, b: Vec2) -> float:
    """Angle from a to b in radians, -pi to pi, positive where b lies counter-clockwise of a; 0 where one of them has no length."""
    return math.atan2(cross(a, b), dot(a, b))


def norm(a: Vec2) -> float:
    """Length of a plane vector."""
    return math.hypot(a[0], a[1])


def distance(a: Vec2, b: Vec2) -> float:
    """Distance between two points of the plane."""
    return math.hypot(a[0] - b[0], a[1] - b[1])


def nearest_between(a: Vec2, b: Vec2, p: Vec2) -> Vec2:
    """The point nearest to p of the straight line from a to b, which may be one point."""
    ahead = sub(b, a)
    squared = dot(ahead, ahead)
    return along(a, ahead, min(1.0, max(0.0, dot(sub(p, a), ahead) / squared))) if squared > 0 else a


def unit(a: Vec2) -> Vec2:
    """a at length 1; the zero vector gives (1, 0), so that callers need no special case."""
    n = math.hypot(a[0], a[1])
    return (a[0] / n, a[1] / n) if n > 0 else (1.0, 0.0)


def left(a: Vec2) -> Vec2:
    """a turned a quarter turn counter-clockwise."""
    return (-a[1], a[0])


def right(a: Vec2) -> Vec2:
    """a turned a quarter turn clockwise."""
    return (a[1], -a[0])


def mirrored(a: Vec2) -> Vec2:
    """a mirrored about the centreline of the head, x = 0."""
    return (-a[0], a[1])


def middle(a: Vec2, b: Vec2) -> Vec2:
    """Midpoint."""
    return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)


def turned(a: Vec2, angle: float) -> Vec2:
    """a turned by `angle` radians, counter-clockwise positive."""
    c, s = math.cos(angle), math.sin(angle)
    return (a[0] * c - a[1] * s, a[0] * s + a[1] * c)


def clean(a: Vec2) -> Vec2:
    """a without the dust of arithmetic: to nine decimals, and no minus before a zero."""
    return (round(a[0], 9) + 0.0, round(a[1], 9) + 0.0)


def box_about(points: Sequence[Vec2]) -> Box:
    """The box about points, of which there is one at least."""
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys), max(xs), max(ys))


def box_of_all(boxes: Iterable[Box]) -> Box:
    """The box about boxes, of which there is one at least."""
    x0, y0, x1, y1 = zip(*boxes, strict=True)
    return (min(x0), min(y0), max(x1), max(y1))


def along3(a: Vec3, direction: Vec3, length: float) -> Vec3:
    """Point reached from a by walking `length` along a unit `direction` in space."""
    return (a[0] + direction[0] * length, a[1] + direction[1] * length, a[2] + direction[2] * length)


def distance3(a: Vec3, b: Vec3) -> float:
    """Distance between two points of space."""
    return math.dist(a, b)
