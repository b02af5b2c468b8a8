"""F1: everything the program can do or mean is found by typing a piece of it."""

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.help.keyed_row import KEYS
from app.help.window import HelpWindow
from app.look.theme import theme
from app.window import texts
from app.window.actions import MENUS, SUBMENUS


@pytest.fixture
def help_window(bench, qtbot):
    window = HelpWindow(list(bench.window.actions_.values()), texts.HAND_KEYS, bench.window)
    qtbot.addWidget(window)
    window.show()
    return window


def titles(window) -> list[str]:
    return [window.found.item(i).text() for i in range(window.found.count())]


def test_every_action_of_the_menus_can_be_found(help_window):
    for entry in (entry for entries in MENUS.values() for entry in entries if entry.key and entry.key not in SUBMENUS):
        word = entry.word.replace("&", "").rstrip("…")
        assert any(title.startswith(word) for title in titles(help_window)), word


def test_typing_narrows_and_a_word_is_explained_with_a_drawing(help_window):
    QTest.keyClicks(help_window.field, "break ang")
    assert titles(help_window)[0] == "Break angle"
    assert help_window._picture.isVisible() and not help_window._do.isVisible()


def test_nothing_found_says_so(help_window):
    QTest.keyClicks(help_window.field, "qqq")
    assert not titles(help_window) and "Nothing has this" in help_window._title.text()


def test_what_cannot_be_done_now_says_so_and_closes_nothing(bench, help_window):
    assert not bench.window.actions_["redo"].isEnabled()
    QTest.keyClicks(help_window.field, "redo")
    assert titles(help_window)[0].startswith("Redo") and not help_window._do.isEnabled()
    assert help_window._about.text().endswith("It cannot be done just now.")
    QTest.keyClick(help_window.field, Qt.Key.Key_Return)
    assert help_window.isVisible() and help_window.chosen is None
    help_window.field.clear()
    QTest.keyClicks(help_window.field, "lamplight")
    assert help_window._do.isEnabled() and "just now" not in help_window._about.text()


def test_arrow_keys_walk_through_what_is_found_and_it_is_explained(help_window):
    QTest.keyClick(help_window.field, Qt.Key.Key_Down)
    QTest.keyClick(help_window.field, Qt.Key.Key_Down)
    assert help_window.found.currentRow() == 2
    assert help_window._title.text() and help_window._about.text()


def test_enter_does_what_was_found(bench):
    def answer():
        window = QApplication.activeModalWidget()
        QTest.keyClicks(window.field, "lamplight")
        QTest.keyClick(window.field, Qt.Key.Key_Return)

    QTimer.singleShot(0, answer)
    bench.window.actions_["keys"].trigger()
    assert theme().name == "lamp"


@pytest.mark.parametrize(("wide", "lines"), [(900, 1), (440, 2)])
def test_keys_end_where_their_row_does_and_go_below_words_that_leave_no_room(help_window, wide, lines):
    help_window.resize(wide, 500)
    QTest.keyClicks(help_window.field, "note in the")
    found, item = help_window.found, help_window.found.item(0)
    assert item.text() == "Note in the job book" and item.data(KEYS) == "Ctrl+Shift+N"
    QApplication.processEvents()
    row, line = found.visualItemRect(item), found.fontMetrics().lineSpacing()
    assert row.height() // line == lines
    picture = found.viewport().grab(row).toImage()
    last = picture.copy(picture.width() - 2 * found.fontMetrics().averageCharWidth(), picture.height() - line - 2, picture.width(), line)
    assert len({last.pixel(x, y) for x in range(last.width()) for y in range(last.height())}) > 2, "nothing stands at the end"
