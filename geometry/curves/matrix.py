"""Plane affine maps, only as far as curves need them."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.vectors import Vec2


class Matrix(Struct, frozen=True):
    """x' = a x + c y + e, y' = b x + d y + f (the order SVG uses)."""

    a: float = 1.0
    b: float = 0.0
    c: float = 0.0
    d: float = 1.0
    e: float = 0.0
    f: float = 0.0

    def __call__(self, p: Vec2) -> Vec2:
        """The mapped point."""
        return (self.a * p[0] + self.c * p[1] + self.e, self.b * p[0] + self.d * p[1] + self.f)

    def after(self, first: Matrix) -> Matrix:
        """The map that applies `first`, then this one."""
        o = first
        return Matrix(
            self.a * o.a + self.c * o.b, self.b * o.a + self.d * o.b,
            self.a * o.c + self.c * o.d, self.b * o.c + self.d * o.d,
            self.a * o.e + self.c * o.f + self.e, self.b * o.e + self.d * o.f + self.f)

    @property
    def determinant(self) -> float:
        """Area factor; negative when the map mirrors."""
        return self.a * self.d - self.b * self.c

    def similarity(self) -> float | None:
        """The one scale factor when circles stay circles, else None (relative tolerance 1e-9)."""
        size = math.hypot(self.a, self.b)
        other = math.hypot(self.c, self.d)
        if size == 0 or abs(size - other) > 1e-9 * size or abs(self.a * self.c + self.b * self.d) > 1e-9 * size * size:
            return None
        return size


def shift(dx: float, dy: float) -> Matrix:
    """Move by (dx, dy) mm."""
    return Matrix(e=dx, f=dy)


def turn(angle: float, about: Vec2 = (0.0, 0.0)) -> Matrix:
    """Turn by `angle` radians counter-clockwise about a point."""
    c, s = math.cos(angle), math.sin(angle)
    x, y = about
    return Matrix(c, s, -s, c, x - c * x + s * y, y - s * x - c * y)


def stretch(kx: float, ky: float | None = None) -> Matrix:
    """Scale about the origin; one number scales both ways."""
    return Matrix(a=kx, d=kx if ky is None else ky)


MIRROR = Matrix(a=-1.0)
"""Mirror about the centreline: treble becomes bass."""
LYING = Matrix(a=0.0, b=-1.0, c=1.0, d=0.0)
"""A right angle clockwise about the origin: the nut end to the left, the bass side up."""
