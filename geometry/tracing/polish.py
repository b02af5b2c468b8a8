"""Pieces end to end that are made better together: knots turned and shifted, needless ones taken out."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

TURNS = (0.05, 0.02, 0.008)
"""Steps in rad by which the direction at a knot is tried out."""
SHIFTS = (0.4, 0.16, 0.06)
"""Steps of its place square to the line, as parts of the tolerance."""


class Knot(Struct, frozen=True):
    """Where two pieces meet."""

    index: int
    place: np.ndarray
    corner: bool
    out: np.ndarray
    """unit direction in which the line leaves it"""
    into: np.ndarray
    """unit direction back along the line that comes to it; -out where it is smooth"""


Measure = Callable[[str, Knot, Knot], float]
"""Greatest deviation of a piece of a kind between two knots, mm."""


class Chain:
    """A closed chain of knots and the kinds of the pieces that leave them."""

    def __init__(self, knots: list[Knot], kinds: list[str], measure: Measure, tolerance: float) -> None:
        self.knots = knots
        self.kinds = kinds
        self._measure = measure
        self._tolerance = tolerance

    def polish(self, only: range | None = None) -> None:
        """Turn and shift the smooth knots between curves while that brings the pieces beside them nearer."""
        for turn, shift in zip(TURNS, SHIFTS, strict=True):
            for i in only or range(len(self.knots)):
                self._better(i % len(self.knots), turn, shift * self._tolerance)

    def thin(self, tell: Callable[[], object]) -> None:
        """Take out knots whose two pieces one curve can stand for within the tolerance."""
        i = 0
        while i < len(self.knots) and len(self.knots) > 3:
            tell()
            if not self._without(i):
                i += 1

    # ---- inside ---------------------------------------------------------
    def _error(self, i: int) -> float:
        count = len(self.knots)
        return self._measure(self.kinds[i % count], self.knots[i % count], self.knots[(i + 1) % count])

    def _free(self, i: int) -> bool:
        return self.kinds[i] == "cubic" and self.kinds[i - 1] == "cubic"

    def _better(self, i: int, turn: float, shift: float) -> None:
        if not self._free(i):
            return
        cost = max(self._error(i - 1), self._error(i))
        for change in _changes(self.knots[i], turn, shift):
            for _ in range(4):
                before = self.knots[i]
                self.knots[i] = change(before)
                found = max(self._error(i - 1), self._error(i))
                if found >= cost - 1e-9:
                    self.knots[i] = before
                    break
                cost = found

    def _without(self, i: int) -> bool:
        """Try the chain without a knot; put it back when a piece would stray too far."""
        if self.knots[i].corner or "line" in (self.kinds[i], self.kinds[i - 1]):
            return False
        kept = list(self.knots), list(self.kinds)
        self.kinds[i - 1] = "cubic"
        del self.knots[i], self.kinds[i]
        count = len(self.knots)
        low = (i - 1) % count
        high = (low + 1) % count
        if self._error(low) <= 6 * self._tolerance:
            for turn, shift in zip(TURNS, SHIFTS, strict=True):
                self._better(low, turn, shift * self._tolerance)
                self._better(high, turn, shift * self._tolerance)
            if max(self._error(k) for k in (low - 1, low, high)) <= self._tolerance:
                return True
        self.knots[:], self.kinds[:] = kept
        return False


def _changes(knot: Knot, turn: float, shift: float) -> list[Callable[[Knot], Knot]]:
    def turned(sign: float, which: str) -> Callable[[Knot], Knot]:
        c, s = math.cos(turn), math.sin(turn) * sign

        def change(k: Knot) -> Knot:
            def rotate(v: np.ndarray) -> np.ndarray:
                return np.array([c * v[0] - s * v[1], s * v[0] + c * v[1]])
            if which == "out":
                return replace(k, out=rotate(k.out))
            if which == "into":
                return replace(k, into=rotate(k.into))
            return replace(k, out=rotate(k.out), into=rotate(k.into))
        return change

    def shifted(sign: float) -> Callable[[Knot], Knot]:
        def change(k: Knot) -> Knot:
            return replace(k, place=k.place + sign * shift * np.array([-k.out[1], k.out[0]]))
        return change

    if knot.corner:
        return [turned(sign, which) for which in ("out", "into") for sign in (1.0, -1.0)]
    return [turned(1.0, ""), turned(-1.0, ""), shifted(1.0), shifted(-1.0)]
