"""A chain of segments, open or closed, with exact length, area, nearest point and normals."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterable, Iterator
from functools import cached_property
from itertools import accumulate

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.curves.arc import Arc
from geometry.curves.cubic import Cubic
from geometry.curves.line import Line
from geometry.curves.matrix import Matrix
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Box, Vec2

Segment = Line | Arc | Cubic
"""Each has a tag, by which a reader of JSON tells them apart."""


class Nearest(Struct, frozen=True):
    """The point of a path nearest to a query point."""

    point: Vec2
    distance: float
    """mm, never negative"""
    along: float
    """mm from the path's start"""
    segment: int
    t: float


def _meet(end: Vec2, start: Vec2) -> None:
    """GeometryError when the end of a segment and the start of the next lie apart."""
    distance = v.distance(end, start)
    if distance > TOUCH:
        raise GeometryError(say("The path is broken at ({x:.3f}, {y:.3f}): the next segment starts {distance:.3f} mm "
                                "away.",
                                x=end[0], y=end[1], distance=distance))


class Path(Struct, frozen=True, dict=True, weakref=True):
    """Segments end to end (mm). `closed` says that the last one ends where the first begins."""

    segments: tuple[Segment, ...]
    closed: bool = False

    def __post_init__(self) -> None:
        """GeometryError when there is no segment or two neighbours do not meet (to 1e-6 mm)."""
        if not self.segments:
            raise GeometryError(say("A path needs at least one segment."))
        before = self.segments[0].start
        for segment in self.segments:
            start = segment.start
            if start != before:
                _meet(before, start)
            before = segment.end
        if self.closed and before != self.segments[0].start:
            _meet(before, self.segments[0].start)

    # ---- measures -------------------------------------------------------
    @cached_property
    def ends(self) -> tuple[float, ...]:
        """Length from the start to the end of each segment, mm."""
        return tuple(accumulate(self._lengths))

    @cached_property
    def _lengths(self) -> list[float]:
        """Length of each segment, mm."""
        return [segment.length() for segment in self.segments]

    @property
    def length(self) -> float:
        """Whole length, mm."""
        return self.ends[-1]

    @property
    def start(self) -> Vec2:
        return self.segments[0].start

    @property
    def end(self) -> Vec2:
        return self.segments[-1].end

    @cached_property
    def area(self) -> float:
        """Signed area of a closed path in mm2, exact; positive when counter-clockwise."""
        if not self.closed:
            raise GeometryError(say("An open path has no area: close it first."))
        return sum(segment.area_term() for segment in self.segments)

    @cached_property
    def box(self) -> Box:
        """(min x, min y, max x, max y) in mm, exact."""
        return v.box_of_all(segment.box() for segment in self.segments)

    # ---- walking --------------------------------------------------------
    def locate(self, along: float) -> tuple[int, float]:
        """(segment index, t) at a length in mm; a closed path wraps, an open one clamps."""
        total = self.length
        if self.closed and total > 0:
            along %= total
        along = min(max(along, 0.0), total)
        i = min(bisect_right(self.ends, along), len(self.segments) - 1)
        before = self.ends[i - 1] if i else 0.0
        return i, self.segments[i].at_length(along - before)

    def point_at(self, along: float) -> Vec2:
        """Point at a length in mm from the start."""
        i, t = self.locate(along)
        return self.segments[i].point(t)

    def tangent_at(self, along: float) -> Vec2:
        """Unit direction of travel at a length in mm from the start."""
        i, t = self.locate(along)
        return self.segments[i].tangent(t)

    def nearest(self, p: Vec2) -> Nearest:
        """Nearest point of the exact curve to p, over all segments; of equally near ones the first."""
        i, t, q, d = self._nearest(p)
        before = self.ends[i - 1] if i else 0.0
        return Nearest(q, d, before + self.segments[i].length_to(t), i, t)

    def nearest_point(self, p: Vec2) -> tuple[Vec2, float]:
        """That point and how far it is (mm), without how far along it lies, which takes longer to tell than all the rest."""
        _, _, q, d = self._nearest(p)
        return q, d

    def _nearest(self, p: Vec2) -> tuple[int, float, Vec2, float]:
        """(segment, its parameter, the point, how far that is in mm) of the nearest point to p."""
        best_d, best_i, best_t, best_q = math.inf, len(self.segments), 0.0, p
        for least, i in sorted(zip(self._least(p), range(best_i), strict=True)):
            if least > best_d:
                break
            segment = self.segments[i]
            t = segment.nearest(p)
            q = segment.point(t)
            d = v.distance(q, p)
            if (d, i) < (best_d, best_i):
                best_d, best_i, best_t, best_q = d, i, t, q
        return best_i, best_t, best_q, best_d

    def beside_box(self, p: Vec2) -> float:
        """mm from p to the box about the path, 0 within it: no point of the path is nearer."""
        x0, y0, x1, y1 = self.box
        return math.hypot(max(x0 - p[0], 0.0, p[0] - x1), max(y0 - p[1], 0.0, p[1] - y1))

    @cached_property
    def _boxes(self) -> tuple[Box | None, ...]:
        """(min x, min y, max x, max y) of the control points of each segment, mm; None for an arc."""
        boxes = []
        for segment in self.segments:
            if isinstance(segment, Arc):
                boxes.append(None)
                continue
            boxes.append(segment.box() if isinstance(segment, Line) else
                         v.box_about((segment.p0, segment.c0, segment.c1, segment.p1)))
        return tuple(boxes)

    def _least(self, p: Vec2) -> list[float]:
        """A lower bound in mm of the distance from p to each segment."""
        x, y = p
        out = []
        for segment, box in zip(self.segments, self._boxes, strict=True):
            if box is None:
                out.append(max(0.0, abs(v.distance(p, segment.centre) - segment.radius)))
            else:
                x0, y0, x1, y1 = box
                out.append(math.hypot(max(x0 - x, 0.0, x - x1), max(y0 - y, 0.0, y - y1)))
        return out

    # ---- making others --------------------------------------------------
    def flatten(self, sagitta: float = FLAT) -> np.ndarray:
        """(n, 2) array of points within `sagitta` mm of the curve; a closed path repeats its first point."""
        points: list[Vec2] = [self.segments[0].start]
        for segment in self.segments:
            points.extend(segment.flatten(sagitta)[1:])
        out = np.array(points, dtype=float)
        if self.closed:
            out[-1] = out[0]
        return out

    def reversed(self) -> Path:
        """The same path travelled the other way."""
        return Path(tuple(segment.reversed() for segment in reversed(self.segments)), self.closed)

    def counter_clockwise(self) -> Path:
        """The closed path, turned so that its area is positive."""
        return self if self.area >= 0 else self.reversed()

    def mapped(self, matrix: Matrix) -> Path:
        """The path under an affine map; arcs become cubics where the map is not a similarity."""
        return Path(tuple(mapped_segments(self.segments, matrix)), self.closed)

    def part(self, start: float, end: float) -> Path:
        """The open piece between two lengths in mm; a closed path may run past its own start."""
        if self.closed and end <= start:
            end += self.length
        turns = 2 if self.closed else 1
        out: list[Segment] = []
        before = 0.0
        for segment, size in zip(self.segments * turns, self._lengths * turns, strict=True):
            if before >= end:
                break
            lo, hi = max(start - before, 0.0), min(end - before, size)
            if hi - lo > TOUCH:
                piece = segment
                if hi < size - TOUCH / 10:
                    piece = piece.split(segment.at_length(hi))[0]
                if lo > TOUCH / 10:
                    piece = piece.split(piece.at_length(lo))[1]
                out.append(piece)
            before += size
        if not out:
            raise GeometryError(say("This piece of the path has no length."))
        return Path(tuple(out))

    def corners(self, least_turn: float = math.radians(3)) -> list[tuple[int, float]]:
        """(node index, turn in rad, left positive) where the direction jumps by more than `least_turn`.

        Node i lies at the start of segment i.
        """
        out = []
        first = 0 if self.closed else 1
        for i in range(first, len(self.segments)):
            a, b = self.segments[i - 1].tangent(1.0), self.segments[i].tangent(0.0)
            turn = v.turn(a, b)
            if abs(turn) > least_turn:
                out.append((i, turn))
        return out

    def __iter__(self) -> Iterator[Segment]:
        return iter(self.segments)


def mapped_segments(segments: Iterable[Segment], matrix: Matrix) -> list[Segment]:
    """Segments under an affine map; arcs become cubics where the map is not a similarity."""
    if matrix.similarity() is None:
        segments = [piece for segment in segments for piece in (segment.cubics() if isinstance(segment, Arc) else (segment,))]
    return [segment.mapped(matrix) for segment in segments]


def circle(centre: Vec2, radius: float) -> Path:
    """A full circle (mm) as two counter-clockwise half circles."""
    one = Arc.about(centre, radius, 0.0, math.pi)
    two = Arc(centre, radius, math.pi, math.pi, one.p1, one.p0)
    return Path((one, two), closed=True)
