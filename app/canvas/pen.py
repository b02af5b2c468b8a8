"""The pen: a cross on the canvas that the arrow keys move, where a hand without a mouse points."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.look.sizes import sizes
from app.look.theme import theme
from geometry.vectors import Vec2

ARM, GAP = 16.0, 4.0
"""Half-length of the cross and the open middle of it at 100 %, pixels."""


class Pen(QGraphicsItem):
    """A cross with an open middle, a square about it while it is down. Keeps its size on the screen."""

    def __init__(self, scene: QGraphicsScene) -> None:
        super().__init__()
        self._down = False
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.setZValue(58)
        self.hide()
        scene.addItem(self)

    def show_at(self, at: Vec2 | None, down: bool = False) -> None:
        """Stand at a place in mm; None puts it away."""
        self.setVisible(at is not None)
        if at is not None:
            self.setPos(*at)
        if down != self._down:
            self._down = down
            self.update()

    def boundingRect(self) -> QRectF:
        reach = (ARM + 3) * sizes().factor
        return QRectF(-reach, -reach, 2 * reach, 2 * reach)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        painter.scale(sizes().factor, sizes().factor)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, width in ((theme().panel, 4.5), (theme().ring, 2.0)):
            painter.setPen(QPen(QColor(colour), width))
            for x, y in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                painter.drawLine(QPointF(x * GAP, y * GAP), QPointF(x * ARM, y * ARM))
            if self._down:
                painter.drawRect(QRectF(-GAP - 3, -GAP - 3, 2 * GAP + 6, 2 * GAP + 6))
