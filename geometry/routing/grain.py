"""Where the outline runs against the grain under the router. The grain runs along y, as the neck does.

Outside a template the router goes counter-clockwise and the cutter clockwise,
both seen from above, so at the wall the edges move the way the router goes.
Where the fibres in front dive into the wood on that way they split below the
line; where they rise out of it the chips come off cleanly. With the wood turned
over the way round is the other one, and so are the stretches. Angles: common
practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Literal

from msgspec import Struct

from geometry.by_size import of_loop, remembered_by_size
from geometry.curves import Path, Segment
from geometry.errors import GeometryError
from geometry.layout import Headstock, Loop, loop_path
from geometry.layout.edges import edges
from geometry.lengths import mm, place
from geometry.routing.passes import Side
from geometry.saying import say
from geometry.terms import term
from geometry.vectors import Vec2

Kind = Literal["against the grain", "end grain"]

ALONG = math.radians(8)
"""An edge nearer to the grain than this splits nothing."""
ACROSS = math.radians(65)
"""An edge farther from the grain than this is end grain."""
SHORT = 0.5
"""Stretches shorter than this (mm) are left out."""
_LOOKS = 24


class GrainRisk(Struct, frozen=True):
    """A stretch of the outline to go carefully over."""

    start: float
    """mm along routed_edge()"""
    end: float
    kind: Kind
    path: Path
    """the stretch itself, in the direction of routed_edge()"""
    steepest: float
    """greatest angle between edge and grain, rad"""
    side: Side
    """the side that is up"""

    @property
    def last(self) -> Vec2:
        """Where the router leaves the stretch."""
        return self.path.end if self.side == "face" else self.path.start

    @property
    def words(self) -> str:
        """One sentence for the bench."""
        middle = place(self.path.point_at(self.path.length / 2))
        if self.kind == "end grain":
            return say("End grain over {length} at {middle}: go lightly, and back up the corner at {last}, where the "
                       "fibres break away.",
                       length=mm(self.end - self.start), middle=middle, last=place(self.last))
        other = term("back" if self.side == "face" else "face")
        return say("Against the grain over {length} at {middle}, up to {steepest:.0f} degrees off it: fibres tear out. "
                   "Leave a shaving for a last light pass, or rout it with the {other} up.",
                   length=mm(self.end - self.start), middle=middle, steepest=math.degrees(self.steepest), other=other)


def routed_edge(layout: Headstock) -> Path:
    """What the router follows: from the nut line up the treble edge, round the tip, down the bass edge to the nut line.

    GeometryError when the outline has no edges.
    """
    return _routed(layout.outline)


@remembered_by_size(32, of_loop)
def _routed(loop: Loop) -> Path:
    path = loop_path(loop).counter_clockwise()
    bass, treble = edges(loop)
    start, end = path.nearest(treble.path.start).along, path.nearest(bass.path.start).along
    if abs(start - end) < 1e-6:
        raise GeometryError(say("The outline touches the nut line in one point only, so it has no edge to rout."))
    return path.part(start % path.length, end % path.length)


def grain_risks(layout: Headstock, side: Side = "face") -> tuple[GrainRisk, ...]:
    """Stretches of the outline that run against the grain, or across it, with this side up; in order from the treble foot.

    GeometryError when the outline has no edges.
    """
    whole = routed_edge(layout)
    found: list[tuple[float, float, Kind]] = []
    for start, end, kind in _runs(whole, side):
        if kind is None:
            continue
        if found and found[-1][2] == kind and start - found[-1][1] < 1e-6:
            found[-1] = (found[-1][0], end, kind)
        else:
            found.append((start, end, kind))
    return tuple(_risk(whole, start, end, kind, side) for start, end, kind in found if end - start >= SHORT)


def _risk(whole: Path, start: float, end: float, kind: Kind, side: Side) -> GrainRisk:
    piece = whole.part(start, end)
    steepest = max(_angle(segment.tangent(k / _LOOKS)) for segment in piece for k in range(_LOOKS + 1))
    return GrainRisk(start, end, kind, piece, steepest, side)


def _angle(tangent: Vec2) -> float:
    """Angle between an edge and the grain, rad, 0 to a quarter turn."""
    return math.atan2(abs(tangent[0]), abs(tangent[1]))


def edge_kind(tangent: Vec2, side: Side = "face") -> Kind | None:
    """What an edge is like whose counter-clockwise direction on the face is `tangent` (unit); None when it cuts cleanly."""
    angle = _angle(tangent)
    if angle > ACROSS:
        return "end grain"
    if angle < ALONG:
        return None
    dives = tangent[0] * tangent[1] > 0
    return "against the grain" if dives == (side == "face") else None


def _runs(whole: Path, side: Side) -> Iterator[tuple[float, float, Kind | None]]:
    """(start, end, kind) of runs of one kind, in mm along the path, segment by segment."""
    before = 0.0
    for segment, end in zip(whole.segments, whole.ends, strict=True):
        start, kind = 0.0, edge_kind(segment.tangent(0.0), side)
        for k in range(_LOOKS):
            low, high = k / _LOOKS, (k + 1) / _LOOKS
            while (edge_kind(segment.tangent(high), side)) != kind:
                turn = _turn(segment, side, low, high, kind)
                yield before + segment.length_to(start), before + segment.length_to(turn), kind
                start = low = turn
                kind = edge_kind(segment.tangent(min(turn + 1e-9, high)), side)
                if turn >= high - 1e-9:
                    break
        yield before + segment.length_to(start), end, kind
        before = end


def _turn(segment: Segment, side: Side, low: float, high: float, kind: Kind | None) -> float:
    """The parameter where the kind first changes between two, to 1e-12."""
    for _ in range(40):
        middle = (low + high) / 2
        if edge_kind(segment.tangent(middle), side) == kind:
            low = middle
        else:
            high = middle
    return high
