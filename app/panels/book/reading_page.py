"""Readings of the finished piece: a table to fill, and beside it what they say."""

from __future__ import annotations

from collections.abc import Hashable, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.look.choice import Choice
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.sizes import px, sizes
from app.look.wrapping import WrappingButton
from app.panels.book.reading_rows import WAYS, Way
from app.panels.forms.entry_table import TYPED, EntryTable, Head
from geometry.saying import say

MOST = 16777215
"""No limit to a width, as the toolkit has it."""
WIDE, TABLE = 300, 420
"""Width of what the readings say, and of the table that has room beside it, at 100 %, pixels."""


class ReadingPage(QWidget):
    """One way of measuring at a time, hole after hole, as it is done at the bench."""

    way_chosen = Signal()
    wanted = Signal(str)
    """a button: "accuracy", "printer" """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent, accessibleName=say("Readings"))
        self.ways = Choice(self, choices=[(way, way.words) for way in WAYS], accessibleName=say("What is measured"),
                           maxVisibleItems=len(WAYS), minimumContentsLength=12,
                           sizeAdjustPolicy=Choice.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.ways.currentTextChanged.connect(self.ways.setToolTip)
        self.ways.activated.connect(self.way_chosen)
        self.table = EntryTable(say("Readings"), (
            Head(say("Hole"), left=True, wide=True), Head(say("Planned")), Head(say("Measured"), TYPED),
            Head(say("Off"))), self)
        left = filled(QVBoxLayout(), self.ways, (self.table, 1))
        self._says = paragraph(self, alignment=Qt.AlignmentFlag.AlignTop,
                               textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse,
                               textFormat=Qt.TextFormat.PlainText)
        scroll = Scroll(say("What the readings say"), self, self._says)
        self._says.setObjectName("words")
        scroll.setMinimumHeight(px(50))
        self._side = QWidget(self)
        self._pressed_row = QVBoxLayout()
        self.buttons: dict[str, QPushButton] = {}
        for key, word in (("accuracy", say("Take into the shop accuracy")), ("printer", say("Correct a printer…"))):
            button = WrappingButton(word, self, clicked=self._pressed)
            button.setProperty("key", key)
            self.buttons[key] = button
            self._pressed_row.addWidget(button)
        self._right = filled(QVBoxLayout(self._side), (scroll, 1), self._pressed_row)
        self._both = filled(QHBoxLayout(self), (left, 3), (self._side, 2), margins=(0, 0, 0, 0))
        self.follow_sizes()

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.follow_sizes()

    def follow_sizes(self) -> None:
        """Lay what the readings say beside the table, or below it where the table would show neither hole nor plan."""
        below = self.width() < sizes().soft(WIDE) + px(TABLE)
        ways = QBoxLayout.Direction
        self._both.setDirection(ways.TopToBottom if below else ways.LeftToRight)
        self._pressed_row.setDirection(ways.LeftToRight if below else ways.TopToBottom)
        self._right.setContentsMargins(0, 0, 0, 0) if below else self._right.unsetContentsMargins()
        self._side.setMinimumWidth(0 if below else sizes().soft(WIDE))
        self._side.setMaximumWidth(MOST if below else sizes().soft(WIDE))

    @property
    def way(self) -> Way:
        """What is being measured."""
        return self.ways.currentData()

    @property
    def said(self) -> str:
        """What the readings say, as it is shown."""
        return self._says.text()

    def show_readings(self, cells: list[tuple[str, ...]], sentences: list[str], enough: bool, keys: Sequence[Hashable] = (),
                      of: Hashable = None) -> None:
        """Show rows and what they come to; `keys` and `of` as EntryTable.show_rows."""
        self.table.show_rows(cells, keys=keys, of=of)
        self._says.setText("\n\n".join(sentences))
        self.buttons["accuracy"].setEnabled(enough)

    def _pressed(self) -> None:
        self.wanted.emit(self.sender().property("key"))
