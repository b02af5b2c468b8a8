"""Loads the rooms of the stages beside the window once it stands there and rests, so that a first visit need not wait."""

from __future__ import annotations

import sys
import threading
from collections.abc import Callable, Sequence
from functools import partial
from importlib import import_module
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer

from app.threads.background import Background, raised, running
from app.window.background.aside import stand_aside
from app.window.rooms.room import StageRoom

if TYPE_CHECKING:
    from app.window.frame import Frame

REST_MS = 1500
"""From the making of the window to the loading; a hand that drags puts it off."""


class Warming(StageRoom):
    """Belongs to no stage. It loads code and makes nothing: a room is made when its stage is first shown."""

    def __init__(self, window: Frame, modules: Sequence[str]) -> None:
        super().__init__(window)
        self._modules = modules
        self._thread: Background | None = None
        self._hurried = threading.Event()
        self._rest = QTimer(self, singleShot=True, interval=REST_MS, timeout=self._begin)
        self._rest.start()

    def end(self) -> None:
        self._rest.stop()
        self.let_finish()

    def let_finish(self) -> None:
        """Wait for what is being loaded. Two threads that load a package and a part of it at once lock each other out,
        and Python then leaves one of them with half a package."""
        self._hurried.set()
        if self._thread is not None:
            self._thread.wait()
            self._thread = None

    def _begin(self) -> None:
        waiting = [name for name in self._modules if name not in sys.modules]
        if waiting and (self.window.hand.busy or self.window.opens or running()):  # what works beside the window may load, too
            self._rest.start()
        elif waiting:
            self._thread = Background(partial(_load, waiting, self._hurried.is_set), self)
            self._thread.failed.connect(raised)
            self._thread.start()


def _load(modules: Sequence[str], hurried: Callable[[], bool]) -> None:
    for name in modules:
        stand_aside(hurried)
        import_module(name)
