"""What a drill takes with its point: a flat-ended cylinder and a cone beyond its end, down to the drill's point.

The cone holds the rim of the full diameter and the point, which is all of a twist drill. A brad point
or Forstner bit has a narrower point on a flat rim: where it meets something flat that is the same, elsewhere
it takes less than the cone. Clearances of these solids are thus never overstated.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely

from geometry.solids.cylinders import Cylinders, dots, norms
from geometry.solids.distance_certified import TOUCHING, certified
from geometry.solids.drilling import Drilling
from geometry.vectors import Vec2

_ROUNDS, _CLOSE = 8, 2e-4
"""how often a solid goes forward again, and how near to the other one it has then come, mm"""


class Pointed(Cylinders, frozen=True, eq=False):
    """n cylinders, each with a cone `ahead` (n,) mm long beyond its far end; 0 for none."""

    ahead: np.ndarray

    @classmethod
    def with_points(cls, drillings: Sequence[Drilling], ahead: Sequence[float]) -> Pointed:
        """The solids of some drillings whose points run so many mm ahead."""
        plain = Cylinders.of(drillings)
        return cls(plain.start, plain.axis, plain.length, plain.radius, np.array(ahead, dtype=float))

    @classmethod
    def together(cls, many: Sequence[Pointed]) -> Pointed:
        """All solids of several groups, group after group."""
        return cls(*(np.concatenate([getattr(one, of) for one in many]) for of in ("start", "axis", "length", "radius", "ahead")))

    def pick(self, index: np.ndarray) -> Pointed:
        """The solids at an index array or mask."""
        return Pointed(self.start[index], self.axis[index], self.length[index], self.radius[index], self.ahead[index])

    def pointed(self, which: Sequence[bool]) -> Pointed:
        """The same, the others than those (n,) without their points."""
        return Pointed(self.start, self.axis, self.length, self.radius, np.where(which, self.ahead, 0.0))

    def shortened(self, by: np.ndarray) -> Pointed:
        """Every solid drawn back by `by` (n,) mm: from a negative length on nothing but a part of its cone is left in the wood."""
        return Pointed(self.start - self.axis * np.maximum(by - self.length, 0.0)[:, None], self.axis,
                       np.maximum(self.length - by, 0.0), self.radius, self.ahead)

    def support(self, n: np.ndarray) -> np.ndarray:
        """As of cylinders: the farthest is the near rim, the far rim or the point."""
        along = dots(n, self.axis)
        point = dots(n, self.start) + (self.length + self.ahead) * along
        return np.maximum(super().support(n), point)

    def nearest(self, p: np.ndarray) -> np.ndarray:
        """As of cylinders: the nearest point of the profile, in the plane through the axis and p."""
        w = p - self.start
        along = dots(w, self.axis)
        aside = w - along[:, None] * self.axis
        size = norms(aside)
        r, ahead = self.radius, self.ahead
        beyond = along - self.length
        # On the slope of the cone from the far rim (share 0) to the point (share 1).
        slant = ahead * ahead + r * r
        share = np.clip((beyond * ahead + (r - size) * r) / np.maximum(slant, 1e-300), 0.0, 1.0)
        outside = (beyond > 0) & (size * ahead > r * (ahead - beyond))
        level = np.where(outside, self.length + share * ahead, np.maximum(along, 0.0))
        out = np.where(outside, r * (1 - share), np.minimum(size, r))
        return self.start + self.axis * level[:, None] + aside * (out / np.maximum(size, 1e-300))[:, None]


def pointed_gaps(a: Pointed, b: Pointed, enough: float = np.inf, decide: float | None = None) -> np.ndarray:
    """The gap (n,) in mm between a[i] and b[i], never overstated, understated by about 2e-7 mm; 0 where they meet.

    What is proved to be more than `enough` mm is not measured further; with `decide` in mm, what is proved to be on either side of it.
    """
    sides = None if decide is None else np.full(len(a), decide)
    return certified(a, b, a.start + a.axis * (a.length + a.ahead / 2)[:, None], sides, np.full(len(a), enough)).distance


def drawn_back(a: Pointed, b: Pointed) -> np.ndarray:
    """How far each solid a[i] has to be drawn back until it is clear of b[i] (n,), mm and rather too far.

    Where no more than its own point meets the other one, that point's length is enough. From there it goes forward as far as the
    plane between the two allows, again and again: both are convex, so that it never meets the other on its way.
    """
    back = a.ahead.copy()
    for farther in (a.ahead + b.ahead, a.length + a.ahead):
        met = np.flatnonzero(back < farther)
        met = met[pointed_gaps(a.pick(met).shortened(back[met]), b.pick(met), TOUCHING) <= 0]
        if not met.size:
            break
        back[met] = farther[met]
    going = np.arange(len(a))
    for _ in range(_ROUNDS):
        here, there = a.pick(going).shortened(back[going]), b.pick(going)
        found = certified(here, there, here.start)
        between = found.on_b - found.on_a
        far = norms(between)
        way = between / np.maximum(far, 1e-300)[:, None]
        gap, forward = -(here.support(way) + there.support(-way)), dots(way, here.axis)
        on = (far > TOUCHING) & (gap > _CLOSE) & (forward > 0)
        going = going[on]
        if not going.size:
            break
        back[going] = np.maximum(0.0, back[going] - gap[on] / forward[on])
    return back


def level_tip(drilling: Drilling, ahead: float) -> tuple[Vec2, Vec2, Vec2]:
    """(one side of the far rim, the point, the other side) of a level drilling seen on the face: its outline at the height of its axis."""
    (x, y, _), (dx, dy, _) = drilling.end, drilling.direction
    r = drilling.radius
    return (x + dy * r, y - dx * r), (x + dx * ahead, y + dy * ahead), (x - dy * r, y + dx * r)


def beside_cone(radius: float, ahead: float, out: float, along: float) -> float:
    """Gap in mm from a cone to a ring `out` mm about its axis, `along` mm beyond its base (0 or more); negative inside it.

    Negative by how far the cone would have to be drawn back along its axis. `ahead` is the cone's length.
    """
    inside = ahead * (1 - out / radius) - along
    if inside > 0:
        return -inside
    slant = ahead * ahead + radius * radius
    share = min(1.0, max(0.0, (along * ahead + (radius - out) * radius) / slant))
    return math.hypot(along - share * ahead, out - radius * (1 - share))


def too_long(drilling: Drilling, ahead: float, shape: shapely.Geometry) -> tuple[float, Vec2]:
    """(how far a level drilling would have to be drawn back until its cone is clear of what of a shape it holds seen on the face, mm; where).

    (0, the point) where the cone holds none of it.
    """
    one, point, two = level_tip(drilling, ahead)
    end, along = np.array(drilling.end[:2]), np.array(drilling.direction[:2])
    # To either side of the axis what lacks changes evenly: the most is at a corner.
    halves = shapely.polygons([[drilling.end[:2], side, point] for side in (one, two)])
    met = shapely.get_coordinates(shapely.intersection(halves, shape))
    if not len(met):
        return 0.0, point
    away = met - end
    lacks = ahead * (1 - np.abs(away @ (-along[1], along[0])) / drilling.radius) - away @ along
    k = int(np.argmax(lacks))
    return max(0.0, float(lacks[k])), (float(met[k, 0]), float(met[k, 1]))
