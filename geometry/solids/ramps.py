"""The slope at the nut end of a slot: a plane that goes down from the face in the direction of the slot."""

from __future__ import annotations

import math

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_shape, remembered_by_size
from geometry.curves import Line, Path
from geometry.layout.slots import DrawnSlot, Slot, StraightSlot, shape_path
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

_LEVELS = 24
"""in which the nut end of a drawn slot is looked at"""


class RampCut(Struct, frozen=True):
    """A ramp in the frame of the head (mm). `start` is the middle of the line where it leaves the face."""

    start: Vec2
    axis: Vec2
    """unit, towards the tip, the way in which it goes down"""
    length: float
    """from the start to the slot's nut end"""
    depth: float
    """below the face at the slot's nut end"""
    half: float
    """half of its width"""
    reach: float
    """from the start to where the slot has swallowed all of it"""

    @property
    def slope(self) -> float:
        """Depth gained for each mm along the axis; of a ramp without length as of one that is as long as TOUCH."""
        return self.depth / max(self.length, TOUCH)

    @property
    def angle(self) -> float:
        """To the face, rad."""
        return math.atan2(self.depth, self.length)

    def along(self, p: Vec2) -> float:
        """How far p lies along the axis from the start, mm."""
        return v.dot(v.sub(p, self.start), self.axis)

    def across(self, p: Vec2) -> float:
        """How far p lies from the ramp's middle line, mm, never negative."""
        return abs(v.cross(self.axis, v.sub(p, self.start)))

    def level(self, p: Vec2) -> float:
        """How deep the wood begins at p, mm below the face: 0 beside the ramp and before it."""
        q = self.along(p)
        inside = -1e-9 <= q <= self.reach + 1e-9 and self.across(p) <= self.half + 1e-9
        return max(0.0, q * self.slope) if inside else 0.0

    def levels(self, points: np.ndarray) -> np.ndarray:
        """As level, of many points (n, 2)."""
        x, y = points[:, 0] - self.start[0], points[:, 1] - self.start[1]
        q, across = x * self.axis[0] + y * self.axis[1], np.abs(self.axis[0] * y - self.axis[1] * x)
        inside = (q >= -1e-9) & (q <= self.reach + 1e-9) & (across <= self.half + 1e-9)
        return np.where(inside, np.maximum(0.0, q * self.slope), 0.0)

    def corner(self, along: float, side: float) -> Vec2:
        """The point `along` mm from the start on one rim: side 1 to the left of the axis, -1 to its right."""
        return v.along(v.along(self.start, self.axis, along), v.left(self.axis), side * self.half)

    def path(self) -> Path:
        """What the ramp takes of the face: a rectangle from its start to the slot's nut end, counter-clockwise."""
        a, b = self.corner(0.0, -1.0), self.corner(self.reach, -1.0)
        c, d = self.corner(self.reach, 1.0), self.corner(0.0, 1.0)
        return Path((Line(a, b), Line(b, c), Line(c, d), Line(d, a)), closed=True)


class NutEnd(Struct, frozen=True):
    """Where a slot ends towards the nut: its outermost point on the slot's own axis (mm)."""

    at: Vec2
    axis: Vec2
    """unit, towards the tip"""
    width: float
    room: float
    """how far behind that point the slot has its full width"""


def nut_end(slot: Slot) -> NutEnd:
    """The nut end of a slot. A drawn slot runs along y, from its lowest point on.

    It is as wide as it gets, from side to side, no farther from there than its box is wide: what leans or bends aside farther on
    makes it no wider. Its middle is that of the slot where a round end of that width is whole.
    GeometryError when the slot has no inside.
    """
    shape = slot.shape
    if not isinstance(shape, StraightSlot):
        return _drawn_end(shape)
    apart = v.sub(shape.tip_end, shape.nut_end)
    axis = v.unit(apart) if v.norm(apart) > 1e-9 else (0.0, 1.0)
    return NutEnd(v.along(shape.nut_end, axis, -shape.width / 2), axis, shape.width, shape.width / 2)


@remembered_by_size(64, of_shape)
def _drawn_end(shape: DrawnSlot) -> NutEnd:
    path = shape_path(shape)
    x0, y0, x1, y1 = path.box

    def sides(far: float) -> tuple[float, float]:
        """How far to the left and to the right the slot reaches `far` mm above its lowest point."""
        found = [piece.point(t)[0] for piece in path.segments for t in piece.level(1, y0 + far)]
        return min(found, default=x0), max(found, default=x1)

    looked = min(x1 - x0, y1 - y0)
    width = max(right - left for left, right in (sides(looked * k / _LEVELS) for k in range(1, _LEVELS)))
    room = min(width, y1 - y0) / 2
    left, right = sides(room)
    return NutEnd(((left + right) / 2, y0), (0.0, 1.0), width, room)


def ramp_cut(slot: Slot) -> RampCut | None:
    """The ramp of a slot in its place, or None when it has none."""
    ramp = slot.ramp
    if ramp is None:
        return None
    end = nut_end(slot)
    half = (end.width if ramp.width is None else ramp.width) / 2
    return RampCut(v.along(end.at, end.axis, -ramp.length), end.axis, ramp.length, ramp.depth, half,
                   ramp.length + end.room)


def below(slot: Slot, cut: RampCut, wall: Wall, thickness: float) -> float:
    """The wood between a slot's ramp and the back where it is least, mm; negative by how far the ramp comes out."""
    return thickness - last_wood(slot, cut, wall) * cut.slope


def last_wood(slot: Slot, cut: RampCut, wall: Wall) -> float:
    """How far along a ramp there is wood for it to take, mm from its start: beside a round end it goes on past the nut end.

    In a drawn slot (`wall` is its wall), wood narrower than 2 FLAT counts as none.
    """
    if isinstance(slot.shape, StraightSlot):
        return beside_round(cut, slot.shape.width / 2)
    wood = shapely.difference(Wall(cut.path()).area, wall.area).buffer(-FLAT)
    if wood.is_empty:
        return cut.length
    points = shapely.get_coordinates(wood) - np.array(cut.start)
    return max(cut.length, float((points @ np.array(cut.axis)).max()))


def beside_round(cut: RampCut, radius: float) -> float:
    """How far from its start a ramp has wood beside the round end of a straight slot of that radius, mm."""
    return cut.length + radius - math.sqrt(max(0.0, radius ** 2 - min(cut.half, radius) ** 2))
