"""Areas that scroll up and down and keep the room of their bar, whether there is something to scroll or not.

A picture is as high as its width allows. Where a bar comes and goes, it makes
the picture narrower, thus lower, so that everything fits and the bar goes, and
the picture grows again: without end, for some heights of the window.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractScrollArea, QScrollArea, QScrollBar, QWidget


class SteadyBar(QScrollBar):
    """A vertical bar that is not seen while there is nothing to scroll, but keeps its room."""

    def paintEvent(self, event) -> None:
        if self.maximum() > self.minimum():
            super().paintEvent(event)


def steady(area: QAbstractScrollArea) -> None:
    """Give the area a bar that keeps its room, and none that runs across."""
    area.setVerticalScrollBar(SteadyBar(Qt.Orientation.Vertical, area))
    area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)


class Scroll(QScrollArea):
    """A page as wide as the area, which the keyboard reaches under `name` when it scrolls."""

    def __init__(self, name: str, parent: QWidget | None = None, page: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setWidgetResizable(True)
        steady(self)
        if page is not None:
            self.setWidget(page)
