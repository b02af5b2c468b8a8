"""Areas that scroll and keep the room of their bars, whether there is something to scroll or not.

What is fitted to the room may need no bar where a bar takes some of it, and
one where there is none: a bar that comes and goes would then come and go
without end, for some sizes of the window.
"""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QAbstractScrollArea, QLayout, QScrollArea, QScrollBar, QVBoxLayout, QWidget

from app.look.filled import filled
from app.look.sizes import px

LEAST = 130
"""Height of a list in a page that scrolls around it, at 100 %, pixels."""


class SteadyBar(QScrollBar):
    """A bar that is not seen while there is nothing to scroll, but keeps its room."""

    def paintEvent(self, event) -> None:
        if self.maximum() > self.minimum():
            super().paintEvent(event)


def steady(area: QAbstractScrollArea, across: bool = False) -> None:
    """Give the area bars that keep their room; without `across` none runs across."""
    always = Qt.ScrollBarPolicy.ScrollBarAlwaysOn
    area.setVerticalScrollBar(SteadyBar(Qt.Orientation.Vertical, area))
    area.setVerticalScrollBarPolicy(always)
    if across:
        area.setHorizontalScrollBar(SteadyBar(Qt.Orientation.Horizontal, area))
    area.setHorizontalScrollBarPolicy(always if across else Qt.ScrollBarPolicy.ScrollBarAlwaysOff)


class Scroll(QScrollArea):
    """A page as wide as the area, which the keyboard reaches under `name` when it scrolls."""

    def __init__(self, name: str, parent: QWidget | None = None, page: QWidget | None = None) -> None:
        super().__init__(parent, accessibleName=name, focusPolicy=Qt.FocusPolicy.TabFocus, widgetResizable=True)
        steady(self)
        if page is not None:
            if page.layout() is not None:
                # The area hears of rows that come to be a turn after the page has laid them out, and paints in between.
                page.layout().setSizeConstraint(QLayout.SizeConstraint.SetMinimumSize)
            self.setWidget(page)

    def to_top(self) -> None:
        """Show the page from its beginning."""
        self.verticalScrollBar().setValue(0)


class Yielding(QWidget):
    """Holds a list or a table that scrolls itself: it takes what height its page leaves it, a few rows at least. Below that the
    page scrolls, and what stands around the list is never squeezed."""

    def __init__(self, inside: QWidget, parent: QWidget, least: int = LEAST) -> None:
        """`least` is its height at least, at 100 %, pixels."""
        super().__init__(parent)
        self._least = least
        self._whole = filled(QVBoxLayout(self), inside, margins=(0, 0, 0, 0))

    def sizeHint(self) -> QSize:
        return QSize(self._whole.sizeHint().width(), px(self._least))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._whole.minimumSize().width(), px(self._least))
