"""The direction in which two separate cylinders lie farthest apart, refined from a good guess.

A pattern search on the sphere. Directions in which a lateral surface is met squarely are creases
of the gap, so it runs freely and along both creases.
"""

from __future__ import annotations

import math

import numpy as np

from geometry.solids.cylinders import Cylinders, crosses, dots, norms, square_to

_GOLDEN = math.pi * (3 - math.sqrt(5))
_ROUNDS = 18
_FIRST_STEP = 0.06
"""rad"""


def sharpest(a: Cylinders, b: Cylinders, n: np.ndarray) -> np.ndarray:
    """Greatest gap (n,) in mm of two separate solids along any direction near `n` (n, 3) or along a crease near it.

    Unit directions from a to b. The gap along a direction is a proven lower bound
    of the distance; the greatest of all is the distance.
    """
    none = np.zeros_like(n)
    starts, creases = [n], [none]
    for one in (a, b):
        along = dots(n, one.axis)
        flat = n - along[:, None] * one.axis
        size = norms(flat)[:, None]
        starts += [one.axis * np.where(along < 0, -1.0, 1.0)[:, None],
                   np.where(size > 1e-9, flat / np.maximum(size, 1e-300), square_to(one.axis))]
        creases += [none, one.axis]
    many = len(starts)
    alls = a.repeated(many), b.repeated(many)
    way = -np.concatenate(starts)
    _, value = _refined(*alls, way, _shift(*alls, way), np.concatenate(creases))
    return -value.reshape(many, len(a)).min(axis=0)


def _shift(a: Cylinders, b: Cylinders, n: np.ndarray) -> np.ndarray:
    """How far a has to move along n until it is clear of b."""
    return a.support(-n) + b.support(n)


def _refined(a: Cylinders, b: Cylinders, n: np.ndarray, value: np.ndarray,
             crease: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Pattern search on the sphere; a non-zero crease axis keeps n square to it."""
    count = len(a)
    step = np.full(count, _FIRST_STEP)
    tied = (norms(crease) > 0.5)[:, None]
    four_a, four_b = a.repeated(4), b.repeated(4)
    rows = np.arange(count)
    for round_ in range(_ROUNDS):
        # The tangents turn from round to round: at a crease a descent may lie between fixed ones.
        e, cos, sin = square_to(n), math.cos(_GOLDEN * round_), math.sin(_GOLDEN * round_)
        e, f = e * cos + crosses(n, e) * sin, crosses(n, e) * cos - e * sin
        e = np.where(tied, crosses(n, crease), e)
        f = np.where(tied, e, f)
        trial = np.concatenate([n + e * step[:, None], n - e * step[:, None],
                                n + f * step[:, None], n - f * step[:, None]])
        trial /= norms(trial)[:, None]
        found = _shift(four_a, four_b, trial).reshape(4, count)
        pick = np.argmin(found, axis=0)
        least = found[pick, rows]
        won = least < value
        n = np.where(won[:, None], trial[pick * count + rows], n)
        value = np.where(won, least, value)
        step = np.where(won, step, step * 0.5)
    return n, value
