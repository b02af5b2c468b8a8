"""Shapes and boxes of marks, as every writer needs them."""

from __future__ import annotations

import math
from collections.abc import Iterable

from msgspec.structs import replace

from app.formats.letters import text_width
from geometry import vectors as v
from geometry.curves import Line, Matrix
from geometry.curves import Path as Curve
from geometry.drawing import Area, Cross, Disc, Label, Mark, Stroke
from geometry.vectors import Box

DESCENDER, ASCENDER = 0.35, 1.35
"""How far letters reach under the line and over it, in capital heights (accents included)."""


def cross_arms(mark: Cross) -> tuple[Curve, Curve]:
    """The two hairlines of a cross.

    They run through the point itself: two thin lines that meet name a point to the eye even
    where ink is faint, while a gap would leave the point to be guessed.
    """
    arm = v.turned((mark.arm, 0.0), mark.angle)
    one, two = (Curve((Line(v.sub(mark.centre, d), v.add(mark.centre, d)),)) for d in (arm, v.left(arm)))
    return one, two


def mapped(mark: Mark, matrix: Matrix) -> Mark:
    """A mark moved, turned and scaled alike in all directions by a map that does not mirror."""
    angle, size = math.atan2(matrix.b, matrix.a), math.hypot(matrix.a, matrix.b)
    match mark:
        case Stroke():
            return replace(mark, path=mark.path.mapped(matrix))
        case Area():
            return replace(mark, outer=mark.outer.mapped(matrix), openings=tuple(one.mapped(matrix) for one in mark.openings))
        case Disc():
            return replace(mark, centre=matrix(mark.centre), radius=mark.radius * size)
        case Cross():
            return replace(mark, centre=matrix(mark.centre), arm=mark.arm * size, angle=mark.angle + angle)
        case Label():
            return replace(mark, at=matrix(mark.at), height=mark.height * size, angle=mark.angle + angle)


def mark_box(mark: Mark, matrix: Matrix | None = None) -> Box:
    """The box in mm that holds a mark, under a map when one is given; words as the printed letters are wide."""
    match mark:
        case Stroke(path=path) | Area(outer=path):
            box = path.box
        case Disc(centre=(x, y), radius=r) | Cross(centre=(x, y), arm=r):
            box = (x - r, y - r, x + r, y + r)
        case Label():
            return _around(_word_corners(mark), matrix)
    return box if matrix is None else _around(_corners(box), matrix)


def _around(corners: list[v.Vec2], matrix: Matrix | None) -> Box:
    if matrix is not None:
        corners = [matrix(corner) for corner in corners]
    return v.box_about(corners)


def drawing_box(drawing: Iterable[Mark]) -> Box:
    """The box in mm that holds every mark; a point at the origin for an empty drawing."""
    return v.box_of_all([mark_box(mark) for mark in drawing] or [(0.0, 0.0, 0.0, 0.0)])


def touches(a: Box, b: Box) -> bool:
    """Whether two boxes have a point in common."""
    return a[0] <= b[2] and a[2] >= b[0] and a[1] <= b[3] and a[3] >= b[1]


def _word_corners(mark: Label) -> list[v.Vec2]:
    width = text_width(mark.text, mark.height)
    start = {"left": 0.0, "middle": -width / 2, "right": -width}[mark.anchor]
    flat = _corners((start, -DESCENDER * mark.height, start + width, ASCENDER * mark.height))
    return [v.add(mark.at, v.turned(corner, mark.angle)) for corner in flat]


def _corners(box: Box) -> list[v.Vec2]:
    return [(x, y) for x in (box[0], box[2]) for y in (box[1], box[3])]
