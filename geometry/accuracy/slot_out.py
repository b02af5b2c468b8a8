"""How far level drillings have to go to leave a straight slot, over many trials: the depth that the checks tell.

As geometry.solids.ways_out for one. In plan a strip and a slot with round ends
are convex, so the least shift lies square to a side of either, or on the line
from the middle of a round end to a corner of the strip: all of these are tried.
From a blind slot there is a way below the floor too, and ways aslant.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry.accuracy.chords import Strip
from geometry.accuracy.rods import Array
from geometry.vectors import Vec2

_TURNS = 17
"""Ways aslant that are tried from straight aside to straight down"""


class StraightOut(Struct, frozen=True):
    """A straight slot as its template has it: the middles of its round ends and half of its width, mm."""

    nut_end: Vec2
    tip_end: Vec2
    half: float

    def shift(self, strip: Strip, grown: Array) -> Array:
        """(n,) mm that strips have to go in plan to leave the slot, each side `grown` wider; 0 where they are clear of it."""
        corners = strip.corners()
        ends = (self.nut_end, self.tip_end)
        apart = np.subtract(self.tip_end, self.nut_end)
        size = float(np.hypot(*apart))
        dx, dy = (apart / size).tolist() if size > 0 else (1.0, 0.0)
        one = np.ones_like(strip.x)
        ways = [(-dy * one, dx * one), (dy * one, -dx * one), (strip.dx, strip.dy), (-strip.dx, -strip.dy),
                (-strip.dy, strip.dx), (strip.dy, -strip.dx)]
        for ex, ey in ends:
            for x, y in corners:
                far = np.maximum(np.hypot(x - ex, y - ey), 1e-12)
                ways.append(((x - ex) / far, (y - ey) / far))
        least = np.full(len(strip.x), np.inf)
        for x, y in ways:
            size2 = np.hypot(x, y)
            near = np.minimum.reduce([x * cx + y * cy for cx, cy in corners])
            reach = np.maximum(*(x * ex + y * ey for ex, ey in ends)) + (self.half + grown)
            least = np.where(size2 > 0.5, np.minimum(least, reach - near), least)
        return np.maximum(least, 0.0)

    def out(self, strip: Strip, grown: Array, under: Array | None) -> Array:
        """(n,) the same, or less where there is less to go below a floor that lies `under` mm below the axis.

        Below zero where a drilling lies below the floor with wood left between the two.
        """
        aside = self.shift(strip, grown)
        if under is None:
            return aside
        best = np.minimum(aside, under + strip.half)
        for turn in np.linspace(0.0, np.pi / 2, _TURNS)[1:].tolist():
            narrow = Strip(strip.x, strip.y, strip.dx, strip.dy, strip.length, strip.half * np.cos(turn))
            down = np.maximum(under + strip.half * np.sin(turn), 0.0)
            best = np.minimum(best, np.hypot(down, self.shift(narrow, grown)))
        return best
