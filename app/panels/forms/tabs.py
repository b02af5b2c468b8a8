"""A few words side by side of which one is chosen: what the part of the panel below shows."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QPushButton, QWidget

from app.look.flow import Flow


class Tabs(QWidget):
    """Sends the number of the word that is chosen; the first one is at the start."""

    chosen = Signal(int)

    def __init__(self, words: tuple[str, ...], parent: QWidget | None = None, **more) -> None:
        super().__init__(parent, **more)
        self._group = QButtonGroup(self, exclusive=True)
        row = Flow(self, gap=2)
        for number, word in enumerate(words):
            button = QPushButton(word, self, objectName="stage", checkable=True, checked=number == 0)
            self._group.addButton(button, number)
            row.addWidget(button)
        self._group.idClicked.connect(self.chosen)

    def button(self, number: int) -> QPushButton:
        """The button of a word."""
        return self._group.button(number)
