"""A box of choices whose list is as wide as its longest word."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QWheelEvent
from PySide6.QtWidgets import QComboBox, QStyleOptionComboBox, QWidget

from app.look.sizes import px, sizes

MARGIN = 24
"""Pixels at 100 % of a row of the list beside its words."""
ARROW, MARGINS, FRAME = 20, 7, 5
"""Of the box beside the ink of what is chosen, pixels: the arrow, which grows with the letters, the room before the words, which
grows half as fast, and what never grows. The style itself would tell; but to name its table of kinds takes longer than to paint
the window."""

_KEY = Qt.Key
WALKS = (_KEY.Key_Up, _KEY.Key_Down, _KEY.Key_PageUp, _KEY.Key_PageDown, _KEY.Key_Home, _KEY.Key_End)
"""Keys that lead from one entry of a box to another."""


def beside() -> int:
    """Pixels of a box beside the ink of what is chosen, with letters of the size in use."""
    return px(ARROW) + sizes().soft(MARGINS) + FRAME


class Choice(QComboBox):
    """In a narrow column the box shortens what is chosen in its middle; in its list every word is read whole.

    The wheel scrolls the panel on which the box stands and never chooses: whoever scrolled past a box had the hole drilled
    from the other side.

    A box that `asks` chooses anew each time, and shows its question between: keys open its list, in which Enter or a press
    chooses, for whoever walks past an entry has not chosen it.
    """

    def __init__(self, parent: QWidget | None = None, asks: bool = False, choices: Iterable[tuple[object, str]] = (), **more) -> None:
        """`choices` are (value, word) of each row."""
        super().__init__(parent, **more)
        self._asks = asks
        for value, word in choices:
            self.addItem(word, value)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the wheel does not bring the keyboard either

    def initStyleOption(self, option: QStyleOptionComboBox) -> None:
        """As any box, but that what has no room is seen to be shortened, and both its ends are read. A field to type in scrolls."""
        super().initStyleOption(option)
        if not self.isEditable():
            room, letters = self.width() - beside(), self.fontMetrics()
            if letters.boundingRect(option.currentText).width() > room:  # as the box asked for its room
                option.currentText = letters.elidedText(option.currentText, Qt.TextElideMode.ElideMiddle, room)

    def showPopup(self) -> None:
        """Open the list at what is chosen, no narrower than its rows."""
        rows = self.view()
        rows.setCurrentIndex(self.model().index(self.currentIndex(), 0, self.rootModelIndex()))
        rows.setMinimumWidth(rows.sizeHintForColumn(0) + px(MARGIN))
        super().showPopup()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._asks and (event.key() in WALKS or event.text().isprintable() and event.text().strip()):
            self.showPopup()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
