"""A note over an edge of a part of the window: what is being worked out for it, how far that is, and what stops it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.look.elided import Elided
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.sizes import sizes
from geometry.saying import say

APPEARS_MS = 600
"""How long work goes on before it is told of: what is done by then needs no words."""
STAYS_MS = 1200
"""How long the note stays once the work is done, so that what was read is not torn away."""
PACE_MS = 250
"""From one look at how far the work is to the next."""
WIDEST, NARROWEST = 520, 320
"""At 100 %, pixels; over a part that is narrower it goes beyond that, though not beyond its host."""
EDGE = 12
"""Room that is left round the note, pixels."""


class WorkNote(QFrame):
    """Lies over its host and moves nothing there. It comes only when work takes long, or when there is something to be said
    of what was stopped; the one who owns it tells it which."""

    stopped = Signal()
    """the maker wants the work to end"""
    wanted = Signal()
    """the maker wants the work that was stopped to be done"""
    told = Signal(str)
    """a sentence that has come up, for those who hear it"""
    put_away = Signal()
    """it goes while the keyboard is in it"""

    def __init__(self, host: QWidget, over: QWidget | None = None, top: bool = False) -> None:
        """It lies over the lower edge of `over`, a child of the host, or of the host itself; over the upper one with `top`."""
        super().__init__(host, objectName="note")
        self._over, self._top = over, top
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._words, self._halted = "", False
        self._at: Callable[[], str] = str
        self.words = paragraph(self, textFormat=Qt.TextFormat.PlainText)
        self.at = Elided(self, objectName="dim")
        self.button = QPushButton(say("Stop"), self, clicked=self._pressed)
        row = filled(QHBoxLayout(), (self.at, 1), self.button)
        filled(QVBoxLayout(self), self.words, row, margins=(14, 10, 10, 10), gap=4)
        self._appears = self._timer(APPEARS_MS, self._appear)
        self._stays = self._timer(STAYS_MS, self._go)
        self._pace = self._timer(PACE_MS, self._look, once=False)
        (over or host).installEventFilter(self)
        self.hide()

    # ---- what its owner tells ---------------------------------------------
    def working(self, words: str, at: Callable[[], str]) -> None:
        """Something is being worked out: `at` says how far it is, "" where that is not known."""
        self._stays.stop()
        self._halted, self._words, self._at = False, words, at
        if not self.isHidden():
            self._show(words)
        elif not self._appears.isActive():
            self._appears.start()

    def halted(self, words: str, again: str) -> None:
        """It was stopped; `again` is the word of the button that has it done after all."""
        self._rest()
        self._halted = True
        self._show(words, again)

    def done(self, words: str) -> None:
        """It is done: a note that is on show says so for a moment."""
        if self._stays.isActive():
            return
        self._rest()
        if not self.isHidden():
            self._show(words, "")
            self._stays.start()

    def none(self) -> None:
        """There is nothing to tell of."""
        self._rest()
        self._go()

    # ---- inside -------------------------------------------------------------
    def _timer(self, milliseconds: int, slot: Callable[[], None], once: bool = True) -> QTimer:
        return QTimer(self, interval=milliseconds, singleShot=once, timeout=slot)

    def _rest(self) -> None:
        for timer in (self._appears, self._pace, self._stays):
            timer.stop()
        self._at = str

    def _appear(self) -> None:
        self._show(self._words)

    def _show(self, words: str, button: str | None = None) -> None:
        """Show the words; the button is Stop, another word, or none for ""."""
        new = self.isHidden() or words != self.words.text()
        if button == "" and self.button.hasFocus():
            self.put_away.emit()
        self.words.setText(words)
        self.setAccessibleName(words)
        self.button.setText(say("Stop") if button is None else button)
        self.button.setVisible(button != "")
        if button is None:
            self._pace.start()
        self.show()
        self._look()
        self.follow_sizes()
        if new:
            self.told.emit(words)

    def _look(self) -> None:
        """Say how far the work is now."""
        at = self._at()
        self.at.setText(at)
        self.at.setVisible(bool(at) or not self.button.isHidden())  # the button stands at the end of the line
        self.raise_()  # its host may have brought something else to the front
        self.setAccessibleDescription(at)

    def _go(self) -> None:
        if self.button.hasFocus():
            self.put_away.emit()
        self.hide()

    def _pressed(self) -> None:
        (self.wanted if self._halted else self.stopped).emit()

    def follow_sizes(self) -> None:
        """Take the room that the words need, in letters of the size in use."""
        whole = self.parentWidget().rect()
        part = whole if self._over is None else self._over.geometry()
        width = max(min(part.width() - 2 * EDGE, sizes().soft(WIDEST)), min(whole.width() - 2 * EDGE, sizes().soft(NARROWEST)))
        height = max(self.layout().totalHeightForWidth(width), self.layout().totalMinimumSize().height())
        x = min(max(part.center().x() - width // 2, whole.left() + EDGE), whole.right() + 1 - EDGE - width)
        y = part.top() + EDGE if self._top else part.bottom() + 1 - height - EDGE
        self.setGeometry(x, y, width, height)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize and not self.isHidden():
            self.follow_sizes()
        return super().eventFilter(watched, event)
