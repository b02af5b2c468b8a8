"""A small display list painted into a box of the screen: the pictures on cards and in dialogs."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QTransform

from app.look.paths import add_mark
from app.look.styles import LOOKS, pen_and_brush, style_key
from app.look.theme import Theme
from geometry.drawing import Drawing, Label


def paint_picture(painter: QPainter, drawing: Drawing, size: tuple[float, float], box: QRectF, theme: Theme,
                  font: QFont) -> None:
    """Paint a drawing of `size` (mm, lower left corner at the origin, y up) so that it fills `box` (pixels)."""
    move = QTransform()
    move.translate(box.left(), box.bottom())
    move.scale(box.width() / size[0], -box.height() / size[1])
    for mark in sorted((m for m in drawing if not isinstance(m, Label)), key=lambda m: LOOKS[m.style].z):
        made = QPainterPath()
        add_mark(made, mark)
        pen, brush = pen_and_brush(style_key(mark), theme, "")
        painter.setPen(pen)
        painter.setBrush(brush)
        painter.drawPath(move.map(made))
    painter.setFont(font)
    metrics = QFontMetricsF(font)
    for label in (m for m in drawing if isinstance(m, Label)):
        at, width = move.map(QPointF(*label.at)), metrics.horizontalAdvance(label.text)
        left = at.x() - {"left": 0.0, "middle": width / 2, "right": width}[label.anchor]
        left = min(max(left, box.left()), box.right() - width)
        painter.setPen(QPen(QColor(theme.dim)))
        painter.drawText(QRectF(left, at.y() - metrics.height() / 2, width, metrics.height()),
                         int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip), label.text)
