"""A straight segment."""

from __future__ import annotations

from msgspec import Struct

from geometry import vectors as v
from geometry.tolerance import TOUCH
from geometry.vectors import Box, Vec2


class Line(Struct, frozen=True, tag=True):
    """Straight from p0 to p1 (mm). The parameter t runs 0..1 evenly by length."""

    p0: Vec2
    p1: Vec2

    @property
    def start(self) -> Vec2:
        return self.p0

    @property
    def end(self) -> Vec2:
        return self.p1

    def point(self, t: float) -> Vec2:
        """Point at t; t outside 0..1 extends the line."""
        return (self.p0[0] + (self.p1[0] - self.p0[0]) * t, self.p0[1] + (self.p1[1] - self.p0[1]) * t)

    def tangent(self, t: float) -> Vec2:
        """Unit direction of travel."""
        return v.unit(v.sub(self.p1, self.p0))

    def curvature(self, t: float) -> float:
        """Signed curvature in 1/mm, always 0."""
        return 0.0

    def length(self) -> float:
        """Length in mm."""
        return v.distance(self.p0, self.p1)

    def length_to(self, t: float) -> float:
        """Length in mm from the start to t."""
        return self.length() * t

    def at_length(self, s: float) -> float:
        """Parameter t at length s (mm) from the start; 0 for a segment without length."""
        total = self.length()
        return s / total if total > 0 else 0.0

    def area_term(self) -> float:
        """Its share of a closed loop's area in mm2 by Green's theorem (counter-clockwise positive)."""
        return v.cross(self.p0, self.p1) / 2

    def extremes(self, axis: int) -> list[float]:
        """Inner parameters where x or y turns round: none."""
        return []

    def level(self, axis: int, value: float) -> list[float]:
        """Parameters in 0..1 where x (axis 0) or y (axis 1) equals `value` mm; none when it lies on that level."""
        a, b = self.p0[axis] - value, self.p1[axis] - value
        if max(abs(a), abs(b)) <= TOUCH:
            return []
        if abs(a) <= TOUCH:
            return [0.0]
        if abs(b) <= TOUCH:
            return [1.0]
        return [a / (a - b)] if a * b < 0 else []

    def box(self) -> Box:
        """(min x, min y, max x, max y) in mm, exact."""
        return (min(self.p0[0], self.p1[0]), min(self.p0[1], self.p1[1]),
                max(self.p0[0], self.p1[0]), max(self.p0[1], self.p1[1]))

    def chords(self, sagitta: float) -> int:
        """1: a line is its own chord, whatever the sagitta."""
        return 1

    def flatten(self, sagitta: float) -> list[Vec2]:
        """Points from start to end, both included."""
        return [self.p0, self.p1]

    def nearest(self, p: Vec2) -> float:
        """Parameter t in 0..1 of the point nearest to p."""
        d = v.sub(self.p1, self.p0)
        n = v.dot(d, d)
        return min(1.0, max(0.0, v.dot(v.sub(p, self.p0), d) / n)) if n > 0 else 0.0

    def split(self, t: float) -> tuple[Line, Line]:
        """The two parts before and after t."""
        m = self.point(t)
        return Line(self.p0, m), Line(m, self.p1)

    def reversed(self) -> Line:
        """The same segment travelled the other way."""
        return Line(self.p1, self.p0)

    def mapped(self, matrix) -> Line:
        """The segment under a geometry.curves.matrix.Matrix."""
        return Line(matrix(self.p0), matrix(self.p1))
