"""The drawing that is being imported, loop by loop, with the nut line and the centreline laid on it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import QWidget

from app.look.paths import painter_path
from app.look.theme import Theme
from geometry.curves import Matrix, Path
from geometry.saying import say


class ImportPreview(QWidget):
    """Loops in the frame of the head: fills say what is what, the loop in hand is drawn thick."""

    picked = Signal(int)
    """number of the loop that was clicked"""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._paths: list[tuple[QPainterPath, str]] = []
        self._open: list[QPainterPath] = []
        self._current = -1
        self._move = QTransform()
        self.setMinimumSize(300, 420)
        self.setAccessibleName(say("Preview of the drawing"))

    def sizeHint(self) -> QSize:
        return QSize(460, 560)

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._theme = theme
        self.update()

    def show_loops(self, loops: Sequence[tuple[Path, str]], open_chains: Sequence[Path], place: Matrix) -> None:
        """Show closed loops with their roles and loose chains, mapped by `place`."""
        self._paths = [(painter_path(path.mapped(place)), role) for path, role in loops]
        self._open = [painter_path(path.mapped(place)) for path in open_chains]
        self.update()

    def set_current(self, number: int) -> None:
        """Draw one loop thick."""
        self._current = number
        self.update()

    def paintEvent(self, event) -> None:
        t = self._theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(t.paper))
        box = QRectF()
        for path in [p for p, _ in self._paths] + self._open:
            box = box.united(path.boundingRect())
        if box.isEmpty():
            return
        box = box.united(QRectF(0, 0, 0.01, 0.01)).adjusted(-8, -8, 8, 8)
        scale = min(self.width() / box.width(), self.height() / box.height())
        self._move = QTransform()
        self._move.translate(self.width() / 2, self.height() / 2)
        self._move.scale(scale, -scale)
        self._move.translate(-box.center().x(), -box.center().y())
        fills = {"outline": t.wood, "slot": t.slot, "hole": t.slot, "other": t.waste}
        for i, (path, role) in enumerate(self._paths):
            ignored = role == "other"
            pen = QPen(QColor(t.focus if i == self._current else (t.dim if ignored else t.edge)),
                       2.6 if i == self._current else 1.2)
            if ignored:
                pen.setStyle(Qt.PenStyle.DashLine)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush if ignored else QColor(fills[role]))
            painter.drawPath(self._move.map(path))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(t.spoils), 1.6))
        for path in self._open:
            painter.drawPath(self._move.map(path))
        self._axes(painter)

    def _axes(self, painter: QPainter) -> None:
        t = self._theme
        origin = self._move.map(QPointF(0, 0))
        pen = QPen(QColor(t.bore), 1)
        pen.setDashPattern([10, 4, 2, 4])
        painter.setPen(pen)
        painter.drawLine(QPointF(origin.x(), 0), QPointF(origin.x(), self.height()))
        painter.setPen(QPen(QColor(t.ink), 2))
        painter.drawLine(QPointF(0, origin.y()), QPointF(self.width(), origin.y()))
        painter.setPen(QColor(t.dim))
        painter.drawText(QPointF(8, origin.y() - 5), say("nut line"))
        words = QRectF(origin.x() + 6, 2, max(60.0, self.width() - origin.x() - 10), self.height() / 2)
        painter.drawText(words, int(Qt.TextFlag.TextWordWrap), say("centreline, tip this way"))

    def mousePressEvent(self, event) -> None:
        at = self._move.inverted()[0].map(event.position())
        for i in reversed(range(len(self._paths))):
            if self._paths[i][0].contains(at):
                self.picked.emit(i)
                return
