"""Light and dark: as the desktop is, while the program runs, or as the maker chose, in everything that is open."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QGuiApplication
from PySide6.QtWidgets import QApplication, QDialog, QMessageBox, QWidget

from app.help.window import HelpWindow
from app.look.theme import DAY, LAMP, Theme, theme
from app.window import colours, texts
from app.window.colours import chosen_theme
from app.window.front.numbers_dialog import NumbersDialog
from tests.waiting import on_screen


@pytest.fixture
def desktop(monkeypatch):
    """Sets the desktop to light or dark; without a screen there is no desktop that Qt could ask, so its answer is given here."""
    def set_to(scheme: Qt.ColorScheme) -> None:
        monkeypatch.setattr(colours, "desktop_is_dark", lambda: scheme == Qt.ColorScheme.Dark)
        QGuiApplication.styleHints().colorSchemeChanged.emit(scheme)
        QApplication.processEvents()
    return set_to


def shares(widget: QWidget, wanted: Theme) -> float:
    """Share of a widget's pixels that have a ground colour of a theme."""
    picture = widget.grab().toImage()
    grounds = {QColor(getattr(wanted, name)).rgb() for name in ("paper", "panel", "card", "bar")}
    points = [(x, y) for x in range(0, picture.width(), 7) for y in range(0, picture.height(), 7)]
    return sum(picture.pixel(x, y) in grounds for x, y in points) / len(points)


def test_the_window_follows_the_desktop_without_a_restart(bench, desktop):
    window = bench.window
    window.show_solid(True)
    desktop(Qt.ColorScheme.Dark)
    assert theme() is LAMP and chosen_theme(window.settings) is LAMP
    assert shares(window, LAMP) > 0.5 and shares(window, DAY) == 0
    assert shares(window.beside.solid.turntable, LAMP) > 0.3
    desktop(Qt.ColorScheme.Light)
    assert theme() is DAY and shares(window, DAY) > 0.5 and shares(window, LAMP) == 0


def test_a_choice_of_the_makers_stays_whatever_the_desktop_does(bench, desktop):
    window = bench.window
    window.actions_["day"].trigger()
    desktop(Qt.ColorScheme.Dark)
    assert theme() is DAY and window.settings.value("theme") == "day"
    window.actions_["system"].trigger()
    assert theme() is LAMP and window.actions_["system"].isChecked() and not window.actions_["day"].isChecked()


def test_lamplight_by_its_key_goes_back_by_the_same_key(bench):
    lamp = bench.window.actions_["lamp"]
    lamp.trigger()
    assert theme() is LAMP and lamp.isChecked()
    lamp.trigger()
    assert theme() is DAY and not lamp.isChecked() and bench.window.actions_["day"].isChecked()


@pytest.mark.parametrize("make", [
    lambda window: HelpWindow(list(window.actions_.values()), texts.HAND_KEYS, window), NumbersDialog])
def test_dialogs_that_are_open_follow(bench, qtbot, desktop, make):
    dialog: QDialog = make(bench.window)
    qtbot.addWidget(dialog)
    dialog.show()
    on_screen(dialog)
    desktop(Qt.ColorScheme.Light)
    assert shares(dialog, LAMP) == 0 and shares(dialog, DAY) > 0.4
    desktop(Qt.ColorScheme.Dark)
    assert shares(dialog, DAY) == 0 and shares(dialog, LAMP) > 0.4
    dialog.reject()


def test_a_question_that_is_open_keeps_the_button_that_enter_presses(bench, desktop):
    question = QMessageBox(bench.window)
    question.addButton("Throw it away", QMessageBox.ButtonRole.DestructiveRole)
    keep = question.addButton("Keep it", QMessageBox.ButtonRole.RejectRole)
    question.setDefaultButton(keep)
    question.show()
    on_screen(question)
    desktop(Qt.ColorScheme.Dark)
    assert question.focusWidget() is keep and keep.isDefault()
    question.reject()


def test_the_preview_of_the_sheets_follows(bench, desktop):
    bench.window.set_stage("sheets")
    view = bench.window.room.preview.view
    desktop(Qt.ColorScheme.Dark)
    assert view.backgroundBrush().color() == QColor(LAMP.paper)
