"""Dialogs at plain and at twice as large letters: nothing cut off, a name for everything, Tab without a trap, Esc leaves."""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QDialog, QLabel, QMessageBox, QPushButton, QScrollArea

from app.languages.catalogue import speak
from app.look.alt_letters import Lead, give_letters
from app.look.descendants import below
from geometry import saying
from tests.gui.bench import at_rest
from tests.gui.cut import cut
from tests.gui.dialogs import DIALOGS
from tests.gui.test_walk import group_of, nameless, takers, walked
from tests.waiting import on_screen, until


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
    letters = [re.findall(r"&(\w)", button.text().replace("&&", "")) for button in below(dialog, QAbstractButton) if button.text()]
    assert all(len(marked) == 1 for marked in letters), "Alt and a letter presses each"
    assert len({marked.lower() for marked, in letters}) == len(letters)
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


@pytest.mark.parametrize("key", sorted(DIALOGS.keys() - {"hold"}))
def test_long_words_in_large_letters_make_no_dialog_wider_than_a_small_screen(bench, qtbot, key):
    bench.window.looks.choose_letters(200)
    speak("de")
    try:
        dialog = DIALOGS[key](bench.window)
        qtbot.addWidget(dialog)
        dialog.show()
        on_screen(dialog)
        at_rest(bench.window)
    finally:
        saying.use(None)
    assert dialog.minimumSizeHint().width() <= 1024
    assert dialog.height() <= dialog.screen().availableSize().height() - 30, "its buttons are above the lower border, under a title"


def _offset(bench, qtbot) -> QDialog:
    """Setting out, with the keyboard."""
    dialog = DIALOGS["offset"](bench.window)
    qtbot.addWidget(dialog)
    dialog.show()
    on_screen(dialog)
    dialog.activateWindow()
    until(dialog.isActiveWindow)
    return dialog


def test_alt_and_a_letter_choose_in_a_dialog(bench, qtbot):
    dialog = _offset(bench, qtbot)
    letter = re.search(r"&(\w)", dialog.copy.text())[1]
    assert not dialog.copy.isChecked()
    QTest.keyClick(dialog.field, letter.lower(), Qt.KeyboardModifier.AltModifier)
    until(dialog.copy.isChecked)
    until(lambda: dialog.settled)


def test_letters_are_of_the_words_themselves_and_each_but_once(qtbot):
    box = QMessageBox()
    qtbot.addWidget(box)
    words = ("&Save", "Set out", "So", "S", "Räume", "Rock && Roll", "Ä")
    buttons = [box.addButton(word, QMessageBox.ButtonRole.ActionRole) for word in words]
    for _ in range(2):  # asked again nothing changes
        give_letters(box)
        found = {button.text() for button in buttons}
        assert found == {"&Save", "Set &out", "So", "S", "&Räume", "Ro&ck && Roll", "&Ä"}
    plain = QPushButton("")
    qtbot.addWidget(plain)
    give_letters(plain)
    assert plain.text() == ""


def test_alt_and_a_letter_lead_into_the_field_beside_a_label(bench, qtbot):
    dialog = _offset(bench, qtbot)
    label = next(below(dialog, Lead))
    letters = [found[1].lower() for one in (*below(dialog, QAbstractButton), *below(dialog, QLabel))
               if (found := re.search(r"&(\w)", one.text()))]
    assert len(set(letters)) == len(letters) > 3
    dialog.copy.setFocus()
    QTest.keyClick(dialog.copy, re.search(r"&(\w)", label.text())[1].lower(), Qt.KeyboardModifier.AltModifier)
    until(dialog.field.hasFocus)
    until(lambda: dialog.settled)
