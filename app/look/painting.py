"""A display list painted by a plain widget, or into a box of one: lines and areas scaled, labels at the size of the screen."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPen, QTransform

from app.look.paths import add_mark, middle_of
from app.look.sizes import lettered
from app.look.styles import LOOKS, paint_paths, style_key
from app.look.theme import Theme
from geometry.drawing import Drawing, Label

LETTERS = 11
"""Size of the letters at 100 %, pixels."""


def _styled_paths(drawing: Drawing) -> list[tuple[QPainterPath, str]]:
    """Lines and areas of a display list with their styles, what others lie over first; labels are neither."""
    made = []
    for mark in sorted((m for m in drawing if not isinstance(m, Label)), key=lambda m: LOOKS[m.style].z):
        path = QPainterPath()
        add_mark(path, mark)
        made.append((path, style_key(mark)))
    return made


class Painting:
    """A display list made ready to be painted, mm with y up."""

    def __init__(self, drawing: Drawing = ()) -> None:
        self.drawing = drawing
        self._labels = [mark for mark in drawing if isinstance(mark, Label)]
        self._paths = _styled_paths(drawing)
        whole = QPainterPath()
        for path, _ in self._paths:
            whole.addPath(path)
        self.box = whole.boundingRect()
        self._lines_over = len({label.at[1] for label in self._labels if label.at[1] >= self.box.bottom()})
        self._asked: tuple[QTransform, float, QFont] | None = None
        self._known: list[tuple[str, QRectF, QFont]] = []
        """what was placed last, as it was asked for"""

    def paint(self, painter: QPainter, move: QTransform, theme: Theme, width: float) -> None:
        """Paint through `move` (mm to pixels); labels are kept within `width` pixels, below the upper edge and apart from each other."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_paths(painter, self._paths, move, theme)
        painter.setPen(QPen(QColor(theme.dim)))
        for text, box, font in self._placed(move, width, painter.font()):
            painter.setFont(font)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip), text)

    def over(self, font: QFont) -> float:
        """Height of the lines of words that stand above the drawing, with that font, pixels."""
        return self._lines_over * QFontMetricsF(lettered(font, LETTERS)).height()

    def lowest(self, move: QTransform, width: float, font: QFont) -> float:
        """Lower edge of the lowest label as `paint` puts them with that font, pixels; 0 without any."""
        return max((box.bottom() for _, box, _ in self._placed(move, width, font)), default=0.0)

    def _placed(self, move: QTransform, width: float, font: QFont) -> list[tuple[str, QRectF, QFont]]:
        """The words of the labels, where they come to lie and in which letters. Remembered: who lays a view asks before it is painted."""
        font = lettered(font, LETTERS)
        if self._asked == (move, width, font):
            return self._known
        metrics = QFontMetricsF(font)
        placed: list[tuple[str, QRectF, QFont]] = []
        for label in self._labels:
            at = move.map(QPointF(*middle_of(label)))
            size = metrics.size(0, label.text)
            over = size.width() / max(width - 4, 1.0)
            fits = font if over <= 1 else lettered(font, LETTERS / over)
            size = size if over <= 1 else QFontMetricsF(fits).size(0, label.text)
            left = {"left": 0.0, "middle": size.width() / 2, "right": size.width()}[label.anchor]
            box = QRectF(at.x() - left, at.y() - size.height() / 2, size.width(), size.height())
            box.moveLeft(min(max(box.left(), 1.0), max(1.0, width - box.width() - 1)))
            box.moveTop(max(box.top(), 0.0))
            while any(box.adjusted(-3, 0, 3, 0).intersects(other) for _, other, _ in placed):
                box.translate(0, size.height())
            placed.append((label.text, box, fits))
        self._asked, self._known = (QTransform(move), width, font), placed
        return placed


def paint_picture(painter: QPainter, drawing: Drawing, size: tuple[float, float], box: QRectF, theme: Theme,
                  font: QFont) -> None:
    """Paint a drawing of `size` (mm, lower left corner at the origin, y up) so that it fills `box` (pixels)."""
    move = QTransform()
    move.translate(box.left(), box.bottom())
    move.scale(box.width() / size[0], -box.height() / size[1])
    paint_paths(painter, _styled_paths(drawing), move, theme)
    painter.setFont(font)
    metrics = QFontMetricsF(font)
    for label in (m for m in drawing if isinstance(m, Label)):
        at, width = move.map(QPointF(*middle_of(label))), metrics.horizontalAdvance(label.text)
        left = at.x() - {"left": 0.0, "middle": width / 2, "right": width}[label.anchor]
        left = min(max(left, box.left()), box.right() - width)
        painter.setPen(QPen(QColor(theme.dim)))
        painter.drawText(QRectF(left, at.y() - metrics.height() / 2, width, metrics.height()),
                         int(Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextDontClip), label.text)


def focus_ring(painter: QPainter, area: QRect, theme: Theme) -> None:
    """The frame of a painted widget that has the keyboard: 2 pixels inside its border."""
    painter.setPen(QPen(QColor(theme.ring), 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(area.adjusted(1, 1, -1, -1))
