"""Very many answers at once, equal but for the last digits: lengths of cubics as Cubic.length tells them, directions of a path as
Segment.tangent does."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from geometry.curves.arc import Arc
from geometry.curves.cubic import AGREE, GAUSS, MOST_HALVINGS, Cubic
from geometry.curves.line import Line


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


_STILL = 1e-9
"""mm by t: so slow a curve has no direction of its own there"""


def tangents(segments: Sequence[Line | Arc | Cubic], segment: np.ndarray, t: np.ndarray) -> np.ndarray:
    """(n, 2) unit directions of travel at the parameters t (n,) of the segments with these numbers (n,)."""
    ways = np.zeros((len(t), 2))
    for kind, of in ((Line, _lines), (Arc, _arcs), (Cubic, _cubics)):
        own = [i for i, one in enumerate(segments) if type(one) is kind]
        if not own:
            continue
        place = np.full(len(segments), -1)
        place[own] = np.arange(len(own))
        here = np.flatnonzero(place[segment] >= 0)
        ways[here] = of([segments[i] for i in own], place[segment[here]], t[here])
    size = np.hypot(ways[:, 0], ways[:, 1])
    for k in np.flatnonzero(size < _STILL).tolist():
        ways[k], size[k] = segments[segment[k]].tangent(float(t[k])), 1.0
    return ways / size[:, None]


def _lines(lines: Sequence[Line], of: np.ndarray, t: np.ndarray) -> np.ndarray:
    p, q = np.array([(one.p0, one.p1) for one in lines], dtype=float).transpose(1, 0, 2)
    return (q - p)[of]


def _arcs(arcs: Sequence[Arc], of: np.ndarray, t: np.ndarray) -> np.ndarray:
    a0, sweep = np.array([(one.a0, one.sweep) for one in arcs])[of].T
    angle, side = a0 + sweep * t, np.where(sweep >= 0, 1.0, -1.0)
    return np.stack((-np.sin(angle) * side, np.cos(angle) * side), axis=1)


def _cubics(curves: Sequence[Cubic], of: np.ndarray, t: np.ndarray) -> np.ndarray:
    p, q, r, s = np.array([(one.p0, one.c0, one.c1, one.p1) for one in curves], dtype=float)[of].transpose(1, 0, 2)
    t = t[:, None]
    u = 1 - t
    return 3 * u * u * (q - p) + 6 * u * t * (r - q) + 3 * t * t * (s - r)
