"""Sentences one below the other, numbered or not, and label-value pairs; widgets are kept and filled anew."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget


class Lines(QWidget):
    """Rows of (mark, words, warning): the mark stands dim at the left, "" takes its room away."""

    def __init__(self, parent: QWidget | None = None, stretch: tuple[int, int] = (0, 1)) -> None:
        super().__init__(parent)
        self._rows: tuple[tuple[str, str, bool], ...] | None = None
        self._made: list[QLabel] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(5)
        self._grid.setColumnStretch(0, stretch[0])
        self._grid.setColumnStretch(1, stretch[1])

    @property
    def rows(self) -> tuple[tuple[str, str, bool], ...]:
        """What is shown."""
        return self._rows or ()

    def show_rows(self, rows: Sequence[tuple[str, str, bool]]) -> None:
        """Show these rows; none hides the whole."""
        rows = tuple(rows)
        if rows == self._rows:
            return
        self._rows = rows
        for label in self._made:
            self._grid.removeWidget(label)
            label.hide()
            label.deleteLater()
        self._made = []
        for number, (mark, words, warn) in enumerate(rows):
            if mark:
                self._add(mark, "dim", number, 0, 1)
            self._add(words, "warning" if warn else "", number, 1 if mark else 0, 1 if mark else 2)
        self.setVisible(bool(rows))

    def _add(self, text: str, name: str, row: int, column: int, span: int) -> None:
        label = QLabel(text, self, objectName=name, wordWrap=not (name == "dim" and len(text) < 4),
                       textFormat=Qt.TextFormat.PlainText, textInteractionFlags=Qt.TextInteractionFlag.TextSelectableByMouse)
        self._grid.addWidget(label, row, column, 1, span, Qt.AlignmentFlag.AlignTop)
        self._made.append(label)


def numbered(words: Sequence[str]) -> list[tuple[str, str, bool]]:
    """Sentences with their numbers."""
    return [(f"{number}.", text, False) for number, text in enumerate(words, 1)]


def plain(words: Sequence[str]) -> list[tuple[str, str, bool]]:
    """Sentences with a dash before each."""
    return [("–", text, False) for text in words]
