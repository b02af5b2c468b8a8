"""Temporary marks above the drawing: guide lines, crosses, dimensions."""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Arc, Cubic, Line, Path, Segment
from geometry.drawing import Cross, Disc, Drawing, Label, Stroke
from geometry.drawing.shapes import rectangle, straight
from geometry.vectors import Vec2

STYLE = "dimension"

ARM = 5.0
"""Half length of a guide cross in pixels."""

LETTER = 11.0
"""Capital height of a live dimension in pixels."""


def cross(at: Vec2, mm_per_pixel: float) -> Cross:
    """A small cross at a place that was snapped to."""
    return Cross(at, ARM * mm_per_pixel, STYLE)


def line(a: Vec2, b: Vec2, style: str = STYLE) -> Drawing:
    """A straight guide; nothing when both ends are one point."""
    return (Stroke(straight(a, b), style),) if v.distance(a, b) > 1e-9 else ()


def edge(segment: Segment | None, style: str = "outline") -> Drawing:
    """A segment being drawn; nothing when it has no length."""
    if segment is None or (isinstance(segment, Line) and segment.length() <= 1e-9):
        return ()
    return (Stroke(Path((segment,)), style),)


def edges(segments: list[Line | Arc | Cubic], style: str = "outline") -> Drawing:
    """Segments end to end as one stroke."""
    return (Stroke(Path(tuple(segments)), style),) if segments else ()


def band(a: Vec2, b: Vec2) -> Drawing:
    """The rectangle pulled open to choose things."""
    if abs(a[0] - b[0]) < 1e-9 or abs(a[1] - b[1]) < 1e-9:
        return line(a, b)
    return (Stroke(rectangle(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])), STYLE),)


def ring(at: Vec2, radius: float) -> Drawing:
    """A circle round a place."""
    return (Disc(at, radius, STYLE),)


def dimension(a: Vec2, b: Vec2, text: str, mm_per_pixel: float, style: str = STYLE) -> Drawing:
    """A measured line from a to b with short bars across its ends and the text beside its middle."""
    if v.distance(a, b) <= 1e-9:
        return (cross(a, mm_per_pixel), _label(text, a, (0.0, 1.0), mm_per_pixel))
    across = v.left(v.unit(v.sub(b, a)))
    bar = ARM * mm_per_pixel
    bars = [Stroke(straight(v.along(p, across, -bar), v.along(p, across, bar)), style) for p in (a, b)]
    aside = across if across[0] > 0.2 or (abs(across[0]) <= 0.2 and across[1] > 0) else v.scale(across, -1.0)
    return (Stroke(straight(a, b), style), *bars, _label(text, v.middle(a, b), aside, mm_per_pixel))


def caption(at: Vec2, text: str, mm_per_pixel: float) -> Drawing:
    """A few words beside a point."""
    return (_label(text, at, (1.0, 0.0), mm_per_pixel),)


def _label(text: str, at: Vec2, aside: Vec2, mm_per_pixel: float) -> Label:
    gap = 8.0 * mm_per_pixel
    height = LETTER * mm_per_pixel
    anchor = "left" if aside[0] > math.sin(math.radians(10)) else "middle"
    return Label(text, (at[0] + aside[0] * gap, at[1] + aside[1] * gap - (height / 2 if anchor == "left" else 0.0)),
                 height, STYLE, anchor=anchor)
