"""A column of a dialog that scrolls when large letters leave it too little room; its buttons stay below it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize
from PySide6.QtWidgets import QDialog, QFormLayout, QHBoxLayout, QLayout, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.scroll import Scroll
from app.look.sizes import sizes

WIDE = 1.5
"""Letters that are more times larger than at 100 % have fields below their words."""


class Column(Scroll):
    """Holds a layout. It asks for the room of the whole and makes do with less height, never with less width: where words in it
    become longer its dialog widens."""

    def __init__(self, inside: QLayout, name: str, parent: QWidget) -> None:
        super().__init__(name, parent)
        page = QWidget(self, objectName="page")
        inside.setContentsMargins(2, 2, 8, 2)
        page.setLayout(inside)
        self.setWidget(page)

    def sizeHint(self) -> QSize:
        inner = self.widget().layout().sizeHint()
        return QSize(inner.width() + self._beside(), inner.height() + 2 * self.frameWidth())

    def minimumSizeHint(self) -> QSize:
        return QSize(self.widget().layout().minimumSize().width() + self._beside(), 120)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """What is inside asks for other room: the toolkit tells nobody beyond the area."""
        if event.type() == QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().eventFilter(watched, event)

    def _beside(self) -> int:
        return self.verticalScrollBar().sizeHint().width() + 2 * self.frameWidth() + 4


def form_of_dialog() -> QFormLayout:
    """Words beside their fields; above them where letters are so large that a small screen has no room for both."""
    form = QFormLayout()
    if sizes().factor > WIDE:
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
    return form


def lay_beside(dialog: QDialog, picture: QWidget, inside: QLayout, name: str, buttons: QWidget) -> None:
    """Fill a dialog: the picture on the left, a column called `name` on the right with the buttons below it."""
    side = filled(QVBoxLayout(), (Column(inside, name, dialog), 1), buttons)
    filled(QHBoxLayout(dialog), (picture, 3), (side, 2), margins=(14, 14, 14, 14), gap=18)
