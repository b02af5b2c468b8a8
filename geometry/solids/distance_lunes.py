"""Which directions could part two overlapping cylinders by a shorter shift than the best one known: most are ruled out by a formula.

Directions n = (r u, z): r is the share that lies in the plane of both axes, along u there, z = sqrt(1 - r^2)
points along m. Along a line r of one u the shift is that of u times r (linear), both radii times a
root such as sqrt(1 - r^2 cos^2), which is concave and so never below its chord from 1 at r = 0 to
what it is at r = 1, less the lift W z. With S both radii together and H the shift along u itself
this is at least S - (S - H) r - W sqrt(1 - r^2), which is least where the slopes meet: at
S - hypot(S - H, W), or S - W at r = 0 where H is more than S. Between two neighbours of the ring
the shift along u is linear in u, so H is never less than at one of them.
"""

from __future__ import annotations

import numpy as np

from geometry.solids.distance_proof import AGREE, Pairs

CREASES, AXES = [2, 6, 3, 7], [0, 4, 1, 5]
"""Where on the ring of a pair the creases begin, and the axes."""
_SLIVER = 1e-9
"""rad: a lune narrower than this is as good as its sides, and these belong to its neighbours too"""


def at_least(pairs: Pairs, level: np.ndarray) -> np.ndarray:
    """What the shift is at least (k, n), mm, on the way from directions in the plane of both axes, along which it is `level` (k, n), to m."""
    most = pairs.radius_a + pairs.radius_b
    return most - np.hypot(np.maximum(0.0, most - level), pairs.wz)


def creases(pairs: Pairs, ring: np.ndarray, around: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(what the shift is at least (4, n) on the ways square to an axis, mm; directions (3, 4, n) on them that are the best if the axes are square).

    There one radius counts in full, and the other's root is no less than z: what is left is a linear function on a quarter turn.
    Where both its slopes fall it is least against them, else at an end.
    """
    own = np.array([pairs.radius_a, pairs.radius_a, pairs.radius_b, pairs.radius_b])
    other = own[[2, 3, 0, 1]]
    level = around[CREASES]
    aside, lift = level - own - other * pairs.c, other + pairs.wz
    falls, size = (aside < 0) & (lift < 0), np.hypot(aside, lift)
    least = np.maximum(at_least(pairs, level), own + np.where(falls, -size, np.minimum(aside, lift)))
    size = np.where(falls, -size, 1.0)
    ways = ring[:, CREASES] * np.where(falls, aside / size, 1.0)
    ways[2] = np.where(falls, lift / size, 0.0)
    return least, ways


def begin(pairs: Pairs, ring: np.ndarray, around: np.ndarray, value: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(pair of each (k,), corners (3, 3, k)) of the triangles in which a shift may be AGREE shorter than `value` (n,).

    `ring` (3, 8, n), `around` (8, n): the directions in the plane of both axes, and the shifts along them.
    """
    place, owner = _maybe(pairs, around, value).nonzero()
    corners = np.zeros((3, 3, len(owner)))
    corners[2, 0] = 1.0
    corners[:, 1], corners[:, 2] = ring[:, place, owner], ring[:, (place + 1) % 8, owner]
    return owner, corners


def _maybe(pairs: Pairs, around: np.ndarray, value: np.ndarray) -> np.ndarray:
    """The lunes (8, n) in which a shift may be AGREE shorter than `value` (n,); `around` (8, n): the shifts along the ring."""
    following = around[[1, 2, 3, 4, 5, 6, 7, 0]]
    level = np.minimum(around, following)
    # Between the two of the ring u is up to sqrt(2) times a mean of them: a shift below zero is one farther below.
    found = at_least(pairs, np.minimum(level, 1.5 * level)) < value - AGREE
    # The opposite lune has the same radii, and of two linear functions the one that is less at both sides is less in between.
    more = around - around[[4, 5, 6, 7, 0, 1, 2, 3]]
    further = more[[1, 2, 3, 4, 5, 6, 7, 0]]
    dominated = (more >= 0) & (further >= 0)
    dominated[4:] &= ~dominated[:4]
    found &= ~dominated
    found[::2] &= pairs.s > _SLIVER
    found[1::2] &= pairs.c > _SLIVER
    return found
