"""Places along the bass and treble edges: nearest, level with something, and from a mark on the square edge."""

from __future__ import annotations

from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_loop
from geometry.errors import GeometryError
from geometry.layout import OTHER, Headstock, Loop, Side
from geometry.layout.edges import Edge, edge
from geometry.saying import say
from geometry.solids.per_thread import remembered_per_thread
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.vectors import Vec2

LEAST_LEAN = 0.1
"""An axis whose outward normal has less than this along x never meets the square edge sensibly."""

SAMPLES = 24
"""Places looked at on each segment before the exact one is closed in on."""


class EdgePoint(Struct, frozen=True):
    """The point of an edge nearest to a query point."""

    side: Side
    along: float
    """mm from the nut line"""
    point: Vec2
    distance: float
    """mm, never negative"""


def near_edge(loop: Loop, side: Side, p: Vec2) -> EdgePoint:
    """The point of one edge nearest to p, on its exact curve."""
    foot = _wall(loop, side).foot(p)
    return EdgePoint(side, _along(edge(loop, side), foot.segment, foot.t), foot.point, foot.distance)


def nearest_on_edges(loop: Loop, p: Vec2, own: Side | None = None) -> tuple[Side, float]:
    """(side, mm along it) of the point of either edge nearest to p; the own side wins a tie."""
    first: Side = own or ("treble" if p[0] >= 0 else "bass")
    one = near_edge(loop, first, p)
    other = OTHER[first]
    x0, y0, x1, y1 = edge(loop, other).path.box
    if v.norm((max(x0 - p[0], 0.0, p[0] - x1), max(y0 - p[1], 0.0, p[1] - y1))) < one.distance:
        two = near_edge(loop, other, p)
        if two.distance < one.distance - 1e-9:
            return other, two.along
    return first, one.along


def along_of(loop: Loop, side: Side, p: Vec2) -> float:
    """mm along one edge of its point nearest to p."""
    return near_edge(loop, side, p).along


def along_at_level(loop: Loop, side: Side, y: float, near: float) -> float | None:
    """mm along an edge where it passes the level y, the nearest such place to `near`; None when it never does."""
    path = edge(loop, side).path
    found = []
    before = 0.0
    for segment, end in zip(path.segments, path.ends, strict=True):
        found += [before + segment.length_to(t) for t in segment.level(1, y)]
        before = end
    return min(found, key=lambda along: abs(along - near), default=None)


def along_for_mark(layout: Headstock, side: Side, y: float, near: float) -> float:
    """mm along an edge at which a side bore's mark on the square edge lies at level y, nearest to `near`.

    Where no bore has its mark there, the place whose mark comes closest.
    GeometryError when no bore of that edge meets the square edge.
    """
    one = edge(layout.outline, side)
    found: list[float] = []
    closest: tuple[float, int, float] | None = None
    for i, segment in enumerate(one.path.segments):
        last: tuple[float, float] | None = None
        for k in range(SAMPLES + 1):
            t = k / SAMPLES
            miss = _mark_miss(layout, one, segment, t, y)
            if miss is not None:
                if closest is None or abs(miss) < closest[0]:
                    closest = (abs(miss), i, t)
                if last is not None and (last[1] <= 0) != (miss <= 0):
                    found.append(_close_in(layout, one, i, last[0], t, y))
            last = None if miss is None else (t, miss)
    if found:
        return min(found, key=lambda along: abs(along - near))
    if closest is None:
        raise GeometryError(say("No bore of the {side} edge meets the square edge of the blank.", side=term(side)))
    return _along(one, closest[1], closest[2])


def _mark_miss(layout: Headstock, one: Edge, segment, t: float, y: float) -> float | None:
    """How far the mark of a bore at parameter t lies above the level y, mm; None when there is no mark."""
    tangent = segment.tangent(t)
    normal = v.right(tangent) if one.side == "treble" else v.left(tangent)
    if (normal[0] if one.side == "treble" else -normal[0]) < LEAST_LEAN:
        return None
    p = segment.point(t)
    reach = (layout.blank.edge_x(one.side) - p[0]) / normal[0]
    return p[1] + reach * normal[1] - y


def _close_in(layout: Headstock, one: Edge, index: int, low: float, high: float, y: float) -> float:
    segment = one.path.segments[index]
    rising = _mark_miss(layout, one, segment, high, y) > 0
    for _ in range(50):
        middle = (low + high) / 2
        if (_mark_miss(layout, one, segment, middle, y) > 0) == rising:
            high = middle
        else:
            low = middle
    return _along(one, index, (low + high) / 2)


def _along(one: Edge, index: int, t: float) -> float:
    before = one.path.ends[index - 1] if index else 0.0
    return before + one.path.segments[index].length_to(t)


@remembered_per_thread(32, of_loop)
def _wall(loop: Loop, side: Side) -> Wall:
    return Wall(edge(loop, side).path)
