"""A level drilling below the floor of a blind slot.

For a point p of the slot's floor let u and w be its plan coordinates along and
across the drilling's axis and h the height of the floor over the axis. The
nearest point of the drilling lies hypot(du, max(0, hypot(w, h) - r)) away, where
du is how far u lies beyond the drilling's ends: a convex function of p, so its
least value lies above the axis or on the floor's rim, found chord by chord.
"""

from __future__ import annotations

import math

import numpy as np

from geometry.curves import Line
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall
from geometry.vectors import Vec2

_ROUNDS = 80
_INNER = (math.sqrt(5) - 1) / 2
_AT_END = 1e-9
"""mm: what the search finds no farther beyond an end of a drilling counts as above it: there the gap drops at once where the drilling
rises through the floor"""


def floor_gap(drilling: Drilling, slot: Wall, height: float, ahead: float = 0.0) -> tuple[float, Vec2]:
    """(gap in mm, the floor's nearest point in plan) of a level drilling `height` mm (above 0) below a slot's floor.

    Negative by how far the drilling rises through the floor. `ahead` counts a cone so many mm beyond its end too, down to
    the drill's point; where that alone comes through, negative by how far it would have to be drawn back. On curved parts of
    the wall it may be understated by their sagitta, never overstated.
    """
    origin = np.array(drilling.start[:2])
    into = np.array(drilling.direction[:2])
    across = np.array([-into[1], into[0]])
    radius, length = drilling.radius, drilling.depth

    above = slot.stretches(drilling.start[:2], drilling.direction[:2])
    if above and above[0][0] <= length:
        x, y = origin + into * above[0][0]
        return height - radius, (float(x), float(y))

    points = slot.points - origin
    rim = np.stack([points @ into, points @ across], axis=1)
    a, b = rim[:-1], rim[1:]

    def value(share: np.ndarray, slack: float = 0.0) -> np.ndarray:
        u, w = (a + (b - a) * share[:, None]).T
        beyond = np.maximum(np.maximum(-u, u - length) - slack, 0.0)
        deep = np.hypot(w, height) - radius
        far = np.where(beyond > 0, np.hypot(beyond, np.maximum(deep, 0.0)), deep)
        return np.where(u > length, _beside_cone(u - length, deep, radius, ahead), far) if ahead else far

    low, high = np.zeros(len(a)), np.ones(len(a))
    for _ in range(_ROUNDS):
        one, two = high - (high - low) * _INNER, low + (high - low) * _INNER
        left = value(one) <= value(two)
        low, high = np.where(left, low, one), np.where(left, two, high)
    shares = (low + high) / 2
    # An end of a chord may lie an ulp lower than the search came to.
    options = np.stack([value(share, _AT_END) for share in (shares, np.zeros(len(a)), np.ones(len(a)))])
    least = options.min(axis=0)
    k = int(np.argmin(least))
    share = (float(shares[k]), 0.0, 1.0)[int(np.argmin(options[:, k]))]
    rivals = np.flatnonzero(least <= least[k] + slot.sagitta).tolist()
    curved = any(not isinstance(slot.path.segments[slot.segment_of(i)], Line) for i in rivals)
    u, w = a[k] + (b[k] - a[k]) * share
    x, y = origin + into * u + across * w
    return float(least[k]) - (slot.sagitta if curved else 0.0), (float(x), float(y))


def _beside_cone(beyond: np.ndarray, deep: np.ndarray, radius: float, ahead: float) -> np.ndarray:
    """Gap of a cone `ahead` mm long to what lies `beyond` mm after its base and `deep` mm outside its rim; negative by how far it is too long."""
    share = np.clip((beyond * ahead - deep * radius) / (ahead * ahead + radius * radius), 0.0, 1.0)
    far = np.hypot(beyond - share * ahead, deep + radius * share)
    return np.where(-deep * ahead > beyond * radius, beyond + deep * ahead / radius, far)
