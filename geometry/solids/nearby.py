"""Which upright boxes come near which others: every pair for a few, a tree for many."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely

Boxes = tuple[np.ndarray, np.ndarray]
"""Lowest and highest corners (n, 3), mm. A box that holds nothing (lowest above highest) is near no other."""
Box = tuple[Sequence[float], Sequence[float]]
"""Lowest and highest corner of one box as plain numbers."""
Rows = list[Box]
"""The same as Boxes, box by box."""

NOTHING = (math.inf,) * 3, (-math.inf,) * 3
"""Corners of a box that holds nothing."""

_MANY = 4096
"""pairs from which a tree pays"""
FEW = 64
"""boxes up to which a group is kept as plain numbers"""
_PLAIN = 256
"""pairs up to which plain numbers are quicker than arrays"""


def boxes_near(one: Boxes, two: Boxes, reach: float) -> tuple[np.ndarray, np.ndarray]:
    """Indices (k,), (k,) of the boxes of `one` and of `two` that are at most `reach` mm apart along each coordinate; in order."""
    if len(one[0]) * len(two[0]) <= _MANY:
        before = _before(one, two, reach)
        return np.nonzero(before & (before if one is two else _before(two, one, reach)).T)
    # Flat boxes in the tree, a hair larger so that rounding loses none; then as above.
    flat, held = (_flat(boxes, by) for boxes, by in ((one, reach + 1e-6), (two, 0.0)))
    i, k = shapely.STRtree(held).query(flat)
    apart = np.maximum(one[0][i] - two[1][k], two[0][k] - one[1][i])
    near = (apart <= reach).all(axis=1)
    i, k = i[near], k[near]
    order = np.lexsort((k, i))
    return i[order], k[order]


def _before(one: Boxes, two: Boxes, reach: float) -> np.ndarray:
    """Which boxes of `one` (rows) begin no more than `reach` mm after those of `two` (columns) end, along each coordinate."""
    x, y, z = one[0].T[:, :, None] - two[1].T[:, None, :] <= reach
    return x & y & z


def boxes_near_each_other(boxes: Boxes, reach: float) -> tuple[np.ndarray, np.ndarray]:
    """As boxes_near among the boxes of one group: each pair once, the lower index first, and each box with itself."""
    i, k = boxes_near(boxes, boxes, reach)
    once = i <= k
    return i[once], k[once]


def pairs_near(boxes: Boxes | Rows, reach: float) -> list[tuple[int, int]]:
    """As boxes_near_each_other, in a list.

    Plain numbers are swept from the nut to the tip: each box is held only against those that begin before it ends, as most lie
    along the head.
    """
    if not isinstance(boxes, list):
        return list(zip(*(side.tolist() for side in boxes_near_each_other(boxes, reach)), strict=True))
    upwards = sorted(range(len(boxes)), key=lambda i: boxes[i][0][1])
    found = []
    for at, i in enumerate(upwards):
        (x0, y0, z0), (x1, y1, z1) = boxes[i]
        for k in upwards[at:]:
            (a0, b0, c0), (a1, b1, c1) = boxes[k]
            if b0 - y1 > reach:
                break
            if y0 - b1 <= reach and x0 - a1 <= reach and a0 - x1 <= reach and z0 - c1 <= reach and c0 - z1 <= reach:
                found.append((i, k) if i < k else (k, i))
    found.sort()
    return found


def with_boxes(boxes: Boxes | Rows, some: list[int], made: Rows) -> Boxes | Rows:
    """The boxes of a group after those at some places have become the ones made: as plain numbers for a few."""
    if len(boxes if isinstance(boxes, list) else boxes[0]) <= FEW:
        rows = boxes.copy() if isinstance(boxes, list) else rows_of(boxes)
        for i, row in zip(some, made, strict=True):
            rows[i] = row
        return rows
    low, high = (side.copy() for side in boxes)
    low[some], high[some] = arrays_of(made)
    return low, high


def boxes_near_some(some: list[int], boxes: Boxes | Rows, reach: float) -> list[tuple[int, int]]:
    """As boxes_near, of some boxes of a group, by their indices, and all boxes of it: (one of the some, any)."""
    if isinstance(boxes, list) and len(some) * len(boxes) <= _PLAIN:
        found = []
        for i in some:
            (x0, y0, z0), (x1, y1, z1) = boxes[i]
            found += [(i, k) for k, ((a0, b0, c0), (a1, b1, c1)) in enumerate(boxes)
                      if x0 - a1 <= reach and a0 - x1 <= reach and y0 - b1 <= reach and b0 - y1 <= reach
                      and z0 - c1 <= reach and c0 - z1 <= reach]
        return found
    low, high = arrays_of(boxes) if isinstance(boxes, list) else boxes
    i, k = boxes_near((low[some], high[some]), (low, high), reach)
    return [(some[one], two) for one, two in zip(i.tolist(), k.tolist(), strict=True)]


def arrays_of(rows: Rows) -> Boxes:
    """Boxes from plain numbers."""
    both = np.array(rows, dtype=float).reshape(-1, 2, 3)
    return both[:, 0], both[:, 1]


def rows_of(boxes: Boxes) -> Rows:
    """Boxes as plain numbers."""
    return list(zip(boxes[0].tolist(), boxes[1].tolist(), strict=True))


def _flat(boxes: Boxes, by: float) -> np.ndarray:
    low, high = boxes
    full = (low[:, :2] <= high[:, :2]).all(axis=1)
    made = np.full(len(low), shapely.Polygon(), dtype=object)
    made[full] = shapely.box(low[full, 0] - by, low[full, 1] - by, high[full, 0] + by, high[full, 1] + by)
    return made
