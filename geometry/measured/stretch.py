"""Whether the printer's stretch explains where the holes came to lie.

Off in x and y of holes at (x, y) of the plan, to first order in small angles and ratios:

    dx = a - r y + p x        dy = b + r x + q y

with shift (a, b) mm, rotation r rad, stretch p across and q along the head. Both the model without stretch (p = q = 0)
and the full one are fitted by least squares to all readings of x and y, each reading one equation.

The full model (n parameters, k more than without stretch) is held against the other by the F test of nested linear
models (any textbook of regression, from memory):

    F = ((S0 - S1) / k) / (S1 / (m - n)),

with m readings and the sums of squares S0 without stretch, S1 with it. The stretch is taken for real where

- chance gives an F as large less than once in 100 times,
- at least 4 degrees of freedom are left,
- the larger of the two ratios is at least 0.05 %: a paper moves by that much by itself (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec import Struct

from geometry.measured.chances import f_above
from geometry.vectors import Vec2

CHANCE = 0.01
LEAST_FREEDOM = 4
LEAST_STRETCH = 5e-4


class Place(Struct, frozen=True):
    """One reading of a place: planned middle of the hole (mm), along which axis (0: x, 1: y), and mm off."""

    at: Vec2
    axis: int
    off: float


class Fit(Struct, frozen=True):
    """Shift (mm), rotation (rad), stretch as ratios (0 when it is not taken for real), what is left over (mm), degrees of freedom.

    `chance` is that of the F test; None when there are too few readings to ask.
    """

    shift: Vec2
    rotation: float
    stretch: Vec2
    left: tuple[float, ...]
    freedom: int
    chance: float | None
    real: bool

    @property
    def squares(self) -> float:
        """Sum of squares of what is left over, mm2."""
        return float(sum(one * one for one in self.left))


def fit_places(places: Sequence[Place]) -> Fit | None:
    """The fit by the rule above; None with fewer than 4 readings, or when they cannot tell a shift from a rotation."""
    if len(places) < 4:
        return None
    full = np.array([_row(place) for place in places])
    off = np.array([place.off for place in places])
    plain, left = _solve(full[:, :3], off)
    if plain is None:
        return None
    freedom = len(places) - 3
    kept = Fit((float(plain[0]), float(plain[1])), float(plain[2]), (0.0, 0.0), tuple(map(float, left)), freedom, None, False)
    more, left_more = _solve(full, off)
    free = len(places) - 5
    if more is None or free < LEAST_FREEDOM:
        return kept
    s0, s1 = float(left @ left), float(left_more @ left_more)
    tiny = 1e-18 * max(1.0, float(off @ off))
    chance = 1.0 if s0 - s1 <= tiny else 0.0 if s1 <= tiny else f_above((s0 - s1) / 2 / (s1 / free), 2, free)
    stretch = (float(more[3]), float(more[4]))
    real = chance < CHANCE and max(map(abs, stretch)) >= LEAST_STRETCH
    if not real:
        return Fit(kept.shift, kept.rotation, kept.stretch, kept.left, freedom, chance, False)
    return Fit((float(more[0]), float(more[1])), float(more[2]), stretch, tuple(map(float, left_more)), free, chance, True)


def _row(place: Place) -> tuple[float, float, float, float, float]:
    x, y = place.at
    return (1.0, 0.0, -y, x, 0.0) if place.axis == 0 else (0.0, 1.0, x, 0.0, y)


def _solve(matrix: np.ndarray, off: np.ndarray) -> tuple[np.ndarray | None, np.ndarray]:
    """Parameters and what is left over; None when the readings do not determine them."""
    scale = np.linalg.norm(matrix, axis=0)
    if not np.all(scale > 0):
        return None, off
    found, _, rank, _ = np.linalg.lstsq(matrix / scale, off, rcond=1e-9)
    if rank < matrix.shape[1]:
        return None, off
    return found / scale, off - matrix @ (found / scale)
