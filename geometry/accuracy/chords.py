"""Upright walls over many trials: a few chords of a wall, and thousands of points, rays and rectangles beside them.

A wall is taken as chords that lie within FLAT (0.002 mm) of its curve. Only
those that can matter in some trial are looked at; which ones, the caller says
by how far anything strays. All lengths in mm.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import numpy as np
import shapely
from msgspec import Struct

from geometry.accuracy.rods import Array
from geometry.by_size import of_wall, remembered_by_size
from geometry.solids.walls import Wall
from geometry.vectors import Vec2

_TIE = 1e-12


class Chords(Struct, frozen=True, eq=False, dict=True):
    """k chords of a wall that runs counter-clockwise: `a` (k, 2) where each begins, `b` (k, 2) where it ends.

    Those beside a spot stand nearest first, each `far` (k,) mm from it.
    """

    a: np.ndarray
    b: np.ndarray
    far: np.ndarray | None = None

    @classmethod
    def of(cls, wall: Wall) -> Chords:
        """All chords of a closed wall; those of the walls asked for last are remembered."""
        return _chords(wall)

    @cached_property
    def lines(self) -> np.ndarray:
        """(k,) each chord as a line of the polygon library."""
        return shapely.linestrings(np.stack([self.a, self.b], axis=1))

    def __len__(self) -> int:
        return len(self.a)

    def picked(self, index: np.ndarray) -> Chords:
        """Some of the chords."""
        return Chords(self.a[index], self.b[index])

    def beside(self, spot: Vec2, strays: float) -> Chords:
        """The chords that may be the nearest ones to something that strays by `strays` mm from a spot in plan."""
        far = shapely.distance(self.lines, shapely.Point(spot))
        near = np.argsort(far, kind="stable")[:np.count_nonzero(far <= far.min() + 2 * strays + 1e-6)]
        return Chords(self.a[near], self.b[near], far[near])

    def ahead(self, start: Vec2, way: Vec2, half: float, slope: float, sight: float = np.inf) -> Chords:
        """The chords that a ray may meet that starts within `half` mm of a point and strays by `slope` a mm of its way.

        What lies wholly farther than `sight` mm ahead is left out.
        """
        near, far = self.a - np.array(start), self.b - np.array(start)
        first, last = near @ np.array(way), far @ np.array(way)
        along = np.maximum(first, last)
        aside = np.stack([p[:, 0] * way[1] - p[:, 1] * way[0] for p in (near, far)])
        least = np.where(aside[0] * aside[1] <= 0, 0.0, np.abs(aside).min(axis=0))
        return self.picked((least <= half + slope * np.maximum(along, 0.0) + 1e-6) & (along >= -half - 1e-6)
                           & (np.minimum(first, last) <= sight + half + 1e-6))


    def flanking(self, start: Vec2, way: Vec2, length: float, half: float, strays: float) -> Chords:
        """The chords by which aside_of may tell how far rectangles have to go, `half` mm to either side of a line of a length.

        Both ends of the line may stray by `strays` mm.
        """
        ends = np.stack([self.a, self.b]) - np.array(start)
        along, across = ends @ np.array(way), ends[..., 1] * way[0] - ends[..., 0] * way[1]
        # Seen from a rectangle that lies so far off, an end of a chord lies elsewhere by this at most.
        off = strays + np.hypot(ends[..., 0], ends[..., 1]) * min(4 * strays / length, 2.0)
        maybe = ((along + off).max(axis=0) >= 0) & ((along - off).min(axis=0) <= length + 2 * strays)
        surely = ((along - off).max(axis=0) >= 0) & ((along + off).min(axis=0) <= length - 2 * strays)
        farthest = np.zeros(len(self), dtype=bool)
        for side in (across, -across):
            least = (side - off).max(axis=0)[surely].max(initial=-half)
            farthest |= (side + off).max(axis=0) >= least - 1e-6
        return self.picked(maybe & farthest)


@remembered_by_size(64, of_wall)
def _chords(wall: Wall) -> Chords:
    points = wall.points
    long = (points[1:] != points[:-1]).any(axis=1)
    return Chords(points[:-1][long], points[1:][long])


def inside(chords: Chords, x: Array, y: Array) -> Array:
    """(n,) distance of points to the nearest chord, positive to the left of it: inside a counter-clockwise wall."""
    best, side = np.full(len(x), np.inf), np.zeros(len(x))
    for (ax, ay), (dx, dy) in zip(chords.a.tolist(), (chords.b - chords.a).tolist(), strict=True):
        wx, wy = x - ax, y - ay
        size = dx * dx + dy * dy
        share = np.minimum(np.maximum((wx * dx + wy * dy) / size, 0.0), 1.0)
        ex, ey = wx - share * dx, wy - share * dy
        square = ex * ex + ey * ey
        left = (dx * wy - dy * wx) / size ** 0.5
        # At a corner two chords are equally near; the one that is faced more squarely knows the side.
        nearer = square < best - _TIE
        facing = nearer | ((np.abs(square - best) <= _TIE) & (np.abs(left) > np.abs(side)))
        np.copyto(best, square, where=nearer)
        np.copyto(side, left, where=facing)
    return np.copysign(np.sqrt(best), side)


def hits(chords: Chords, x: Array, y: Array, way_x: Array, way_y: Array) -> np.ndarray:
    """(k, n) how far along each ray (or behind it: negative) each chord is met, in lengths of the way; else infinite.

    A ray through the joint of two chords meets one of them only.
    """
    found = np.full((len(chords), len(x)), np.inf)
    own = x * way_y - y * way_x
    end: list[float] = []
    left = own
    for row, start, (bx, by) in zip(found, chords.a.tolist(), chords.b.tolist(), strict=True):
        ax, ay = start
        first = left if end == start else (ax * way_y - ay * way_x) > own
        end = [bx, by]
        left = (bx * way_y - by * way_x) > own
        at = (first != left).nonzero()[0]
        if not at.size:
            continue
        dx, dy, wx, wy = bx - ax, by - ay, way_x[at], way_y[at]
        row[at] = ((ax - x[at]) * dy - (ay - y[at]) * dx) / (wx * dy - wy * dx)
    return found


def stretch(chords: Chords, x: Array, y: Array, way_x: Array, way_y: Array) -> tuple[Array, Array]:
    """(enters, leaves) of rays from outside a wall: its first two crossings ahead; infinite where there are none."""
    found = hits(chords, x, y, way_x, way_y)
    found[found <= 0] = np.inf
    if len(found) < 2:
        found = np.concatenate([found, np.full((2 - len(found), found.shape[1]), np.inf)])
    if len(found) == 2:
        return np.minimum(*found), np.maximum(*found)
    found = np.partition(found, 1, axis=0)
    return found[0], found[1]


class Strip(Struct, frozen=True, eq=False):
    """Rectangles in plan, one a trial: a level drilling seen from the face.

    They start at (x, y), run along the unit (dx, dy) for `length` and reach `half` to either side.
    """

    x: Array
    y: Array
    dx: Array
    dy: Array
    length: Array
    half: float

    def picked(self, index: Array) -> Strip:
        """The rectangles of some trials."""
        return Strip(self.x[index], self.y[index], self.dx[index], self.dy[index], self.length[index], self.half)

    def corners(self) -> tuple[tuple[Array, Array], ...]:
        """The two corners at the far end, then the two at the start."""
        ends = [(self.x + self.dx * far, self.y + self.dy * far) for far in (self.length, 0.0)]
        return tuple((x - self.dy * by, y + self.dx * by) for x, y in ends for by in (self.half, -self.half))

    def outside(self, px: float, py: float) -> Array:
        """Distance of a point to each rectangle, negative inside."""
        wx, wy = px - self.x, py - self.y
        across = np.abs(wx * self.dy - wy * self.dx) - self.half
        along = wx * self.dx + wy * self.dy
        beyond = np.maximum(-along, along - self.length)
        out = np.hypot(np.maximum(across, 0.0), np.maximum(beyond, 0.0))
        return out + np.minimum(np.maximum(across, beyond), 0.0)


def strip_gap(strip: Strip, corners: Sequence[tuple[int, Chords, Chords | None]], points: Sequence[Vec2], side: float) -> Array:
    """(n,) gap between rectangles and a wall: its chords beside the corners, and its own points beside the rectangles.

    `side` is -1 where the wood lies outside the wall (a slot), 1 where it lies
    inside (the outline). Negative by how deep a corner of one lies in the other.
    Beside each corner stand the chords to measure to and, where these are only
    a part of the wall, those that tell on which side of the whole wall it is:
    at the end of a part one chord alone does not know.
    """
    best = np.full(len(strip.x), np.inf)
    places = strip.corners()
    for corner, chords, whole in corners:
        depth = inside(chords, *places[corner])
        if whole is not None:
            depth = np.copysign(depth, inside(whole, *places[corner]))
        best = np.minimum(best, side * depth)
    for px, py in points:
        best = np.minimum(best, strip.outside(px, py))
    return best


def aside_of(chords: Chords, strip: Strip) -> Array:
    """(n,) mm that rectangles have to go to one side, whichever is nearer, to leave all that a wall has beside their length."""
    left, right = np.zeros_like(strip.x), np.zeros_like(strip.x)
    for (ax, ay), (bx, by) in zip(chords.a.tolist(), chords.b.tolist(), strict=True):
        along, across = [], []
        for x, y in ((ax, ay), (bx, by)):
            wx, wy = x - strip.x, y - strip.y
            along.append(wx * strip.dx + wy * strip.dy)
            across.append(wy * strip.dx - wx * strip.dy)
        beside = (np.maximum(*along) >= 0) & (np.minimum(*along) <= strip.length)
        np.copyto(left, np.maximum(left, np.maximum(*across) + strip.half), where=beside)
        np.copyto(right, np.maximum(right, strip.half - np.minimum(*across)), where=beside)
    return np.minimum(left, right)
