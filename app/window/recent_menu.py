"""The menu of layouts opened lately: filled as it opens; what is missing is shown as missing as soon as that is known."""

from __future__ import annotations

from collections import Counter
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction

from app.look.plain import plain, short
from app.window.there import There
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


class RecentMenu(QObject):
    """Fills the submenu `recent` of the window's actions whenever it opens: other windows write the same list."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._w = window
        self._menu = window.actions_["recent"].menu()
        self._menu.setToolTipsVisible(True)
        self._menu.aboutToShow.connect(self.fill)
        self.there = There(self, told=self._name)

    def fill(self) -> None:
        """List the layouts, the last one first, and a way to clear the list."""
        self._menu.clear()
        paths = self._w.files.recent()
        names = Counter(path.name for path in paths)
        for path in paths:
            action = QAction(self._menu, toolTip=plain(str(path)), triggered=self._open)
            action.setData(path)
            action.setProperty("twice", names[path.name] > 1)
            self._menu.addAction(action)
        self._menu.addSeparator()
        clear = QAction(say("&Clear this list") if paths else say("Nothing yet"), self._menu, enabled=bool(paths),
                        triggered=self._w.files.forget_recent)
        self._menu.addAction(clear)
        self.there.look(paths)
        self._name()

    def _name(self) -> None:
        for action in self._menu.actions():
            if action.data() is not None:
                there = action.data() not in self.there.missing
                action.setText(entry(action.data(), action.property("twice"), there))
                action.setEnabled(there)

    def _open(self) -> None:
        if self._w.files.open(self.sender().data()):
            self._w.canvas.fit(self._w.document.shown)


def entry(path: Path, twice: bool, there: bool) -> str:
    """The words for a file: its folder too where two have the same name, and that it is missing when it is."""
    name = short(path.name)
    if twice:
        name = f"{name} ({short(path.parent.name)})"
    name = name.replace("&", "&&")
    return name if there else say("{name} – not there now", name=name)
