"""A window in which everything the program can do or mean is found by typing a piece of it."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.help.glossary import WORDS
from app.help.keyed_row import KEYS, KeyedRow
from app.help.pictures import picture
from app.help.snags import snag_words
from app.look.filled import filled
from app.look.paragraph import paragraph
from app.look.section_view import SectionView
from app.look.sizes import open_at
from app.look.walk import ReadInOrder
from geometry.saying import say


class Entry(Struct, frozen=True):
    """Something to be found: an action, or a word or habit of the hand (`action` is None)."""

    title: str
    about: str
    keys: str = ""
    picture: str = ""
    action: QAction | None = None

    @property
    def able(self) -> bool:
        """Whether it can be done now."""
        return self.action is not None and self.action.isEnabled()


def _action_entry(action: QAction) -> Entry:
    """The entry of a menu action."""
    keys = ", ".join(k.toString(QKeySequence.SequenceFormat.NativeText) for k in action.shortcuts())
    return Entry(action.text().replace("&", "").rstrip("…"), action.statusTip(), keys, action=action)


def matches(entry: Entry, typed: str) -> bool:
    """Whether every word typed is somewhere in the entry, small and capital letters alike."""
    text = f"{entry.title} {entry.about} {entry.keys}".casefold()
    return all(piece in text for piece in typed.casefold().split())


class HelpWindow(ReadInOrder, QDialog):
    """Search field, what is found, and what it means."""

    def __init__(self, actions: Sequence[QAction], habits: Sequence[tuple[str, str]],
                 parent: QWidget) -> None:
        super().__init__(parent, windowTitle=say("Actions and words"))
        open_at(self, 760, 520)
        self._entries = [_action_entry(action) for action in actions if action.text() and action.menu() is None]
        self._entries += [Entry(keys, about + ".", keys) for keys, about in habits]
        self._entries += [Entry(word.word, word.means, picture=word.picture) for word in (*WORDS, *snag_words())]
        self.field = QLineEdit(self, placeholderText=say("What do you look for?"), accessibleName=say("What do you look for?"),
                               clearButtonEnabled=True)
        self.found = QListWidget(self, objectName="found", spacing=2, wordWrap=True, accessibleName=say("Found"),
                                 horizontalScrollBarPolicy=Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.found.setItemDelegate(KeyedRow(self.found))
        self._title = paragraph(self, name="title")
        self._keys = QLabel(self, objectName="dim")
        self._about = paragraph(self)
        self._picture = SectionView(self)
        self._do = QPushButton(say("Do it"), self, objectName="main", autoDefault=False, clicked=self._run)
        right = filled(QVBoxLayout(), self._title, self._keys, self._about, self._picture, 1,
                       (self._do, 0, Qt.AlignmentFlag.AlignRight), gap=10)
        both = filled(QHBoxLayout(), (self.found, 1), (right, 1), gap=22)
        filled(QVBoxLayout(self), self.field, (both, 1), margins=(20, 18, 20, 18), gap=12)
        self.field.textChanged.connect(self._search)
        self.field.returnPressed.connect(self._run)
        self.field.installEventFilter(self)
        self.found.currentRowChanged.connect(self._show)
        self.found.itemActivated.connect(self._run)
        self.chosen: Entry | None = None
        self._search("")

    def eventFilter(self, watched, event) -> bool:
        """Arrow keys in the field walk through what is found."""
        if watched is self.field and event.type() == QEvent.Type.KeyPress:
            step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1, Qt.Key.Key_PageDown: 10, Qt.Key.Key_PageUp: -10}
            if event.key() in step:
                row = self.found.currentRow() + step[event.key()]
                self.found.setCurrentRow(min(max(row, 0), self.found.count() - 1))
                return True
        return super().eventFilter(watched, event)

    def _search(self, typed: str) -> None:
        self.found.clear()
        hits = [entry for entry in self._entries if matches(entry, typed)]
        hits.sort(key=lambda entry: typed.casefold() not in entry.title.casefold())
        for entry in hits:
            item = QListWidgetItem(entry.title)
            item.setData(Qt.ItemDataRole.UserRole, self._entries.index(entry))
            if entry.keys and entry.keys != entry.title:
                item.setData(KEYS, entry.keys)
                item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{entry.title}    {entry.keys}")
            self.found.addItem(item)
        self.found.setCurrentRow(0)
        if not hits:
            self._title.setText(say("Nothing has this in it: try another word."))
            self._keys.setText("")
            self._about.setText("")
            self._picture.show_drawing(())
            self._do.setVisible(False)

    def _entry(self) -> Entry | None:
        item = self.found.currentItem()
        return None if item is None else self._entries[item.data(Qt.ItemDataRole.UserRole)]

    def _show(self) -> None:
        entry = self._entry()
        if entry is None:
            return
        self._title.setText(entry.title)
        self._keys.setText(entry.keys if entry.keys != entry.title else "")
        self._keys.setVisible(bool(self._keys.text()))
        barred = entry.action is not None and not entry.able
        self._about.setText(f"{entry.about} {say('It cannot be done just now.')}".strip() if barred else entry.about)
        self._picture.show_drawing(picture(entry.picture))
        self._picture.setVisible(bool(entry.picture))
        self._do.setVisible(entry.action is not None)
        self._do.setEnabled(entry.able)

    def _run(self) -> None:
        entry = self._entry()
        if entry is not None and entry.able:
            self.chosen = entry
            self.accept()
