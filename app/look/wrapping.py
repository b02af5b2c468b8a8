"""Buttons whose words go on in another row where there is no room for them in one."""

from __future__ import annotations

import re

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QCheckBox, QPushButton, QRadioButton, QSizePolicy, QWidget


class Wrapping:
    """As wide as its words where it can be, never narrower than its longest word. Stands before a kind of button of the toolkit."""

    words = ""
    """Until they are set: the toolkit may ask for the size while the button is being made."""
    kind = ""
    """What the style calls its contents"""

    def __init__(self, words: str, parent: QWidget | None = None, **more) -> None:
        super().__init__(words, parent, **more)
        self.words = words
        self.setAccessibleName(_unmarked(words))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def set_words(self, words: str) -> None:
        """Other words."""
        self.words = words
        self.setAccessibleName(_unmarked(words))
        self.follow_sizes()
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        return self._around(self._long(self.words), self.text().count("\n") + 1)

    def minimumSizeHint(self) -> QSize:
        longest = max(self._long(word) for word in self.words.split() or ("",))
        return self._around(longest, self.text().count("\n") + 1)

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.follow_sizes()

    def _around(self, width: int, rows: int) -> QSize:
        """The size of the whole button round words."""
        from PySide6.QtWidgets import QStyle, QStyleOptionButton  # here: a start needs no such button

        option = QStyleOptionButton()
        self.initStyleOption(option)
        inner = QSize(width, rows * self.fontMetrics().lineSpacing())
        return self.style().sizeFromContents(QStyle.ContentsType[self.kind], option, inner, self)

    def _long(self, words: str) -> int:
        return self.fontMetrics().size(Qt.TextFlag.TextShowMnemonic, words).width()

    def follow_sizes(self) -> None:
        """Break the words for the room that there is, in letters of the size in use."""
        room = self.width() - self._around(0, 1).width()
        rows = [""]
        for word in self.words.split():
            longer = f"{rows[-1]} {word}".strip()
            if rows[-1] and self._long(longer) > room:
                rows.append(word)
            else:
                rows[-1] = longer
        if "\n".join(rows) != self.text():
            self.setText("\n".join(rows))
            self.updateGeometry()


class WrappingButton(Wrapping, QPushButton):
    """A button that is pressed."""

    kind = "CT_PushButton"


class WrappingRadio(Wrapping, QRadioButton):
    """One of several choices."""

    kind = "CT_RadioButton"


class WrappingCheck(Wrapping, QCheckBox):
    """A box that is ticked."""

    kind = "CT_CheckBox"


def _unmarked(words: str) -> str:
    """Words without the signs that mark a letter for the keyboard; two of them are one that is read."""
    return re.sub("&(.?)", r"\1", words)
