"""Rounding a corner: the arc of a given radius that touches both edges of a node."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry import vectors as v
from geometry.curves import Arc, Segment
from geometry.edits.loops import Nodes, checked_index, edge_of, with_edge
from geometry.edits.parts import loop_at, with_loop
from geometry.edits.twins import twin_of
from geometry.errors import GeometryError
from geometry.layout import Headstock, Node
from geometry.lengths import at_most, mm
from geometry.saying import say
from geometry.vectors import Vec2

STEPS = 24
"""The radius grows from zero in this many steps, so that the arc stays at its own corner."""

LARGEST = 1000.0
"""mm: a larger radius is not asked for."""

GONE = 1e-7
"""A piece of an edge shorter than this many mm is used up by the rounding."""


class Rounding(Struct, frozen=True):
    """Where the arc leaves the first edge (parameter s) and meets the second (parameter t)."""

    s: float
    t: float


def fillet(layout: Headstock, ref: str, index: int, radius: float, mirrored: bool = False) -> Headstock:
    """The corner at node `index` rounded by an arc of `radius` mm that touches both its edges.

    Touching points are found to about 1e-12 mm for straight edges and arcs and
    within 1e-6 mm for curves. The node gives way to the two ends of the arc,
    both smooth. GeometryError when the radius does not fit, with the largest
    that does; when the node is no corner; when an edge has no length.
    """
    nodes = list(loop_at(layout, ref).nodes)
    checked_index(nodes, index)
    if not (math.isfinite(radius) and radius > 0):
        raise GeometryError(say("A rounding needs a radius above zero."))
    twin = twin_of(nodes, index) if mirrored else None
    for one in sorted({index, index if twin is None else twin}, reverse=True):
        nodes = _rounded(nodes, one, radius)
    return with_loop(layout, ref, nodes)


def largest_fillet(layout: Headstock, ref: str, index: int) -> float:
    """The largest radius in mm (up to LARGEST) that fits at a corner, to about 1e-6 mm."""
    nodes = list(loop_at(layout, ref).nodes)
    into, out = _edges_at(nodes, checked_index(nodes, index))
    return _grow(into, out, _side(into, out), LARGEST)[0]


def _edges_at(nodes: Nodes, index: int) -> tuple[Segment, Segment]:
    into, out = edge_of(nodes, (index - 1) % len(nodes)), edge_of(nodes, index)
    if into is None or out is None:
        raise GeometryError(say("An edge at this corner has no length: remove its node first."))
    return into, out


def _side(into: Segment, out: Segment) -> float:
    """+1 when the corner turns left, -1 when it turns right."""
    a, b = into.tangent(1.0), out.tangent(0.0)
    turn = v.turn(a, b)
    if abs(turn) < 1e-6:
        raise GeometryError(say("The edges meet without a corner here, so there is nothing to round."))
    if abs(turn) > math.pi - 1e-6:
        raise GeometryError(say("The edges fold back on themselves here, so no arc fits between them."))
    return math.copysign(1.0, turn)


def _rounded(nodes: Nodes, index: int, radius: float) -> Nodes:
    into, out = _edges_at(nodes, index)
    side = _side(into, out)
    largest, found = _grow(into, out, side, radius)
    if largest < radius:
        if largest < 0.01:
            raise GeometryError(say("A radius of {radius} does not fit at this corner: no radius fits.", radius=mm(radius)))
        raise GeometryError(say("A radius of {radius} does not fit at this corner: the largest that fits is "
                                "{largest}.",
                                radius=mm(radius), largest=at_most(largest)))
    s, t = min(max(found.s, 0.0), 1.0), min(max(found.t, 0.0), 1.0)
    start, end = into.point(s), out.point(t)
    a, b = into.tangent(s), out.tangent(t)
    sweep = (side * v.turn(a, b)) % (2 * math.pi)
    arc = Arc.bulging(start, end, side * math.tan(sweep / 4))
    before = (index - 1) % len(nodes)
    result = list(nodes)
    kept_in = into.split(s)[0] if v.distance(into.start, start) > GONE or s > 0.5 else None
    kept_out = out.split(t)[1] if v.distance(out.end, end) > GONE or t < 0.5 else None
    ends = [with_edge(Node(at=start, smooth=True), arc)]
    if kept_out is not None:
        ends.append(with_edge(Node(at=end, smooth=True), kept_out))
    if kept_in is not None:
        result[before] = with_edge(result[before], kept_in)
        return [*result[:index], *ends, *result[index + 1:]]
    # The arc uses up the whole edge before it: it leaves straight from the node before.
    result[before] = with_edge(result[before], arc)
    return [*result[:index], *ends[1:], *result[index + 1:]]


def _grow(into: Segment, out: Segment, side: float, radius: float) -> tuple[float, Rounding]:
    """(largest radius up to `radius` that fits, its touching points), growing it from nothing."""
    low, found = 0.0, Rounding(1.0, 0.0)
    step = radius / STEPS
    while low < radius:
        trial = min(radius, low + step)
        if radius - trial < 1e-12 * radius:
            trial = radius
        better = _touch(into, out, side, low, trial, found)
        if better is not None:
            low, found = trial, better
        else:
            step /= 2
            if step < 1e-9 * max(1.0, radius):
                break
    return low, found


def _touch(into: Segment, out: Segment, side: float, last: float, radius: float, near: Rounding) -> Rounding | None:
    """Newton's method for the arc centre common to both edges' parallels; None when it leaves the edges."""
    s, t = near.s, near.t
    size = max(into.length(), out.length())
    for turn in range(30):
        grow = radius if turn else last
        a, b = _parallel(into, s, side, grow), _parallel(out, t, side, grow)
        if a is None or b is None:
            return None
        (p, dp, n), (q, dq, m) = a, b
        if not turn and min(v.norm(dp), v.norm(dq)) < 1e-9:
            # A handle sits on the corner, so the curve starts without speed: step inside and do not predict.
            s, t = s - 1e-3, t + 1e-3
            continue
        # The first turn predicts: it walks along the solution from the last radius to this one.
        miss = v.sub(p, q) if turn else v.scale(v.sub(n, m), side * (radius - last))
        det = -v.cross(dp, dq)
        if abs(det) < 1e-12:
            return None
        ds = v.cross(miss, dq) / det
        dt = -v.cross(dp, miss) / det
        s, t = s + ds, t + dt
        if not (-0.5 < s < 1.5 and -0.5 < t < 1.5):
            return None
        if turn and abs(ds) + abs(dt) < 1e-13:
            break
    slack = 1e-9 / size
    if not (-slack <= s <= 1 and 0 <= t <= 1 + slack):
        return None
    gap = v.distance(_parallel_point(into, s, side, radius), _parallel_point(out, t, side, radius))
    return Rounding(s, t) if gap < 1e-9 * max(1.0, size) else None


def _parallel(segment: Segment, at: float, side: float, radius: float) -> tuple[Vec2, Vec2, Vec2] | None:
    """Point, derivative and normal of the parallel curve; None where it turns back on itself."""
    tangent, normal = segment.tangent(at), v.left(segment.tangent(at))
    shrink = 1 - side * radius * segment.curvature(at)
    if shrink <= 1e-9:
        return None
    speed = v.norm(segment.derivative(at)) if hasattr(segment, "derivative") else segment.length()
    return v.along(segment.point(at), normal, side * radius), v.scale(tangent, speed * shrink), normal


def _parallel_point(segment: Segment, at: float, side: float, radius: float) -> Vec2:
    return v.along(segment.point(at), v.left(segment.tangent(at)), side * radius)
