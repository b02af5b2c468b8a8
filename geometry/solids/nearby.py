"""Which upright boxes come near which others: every pair for a few, a tree for many."""

from __future__ import annotations

import numpy as np
import shapely

Boxes = tuple[np.ndarray, np.ndarray]
"""Lowest and highest corners (n, 3), mm. A box that holds nothing (lowest above highest) is near no other."""

_MANY = 4096
"""pairs from which a tree pays"""


def boxes_near(one: Boxes, two: Boxes, reach: float) -> tuple[np.ndarray, np.ndarray]:
    """Indices (k,), (k,) of the boxes of `one` and of `two` that are at most `reach` mm apart along each coordinate; in order."""
    if len(one[0]) * len(two[0]) <= _MANY:
        apart = np.maximum(one[0][:, None] - two[1][None], two[0][None] - one[1][:, None])
        near = np.nonzero((apart <= reach).all(axis=2))
        return near[0], near[1]
    # Flat boxes in the tree, a hair larger so that rounding loses none; then as above.
    flat, held = (_flat(boxes, by) for boxes, by in ((one, reach + 1e-6), (two, 0.0)))
    i, k = shapely.STRtree(held).query(flat)
    apart = np.maximum(one[0][i] - two[1][k], two[0][k] - one[1][i])
    near = (apart <= reach).all(axis=1)
    i, k = i[near], k[near]
    order = np.lexsort((k, i))
    return i[order], k[order]


def boxes_near_each_other(boxes: Boxes, reach: float) -> tuple[np.ndarray, np.ndarray]:
    """As boxes_near among the boxes of one group: each pair once, the lower index first, and each box with itself."""
    i, k = boxes_near(boxes, boxes, reach)
    once = i <= k
    return i[once], k[once]


def _flat(boxes: Boxes, by: float) -> np.ndarray:
    low, high = boxes
    full = (low[:, :2] <= high[:, :2]).all(axis=1)
    made = np.full(len(low), shapely.Polygon(), dtype=object)
    made[full] = shapely.box(low[full, 0] - by, low[full, 1] - by, high[full, 0] + by, high[full, 1] + by)
    return made
