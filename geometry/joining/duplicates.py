"""Segments drawn twice: whole, reversed, or overlapping in part."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Segment
from geometry.tolerance import TOUCH

Span = tuple[float, float]
"""A stretch of one segment between two parameters, 0..1."""

_KINDS = (Line, Arc, Cubic)
_AT_ONCE = 500
"""Segments whose neighbours are asked for at a time: in a dense tangle each has thousands."""


def without_duplicates(segments: Sequence[Segment], within: float) -> list[tuple[int, Segment]]:
    """(index of its source, segment) for what is left when everything drawn twice is dropped.

    Two pieces are the same when they lie within `within` mm of each other all
    along, in either direction. Lines on one line and arcs on one circle may
    overlap in part: the longer stays whole and the other keeps the rest.
    Two half circles between the same ends are two different pieces.
    """
    segments = [s for s in segments]
    lengths = [s.length() for s in segments]
    boxes = np.array([s.box() for s in segments], dtype=float).reshape(-1, 4)
    tree = shapely.STRtree(shapely.box(boxes[:, 0], boxes[:, 1], boxes[:, 2], boxes[:, 3]))
    around = shapely.box(boxes[:, 0] - within, boxes[:, 1] - within, boxes[:, 2] + within, boxes[:, 3] + within)
    alike = _Alike(segments, within)
    near: list[list[int]] = [[] for _ in segments]
    for first in range(0, len(segments), _AT_ONCE):
        pairs = tree.query(around[first:first + _AT_ONCE])
        pairs[0] += first
        for i, j in pairs[:, alike.may_cover(*pairs)].T.tolist():
            if i != j and _ahead(j, i, lengths):
                near[i].append(j)
    kept: list[tuple[int, Segment]] = []
    for i, segment in enumerate(segments):
        if not near[i]:
            kept.append((i, segment))
            continue
        covered = [span for j in near[i] for span in _covered(segment, segments[j], within)]
        kept.extend((i, piece) for piece in _rest(segment, lengths[i], covered, within))
    return kept


class _Alike:
    """Which pairs of segments may lie on each other, asked for thousands at once: in a tangle every box meets every other."""

    def __init__(self, segments: Sequence[Segment], within: float) -> None:
        self._kinds = np.array([_KINDS.index(type(s)) for s in segments], dtype=int)
        ends = np.array([(s.start, s.end) for s in segments], dtype=float).reshape(-1, 2, 2)
        self._starts, self._ends = ends[:, 0], ends[:, 1]
        self._rounds = np.array([(*s.centre, s.radius) if isinstance(s, Arc) else (0.0, 0.0, 0.0) for s in segments]).reshape(-1, 3)
        self._within = within * (1 + 1e-9) + 1e-9  # never fewer than the exact questions below would find

    def may_cover(self, i: np.ndarray, j: np.ndarray) -> np.ndarray:
        """(m,) bool: False where `j` certainly covers nothing of `i`."""
        found = self._kinds[i] == self._kinds[j]
        for kind, ask in ((0, self._lines), (1, self._arcs), (2, self._cubics)):
            of_it = np.flatnonzero(found & (self._kinds[i] == kind))
            found[of_it] = ask(i[of_it], j[of_it])
        return found

    def _lines(self, i: np.ndarray, j: np.ndarray) -> np.ndarray:
        """Both ends of the one no further from the other's line than allowed."""
        way = self._ends[j] - self._starts[j]
        reach = self._within * np.hypot(way[:, 0], way[:, 1])
        found = np.abs(_turn(way, self._starts[i] - self._starts[j])) <= reach
        left = np.flatnonzero(found)  # few in a tangle: the other end is asked for of these alone
        found[left] = np.abs(_turn(way[left], self._ends[i[left]] - self._starts[j[left]])) <= reach[left]
        return found

    def _arcs(self, i: np.ndarray, j: np.ndarray) -> np.ndarray:
        return (np.abs(self._rounds[i] - self._rounds[j]) <= self._within).all(axis=1)

    def _cubics(self, i: np.ndarray, j: np.ndarray) -> np.ndarray:
        """The first end of the one next to an end of the other."""
        return ((np.abs(self._starts[i] - self._starts[j]) <= self._within).all(axis=1)
                | (np.abs(self._starts[i] - self._ends[j]) <= self._within).all(axis=1))


def _turn(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    return one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]


def _ahead(j: int, i: int, lengths: Sequence[float]) -> bool:
    """Whether j has the right of way over i: the longer one, else the earlier one."""
    return (lengths[j], -j) > (lengths[i], -i)


def _covered(one: Segment, other: Segment, within: float) -> list[Span]:
    """The stretches of `one` on which `other` lies too, of two that `_Alike` lets through: lines on one line, arcs on one circle."""
    if isinstance(one, Line) and isinstance(other, Line):
        return _covered_line(one, other, within)
    if isinstance(one, Arc) and isinstance(other, Arc):
        return _covered_arc(one, other, within)
    if isinstance(one, Cubic) and isinstance(other, Cubic) and _alike(one, other, within):
        return [(0.0, 1.0)]
    return []


def _alike(one: Cubic, other: Cubic, within: float) -> bool:
    for back in (False, True):
        if all(v.distance(one.point(t), other.point(1 - t if back else t)) <= within
               for t in (0.0, 0.2, 0.4, 0.6, 0.8, 1.0)):
            return True
    return False


def _covered_line(one: Line, other: Line, within: float) -> list[Span]:
    d = other.tangent(0)
    a, b = v.sub(one.p0, other.p0), v.sub(one.p1, other.p0)
    along = v.dot(d, b) - v.dot(d, a)
    if along == 0:
        return []
    lo, hi = sorted((-v.dot(d, a) / along, (other.length() - v.dot(d, a)) / along))
    lo, hi = max(lo, 0.0), min(hi, 1.0)
    return [(lo, hi)] if (hi - lo) * one.length() > within else []


def _covered_arc(one: Arc, other: Arc, within: float) -> list[Span]:
    found = []
    full = 2 * math.pi
    start, sweep = (other.a0, other.sweep) if other.sweep > 0 else (other.a0 + other.sweep, -other.sweep)
    low = one.a0 if one.sweep > 0 else one.a0 + one.sweep
    size = abs(one.sweep)
    offset = (start - low) % full
    for begin in (offset - full, offset):
        lo, hi = max(begin, 0.0), min(begin + sweep, size)
        if (hi - lo) * one.radius > within:
            span = (lo / size, hi / size)
            found.append(span if one.sweep > 0 else (1 - span[1], 1 - span[0]))
    return found


def _rest(segment: Segment, length: float, covered: list[Span], within: float) -> list[Segment]:
    """The pieces of a segment outside the covered stretches; crumbs up to `within` mm are dropped."""
    if not covered:
        return [segment]
    pieces: list[Segment] = []
    at = 0.0
    for lo, hi in [*sorted(covered), (1.0, 1.0)]:
        if (lo - at) * length > max(within, TOUCH):
            pieces.append(part(segment, at, lo))
        at = max(at, hi)
    return pieces


def part(segment: Segment, t0: float, t1: float) -> Segment:
    """The piece of a segment between two parameters, t0 < t1; its own ends are kept to the last bit."""
    piece = segment if t1 >= 1 else segment.split(t1)[0]
    return piece if t0 <= 0 else piece.split(t0 / t1 if t1 < 1 else t0)[1]
