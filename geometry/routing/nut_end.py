"""The nut end of the outside template: it ends at the nut line, and guides the router down to it.

Shrunk all round, a template would end one offset above the nut line, which is where it is laid on the wood and
down to where it has to guide. So the outline goes straight on behind the nut line by as much before it is shrunk.
"""

from __future__ import annotations

from itertools import takewhile

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.layout.outline import Loop, loop_path
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

SHOULDER = 0.2
"""An edge that rises less than this (mm a mm) where it leaves the nut line is a shoulder: the neck goes on square behind it."""


def led_on(loop: Loop, offset: float) -> Path:
    """The outline from which an outside template is shrunk by `offset` mm, counter-clockwise.

    The outline itself for an offset of nothing or less (such a template reaches past the nut line as it is), and
    where it does not end in one straight edge on the nut line. GeometryError when it makes no path.
    """
    path = loop_path(loop).counter_clockwise()
    if offset <= TOUCH or path.box[1] < -TOUCH:
        return path
    segments = path.segments
    first = next((i for i, one in enumerate(segments) if _on_nut(one) and not _on_nut(segments[i - 1])), None)
    if first is None or sum(map(_on_nut, segments)) == len(segments):
        return path
    turned = [*segments[first:], *segments[:first]]
    nut = len(list(takewhile(_on_nut, turned)))
    sides = turned[nut:]
    if any(_on_nut(one) for one in sides):
        return path
    bass, treble = turned[0].start, turned[nut - 1].end
    a = _behind(bass, sides[-1].tangent(1.0), offset)
    b = _behind(treble, v.scale(sides[0].tangent(0.0), -1.0), offset)
    if not a[0] < b[0]:
        return path
    return Path((Line(bass, a), Line(a, b), Line(b, treble), *sides), closed=True)


def _on_nut(segment: Segment) -> bool:
    return isinstance(segment, Line) and abs(segment.p0[1]) <= TOUCH and abs(segment.p1[1]) <= TOUCH


def _behind(foot: Vec2, way: Vec2, deep: float) -> Vec2:
    """Where an edge that comes down to the nut line on its `way` is `deep` mm behind it, going straight on."""
    down = -way[1]
    return (foot[0] + (way[0] / down * deep if down >= SHOULDER else 0.0), foot[1] - deep)
