"""Going through the widgets of a window leaves nothing behind when some of them go."""

import gc
from collections import Counter

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QComboBox, QLineEdit, QListView, QMainWindow, QScrollArea, QVBoxLayout, QWidget

from app.look.descendants import below
from tests.waiting import on_screen


def alive() -> Counter:
    gc.collect()
    return Counter(type(one).__name__ for one in gc.get_objects() if isinstance(one, QWidget))


def come_and_go(window: QMainWindow) -> None:
    """A page with parts that the toolkit makes parts of, walked through and thrown away."""
    page = QWidget(window)
    column = QVBoxLayout(page)
    parts = [kind() for kind in (QComboBox, QListView, QLineEdit, QScrollArea)]
    for part in parts:
        column.addWidget(part)
    page.show()
    found = list(below(window))
    assert page in found and set(parts) <= set(found)
    assert len(found) > len(parts) + 1
    page.deleteLater()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def test_what_the_toolkit_made_is_not_held_when_its_page_is_gone(qtbot):
    window = QMainWindow()
    qtbot.addWidget(window)
    window.show()
    on_screen(window)
    come_and_go(window)
    before = alive()
    for _ in range(5):
        come_and_go(window)
    assert alive() - before == Counter()


def test_it_finds_what_the_toolkit_finds(qtbot):
    window = QMainWindow()
    qtbot.addWidget(window)
    window.setCentralWidget(QScrollArea())
    window.centralWidget().setWidget(QComboBox())
    ours, theirs = ([hash(one) for one in found] for found in (below(window), window.findChildren(QWidget)))
    assert sorted(ours) == sorted(theirs) and len(ours) > 8


def test_one_kind_alone(qtbot):
    window = QMainWindow()
    qtbot.addWidget(window)
    file = window.menuBar().addMenu("File")
    save = file.addAction("Save")
    window.setCentralWidget(QScrollArea())
    window.centralWidget().setWidget(QComboBox())
    assert list(below(window, QComboBox)) == [window.centralWidget().widget()]
    assert save in below(window, QAction) and file.menuAction() in below(window, QAction)
