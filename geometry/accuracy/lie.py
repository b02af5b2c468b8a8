"""A post in the slot of its built headstock: each measure of it, over all trials.

Depths are along the bore's axis from where the seat was meant to be, mm.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from geometry.accuracy.built import Built
from geometry.accuracy.chords import Chords, hits, stretch
from geometry.accuracy.rods import Array
from geometry.accuracy.slot_room import DrawnRoom, StraightRoom
from geometry.checks.slot_room import FACING

SIGHT = 400.0
"""mm: how far a side bore could possibly reach, as in the checks"""
MOUTH = 5.0
"""mm to either side of the seat in which the built edge is looked for"""


class Way(Struct, frozen=True, eq=False):
    """A post bore's way through its slot: the walls that it may meet, and how squarely it meets them."""

    index: int
    outline: Chords
    slot: Chords
    flank: float
    square: tuple[float, float]
    """cosines between the axis and the two walls of the slot"""
    grows: int
    """follower error of the outline"""
    widens: int
    """follower error of the slot"""
    sunk: float = 0.0
    """depth of the flat that is cut into the edge for its plate"""

    def seat(self, built: Built) -> Array:
        """Where the plate lies on the axis, on the built outline or its flat, mm from where it was meant to."""
        return _once(built, ("seat", self.index), self._seat)

    def span(self, built: Built, aside: float = 0.0) -> tuple[Array, Array]:
        """(enters, leaves) of the axis, or of a line beside it, in the built slot."""
        return _once(built, ("span", self.index, aside), lambda made: self._span(made, aside))

    def _seat(self, built: Built) -> Array:
        if not len(self.outline):
            return -built.row(self.grows)
        x, y, way_x, way_y = _ray(built, self.index, -MOUTH, 0.0)
        found = hits(self.outline, x, y, way_x, way_y) - MOUTH + self.sunk
        nearest = np.argmin(np.abs(found), axis=0)
        at = np.take_along_axis(found, nearest[None], axis=0)[0]
        return np.where(np.abs(at) <= MOUTH, at, 0.0) - built.row(self.grows)

    def _span(self, built: Built, aside: float) -> tuple[Array, Array]:
        enters, leaves = (np.minimum(t, SIGHT) for t in stretch(self.slot, *_ray(built, self.index, 0.0, aside)))
        wide = built.row(self.widens)
        return enters - wide / self.square[0], leaves + wide / self.square[1]


class Reaches(Struct, frozen=True):
    """How far the full diameter comes through the rail, on the axis and on both flanks of the post."""

    way: Way

    def __call__(self, built: Built) -> Array:
        flanks = [self.way.span(built, aside)[0] for aside in (self.way.flank, -self.way.flank)]
        # One that nothing of the slot lies ahead of does not count.
        through = np.maximum.reduce([self.way.span(built)[0], *(np.where(enters < SIGHT / 2, enters, -np.inf) for enters in flanks)])
        return built.rod(self.way.index).length - through


class EndToWall(Struct, frozen=True):
    """Air between the post's end and the inner wall: on the axis and on both flanks, and all round the end's corners."""

    way: Way
    length: float
    slack: float
    """how much of the post before its end lies in the slot"""
    room: StraightRoom | DrawnRoom | None

    def __call__(self, built: Built) -> Array:
        leaves = np.minimum.reduce([self.way.span(built, aside)[1] for aside in (0.0, self.way.flank, -self.way.flank)])
        seat = self.way.seat(built)
        best = leaves - seat - self.length
        if self.room is None:
            return best
        x, y, way_x, way_y = _ray(built, self.way.index, seat + self.length, 0.0)
        size = np.hypot(way_x, way_y)
        way_x, way_y = way_x / size, way_y / size
        wide, half = built.row(self.way.widens), self.way.flank
        for aside in (half, -half):
            depth, out_x, out_y, rounded = self.room.nearest(x - way_y * aside, y + way_x * aside)
            best = np.where((out_x * way_x + out_y * way_y > 0) | rounded, np.minimum(best, depth + wide), best)
        for px, py in self.room.bulges:
            along = (px - x) * way_x + (py - y) * way_y
            across = np.maximum(np.abs((py - y) * way_x - (px - x) * way_y) - half, 0.0)
            gap = np.where(along > 0, np.hypot(along, across), np.where((across > 0) | (along <= -self.slack), np.inf, along))
            best = np.minimum(best, gap + wide)
        return best


class PointToWall(Struct, frozen=True):
    """Air between the drill's point and the inner wall."""

    way: Way
    point: float

    def __call__(self, built: Built) -> Array:
        return self.way.span(built)[1] - built.rod(self.way.index).length - self.point


class InBore(Struct, frozen=True):
    """Room beyond the post's end where the bore goes on into the inner wall: to its bottom, or to the wall."""

    way: Way
    length: float

    def __call__(self, built: Built) -> Array:
        bottom = np.maximum(built.rod(self.way.index).length, self.way.span(built)[1])
        return bottom - self.way.seat(built) - self.length


class StringHole(Struct, frozen=True):
    """Room between the string hole and the nearer wall, along the axis and all round."""

    way: Way
    depth: float
    room: StraightRoom | DrawnRoom | None

    def __call__(self, built: Built) -> Array:
        enters, leaves = self.way.span(built)
        at = self.way.seat(built) + self.depth
        along = np.minimum(at - enters, leaves - at)
        if self.room is None:
            return along
        x, y, _, _ = _ray(built, self.way.index, at, 0.0)
        return np.minimum(along, self.room.nearest(x, y)[0] + built.row(self.way.widens))


class SlotEnds(Struct, frozen=True):
    """Room between the post at its string hole and the slot's ends, to the tip and to the nut."""

    way: Way
    depth: float
    half: float
    ends: tuple[tuple[Chords, float, float, StraightRoom | DrawnRoom | None], ...]
    """chords ahead, which way along the edge, cosine to the wall met, the walls about the flank"""

    def __call__(self, built: Built) -> Array:
        rod = built.rod(self.way.index)
        at = rod.at(self.way.seat(built) + self.depth)
        x, y = built.on_template(at[0], at[1])
        best = np.full(built.trials, SIGHT)
        for chords, sign, square, room in self.ends:
            way_x, way_y = -rod.axis[1] * sign, rod.axis[0] * sign
            found = hits(chords, x, y, way_x, way_y)
            found[found <= 0] = np.inf
            along = found.min(axis=0, initial=np.inf) + built.row(self.way.widens) / square - self.half
            if room is None:
                best = np.minimum(best, along)
                continue
            depth, out_x, out_y, _ = room.nearest(x + way_x * self.half, y + way_y * self.half)
            faces = out_x * way_x + out_y * way_y > FACING
            best = np.minimum(best, np.where(faces, np.minimum(along, depth + built.row(self.way.widens)), along))
        return best


class Shallow(Struct, frozen=True):
    """Room below the post in a blind slot."""

    index: int
    depth: float
    half: float
    floor: float
    row: int

    def __call__(self, built: Built) -> Array:
        return self.floor + built.row(self.row) - built.rod(self.index).at(self.depth)[2] - self.half


def _ray(built: Built, index: int, depth: Array | float, aside: float) -> tuple[Array, Array, Array, Array]:
    """Start and way in plan of a line beside a bore's axis, as the template sees them; the way is 1 mm of the axis."""
    rod = built.rod(index)
    first, second = rod.at(depth), rod.at(depth + 1.0)
    by = (-rod.axis[1] * aside, rod.axis[0] * aside)
    x, y = built.on_template(first[0] + by[0], first[1] + by[1])
    to_x, to_y = built.on_template(second[0] + by[0], second[1] + by[1])
    return x, y, to_x - x, to_y - y


def _once(built: Built, key: object, made: Callable[[Built], object]):
    if key not in built.known:
        built.known[key] = made(built)
    return built.known[key]
