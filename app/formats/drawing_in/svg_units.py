"""Lengths and viewports of SVG: how large one user unit is, and how a viewBox is laid into its place."""

from __future__ import annotations

import math
import re

from msgspec import Struct

from app.formats.drawing_in.svg_references import NUMBER
from app.formats.drawing_in.svg_tree import Node
from app.formats.drawing_in.units import MM, NINETIETH, Unit
from geometry.curves import Matrix

_LENGTH = re.compile(r"([-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?)\s*([A-Za-z]+|%)?$")
_ABSOLUTE = {"": "px", "px": "px", "mm": "mm", "cm": "cm", "in": "inch", "pt": "pt", "pc": "pc", "q": "Q"}
SHEETS = ((148.0, 210.0), (210.0, 297.0), (297.0, 420.0), (215.9, 279.4), (215.9, 355.6), (279.4, 431.8))
"""A5, A4 and A3 (ISO 216), and 8.5 x 11, 8.5 x 14 and 11 x 17 inch, mm"""
SHEET_OFF = 1.0
"""Units by which the sides of a page are rounded"""
_FONT_SIZE = 16.0
"""User units per em when no font is known (the usual initial value in CSS)."""


def length(text: str | None, whole: float, default: float = 0.0) -> float:
    """A length in user units; a percentage is of `whole`. The default for what is missing or not understood."""
    found = _LENGTH.match(text.strip()) if text else None
    if found is None:
        return default
    value, unit = float(found.group(1)), (found.group(2) or "").lower()
    if unit == "%":
        value *= whole / 100
    elif unit in ("em", "rem"):
        value *= _FONT_SIZE
    elif unit in ("ex", "ch"):
        value *= _FONT_SIZE / 2
    elif unit in _ABSOLUTE:
        value *= MM[_ABSOLUTE[unit]] / MM["px"] if unit else 1.0
    else:
        return default
    return value if math.isfinite(value) else default


class Viewport(Struct, frozen=True):
    """The size in user units to which percentages refer."""

    width: float
    height: float

    @property
    def diagonal(self) -> float:
        """The reference for lengths that are neither across nor down."""
        return math.hypot(self.width, self.height) / math.sqrt(2)


def view_box(node: Node) -> tuple[float, float, float, float] | None:
    """(x, y, width, height) of the viewBox, or None when it is missing or useless."""
    numbers = NUMBER.findall(node.get("viewBox") or "")
    if len(numbers) != 4:
        return None
    x, y, w, h = (float(n) for n in numbers)
    return (x, y, w, h) if w > 0 and h > 0 and all(map(math.isfinite, (x, y, w, h))) else None


def fitted(node: Node, width: float, height: float) -> tuple[Matrix, Viewport]:
    """The map from the user units inside a viewport of this size to those outside, and the inner viewport."""
    box = view_box(node)
    if box is None:
        return Matrix(), Viewport(width, height)
    x, y, w, h = box
    kx, ky = width / w, height / h
    words = (node.get("preserveAspectRatio") or "xMidYMid").split()
    if words and words[0] == "defer":
        words = words[1:]
    align = words[0] if words else "xMidYMid"
    if align != "none":
        kx = ky = max(kx, ky) if "slice" in words else min(kx, ky)
    spare_x, spare_y = width - w * kx, height - h * ky
    part = {"Min": 0.0, "Mid": 0.5, "Max": 1.0}
    dx = 0.0 if align == "none" else spare_x * part.get(align[1:4], 0.5)
    dy = 0.0 if align == "none" else spare_y * part.get(align[5:8], 0.5)
    return Matrix(kx, 0.0, 0.0, ky, dx - x * kx, dy - y * ky), Viewport(w, h)


class Page(Struct, frozen=True):
    """The root of a drawing."""

    to_up: Matrix
    """from user units (y down) to the same units with y up, evened out where the file stretches them unevenly"""
    viewport: Viewport
    unit: Unit | None
    """what the file itself says; None when it gives no size"""

    @property
    def likeliest(self) -> str:
        """The unit of a page without a size: pt or 1/90 inch where that makes it a usual sheet, else px."""
        sides = sorted((self.viewport.width, self.viewport.height))
        return next((name for name in ("pt", NINETIETH) if any(
            max(abs(a - b / MM[name]) for a, b in zip(sides, sheet, strict=True)) <= SHEET_OFF for sheet in SHEETS)), "px")


def page(root: Node) -> Page:
    """How the root's user units relate to millimetres: 96 px to the inch unless the file states a size."""
    width, width_unit = _stated(root.get("width"))
    height, height_unit = _stated(root.get("height"))
    box = view_box(root)
    name = width_unit or height_unit
    x, y, w, h = box if box is not None else (0.0, 0.0, width or 0.0, height or 0.0)
    kx = ky = 1.0
    if box is not None and width is not None and height is not None:
        matrix, _ = fitted(root, width, height)
        kx, ky = matrix.a, matrix.d
    elif box is not None and width is not None:
        kx = ky = width / w
    elif box is not None and height is not None:
        kx = ky = height / h
    even = ky / kx
    # Points of a screen at their own size are no length: programs write 72, 90 or 96 of them to the inch.
    points = math.isclose(kx, 1.0, rel_tol=1e-3)
    unit = None if name is None or name == "px" and points else Unit("px" if points else name, "file", MM["px"] * kx)
    return Page(Matrix(1.0, 0.0, 0.0, -even, -x, (y + h) * even), Viewport(w or 100.0, h or 100.0), unit)


def _stated(text: str | None) -> tuple[float | None, str | None]:
    """(px, unit name) of a root's width or height when it is an absolute size above zero."""
    found = _LENGTH.match(text.strip()) if text else None
    if found is None or (found.group(2) or "").lower() not in _ABSOLUTE:
        return None, None
    value = length(text, 0.0)
    return (value, _ABSOLUTE[(found.group(2) or "").lower()]) if value > 0 else (None, None)
