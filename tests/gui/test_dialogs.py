"""Dialogs at plain and at twice as large letters: nothing cut off, a name for everything, Tab without a trap, Esc leaves."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QScrollArea

from app.look import sizes
from tests.gui.bench import at_rest
from tests.gui.cut import cut
from tests.gui.dialogs import DIALOGS
from tests.gui.test_walk import group_of, nameless, takers, walked
from tests.waiting import on_screen


@pytest.fixture(autouse=True)
def plain():
    yield
    sizes.use(sizes.BODY)


@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("key", sorted(DIALOGS))
def test_a_dialog_can_be_read_and_walked_through(bench, qtbot, key, percent):
    bench.window.looks.choose_letters(percent)
    dialog = DIALOGS[key](bench.window)
    qtbot.addWidget(dialog)
    dialog.open_for(None) if key == "hold" else dialog.show()
    on_screen(dialog)
    dialog.activateWindow()
    at_rest(bench.window)
    assert cut(dialog) == []
    assert dialog.width() <= 1360 and dialog.height() <= 880
    assert nameless(dialog) == []
    if QApplication.focusWidget() is None or not dialog.isAncestorOf(QApplication.focusWidget()):
        dialog.focusNextChild()
    there = walked(dialog, Qt.Key.Key_Tab)
    groups = {group_of(widget) for widget in there} - {None}
    missed = [w for w in takers(dialog) if w not in there and group_of(w) not in groups
              and w.focusPolicy() & Qt.FocusPolicy.TabFocus and not isinstance(w, QScrollArea)]
    assert not missed, [(type(w).__name__, w.accessibleName()) for w in missed]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    if key == "hold":
        dialog.end()
