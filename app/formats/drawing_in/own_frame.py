"""Where nut line and centreline lie in a drawing that Pegwright itself has written: they are drawn there."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import shapely

from app.formats.drawing_in.haul import Strand
from app.formats.layer_names import style_on
from geometry import vectors as v
from geometry.curves import Line, Matrix, Path
from geometry.tolerance import FLAT, JOIN
from geometry.vectors import Vec2

FAR = 1000.0
"""mm: farther than any head reaches"""
AT_WOOD = 1.0
"""mm: an outline that begins farther from the nut line was moved without it (common practice, no source)"""


def own_nut(strands: Sequence[Strand], to_mm: Matrix, outline: Path) -> tuple[tuple[Vec2, Vec2], Vec2] | None:
    """Ends of the nut (mm), counter-clockwise about the outline, with the centreline through its middle, and the unit vector along that to the tip.

    None where there is not one nut line at the wood, with a centreline across its middle: another hand has changed the drawing. What is
    drawn twice counts once, and that of a copy beside it belongs to the copy.
    """
    wood = shapely.make_valid(shapely.Polygon(outline.flatten(FLAT)))
    lines = [line for line in _lines(strands, to_mm, "nut line") if wood.dwithin(shapely.Point(v.middle(line.start, line.end)), AT_WOOD)]
    if not lines or any(v.distance(v.middle(line.start, line.end), v.middle(lines[0].start, lines[0].end)) > JOIN for line in lines):
        return None
    middle, along = v.middle(lines[0].start, lines[0].end), v.unit(v.sub(lines[0].end, lines[0].start))
    across = [line for line in _lines(strands, to_mm, "centreline") if abs(v.cross(v.unit(v.sub(line.end, line.start)), along)) > math.sin(math.pi / 4)
              and abs(v.cross(v.unit(v.sub(line.end, line.start)), v.sub(middle, line.start))) <= JOIN]
    if not across:
        return None
    axis = v.unit(v.sub(across[0].end, across[0].start))
    ahead, behind = (wood.intersection(shapely.LineString([middle, v.along(middle, axis, way * FAR)])).length for way in (1, -1))
    up = axis if ahead > behind else v.scale(axis, -1.0)
    treble = along if v.cross(along, up) > 0 else v.scale(along, -1.0)
    half = min(v.distance(lines[0].start, lines[0].end) / 2, *(_reach(outline, wood, middle, way) for way in (treble, v.scale(treble, -1.0))))
    return (v.along(middle, treble, -half), v.along(middle, treble, half)), up


def _reach(outline: Path, wood: shapely.Geometry, middle: Vec2, way: Vec2) -> float:
    """mm from the middle of the nut to where the outline turns on its line, or else to where the wood ends there; inf where there is none."""
    corners = [v.sub(segment.start, middle) for segment in outline.segments]
    turns = [along for p in corners if abs(v.cross(way, p)) <= JOIN and (along := v.dot(way, p)) > JOIN]
    cut = wood.intersection(shapely.LineString([middle, v.along(middle, way, FAR)]))
    ends = [part.length for part in shapely.get_parts(cut) if part.distance(shapely.Point(middle)) <= JOIN and part.length > JOIN]
    return min(turns or ends, default=math.inf)


def _lines(strands: Sequence[Strand], to_mm: Matrix, style: str) -> Iterator[Line]:
    for strand in strands:
        if style_on(strand.layer) == style and len(strand.path.segments) == 1 and isinstance(strand.path.segments[0], Line):
            yield strand.path.segments[0].mapped(to_mm)
