"""Which upright boxes come near which others, by plain numbers: for as many as a head has they are quicker than arrays or a tree."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

Box = tuple[Sequence[float], Sequence[float]]
"""Lowest and highest corner, mm. A box that holds nothing (lowest above highest) is near no other."""
Rows = list[Box]

NOTHING = (math.inf,) * 3, (-math.inf,) * 3
"""Corners of a box that holds nothing."""


def pairs_near(boxes: Rows, reach: float) -> list[tuple[int, int]]:
    """Pairs of places of boxes at most `reach` mm apart along each coordinate: each once, the lower place first, each box with itself.

    In order. Swept along the head, or across where they lie farther apart so: each box is held only against those that begin
    before it ends.
    """
    if _spread(boxes, 0) > _spread(boxes, 1):
        boxes = [((y0, x0, z0), (y1, x1, z1)) for (x0, y0, z0), (x1, y1, z1) in boxes]
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


def _spread(boxes: Rows, axis: int) -> float:
    begins = [low[axis] for low, _ in boxes if low[axis] < math.inf]
    return max(begins) - min(begins) if begins else 0.0


def boxes_near_some(some: Sequence[int], boxes: Rows, reach: float) -> list[tuple[int, int]]:
    """(one of some places, any place) of boxes at most `reach` mm apart along each coordinate, in that order."""
    found = []
    for i in some:
        (x0, y0, z0), (x1, y1, z1) = boxes[i]
        found += [(i, k) for k, ((a0, b0, c0), (a1, b1, c1)) in enumerate(boxes)
                  if x0 - a1 <= reach and a0 - x1 <= reach and y0 - b1 <= reach and b0 - y1 <= reach
                  and z0 - c1 <= reach and c0 - z1 <= reach]
    return found


def rows_of(low: np.ndarray, high: np.ndarray) -> Rows:
    """Boxes from their lowest and highest corners (n, 3)."""
    return list(zip(low.tolist(), high.tolist(), strict=True))
