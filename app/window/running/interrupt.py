"""Ctrl-C in the terminal that the program was started from: as Quit in the menu, with its question about unsaved work.

Left to Python it does nothing as long as nothing moves in the window, and then breaks off whatever the program is about.
"""

from __future__ import annotations

import signal
import socket
from contextlib import suppress
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSocketNotifier
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from app.window.windows import Windows


class Interrupt(QObject):
    """From now until `end`. A start that was told to ignore Ctrl-C (`nohup`) goes on ignoring it."""

    def __init__(self, windows: Windows) -> None:
        super().__init__(windows)
        self._windows = windows
        self._before = signal.getsignal(signal.SIGINT)
        self._hears: socket.socket | None = None
        if self._before is signal.SIG_IGN:
            return
        # What Python's own part of the signal does must not wait until the toolkit calls Python for another reason.
        self._hears, self._tells = socket.socketpair()
        self._hears.setblocking(False)
        self._tells.setblocking(False)
        self._woken_before = signal.set_wakeup_fd(self._tells.fileno(), warn_on_full_buffer=False)
        signal.signal(signal.SIGINT, _go_on)
        self._notifier = QSocketNotifier(self._hears.fileno(), QSocketNotifier.Type.Read, self, activated=self._woken)

    def end(self) -> None:
        """Leave everything as it was before; harmless when called again."""
        if self._hears is None:
            return
        self._notifier.setEnabled(False)
        signal.signal(signal.SIGINT, self._before)
        signal.set_wakeup_fd(self._woken_before)
        self._hears.close()
        self._tells.close()
        self._hears = None

    def _woken(self) -> None:
        with suppress(BlockingIOError):
            # Other signals wake it too. While something is asked, the answer comes first.
            if signal.SIGINT in self._hears.recv(4096) and QApplication.activeModalWidget() is None:
                self._windows.quit()


def _go_on(_number: int, _frame: object) -> None:
    """In place of Python's own KeyboardInterrupt."""
