"""One sheet of paper in a scene: white, with everything that is printed on it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from app.formats.paper import Page
from app.printing.page_paint import Shape, page_shapes, paint_shapes

SHADOW = 1.2
"""Width of the shadow under the sheet, mm."""


class PageItem(QGraphicsItem):
    """A page in scene coordinates of mm, its upper left corner at the origin, y down."""

    def __init__(self, page: Page, line: str) -> None:
        super().__init__()
        self.page = page
        self._line = QColor(line)
        self._shapes: list[Shape] = page_shapes(page)

    def set_line(self, line: str) -> None:
        """Another colour for the edge of the sheet."""
        self._line = QColor(line)
        self.update()

    def boundingRect(self) -> QRectF:
        return QRectF(-SHADOW, -SHADOW, self.page.width + 3 * SHADOW, self.page.height + 3 * SHADOW)

    def paint(self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None) -> None:
        paper = QRectF(0.0, 0.0, self.page.width, self.page.height)
        shadow = QColor(0, 0, 0, 40)
        painter.fillRect(paper.translated(SHADOW, SHADOW), shadow)
        painter.fillRect(paper, Qt.GlobalColor.white)
        pen = QPen(self._line, 0)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(paper)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_shapes(painter, self._shapes, self.page, 1.0)
