"""The choice of language in the menu; it holds from the next start."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QActionGroup

from app.languages.catalogue import NAMES
from app.languages.chosen import KEY, SYSTEM, choice
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


class LanguageMenu(QObject):
    """Fills the submenu `language` of the window's actions and keeps what is chosen there."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window
        menu = window.actions_["language"].menu()
        one = QActionGroup(self)
        for code, word in ((SYSTEM, say("As the &system")), *NAMES.items()):
            action = menu.addAction(word)
            action.setData(code)
            action.setCheckable(True)
            action.setChecked(code == choice(window.settings))
            action.triggered.connect(self._chosen)
            one.addAction(action)

    def _chosen(self) -> None:
        self._w.settings.setValue(KEY, self.sender().data())
        self._w.say(say("Pegwright speaks the chosen language when it is started again."))
