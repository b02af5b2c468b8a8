"""Snapping to edges: their middles and centres, and where a line from the last node meets one square or touches it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from msgspec import Struct

from geometry import vectors as v
from geometry.curves import Arc, Path, Segment
from geometry.edits.loops import edge_of
from geometry.layout import Loop
from geometry.saying import say
from geometry.vectors import Vec2

STEPS = 24
"""Pieces in which an edge is looked through for a change of sign."""


class Spot(Struct, frozen=True):
    """A place that attracts (mm), in words, and points that a guide is drawn to."""

    at: Vec2
    words: str
    of: tuple[Vec2, ...] = ()


def marked(loop: Loop, ref: str, skip: frozenset[int] = frozenset()) -> Iterator[Spot]:
    """The middle of each edge of a loop, and the centre of each arc; edges at the nodes of `skip` move and are left out."""
    nodes, name = list(loop.nodes), say("the outline") if ref == "outline" else ref
    for i in range(len(nodes)):
        segment = edge_of(nodes, i)
        if segment is None or i in skip or (i + 1) % len(nodes) in skip:
            continue
        middle = segment.point(segment.at_length(segment.length() / 2))
        yield Spot(middle, say("middle of edge {i} of {name}", i=i + 1, name=name))
        if isinstance(segment, Arc):
            yield Spot(segment.centre, say("centre of edge {i} of {name}", i=i + 1, name=name), (segment.start,))


def met(start: Vec2, at: Vec2, path: Path, name: str, reach: float) -> Spot | None:
    """Where the straight line from `start` meets a path square, or touches it, within `reach` of `at`; None elsewhere."""
    best: tuple[float, Spot] | None = None
    for segment in path.segments:
        if not _near(segment, at, reach):
            continue
        for square, measure in ((True, _along), (False, _across)):
            for t in _roots(segment, start, measure):
                place = segment.point(t)
                off = v.distance(place, at)
                if off <= reach and v.distance(place, start) > reach and (best is None or off < best[0]):
                    words = say("square to {edge}", edge=name) if square else say("touching {edge}", edge=name)
                    best = (off, Spot(place, words, (start,)))
    return None if best is None else best[1]


def _along(tangent: Vec2, way: Vec2) -> float:
    return v.dot(tangent, way)


def _across(tangent: Vec2, way: Vec2) -> float:
    return v.cross(tangent, way)


def _near(segment: Segment, at: Vec2, reach: float) -> bool:
    x0, y0, x1, y1 = segment.box()
    return x0 - reach <= at[0] <= x1 + reach and y0 - reach <= at[1] <= y1 + reach


def _roots(segment: Segment, start: Vec2, measure: Callable[[Vec2, Vec2], float]) -> Iterator[float]:
    """Parameters at which the measure of (tangent, way from the start) changes its sign."""

    def value(t: float) -> float:
        return measure(segment.tangent(t), v.sub(segment.point(t), start))

    before, low = value(0.0), 0.0
    if before == 0:
        yield 0.0
    for k in range(1, STEPS + 1):
        t = k / STEPS
        now = value(t)
        if now == 0:
            yield t
        elif before * now < 0:
            a, b, sign = low, t, before
            for _ in range(48):
                middle = (a + b) / 2
                if value(middle) * sign > 0:
                    a = middle
                else:
                    b = middle
            yield (a + b) / 2
        before, low = now, t


def on_ray(start: Vec2, ways: Sequence[tuple[Vec2, str]], p: Vec2, reach: float, step: float | None) -> Spot | None:
    """The place on the nearest of some unit directions from `start`, its length rounded to `step` mm; None when far."""
    near = [(abs(v.cross(way, v.sub(p, start))), way, words) for way, words in ways]
    off, way, words = min(near, key=lambda one: one[0], default=(reach + 1.0, (0.0, 0.0), ""))
    size = v.dot(way, v.sub(p, start))
    if off > reach or abs(size) <= reach:
        return None
    return Spot(v.along(start, way, round(size / step) * step if step else round(size, 2)), words, (start,))
