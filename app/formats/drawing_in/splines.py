"""B-splines, rational or not, clamped or not, cut into exact cubics where they are cubics.

Evaluation follows the polar form (blossom) of the spline over its own domain
[knot[p], knot[n + 1]], so no assumption is made about the end knots.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Segment
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.vectors import Vec2

FIT = 1e-7
"""How far a fitted cubic may leave the curve, as a part of the curve's size (2e-5 mm on 200 mm)."""


def spline_segments(degree: int, knots: Sequence[float], points: Sequence[Vec2], weights: Sequence[float] = ()) -> list[Segment]:
    """The spline as lines, arcs and cubics, in order.

    Exact for degree 1 to 3 without weights (equal weights count as none).
    Rational quadratics that are circular become arcs; everything else becomes
    cubics within FIT of the curve's size. Raises GeometryError when the
    numbers do not make a spline.
    """
    p, count = degree, len(points)
    if p < 1 or count < p + 1:
        raise GeometryError(say("A spline of degree {p} needs at least {p2} control points, and has {count}.",
                                p=p, p2=p + 1, count=count))
    if len(knots) != count + p + 1:
        raise GeometryError(say("A spline of degree {p} with {count} control points needs {count2} knots, and has {knots}.",
                                p=p, count=count, count2=count + p + 1, knots=len(knots)))
    if weights and len(weights) != count:
        raise GeometryError(say("A spline with {count} control points has {weights} weights.",
                                count=count, weights=len(weights)))
    if any(b < a for a, b in zip(knots, knots[1:], strict=False)):
        raise GeometryError(say("The knots of a spline must not go down."))
    rational = bool(weights) and max(weights) - min(weights) > 1e-12 * max(weights)
    if rational and min(weights) <= 0:
        raise GeometryError(say("The weights of a spline must be above zero."))
    w = np.array(weights if rational else [1.0] * count)
    homogeneous = np.column_stack([np.array(points, dtype=float) * w[:, None], w])
    size = float(np.ptp(np.array(points, dtype=float), axis=0).max())
    out: list[Segment] = []
    for i in range(p, count):
        if knots[i + 1] <= knots[i]:
            continue
        bezier = _piece(p, knots, homogeneous, i)
        out.extend(_as_segments(bezier, rational, FIT * size))
    return out


def _piece(p: int, knots: Sequence[float], points: np.ndarray, i: int) -> np.ndarray:
    """Bezier control points of the span from knot i to knot i + 1."""
    a, b = knots[i], knots[i + 1]
    return np.array([_blossom(p, knots, points, i, [a] * (p - j) + [b] * j) for j in range(p + 1)])


def _blossom(p: int, knots: Sequence[float], points: np.ndarray, i: int, at: Sequence[float]) -> np.ndarray:
    """Polar form of the span from knot i, at p arguments (de Boor's scheme with a new argument each round)."""
    d = [points[j] for j in range(i - p, i + 1)]
    for r in range(1, p + 1):
        for j in range(p, r - 1, -1):
            lo, hi = knots[j + i - p], knots[j + 1 + i - r]
            k = (at[r - 1] - lo) / (hi - lo)
            d[j] = d[j - 1] * (1 - k) + d[j] * k
    return d[p]


def _as_segments(bezier: np.ndarray, rational: bool, within: float) -> list[Segment]:
    p = len(bezier) - 1
    if not rational and p <= 3:
        q = [(float(x), float(y)) for x, y, _ in bezier]
        if p == 1:
            return [Line(q[0], q[1])]
        if p == 2:
            return [Cubic.raised(*q)]
        return [Cubic(*q)]
    if rational and p == 1:
        return [Line(_at(bezier, 0.0)[0], _at(bezier, 1.0)[0])]
    arc = _as_arc(bezier) if rational else None
    return [arc] if arc is not None else _fitted(bezier, 0.0, 1.0, within, 0)


def _at(bezier: np.ndarray, t: float) -> tuple[Vec2, Vec2]:
    """Point and first derivative by t of a rational Bezier piece."""
    level = bezier
    while len(level) > 2:
        level = level[:-1] * (1 - t) + level[1:] * t
    slope = (level[1] - level[0]) * (len(bezier) - 1)
    x, y, w = level[0] * (1 - t) + level[1] * t
    point = (float(x / w), float(y / w))
    return point, (float((slope[0] - point[0] * slope[2]) / w), float((slope[1] - point[1] * slope[2]) / w))


def _as_arc(bezier: np.ndarray) -> Arc | None:
    """The piece as an arc when it is one to within 1e-9 of its radius, in even progress."""
    p0, p1 = _at(bezier, 0.0)[0], _at(bezier, 1.0)[0]
    try:
        arc = Arc.through(p0, _at(bezier, 0.5)[0], p1)
    except GeometryError:
        return None
    last = 0.0
    for k in range(1, 10):
        q = _at(bezier, k / 10)[0]
        t = arc.nearest(q)
        if abs(v.distance(q, arc.centre) - arc.radius) > 1e-9 * arc.radius or t <= last:
            return None
        last = t
    return arc


def _fitted(bezier: np.ndarray, a: float, b: float, within: float, depth: int) -> list[Segment]:
    """Cubics with the curve's own ends and end slopes, halved until they fit."""
    (p, u), (q, w) = _at(bezier, a), _at(bezier, b)
    h = (b - a) / 3
    cubic = Cubic(p, v.along(p, u, h), v.along(q, w, -h), q)
    if depth >= 10 or all(_off(cubic, _at(bezier, a + (b - a) * k / 8)[0], k / 8) <= within for k in range(1, 8)):
        return [cubic]
    m = (a + b) / 2
    return [*_fitted(bezier, a, m, within, depth + 1), *_fitted(bezier, m, b, within, depth + 1)]


def _off(cubic: Cubic, p: Vec2, t: float) -> float:
    """Distance from p to the cubic near t: straight across the curve there."""
    q, d = cubic.point(t), cubic.derivative(t)
    n = math.hypot(*d)
    return abs(v.cross(d, v.sub(p, q))) / n if n > 0 else v.distance(p, q)
