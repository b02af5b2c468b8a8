"""A drawing fitted into a small window of the panel: the section along the bore that is held."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QTransform
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.look.paths import add_mark
from app.look.styles import LOOKS, pen_and_brush, style_key
from app.look.theme import Theme
from geometry.drawing import Drawing, Label


class SectionView(QWidget):
    """Paints a display list to fit its width, y up."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._drawing: Drawing = ()
        self._box = QRectF()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Section along the bore"))

    def set_theme(self, theme: Theme) -> None:
        """Repaint in another set of colours."""
        self._theme = theme
        self.update()

    def show_drawing(self, drawing: Drawing) -> None:
        """Show a display list; an empty one hides the view."""
        if drawing == self._drawing:
            return
        self._drawing = drawing
        outline = QPainterPath()
        for mark in drawing:
            if not isinstance(mark, Label):
                add_mark(outline, mark)
        self._box = outline.boundingRect()
        self.setVisible(bool(drawing))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        if self._box.isEmpty():
            return QSize(200, 10)
        return QSize(320, self.heightForWidth(self.width() or 320))

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if self._box.isEmpty():
            return 10
        return min(250, round(self._box.height() * self._scale(width)) + 56)

    def _scale(self, width: int) -> float:
        return min((width - 12) / self._box.width(), 190 / max(self._box.height(), 1e-6))

    def paintEvent(self, event) -> None:
        if self._box.isEmpty():
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scale = self._scale(self.width())
        move = QTransform()
        move.translate(self.width() / 2, 10)
        move.scale(scale, -scale)
        move.translate(-self._box.center().x(), -self._box.bottom())
        ordered = sorted((m for m in self._drawing if not isinstance(m, Label)), key=lambda m: LOOKS[m.style].z)
        for mark in ordered:
            made = QPainterPath()
            add_mark(made, mark)
            pen, brush = pen_and_brush(style_key(mark), self._theme, "")
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(move.map(made))
        self._write(painter, move)

    def _write(self, painter: QPainter, move: QTransform) -> None:
        """Labels at their places, pushed apart when they would overlap."""
        font = QFont(self.font())
        font.setPixelSize(11)
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        painter.setPen(QPen(QColor(self._theme.dim)))
        taken: list[QRectF] = []
        for label in (m for m in self._drawing if isinstance(m, Label)):
            at = move.map(QPointF(*label.at))
            size = metrics.size(0, label.text)
            left = {"left": 0.0, "middle": size.width() / 2, "right": size.width()}[label.anchor]
            box = QRectF(at.x() - left, at.y() - size.height() / 2, size.width(), size.height())
            box.moveLeft(min(max(box.left(), 1.0), max(1.0, self.width() - box.width() - 1)))
            while any(box.adjusted(-3, 0, 3, 0).intersects(other) for other in taken):
                box.translate(0, size.height())
            taken.append(box)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip), label.text)
