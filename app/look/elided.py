"""A label that gives way: where there is no room its text ends in dots, and the whole of it is its tip."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.look.plain import plain


class Elided(QLabel):
    """Never asks for more than `least` letters; grows up to its text. It has no ground or frame of its own."""

    def __init__(self, parent: QWidget | None = None, least: int = 6, **more) -> None:
        super().__init__(parent, **more)
        self._least = least
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def setText(self, text: str) -> None:
        if text == self.text():
            return
        super().setText(text)
        self.setToolTip(plain(text))

    def sizeHint(self) -> QSize:
        # One pixel more than the words: a text as wide as its label is never shortened by rounding.
        margins = self.contentsMargins()
        return QSize(self.fontMetrics().horizontalAdvance(self.text()) + margins.left() + margins.right() + 2,
                     super().sizeHint().height())

    def minimumSizeHint(self) -> QSize:
        least = self.fontMetrics().averageCharWidth() * self._least
        return QSize(min(least, self.sizeHint().width()), super().minimumSizeHint().height())

    @property
    def shown(self) -> str:
        """What there is room for."""
        return self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, self.contentsRect().width())

    def paintEvent(self, event) -> None:
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.drawText(self.contentsRect(), int(self.alignment()), self.shown)
