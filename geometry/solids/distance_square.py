"""The same question where the two axes are square to each other, as most bores are: a quarter of one octant, on a grid made once.

With axes along x and y the shift is A x + B y - W z + R sqrt(1 - x^2) + r sqrt(1 - y^2), where A and B are
what it takes past the nearer end of either cylinder: past the farther one it is never less.
So one octant counts, and what a triangle of it tells is the same for all pairs but for A, B, W and the radii.
"""

from __future__ import annotations

import numpy as np

from geometry.solids.distance_proof import AGREE, Pairs, bottom, cut

SQUARE = 1e-9
"""Cosine of the angle between two axes below which they are square: no shift is another for it by more than a hundredth of AGREE."""


def _grid() -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Triangles of the octant x, y, z > 0 (3, 3, k), what R and r are multiplied with at their corners (2, 3, k); the same for their middles."""
    corners = cut(cut(np.array([[0.0, 1.0, 0.0], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]])[:, :, None]))
    x, y, z = middle = corners.sum(axis=1)
    middle /= np.sqrt(x * x + y * y + z * z)
    flank, across = rims = np.array([np.hypot(y, z), np.hypot(x, z)])
    return corners, np.array([(corners[1] * y + corners[2] * z) / flank, (corners[0] * x + corners[2] * z) / across]), middle, rims


_CORNERS, _RIMS, _MIDDLE, _MIDDLE_RIMS = _grid()


def begin(pairs: Pairs, row: np.ndarray, value: np.ndarray, way: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(pair of each, corners (3, 3, k)) of the triangles in which some square pairs may have a shift AGREE shorter than `value` (n,).

    Where the middle of a triangle tells of a shorter one, `value` and its direction `way` (3, n) become what it leads to.
    """
    own = Pairs(pairs.rows[:, row])
    back, down = own.length_a - own.wx < own.wx, -own.wy < own.wy + own.length_b
    a, b = np.where(back, own.length_a - own.wx, own.wx), np.where(down, -own.wy, own.wy + own.length_b)
    # Where going past the end costs more than the rim gives back, the way square to that axis is better: a crease, which is known.
    slack = 0.5 * AGREE
    left = ((a + slack < np.maximum(0.0, own.radius_a + own.wz)) & (b + slack < np.maximum(0.0, own.radius_b + own.wz))).nonzero()[0]
    row, turned = row[left], np.where(np.array([back, down])[:, left], -1.0, 1.0)
    terms = np.array([a, b, own.wz, own.radius_a, own.radius_b])[:, left]
    here = _summed(terms, _MIDDLE, _MIDDLE_RIMS)
    best = here.argmin(axis=0)
    for at in (here.min(axis=0) < value[row]).nonzero()[0].tolist():
        x, y, z = _MIDDLE[:, best[at]].tolist()
        found, least = bottom(tuple(pairs.rows[:, row[at]].tolist()), (float(turned[0, at]) * x, float(turned[1, at]) * y, z))
        if found < value[row[at]]:
            value[row[at]], way[:, row[at]] = found, least
    triangle, at = (_summed(terms, _CORNERS, _RIMS).min(axis=0) < value[row] - AGREE).nonzero()
    corners = _CORNERS[:, :, triangle]
    corners[:2] *= turned[:, None, at]
    return row[at], corners


def _summed(terms: np.ndarray, directions: np.ndarray, rims: np.ndarray) -> np.ndarray:
    """A x + B y - W z with both radii (..., n) for what is the same of all pairs (3, ...) and (2, ...)."""
    a, b, lift, radius_a, radius_b = terms
    (x, y, z), (flank, across) = directions[..., None], rims[..., None]
    return a * x + b * y + lift * z + radius_a * flank + radius_b * across
