"""Elliptic arcs as a round arc and the map that makes it elliptic."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.curves import Arc, Line, Matrix, Segment
from geometry.curves.path import mapped_segments
from geometry.vectors import Vec2


class EllipticArc(Struct, frozen=True):
    """The image under `matrix` of an arc of the unit circle from angle a0 through `sweep` (rad)."""

    matrix: Matrix
    a0: float
    sweep: float

    def under(self, outer: Matrix) -> list[Segment]:
        """The arc under a further map: one arc where that makes it round, else cubics (within 7e-8 of its radius)."""
        whole = outer.after(self.matrix)
        if not (math.isfinite(self.a0) and math.isfinite(self.sweep)):
            return [Line((math.nan, math.nan), (math.nan, math.nan))]  # broken numbers: the shape is skipped and counted
        return mapped_segments([Arc.about((0.0, 0.0), 1.0, self.a0, self.sweep)], whole)


def elliptic_arc(p: Vec2, q: Vec2, rx: float, ry: float, turn: float, large: bool, sweep: bool) -> EllipticArc | None:
    """The arc from p to q by its radii, its turn (rad) and the two flags; None when p is q.

    From the conversion to a centre in the SVG standard (implementation notes
    on elliptic arcs): radii too small are enlarged together until they reach.
    A zero radius makes a straight line, here an arc flattened onto it.
    """
    if p == q:
        return None
    if rx == 0 or ry == 0:
        middle, half = ((p[0] + q[0]) / 2, (p[1] + q[1]) / 2), ((p[0] - q[0]) / 2, (p[1] - q[1]) / 2)
        return EllipticArc(Matrix(half[0], half[1], 0.0, 0.0, *middle), 0.0, math.pi)
    cos, sin = math.cos(turn), math.sin(turn)
    dx, dy = (p[0] - q[0]) / 2, (p[1] - q[1]) / 2
    x, y = (cos * dx + sin * dy) / rx, (-sin * dx + cos * dy) / ry  # half the chord, where the ellipse is a unit circle
    reach = math.hypot(x, y)
    if reach > 1:
        rx, ry, x, y, reach = rx * reach, ry * reach, x / reach, y / reach, 1.0
    rise = math.sqrt(max(0.0, 1 - reach * reach)) / reach
    side = -1.0 if large == sweep else 1.0
    cx, cy = side * rise * y, -side * rise * x
    a0, a1 = math.atan2(y - cy, x - cx), math.atan2(-y - cy, -x - cx)
    span = (a1 - a0) % math.tau if sweep else -((a0 - a1) % math.tau)
    centre = (cos * rx * cx - sin * ry * cy + (p[0] + q[0]) / 2, sin * rx * cx + cos * ry * cy + (p[1] + q[1]) / 2)
    return EllipticArc(Matrix(cos * rx, sin * rx, -sin * ry, cos * ry, *centre), a0, span)
