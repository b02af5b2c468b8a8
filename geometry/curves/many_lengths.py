"""Lengths of very many cubics at once: as Cubic.length, but for the last digits."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from geometry.curves.cubic import AGREE, GAUSS, MOST_HALVINGS, Cubic


def cubic_lengths(curves: Sequence[Cubic]) -> list[float]:
    """Length of each in mm, to about 1e-9 mm: Gauss quadrature, stretches halved until two rules agree."""
    p, q, r, s = np.array([(c.p0, c.c0, c.c1, c.p1) for c in curves], dtype=float).transpose(1, 0, 2)
    # The derivatives as polynomials of t.
    speed = np.stack([3 * (q - p), 6 * (r - 2 * q + p), 3 * (s - p + 3 * (q - r))])
    lengths = np.zeros(len(curves))
    of, start, size = np.arange(len(curves)), np.zeros(len(curves)), 1.0
    whole = _rule(speed, of, start, size)
    for _ in range(MOST_HALVINGS + 1):
        size /= 2
        one, two = _rule(speed, of, start, size), _rule(speed, of, start + size, size)
        # What is no number is not halved either.
        going = np.abs(whole - (one + two)) >= AGREE * np.maximum(1.0, whole)
        done = ~going
        np.add.at(lengths, of[done], (one + two)[done])
        if not going.any():
            break
        of, start = np.repeat(of[going], 2), np.stack([start[going], start[going] + size], axis=1).ravel()
        whole = np.stack([one[going], two[going]], axis=1).ravel()
    else:
        np.add.at(lengths, of, whole)
    return lengths.tolist()


def _rule(speed: np.ndarray, of: np.ndarray, start: np.ndarray, size: float) -> np.ndarray:
    """Length of the stretch of each curve `of` from `start` on, `size` long in its parameter."""
    a, b, c = speed[:, of]
    total = np.zeros(len(of))
    for x, w in GAUSS:
        t = (start + size * x)[:, None]
        total += w * np.hypot(*(a + t * (b + t * c)).T)
    return size * total
