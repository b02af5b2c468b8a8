"""A drawing fitted into a small window of the panel: the section along the bore that is held."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QTransform
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.look.painting import Painting
from app.look.signs import paint_sign
from app.look.sizes import px
from app.look.theme import theme
from geometry.drawing import Drawing
from geometry.drawing.section_snags import Signs
from geometry.saying import say

TALLEST = 190
"""Height of a drawing at most, at 100 %, pixels: large letters want a large drawing."""
OVER = 16
"""Room over a drawing at least, at 100 %, pixels."""
NARROWEST = 100
"""Pixels: no panel is as narrow, but layouts ask how high it would be."""


class SectionView(QWidget):
    """Paints a display list to fit its width, y up; `room_below` pixels at 100 % are kept for words under it, or more where they go lower."""

    def __init__(self, parent: QWidget | None = None, room_below: int = 56) -> None:
        super().__init__(parent)
        self._room_below = room_below
        self._drawing: Drawing = ()
        self._signs: Signs = ()
        self._painting = Painting()
        self._box = QRectF()
        self._least = 0
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(say("Section along the bore"))

    def show_drawing(self, drawing: Drawing, signs: Signs = (), moving: bool = False) -> None:
        """Show a display list and the snags in it; an empty list hides the view.

        One that is `moving` takes no less room than the one before: else all below it would go up and down with a drag.
        """
        least = self.height() if moving and drawing and self._drawing else 0
        if drawing == self._drawing and signs == self._signs and least == self._least:
            return
        before = self.heightForWidth(self.width())
        self._drawing, self._signs, self._least = drawing, signs, least
        self._painting = Painting(drawing)
        self._box = self._painting.box
        self.setVisible(bool(drawing))
        if self.heightForWidth(self.width()) != before:
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
        width = max(width, NARROWEST)
        words = math.ceil(self._painting.lowest(self._move(width), width, self.font()))
        below = px(self._room_below) - px(OVER)
        return max(self._least, round(self._top() + self._box.height() * self._scale(width)) + below, words)

    def follow_sizes(self) -> None:
        """Room for the words at the size in use."""
        self.updateGeometry()

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()  # else what lays it keeps to the height that it asked for at the width before

    def _top(self) -> float:
        """Where the drawing begins, pixels: there is room for the words above it."""
        return max(px(OVER), self._painting.over(self.font()))

    def _scale(self, width: int) -> float:
        return min((width - 12) / self._box.width(), px(TALLEST) / max(self._box.height(), 1e-6))

    def _move(self, width: int) -> QTransform:
        """From mm to pixels of a view so wide."""
        scale = self._scale(width)
        move = QTransform()
        move.translate(width / 2, self._top())
        move.scale(scale, -scale)
        return move.translate(-self._box.center().x(), -self._box.bottom())

    def paintEvent(self, event) -> None:
        if self._box.isEmpty():
            return
        painter = QPainter(self)
        move = self._move(self.width())
        self._painting.paint(painter, move, theme(), self.width())
        for at, grade in self._signs:
            place, far = move.map(QPointF(*at)), px(12)
            seen = self.rect().adjusted(far, far, -far, -far).contains(place.toPoint())  # no half signs
            if seen and self._box.adjusted(-4, -4, 4, 4).contains(QPointF(*at)):
                self._ring(painter, place, grade)

    def _ring(self, painter: QPainter, at: QPointF, grade: str) -> None:
        colour = QColor(theme().spoils if grade == "spoils the work" else theme().tight)
        painter.setPen(QPen(colour, 1.8))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawEllipse(at, px(9), px(9))
        paint_sign(painter, at + QPointF(px(7), -px(7)), grade, px(4), colour)
