"""The job book in the middle of the window: hours, money and notes, each a table to type into."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QStackedWidget, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.flow import Flow
from app.look.paragraph import paragraph
from app.look.scroll import Scroll, Yielding
from app.look.wrapping import WrappingButton
from app.panels.book.reading_page import ReadingPage
from app.panels.forms.entry_table import PRESSED, TYPED, EntryTable, Head
from app.panels.forms.tabs import Tabs
from geometry.saying import say


class BookView(QWidget):
    """Tables and the buttons above them; it changes nothing itself."""

    wanted = Signal(str)
    """a button: "start", "stop", "drop", "hardware", "note step", "remove price", "remove note" """

    def __init__(self, readings: ReadingPage, parent: QWidget | None = None) -> None:
        super().__init__(parent, objectName="page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.hours = EntryTable(say("Hours"), (
            Head(say("Step")), Head(say("Work"), left=True, wide=True), Head(say("Planned, min")),
            Head(say("Practice", about="head of a column"), TYPED),
            Head(say("Real", about="head of a column"), TYPED),
            Head(say("Real − practice", about="head of a column")), Head(say("Timer"), PRESSED, left=True)), self)
        self.hours.setTextElideMode(Qt.TextElideMode.ElideMiddle)  # steps that begin alike end in what they are done to
        self.money = EntryTable(say("Money"), (
            Head(say("Part"), TYPED, left=True, wide=True), Head(say("Number"), TYPED), Head(say("Each"), TYPED),
            Head(say("Together"))), self)
        self.notes = EntryTable(say("Notes"), (
            Head(say("Do this differently"), TYPED, left=True, wide=True), Head(say("About"), left=True),
            Head(say("Piece"), left=True), Head(say("Seen to"), PRESSED, left=True)), self)
        self.tabs = Tabs((say("Hours"), say("Money"), say("Notes"), say("Readings")), self)
        self.readings = readings
        self._pages = QStackedWidget(self)
        self._buttons: dict[str, QPushButton] = {}
        self.add_page(self.hours, (
            ("start", say("Start the timer"), say("Time the step of the row, for the piece on the bench.")),
            ("stop", say("Stop and count"), say("Add the minutes to the step that is timed.")),
            ("drop", say("Stop without counting"), say("Forget the time that runs.")),
            ("note step", say("Note to this step…"), say("Write what to do differently at the step of the row."))),
            say("Type minutes, or 1:30, 1.5 h, 90 s: a step of the piece on the bench is ticked off with it. Enter goes down, Tab goes on, Delete strikes out minutes, and the tick of a "
                "step; Space in the last column starts or stops the timer."))
        self.add_page(self.money, (
            ("hardware", say("List the hardware"), say("Add a row for each part of the layout that is not listed "
                                                           "yet.")),
            ("remove price", say("Strike this row out"), say("The Delete key does the same."))),
            say("Type into the empty row to add a part. 12.50 and 12,50 are the same."))
        self.add_page(self.notes, (("remove note", say("Strike this note out"), say("The Delete key does the same.")),),
                      say("Type into the empty row to add a note. Ctrl+Shift+N on any stage pins one to what is held."))
        self.add_page(readings, (), "")
        self.tabs.chosen.connect(self._pages.setCurrentIndex)
        filled(QVBoxLayout(self), (self._pages, 1), margins=(18, 12, 0, 12), gap=8)

    def add_page(self, main: QWidget, buttons: tuple[tuple[str, str, str], ...], says: str) -> None:
        """A page with buttons (key, word, tip) above and a sentence below, if there are any."""
        page = QWidget(self, objectName="page")
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 6, 0)
        row = Flow(gap=6)
        for key, word, tip in buttons:
            button = WrappingButton(word, page, toolTip=tip, clicked=self._pressed)
            button.setProperty("key", key)
            self._buttons[key] = button
            row.addWidget(button)
        if buttons:
            column.addLayout(row)
        column.addWidget(Yielding(main, page) if says else main, 1)
        if says:
            words = paragraph(page, says, "dim")
            column.addWidget(words)
        self._pages.addWidget(Scroll(main.accessibleName(), self, page))

    def button(self, key: str) -> QPushButton:
        """The button of that key."""
        return self._buttons[key]

    def allow(self, keys: Mapping[str, bool]) -> None:
        """Whether these buttons can be pressed. The keyboard on one that cannot goes to the hours, not to the next button."""
        if any(not allowed and self._buttons[key].hasFocus() for key, allowed in keys.items()):
            self.hours.setFocus()
        for key, allowed in keys.items():
            self._buttons[key].setEnabled(allowed)

    def show_page(self, number: int) -> None:
        """Show hours (0), money (1), notes (2) or readings (3)."""
        self.tabs.button(number).setChecked(True)
        self._pages.setCurrentIndex(number)

    def _pressed(self) -> None:
        self.wanted.emit(self.sender().property("key"))
