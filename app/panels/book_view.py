"""The job book in the middle of the window: hours, money and notes, each a table to type into."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QLabel, QPushButton, QStackedWidget, QVBoxLayout, QWidget

from app.look.flow import Flow
from app.look.theme import Theme
from app.panels.entry_table import PRESSED, TYPED, EntryTable, Head
from app.panels.reading_page import ReadingPage
from app.panels.tabs import Tabs


class BookView(QWidget):
    """Tables and the buttons above them; it changes nothing itself."""

    wanted = Signal(str)
    """a button: "start", "stop", "drop", "hardware", "note step", "remove price", "remove note" """

    def __init__(self, theme: Theme, readings: ReadingPage, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.hours = EntryTable(self.tr("Hours"), (
            Head(self.tr("step")), Head(self.tr("work"), left=True, wide=True), Head(self.tr("planned, min")),
            Head(self.tr("practice piece"), TYPED), Head(self.tr("real piece"), TYPED), Head(self.tr("difference")),
            Head(self.tr("timer"), PRESSED, left=True)), self)
        self.money = EntryTable(self.tr("Money"), (
            Head(self.tr("part"), TYPED, left=True, wide=True), Head(self.tr("number"), TYPED), Head(self.tr("each"), TYPED),
            Head(self.tr("together"))), self)
        self.notes = EntryTable(self.tr("Notes"), (
            Head(self.tr("do this differently"), TYPED, left=True, wide=True), Head(self.tr("about"), left=True),
            Head(self.tr("piece"), left=True), Head(self.tr("seen to"), PRESSED, left=True)), self)
        self.tabs = Tabs((self.tr("Hours"), self.tr("Money"), self.tr("Notes"), self.tr("Readings")), self)
        self.readings = readings
        self._pages = QStackedWidget(self)
        self._buttons: dict[str, QPushButton] = {}
        self.add_page(self.hours, (
            ("start", self.tr("Start the timer"), self.tr("Time the step of the row, for the piece on the bench.")),
            ("stop", self.tr("Stop and count"), self.tr("Add the minutes to the step that is timed.")),
            ("drop", self.tr("Stop without counting"), self.tr("Forget the time that runs.")),
            ("note step", self.tr("Note to this step…"), self.tr("Write what to do differently at the step of the row."))),
            self.tr("Type minutes, or 1:30, 1,5 h, 90 s. Enter goes down, Tab goes on; Space in the last column starts or stops the timer."))
        self.add_page(self.money, (
            ("hardware", self.tr("List the hardware"), self.tr("Add a row for each part of the layout that is not listed yet.")),
            ("remove price", self.tr("Strike this row out"), self.tr("The Delete key does the same."))),
            self.tr("Type into the empty row to add a part. 12.50 and 12,50 are the same."))
        self.add_page(self.notes, (("remove note", self.tr("Strike this note out"), self.tr("The Delete key does the same.")),),
                      self.tr("Type into the empty row to add a note. Ctrl+Shift+N on any stage pins one to what is held."))
        self.add_page(readings, (), self.tr("Measure the finished holes with a caliper; Enter goes to the next hole. An emptied cell is struck out. On the bass side of "
                                          "the centreline x is below zero."))
        self.tabs.chosen.connect(self._pages.setCurrentIndex)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 12, 18, 12)
        column.setSpacing(8)
        column.addWidget(self._pages, 1)
        self.set_theme(theme)

    def add_page(self, main: QWidget, buttons: tuple[tuple[str, str, str], ...], says: str) -> None:
        """A page with buttons (key, word, tip) above and a sentence below."""
        page = QWidget(self)
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        row = Flow(gap=6)
        for key, word, tip in buttons:
            button = QPushButton(word, page)
            button.setToolTip(tip)
            button.setProperty("key", key)
            button.clicked.connect(self._pressed)
            self._buttons[key] = button
            row.addWidget(button)
        column.addLayout(row)
        column.addWidget(main, 1)
        words = QLabel(says, page)
        words.setObjectName("dim")
        words.setWordWrap(True)
        column.addWidget(words)
        self._pages.addWidget(page)

    def button(self, key: str) -> QPushButton:
        """The button of that key."""
        return self._buttons[key]

    def show_page(self, number: int) -> None:
        """Show hours (0), money (1), notes (2) or readings (3)."""
        self.tabs.button(number).setChecked(True)
        self._pages.setCurrentIndex(number)

    def set_theme(self, theme: Theme) -> None:
        """Other colours for what was refused."""
        for table in (self.hours, self.money, self.notes, self.readings.table):
            table.set_warning(theme.spoils)

    def _pressed(self) -> None:
        self.wanted.emit(self.sender().property("key"))
