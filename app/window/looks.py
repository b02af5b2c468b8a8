"""How the windows look: colours as the desktop has them or as the maker chose, and the size of the letters."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QFont, QGuiApplication, QKeySequence
from PySide6.QtWidgets import QApplication, QMenu
from shiboken6 import isValid

from app.look import sizes
from app.look.descendants import below, tell
from app.look.style import palette, sheet
from app.look.theme import theme, use_theme
from app.window.colours import SYSTEM, chosen_theme, colour_choice, letter_choice, take_letters
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.main import MainWindow


class Looks(QObject):
    """Fills two menus, keeps what is chosen there, and repaints every window and dialog that is open."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._w = window
        self._colours: dict[str, QAction] = {}
        self._letters: dict[int, QAction] = {}
        self._factor = 0.0
        self._fill_colours(window.actions_["colours"].menu())
        self._fill_letters(window.actions_["letters"].menu())
        QGuiApplication.styleHints().colorSchemeChanged.connect(self._desktop_colours)
        QApplication.instance().fontChanged.connect(self._desktop_letters)

    # ---- the menus ----------------------------------------------------------
    def _fill_colours(self, menu: QMenu) -> None:
        for key, word, keys, about in (
                (SYSTEM, say("As the &system"), "", say("Light or dark as the desktop is, also when that changes.")),
                ("day", say("&Daylight"), "", say("Light colours.")),
                ("lamp", say("&Lamplight"), "Ctrl+L", say("Dark colours; the same key goes back to the light ones."))):
            action = self._action(menu, key, word, keys, about, self._colours_chosen)
            action.setCheckable(True)
            self._colours[key] = action

    def _fill_letters(self, menu: QMenu) -> None:
        for percent in sizes.CHOICES:
            word, about = say("{percent} %", percent=percent), say("Letters of this size, in every window.")
            action = self._action(menu, f"letters {percent}", word, "", about, self._letters_chosen)
            action.setProperty("percent", percent)
            action.setCheckable(True)
            self._letters[percent] = action
        menu.addSeparator()
        self._action(menu, "letters larger", say("&Larger letters"), "Ctrl+Alt++",
                     say("The next larger letters, up to twice as large."), self._larger)
        self._action(menu, "letters smaller", say("&Smaller letters"), "Ctrl+Alt+-",
                     say("The next smaller letters."), self._smaller)

    def _action(self, menu: QMenu, key: str, word: str, keys: str, about: str, slot) -> QAction:
        action = QAction(word, self._w, statusTip=about, triggered=slot)
        action.setData(key)
        if keys:
            more = [keys.replace("++", "+=")] if keys.endswith("++") else []
            action.setShortcuts([QKeySequence(word) for word in (keys, *more)])
        menu.addAction(action)
        self._w.actions_[key] = action
        return action

    # ---- what is chosen -----------------------------------------------------
    def _colours_chosen(self) -> None:
        key = self.sender().data()
        if key == "lamp" and theme().name == "lamp":
            key = "day"
        self._w.settings.setValue("theme", key)
        self._take_colours()

    def _letters_chosen(self) -> None:
        self.choose_letters(self.sender().property("percent"))

    def _larger(self) -> None:
        self._step(1)

    def _smaller(self) -> None:
        self._step(-1)

    def _step(self, by: int) -> None:
        at = sizes.CHOICES.index(letter_choice(self._w.settings)) + by
        if 0 <= at < len(sizes.CHOICES):
            self.choose_letters(sizes.CHOICES[at])

    def choose_letters(self, percent: int) -> None:
        """Letters of so many per cent of the desktop's, in every window, now and after the next start."""
        self._w.settings.setValue("letters", str(percent))
        self._letters_anew()
        self._w.say(say("Letters at {percent} % of the desktop's.", percent=percent))

    # ---- the desktop --------------------------------------------------------
    def _desktop_colours(self, _scheme: Qt.ColorScheme) -> None:
        if colour_choice(self._w.settings) == SYSTEM and chosen_theme(self._w.settings) is not theme():  # each window hears of it
            self._take_colours()

    def _desktop_letters(self, _font: QFont) -> None:
        before = sizes.desktop()
        sizes.follow_desktop(QApplication.font(), self._w.logicalDpiY())
        if sizes.desktop() != before:  # each window hears of it
            self._letters_anew()

    def _letters_anew(self) -> None:
        take_letters(self._w.settings)
        self._paint_all()

    def _take_colours(self) -> None:
        use_theme(chosen_theme(self._w.settings))
        self._paint_all()

    def _paint_all(self) -> None:
        for window in self._w.windows.all:
            window.looks.paint()

    # ---- painting -----------------------------------------------------------
    def paint(self) -> None:
        """Repaint a window and its dialogs in the colours and with letters of the size in use."""
        window = self._w
        before = self._factor > 0
        in_hand = [part.focusWidget() for part in (window, *below(window)) if part.isWindow()] if before else []
        if before:  # there may be pages that nobody sees
            tell(window, "let_unseen_go")  # the toolkit styles every widget anew, seen or not, a quarter of a millisecond each
        window.setPalette(palette(theme()))
        window.setStyleSheet(sheet(theme()))
        if before:  # else all has just been made in these colours
            tell(window, "follow_theme")
        if sizes.sizes().factor != self._factor:
            if before:  # else all has just been made at this size
                sizes.follow(window)
            self._factor = sizes.sizes().factor
            window.splitter.share_out()
        for part in in_hand:  # the toolkit lays the buttons of a question anew, and gives the keyboard to the first that it shows
            if part is not None and isValid(part):
                part.setFocus()
        for key, action in self._colours.items():
            action.setChecked(key == colour_choice(window.settings))
        percent = letter_choice(window.settings)
        for known, action in self._letters.items():
            action.setChecked(known == percent)
