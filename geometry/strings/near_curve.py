"""The distance from a straight line in space to an exact curve, never overstated.

Chords of the curve stand in for it, each with a bound of how far it strays
(the sagitta of an arc; an eighth of the greatest second derivative times the
square of the step for a cubic). Chords that could be nearest are cut finer until the
bound is nothing.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import groupby
from operator import attrgetter
from typing import NamedTuple

import numpy as np
from msgspec import Struct

from geometry.curves import Arc, Line, Segment
from geometry.vectors import Vec3

_FINE = 1e-10
"""mm: what the bound has to come down to"""
_CUTS = 8
_ROUNDS = 14
_MOST_PLANES = 4
"""planes for which a curve remembers its chords: the face and its ramp's"""

Plane = tuple[float, float, float]
"""(a, b, c): a curve drawn on the face lies a x + b y + c mm below it."""
FACE: Plane = (0.0, 0.0, 0.0)


class Stretch(Struct, frozen=True):
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


class Pieces:
    """Stretches with what is asked of them again and again, as arrays."""

    __slots__ = ("_lifted", "p", "q", "rows", "stretches", "strays")

    def __init__(self, stretches: Sequence[Stretch], rows: np.ndarray | None = None) -> None:
        self.stretches = list(stretches)
        self.rows = rows if rows is not None else np.array(
            [(*s.segment.point(s.t0), *s.segment.point(s.t1), s.sagitta) for s in self.stretches]).reshape(-1, 5)
        self.p, self.q, self.strays = self.rows[:, :2], self.rows[:, 2:4], self.rows[:, 4]
        self._lifted: dict[Plane, np.ndarray] = {}

    def __len__(self) -> int:
        return len(self.stretches)

    def chords(self, plane: Plane) -> np.ndarray:
        """Each chord lifted onto a plane, (n, 8): its start, the way to its end, that way squared, how far the curve strays."""
        known = self._lifted.get(plane)
        if known is None:
            if len(self._lifted) >= _MOST_PLANES:
                self._lifted.clear()
            p, e = _lifted(self.p, plane), _lifted(self.q, plane)
            e -= p
            known = self._lifted[plane] = np.column_stack([p, e, (e * e).sum(axis=1), self.strays * _steep(plane)])
        return known

    def pick(self, index: np.ndarray) -> Pieces:
        """The pieces at some indices."""
        return Pieces([self.stretches[i] for i in index.tolist()], self.rows[index])

    def cut(self, index: np.ndarray) -> Pieces:
        """The pieces at some indices, cut finer."""
        return Pieces([part for i in index.tolist() for part in self.stretches[i].cut(_CUTS)])


class Ask(NamedTuple):
    """How far a straight line from a to b in space is from some pieces of a curve on a plane."""

    a: Vec3
    b: Vec3
    curve: Pieces
    index: np.ndarray
    """which pieces"""
    plane: Plane = FACE
    flat: bool = False
    """whether a and b were laid into the plan: the curve is an upright wall, and only the distance in plan counts"""

    def gap(self, enough: float) -> tuple[float, Vec3, Vec3]:
        """As curve_gap."""
        return curve_gap(self.a, self.b, self.curve.pick(self.index), self.plane, enough)


def at_least(asks: Sequence[Ask]) -> np.ndarray:
    """What each distance (n,) in mm is at least, told from the chords alone, all at once; infinite for no pieces."""
    return _bounds(asks)[0]


def first_within(asks: Sequence[Ask], reaches: Sequence[float]) -> int | None:
    """Which of the distances is less than its own reach (mm), or None: a decision, measured only where the chords leave it open."""
    least, most = _bounds(asks)
    within = (most < reaches).nonzero()[0].tolist()
    if within:
        return within[0]
    return next((i for i in (least < reaches).nonzero()[0].tolist() if asks[i].gap(reaches[i])[0] < reaches[i]), None)


def _bounds(asks: Sequence[Ask]) -> tuple[np.ndarray, np.ndarray]:
    """(what each distance (n,) in mm is at least, what it is at most), as at_least."""
    least = np.full(len(asks), np.inf)
    # What is asked of one curve stands together, so that its chords are picked all at once.
    some = sorted((i for i, ask in enumerate(asks) if len(ask.index)), key=lambda i: (id(asks[i].curve), asks[i].plane))
    if not some:
        return least, least
    many = [len(asks[i].index) for i in some]
    lines = np.repeat(np.array([(*asks[i].a, *asks[i].b) for i in some]), many, axis=0)
    rows = np.concatenate([curve.chords(plane)[np.concatenate([ask.index for ask in group])] for (curve, plane), group in
                           groupby((asks[i] for i in some), key=attrgetter("curve", "plane"))])
    a, p, e = lines[:, :3], rows[:, :3], rows[:, 3:6]
    d, r = lines[:, 3:] - a, a - p
    s, t = _feet(d, e, r, np.einsum("ij,ij->i", d, d), rows[:, 6])
    r += d * s[:, None]
    r -= e * t[:, None]
    far, most, begins = np.sqrt(np.einsum("ij,ij->i", r, r)), least.copy(), np.cumsum([0, *many[:-1]])
    least[some] = np.minimum.reduceat(far - rows[:, 7], begins)
    most[some] = np.minimum.reduceat(far + rows[:, 7], begins)
    return least, most


def curve_gap(a: Vec3, b: Vec3, curve: Pieces, plane: Plane = FACE,
              enough: float = math.inf) -> tuple[float, Vec3, Vec3]:
    """(distance in mm, point of the line a-b, point of the curve); infinite for no curve.

    The curve is lifted from plan onto `plane`. The distance is short of the true one by 1e-9 mm at most,
    or it is `enough` or more: then it is only certain that the true one is not less.
    """
    if not len(curve):
        return math.inf, a, a
    steep = _steep(plane)
    for _ in range(_ROUNDS):
        strays = curve.strays * steep
        far, on, there = chord_gaps(np.array(a), np.array(b), _lifted(curve.p, plane), _lifted(curve.q, plane))
        keep = np.flatnonzero(far - strays <= float((far + strays).min()))
        k = int(keep[np.argmin((far - strays)[keep])])
        answer = max(0.0, float(far[k] - strays[k])), tuple(on[k].tolist()), tuple(there[k].tolist())
        if answer[0] >= enough or float(strays[keep].max()) <= _FINE:
            break
        curve = curve.cut(keep)
    return answer


def chord_gaps(a: np.ndarray, b: np.ndarray, p: np.ndarray, q: np.ndarray) -> tuple[np.ndarray, ...]:
    """(distances (n,), points on a-b (n, 3), points on p[i]-q[i] (n, 3)) of one straight piece, or n of them, and n others.

    The usual closed form: the feet of the common perpendicular, held between the ends.
    """
    d, e = b - a, q - p
    r = a - p
    s, t = _feet(d, e, r, (d * d).sum(axis=-1), np.einsum("ij,ij->i", e, e))
    on, there = a + d * s[:, None], p + e * t[:, None]
    apart = on - there
    return np.sqrt(np.einsum("ij,ij->i", apart, apart)), on, there


def _feet(d: np.ndarray, e: np.ndarray, r: np.ndarray, dd: np.ndarray, ee: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """At which shares of d and of e (n,) two straight pieces come nearest, whose starts are r apart; dd and ee are d and e squared."""
    de, dr, er = (e * d).sum(axis=1), (r * d).sum(axis=1), np.einsum("ij,ij->i", e, r)
    lone, spot = ee < 1e-24, dd < 1e-24
    safe_dd, safe_ee = np.maximum(dd, 1e-300), np.where(lone, 1.0, ee)
    span = dd * ee - de * de
    s = np.where(span > 1e-14 * dd * ee, _held((de * er - dr * ee) / np.where(span > 0, span, 1.0)), 0.0)
    s = np.where(lone, _held(-dr / safe_dd), s)
    t = np.where(lone, 0.0, _held((de * s + er) / safe_ee))
    return np.where(spot, 0.0, _held((de * t - dr) / safe_dd)), t


def _steep(plane: Plane) -> float:
    return math.hypot(1.0, plane[0], plane[1])


def _held(share: np.ndarray) -> np.ndarray:
    return np.minimum(np.maximum(share, 0.0), 1.0)


def _lifted(p: np.ndarray, plane: Plane) -> np.ndarray:
    return np.column_stack([p, p @ np.array(plane[:2]) + plane[2]])
