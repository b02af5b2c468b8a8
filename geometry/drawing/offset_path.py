"""Offset of a closed path: exact where it is made of lines and arcs, fine chords elsewhere.

Growing rounds the corners that stick out and sharpens none; shrinking rounds
the corners that dent in: what a round follower does along a template.
"""

from __future__ import annotations

import math

from msgspec import Struct
from shapely.geometry import Polygon

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.curves.offset_line import corner, parallel, turn_at
from geometry.curves.polygons import grown, parts, polygon
from geometry.drawing.shapes import ring_path
from geometry.errors import GeometryError
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

AGREE = 0.01
"""How near (mm) an exact offset must lie to the polygon offset to be believed."""


class Offset(Struct, frozen=True):
    """Closed paths of the result, largest first: none when nothing is left, several when it falls apart."""

    paths: tuple[Path, ...]
    exact: bool
    """False: chords that stay within a few micrometres of the true offset"""


def offset_path(path: Path, by: float) -> Offset:
    """The closed path grown by `by` mm all round, shrunk when negative.

    Returned counter-clockwise, openings inside it clockwise. GeometryError when the path crosses itself.
    """
    ccw = path.counter_clockwise()
    if abs(by) <= TOUCH:
        return Offset((ccw,), True)
    area = grown(polygon(ccw), by)
    exact = _exact(ccw, by)
    if exact is not None and _agrees(exact, area):
        return Offset((exact,), True)
    rings = [ring for part in parts(area) for ring in (part.exterior, *part.interiors)]
    return Offset(tuple(ring_path(ring).counter_clockwise() for ring in rings), False)


def _agrees(exact: Path, area) -> bool:
    """Whether the exact path bounds the same area as the polygon offset."""
    points = exact.flatten(FLAT)
    made = Polygon(points)
    if not made.is_valid or area.geom_type != "Polygon" or area.interiors:
        return False
    return made.exterior.hausdorff_distance(area.exterior) <= AGREE


def _exact(path: Path, by: float) -> Path | None:
    """Offset segments joined by arcs or trimmed where they cross; None when that is not enough."""
    moved: list[Segment] = []
    for segment in path:
        if isinstance(segment, Cubic) or (made := parallel(segment, by)) is None:
            return None
        moved.append(made)
    nodes = [segment.start for segment in path]
    turns = [turn_at(path.segments[i - 1], path.segments[i]) for i in range(len(nodes))]
    out: list[Segment] = []
    first_from = 0.0
    for i, segment in enumerate(moved):
        turn, node = turns[i], nodes[i]
        if abs(turn) * abs(by) <= TOUCH / 2:
            out.append(segment)
            continue
        before = moved[i - 1] if i == 0 else out[-1]
        if turn * by > 0:
            start = before.end if i else moved[-1].end
            out += [corner(node, start, segment.start, by, turn), segment]
            continue
        cut = _crossing(before, segment, node)
        if cut is None:
            return None
        if i == 0:
            first_from = cut[0]
        else:
            out[-1] = before.split(cut[0])[0]
        out.append(segment.split(cut[1])[1])
    if first_from:
        cut = _crossing(out[-1], moved[0], nodes[0])
        if cut is None:
            return None
        out[-1] = out[-1].split(cut[0])[0]
    try:
        return Path(tuple(out), closed=True)
    except GeometryError:
        return None


def _crossing(a: Segment, b: Segment, near: Vec2) -> tuple[float, float] | None:
    """Parameters where two offset neighbours cross, the crossing nearest to their corner; None when they do not."""
    best: tuple[float, float, float] | None = None
    for p in _meetings(a, b):
        s, t = a.nearest(p), b.nearest(p)
        on_both = v.distance(a.point(s), p) <= TOUCH / 10 and v.distance(b.point(t), p) <= TOUCH / 10
        if on_both and 0 < s and t < 1 and (best is None or v.distance(p, near) < best[0]):
            best = (v.distance(p, near), s, t)
    return None if best is None else best[1:]


def _meetings(a: Segment, b: Segment) -> list[Vec2]:
    """Where the endless lines or whole circles of two segments meet."""
    if isinstance(a, Line) and isinstance(b, Line):
        d, e = v.sub(a.p1, a.p0), v.sub(b.p1, b.p0)
        det = v.cross(d, e)
        return [] if det == 0 else [a.point(v.cross(v.sub(b.p0, a.p0), e) / det)]
    if isinstance(a, Line):
        return _line_circle(a, b)
    if isinstance(b, Line):
        return _line_circle(b, a)
    return _circles(a, b)


def _line_circle(line: Line, arc: Arc) -> list[Vec2]:
    along = line.tangent(0.0)
    foot = v.dot(v.sub(arc.centre, line.p0), along)
    middle = v.along(line.p0, along, foot)
    rest = arc.radius ** 2 - v.distance(middle, arc.centre) ** 2
    if rest < 0:
        return []
    return [v.along(middle, along, sign * math.sqrt(rest)) for sign in (-1.0, 1.0)]


def _circles(a: Arc, b: Arc) -> list[Vec2]:
    gap = v.distance(a.centre, b.centre)
    if gap == 0:
        return []
    foot = (gap * gap + a.radius ** 2 - b.radius ** 2) / (2 * gap)
    rest = a.radius ** 2 - foot * foot
    if rest < 0:
        return []
    along = v.unit(v.sub(b.centre, a.centre))
    middle = v.along(a.centre, along, foot)
    return [v.along(middle, v.left(along), sign * math.sqrt(rest)) for sign in (-1.0, 1.0)]
