"""How a window is divided between the drawing and the panel on the right."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSplitter, QWidget


class Division(QSplitter):
    """The drawing, and the panel beside it. In a narrow window the panel takes no more than half as long as its least width leaves
    that, and has its width again with the window; wider than it asks for itself only the maker makes it, and then it stays."""

    _before = 0
    """the panel's width before a narrow window halved it, pixels; 0 where none did"""

    def __init__(self, orientation: Qt.Orientation, parent: QWidget) -> None:
        super().__init__(orientation, parent)
        self.splitterMoved.connect(self._moved)

    def share_out(self) -> None:
        """Give the panel the width that its letters ask for."""
        self._before, wide = 0, self.widget(1).sizeHint().width()
        self.setSizes([max(self.width(), 2 * wide) - wide, wide])
        if self.isVisible():  # else it is not as wide yet as it will be
            self._halve()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._halve()

    def _halve(self) -> None:
        if self.widget(1).isHidden():
            return
        drawing, panel = self.sizes()
        most = max((drawing + panel) // 2, self.widget(1).minimumWidth())
        wanted = max(panel, self._before)
        if wanted <= self.widget(1).sizeHint().width() and min(wanted, most) != panel:
            self._before = wanted if most < wanted else 0
            panel, drawing = min(wanted, most), drawing + panel - min(wanted, most)
            self.setSizes([drawing, panel])

    def _moved(self) -> None:
        self._before = 0
