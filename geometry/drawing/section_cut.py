"""What an upright plane through the head cuts: the wood, the slots and the bores along a line in plan."""

from __future__ import annotations

import math

import shapely
from msgspec import Struct
from shapely.geometry import LineString, Polygon

from geometry import vectors as v
from geometry.by_size import of_same, remembered_by_size
from geometry.curves.polygons import polygon
from geometry.drawing.same import Same
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, Loop, loop_path
from geometry.solids import Drilling, Frame
from geometry.vectors import Vec2

FAR = 1.0e4
"""Longer than any head, mm."""

Span = tuple[float, float]
"""From and to along the section line, mm."""


class SectionLine(Struct, frozen=True):
    """A line in plan: distances are measured from `origin` (mm) along the unit `direction`."""

    origin: Vec2
    direction: Vec2

    def along(self, p: Vec2) -> float:
        """Distance of a point's foot from the origin, mm."""
        return v.dot(v.sub(p, self.origin), self.direction)

    def off(self, p: Vec2) -> float:
        """Distance of a point from the line, mm, never negative."""
        return abs(v.cross(self.direction, v.sub(p, self.origin)))

    def spans(self, area: Polygon, least: float = 1e-3) -> list[Span]:
        """Where the line runs inside an area, sorted; touches shorter than `least` mm are dropped."""
        return list(_inside(self, Same(area), least))

    def chord(self, d: Drilling) -> Span | None:
        """What the plane cuts out of a bore square to the face, or None when it misses it."""
        off = self.off(d.start[:2])
        if off >= d.radius:
            return None
        half = math.sqrt(d.radius * d.radius - off * off)
        middle = self.along(d.start[:2])
        return (middle - half, middle + half)


def line_along_bore(blank: Blank, placed: Frame, post: Drilling) -> SectionLine:
    """From where it leaves the blank: along a tuner's side bore; of a face tuner across its post, from where its button points to."""
    if placed.mount == "side":
        return SectionLine((post.mark or post.start)[:2], post.direction[:2])
    out, centre = placed.u[:2], post.start[:2]
    return SectionLine(v.along(centre, out, edge_distance(blank, centre, out)), v.scale(out, -1.0))


def edge_distance(blank: Blank, p: Vec2, outward: Vec2) -> float:
    """Distance in mm from a point of the face along a unit direction to the border of the blank's face.

    0 or less when the point lies on or outside that border.
    """
    reaches = []
    if outward[0]:
        reaches.append(((blank.treble if outward[0] > 0 else -blank.bass) - p[0]) / outward[0])
    if outward[1]:
        reaches.append(((blank.tip if outward[1] > 0 else -blank.behind) - p[1]) / outward[1])
    return min(reaches)


def wood_area(layout: Headstock) -> Polygon | None:
    """The inside of the outline, or None while it has none: the checks say why."""
    return _area(Same(layout.outline))


@remembered_by_size(32, lambda line, area, least: len(area.value.exterior.coords))
def _inside(line: SectionLine, area: Same[Polygon], least: float) -> tuple[Span, ...]:
    """As line.spans; remembered, because one section asks for the same few several times."""
    ray = LineString([v.along(line.origin, line.direction, -FAR), v.along(line.origin, line.direction, FAR)])
    found = []
    for piece in shapely.get_parts(shapely.intersection(ray, area.value)):
        if piece.length > least:
            ends = sorted(line.along(c) for c in (piece.coords[0], piece.coords[-1]))
            found.append((ends[0], ends[1]))
    return tuple(sorted(found))


@remembered_by_size(16, of_same)
def _area(loop: Same[Loop]) -> Polygon | None:
    try:
        return polygon(loop_path(loop.value))
    except GeometryError:
        return None
