"""The card that stands on the screen while the rooms behind it are being loaded: the program's picture, its name, the file."""

from __future__ import annotations

import time
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QRectF, QSize, Qt, QTimer
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QWidget

from app.look.program_sizes import png
from app.look.theme import Theme

NAME = "Pegwright"
WIDE, HIGH = 380, 132
PICTURE = 64
MOST_WAIT = 0.25
"""Seconds to wait for the screen to show the card; a start never depends on it."""


class Threshold(QWidget):
    """Needs nothing of the program but a picture and a set of colours, so that it can be there at once."""

    def __init__(self, theme: Theme, file: Path | None) -> None:
        super().__init__(None, Qt.WindowType.SplashScreen | Qt.WindowType.FramelessWindowHint)
        self._theme = theme
        self._words = file.name if file is not None else ""
        self._painted = self._worded = False
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setWindowTitle(NAME)
        self.setAccessibleName(f"{NAME} {self._words}".strip())
        self.resize(self.sizeHint())

    def sizeHint(self) -> QSize:
        return QSize(WIDE, HIGH)

    def appear(self) -> None:
        """Show the card and see to it that it is painted before anything else is done."""
        screen = QGuiApplication.primaryScreen()
        if screen is not None:
            place = self.rect()
            place.moveCenter(screen.availableGeometry().center())
            self.move(place.topLeft())
        self.show()
        ends = time.monotonic() + MOST_WAIT
        while not self._worded and time.monotonic() < ends:
            QCoreApplication.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents, 10)

    def give_way(self) -> None:
        """Go once the window that opens now stands there."""
        QTimer.singleShot(0, self.close)

    def paintEvent(self, event: QEvent) -> None:
        t, painter = self._theme, QPainter(self)
        painter.fillRect(self.rect(), QColor(t.panel))
        painter.setPen(QPen(QColor(t.line), 1))
        painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
        top = (HIGH - PICTURE) // 2
        picture = QPixmap(str(png(2 * PICTURE)))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawPixmap(QRectF(28, top, PICTURE, PICTURE), picture, QRectF(picture.rect()))
        if not self._painted:
            # The first letters have the toolkit look for every font there is: the card need not wait for that.
            self._painted = True
            QTimer.singleShot(0, self.update)
            return
        font = QFont(self.font())
        font.setPixelSize(26)
        painter.setFont(font)
        painter.setPen(QColor(t.ink))
        left, wide = 28 + PICTURE + 22, WIDE - PICTURE - 22 - 28 - 20
        middle = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(left, 0 if not self._words else -14, wide, HIGH), middle, NAME)
        if self._words:
            font.setPixelSize(13)
            painter.setFont(font)
            painter.setPen(QColor(t.dim))
            words = painter.fontMetrics().elidedText(self._words, Qt.TextElideMode.ElideMiddle, wide)
            painter.drawText(QRectF(left, 18, wide, HIGH), middle, words)
        self._worded = True
