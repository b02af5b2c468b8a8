"""All windows of the running program: one layout in each, no file in two of them, and an end that asks about each."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING
from weakref import ref

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSettings, Qt
from shiboken6 import isValid

from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.reading import real
from app.window import ask
from app.window.background.background import running
from app.window.demo import home_of, in_language
from geometry.layout import Headstock
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame
    from app.window.main import MainWindow
    from app.window.running.interrupt import Interrupt
    from app.window.running.one_program import Reception

STEP = 28
"""How far a new window lies from the one it came from, to the right and down, in points."""


class Windows(QObject):
    """Knows every window. What belongs to the maker and not to a layout (colours, the list of files) is the same in all."""

    def __init__(self, settings: QSettings, journal_folder: Path | None = None) -> None:
        super().__init__()
        self.settings = settings
        self.journal_folder = journal_folder
        self._all: list[MainWindow] = []
        self._last: Callable[[], MainWindow | None] = lambda: None
        self.reception: Reception | None = None
        """what hears from later starts of the program; None while nothing does"""
        self.interrupt: Interrupt | None = None
        """what hears of Ctrl-C in the terminal"""

    # ---- which there are --------------------------------------------------
    @property
    def all(self) -> list[MainWindow]:
        """The open windows, the one used last at the end."""
        return list(self._all)

    @property
    def current(self) -> MainWindow | None:
        """The window used last; None when all are closed."""
        return self._all[-1] if self._all else None

    def holding(self, path: Path) -> MainWindow | None:
        """The window in which this file is open."""
        name = real(path)
        for window in self._all:
            mine = window.document.path
            if mine is not None and (real(mine) == name or _same(mine, path)):
                return window
        return None

    def add(self, window: MainWindow) -> None:
        """A window is being made."""
        self._all.append(window)

    def watch(self, window: MainWindow) -> None:
        """It is made: see from now on when it is used."""
        window.installEventFilter(self)

    def gone(self, window: MainWindow) -> None:
        """A window has been closed; it is destroyed unless it was the last, which ends the program and is destroyed by `end`."""
        if window in self._all:
            self._all.remove(window)
            window.removeEventFilter(self)
            if self._all:
                window.deleteLater()
            else:
                self._last = ref(window)

    def end(self) -> None:
        """Destroy the window that was closed last, after the program's loop, and wait for what still runs beside none. Left
        to the toolkit's own end, everything that is left is destroyed in any order, and a window may then hear from what
        is gone already."""
        for thread in running():
            thread.wait()
        last = self._last()
        if last is not None and isValid(last):
            last.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.WindowActivate and watched in self._all:
            self._all.remove(watched)
            self._all.append(watched)
        if event.type() == QEvent.Type.FileOpen and event.file():
            # macOS hands over what was opened in its file manager in this way.
            self.open(Path(event.file()))
            return True
        return super().eventFilter(watched, event)

    # ---- opening and closing ------------------------------------------------
    def new(self, layout: Headstock, path: Path | None = None, seen: bytes | None = None) -> MainWindow:
        """Show a layout in a window of its own, a step beside the one used last."""
        from app.window.main import MainWindow
        from app.window.place import beside

        last, known = self.current, self.all
        try:
            window = MainWindow(layout, path, self.settings, last.theme if last is not None else None, windows=self,
                                drawing_first=True)
        except BaseException:
            for one in self._all:
                if one not in known:  # a window that broke off half made is none
                    one.deleteLater()
            self._all = known
            raise
        window.document.seen = seen
        if last is not None:
            beside(window, last, STEP)
        window.show()
        self.front(window)
        return window

    def empty(self) -> MainWindow:
        """A new window on the page of ways to begin."""
        from app.window.demo import DEMO, demo, samples

        window = self.new(in_language(samples() / DEMO, demo()))
        window.front.show()
        return window

    def open(self, path: Path) -> MainWindow | None:
        """Open a file in a window of its own, or bring the one to the front in which it is open. None when it cannot be read."""
        held = self.holding(path)
        if held is not None:
            self.front(held)
            return held
        try:
            layout, seen = headstock.read_marked(path)
        except FormatError as error:
            ask.warn(self.current, say("This file was not opened"), str(error))
            return None
        home = home_of(path)
        window = self.new(in_language(path, layout), home, seen if home is not None else None)
        window.files.opened(path)
        return window

    def front(self, window: Frame) -> None:
        """Bring a window before the others."""
        if window.isMinimized():
            window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        window.raise_()
        window.activateWindow()
        if window in self._all:
            self._all.remove(window)
            self._all.append(window)

    def stop_receiving(self) -> None:
        """The program ends: the next start is one of its own."""
        for hears in (self.reception, self.interrupt):
            if hears is not None:
                hears.end()

    def quit(self) -> bool:
        """Ask in each window with unsaved work, then close all. False when one wants to stay: then all stay."""
        for window in reversed(self.all):
            if window.document.unsaved:
                self.front(window)
            if not window.may_close():
                return False
        for window in self.all:
            window.asked = True
            window.close()
        return True


def _same(one: Path, two: Path) -> bool:
    """Whether two names are one file on the disk, such as on a disk that ignores capitals."""
    try:
        return os.path.samefile(one, two)
    except (OSError, ValueError):
        return False
