"""A button whose words go on in another row where there is no room for them in one."""

from __future__ import annotations

import re

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QPushButton, QSizePolicy, QWidget


class WrappingButton(QPushButton):
    """As wide as its words where it can be, never narrower than its longest word."""

    words = ""
    """Until they are set: the toolkit may ask for the size while the button is being made."""

    def __init__(self, words: str, parent: QWidget | None = None) -> None:
        super().__init__(words, parent)
        self.words = words
        self.setAccessibleName(_unmarked(words))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def set_words(self, words: str) -> None:
        """Other words."""
        self.words = words
        self.setAccessibleName(_unmarked(words))
        self._break()
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return self._around(self.fontMetrics().size(0, self.words).width(), self.text().count("\n") + 1)

    def minimumSizeHint(self) -> QSize:
        longest = max(self.fontMetrics().horizontalAdvance(word) for word in self.words.split() or ("",))
        return self._around(longest, self.text().count("\n") + 1)

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self._break()

    def follow_sizes(self) -> None:
        """Break the words anew for letters of another size."""
        self._break()

    def _around(self, width: int, rows: int) -> QSize:
        """The size of the whole button round words."""
        from PySide6.QtWidgets import QStyle, QStyleOptionButton  # here: a start needs no such button

        option = QStyleOptionButton()
        self.initStyleOption(option)
        inner = QSize(width, rows * self.fontMetrics().lineSpacing())
        return self.style().sizeFromContents(QStyle.ContentsType.CT_PushButton, option, inner, self)

    def _break(self) -> None:
        room = self.width() - self._around(0, 1).width()
        rows = [""]
        for word in self.words.split():
            longer = f"{rows[-1]} {word}".strip()
            if rows[-1] and self.fontMetrics().horizontalAdvance(longer) > room:
                rows.append(word)
            else:
                rows[-1] = longer
        if "\n".join(rows) != self.text():
            self.setText("\n".join(rows))
            self.updateGeometry()


def _unmarked(words: str) -> str:
    """Words without the signs that mark a letter for the keyboard; two of them are one that is read."""
    return re.sub("&(.?)", r"\1", words)
