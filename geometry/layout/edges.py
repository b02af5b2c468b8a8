"""The bass and treble edges of an outline, walked from the nut line to the tip."""

from __future__ import annotations

import math
from functools import cached_property

from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_loop, remembered_by_size
from geometry.curves import Line, Path, Segment
from geometry.errors import GeometryError
from geometry.layout.blank import Side
from geometry.layout.outline import Loop, loop_path
from geometry.layout.strings import MOST_SLANT
from geometry.saying import say
from geometry.tolerance import ALONG_NUT, TOUCH
from geometry.vectors import Vec2


class Seat(Struct, frozen=True):
    """A point of an edge."""

    point: Vec2
    tangent: Vec2
    """unit, towards the tip"""
    normal: Vec2
    """unit, out of the wood"""
    along: float
    """mm from the nut line"""
    curvature: float
    """1/mm, positive where the edge bellies out (convex wood)"""
    segment: int
    """which of the edge's path, and where on it"""
    t: float


class Edge(Struct, frozen=True, dict=True):
    """One side of the outline from the nut line to its farthest point along +y."""

    side: Side
    path: Path

    @cached_property
    def _found(self) -> dict[float, Seat]:
        """Seats already looked up: a layout asks for the same dozen at every step of a drag."""
        return {}

    @property
    def length(self) -> float:
        """Arc length from nut line to tip, mm."""
        return self.path.length

    def seat(self, along: float) -> Seat:
        """The point at an arc length in mm; before the nut line and past the tip it stops at the end."""
        along = min(max(along, 0.0), self.path.length)
        known = self._found.get(along)
        if known is None:
            if len(self._found) >= _MOST_SEATS:
                self._found.clear()
            known = self._found[along] = self._seat(along)
        return known

    def _seat(self, along: float) -> Seat:
        i, t = self.path.locate(along)
        segment = self.path.segments[i]
        tangent = segment.tangent(t)
        bend = segment.curvature(t)
        if self.side == "treble":
            return Seat(segment.point(t), tangent, v.right(tangent), along, bend, i, t)
        return Seat(segment.point(t), tangent, v.left(tangent), along, -bend, i, t)

    def nearest(self, p: Vec2) -> Seat:
        """The point of the edge nearest to p."""
        return self.seat(self.path.nearest(p).along)


_MOST_SEATS = 512


@remembered_by_size(64, of_loop)
def edges(loop: Loop) -> tuple[Edge, Edge]:
    """(bass edge, treble edge) of an outline.

    Each starts where the outline leaves the nut line on its side, that is y = 0 or, where the outline ends along
    a slanted one, the end of that; or at the outline's lowest level when it does not reach the nut line. It
    ends where it first reaches the outline's highest level. GeometryError when the outline has no height.
    """
    path = loop_path(loop).counter_clockwise()
    _, low, _, high = path.box
    if high - low <= TOUCH:
        raise GeometryError(say("The outline has no height, so it has no edges to put tuners on."))
    level = 0.0 if low < TOUCH and high > TOUCH else low
    feet = _slanted_end(path) or _marks(path, level)
    tops = _marks(path, high)
    if not feet or not tops:
        raise GeometryError(say("The outline has no edge between the nut line and the tip."))
    treble_foot = max(feet, key=lambda mark: mark[1][0])[0]
    bass_foot = min(feet, key=lambda mark: mark[1][0])[0]
    total = path.length
    treble_top = min((along for along, _ in tops), key=lambda along: (along - treble_foot) % total)
    bass_top = min((along for along, _ in tops), key=lambda along: (bass_foot - along) % total)
    treble = path.part(treble_foot, treble_top)
    bass = path.part(bass_top, bass_foot).reversed()
    return Edge("bass", bass), Edge("treble", treble)


def edge(loop: Loop, side: Side) -> Edge:
    """The edge of one side."""
    return edges(loop)[0 if side == "bass" else 1]


def end_line(loop: Loop) -> tuple[Vec2, Vec2]:
    """(a point, unit direction square to it towards the tip) of the line through the ends of both edges, from which the head goes up.

    The nut line, slanted or not, where the outline ends along it or crosses y = 0. GeometryError as for edges.
    """
    bass, treble = (one.path.start for one in edges(loop))
    across = v.sub(treble, bass)
    return bass, v.left(v.unit(across)) if across[0] > TOUCH else (0.0, 1.0)


def _slanted_end(path: Path) -> list[tuple[float, Vec2]]:
    """(arc length, point) of both ends of a counter-clockwise outline's straight end along a slanted nut line, in one piece or
    several; none where it has no such end: one that leans, by MOST_SLANT at the most, where it crosses the centreline at y = 0."""
    pieces, n = path.segments, len(path.segments)
    for i, one in enumerate(pieces):
        (x0, y0), (x1, y1) = one.start, one.end
        if not isinstance(one, Line) or not x0 <= 0 < x1 or abs(y1 - y0) > math.tan(math.radians(MOST_SLANT)) * (x1 - x0) + ALONG_NUT:
            continue
        slope = (y1 - y0) / (x1 - x0)
        if abs(y0 - slope * x0) > ALONG_NUT:
            continue

        def goes_on(piece: Segment, along: float = slope) -> bool:
            return isinstance(piece, Line) and piece.p0[0] < piece.p1[0] and all(abs(y - along * x) <= ALONG_NUT for x, y in (piece.p0, piece.p1))
        first = next((k for k in range(i, i - n, -1) if not goes_on(pieces[k - 1])), i)
        last = next((k for k in range(i, i + n) if not goes_on(pieces[(k + 1) % n])), i)
        ends = pieces[first].start, pieces[last % n].end
        if ends[0][0] < -ALONG_NUT and ends[1][0] > ALONG_NUT and max(abs(y) for _, y in ends) > TOUCH:
            return [((0.0, *path.ends)[first % n], ends[0]), (path.ends[last % n] % path.length, ends[1])]
    return []


def _marks(path: Path, level: float) -> list[tuple[float, Vec2]]:
    """(arc length, point) wherever the path is at y = level: crossings, turning points, ends of flats."""
    found: list[tuple[float, Vec2]] = []
    for segment, before in zip(path.segments, (0.0, *path.ends[:-1]), strict=True):
        flat = isinstance(segment, Line)
        if flat and (min(segment.p0[1], segment.p1[1]) - level > TOUCH or level - max(segment.p0[1], segment.p1[1]) > TOUCH):
            continue  # of hundreds of lines nearly all
        ts = list(segment.level(1, level))
        ts += [t for t in segment.extremes(1) if abs(segment.point(t)[1] - level) <= TOUCH]
        if flat and abs(segment.p0[1] - level) <= TOUCH and abs(segment.p1[1] - level) <= TOUCH:
            ts += [0.0, 1.0]
        found += [(before + segment.length_to(t), segment.point(t)) for t in ts]
    return found
