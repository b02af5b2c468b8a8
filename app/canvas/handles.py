"""Nodes and handles of the loop that is being shaped."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen
from PySide6.QtWidgets import QGraphicsItem, QGraphicsPathItem, QGraphicsScene

from app.look.sizes import sizes
from app.look.theme import Theme
from geometry.layout import Loop


class Grip(QGraphicsItem):
    """A node (square for a corner, round for a smooth one) or a handle (small and hollow)."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._kind = "corner"
        self._held = False
        self._size = sizes().factor
        self._dress()
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemIgnoresTransformations)
        self.setZValue(30)

    def set_look(self, kind: str, held: bool, theme: Theme) -> None:
        """kind is corner, smooth or handle."""
        if (kind, held, theme) != (self._kind, self._held, self._theme):
            self._kind, self._held, self._theme = kind, held, theme
            self._dress()
            self.update()

    def _dress(self) -> None:
        """Pen and fill: hundreds of nodes are painted in one frame."""
        ink = QColor(self._theme.focus)
        self._pen, self._fill = QPen(ink, 1.4), QBrush(ink if self._held else QColor(self._theme.panel))

    def follow_sizes(self) -> None:
        """As large as the letters ask for."""
        self.prepareGeometryChange()
        self._size = sizes().factor
        self.update()

    def boundingRect(self) -> QRectF:
        reach = 7 * self._size
        return QRectF(-reach, -reach, 2 * reach, 2 * reach)

    def paint(self, painter: QPainter, option, widget=None) -> None:
        painter.scale(self._size, self._size)
        painter.setPen(self._pen)
        painter.setBrush(self._fill)
        if self._kind == "corner":
            painter.drawRect(QRectF(-4, -4, 8, 8))
        elif self._kind == "smooth":
            painter.drawEllipse(QPointF(0, 0), 4.6, 4.6)
        else:
            painter.drawEllipse(QPointF(0, 0), 3.2, 3.2)


class GripLayer:
    """Owns the grips of one loop."""

    def __init__(self, scene: QGraphicsScene, theme: Theme) -> None:
        self._scene = scene
        self._theme = theme
        self._grips: list[Grip] = []
        self._arms = QGraphicsPathItem()
        self._arms.setZValue(29)
        scene.addItem(self._arms)
        self._loop: Loop | None = None
        self._held: tuple[int, ...] = ()
        self.set_theme(theme)

    def show(self, loop: Loop | None, nodes: tuple[int, ...] = ()) -> None:
        """Show the grips of a loop, these nodes held; None shows none."""
        if loop == self._loop and nodes == self._held:
            return
        self._loop, self._held = loop, nodes
        self._lay()

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._theme = theme
        pen = QPen(QColor(theme.focus), 1)
        pen.setCosmetic(True)
        self._arms.setPen(pen)
        self._lay()

    def follow_sizes(self) -> None:
        """Grips as large as the letters ask for."""
        for grip in self._grips:
            grip.follow_sizes()

    def _lay(self) -> None:
        wanted: list[tuple[tuple[float, float], str, bool]] = []
        arms = QPainterPath()
        nodes = self._loop.nodes if self._loop else ()
        for i, node in enumerate(nodes):
            if node.handles is not None:
                following = nodes[(i + 1) % len(nodes)]
                for at, handle in ((node.at, node.handles[0]), (following.at, node.handles[1])):
                    arms.moveTo(*at)
                    arms.lineTo(*handle)
                    wanted.append((handle, "handle", False))
        wanted += [(node.at, "smooth" if node.smooth else "corner", i in self._held) for i, node in enumerate(nodes)]
        self._arms.setPath(arms)
        while len(self._grips) > len(wanted):
            self._scene.removeItem(self._grips.pop())
        while len(self._grips) < len(wanted):
            grip = Grip(self._theme)
            self._scene.addItem(grip)
            self._grips.append(grip)
        for grip, (at, kind, held) in zip(self._grips, wanted, strict=True):
            grip.set_look(kind, held, self._theme)
            grip.setPos(*at)
