"""A list whose rows are painted in the maker's colours, and walked through with the keyboard as with the mouse."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QModelIndex, Qt
from PySide6.QtWidgets import QListView, QStyledItemDelegate

_WALK = frozenset({Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown})


class CardList(QListView):
    """Base of the lists. A row that is clicked, activated or walked to with a key is gone to: `_go`."""

    def lay(self, model: QAbstractListModel, card: QStyledItemDelegate, name: str) -> None:
        """Take the rows, what paints them, and what the list is called."""
        self._model, self._card = model, card
        self.setModel(model)
        self.setItemDelegate(card)
        self.setVerticalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setAccessibleName(name)
        self.clicked.connect(self._go)
        self.activated.connect(self._go)

    def resizeEvent(self, event) -> None:
        """Rows are as high as their words wrap: another width lays them anew at once, the toolkit does so for another height alone."""
        super().resizeEvent(event)
        if event.size().width() == event.oldSize().width():
            return
        if self.state() == QListView.State.NoState:
            self.doItemsLayout()
        else:
            self.scheduleDelayedItemsLayout()  # its bar came while rows are laid

    def keyPressEvent(self, event) -> None:
        super().keyPressEvent(event)
        if event.key() in _WALK and self.currentIndex().isValid():
            self._go(self.currentIndex())

    def _go(self, index: QModelIndex) -> None:
        """Show what a row is about."""
