"""A display list as a small picture, for a question that is easier answered by looking."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPixmap, QTransform

from app.look.paths import add_mark
from app.look.styles import LOOKS, pen_and_brush, style_key
from app.look.theme import Theme
from geometry.drawing import Drawing, Label

MARGIN = 8


def picture(drawing: Drawing, theme: Theme, width: int, height: int, ratio: float = 1.0) -> QPixmap:
    """The lines of a display list fitted into so many points, y up, on paper; labels are left out.

    An empty list gives empty paper. `ratio` is the number of pixels to a point.
    """
    pixmap = QPixmap(round(width * ratio), round(height * ratio))
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(QColor(theme.paper))
    marks = sorted((m for m in drawing if not isinstance(m, Label)), key=lambda m: LOOKS[m.style].z)
    paths = []
    box = QRectF()
    for mark in marks:
        path = QPainterPath()
        add_mark(path, mark)
        paths.append((path, style_key(mark)))
        box = box.united(path.boundingRect())
    scale = min((width - 2 * MARGIN) / max(box.width(), 1e-6), (height - 2 * MARGIN) / max(box.height(), 1e-6))
    move = QTransform()
    move.translate(width / 2, height / 2)
    move.scale(scale, -scale)
    move.translate(-box.center().x(), -box.center().y())
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for path, style in paths:
        pen, brush = pen_and_brush(style, theme, "")
        painter.setPen(pen)
        painter.setBrush(brush)
        painter.drawPath(move.map(path))
    painter.setPen(QColor(theme.line))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(0, 0, width - 1, height - 1))
    painter.end()
    return pixmap
