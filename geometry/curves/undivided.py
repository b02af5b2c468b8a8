"""Pieces of a path made one again that a node between them only parts."""

from __future__ import annotations

import math
from collections.abc import Sequence

from geometry import vectors as v
from geometry.curves.arc import Arc
from geometry.curves.cubic import Cubic
from geometry.curves.line import Line
from geometry.curves.path import Segment
from geometry.tolerance import TOUCH

_SAME = 1e-5
"""mm: two pieces of a curve that was split stray from it by roundings alone, and by those of a file."""
_STRAIGHT_ON = 1 - 1e-9
"""Cosine of the turn between two pieces of one curve, at the least."""


def as_cubic(segment: Segment) -> Cubic:
    """The segment as one cubic: a line exactly, an arc nearly (0.03 % of its radius off over a quarter turn)."""
    if isinstance(segment, Cubic):
        return segment
    if isinstance(segment, Arc):
        k = 4 / 3 * math.tan(abs(segment.sweep) / 4) * segment.radius
        return Cubic(segment.p0, v.along(segment.p0, segment.tangent(0), k),
                     v.along(segment.p1, segment.tangent(1), -k), segment.p1)
    return Cubic(segment.p0, segment.point(1 / 3), segment.point(2 / 3), segment.p1)


def one_from(into: Segment, out: Segment) -> Segment:
    """One piece instead of two that meet: straight ones give a straight one, two of one arc the whole arc, anything else one curve that
    leaves and arrives as before; a piece that was split comes back as it was."""
    if isinstance(into, Line) and isinstance(out, Line):
        return Line(into.start, out.end)
    if isinstance(into, Arc) and isinstance(out, Arc) and into.sweep * out.sweep > 0:
        sweep = into.sweep + out.sweep
        same = v.distance(into.centre, out.centre) <= TOUCH and abs(into.radius - out.radius) <= TOUCH
        if same and abs(sweep) < 1.9 * math.pi and v.distance(into.start, out.end) > TOUCH:
            return Arc.bulging(into.start, out.end, math.tan(sweep / 4))
    one, two = as_cubic(into), as_cubic(out)
    near, far = v.distance(one.c1, one.p1), v.distance(two.p0, two.c0)
    same_way = v.dot(one.tangent(1.0), two.tangent(0.0)) > _STRAIGHT_ON
    if same_way and near > TOUCH and far > TOUCH:
        t = near / (near + far)
    else:
        t = into.length() / (into.length() + out.length())
    t = min(max(t, 1e-3), 1 - 1e-3)
    return Cubic(one.p0, v.along(one.p0, v.sub(one.c0, one.p0), 1 / t),
                 v.along(two.p1, v.sub(two.c1, two.p1), 1 / (1 - t)), two.p1)


def undivided(segments: Sequence[Segment]) -> list[Segment]:
    """The pieces of a closed path (mm), one instead of two where a curve goes on as it is beyond a node: the same line with fewer nodes."""
    made = [segments[0]]
    for segment in segments[1:]:
        one = _whole(made[-1], segment)
        if one is None:
            made.append(segment)
        else:
            made[-1] = one
    one = _whole(made[-1], made[0]) if len(made) > 1 else None
    return made if one is None else [one, *made[1:-1]]


def _whole(into: Segment, out: Segment) -> Segment | None:
    if type(into) is not type(out) or v.dot(into.tangent(1.0), out.tangent(0.0)) < _STRAIGHT_ON:
        return None
    near, far = (v.distance(into.c1, into.p1), v.distance(out.p0, out.c0)) if isinstance(into, Cubic) and isinstance(out, Cubic) else (into.length(), out.length())
    if min(near, far) <= TOUCH:
        return None
    made, t = one_from(into, out), near / (near + far)
    same = (v.distance(made.point(at), p) <= _SAME for at, p in ((t, into.end), (t / 2, into.point(0.5)), ((1 + t) / 2, out.point(0.5))))
    return made if type(made) is type(into) and all(same) else None
