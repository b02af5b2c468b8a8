"""The program brought to rest: what is due done, what runs beside the window waited for, what nobody holds given up, the rest counted."""

from __future__ import annotations

import ctypes
import functools
import gc
import sys
import time
from collections.abc import Iterator

from PySide6.QtCore import QCoreApplication, QEvent, QEventLoop, QObject, QTimer
from PySide6.QtGui import QPixmapCache
from PySide6.QtWidgets import QApplication

from app.threads.background import running

PATIENCE = 300.0
"""Seconds for what runs beside the window to end."""


def pump() -> None:
    """Let the program do what is due. What was put off to be destroyed is, as in the program's own loop."""
    QApplication.processEvents()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def wait(ms: int) -> None:
    """Let the program run for so long."""
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


def rest() -> None:
    """Wait until nothing runs beside the window."""
    until = time.monotonic() + PATIENCE
    quiet = 0
    while quiet < 2 and time.monotonic() < until:
        wait(20)
        quiet = 0 if running() else quiet + 1


def everything() -> list:
    """All objects that the collector knows, once nothing runs beside the window.

    What another thread is in the midst of making is among them, and it breaks when it is held meanwhile (a tuple that is
    being filled from a generator: SystemError from the interpreter itself).
    """
    rest()
    while running():  # what has no end is told by the watch
        rest()
    return gc.get_objects()


def parts(root: QObject) -> Iterator[QObject]:
    """All that is below an object. `findChildren` would have the window hold what the toolkit made for good (app/look/descendants.py)."""
    for part in root.children():
        yield part
        yield from parts(part)


def destroy() -> None:
    """Destroy what was put off, and what only that held. What runs beside the window goes on meanwhile: on a layout of many
    snags the search for cures takes minutes, in which nothing would be done."""
    for _ in range(3):
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        pump()
        gc.collect()


def drop() -> None:
    """Empty the caches, which are bounded (the toolkit's by 10 MB) but fill slowly; destroy what was put off; give free memory back."""
    QPixmapCache.clear()
    for one in [one for one in everything() if isinstance(one, functools._lru_cache_wrapper)]:
        one.cache_clear()
    destroy()
    if sys.platform.startswith("linux"):
        ctypes.CDLL(None).malloc_trim(0)
