"""Nodes and handles of the loop that is being shaped."""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPixmap, QTransform
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from app.look.plates import about_middle
from app.look.sizes import sizes
from app.look.theme import theme
from geometry.layout import Loop
from geometry.vectors import Vec2

REACH = 7.0
"""Half-width of the picture of a grip at 100 %, pixels."""


@lru_cache(maxsize=8)
def _picture(kind: str, held: bool, k: float, grain: float, ink: str, paper: str) -> QPixmap:
    """A node (square for a corner, round for a smooth one) or a handle (small and hollow) about its middle, in points; a held one
    is filled. To stroke it takes ten times as long as to copy its picture, and of an outline hundreds are seen."""
    made, painter = about_middle(math.ceil(REACH * k), grain)
    painter.scale(k, k)
    painter.setPen(QPen(QColor(ink), 1.4))
    painter.setBrush(QColor(ink if held else paper))
    if kind == "corner":
        painter.drawRect(QRectF(-4, -4, 8, 8))
    else:
        radius = 4.6 if kind == "smooth" else 3.2
        painter.drawEllipse(QPointF(0, 0), radius, radius)
    painter.end()
    return made


class GripLayer(QGraphicsItem):
    """The grips of one loop, which keep their size on the screen, and the arms to its handles: one item, for an item a grip takes
    longer than its painting."""

    def __init__(self, scene: QGraphicsScene) -> None:
        super().__init__()
        self._loop: Loop | None = None
        self._held: tuple[int, ...] = ()
        self._grips: list[tuple[Vec2, str, bool]] = []
        """(place, kind, whether it is held), in the order in which they are painted"""
        self._arms = QPainterPath()
        self._reach = QRectF()
        """mm that arms and middles of grips reach over"""
        self._scale = 3.0
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)  # to know what has to be painted
        self.setAcceptedMouseButtons(Qt.MouseButton.NoButton)
        self.setZValue(30)
        scene.addItem(self)

    def show_grips(self, loop: Loop | None, nodes: tuple[int, ...] = ()) -> None:
        """Show the grips of a loop, these nodes held; None shows none."""
        if loop == self._loop and nodes == self._held:
            return
        self._loop, self._held = loop, nodes
        self.prepareGeometryChange()  # paints it anew, too
        self._lay()

    def look(self, pixels_per_mm: float) -> None:
        """Stand for another zoom, or for other letters."""
        self.prepareGeometryChange()
        self._scale = pixels_per_mm

    def boundingRect(self) -> QRectF:
        if not self._grips:
            return QRectF()
        spare = math.ceil(REACH * sizes().factor) / self._scale
        return self._reach.adjusted(-spare, -spare, spare, spare)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        t, k, seen = theme(), sizes().factor, option.exposedRect
        grain = 1.0 if widget is None else widget.devicePixelRatioF()
        pen = QPen(QColor(t.focus), 1)
        pen.setCosmetic(True)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(self._arms)
        reach = math.ceil(REACH * k)
        spare = reach / self._scale
        left, right, low, high = seen.left() - spare, seen.right() + spare, seen.top() - spare, seen.bottom() + spare
        placed = painter.worldTransform()
        painter.setWorldTransform(QTransform.fromTranslate(-reach, -reach))
        pictures = {look: _picture(*look, k, grain, t.focus, t.panel) for look in {(kind, held) for _, kind, held in self._grips}}
        for (x, y), kind, held in self._grips:
            if left <= x <= right and low <= y <= high:
                painter.drawPixmap(QPointF(*placed.map(x, y)), pictures[kind, held])
        painter.setWorldTransform(placed)

    def _lay(self) -> None:
        """Put down what there is to paint."""
        self._arms, self._grips = QPainterPath(), []
        nodes = self._loop.nodes if self._loop else ()
        for i, node in enumerate(nodes):
            if node.handles is not None:
                following = nodes[(i + 1) % len(nodes)]
                for at, handle in zip((node.at, following.at), node.handles, strict=True):
                    self._arms.moveTo(*at)
                    self._arms.lineTo(*handle)
                    self._grips.append((handle, "handle", False))
        self._grips += [(node.at, "smooth" if node.smooth else "corner", i in self._held) for i, node in enumerate(nodes)]
        across, up = [at[0] for at, _, _ in self._grips], [at[1] for at, _, _ in self._grips]
        self._reach = QRectF(QPointF(min(across), min(up)), QPointF(max(across), max(up))) if nodes else QRectF()
