"""A cubic Bezier segment, kept exact until something asks for points."""

from __future__ import annotations

import math
from bisect import bisect_right
from functools import lru_cache
from itertools import pairwise

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.curves.bearable import bearable
from geometry.tolerance import TOUCH
from geometry.vectors import Box, Vec2

_MANY = 64
"""Chords from which a curve's points are worked out all at once."""

_MARKS = 16
"""Steps of the parameter at which a curve's length is kept."""

_MOST_HALVINGS, _AGREE = 12, 1e-10
"""How often a stretch is halved for its length, and the share of it to which two rules then agree."""

# Gauss-Legendre nodes and weights on 0..1 (16 points), from numpy.polynomial.legendre.leggauss(16).
_GAUSS = (
    (0.005299532504175031, 0.013576229705877047), (0.0277124884633837, 0.031126761969323946),
    (0.06718439880608412, 0.04757925584124639), (0.1222977958224985, 0.06231448562776694),
    (0.19106187779867811, 0.07479799440828837), (0.2709916111713863, 0.08457825969750127),
    (0.35919822461037054, 0.09130170752246179), (0.4524937450811813, 0.0947253052275342),
    (0.5475062549188188, 0.0947253052275342), (0.6408017753896295, 0.09130170752246179),
    (0.7290083888286136, 0.08457825969750127), (0.8089381222013219, 0.07479799440828837),
    (0.8777022041775016, 0.06231448562776694), (0.9328156011939159, 0.04757925584124639),
    (0.9722875115366163, 0.031126761969323946), (0.994700467495825, 0.013576229705877047),
)


class Cubic(Struct, frozen=True, tag=True):
    """Bezier curve from p0 to p1 with handles c0 and c1 (mm)."""

    p0: Vec2
    c0: Vec2
    c1: Vec2
    p1: Vec2

    @classmethod
    def raised(cls, p: Vec2, c: Vec2, q: Vec2) -> Cubic:
        """The quadratic Bezier curve from p to q with the one handle c (mm): the same curve."""
        return cls(p, v.along(p, v.sub(c, p), 2 / 3), v.along(q, v.sub(c, q), 2 / 3), q)

    @property
    def start(self) -> Vec2:
        return self.p0

    @property
    def end(self) -> Vec2:
        return self.p1

    def point(self, t: float) -> Vec2:
        """Point at t."""
        u = 1 - t
        a, b, c, d = u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t
        return (a * self.p0[0] + b * self.c0[0] + c * self.c1[0] + d * self.p1[0],
                a * self.p0[1] + b * self.c0[1] + c * self.c1[1] + d * self.p1[1])

    def derivative(self, t: float) -> Vec2:
        """First derivative by t, mm."""
        u = 1 - t
        a, b, c = 3 * u * u, 6 * u * t, 3 * t * t
        p, q, r, s = self.p0, self.c0, self.c1, self.p1
        return (a * (q[0] - p[0]) + b * (r[0] - q[0]) + c * (s[0] - r[0]),
                a * (q[1] - p[1]) + b * (r[1] - q[1]) + c * (s[1] - r[1]))

    def second(self, t: float) -> Vec2:
        """Second derivative by t, mm."""
        u = 1 - t
        p, q, r, s = self.p0, self.c0, self.c1, self.p1
        return (6 * u * (r[0] - 2 * q[0] + p[0]) + 6 * t * (s[0] - 2 * r[0] + q[0]),
                6 * u * (r[1] - 2 * q[1] + p[1]) + 6 * t * (s[1] - 2 * r[1] + q[1]))

    @property
    def third(self) -> Vec2:
        """Third derivative by t, mm: the same everywhere."""
        p, q, r, s = self.p0, self.c0, self.c1, self.p1
        return 6 * (s[0] - p[0] + 3 * (q[0] - r[0])), 6 * (s[1] - p[1] + 3 * (q[1] - r[1]))

    def tangent(self, t: float) -> Vec2:
        """Unit direction of travel; where a handle sits on its node, the direction just inside."""
        d = self.derivative(t)
        if math.hypot(*d) > 1e-9:
            return v.unit(d)
        inside = t + 1e-4 if t < 0.5 else t - 1e-4
        d = self.derivative(inside)
        return v.unit(d) if math.hypot(*d) > 1e-12 else v.unit(v.sub(self.p1, self.p0))

    def curvature(self, t: float) -> float:
        """Signed curvature in 1/mm, positive when turning left; 0 where the speed vanishes."""
        d, dd = self.derivative(t), self.second(t)
        speed = math.hypot(*d)
        return v.cross(d, dd) / speed ** 3 if speed > 1e-9 else 0.0

    def length_to(self, t: float) -> float:
        """Length in mm from the start to t: Gauss quadrature, halved until two rules agree to 1e-9 mm."""
        return _length(self, 0.0, t)

    def length(self) -> float:
        """Length in mm, to about 1e-9 mm."""
        return _whole(self)

    def at_length(self, s: float) -> float:
        """Parameter t at length s (mm) from the start, by guarded Newton steps; clamped to 0..1."""
        total = self.length()
        if s <= 0 or total == 0:
            return 0.0
        if s >= total:
            return 1.0
        lengths = _marks(self)
        k = min(max(bisect_right(lengths, s) - 1, 0), _MARKS - 1)
        at, lo, hi = k / _MARKS, k / _MARKS, (k + 1) / _MARKS
        t = at + (s - lengths[k]) / max(lengths[k + 1] - lengths[k], 1e-300) / _MARKS
        for _ in range(60):
            miss = lengths[k] + _length(self, at, t) - s
            if abs(miss) < 1e-10 or hi - lo < 1e-15:
                break
            lo, hi = (lo, t) if miss > 0 else (t, hi)
            speed = math.hypot(*self.derivative(t))
            step = t - miss / speed if speed > 1e-12 else lo
            t = step if lo < step < hi else (lo + hi) / 2
        return t

    def area_term(self) -> float:
        """Its share of a closed loop's area in mm2 by Green's theorem, in closed form."""
        p, q, r, s = self.p0, self.c0, self.c1, self.p1
        return (6 * v.cross(p, q) + 3 * v.cross(p, r) + v.cross(p, s)
                + 3 * v.cross(q, r) + 3 * v.cross(q, s) + 6 * v.cross(r, s)) / 20

    def extremes(self, axis: int) -> list[float]:
        """Inner parameters where x (axis 0) or y (axis 1) turns round."""
        p, q, r, s = self.p0[axis], self.c0[axis], self.c1[axis], self.p1[axis]
        return _roots(s - 3 * r + 3 * q - p, 2 * (r - 2 * q + p), q - p)

    def level(self, axis: int, value: float) -> list[float]:
        """Parameters in 0..1 where x (axis 0) or y (axis 1) equals `value` mm; none for a flat curve."""
        p, q, r, s = self.p0[axis], self.c0[axis], self.c1[axis], self.p1[axis]
        if not min(p, q, r, s) - TOUCH <= value <= max(p, q, r, s) + TOUCH:  # a curve lies between its points
            return []

        a, b, c, d = s - 3 * r + 3 * q - p, 3 * (r - 2 * q + p), 3 * (q - p), p - value
        marks = [0.0, *sorted(self.extremes(axis)), 1.0]
        found = [t for t, y in ((0.0, p), (1.0, s)) if abs(y - value) <= TOUCH]
        for (lo, at_lo), (hi, at_hi) in pairwise([(t, ((a * t + b) * t + c) * t + d) for t in marks]):
            if at_lo * at_hi < 0 and min(abs(at_lo), abs(at_hi)) > TOUCH:
                t = (lo + hi) / 2
                for _ in range(60):  # the tangent's way, halves where that leads out
                    miss, slope = ((a * t + b) * t + c) * t + d, (3 * a * t + 2 * b) * t + c
                    if miss == 0:
                        break
                    lo, hi = (t, hi) if miss * at_lo > 0 else (lo, t)
                    last, t = t, t - miss / slope if slope else lo
                    t = t if lo < t < hi else (lo + hi) / 2
                    if abs(t - last) < 1e-15:
                        break
                found.append(t)
        return sorted(found) if max(abs(y - value) for y in (p, q, r, s)) > TOUCH else []

    def box(self) -> Box:
        """(min x, min y, max x, max y) in mm, exact."""
        return v.box_about([self.p0, self.p1, *(self.point(t) for axis in (0, 1) for t in self.extremes(axis))])

    def chords(self, sagitta: float) -> int:
        """How many chords `flatten` makes of the curve.

        The count follows from the largest second derivative (chord error
        <= h^2 M / 8), so the bound holds for every cubic.
        """
        p, q, r, s = self.p0, self.c0, self.c1, self.p1
        most = 6 * max(math.hypot(r[0] - 2 * q[0] + p[0], r[1] - 2 * q[1] + p[1]),
                       math.hypot(s[0] - 2 * r[0] + q[0], s[1] - 2 * r[1] + q[1]))
        return max(1, math.ceil(math.sqrt(most / (8 * sagitta)) - 1e-9))

    def flatten(self, sagitta: float) -> list[Vec2]:
        """Points on the curve from start to end; no chord leaves it by more than `sagitta` mm.

        GeometryError for a curve that would take more than MOST_CHORDS.
        """
        n = bearable(self.chords(sagitta))
        if n < _MANY:
            inner = [self.point(i / n) for i in range(1, n)]
        else:
            x, y = self.point(np.arange(1, n) / n)  # the same steps in the same order: the same numbers to the last bit
            inner = zip(x.tolist(), y.tolist(), strict=True)
        return [self.p0, *inner, self.p1]

    def nearest(self, p: Vec2) -> float:
        """Parameter t in 0..1 of the point nearest to p: coarse scan, then Newton, to about 1e-12."""
        n = 16
        (ax, ay), (bx, by), (cx, cy), (dx, dy) = self.p0, self.c0, self.c1, self.p1
        px, py = p
        # Point and derivatives as their methods work them out, term by term, without a call for each: a drag asks this.
        scan = [((a * ax + b * bx + c * cx + d * dx - px) ** 2 + (a * ay + b * by + c * cy + d * dy - py) ** 2, t)
                for a, b, c, d, t in _SCAN]
        scan.sort()
        best_d, best_t = scan[0]
        fastest = 3 * max(math.hypot(bx - ax, by - ay), math.hypot(cx - bx, cy - by), math.hypot(dx - cx, dy - cy))
        known = math.inf  # a distance found already, from the second start on
        for _, t in scan[:3]:
            lo, hi = max(0.0, t - 1 / n), min(1.0, t + 1 / n)
            for _ in range(40):
                u = 1 - t
                a, b, c = 3 * u * u, 6 * u * t, 3 * t * t
                x1 = a * (bx - ax) + b * (cx - bx) + c * (dx - cx)
                y1 = a * (by - ay) + b * (cy - by) + c * (dy - cy)
                x2 = 6 * u * (cx - 2 * bx + ax) + 6 * t * (dx - 2 * cx + bx)
                y2 = 6 * u * (cy - 2 * by + ay) + 6 * t * (dy - 2 * cy + by)
                a, b, c, d = u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t
                wx, wy = a * ax + b * bx + c * cx + d * dx - px, a * ay + b * by + c * cy + d * dy - py
                if math.hypot(wx, wy) - fastest * (hi - lo) > known:
                    break  # nothing in this bracket comes as near; without this the way to its end took 40 steps
                slope = wx * x1 + wy * y1
                bend = x1 * x1 + y1 * y1 + (wx * x2 + wy * y2)
                if slope > 0:
                    hi = t
                else:
                    lo = t
                step = t - slope / bend if bend > 0 else (lo + hi) / 2
                step = step if lo <= step <= hi else (lo + hi) / 2
                if abs(step - t) < 1e-14:
                    break
                t = step
            found = _squared(self.point(t), p)
            if found < best_d:
                best_d, best_t = found, t
            known = math.sqrt(best_d) + 1e-9
        return best_t

    def split(self, t: float) -> tuple[Cubic, Cubic]:
        """The two parts before and after t (de Casteljau)."""
        def mix(a: Vec2, b: Vec2) -> Vec2:
            return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t)
        a, b, c = mix(self.p0, self.c0), mix(self.c0, self.c1), mix(self.c1, self.p1)
        d, e = mix(a, b), mix(b, c)
        m = mix(d, e)
        return Cubic(self.p0, a, d, m), Cubic(m, e, c, self.p1)

    def reversed(self) -> Cubic:
        """The same curve travelled the other way."""
        return Cubic(self.p1, self.c1, self.c0, self.p0)

    def mapped(self, matrix) -> Cubic:
        """The curve under any affine map, exact."""
        return Cubic(matrix(self.p0), matrix(self.c0), matrix(self.c1), matrix(self.p1))


def _weights(t: float) -> tuple[float, float, float, float, float]:
    """How much of each of the four points a place on a curve has, and t."""
    u = 1 - t
    return u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t, t


_SCAN = tuple(_weights(i / 16) for i in range(17))


def _squared(a: Vec2, b: Vec2) -> float:
    return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2


def _roots(a: float, b: float, c: float) -> list[float]:
    """Roots of a t^2 + b t + c strictly inside 0..1."""
    if abs(a) < 1e-12 * (abs(b) + abs(c) + 1e-300):
        found = [-c / b] if b else []
    else:
        inside = b * b - 4 * a * c
        if inside < 0:
            return []
        root = -(b + math.copysign(math.sqrt(inside), b)) / 2
        found = [root / a] + ([c / root] if root else [])
    return [t for t in found if 0 < t < 1]


_Speed = tuple[float, float, float, float, float, float]
"""The derivative as polynomials of t: constant, linear and square part of x, then of y."""


def _speed(curve: Cubic) -> _Speed:
    p, q, r, s = curve.p0, curve.c0, curve.c1, curve.p1
    return (3 * (q[0] - p[0]), 6 * (r[0] - 2 * q[0] + p[0]), 3 * (s[0] - p[0] + 3 * (q[0] - r[0])),
            3 * (q[1] - p[1]), 6 * (r[1] - 2 * q[1] + p[1]), 3 * (s[1] - p[1] + 3 * (q[1] - r[1])))


def _rule(speed: _Speed, a: float, b: float) -> float:
    x0, x1, x2, y0, y1, y2 = speed
    h, total, hypot = b - a, 0.0, math.hypot
    for x, w in _GAUSS:
        t = a + h * x
        total += w * hypot(x0 + t * (x1 + t * x2), y0 + t * (y1 + t * y2))
    return h * total


@lru_cache(maxsize=1024)
def _marks(curve: Cubic) -> list[float]:
    """Lengths from the start to equal steps of the parameter, mm: where to begin looking for a length."""
    made = [0.0]
    for k in range(_MARKS):
        made.append(made[-1] + _length(curve, k / _MARKS, (k + 1) / _MARKS))
    return made


@lru_cache(maxsize=25_000)  # a number each, 10 MB in all: the largest outline fits in
def _whole(curve: Cubic) -> float:
    return _length(curve, 0.0, 1.0)


def _length(curve: Cubic, a: float, b: float) -> float:
    speed = _speed(curve)
    return _halved(speed, a, b, _rule(speed, a, b), 0)


def _halved(speed: _Speed, a: float, b: float, whole: float, depth: int) -> float:
    m = (a + b) / 2
    one, two = _rule(speed, a, m), _rule(speed, m, b)
    # "Not greater" also ends it for a curve whose numbers are no numbers.
    if depth >= _MOST_HALVINGS or not abs(whole - (one + two)) >= _AGREE * max(1.0, whole):
        return one + two
    return _halved(speed, a, m, one, depth + 1) + _halved(speed, m, b, two, depth + 1)
