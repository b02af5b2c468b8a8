"""A display list painted by a plain widget: lines and areas scaled, labels at the size of the screen."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPen, QTransform

from app.look.paths import add_mark
from app.look.sizes import lettered
from app.look.styles import LOOKS, pen_and_brush, style_key
from app.look.theme import Theme
from geometry.drawing import Drawing, Label

LETTERS = 11
"""Size of the letters at 100 %, pixels."""


class Painting:
    """A display list made ready to be painted, mm with y up."""

    def __init__(self, drawing: Drawing = ()) -> None:
        self.drawing = drawing
        self._labels = [mark for mark in drawing if isinstance(mark, Label)]
        self._paths: list[tuple[QPainterPath, str]] = []
        whole = QPainterPath()
        lines = [mark for mark in drawing if not isinstance(mark, Label)]
        for mark in sorted(lines, key=lambda m: LOOKS[m.style].z):
            path = QPainterPath()
            add_mark(path, mark)
            whole.addPath(path)
            self._paths.append((path, style_key(mark)))
        self.box = whole.boundingRect()

    def paint(self, painter: QPainter, move: QTransform, theme: Theme, width: float) -> None:
        """Paint through `move` (mm to pixels); labels are kept within `width` pixels and apart from each other."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for path, style in self._paths:
            pen, brush = pen_and_brush(style, theme, "")
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(move.map(path))
        font = lettered(painter.font(), LETTERS)
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        painter.setPen(QPen(QColor(theme.dim)))
        taken: list[QRectF] = []
        for label in self._labels:
            at = move.map(QPointF(*label.at))
            size = metrics.size(0, label.text)
            over = size.width() / max(width - 4, 1.0)
            painter.setFont(font if over <= 1 else lettered(font, LETTERS / over))
            size = size if over <= 1 else QFontMetricsF(painter.font()).size(0, label.text)
            left = {"left": 0.0, "middle": size.width() / 2, "right": size.width()}[label.anchor]
            box = QRectF(at.x() - left, at.y() - size.height() / 2, size.width(), size.height())
            box.moveLeft(min(max(box.left(), 1.0), max(1.0, width - box.width() - 1)))
            while any(box.adjusted(-3, 0, 3, 0).intersects(other) for other in taken):
                box.translate(0, size.height())
            taken.append(box)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip), label.text)


def focus_ring(painter: QPainter, area: QRect, theme: Theme) -> None:
    """The frame of a painted widget that has the keyboard: 2 pixels inside its border."""
    painter.setPen(QPen(QColor(theme.ring), 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(area.adjusted(1, 1, -1, -1))


def fitted(box: QRectF, room: QRectF) -> QTransform:
    """From mm with y up to pixels, `box` as large as it goes into the middle of `room`."""
    scale = min(room.width() / max(box.width(), 1e-6), room.height() / max(box.height(), 1e-6))
    move = QTransform()
    move.translate(room.center().x(), room.center().y())
    move.scale(scale, -scale)
    move.translate(-box.center().x(), -box.center().y())
    return move
