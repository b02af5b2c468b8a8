"""Directions of a path at very many places at once, equal but for the last digits to those that Segment.tangent tells."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from geometry.curves.arc import Arc
from geometry.curves.cubic import Cubic
from geometry.curves.line import Line

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
