"""Which room on the screen is still free: boxes that are taken, kept by the squares of a net that they reach into."""

from __future__ import annotations

import math
from collections import defaultdict

Box = tuple[float, float, float, float]
"""left, right, top and bottom, pixels"""


class FreeRoom:
    """Boxes so far. A box is compared with its neighbours alone: a spoiled layout has a hundred cards and rings."""

    def __init__(self, mesh: float) -> None:
        """`mesh`: side of the squares, about the length of what is laid."""
        self._mesh = mesh
        self._taken: defaultdict[tuple[int, int], list[Box]] = defaultdict(list)

    def take(self, box: Box) -> None:
        """Nothing else is to lie here."""
        for square in self._squares(box):
            self._taken[square].append(box)

    def has(self, box: Box) -> bool:
        """Whether nothing that is taken lies over a box; to touch is no matter."""
        left, right, top, bottom = box
        return not any(left < r and l < right and top < b and t < bottom
                       for square in self._squares(box) if square in self._taken for l, r, t, b in self._taken[square])

    def _squares(self, box: Box) -> list[tuple[int, int]]:
        left, right, top, bottom = (math.floor(end / self._mesh) for end in box)
        return [(x, y) for x in range(left, right + 1) for y in range(top, bottom + 1)]
