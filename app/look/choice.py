"""A box of choices whose list is as wide as its longest word."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QStyleOptionComboBox, QWidget

from app.look.sizes import px

MARGIN = 24
"""Pixels at 100 % of a row of the list beside its words."""
BESIDE = 38
"""Pixels at 100 % of the box beside what is chosen, at most: arrow and margins. The style itself would tell; but to name its
table of kinds takes longer than to paint the window."""


class Choice(QComboBox):
    """In a narrow column the box shortens what is chosen in its middle; in its list every word is read whole.

    The wheel scrolls the panel on which the box stands and never chooses: whoever scrolled past a box had the hole drilled
    from the other side.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the wheel does not bring the keyboard either

    def initStyleOption(self, option: QStyleOptionComboBox) -> None:
        """As any box, but that what has no room is seen to be shortened, and both its ends are read. A field to type in scrolls."""
        super().initStyleOption(option)
        if not self.isEditable():
            room = self.width() - px(BESIDE)
            option.currentText = self.fontMetrics().elidedText(option.currentText, Qt.TextElideMode.ElideMiddle, room)

    def showPopup(self) -> None:
        """Open the list, no narrower than its rows."""
        rows = self.view()
        rows.setMinimumWidth(rows.sizeHintForColumn(0) + px(MARGIN))
        super().showPopup()

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
