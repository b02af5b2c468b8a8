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
from geometry.solids.golden import lowest
from geometry.solids.pointed import beside_cone
from geometry.solids.walls import Wall
from geometry.vectors import Vec2

_ROUNDS = 80
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
    ends = np.array([_gap(u, w, height, radius, length, ahead, _AT_END) for u, w in rim.tolist()])
    lower, chord = np.minimum(ends[:-1], ends[1:]), np.diff(rim, axis=0)
    # Along a chord the gap falls by no more than the way along it, and where the drilling rises through the floor by as much as it does.
    steep = max(1.0, ahead / radius)
    deepest = lower - steep * (np.hypot(chord[:, 0], chord[:, 1]) + max(0.0, radius - height))
    least: dict[int, tuple[float, float]] = {}
    best = float(lower.min())
    for k in np.argsort(deepest, kind="stable").tolist():
        if deepest[k] > best + slot.sagitta:
            break
        least[k] = _least(rim[k], rim[k + 1], height, radius, length, ahead)
        best = min(best, least[k][0])
    k = min(least, key=lambda k: least[k][0])
    rivals = [i for i, (gap, _) in least.items() if gap <= least[k][0] + slot.sagitta]
    curved = any(not isinstance(slot.path.segments[slot.segment_of(i)], Line) for i in rivals)
    u, w = rim[k] + chord[k] * least[k][1]
    x, y = origin + into * u + across * w
    return least[k][0] - (slot.sagitta if curved else 0.0), (float(x), float(y))


def _least(a: np.ndarray, b: np.ndarray, height: float, radius: float, length: float, ahead: float) -> tuple[float, float]:
    """(the least gap in mm of a chord of the rim, from (u, w) to (u, w), its share of the chord there), by golden sections."""
    (au, aw), (bu, bw) = a.tolist(), b.tolist()

    def value(share: float, slack: float = 0.0) -> float:
        return _gap(au + (bu - au) * share, aw + (bw - aw) * share, height, radius, length, ahead, slack)
    # An end of a chord may lie an ulp lower than the search came to.
    return min((value(share, _AT_END), at, share) for at, share in enumerate((lowest(value, 0.0, 1.0, _ROUNDS), 0.0, 1.0)))[::2]


def _gap(u: float, w: float, height: float, radius: float, length: float, ahead: float, slack: float) -> float:
    """Of a point of the floor, mm; no farther than `slack` beyond an end of the drilling it counts as above it."""
    deep = math.hypot(w, height) - radius
    beyond = max(-u, u - length) - slack
    if ahead and u > length:
        return beside_cone(radius, ahead, deep + radius, u - length)
    return math.hypot(beyond, max(deep, 0.0)) if beyond > 0 else deep
