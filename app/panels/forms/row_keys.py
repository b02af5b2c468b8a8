"""The keys that lead from row to row of a list."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent

_WALK = frozenset({Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown})


def walks(event: QKeyEvent) -> bool:
    """Whether a key leads to another row: what is chosen there is shown, as a click would show it."""
    return event.key() in _WALK
