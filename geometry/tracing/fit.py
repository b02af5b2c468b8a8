"""Few lines, arcs and cubics through a dense closed line; corners stay, the rest is smooth."""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace

from geometry.curves import Path, Segment
from geometry.curves.polygons import crosses_itself
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT
from geometry.tracing.corners import corners, evenly
from geometry.tracing.pieces import arc_fit, cubic_fit, line_error, segment
from geometry.tracing.polish import Chain, Knot

LEAST_LINE = 6.0
"""Straight pieces shorter than this (mm) are left to curves."""
SMOOTHING = 1.6
"""mm to either side over which a knot's place and direction are taken."""
MOST_POINTS = 60
"""Points that a piece is held to while it is sought; what is stated in the end is measured on all."""


class Fitted(Struct, frozen=True):
    """A smooth closed path, and how far it and the traced line stray from one another anywhere (mm, both ways)."""

    path: Path
    deviation: float


def fit(line: np.ndarray, tolerance: float, point: float, tell: Callable[[float], object] | None = None) -> Fitted:
    """A path through a closed line of points (mm).

    `tolerance` is how far a piece may stray from the points that it stands for,
    `point` the size of one point of the picture, both in mm; `tell` is called
    with the part done, 0..1, and may raise to stop. Grain may make the stated
    deviation larger than the tolerance. GeometryError for a line too small to
    be an outline, and when no smooth path of that tolerance is free of crossings.
    """
    if not tolerance > 0 or not point > 0:
        raise GeometryError(say("The tolerance is a length above zero."))
    spans = np.ptp(line, axis=0) if len(line) else np.zeros(2)
    if len(line) < 12 or max(spans) < 20 * point:
        raise GeometryError(say("This edge is too small to be an outline."))
    step = min(max(point, 0.08), 0.4)
    points = evenly(line, step)
    sharp = corners(points, step, blunt=2.0 * point)
    if len(sharp) > len(points) * step / 4:
        raise GeometryError(say("This edge is all corners: choose a cleaner picture or another level of grey."))
    fitter = _Fitter(points, step, tolerance)
    path = fitter.path(sharp, tell or (lambda _: None))
    if crosses_itself(path) is not None:
        raise GeometryError(say("The proposed line crosses itself: allow less deviation, shift the level of grey, or choose a cleaner picture."))
    return Fitted(path.counter_clockwise(), strays(path, line))


def strays(path: Path, line: np.ndarray) -> float:
    """Greatest distance (mm) between a path and a dense closed line, looked at from both.

    Distances are taken to the chords of the other; FLAT is added for the
    flattening of the path, so that the number is never too small.
    """
    exact = shapely.LineString(path.flatten(FLAT))
    ring = shapely.LineString(line if np.array_equal(line[0], line[-1]) else np.vstack([line, line[:1]]))
    dense = shapely.get_coordinates(shapely.segmentize(exact, 0.2))
    there = shapely.distance(shapely.points(shapely.get_coordinates(ring)), exact).max()
    back = shapely.distance(shapely.points(dense), ring).max()
    return float(max(there, back)) + FLAT


class _Fitter:
    """Works along evenly spaced points of one closed line."""

    def __init__(self, points: np.ndarray, step: float, tolerance: float) -> None:
        self.points = points
        self.count = len(points)
        self.tolerance = tolerance
        self.reach = max(3, round(SMOOTHING / step))
        self.shortest = max(4, round(2.0 / step))
        self.line_least = LEAST_LINE / step
        self.sharp: dict[int, np.ndarray] = {}

    def path(self, sharp: list[tuple[int, np.ndarray]], tell: Callable[[float], object]) -> Path:
        self.sharp = dict(sharp)
        lowest = int(self.points[:, 1].argmin())
        ends = [i for i, _ in sharp] or [lowest, lowest + self.count // 2]
        if len(ends) == 1:
            ends.append(ends[0] + self.count // 2)
        ends.append(ends[0] + self.count)
        knots: list[Knot] = []
        kinds: list[str] = []
        for low, high in pairwise(ends):
            at = low
            while at < high:
                tell(0.6 * (at - ends[0]) / self.count)
                kind, reached = self._farthest(at, high)
                knots.append(self._knot(at))
                kinds.append(kind)
                at = reached
        self._agree(knots, kinds)
        chain = Chain(knots, kinds, self._error, self.tolerance)
        tell(0.65)
        chain.polish()
        tell(0.8)
        chain.thin(lambda: tell(0.85))
        chain.polish()
        tell(1.0)
        return Path(tuple(self._piece(kind, a, b) for kind, a, b in
                          zip(kinds, knots, knots[1:] + knots[:1], strict=True)), closed=True)

    # ---- pieces ---------------------------------------------------------
    def _farthest(self, low: int, high: int) -> tuple[str, int]:
        """(kind, end) of the next piece: a line or an arc where one gets as far as a curve, else a curve."""
        reached = {kind: self._reach(kind, low, high) for kind in ("line", "arc", "cubic")}
        most = reached["cubic"] - low
        line = reached["line"] - low
        if line >= self.line_least and (reached["line"] == high or line >= 0.8 * most or line >= 5 * self.line_least):
            return "line", reached["line"]
        if reached["arc"] - low >= self.line_least and reached["arc"] >= reached["cubic"]:
            return "arc", reached["arc"]
        end = max(min(high, low + self.shortest), reached["cubic"])
        if 0 < high - end < self.shortest:
            # No crumb is left over: what remains is shared.
            end = (low + high) // 2 if high - low > 2 * self.shortest else high
        return "cubic", end

    def _reach(self, kind: str, low: int, high: int) -> int:
        """The farthest end to which a piece of that kind keeps its tolerance; lines and arcs keep half of it."""
        most = self.tolerance * (1.0 if kind == "cubic" else 0.5)

        def keeps(end: int) -> bool:
            return self._error(kind, self._knot(low), self._knot(end), end - low) <= most

        if keeps(high):
            return high
        good, bad = low, high
        size = self.shortest
        while low + size < high:
            if not keeps(low + size):
                bad = low + size
                break
            good = low + size
            size *= 2
        while bad - good > max(2, (bad - low) // 40):
            middle = (good + bad) // 2
            good, bad = (middle, bad) if keeps(middle) else (good, middle)
        return good

    def _error(self, kind: str, a: Knot, b: Knot, span: int | None = None) -> float:
        inner = self._between(a.index, b.index, span)
        if kind == "line":
            return line_error(inner, a.place, b.place)
        if kind == "arc":
            return arc_fit(inner, a.place, b.place)[1]
        return cubic_fit(inner, a.place, b.place, a.out, b.into)[1]

    def _piece(self, kind: str, a: Knot, b: Knot) -> Segment:
        inner = self._between(a.index, b.index)
        if kind == "line":
            return segment("line", a.place, b.place, 0.0)
        if kind == "arc":
            return segment("arc", a.place, b.place, arc_fit(inner, a.place, b.place)[0])
        return segment("cubic", a.place, b.place, cubic_fit(inner, a.place, b.place, a.out, b.into)[0])

    def _agree(self, knots: list[Knot], kinds: list[str]) -> None:
        """Curves leave lines and arcs in their direction, where they still keep the tolerance so."""
        for i, kind in enumerate(kinds):
            k = (i + 1) % len(knots)
            if kind == "cubic":
                continue
            made = self._piece(kind, knots[i], knots[k])
            if not knots[i].corner and kinds[i - 1] == "cubic":
                self._turn(knots, i, np.array(made.tangent(0.0)), (i - 1, i))
            if not knots[k].corner and kinds[k] == "cubic":
                self._turn(knots, k, np.array(made.tangent(1.0)), (k, (k + 1) % len(knots)))

    def _turn(self, knots: list[Knot], i: int, way: np.ndarray, piece: tuple[int, int]) -> None:
        before = knots[i]
        knots[i] = replace(before, out=way, into=-way)
        if self._error("cubic", knots[piece[0]], knots[piece[1]]) > 1.5 * self.tolerance:
            knots[i] = before

    # ---- knots ----------------------------------------------------------
    def _between(self, low: int, high: int, span: int | None = None) -> np.ndarray:
        """Points between two knots; the rounded tips of corners are left out."""
        span = span or (high - low) % self.count or self.count
        near = self.reach // 3
        first = low + (near if low % self.count in self.sharp else 1)
        last = low + span - (near if (low + span) % self.count in self.sharp else 1)
        every = max(1, (last - first) // MOST_POINTS)
        return self.points[np.arange(first, last + 1, every) % self.count] if last >= first else self.points[:0]

    def _knot(self, at: int) -> Knot:
        i = at % self.count
        if i in self.sharp:
            place = self.sharp[i]
            return Knot(i, place, True, self._from_corner(place, i, 1), self._from_corner(place, i, -1))
        place, way = self._local(i)
        return Knot(i, place, False, way, -way)

    def _from_corner(self, place: np.ndarray, at: int, side: int) -> np.ndarray:
        """Unit direction in which the line leaves a corner, ahead (1) or back (-1), by a parabola from the corner."""
        chosen = self.points[(at + side * np.arange(self.reach // 3, 2 * self.reach + 1)) % self.count] - place
        t = np.hypot(*chosen.T)
        found = np.linalg.lstsq(np.stack([t, t * t], axis=1), chosen, rcond=None)[0][0]
        return found / max(math.hypot(*found), 1e-12)

    def _local(self, at: int) -> tuple[np.ndarray, np.ndarray]:
        """(place, unit direction) at an index, by the parabola nearest to the points about it; it stops at corners."""
        low, high, near = -self.reach, self.reach, self.reach // 3
        for i in self.sharp:
            ahead, back = (i - at) % self.count, (at - i) % self.count
            high, low = min(high, ahead - near), max(low, near - back)
        if high - low < 4:
            low, high = min(low, -2), max(high, 2)
        t = np.arange(low, high + 1, dtype=float)
        chosen = self.points[(at + t.astype(int)) % self.count]
        found = np.linalg.lstsq(np.stack([np.ones_like(t), t, t * t], axis=1), chosen, rcond=None)[0]
        return found[0], found[1] / max(math.hypot(*found[1]), 1e-12)
