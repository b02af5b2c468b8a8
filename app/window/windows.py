"""All windows of the running program: one layout in each, no file in two of them, and an end that asks about each."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSettings, Qt, QTimer
from shiboken6 import isValid

from app.formats.reading import Known, unasked
from app.threads.background import end_all, running
from app.window.demo import in_language, is_sample, own_demo
from app.window.files import opened_beside
from app.window.front.drops import is_drawn, take
from app.window.main import MainWindow
from app.window.place import beside
from geometry.layout import Headstock

if TYPE_CHECKING:
    from app.window.frame import Frame
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
        self._closed: list[MainWindow] = []
        """held until they are destroyed: the collector of garbage would take their parts away one by one before"""
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

    def holding(self, file: Path | Known) -> MainWindow | None:
        """The window in which this file is open or from which it is being written, as far as its names or what is known of it tell; no disk is asked."""
        file = file if isinstance(file, Known) else unasked(file)
        return next((window for window in self._all if window.document.holds(file)), None)

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
            self._hold(window)
            if self._all:
                window.deleteLater()

    def _hold(self, window: MainWindow) -> None:
        self._closed.append(window)
        window.destroyed.connect(partial(QTimer.singleShot, 0, self._forget))

    def _forget(self) -> None:
        self._closed = [window for window in self._closed if isValid(window)]

    def end(self) -> None:
        """Destroy the window that was closed last, after the program's loop, and wait for what still runs beside none, but not for
        long. Left to the toolkit's own end, everything that is left is destroyed in any order, and a window may then hear from
        what is gone already."""
        end_all(running())
        for window in filter(isValid, self._closed):
            window.deleteLater()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.WindowActivate and watched in self._all:
            self._used(watched)
        if event.type() == QEvent.Type.FileOpen and event.file():
            # macOS hands over what was opened in its file manager in this way.
            self.open(Path(event.file()))
            return True
        return super().eventFilter(watched, event)

    # ---- opening and closing ------------------------------------------------
    def new(self, layout: Headstock, path: Path | None = None, seen: bytes | None = None, known: Known | None = None) -> MainWindow:
        """Show a layout in a window of its own, a step beside the one used last."""
        last, others = self.current, self.all
        try:
            window = MainWindow(layout, path, self, drawing_first=True)
        except BaseException:
            for one in self._all:
                if one not in others:  # a window that broke off half made is none
                    self._hold(one)
                    one.deleteLater()
            self._all = others
            raise
        window.document.seen, window.document.known = seen, known
        if last is not None:
            beside(window, last, STEP)
        window.show()
        self.front(window)
        return window

    def empty(self) -> MainWindow:
        """A new window on the page of ways to begin."""
        window = self.new(own_demo())
        window.front.show()
        return window

    def open(self, path: Path) -> MainWindow | None:
        """Open a file in a window of its own, or bring the one to the front in which it is open: of a drawing or a picture one to begin
        from it in. None when it cannot be read, or when its window was closed meanwhile."""
        if is_drawn(path):
            window = self.empty()
            take(window, path)
            return window if window in self._all else None
        held = self.holding(path)
        if held is None:
            read = opened_beside(self.current, path)
            if read is None:
                return None
            held = self.holding(read.known)
        if held is not None:
            self.front(held)
            return held
        home, seen = (None, None) if is_sample(read.known) else (path, read.seen)
        window = self.new(in_language(read.known, read.layout), home, seen, read.known)
        window.files.opened(read.known)
        return window

    def front(self, window: Frame) -> None:
        """Bring a window before the others."""
        if window.isMinimized():
            window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        window.raise_()
        window.activateWindow()
        if window in self._all:
            self._used(window)

    def _used(self, window: MainWindow) -> None:
        """It is the one used last."""
        self._all.remove(window)
        self._all.append(window)

    def stop_receiving(self) -> None:
        """The program ends: the next start is one of its own."""
        for hears in (self.reception, self.interrupt):
            if hears is not None:
                hears.end()

    def quit(self) -> bool:
        """Ask in each window with unsaved work, then close all. False when one wants to stay, or waits for something: then all
        stay. While one is asked or saved the others can be worked in, opened and closed: what is new then is asked about."""
        from app.threads.waiting import waited_for  # here: a start waits for nothing

        if any(waited_for(window) for window in self._all):
            return False
        asked: dict[MainWindow, Headstock] = {}
        while (window := next((one for one in reversed(self._all) if asked.get(one) is not one.document.layout), None)) is not None:
            if window.document.unsaved:
                self.front(window)
            if not window.may_close():
                return False
            asked[window] = window.document.layout
        for window in self.all:
            window.asked = True
            window.close()
        return True
