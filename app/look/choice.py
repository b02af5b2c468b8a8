"""A box of choices whose list is as wide as its longest word."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QComboBox, QWidget

from app.look.sizes import px

MARGIN = 24
"""Pixels at 100 % of a row of the list beside its words."""
BESIDE = 48
"""Pixels at 100 % of the box beside what is chosen, at most: arrow and margins."""


class Choice(QComboBox):
    """In a narrow column the box shortens what is chosen in its middle; in its list every word is read whole.

    The wheel scrolls the panel on which the box stands and never chooses: whoever scrolled past a box had the hole drilled
    from the other side.
    """

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # the wheel does not bring the keyboard either

    def paintEvent(self, event: QPaintEvent) -> None:
        """As any box, but that what has no room is seen to be shortened, and both its ends are read. A field to type in scrolls."""
        if self.isEditable() or self.fontMetrics().horizontalAdvance(self.currentText()) + px(BESIDE) <= self.width():
            super().paintEvent(event)
        else:
            self._paint_shortened()

    def showPopup(self) -> None:
        """Open the list, no narrower than its rows."""
        rows = self.view()
        rows.setMinimumWidth(rows.sizeHintForColumn(0) + px(MARGIN))
        super().showPopup()

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()

    def _paint_shortened(self) -> None:
        from PySide6.QtWidgets import QStyle, QStyleOptionComboBox, QStylePainter  # here: QStyle takes a start 11 ms to name

        painter, option = QStylePainter(self), QStyleOptionComboBox()
        self.initStyleOption(option)
        box = QStyle.ComplexControl.CC_ComboBox
        room = self.style().subControlRect(box, option, QStyle.SubControl.SC_ComboBoxEditField, self).width()
        option.currentText = self.fontMetrics().elidedText(self.currentText(), Qt.TextElideMode.ElideMiddle, room)
        painter.drawComplexControl(box, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
