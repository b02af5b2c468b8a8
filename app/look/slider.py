"""A slider that only a hand on it or a key moves."""

from __future__ import annotations

from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QSlider


class Slider(QSlider):
    """The wheel scrolls the panel on which it stands, as over a box of choices (app/look/choice.py)."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
