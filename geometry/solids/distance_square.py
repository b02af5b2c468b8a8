"""The same question where the two axes are square to each other, as most bores are: a quarter of one octant, on a grid made once.

With axes along x and y the shift is A x + B y - W z + R sqrt(1 - x^2) + r sqrt(1 - y^2), where A and B are
what it takes past the nearer end of either cylinder: past the farther one it is never less.
So one octant counts, and what a triangle of it tells is the same for all pairs but for A, B, W and the radii.
"""

from __future__ import annotations

import numpy as np

from geometry.solids.distance_proof import AGREE, Pairs, cut

SQUARE = 1e-9
"""Cosine of the angle between two axes below which they are square: no shift is another for it by more than a hundredth of AGREE."""


def _grid() -> tuple[np.ndarray, np.ndarray]:
    """Triangles of the octant x, y, z > 0 (3, 3, k), and what R and r are multiplied with at their corners (2, 3, k)."""
    corners = cut(cut(np.array([[0.0, 1.0, 0.0], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]])[:, :, None]))
    x, y, z = corners.sum(axis=1)
    flank, across = np.hypot(y, z), np.hypot(x, z)
    return corners, np.array([(corners[1] * y + corners[2] * z) / flank, (corners[0] * x + corners[2] * z) / across])


_CORNERS, _RADII = _grid()


def begin(pairs: Pairs, row: np.ndarray, value: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(pair of each, corners (3, 3, k)) of the triangles in which some square pairs may have a shift AGREE shorter than `value` (n,)."""
    own = Pairs(pairs.rows[:, row])
    back, down = own.length_a - own.wx < own.wx, -own.wy < own.wy + own.length_b
    a, b = np.where(back, own.length_a - own.wx, own.wx), np.where(down, -own.wy, own.wy + own.length_b)
    # Where going past the end costs more than the rim gives back, the way square to that axis is better: a crease, which is known.
    slack = 0.5 * AGREE
    left = ((a + slack < np.maximum(0.0, own.radius_a + own.wz)) & (b + slack < np.maximum(0.0, own.radius_b + own.wz))).nonzero()[0]
    x, y, z = _CORNERS[:, :, :, None]
    flank, across = _RADII[:, :, :, None]
    a, b, lift, radius_a, radius_b = np.array([a, b, own.wz, own.radius_a, own.radius_b])[:, left]
    least = (a * x + b * y + lift * z + radius_a * flank + radius_b * across).min(axis=0)
    triangle, at = np.nonzero(least < value[row[left]] - AGREE)
    at = left[at]
    corners = _CORNERS[:, :, triangle]
    corners[0] *= np.where(back[at], -1.0, 1.0)
    corners[1] *= np.where(down[at], -1.0, 1.0)
    return row[at], corners
