"""Beside the job book: which piece is on the bench, running totals, and what the next job will take."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.scroll import Scroll
from app.look.wrapping import WrappingButton
from app.panels.forms.fields import TextField
from app.panels.forms.form import Form, rule
from app.panels.forms.pieces import Pieces
from app.panels.forms.rows import FieldRow
from geometry.layout import Piece
from geometry.saying import say
from geometry.units import LengthUnit


class BookPanel(QWidget):
    """Shows sums; sends what is wanted."""

    currency_typed = Signal(object)
    wanted = Signal(str)
    """a button: "rates", "csv", "anew", "back" """

    def __init__(self, unit: LengthUnit, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        page = QWidget(self, objectName="page")
        title = QLabel(say("Job book"), self, objectName="title")
        self.pieces = Pieces(self)
        self._sums, self._next = Form(unit, self, (5, 4)), Form(unit, self, (5, 4))
        self.currency = TextField(self, accessibleName=say("Currency"), placeholderText=say("a word behind amounts"))
        self.currency.sent.connect(self.currency_typed)
        self.says = paragraph(self, name="dim")
        label = QLabel(say("Currency"), self, objectName="dim")
        label.setBuddy(self.currency)
        column = filled(QVBoxLayout(page), title, self.pieces, self._sums, label, self.currency, rule(self), self._next,
                        self.says, margins=(22, 16, 18, 14), gap=9)
        self.buttons: dict[str, QPushButton] = {}
        for key, word, tip in (
                ("rates", say("Take into the minutes of the next plan"),
                 say("The rates of the Order stage become what you found; one undo takes it back.")),
                ("csv", say("Write the job book as a table…"), say("A CSV file that a spreadsheet opens.")),
                ("anew", say("Begin this piece anew"),
                 say("Strikes out the ticks, hours, costs and readings of the piece on the bench, as for the next head of this layout. "
                     "Notes stay. Save under another name first to keep the record too.")),
                ("back", say("Take the last entry back"),
                 say("The job book has its own way back: undo of a drawing step never touches it."))):
            button = WrappingButton(word, self, toolTip=tip, clicked=self._pressed)
            button.setProperty("key", key)
            self.buttons[key] = button
            column.addWidget(button)
        column.addStretch(1)
        scroll = Scroll(say("Job book"), self, page)
        filled(QVBoxLayout(self), scroll, margins=(0, 0, 0, 0))

    def show_book(self, piece: Piece, currency: str, sums: list[tuple[str, str]], coming: list[tuple[str, str]], says: str) -> None:
        """Show which piece is on the bench, its sums, and the next estimate."""
        self.pieces.show_piece(piece)
        self.currency.show_value(currency)
        self._sums.show_rows([FieldRow(label, "fact", value) for label, value in sums])
        self._next.show_rows([FieldRow(say("The next job"), "heading"), *(FieldRow(label, "fact", value) for label, value in coming)])
        self.says.setText(says)
        self.buttons["rates"].setEnabled(bool(coming[1:]))

    def _pressed(self) -> None:
        self.wanted.emit(self.sender().property("key"))
