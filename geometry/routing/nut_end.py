"""The nut end of the outside template: it ends at the nut line, and guides the router down to it.

Shrunk all round, a template would end one offset above the nut line, which is where it is laid on the wood and
down to where it has to guide. So the outline goes straight on behind the nut line by as much before it is shrunk.
Grown all round, it would reach past the nut line and could not lie down where nut and fingerboard stand. So it is
cut off there. The follower comes to the end of it before the cutter comes to that of an edge that leans out: a
shaving is left there.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import takewhile

import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.curves.matrix import turn
from geometry.curves.polygons import grown, polygon
from geometry.layout.outline import Loop, loop_path
from geometry.layout.strings import Nut
from geometry.tolerance import ALONG_NUT, TOUCH
from geometry.vectors import Vec2

SHOULDER = 0.2
"""An edge that rises less than this (mm a mm) where it leaves the nut line is a shoulder: the neck goes on square behind it."""
FAR = 1e5
"""mm: past everything."""


class NutEnd(Struct, frozen=True):
    """How an outline ends in one straight edge on the nut line: its ends, and the directions (unit) that come down to them."""

    bass: Vec2
    treble: Vec2
    down_bass: Vec2
    down_treble: Vec2
    sides: tuple[Segment, ...]
    """the rest of the outline, from the treble end up, round the tip and down to the bass end"""
    ahead: Vec2
    """unit, square to the nut line towards the tip"""

    @property
    def shoulders(self) -> tuple[bool, bool]:
        """Whether the bass edge and the treble edge leave the nut line nearly along it."""
        return -v.dot(self.down_bass, self.ahead) < SHOULDER, -v.dot(self.down_treble, self.ahead) < SHOULDER


def nut_end(loop: Loop, nut: Nut) -> NutEnd | None:
    """Where an outline ends on the nut line; None when part of it lies behind that line or it has no straight edge there.

    Along a slanted line an end lies within ALONG_NUT of it.

    GeometryError when it makes no path.
    """
    path = loop_path(loop).counter_clockwise()
    on_nut, near = _on(nut), _near(nut)
    if (path.mapped(turn(math.radians(nut.slant))) if nut.slant else path).box[1] < -near:
        return None
    segments = path.segments
    first = next((i for i, one in enumerate(segments) if on_nut(one) and not on_nut(segments[i - 1])), None)
    if first is None or sum(map(on_nut, segments)) == len(segments):
        return None
    turned = [*segments[first:], *segments[:first]]
    along = len(list(takewhile(on_nut, turned)))
    sides = turned[along:]
    if any(on_nut(one) for one in sides):
        return None
    return NutEnd(turned[0].start, turned[along - 1].end, sides[-1].tangent(1.0), v.scale(sides[0].tangent(0.0), -1.0), tuple(sides), nut.ahead)


def led_on(loop: Loop, nut: Nut, offset: float) -> Path:
    """The outline from which an outside template is shrunk by `offset` mm, counter-clockwise.

    The outline itself for an offset of nothing or less, and where it does not end in one straight edge on the nut
    line. GeometryError when it makes no path.
    """
    path = loop_path(loop).counter_clockwise()
    end = nut_end(loop, nut) if offset > TOUCH else None
    if end is None:
        return path
    a, b = (_behind(foot, way, end.ahead, offset) for foot, way in ((end.bass, end.down_bass), (end.treble, end.down_treble)))
    if not a[0] < b[0]:
        return path
    return Path((Line(end.bass, a), Line(a, b), Line(b, end.treble), *end.sides), closed=True)


def outside_template(loop: Loop, nut: Nut, offset: float) -> BaseGeometry:
    """The area of an outside template: the outline shrunk by `offset` mm (grown when negative), ending at the nut line."""
    area, strip = grown(polygon(led_on(loop, nut, offset)), -offset), neck_strip(loop, nut, offset)
    return area if strip is None else area.difference(strip)


def neck_strip(loop: Loop, nut: Nut, offset: float) -> BaseGeometry | None:
    """What is cut off a template that is larger than the outline: all behind the nut line, beside shoulders the neck's width.

    A shoulder is routed along the template beside the neck, which has to reach behind the nut line there. None for
    other templates, and where the outline does not end on the nut line.
    """
    end = nut_end(loop, nut) if offset < -TOUCH else None
    if end is None:
        return None
    bass, treble = end.shoulders
    left, right = end.bass[0] if bass else -FAR, end.treble[0] if treble else FAR
    return shapely.Polygon(((right, -FAR), nut.at(right), nut.at(left), (left, -FAR)))


def lean_out(end: NutEnd) -> float:
    """How far the edges lean out where they leave the nut line, mm a mm along the edge: of both the greater, 0 for upright ones.

    So long a stretch of that edge, for each mm by which a template is larger, has its place on the template behind
    the nut line, where that is cut off: the router is not guided there.
    """
    along = v.right(end.ahead)
    ways = zip((v.dot(end.down_bass, along), -v.dot(end.down_treble, along)), end.shoulders, strict=True)
    return max([0.0, *(out for out, shoulder in ways if not shoulder)])


def _near(nut: Nut) -> float:
    """How far from the nut line an end of the outline lies on it, mm."""
    return ALONG_NUT if nut.slant else TOUCH


def _on(nut: Nut) -> Callable[[Segment], bool]:
    """What tells of a segment whether it lies on the nut line."""
    near = _near(nut)
    return lambda segment: isinstance(segment, Line) and max(abs(nut.before(segment.p0)), abs(nut.before(segment.p1))) <= near


def _behind(foot: Vec2, way: Vec2, ahead: Vec2, deep: float) -> Vec2:
    """Where an edge that comes down to the nut line on its `way` is `deep` mm behind it, going straight on; from a shoulder as the neck goes."""
    down = -v.dot(way, ahead)
    return v.along(foot, way, deep / down) if down >= SHOULDER else (foot[0], foot[1] - deep / ahead[1])
