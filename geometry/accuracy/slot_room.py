"""How near points of a post come to the wall of its slot over many trials, in any direction: as geometry.checks.slot_room for one."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct

from geometry.accuracy.chords import Chords
from geometry.accuracy.rods import Array
from geometry.checks.scene import Opening
from geometry.layout import StraightSlot
from geometry.vectors import Vec2


class StraightRoom(Struct, frozen=True):
    """A straight slot: the middles of its round ends and half of its width, mm."""

    nut_end: Vec2
    tip_end: Vec2
    half: float
    bulges: tuple[Vec2, ...] = ()

    def nearest(self, x: Array, y: Array) -> tuple[Array, Array, Array, Array | bool]:
        """(distance of points to the wall, positive inside; x and y of the unit way out there; whether that is in a round end)."""
        (ax, ay), (bx, by) = self.nut_end, self.tip_end
        dx, dy = bx - ax, by - ay
        wx, wy = x - ax, y - ay
        part = (wx * dx + wy * dy) / max(dx * dx + dy * dy, 1e-300)
        share = np.clip(part, 0.0, 1.0)
        wx, wy = wx - share * dx, wy - share * dy
        far = np.hypot(wx, wy)
        per = 1.0 / np.maximum(far, 1e-12)
        return self.half - far, wx * per, wy * per, share != part


class DrawnRoom(Struct, frozen=True, eq=False):
    """A drawn slot: the chords of its wall that may be nearest, and those of its points that may bulge towards a post's end."""

    chords: Chords
    bulges: tuple[Vec2, ...] = ()

    def nearest(self, x: Array, y: Array) -> tuple[Array, Array, Array, Array | bool]:
        """As for a straight one."""
        best = np.full(len(x), np.inf)
        side, near_x, near_y = np.zeros(len(x)), np.zeros(len(x)), np.zeros(len(x))
        for (ax, ay), (dx, dy) in zip(self.chords.a.tolist(), (self.chords.b - self.chords.a).tolist(), strict=True):
            wx, wy = x - ax, y - ay
            size = dx * dx + dy * dy
            share = np.clip((wx * dx + wy * dy) / size, 0.0, 1.0)
            ex, ey = share * dx - wx, share * dy - wy
            square = ex * ex + ey * ey
            left = (dx * wy - dy * wx) / size ** 0.5
            # At a corner two chords are equally near; the one that is faced more squarely knows the side.
            nearer = (square < best - 1e-12) | ((square <= best + 1e-12) & (np.abs(left) > np.abs(side)))
            for kept, new in ((best, square), (side, left), (near_x, ex), (near_y, ey)):
                np.copyto(kept, new, where=nearer)
        far = np.sqrt(best)
        per = np.copysign(1.0 / np.maximum(far, 1e-12), side)
        return np.copysign(far, side), near_x * per, near_y * per, False


def room_about(opening: Opening, spots: list[Vec2], strays: float) -> StraightRoom | DrawnRoom:
    """What of a slot's wall may be the nearest to some points that stray by `strays` mm; between two of them its bulges too."""
    shape = opening.slot.shape
    if isinstance(shape, StraightSlot):
        return StraightRoom(shape.nut_end, shape.tip_end, shape.width / 2)
    chords = Chords.of(opening.wall)
    near = np.zeros(len(chords), dtype=bool)
    for spot in spots:
        far = shapely.distance(chords.lines, shapely.Point(spot))
        near |= far <= far.min() + 2 * strays + 1e-6
    bulges: tuple[Vec2, ...] = ()
    if len(spots) == 2:
        line = shapely.LineString(spots)
        far = shapely.distance(shapely.points(chords.a), line)
        least = float(shapely.distance(chords.lines, line).min())
        bulges = tuple(map(tuple, chords.a[far <= least + 2 * strays + 1e-6].tolist()))
    return DrawnRoom(chords.picked(np.flatnonzero(near)), bulges)
