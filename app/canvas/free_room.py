"""Which room on the screen is still free: boxes that are taken, kept by the squares of a net that they reach into."""

from __future__ import annotations

import math
from collections import defaultdict

Box = tuple[float, float, float, float]
"""left, right, top and bottom, pixels"""


class FreeRoom:
    """Boxes so far. A box is compared with its neighbours alone: a spoiled layout has a hundred cards and rings."""

    def __init__(self, mesh: float) -> None:
        """`mesh`: side of the squares, about twice the length of what is laid."""
        self._mesh = mesh
        self._taken: defaultdict[tuple[int, int], list[Box]] = defaultdict(list)

    def take(self, box: Box) -> None:
        """Nothing else is to lie here."""
        for square in self._squares(box):
            self._taken[square].append(box)

    def has(self, box: Box) -> bool:
        """Whether nothing that is taken lies over a box; to touch is no matter."""
        left, right, top, bottom = box
        for square in self._squares(box):
            # Backwards: rings are taken first, and what lies over a card is most often another card.
            for l, r, t, b in reversed(self._taken.get(square, ())):
                if left < r and l < right and top < b and t < bottom:
                    return False
        return True

    def _squares(self, box: Box) -> list[tuple[int, int]]:
        left, right, top, bottom = box
        mesh = self._mesh
        rows = range(math.floor(top / mesh), math.floor(bottom / mesh) + 1)
        return [(x, y) for x in range(math.floor(left / mesh), math.floor(right / mesh) + 1) for y in rows]
