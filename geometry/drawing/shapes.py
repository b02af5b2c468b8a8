"""Plain paths, and the lines at the nut, that several drawings need."""

from __future__ import annotations

from collections.abc import Sequence

import shapely

from geometry.curves import Line, Path
from geometry.drawing.marks import Area, Drawing, Stroke
from geometry.layout.strings import Nut
from geometry.vectors import Vec2


def straight(a: Vec2, b: Vec2) -> Path:
    """One straight line from a to b (mm)."""
    return Path((Line(a, b),))


DATUM = 4.0
"""How far the nut line is drawn beyond the nut where it is measured from, mm."""


def nut_line(nut: Nut, beyond: float = 0.0) -> Path:
    """The nut line from the bass end of the nut to its treble end, and so much farther on at either (mm)."""
    half = nut.width / 2 + beyond
    return straight(nut.at(-half), nut.at(half))


def nut_lines(nut: Nut, beyond: float = 0.0) -> Drawing:
    """The nut line so much (mm) beyond the nut, and the base line of a slanted nut: square to the centreline through the middle of the nut,
    as long as the nut line on paper. What is told along the head is from it."""
    half = nut.width / 2 + DATUM
    base = (Stroke(straight((-half, 0.0), (half, 0.0)), "centreline", "nut"),) if nut.slant else ()
    return (Stroke(nut_line(nut, beyond), "nut line", "nut"), *base)


def chain(points: Sequence[Vec2], closed: bool = False) -> Path:
    """Straight lines through points (mm) in their order, closed back to the first when asked.

    GeometryError for fewer than two points.
    """
    ends = [*points[1:], points[0]] if closed else points[1:]
    return Path(tuple(map(Line, points, ends)), closed)


def ring_path(ring: shapely.LinearRing) -> Path:
    """A ring of the polygon library as a closed path of straight lines (mm), its numbers plain ones."""
    return chain(list(map(tuple, shapely.get_coordinates(ring)[:-1].tolist())), closed=True)


def polygon_area(part: shapely.Polygon, style: str, owner: str = "") -> Area:
    """A polygon of the polygon library with its holes as an area of straight lines (mm)."""
    return Area(ring_path(part.exterior), style, owner, tuple(ring_path(hole) for hole in part.interiors))


def rectangle(x0: float, y0: float, x1: float, y1: float) -> Path:
    """A closed upright rectangle between two corners (mm), counter-clockwise when x0 < x1 and y0 < y1."""
    return chain(((x0, y0), (x1, y0), (x1, y1), (x0, y1)), closed=True)
