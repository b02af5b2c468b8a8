"""Cyclic garbage is collected between two events of the window, and nowhere else.

Python's own collector runs wherever something happens to be allocated: in another thread, in the midst of painting, while
the toolkit destroys a window and asks its parts once more for their sizes. A widget that it finds is destroyed there and then,
and the program with it. So the collector is off for as long as there are windows, and the event loop asks for it.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QGuiApplication

EVERY_MS = 1000
MOST = 20_000
"""So many things more than after the last time may be alive; the program at work holds five times as many."""
MOST_UNDER_THE_HAND = 10 * MOST
"""While a button of the mouse is held, for to look through everything costs a frame or two."""


class Collector(QObject):
    """Collects for as long as its parent lives; Python's own is off from here on."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        gc.disable()
        QTimer(self, timeout=collect_when_due).start(EVERY_MS)


def collect_when_due() -> None:
    """Give up what nobody holds any more, if that may be much. Call it where no widget is being painted or destroyed."""
    held = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
    if gc.get_count()[0] > (MOST_UNDER_THE_HAND if held else MOST):
        gc.collect()
