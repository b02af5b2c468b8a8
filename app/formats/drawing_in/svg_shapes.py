"""The basic shapes and paths of SVG as subpaths in user units, y down."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping

from app.formats.drawing_in.ellipse import EllipticArc
from app.formats.drawing_in.svg_path import Subpath, subpaths
from app.formats.drawing_in.svg_references import NUMBER
from app.formats.drawing_in.svg_tree import Node
from app.formats.drawing_in.svg_units import Viewport, length
from geometry.curves import Line, Matrix
from geometry.vectors import Vec2

SHAPES = frozenset({"path", "rect", "circle", "ellipse", "line", "polyline", "polygon"})


def shape(node: Node, style: Mapping[str, str], view: Viewport) -> tuple[list[Subpath], bool]:
    """The subpaths of a shape element, and whether all of its data was understood."""
    if node.tag == "path":
        return subpaths(node.attributes.get("d", ""))
    if node.tag in ("polyline", "polygon"):
        return _points(node)

    def across(name: str) -> float:
        return length(style.get(name) or node.get(name), view.width)

    def down(name: str) -> float:
        return length(style.get(name) or node.get(name), view.height)

    if node.tag == "line":
        return [Subpath([Line((across("x1"), down("y1")), (across("x2"), down("y2")))])], True
    if node.tag == "circle":
        r = length(style.get("r"), view.diagonal)
        return _oval(across("cx"), down("cy"), r, r), True
    if node.tag == "ellipse":
        rx, ry = _radii(style, view)
        return _oval(across("cx"), down("cy"), rx or 0.0, ry or 0.0), True
    return _rect(across("x"), down("y"), across("width"), down("height"), *_radii(style, view)), True


def _radii(style: Mapping[str, str], view: Viewport) -> tuple[float | None, float | None]:
    """(rx, ry), each standing in for the other when only one is given; None for neither."""
    rx = length(style.get("rx"), view.width, default=-1.0)
    ry = length(style.get("ry"), view.height, default=-1.0)
    rx, ry = (rx if rx >= 0 else ry), (ry if ry >= 0 else rx)
    return (None, None) if rx < 0 else (rx, ry)


def _oval(cx: float, cy: float, rx: float, ry: float) -> list[Subpath]:
    if not (rx > 0 and ry > 0):
        return []
    matrix = Matrix(rx, 0.0, 0.0, ry, cx, cy)
    return [Subpath([EllipticArc(matrix, 0.0, math.pi), EllipticArc(matrix, math.pi, math.pi)], True)]


def _rect(x: float, y: float, w: float, h: float, rx: float | None, ry: float | None) -> list[Subpath]:
    if not (w > 0 and h > 0):
        return []
    rx, ry = min(rx or 0.0, w / 2), min(ry or 0.0, h / 2)
    if rx == 0 or ry == 0:
        corners = [(x, y), (x + w, y), (x + w, y + h), (x, y + h)]
        return [Subpath([Line(p, q) for p, q in zip(corners, [*corners[1:], corners[0]], strict=True)], True)]
    pieces: list = []
    stops: list[tuple[Vec2, Vec2, Vec2, float]] = [
        ((x + rx, y), (x + w - rx, y), (x + w - rx, y + ry), -math.pi / 2),
        ((x + w, y + ry), (x + w, y + h - ry), (x + w - rx, y + h - ry), 0.0),
        ((x + w - rx, y + h), (x + rx, y + h), (x + rx, y + h - ry), math.pi / 2),
        ((x, y + h - ry), (x, y + ry), (x + rx, y + ry), math.pi)]
    for p, q, centre, a0 in stops:
        if math.dist(p, q) > 1e-12 * (w + h):
            pieces.append(Line(p, q))
        pieces.append(EllipticArc(Matrix(rx, 0.0, 0.0, ry, *centre), a0, math.pi / 2))
    return [Subpath(pieces, True)]


def _points(node: Node) -> tuple[list[Subpath], bool]:
    text = node.attributes.get("points", "")
    numbers = [float(n) for n in NUMBER.findall(text)]
    whole = len(numbers) % 2 == 0 and not re.search(r"[^0-9eE+\-.,\s]", text)
    points = list(zip(numbers[::2], numbers[1::2], strict=False))
    if len(points) < 2:
        return [], whole
    pieces: list = [Line(p, q) for p, q in zip(points, points[1:], strict=False)]
    if node.tag == "polygon" and points[0] != points[-1]:
        pieces.append(Line(points[-1], points[0]))
    return [Subpath(pieces, node.tag == "polygon")], whole
