"""Signs of the grades by shape, so that colour is never the only sign."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPolygonF


@lru_cache(maxsize=64)
def sign_path(grade: str, size: float) -> QPainterPath:
    """A filled sign of half-width `size` pixels about the origin; to be painted, not to be changed.

    spoils the work: a disc with a slanted gap; tight: a diamond; note: a ring.
    """
    made = QPainterPath()
    if grade == "spoils the work":
        made.addEllipse(QPointF(0, 0), size, size)
        gap = QPolygonF([QPointF(-size, size * 0.55), QPointF(-size * 0.55, size), QPointF(size, -size * 0.55),
                         QPointF(size * 0.55, -size)])
        cut = QPainterPath()
        cut.addPolygon(gap)
        cut.closeSubpath()
        return made.subtracted(cut)
    if grade == "tight":
        made.addPolygon(QPolygonF([QPointF(0, -size), QPointF(size, 0), QPointF(0, size), QPointF(-size, 0)]))
        made.closeSubpath()
        return made
    made.addEllipse(QRectF(-size, -size, 2 * size, 2 * size))
    inner = size * 0.6
    made.addEllipse(QRectF(-inner, -inner, 2 * inner, 2 * inner))
    return made


def paint_sign(painter: QPainter, at: QPointF, grade: str, size: float, colour: str | QColor) -> None:
    """Paint the sign of a grade about a point. The painter has no pen then, and the colour as its brush."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    painter.drawPath(sign_path(grade, size).translated(at))
