"""A button with a sign and a word, that makes do with the sign where there is no room for both."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QPushButton, QWidget

from app.look.icons import SHAPES, button_icon
from app.look.sizes import px

SIDE = 18
"""Of the sign, in points at the usual size of letters."""


class SignButton(QPushButton):
    """Its tip tells the word too, and so does its name for those who hear the window."""

    def __init__(self, key: str, word: str, about: str, parent: QWidget, **more) -> None:
        super().__init__(word, parent, **more)
        self._key, self._word = key, word
        if self.has_sign:
            self.setIcon(button_icon(key))
        self.follow_sizes()
        self.setAccessibleName(word.rstrip("…"))
        self.setAccessibleDescription(about)
        self.setToolTip(f"{word.rstrip('…')}: {about}" if about else word)

    @property
    def has_sign(self) -> bool:
        """Whether there is a sign; without one the word stays."""
        return self._key in SHAPES

    def follow_sizes(self) -> None:
        """Let the sign grow with the letters."""
        self.setIconSize(QSize(px(SIDE), px(SIDE)))

    def show_word(self, shown: bool) -> None:
        """Show the word beside the sign, or the sign alone."""
        text = self._word if shown or not self.has_sign else ""
        if self.text() != text:
            self.setText(text)

    def rooms(self) -> tuple[int, int]:
        """Width in points that the button wants without its word and with it."""
        wide = self.sizeHint().width()
        if not self.has_sign:
            return wide, wide
        letters = self.fontMetrics().size(Qt.TextFlag.TextShowMnemonic, self._word).width()  # as the toolkit measures them
        return (wide - letters, wide) if self.text() else (wide, wide + letters)
