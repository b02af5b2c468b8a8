"""Nearest points of two convex cylinders by projections that carry their own proof.

Alternating projection with momentum (projected gradient on half the squared
distance; the momentum restarts when it points uphill). Any pair of points is
an upper bound of the distance. The plane square to their connection gives a
lower one: the gap between the two solids along that direction, in closed form
by their support. The iteration ends when the two agree; where it would take
too long the direction itself is refined.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry.solids.cylinders import Cylinders, dots, norms
from geometry.solids.distance_direction import sharpest

AGREE = 2e-7
"""mm between the bounds at which a distance counts as found."""
MOST_ROUNDS = 120
_OFTEN, _SELDOM = 2, 3
"""The bounds are asked for in so many rounds, then in every third: asking takes longer than going on."""
TOUCHING = 1e-9
"""mm: nearer than this the solids count as sharing wood."""


class Found(Struct, frozen=True, eq=False):
    """`distance` (n,) in mm: the proven lower bound, 0 where the solids meet; `on_a`, `on_b` (n, 3) nearest points."""

    distance: np.ndarray
    on_a: np.ndarray
    on_b: np.ndarray


def certified(a: Cylinders, b: Cylinders, first: np.ndarray, decide: np.ndarray | None = None,
              enough: np.ndarray | None = None) -> Found:
    """Distances of a[i] and b[i], started from the points `first` (n, 3).

    With `decide` (n,) in mm each pair stops as soon as its bounds tell on which side of that number it lies; with
    `enough` as soon as it is proved to be more than that.
    """
    count = len(a)
    whole_a, whole_b = a, b
    lower, upper = np.zeros(count), np.full(count, np.inf)
    on_a, on_b = np.array(first), np.array(first)
    open_ = np.arange(count)
    y, before, speed = first, first, np.ones(count)
    for round_ in range(MOST_ROUNDS):
        p = a.nearest(b.nearest(y))
        if round_ < _OFTEN or round_ % _SELDOM == 0:
            q = b.nearest(p)
            between = q - p
            far = norms(between)
            n = between / np.maximum(far, 1e-300)[:, None]
            proven = -(a.support(n) + b.support(-n))
            better = far < upper[open_]
            upper[open_] = np.where(better, far, upper[open_])
            on_a[open_[better]], on_b[open_[better]] = p[better], q[better]
            lower[open_] = np.maximum(lower[open_], proven)
            going = (upper[open_] - lower[open_] > AGREE) & (far > TOUCHING)
            if decide is not None:
                going &= (lower[open_] < decide[open_]) & (upper[open_] >= decide[open_])
            if enough is not None:
                going &= lower[open_] <= enough[open_]
            if not going.any():
                break
            if not going.all():
                open_, y, before, speed, p = open_[going], y[going], before[going], speed[going], p[going]
                a, b = a.pick(going), b.pick(going)
        uphill = dots(y - p, p - before) > 0
        faster = np.where(uphill, 1.0, (1 + np.sqrt(1 + 4 * speed * speed)) / 2)
        push = np.where(uphill, 0.0, (speed - 1) / faster)
        y = p + push[:, None] * (p - before)
        before, speed = p, faster
    lower[upper <= TOUCHING] = 0.0
    loose = upper - lower > AGREE
    if decide is not None:
        loose &= (lower < decide) & (upper >= decide)
    if enough is not None:
        loose &= lower <= enough
    loose = np.flatnonzero(loose)
    if loose.size:
        # Nearly flat contacts turn the projections into a crawl; the direction between them is then searched for.
        between = on_b[loose] - on_a[loose]
        n = between / np.maximum(norms(between), 1e-300)[:, None]
        lower[loose] = np.maximum(lower[loose], sharpest(whole_a.pick(loose), whole_b.pick(loose), n))
    return Found(lower, on_a, on_b)
