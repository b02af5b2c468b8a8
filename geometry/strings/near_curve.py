"""The distance from a straight line in space to an exact curve, never overstated.

Chords of the curve stand in for it, each with a bound of how far it strays
(the sagitta of an arc; an eighth of the greatest second derivative times the
square of the step for a cubic). Chords that could be nearest are cut finer until the
bound is nothing.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from geometry.curves import Arc, Line, Segment
from geometry.vectors import Vec2, Vec3

_FINE = 1e-10
"""mm: what the bound has to come down to"""
_CUTS = 8
_ROUNDS = 14

Plane = tuple[float, float, float]
"""(a, b, c): a curve drawn on the face lies a x + b y + c mm below it."""
FACE: Plane = (0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Stretch:
    """A part of a curve, from t0 to t1 of one segment."""

    segment: Segment
    t0: float
    t1: float

    @property
    def sagitta(self) -> float:
        """How far the curve strays from its chord at most, mm."""
        step = self.t1 - self.t0
        if isinstance(self.segment, Line):
            return 0.0
        if isinstance(self.segment, Arc):
            return self.segment.radius * (1 - math.cos(min(math.pi, abs(self.segment.sweep) * step / 2)))
        bend = max(math.hypot(*self.segment.second(t)) for t in (self.t0, self.t1))
        return bend * step * step / 8

    def cut(self, pieces: int) -> list[Stretch]:
        """Equal pieces; a straight one stays whole."""
        if isinstance(self.segment, Line):
            return [self]
        step = (self.t1 - self.t0) / pieces
        return [Stretch(self.segment, self.t0 + step * i, self.t0 + step * (i + 1)) for i in range(pieces)]


def curve_gap(a: Vec3, b: Vec3, stretches: Sequence[Stretch], plane: Plane = FACE) -> tuple[float, Vec3, Vec3]:
    """(distance in mm, point of the line a-b, point of the curve); infinite for no curve.

    The curve is lifted from plan onto `plane`. The distance is short of the true one by 1e-9 mm at most.
    """
    rest = list(stretches)
    if not rest:
        return math.inf, a, a
    steep = math.hypot(1.0, plane[0], plane[1])
    for _ in range(_ROUNDS):
        p = np.array([_lifted(s.segment.point(s.t0), plane) for s in rest])
        q = np.array([_lifted(s.segment.point(s.t1), plane) for s in rest])
        strays = np.array([s.sagitta for s in rest]) * steep
        far, on, there = chord_gaps(np.array(a), np.array(b), p, q)
        keep = np.flatnonzero(far - strays <= float((far + strays).min()))
        k = int(keep[np.argmin((far - strays)[keep])])
        answer = max(0.0, float(far[k] - strays[k])), tuple(on[k].tolist()), tuple(there[k].tolist())
        if float(strays[keep].max()) <= _FINE:
            break
        rest = [piece for i in keep.tolist() for piece in rest[i].cut(_CUTS)]
    return answer


def chord_gaps(a: np.ndarray, b: np.ndarray, p: np.ndarray, q: np.ndarray) -> tuple[np.ndarray, ...]:
    """(distances (n,), points on a-b (n, 3), points on p[i]-q[i] (n, 3)) of one straight piece and n others.

    The usual closed form: the feet of the common perpendicular, held between the ends.
    """
    d, e = b - a, q - p
    r = a - p
    dd, ee = float(d @ d), np.einsum("ij,ij->i", e, e)
    de, dr, er = e @ d, r @ d, np.einsum("ij,ij->i", e, r)
    lone, spot = ee < 1e-24, dd < 1e-24
    safe_dd, safe_ee = max(dd, 1e-300), np.where(lone, 1.0, ee)
    span = dd * ee - de * de
    s = np.where(span > 1e-14 * dd * ee, np.clip((de * er - dr * ee) / np.where(span > 0, span, 1.0), 0.0, 1.0), 0.0)
    s = np.where(lone, np.clip(-dr / safe_dd, 0.0, 1.0), s)
    t = np.where(lone, 0.0, np.clip((de * s + er) / safe_ee, 0.0, 1.0))
    s = np.zeros_like(t) if spot else np.clip((de * t - dr) / safe_dd, 0.0, 1.0)
    on, there = a + d * s[:, None], p + e * t[:, None]
    return np.sqrt(np.einsum("ij,ij->i", on - there, on - there)), on, there


def _lifted(p: Vec2, plane: Plane) -> Vec3:
    return (p[0], p[1], plane[0] * p[0] + plane[1] * p[1] + plane[2])
