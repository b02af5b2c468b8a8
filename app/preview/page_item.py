"""One sheet of paper in a scene: white, with everything that is printed on it."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from app.formats.paper import Page
from app.preview.page_picture import PagePicture
from app.printing.page_paint import paint_shapes

SHADOW = 1.2
"""Width of the shadow under the sheet, mm."""
PICTURED = 8.0
"""Pixels to the mm up to which a picture of the whole page is painted: beyond it would be very large, and little of it is seen."""


class PageItem(QGraphicsItem):
    """A page in scene coordinates of mm, its upper left corner at the origin, y down."""

    def __init__(self, page: Page, picture: PagePicture, line: str) -> None:
        super().__init__()
        self.page = page
        self._picture = picture
        self._line = QColor(line)

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
        scale = painter.worldTransform().m11()
        if scale <= PICTURED:
            self._paint_picture(painter, scale, paper)
        else:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            paint_shapes(painter, self._picture.shapes, self.page, 1.0)

    def _paint_picture(self, painter: QPainter, scale: float, paper: QRectF) -> None:
        """The picture point for point; until there is one at this scale, the one of before stretched."""
        picture, ratio = self._picture, painter.device().devicePixelRatioF()
        picture.want(scale * ratio)
        if picture.image is None:
            return
        if picture.scale != scale * ratio:
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            size = picture.image.deviceIndependentSize()
            painter.drawImage(QRectF(QPointF(), size / picture.scale * picture.image.devicePixelRatio()), picture.image)
            return
        corner = painter.worldTransform().map(paper.topLeft()) * ratio
        painter.save()
        painter.resetTransform()
        picture.image.setDevicePixelRatio(ratio)
        painter.drawImage(QPointF(round(corner.x()) / ratio, round(corner.y()) / ratio), picture.image)
        painter.restore()
