"""Pictures of shapes that stay where they are while something else is dragged over them."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmapCache
from PySide6.QtWidgets import QGraphicsItem, QGraphicsPathItem

ROOM = 65536
"""KiB that all pictures together may take; the least used are made again when they are needed."""
_DRAWN, _PICTURED = QGraphicsItem.CacheMode.NoCache, QGraphicsItem.CacheMode.DeviceCoordinateCache


class Kept:
    """Lets filled shapes keep a picture of themselves while a drag goes on: to copy it is quicker than to fill and stroke."""

    def __init__(self) -> None:
        self._pictured: set[QGraphicsPathItem] = set()
        self._on = False

    @property
    def items(self) -> frozenset[QGraphicsPathItem]:
        """The shapes that are painted from pictures now."""
        return frozenset(self._pictured)

    def begin(self, lines: Iterable[QGraphicsPathItem], whole: bool) -> None:
        """A drag begins. Only on a screen of `whole` pixels to a point: elsewhere a picture lies a part of a pixel beside."""
        if self._on or not whole:
            return
        self._on = True
        QPixmapCache.setCacheLimit(max(ROOM, QPixmapCache.cacheLimit()))
        self._pictured = {item for item in lines if item.brush().style() != Qt.BrushStyle.NoBrush}
        for item in self._pictured:
            item.setCacheMode(_PICTURED)

    def draw(self, items: Iterable[QGraphicsPathItem]) -> None:
        """These change with the drag: a picture of them would be made anew for each frame."""
        for item in self._pictured.intersection(items):
            item.setCacheMode(_DRAWN)
            self._pictured.discard(item)

    def end(self) -> None:
        """The drag is over: the pictures take no more room."""
        self._on = False
        for item in self._pictured:
            item.setCacheMode(_DRAWN)
        self._pictured = set()
