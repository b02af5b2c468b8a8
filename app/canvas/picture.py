"""The photo or scan behind the drawing, as one item of the scene."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmap, QTransform
from PySide6.QtWidgets import QGraphicsPixmapItem, QGraphicsScene

from geometry.layout.picture import MOST_UNPACKED, Picture

LEVEL = 1.5
"""Above the plain fills of blank and wood, below every line and opening."""


class PictureLayer:
    """Owns the item; decodes a picture only when its bytes change."""

    def __init__(self, scene: QGraphicsScene) -> None:
        self._scene = scene
        self._item: QGraphicsPixmapItem | None = None
        self._picture: Picture | None = None

    @property
    def item(self) -> QGraphicsPixmapItem | None:
        """The item in the scene while there is a picture."""
        return self._item

    def show(self, picture: Picture | None) -> None:
        """Show a picture in its place, dimmed as it asks; None shows none."""
        if picture is self._picture:
            return
        before, self._picture = self._picture, picture
        if picture is None:
            self._scene.removeItem(self._item)
            self._item = None
            return
        if self._item is None:
            self._item = QGraphicsPixmapItem()
            self._item.setZValue(LEVEL)
            self._item.setTransformationMode(Qt.TransformationMode.SmoothTransformation)
            self._item.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
            self._scene.addItem(self._item)
        if before is None or picture.jpeg is not before.jpeg:
            self._item.setPixmap(pixmap(picture.jpeg))
        self._item.setTransform(transform(picture.place))
        self._item.setOpacity(picture.opacity)
        self._item.setVisible(not picture.hidden)


def pixmap(jpeg: bytes) -> QPixmap:
    """The picture's points; an empty one when the bytes are damaged, or would be far more points than the program keeps."""
    # Here, as few layouts have a picture, and to name a kind of the toolkit takes the others time.
    from PySide6.QtCore import QBuffer
    from PySide6.QtGui import QImageReader

    data = QBuffer()
    data.setData(jpeg)
    reader = QImageReader(data, b"JPG")
    reader.setAutoTransform(False)
    size = reader.size()
    return QPixmap() if size.width() * size.height() > MOST_UNPACKED else QPixmap.fromImageReader(reader)


def transform(place: tuple[float, ...]) -> QTransform:
    """The map of a picture as Qt keeps it: columns where the layout has rows."""
    a, b, c, d, e, f, g, h, i = place
    return QTransform(a, d, g, b, e, h, c, f, i)
