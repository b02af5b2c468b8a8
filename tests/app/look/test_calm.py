"""Words that change in a calm part of the window ask no more of its neighbours; a change of its size does."""

import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QVBoxLayout, QWidget

from app.look.calm import Calm
from app.look.flow import Flow
from tests.waiting import on_screen


class Asked(QObject):
    """Counts how often a widget was asked to lay itself anew."""

    def __init__(self, of: QWidget) -> None:
        super().__init__(of)
        self.times = 0
        of.installEventFilter(self)

    def eventFilter(self, thing: QObject, event: QEvent) -> bool:
        self.times += event.type() == QEvent.Type.LayoutRequest
        return False


def settle() -> None:
    """Layouts tell each other by events, each of which posts the next."""
    for _ in range(6):
        QApplication.processEvents()


@pytest.fixture
def window(qtbot):
    made = QWidget()
    qtbot.addWidget(made)
    made.inner = QWidget()
    made.label = QLabel("twelve", made.inner)
    made.label.setMinimumWidth(60)
    QVBoxLayout(made.inner).addWidget(made.label)
    made.calm = Calm(made.inner, made)
    made.other = QLabel("beside", made)
    column = QVBoxLayout(made)
    column.addWidget(made.calm)
    column.addWidget(made.other, 1)
    made.resize(300, 200)
    made.show()
    on_screen(made)
    settle()
    made.asked = Asked(made)
    return made


def test_a_word_that_changes_asks_the_window_for_nothing(window):
    for word in ("eleven", "ten", "six"):
        window.label.setText(word)
        settle()
    assert window.asked.times == 0
    assert window.label.text() == "six"


def test_another_height_is_asked_for_and_given(window):
    before = window.calm.height()
    window.label.setText("one\ntwo\nthree")
    settle()
    assert window.asked.times >= 1
    assert window.calm.height() >= window.inner.sizeHint().height() > before - 1
    assert window.inner.size() == window.calm.size()


def test_it_fills_its_room(window):
    window.resize(420, 300)
    settle()
    assert window.inner.size() == window.calm.size()
    assert window.inner.width() > 300


def test_words_that_wrap_ask_for_another_height_only(window):
    words = QLabel("one of them")
    words.setWordWrap(True)
    room = Calm(words, window, wraps=True)
    window.layout().insertWidget(0, room)
    room.show()
    settle()
    window.asked.times, before = 0, room.height()
    words.setText("two of them")
    settle()
    assert window.asked.times == 0 and room.height() == before
    words.setText("so many of them that they go on in another line, and in one more below that one, and on " * 2)
    settle()
    assert room.height() >= words.heightForWidth(room.width()) > before


def test_a_row_that_goes_on_below_gets_room_for_both_at_the_width_it_has(window):
    row = Flow()
    for word in ("snags of it", "chances of it", "changes to it"):
        row.addWidget(QPushButton(word))
    window.inner.layout().addLayout(row)
    window.inner.layout().addWidget(QLabel("a list"), 1)
    settle()
    window.resize(700, 90)
    settle()
    alone = row.geometry().height()
    window.resize(160, 90)
    settle()
    assert row.geometry().height() > 1.8 * alone, "the window gave way: no row is cut off"
    assert window.calm.height() >= window.inner.layout().totalMinimumHeightForWidth(window.inner.width())
