"""How the patches of the solid view look: wood as glass, in the colours of the theme."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QPolygonF, QTransform

from app.look.styles import pen_and_brush
from app.look.theme import Theme
from geometry.drawing.turning import Patch

FILLS = {"solid wood": 1.0, "solid wall": 0.30, "solid slot wall": 0.75, "solid slope": 0.75, "solid face": 0.34}
"""Opacity of each kind of wood surface."""
HOLLOW = {"post bore": 0.5, "pin hole": 0.5, "hole": 0.5, "hole that is there": 0.5, "locating pin hole": 0.5, "screw pilot": 0.5}
"""Opacity of bores that the drawings fill with paper: in glass they are paler."""
EDGES = {"solid edge": ("edge", 1.5, ()), "solid far edge": ("dim", 0.8, (2.0, 3.0))}
"""(theme colour, width in pixels, dash) of each kind of edge."""


def paint(painter: QPainter, patch: Patch, move: QTransform, theme: Theme, state: str) -> None:
    """Paint one patch; `state` is that of its owner, as in styles.pen_and_brush."""
    pen, brush = _pen_and_brush(patch.style, patch.tone, theme, state)
    painter.setPen(pen)
    painter.setBrush(brush)
    points = move.map(_polygon(patch.points))
    if patch.line:
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolyline(points)
    elif patch.openings:
        path = QPainterPath()
        for ring in (points, *(move.map(_polygon(opening)) for opening in patch.openings)):
            path.addPolygon(ring)
            path.closeSubpath()
        painter.drawPath(path)
    else:
        painter.drawPolygon(points, Qt.FillRule.WindingFill)


def _polygon(points: np.ndarray) -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in points.tolist()])


@lru_cache(maxsize=512)
def _pen_and_brush(style: str, tone: float, theme: Theme, state: str) -> tuple[QPen, QBrush]:
    if style in FILLS:
        colour = mixed(theme.wood, theme.ink if theme.name == "day" else theme.paper, 0.42 * tone)
        colour.setAlphaF(FILLS[style])
        return QPen(Qt.PenStyle.NoPen), QBrush(colour)
    if style == "solid sky":
        return QPen(Qt.PenStyle.NoPen), QBrush(QColor(theme.paper))
    if style in EDGES:
        name, width, dash = EDGES[style]
        if state.startswith(("spoils", "tight")):
            name = "spoils" if state.startswith("spoils") else "tight"
        pen = QPen(QColor(getattr(theme, name)), width + (1.2 if state.endswith("held") else 0.0))
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if dash:
            pen.setDashPattern(dash)
        return pen, QBrush(Qt.BrushStyle.NoBrush)
    pen, brush = pen_and_brush(style, theme, state)
    if style in HOLLOW:
        tint = QColor(brush.color())
        tint.setAlphaF(HOLLOW[style])
        brush = QBrush(tint)
    return pen, brush


def mixed(one: str, two: str, share: float) -> QColor:
    """Two colours mixed: `share` 0 gives the first, 1 the second."""
    a, b = QColor(one), QColor(two)
    return QColor.fromRgbF(*(x + (y - x) * share for x, y in
                             zip(a.getRgbF()[:3], b.getRgbF()[:3], strict=True)))
