"""The card that stands on the screen while the rooms behind it are being loaded: the program's picture, its name, the file."""

from __future__ import annotations

import time
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QRectF, QTimer
from PySide6.QtGui import QColor, QFont, QPainter, QPixmap
from PySide6.QtWidgets import QSplashScreen, QWidget

from app.look.program_sizes import png
from app.look.theme import Theme

NAME = "Pegwright"
WIDE, HIGH = 380, 132
PICTURE = 64
MOST_WAIT = 0.25
"""Seconds to wait for the screen to show the card with its words; a start never depends on it."""


class Threshold(QSplashScreen):
    """Needs nothing of the program but a picture and a set of colours, so that it can be there at once.

    For the same reason nothing it does before its first painting may need the
    toolkit's table of names, `Qt`: to load that takes longer than all the rest.
    A pen or a brush would, so frame and ground are pictures of one colour.
    """

    def __init__(self, theme: Theme, file: Path | None) -> None:
        super().__init__(_plain(WIDE, HIGH, theme.line))
        self._ground = _plain(WIDE - 2, HIGH - 2, theme.panel)
        self._theme = theme
        self._words = file.name if file is not None else ""
        self._with_words = False
        self._painted = 0
        self.setWindowTitle(NAME)
        self.setAccessibleName(f"{NAME} {self._words}".strip())

    def appear(self) -> None:
        """Show the card and see to it that it is painted before anything else is done, at last with its words.

        The first letters have the toolkit look for every font there is: the
        frame and the picture need not wait for that.
        """
        ends = time.monotonic() + MOST_WAIT
        self.show()
        self._let_paint(1, ends)
        self._with_words = True
        self.update()
        self._let_paint(self._painted + 1, ends)

    def event(self, event: QEvent) -> bool:
        """Shown as any widget is: a splash screen of the toolkit waits up to a second until it is seen."""
        if event.type() == QEvent.Type.Show:
            return QWidget.event(self, event)
        return super().event(event)

    def _let_paint(self, times: int, ends: float) -> None:
        QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
        while self._painted < times and time.monotonic() < ends:
            QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents, 10)

    def give_way(self) -> None:
        """Go once the window that opens now stands there."""
        QTimer.singleShot(0, self.close)
        QTimer.singleShot(0, self.deleteLater)

    def drawContents(self, painter: QPainter) -> None:
        """The frame, the picture, and the words when it is their turn."""
        painter.drawPixmap(1, 1, self._ground)
        picture = QPixmap(str(png(2 * PICTURE)))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawPixmap(QRectF(28, (HIGH - PICTURE) // 2, PICTURE, PICTURE), picture, QRectF(picture.rect()))
        if self._with_words:
            self._draw_words(painter)
        self._painted += 1

    def _draw_words(self, painter: QPainter) -> None:
        from PySide6.QtCore import Qt

        t, font = self._theme, QFont(self.font())
        left, wide = 28 + PICTURE + 22, WIDE - PICTURE - 22 - 28 - 20
        for text, size, colour, lower in ((NAME, 26, t.ink, -14 if self._words else 0), (self._words, 13, t.dim, 18)):
            font.setPixelSize(size)
            painter.setFont(font)
            painter.setPen(QColor(colour))
            words = painter.fontMetrics().elidedText(text, Qt.TextElideMode.ElideMiddle, wide)
            painter.drawText(QRectF(left, lower, wide, HIGH), Qt.AlignmentFlag.AlignVCenter, words)


def _plain(wide: int, high: int, colour: str) -> QPixmap:
    made = QPixmap(wide, high)
    made.fill(QColor(colour))
    return made
