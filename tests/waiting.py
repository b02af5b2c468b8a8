"""Waiting for what a test needs: for the state itself, and so long that a busy machine has time to come to it.

No test waits for a time and hopes: what comes some turns of the event loop, a thread or a process later is
waited for with `until`, and a button is pressed with `press`. A wait ends as soon as what it waits for is so;
PATIENCE is only how long a test that fails takes to fail.
"""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtCore import QEventLoop, QPoint, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

PATIENCE = 300.0
"""Seconds: what takes one on an idle machine took seventeen beside other jobs on half a core, and other machines are slower."""


class PatientBot(QtBot):
    """The test library's bot, waiting with that patience where a test names no time of its own."""

    def addWidget(self, widget: QWidget, **more) -> None:
        """Held until the test is torn down: the library would let a window that a test made for itself go at the test's end, and
        then do what is due in it."""
        super().addWidget(widget, **more)
        self._held = [*getattr(self, "_held", ()), widget]

    def waitUntil(self, callback: Callable[[], object]) -> None:
        until(callback)

    def waitSignal(self, signal, *, timeout: int = round(PATIENCE * 1000), **more):
        return super().waitSignal(signal, timeout=timeout, **more)


def rest(seconds: float) -> None:
    """Let the event loop run for so long; unlike a wait of the test library it frees the interpreter for other threads."""
    loop = QEventLoop()
    QTimer.singleShot(round(seconds * 1000), loop.quit)
    loop.exec()


def until(what: Callable[[], object], why: str | Callable[[], str] = "it did not come to be so", patience: float = PATIENCE) -> None:
    """Let the event loop run until something is so; an AssertionError with these words when it does not in so many seconds.

    It is asked at once, and then less and less often: most comes within a turn or two.
    """
    ends, pause = time.monotonic() + patience, 0.001
    while not what():
        assert time.monotonic() < ends, why() if callable(why) else why
        rest(pause)
        pause = min(2 * pause, 0.02)


def on_screen(window: QWidget) -> None:
    """Wait until a window that was told to show itself is there."""
    until(lambda: window.isVisible() and window.windowHandle().isExposed(), f"{type(window).__name__} does not come")


def ready(widget: QWidget) -> bool:
    """Whether a hand can press it: it is seen, not only meant to be, and it can be pressed.

    Until a turn of the event loop gives a page its room its parts are squeezed, some to no height at all: there no press
    meets them.
    """
    return widget.isVisible() and widget.isEnabled() and not widget.rect().isEmpty()


def press(widget: QWidget, at: QPoint | None = None) -> None:
    """Press with the mouse as soon as a hand could: in the middle, or at a place on the widget."""
    until(lambda: ready(widget), f"{widget.objectName() or type(widget).__name__} cannot be pressed")
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=at or widget.rect().center())
