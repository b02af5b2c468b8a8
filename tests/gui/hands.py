"""What hands do in a window beside the drawing: fields are typed into, boxes of choices walked down, buttons found by their words."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QLineEdit, QTableView, QWidget

from app.look.descendants import below
from app.panels.forms.fields import Field
from tests.waiting import ready, until

SOON = 60.0
"""Seconds for a field or a button to come: a wrong word in a test is told within a minute, with those that are there."""


def typed(field: QLineEdit, text: str) -> None:
    """Type over what stands in a field, and stay in it."""
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, text)


def fill(field: QLineEdit, text: str, leave: Qt.Key = Qt.Key.Key_Return) -> None:
    """Type over what stands in a field and leave it with Enter, or with another key."""
    typed(field, text)
    QTest.keyClick(field, leave)


def type_on(table: QTableView, text: str, end: Qt.Key = Qt.Key.Key_Return) -> None:
    """Type into the cell where the keyboard stands, as hands do."""
    QTest.keyClicks(table, text[0])
    editor = QApplication.focusWidget() if table.state() == table.State.EditingState else None
    assert editor is not None, "no cell is being typed into"
    QTest.keyClicks(editor, text[1:])
    QTest.keyClick(editor, end)
    QApplication.processEvents()


def pick(box: QComboBox, index: int) -> None:
    """Walk with the arrow keys to an entry of a box of choices, which then has to be the one that is chosen."""
    assert 0 <= index < box.count(), f"{box.accessibleName()} has no entry {index}"
    box.setFocus()
    for _ in range(abs(index - box.currentIndex())):
        QTest.keyClick(box, Qt.Key.Key_Down if index > box.currentIndex() else Qt.Key.Key_Up)
    assert box.currentIndex() == index, f"{box.accessibleName()} stays at {box.currentText()}"


def choose(box: QComboBox, what: object) -> None:
    """Walk with the arrow keys to the entry that stands for something."""
    pick(box, next((i for i in range(box.count()) if box.itemData(i) == what), -1))


def space(button: QWidget) -> QWidget | None:
    """Press it with the keyboard; what has the keyboard afterwards."""
    button.setFocus()
    assert button.hasFocus()
    QTest.keyClick(button, Qt.Key.Key_Space)
    QApplication.processEvents()
    return QApplication.focusWidget()


def drop(window: QWidget, *files: Path) -> bool:
    """Drag files over a window and let go of them; whether they were taken."""
    data, at = QMimeData(), QPoint(200, 200)
    data.setUrls([QUrl.fromLocalFile(str(file)) for file in files])
    left, none = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    over = QDragEnterEvent(at, Qt.DropAction.CopyAction, data, left, none)
    QApplication.sendEvent(window, over)
    if not over.isAccepted():
        return False
    QApplication.sendEvent(window, QDropEvent(QPointF(at), Qt.DropAction.CopyAction, data, left, none))
    QApplication.processEvents()
    return True


def field(root: QWidget, name: str) -> Field:
    """The field of that name, as soon as it is there to be typed into."""
    return _found(root, Field, name, QWidget.accessibleName)


def button(root: QWidget, words: str) -> QAbstractButton:
    """The button of those words, as soon as it can be pressed."""
    return _found(root, QAbstractButton, words, lambda one: one.text())


def _found(root: QWidget, kind: type, words: str, of) -> QWidget:
    def those() -> list[QWidget]:
        return [one for one in below(root, kind) if of(one) == words and ready(one)]
    def why() -> str:
        return f'no {kind.__name__} "{words}" to be seen, but {sorted({of(one) for one in below(root, kind) if ready(one)})}'
    until(those, why, SOON)
    return those()[0]
