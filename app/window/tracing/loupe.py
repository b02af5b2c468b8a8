"""A loupe in the corner of a picture while a mark is dragged over it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPixmap

from app.look.theme import theme
from geometry.vectors import Vec2

SIZE = 170.0
"""Pixels across."""
LEAST = 6.0
"""Pixels that one point of the picture takes in the loupe, at least."""
STRONGER = 4.0
"""Times that it magnifies what the picture shows already."""


def paint_loupe(painter: QPainter, picture: QPixmap, at: Vec2, pointer: QPointF, room: QRectF, scale: float) -> None:
    """The surroundings of a place of the picture with a cross-hair on it, in the corner away from the pointer."""
    grows = max(LEAST, STRONGER * scale)
    left = 10.0 if pointer.x() > room.center().x() else room.right() - SIZE - 10.0
    top = 10.0 if pointer.y() > SIZE + 40 or abs(pointer.x() - left - SIZE / 2) > SIZE else room.bottom() - SIZE - 10.0
    box = QRectF(left, top, SIZE, SIZE)
    seen = SIZE / grows
    painter.save()
    rim = QPainterPath()
    rim.addEllipse(box)
    painter.setClipPath(rim)
    painter.fillRect(box, QColor(theme().paper))
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform, False)
    painter.drawPixmap(box, picture, QRectF(at[0] - seen / 2, at[1] - seen / 2, seen, seen))
    middle = box.center()
    for colour, wide in ((theme().panel, 3.0), (theme().spoils, 1.2)):
        painter.setPen(QPen(QColor(colour), wide))
        for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
            painter.drawLine(QPointF(middle.x() + dx * 5, middle.y() + dy * 5),
                             QPointF(middle.x() + dx * SIZE / 2, middle.y() + dy * SIZE / 2))
    painter.setClipping(False)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(QColor(theme().ink), 1.6))
    painter.drawEllipse(box)
    painter.restore()
