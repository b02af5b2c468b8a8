"""Room for a part of the window whose words change often, and whose neighbours need not hear of it each time."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QWidget


class Calm(QWidget):
    """Holds one widget in all its room, and asks for more or less room only when that widget does.

    A layout in which a word changes tells the layout around it, and so on up to the window; each then asks all that
    it holds how large it wants to be, and every word that wraps is laid out again. This one has no layout: it looks
    itself whether anything but words has changed. With `wraps` the inner widget is as high as its words need at the
    width that it has, and never lower than `lines` lines: words that take now one line and now two move nothing then.
    """

    def __init__(self, inner: QWidget, parent: QWidget, wraps: bool = False, lines: int = 0) -> None:
        super().__init__(parent)
        self._inner, self._wraps, self._lines = inner, wraps, lines
        self._asked = QSize(0, 0)  # a parent that is laid out already asks at once
        inner.setParent(self)
        policy = inner.sizePolicy()
        policy.setHeightForWidth(wraps)
        self.setSizePolicy(policy)
        self._asked = self._asks()

    def sizeHint(self) -> QSize:
        return QSize(self._asked.width(), max(self._inner.sizeHint().height(), self._least_height))

    def minimumSizeHint(self) -> QSize:
        return self._asked

    def hasHeightForWidth(self) -> bool:
        return self._wraps

    def heightForWidth(self, width: int) -> int:
        return max(self._inner.heightForWidth(width), self._least_height)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.LayoutRequest:
            self._ask()
        return super().event(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._inner.setGeometry(self.rect())
        if event.size().width() != event.oldSize().width():
            self._ask()

    def _ask(self) -> None:
        asks = self._asks()
        if asks != self._asked:
            self._asked = asks
            self.updateGeometry()

    def _asks(self) -> QSize:
        """The least room; how wide the words would like to be is none of it."""
        least, layout = self._inner.minimumSizeHint().expandedTo(self._inner.minimumSize()), self._inner.layout()
        width = max(self.width(), least.width())
        if self._wraps:
            return QSize(least.width(), self.heightForWidth(width))
        if layout is not None and layout.hasHeightForWidth():  # rows in it go on in another line at this width
            return least.expandedTo(QSize(0, layout.totalMinimumHeightForWidth(width)))
        return least

    @property
    def _least_height(self) -> int:
        # Lines laid out, not a multiple of the space between lines: that is rounded.
        return self._inner.fontMetrics().size(0, "\n".join("x" * self._lines)).height() if self._lines else 0
