"""A ramp as filed, over many trials.

Its first line is marked on the face from the paper, and it is filed down from
there into the slot as that came out: between the slot's flanks (with a mark
error of its own to the side) and to a depth marked on the slot's nut end. So
place and paper of the template move its flanks and its lower end, the follower
of the slot makes it wider and its slot longer, and a depth that strays makes it
steeper. It keeps its direction: the template is not turned.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.accuracy.built import Built
from geometry.accuracy.rods import Array, Rod
from geometry.vectors import Vec2

LEAST = 0.01
"""mm: no trial leaves a ramp with less length, width or depth"""


class FiledRamp(Struct, frozen=True, eq=False):
    """One ramp in n trials; as geometry.solids.ramps.RampCut, with arrays (n,) in mm for what strays.

    `start` is the middle of the line where it leaves the face, `slope` the depth gained for each mm along the axis.
    """

    start: tuple[Array, Array]
    axis: Vec2
    half: Array
    reach: Array
    slope: Array

    def place(self, along: Array | float, across: Array | float) -> tuple[Array, Array]:
        """Where a point of its frame lies in plan: mm along the axis from the start, and to the left of it."""
        (ax, ay), (x, y) = self.axis, self.start
        return x + ax * along - ay * across, y + ay * along + ax * across

    def seen(self, x: Array | float, y: Array | float) -> tuple[Array, Array]:
        """A point in plan in its frame: (along, across)."""
        (ax, ay), (x0, y0) = self.axis, self.start
        return (x - x0) * ax + (y - y0) * ay, (y - y0) * ax - (x - x0) * ay

    def rod(self, rod: Rod) -> Rod:
        """A drilling in its frame."""
        ax, ay = self.axis
        turned = (rod.axis[0] * ax + rod.axis[1] * ay, rod.axis[1] * ax - rod.axis[0] * ay, rod.axis[2])
        return Rod((*self.seen(rod.start[0], rod.start[1]), rod.start[2]), turned, rod.length, rod.radius)

    def picked(self, index: Array) -> FiledRamp:
        """The ramps of some trials."""
        return FiledRamp((self.start[0][index], self.start[1][index]), self.axis, self.half[index], self.reach[index],
                         self.slope[index])

    @property
    def corners(self) -> list[tuple[Array, Array]]:
        """Its corners in plan: at the start to the right and left, at the lower end to the left and right."""
        return [self.place(along, side * self.half)
                for along, side in ((0.0, -1), (0.0, 1), (self.reach, 1), (self.reach, -1))]

    def aside(self, along: Array, across: Array) -> Array:
        """Distance in plan of a point of its frame from it, negative inside by the way to the nearest side."""
        before, beside = np.maximum(-along, along - self.reach), np.abs(across) - self.half
        return (np.hypot(np.maximum(before, 0.0), np.maximum(beside, 0.0))
                + np.minimum(np.maximum(before, beside), 0.0))

    def strayed(self, nominal: FiledRamp) -> float:
        """mm: no point of it is in any trial farther than this from its place in the nominal one."""
        depth = self.reach * self.slope - nominal.reach * nominal.slope
        return float(max(np.sqrt((x - u) ** 2 + (y - w) ** 2 + (depth * (k > 1)) ** 2).max()
                         for k, ((x, y), (u, w)) in enumerate(zip(self.corners, nominal.corners, strict=True))))


def ramp_of(built: Built, slot: str) -> FiledRamp:
    """The ramp of a slot as filed; made once for each lot of trials."""
    key = ("ramp", slot)
    if key not in built.known:
        built.known[key] = _filed(built, slot)
    return built.known[key]


def _filed(built: Built, slot: str) -> FiledRamp:
    errors = built.model.ramps[slot]
    cut, grown = errors.cut, built.row(errors.follow)
    (ax, ay), (x, y) = cut.axis, cut.start
    begins = (x * (1.0 + built.row(errors.paper[0])) * ax + y * (1.0 + built.row(errors.paper[1])) * ay
              + built.row(errors.mark[0]))
    end_x, end_y = built.off_template(*v.along(cut.start, cut.axis, cut.length))
    ends = end_x * ax + end_y * ay
    across = end_y * ax - end_x * ay + built.row(errors.mark[1])
    length = np.maximum(ends - grown - begins, LEAST)
    # Where the slot has its full width moves with the template alone: the follower takes as much at either end.
    reach = np.maximum(ends + (cut.reach - cut.length) - begins, length)
    return FiledRamp((begins * ax - across * ay, begins * ay + across * ax), cut.axis,
                     np.maximum(cut.half + grown, LEAST), reach,
                     np.maximum(cut.depth + built.row(errors.stop), LEAST) / length)
