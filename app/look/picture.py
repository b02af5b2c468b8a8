"""A display list as a small picture, for a question that is easier answered by looking."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap

from app.look.painting import Painting
from app.look.paths import fitted
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
    painting = Painting(tuple(mark for mark in drawing if not isinstance(mark, Label)))
    painter = QPainter(pixmap)
    room = QRectF(MARGIN, MARGIN, width - 2 * MARGIN, height - 2 * MARGIN)
    painting.paint(painter, fitted(painting.box, room), theme, width)
    painter.setPen(QColor(theme.line))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(0, 0, width - 1, height - 1))
    painter.end()
    return pixmap
