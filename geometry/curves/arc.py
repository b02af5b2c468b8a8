"""A circular arc, kept exact."""

from __future__ import annotations

import math

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.curves.bearable import bearable
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Box, Vec2

_MANY = 2000
"""Chords from which an arc's points are worked out all at once, which may differ from `point` in the last bit: those of half
a circle of 6 m radius."""


class Arc(Struct, frozen=True, tag=True):
    """Arc about `centre` with `radius` (mm), from angle `a0` through `sweep` (rad, counter-clockwise positive).

    |sweep| is at most a full turn. The end points are kept beside the angles
    so that neighbouring segments share them to the last bit.
    """

    centre: Vec2
    radius: float
    a0: float
    sweep: float
    p0: Vec2
    p1: Vec2

    @classmethod
    def about(cls, centre: Vec2, radius: float, a0: float, sweep: float) -> Arc:
        """Arc from its centre, radius (mm), first angle and sweep (rad)."""
        if not radius > 0:
            raise GeometryError(say("An arc needs a radius above zero."))
        p0 = (centre[0] + radius * math.cos(a0), centre[1] + radius * math.sin(a0))
        a1 = a0 + sweep
        full = abs(abs(sweep) - 2 * math.pi) < 1e-12
        p1 = p0 if full else (centre[0] + radius * math.cos(a1), centre[1] + radius * math.sin(a1))
        return cls(centre, radius, a0, sweep, p0, p1)

    @classmethod
    def bulging(cls, p0: Vec2, p1: Vec2, bulge: float) -> Arc:
        """Arc from two ends and a bulge = tan(sweep / 4); positive bulges turn counter-clockwise.

        Bulge is the measure that DXF uses: sagitta over half the chord, 1 is a half circle.
        Raises GeometryError for coinciding ends or a bulge of zero.
        """
        chord = v.distance(p0, p1)
        if chord == 0 or bulge == 0 or not math.isfinite(bulge):
            raise GeometryError(say("An arc needs two different ends and a bulge that is not zero."))
        sweep = 4 * math.atan(bulge)
        radius = chord * (1 + bulge * bulge) / (4 * abs(bulge))
        # Centre on the perpendicular bisector, left of the chord by (1 - b^2) / (4 b) chords.
        offset = (1 - bulge * bulge) / (4 * bulge)
        m = v.middle(p0, p1)
        d = v.left(v.sub(p1, p0))
        centre = (m[0] + d[0] * offset, m[1] + d[1] * offset)
        a0 = math.atan2(p0[1] - centre[1], p0[0] - centre[0])
        return cls(centre, radius, a0, sweep, p0, p1)

    @classmethod
    def through(cls, p0: Vec2, on: Vec2, p1: Vec2) -> Arc:
        """Arc from p0 to p1 through a third point; GeometryError when the three lie on a line."""
        a, b = v.sub(on, p0), v.sub(p1, p0)
        turn = v.cross(a, b)
        if abs(turn) < 1e-12 * max(v.dot(a, a), v.dot(b, b), 1e-300):
            raise GeometryError(say("Three points on a straight line make no arc."))
        # The inscribed angle at `on` is half the arc that it does not see.
        inscribed = v.turn(v.sub(p1, on), v.sub(p0, on))
        sweep = 2 * (math.pi - abs(inscribed))
        return cls.bulging(p0, p1, math.copysign(math.tan(sweep / 4), turn))

    @property
    def start(self) -> Vec2:
        return self.p0

    @property
    def end(self) -> Vec2:
        return self.p1

    @property
    def bulge(self) -> float:
        """tan(sweep / 4); undefined (huge) for a full circle."""
        return math.tan(self.sweep / 4)

    def point(self, t: float) -> Vec2:
        """Point at t; 0 and 1 give the stored ends exactly."""
        if t == 0:
            return self.p0
        if t == 1:
            return self.p1
        a = self.a0 + self.sweep * t
        return (self.centre[0] + self.radius * math.cos(a), self.centre[1] + self.radius * math.sin(a))

    def tangent(self, t: float) -> Vec2:
        """Unit direction of travel."""
        a = self.a0 + self.sweep * t
        side = 1.0 if self.sweep >= 0 else -1.0
        return (-math.sin(a) * side, math.cos(a) * side)

    def curvature(self, t: float) -> float:
        """Signed curvature in 1/mm, positive when turning left (counter-clockwise)."""
        return math.copysign(1 / self.radius, self.sweep)

    def length(self) -> float:
        """Length in mm."""
        return self.radius * abs(self.sweep)

    def length_to(self, t: float) -> float:
        """Length in mm from the start to t."""
        return self.length() * t

    def at_length(self, s: float) -> float:
        """Parameter t at length s (mm) from the start."""
        return s / self.length()

    def area_term(self) -> float:
        """Its share of a closed loop's area in mm2 by Green's theorem (counter-clockwise positive)."""
        segment = self.radius * self.radius * (self.sweep - math.sin(self.sweep)) / 2
        return v.cross(self.p0, self.p1) / 2 + segment

    def extremes(self, axis: int) -> list[float]:
        """Inner parameters where x (axis 0) or y (axis 1) turns round."""
        return self._at_angles((0.0, math.pi) if axis == 0 else (math.pi / 2, -math.pi / 2))

    def level(self, axis: int, value: float) -> list[float]:
        """Parameters in 0..1 where x (axis 0) or y (axis 1) equals `value` mm."""
        k = (value - self.centre[axis]) / self.radius
        found = [t for t, p in ((0.0, self.p0), (1.0, self.p1)) if abs(p[axis] - value) <= TOUCH]
        if abs(k) < 1:
            a = math.acos(k) if axis == 0 else math.asin(k)
            inner = self._at_angles((a, -a) if axis == 0 else (a, math.pi - a))
            found += [t for t in inner if all(abs(t - other) * self.length() > TOUCH for other in found)]
        return sorted(found)

    def _at_angles(self, angles: tuple[float, ...]) -> list[float]:
        """Inner parameters at which the radius points in one of these directions (rad)."""
        found = []
        for angle in angles:
            turn = self._turn_to(angle)
            if 0 < turn < abs(self.sweep):
                found.append(turn / abs(self.sweep))
        return sorted(found)

    def _turn_to(self, angle: float) -> float:
        """How far the arc's own way of turning leads from its start to a direction of the radius, rad, 0 to a full turn."""
        turn = (angle - self.a0) % (2 * math.pi)
        return turn if self.sweep >= 0 else (2 * math.pi - turn) % (2 * math.pi)

    def box(self) -> Box:
        """(min x, min y, max x, max y) in mm, exact."""
        return v.box_about([self.p0, self.p1, *(self.point(t) for axis in (0, 1) for t in self.extremes(axis))])

    def chords(self, sagitta: float) -> int:
        """How many chords keep within `sagitta` mm of the arc."""
        part = sagitta / self.radius
        if part < 1e-12:  # a radius of thousands of kilometres: the arc cosine has no digits left
            step = math.sqrt(8 * part)
        else:
            step = 2 * math.acos(1 - part) if part < 1 else math.pi / 2
        return max(1, math.ceil(abs(self.sweep) / min(step, math.pi / 2) - 1e-9))

    def flatten(self, sagitta: float) -> list[Vec2]:
        """Points on the arc from start to end; no chord leaves it by more than `sagitta` mm.

        GeometryError for an arc that would take more than MOST_CHORDS.
        """
        n = bearable(self.chords(sagitta))
        if n < _MANY:
            (x, y), r, a0, sweep, cos, sin = self.centre, self.radius, self.a0, self.sweep, math.cos, math.sin
            return [self.p0, *((x + r * cos(a), y + r * sin(a)) for a in (a0 + sweep * (i / n) for i in range(1, n))), self.p1]
        a = self.a0 + self.sweep * (np.arange(1, n) / n)
        x, y = self.centre[0] + self.radius * np.cos(a), self.centre[1] + self.radius * np.sin(a)
        return [self.p0, *zip(x.tolist(), y.tolist(), strict=True), self.p1]

    def nearest(self, p: Vec2) -> float:
        """Parameter t in 0..1 of the point nearest to p; the centre itself gives 0."""
        d = v.sub(p, self.centre)
        if d == (0.0, 0.0):
            return 0.0
        turn = self._turn_to(math.atan2(d[1], d[0]))
        if turn <= abs(self.sweep):
            return turn / abs(self.sweep)
        return 0.0 if v.distance(p, self.p0) <= v.distance(p, self.p1) else 1.0

    def split(self, t: float) -> tuple[Arc, Arc]:
        """The two parts before and after t."""
        m = self.point(t)
        return (Arc(self.centre, self.radius, self.a0, self.sweep * t, self.p0, m),
                Arc(self.centre, self.radius, self.a0 + self.sweep * t, self.sweep * (1 - t), m, self.p1))

    def reversed(self) -> Arc:
        """The same arc travelled the other way."""
        return Arc(self.centre, self.radius, self.a0 + self.sweep, -self.sweep, self.p1, self.p0)

    def mapped(self, matrix) -> Arc:
        """The arc under a map that keeps circles round; GeometryError otherwise (use cubics())."""
        k = matrix.similarity()
        if k is None:
            raise GeometryError(say("An unevenly stretched arc is no arc: turn it into curves first."))
        centre, p0, p1 = matrix(self.centre), matrix(self.p0), matrix(self.p1)
        sweep = self.sweep if matrix.determinant > 0 else -self.sweep
        return Arc(centre, self.radius * k, math.atan2(p0[1] - centre[1], p0[0] - centre[0]), sweep, p0, p1)

    def cubics(self, most_sweep: float = math.pi / 8) -> list:
        """Cubic pieces of at most `most_sweep` radians (pi/8: radial drift under 7e-8 of the radius)."""
        from geometry.curves.cubic import Cubic
        n = max(1, math.ceil(abs(self.sweep) / most_sweep - 1e-9))
        pieces = []
        for i in range(n):
            p, q = self.point(i / n), self.point((i + 1) / n)
            k = 4 / 3 * math.tan(abs(self.sweep) / n / 4) * self.radius
            pieces.append(Cubic(p, v.along(p, self.tangent(i / n), k), v.along(q, self.tangent((i + 1) / n), -k), q))
        return pieces
