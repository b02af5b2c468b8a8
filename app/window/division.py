"""How a window is divided between the drawing and the panel on the right."""

from __future__ import annotations

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter


class Division(QSplitter):
    """The drawing, and the panel beside it. In a narrow window the panel takes no more than half as long as its least width leaves
    that; wider than it asks for itself only the maker makes it, and then it stays."""

    def share_out(self) -> None:
        """Give the panel the width that its letters ask for."""
        wide = self.widget(1).sizeHint().width()
        self.setSizes([max(self.width(), 2 * wide) - wide, wide])
        if self.isVisible():  # else it is not as wide yet as it will be
            self._halve()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._halve()

    def _halve(self) -> None:
        drawing, panel = self.sizes()
        most = max((drawing + panel) // 2, self.widget(1).minimumWidth())
        if most < panel <= self.widget(1).sizeHint().width():
            self.setSizes([drawing + panel - most, most])
