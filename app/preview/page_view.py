"""A view of one page: fitted, at full size, or as near as wanted."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPen, QTransform
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene, QGraphicsView, QStyleOptionGraphicsItem, QWidget

from app.formats.paper import Page
from app.look.scroll import steady
from app.look.theme import theme
from app.preview.page_picture import PagePicture
from app.printing.page_paint import paint_shapes
from geometry.saying import say

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

SMALLEST, LARGEST = 0.5, 60.0
"""Pixels to the mm between which the view zooms."""
STEP = 1.25
"""One press of the zoom buttons."""
MARGIN = 28
"""Pixels kept free round a fitted page."""


class PageView(QGraphicsView):
    """Drag to move, wheel to zoom about the pointer, with Shift to scroll."""

    zoomed = Signal(float)
    """pixels to the mm"""
    turned = Signal(int)
    """Page Up or Page Down: -1 or 1"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setScene(QGraphicsScene(self))
        self.setObjectName("ringed")
        # A page is fitted again at each resize: bars that came and went would resize the view without end.
        steady(self, across=True)
        self.setDragMode(QGraphicsView.DragMode.ScrollHandDrag)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setAccessibleName(say("Page as it will be printed"))
        self._item: PageItem | None = None
        self._picture: PagePicture | None = None
        self._scale = 1.0
        self._fitted = True
        self.follow_theme()

    @property
    def settled(self) -> bool:
        """Whether the page is painted at the scale on show."""
        return self._item is None or self._picture.settled

    @property
    def pixels_per_mm(self) -> float:
        return self._scale

    @property
    def full_size(self) -> float:
        """Pixels to the mm at which the page is as large on this screen as on paper, if the screen knows its size."""
        return self.logicalDpiX() / 25.4 if self.physicalDpiX() <= 0 else self.physicalDpiX() / 25.4

    def follow_theme(self) -> None:
        """Colours round the sheet; the sheet itself is always ink on white."""
        self.setBackgroundBrush(QColor(theme().paper))
        if self._item is not None:
            self._item.set_line(theme().line)

    def show_page(self, page: Page | None) -> None:
        """Show a page, or nothing; the zoom stays, a fitted page is fitted again."""
        scene = self.scene()
        if self._item is not None:
            scene.removeItem(self._item)
            self._item = None
            self._picture.stop()
            self._picture.deleteLater()
        if page is None:
            return
        self._picture = PagePicture(page, self)
        self._picture.ready.connect(self._painted)
        self._item = PageItem(page, self._picture, theme().line)
        scene.addItem(self._item)
        if self._fitted:
            self.fit()
        else:
            self._let_move(page)
            self._set_scale(self._scale)

    def _painted(self) -> None:
        self.viewport().update()

    def fit(self) -> None:
        """Show the whole page, also while the window is resized, until the next zoom."""
        self._fitted = True
        room = self.viewport().size()
        if self._item is None or room.width() < 60 or room.height() < 60:
            return
        page = self._item.page
        self.setSceneRect(QRectF(0.0, 0.0, page.width, page.height))  # nothing to scroll: all of it is seen
        self._set_scale(min((room.width() - 2 * MARGIN) / page.width, (room.height() - 2 * MARGIN) / page.height))
        self.centerOn(page.width / 2, page.height / 2)

    def zoom_full_size(self) -> None:
        """As large as on paper."""
        self.zoom(self.full_size / self._scale)

    def zoom(self, factor: float, at: QPoint | None = None) -> None:
        """Zoom about a point of the viewport, its middle without one."""
        at = self.viewport().rect().center() if at is None else at
        before = self.mapToScene(at)
        self._fitted = False
        if self._item is not None:
            self._let_move(self._item.page)
        self._set_scale(self._scale * factor)
        drift = self.mapFromScene(before) - at
        self._scroll(drift.x(), drift.y())

    def _let_move(self, page: Page) -> None:
        """Let the page be dragged about, a third of it beyond each side."""
        away = max(page.width, page.height) / 3
        self.setSceneRect(QRectF(-away, -away, page.width + 2 * away, page.height + 2 * away))

    def _set_scale(self, scale: float) -> None:
        self._scale = min(LARGEST, max(SMALLEST, scale))
        self.setTransform(QTransform.fromScale(self._scale, self._scale))
        self.zoomed.emit(self._scale)

    def _scroll(self, dx: int, dy: int) -> None:
        self.horizontalScrollBar().setValue(self.horizontalScrollBar().value() + dx)
        self.verticalScrollBar().setValue(self.verticalScrollBar().value() + dy)

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        if self._fitted:
            self.fit()

    def wheelEvent(self, event) -> None:
        delta = event.angleDelta()
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._scroll(-delta.x(), -delta.y())
        elif delta.y():
            self.zoom(1.0015 ** delta.y(), event.position().toPoint())
        event.accept()

    def keyPressEvent(self, event) -> None:
        key = event.key()
        if key in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            self.turned.emit(1 if key == Qt.Key.Key_PageDown else -1)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(STEP)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1 / STEP)
        elif key == Qt.Key.Key_0:
            self.fit()
        elif key == Qt.Key.Key_1:
            self.zoom_full_size()
        else:
            super().keyPressEvent(event)
            return
        event.accept()
