"""Pictures of shapes that stay where they are while something else is dragged over them."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtGui import QPixmapCache
from PySide6.QtWidgets import QGraphicsItem, QGraphicsPathItem

ROOM = 65536
"""KiB that all pictures together may take; the least used are made again when they are needed."""
MANY = 16
"""Pieces of a line from which it is pictured as a filled shape is: an outline is stroked whole for each part of it."""
REST = 4
"""How often others change before what changed its shape once is pictured again: four frames, or fewer where snags come and go."""
_DRAWN, _PICTURED = QGraphicsItem.CacheMode.NoCache, QGraphicsItem.CacheMode.DeviceCoordinateCache


class Kept:
    """Lets what takes long to paint keep a picture of itself while a drag goes on: to copy it is quicker than to fill and stroke."""

    def __init__(self) -> None:
        self._pictured: set[QGraphicsPathItem] = set()
        self._resting: dict[QGraphicsPathItem, int] = {}
        """what changed its shape lately, and how often others have changed since"""
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
        for item in lines:
            self._picture(item)

    def draw(self, items: Iterable[QGraphicsPathItem]) -> None:
        """These change their shape with the drag: a picture of what changes in each frame would be made anew for each.

        What has not changed for some frames is pictured again. What only takes another colour on the way keeps its
        picture, which is painted once in the new colour: it is long until it takes the next.
        """
        if not self._on:
            return
        for item in items:
            if item in self._pictured:
                item.setCacheMode(_DRAWN)
                self._pictured.discard(item)
            self._resting[item] = 0
        for item, rest in list(self._resting.items()):
            if item.scene() is None:
                del self._resting[item]
            elif rest < REST:
                self._resting[item] = rest + 1
            else:
                del self._resting[item]
                self._picture(item)

    def end(self) -> None:
        """The drag is over: the pictures take no more room."""
        self._on = False
        for item in self._pictured:
            item.setCacheMode(_DRAWN)
        self._pictured, self._resting = set(), {}

    def _picture(self, item: QGraphicsPathItem) -> None:
        if item.brush().style() != Qt.BrushStyle.NoBrush or item.path().elementCount() > MANY:
            item.setCacheMode(_PICTURED)
            self._pictured.add(item)
