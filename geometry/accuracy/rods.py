"""Drilled cylinders over many trials, and the wood between two of them.

Coordinates are kept one array an axis, because that is what makes ten thousand
trials of one pair quick; the formulas are those of geometry.solids.distance.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry.solids.cylinders import Cylinders
from geometry.solids.distance_certified import TOUCHING, certified
from geometry.tolerance import TOUCH

Array = np.ndarray
_ROUNDS = 14
AGREE = 2e-4
"""mm between the proven bounds at which a distance counts as found here; the lower one is used."""


class Rod(Struct, frozen=True, eq=False):
    """One cylinder in n trials: `start` and unit `axis` as x, y, z arrays (n,), `length` (n,) and `radius` in mm."""

    start: tuple[Array, Array, Array]
    axis: tuple[Array, Array, Array]
    length: Array
    radius: float

    def at(self, depth: Array | float) -> tuple[Array, Array, Array]:
        """Points of the axis at a depth from the start, mm."""
        return tuple(s + a * depth for s, a in zip(self.start, self.axis, strict=True))

    def picked(self, index: Array) -> Cylinders:
        """The cylinders of some trials."""
        size = len(index)
        return Cylinders(np.stack([c[index] for c in self.start], axis=1),
                         np.stack([c[index] for c in self.axis], axis=1), self.length[index],
                         np.full(size, self.radius))

    def strayed(self, nominal: Rod) -> Array:
        """(n,) mm: no point of the built cylinder is farther than this from its place in the nominal one.

        The larger shift of the two ends of the axis, and what the radius adds when the axis turns.
        """
        first = length3(*(a - b for a, b in zip(self.start, nominal.start, strict=True)))
        last = length3(*(a - b for a, b in zip(self.at(self.length), nominal.at(nominal.length), strict=True)))
        turn = length3(*(a - b for a, b in zip(self.axis, nominal.axis, strict=True)))
        return np.maximum(first, last) + self.radius * turn


def gap(a: Rod, b: Rod, enough: float = np.inf) -> Array:
    """(n,) mm of wood between two cylinders in each trial, negative by the depth of overlap.

    What is proved to be `enough` mm or more is not measured further. Never overstated; understated by at most AGREE where there is wood left.
    An overlap is measured along the axes and along the shortest connection of
    the two, so its depth may be a little more than the least shift that parts them.
    """
    apart = [q - p for p, q in zip(a.start, b.start, strict=True)]
    c = dot(a.axis, b.axis)
    ahead_a, ahead_b = dot(a.axis, apart), dot(b.axis, apart)
    sine = 1.0 - c * c
    s = np.clip((ahead_a - c * ahead_b) / np.maximum(sine, 1e-15) * (sine > 1e-15), 0.0, a.length)
    t = np.clip(c * s - ahead_b, 0.0, b.length)
    s = np.clip(c * t + ahead_a, 0.0, a.length)
    between = [w + q * t - p * s for w, p, q in zip(apart, a.axis, b.axis, strict=True)]
    far = np.maximum(length3(*between), 1e-12)
    n = [w / far for w in between]
    lean_a, lean_b = dot(n, a.axis), dot(n, b.axis)
    flat_a, flat_b = np.sqrt(np.maximum(1.0 - lean_a * lean_a, 0.0)), np.sqrt(np.maximum(1.0 - lean_b * lean_b, 0.0))
    low = (dot(n, apart) - np.maximum(a.length * lean_a, 0.0) - a.radius * flat_a
           + np.minimum(b.length * lean_b, 0.0) - b.radius * flat_b)
    across = np.sqrt(np.maximum(sine, 0.0))
    low = np.maximum(low, _end_on(ahead_a, b.length * c, b.radius * across, a.length))
    low = np.maximum(low, _end_on(-ahead_b, a.length * c, a.radius * across, b.length))
    high = length3(*(w - (m - p * lean_a) * (a.radius / np.maximum(flat_a, 1e-9))
                      - (m - q * lean_b) * (b.radius / np.maximum(flat_b, 1e-9))
                      for w, m, p, q in zip(between, n, a.axis, b.axis, strict=True)))
    crossing = (far < a.radius + b.radius) & (np.maximum(np.abs(lean_a), np.abs(lean_b)) < 1e-6)
    unsure = np.flatnonzero((high - low > AGREE) & ~crossing & (low < enough))
    if unsure.size:
        _settle(a, b, s, low, unsure)
    return low


def _settle(a: Rod, b: Rod, s: Array, low: Array, unsure: Array) -> None:
    """Raise `low` to the distance in the trials where the closed form left it open; s: depth of the foot on a's axis.

    Alternating projection with momentum and the certificate of
    geometry.solids.distance_certified, for all of these trials together; the
    few that are open after _ROUNDS rounds go to that routine.
    """
    whole = len(unsure) > 0.7 * len(low)
    one, two = (a, b) if whole else (some(a, unsure), some(b, unsure))
    y = one.at(s if whole else s[unsure])
    proven = low if whole else low[unsure]
    p = before = nearest(one, nearest(two, y))
    y = p
    for turn in range(_ROUNDS):
        p = nearest(one, nearest(two, y))
        q = nearest(two, p)
        between = [v - u for u, v in zip(p, q, strict=True)]
        far = length3(*between)
        n = [w / np.maximum(far, 1e-12) for w in between]
        proven = np.maximum(proven, -_support(one, n, 1.0) - _support(two, n, -1.0))
        if ((far - proven <= AGREE) | (far <= TOUCHING)).all():
            break
        push = turn / (turn + 3.0)
        y = [u + push * (u - v) for u, v in zip(p, before, strict=True)]
        before = p
    proven = np.where(far <= TOUCHING, np.minimum(proven, -2 * TOUCH), proven)
    open_ = np.flatnonzero((far - proven > AGREE) & (far > TOUCHING))
    if open_.size:
        first = np.stack([u[open_] for u in p], axis=1)
        found = certified(one.picked(open_), two.picked(open_), first).distance
        proven[open_] = np.where(found > 0, np.maximum(found, proven[open_]), np.minimum(proven[open_], -2 * TOUCH))
    low[unsure] = proven[unsure] if whole else proven


def some(rod: Rod, index: Array) -> Rod:
    """The cylinders of some trials."""
    return Rod(tuple(c[index] for c in rod.start), tuple(c[index] for c in rod.axis), rod.length[index], rod.radius)


def nearest(rod: Rod, point) -> tuple[Array, Array, Array]:
    """The point of each cylinder nearest to a point."""
    w = [p - s for p, s in zip(point, rod.start, strict=True)]
    along = dot(w, rod.axis)
    aside = [c - along * d for c, d in zip(w, rod.axis, strict=True)]
    keep = np.minimum(rod.radius / np.maximum(length3(*aside), 1e-12), 1.0)
    depth = np.minimum(np.maximum(along, 0.0), rod.length)
    return tuple(s + d * depth + c * keep for s, d, c in zip(rod.start, rod.axis, aside, strict=True))


def _support(rod: Rod, n, sign: float) -> Array:
    """Largest sign n . p over each cylinder."""
    lean = dot(n, rod.axis)
    return (sign * dot(n, rod.start) + np.maximum(sign * lean * rod.length, 0.0)
            + rod.radius * np.sqrt(np.maximum(1.0 - lean * lean, 0.0)))


def _end_on(first: Array, along: Array, reach: Array, length: Array) -> Array:
    """Gap along one axis (0 to `length`) to a cylinder whose axis runs on from `first` by `along`, `reach` thick."""
    last = first + along
    return np.maximum(np.minimum(first, last) - reach - length, -(np.maximum(first, last) + reach))


def dot(a, b) -> Array:
    """Scalar products of vectors that are kept one array an axis."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def length3(x: Array, y: Array, z: Array) -> Array:
    """Lengths of vectors that are kept one array an axis."""
    return np.sqrt(x * x + y * y + z * z)
