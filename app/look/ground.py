"""Ground of one colour under words that change often."""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget


def cover(painter: QPainter, area: QRect | QRectF, colour: QColor | QBrush) -> None:
    """Fill a rectangle as `fillRect` does, for which the toolkit first makes the names of all gradients it knows (a hundredth of a start)."""
    painter.setBackground(colour)
    painter.eraseRect(area)


class Ground(QWidget):
    """Paints all of itself in its colour of the style sheet: what lies behind, up to the window, is not painted for a word on it.

    The sheet must give it one colour without a transparent part, which it finds in its palette, and no frame. A style
    sheet takes the toolkit's own way of saying so (`autoFillBackground`) back.
    """

    def __init__(self, parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, **more)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def paintEvent(self, event: QPaintEvent) -> None:
        cover(QPainter(self), event.rect(), self.palette().window())
