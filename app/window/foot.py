"""The foot of the window: where the hand points, one sentence, and what the layout comes to."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from app.look.elided import Elided
from app.look.ground import Ground
from app.look.plain import plain
from app.look.sizes import sizes
from geometry.checks import CheckResult, Counts
from geometry.errors import GeometryError
from geometry.saying import count, say
from geometry.units import LengthUnit, format_length

ALONE = 1.4
"""Letters this many times larger than at 100 % leave no room for a sentence between the two others."""
PACE_MS = 60
"""From a step of the hand to the words on it and on where it points: nobody reads them faster."""
WHERE = 250
"""Room kept for where the hand points, at 100 %, pixels."""


class Foot(Ground):
    """Three texts side by side; the middle one never widens the window."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent, objectName="foot")
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(18, 4, 18, 5)  # and the line above it
        self._grid.setColumnStretch(1, 1)
        self._where = Elided(self, least=10)
        self._says = Elided(self, alignment=Qt.AlignmentFlag.AlignCenter)
        # A label asks for the width of its text: a long sentence would make the window grow.
        self._says.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._pointed: tuple[tuple[float, float] | None, LengthUnit, str] = None, "mm", ""
        self._pace = QTimer(self, singleShot=True, interval=PACE_MS, timeout=self._tell_place)
        self._to_say: str | None = None
        self._refusal = ""
        self._pause = QTimer(self, singleShot=True, interval=PACE_MS, timeout=self._say_now)
        self._counts = Elided(self, least=10)
        self._counted: Counts | None = None
        """what it tells"""
        self._timer = Elided(self, least=10, accessibleName=say("Timer"))
        self._timer.hide()
        self._unkept = Elided(self, least=60, objectName="unkept")
        self._unkept.hide()
        self._grid.addWidget(self._where, 0, 0)
        self._grid.addWidget(self._unkept, 0, 2)
        self._grid.addWidget(self._timer, 0, 3)
        self._grid.addWidget(self._counts, 0, 4)
        self._grid.setHorizontalSpacing(14)
        self.follow_sizes()

    def follow_sizes(self) -> None:
        """Large letters give the sentence a row of its own."""
        self._grid.removeWidget(self._says)
        alone = sizes().factor > ALONE
        self._where.setMinimumWidth(0 if alone else sizes().soft(WHERE))
        self._grid.addWidget(self._says, *((1, 0, 1, 5) if alone else (0, 1)))

    @property
    def said(self) -> str:
        """The sentence on show, or about to be."""
        return self._says.text() if self._to_say is None else self._to_say

    saying = Signal(str)
    """a sentence has been put on show"""

    def say(self, text: str) -> None:
        """One sentence; the counts give way where it needs their room, the whole of it is its tip where that is not enough."""
        self._to_say = None
        self._says.setText(text)
        self._make_room()
        self.saying.emit(text)

    def refuse(self, text: str) -> None:
        """Why what was typed or asked for is not taken; empty when that holds no more, so that nobody looks for what was mended."""
        if text:
            self._refusal = text
            self.say(text)
        elif self._refusal and self.said == self._refusal:
            self._refusal = ""
            self.say("")

    def can(self, work: Callable[[], object]) -> bool:
        """Whether `work` could be done; where it raises GeometryError, why not is said as a refusal is."""
        try:
            work()
        except GeometryError as error:
            self.refuse(str(error))
            return False
        return True

    def follow(self, text: str) -> None:
        """A sentence that changes with the hand: it is said at an eye's pace, the last one in the end."""
        self._to_say = text
        if not self._pause.isActive():
            self._pause.start()

    def _say_now(self) -> None:
        if self._to_say is not None:
            self.say(self._to_say)

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self._make_room()

    def _make_room(self) -> None:
        """Give counts and the room kept for the place away to a sentence that is longer than its own, until there is none."""
        if sizes().factor > ALONE:
            self._counts.show()
        elif not self._says.text():
            self._counts.show()
            self._where.setMinimumWidth(sizes().soft(WHERE))
        elif self._says.sizeHint().width() > self._says.width():
            self._counts.hide()
            self._where.setMinimumWidth(0)

    def show_unkept(self, sentence: str) -> None:
        """That unsaved work cannot be kept safe, and why, for as long as it is so and not only until something else is said."""
        if sentence:
            self.say(sentence)
        self._unkept.setText(say("Unsaved work is not kept safe") if sentence else "")
        self._unkept.setToolTip(plain(sentence))
        self._unkept.setAccessibleDescription(sentence)
        self._unkept.setVisible(bool(sentence))

    def show_timer(self, text: str) -> None:
        """The timer of the job book that runs; nothing when none does."""
        self._timer.setText(text)
        self._timer.setVisible(bool(text))

    def show_place(self, at: tuple[float, float] | None, unit: LengthUnit, line: str) -> None:
        """Where the hand points in plan, mm, along from `line`; None when it is elsewhere. It is told at an eye's pace, not at each step."""
        self._pointed = at, unit, line
        if not self._pace.isActive():
            self._pace.start()

    def _tell_place(self) -> None:
        at, unit, line = self._pointed
        if at is None:
            self._where.setText("")
            return
        x, y = at
        side = say("to the treble") if x >= 0 else say("to the bass")
        end = say("from the {line}", line=line) if y >= 0 else say("behind the {line}", line=line)
        decimals, mark = (1, False) if unit == "mm" else (None, True)
        self._where.setText(f"{format_length(abs(x), unit, decimals, mark=mark)} {side} · "
                            f"{format_length(abs(y), unit, decimals, mark=mark)} {end}")

    def show_counts(self, result: CheckResult) -> None:
        """How many holes, drilling operations and pins there are."""
        counts = result.counts
        if counts == self._counted:
            return
        self._counted = counts
        words = [count(counts.holes, "{n} hole", "{n} holes"),
                 count(counts.drilling, "{n} drilling operation", "{n} drilling operations")]
        if counts.pins:
            words.append(count(counts.pins, "{n} pin", "{n} pins"))
        self._counts.setText(" · ".join(words))
