"""Middles of holes that are only marked: points, and small crosses of two lines."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely

from app.formats.drawing_in.result import Loop
from geometry import vectors as v
from geometry.curves import Line, Path, circle
from geometry.curves.polygons import polygon
from geometry.vectors import Vec2

DIAMETER = 3.0
"""mm of the hole that a mark becomes: a start for any drill (common practice, no source)."""
INSIDE = 2.0
"""mm from the edge that a mark lies at the least: nearer ones belong to the line of the outline (common practice, no source)."""
MOST = 60
"""Marks beyond which they are points of something measured, and no holes."""
LONGEST_ARM = 20.0
"""mm from end to end of a line of a cross (common practice, no source)."""
SQUARE = math.sin(math.radians(1.0))
ALIKE = 0.02
"""mm between the middles of the two lines of a cross, and between their lengths"""


def crosses(open_lines: Sequence[Path]) -> tuple[list[Vec2], list[Path]]:
    """Where two short lines of the same length cross square in their middles, and the lines that are no such cross."""
    short = [path for path in open_lines if len(path.segments) == 1 and isinstance(path.segments[0], Line) and path.length <= LONGEST_ARM]
    if len(short) < 2:
        return [], list(open_lines)
    middles = [shapely.Point(v.middle(path.start, path.end)) for path in short]
    near: list[set[int]] = [set() for _ in short]
    for i, k in shapely.STRtree(middles).query(middles, predicate="dwithin", distance=ALIKE).T.tolist():
        near[i].add(k)  # each is near itself
    pairs = [(short[i], short[max(both)]) for i, both in enumerate(near) if len(both) == 2 and i == min(both) and near[max(both)] == both]
    found = [pair for pair in pairs if _is_cross(*pair)]
    taken = {id(path) for pair in found for path in pair}
    return [v.middle(pair[0].start, pair[0].end) for pair in found], [path for path in open_lines if id(path) not in taken]


def _is_cross(one: Path, two: Path) -> bool:
    a, b = v.sub(one.end, one.start), v.sub(two.end, two.start)
    return abs(one.length - two.length) <= ALIKE and abs(v.dot(v.unit(a), v.unit(b))) <= SQUARE


def marked(points: Sequence[Vec2], loops: Sequence[Loop]) -> tuple[list[Vec2], list[Vec2]]:
    """The points (mm) that lie in the wood of the outline, clear of its edge and of all holes and slots, and those that lie neither
    there nor in one of these: each once. None of either where more than MOST lie in the wood, or without an outline."""
    outline = next((loop.path for loop in loops if loop.role == "outline"), None)
    if outline is None or not points:
        return [], []
    head = polygon(outline)
    cut = shapely.union_all([polygon(loop.path) for loop in loops if loop.role not in ("outline", "other")])
    free = shapely.difference(head.buffer(-INSIDE), cut)
    for area in (free, cut):
        shapely.prepare(area)
    each = list(dict.fromkeys(points))
    found = [at for at in each if free.covers(shapely.Point(at))]
    if len(found) > MOST:
        return [], []
    known = set(found)
    return found, [at for at in each if at not in known and not cut.covers(shapely.Point(at))]


def hole_at(at: Vec2) -> Path:
    """The hole that a mark (mm) becomes."""
    return circle(at, DIAMETER / 2)
