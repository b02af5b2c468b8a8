"""A row of widgets that goes on in another row where there is no room: large letters stay inside the window."""

from __future__ import annotations

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QSizePolicy, QSpacerItem, QWidget, QWidgetItem
from shiboken6 import isValid


class _Held(QWidgetItem):
    """The place of a widget in a row. One that `gives_way` is narrowed, down to its least width, where all then stand in one row.

    Made here and not by the toolkit: what it makes itself is lost to Python with the first part around the row that
    Python has seen (a scroll area's viewport, say, when Tab walks through the window) and forgets again.
    """

    gives_way = False


class _Gap(QSpacerItem):
    """Room in a row; made here for the same reason."""

    keeps: int | None = None
    """pixels that the widget before it leaves of it; None where that may use none"""


class Flow(QLayout):
    """Widgets from left to right, then below. A gap (`add_gap`) takes what room its row leaves over, or a fixed width where
    anything stands before it.

    In one row it looks like a plain row. Widgets in a row stand at its middle height.
    """

    def __init__(self, parent: QWidget | None = None, margins: tuple[int, int, int, int] = (0, 0, 0, 0),
                 gap: int = 6) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._giving = False
        """whether a widget gives way"""
        self.setContentsMargins(*margins)
        self.setSpacing(gap)

    def addWidget(self, widget: QWidget, gives_way: bool = False) -> None:
        """One that `gives_way` is narrowed, down to its least width, before the row goes on below."""
        self.addChildWidget(widget)
        held = _Held(widget)
        held.gives_way = gives_way
        self._giving = self._giving or gives_way
        self.addItem(held)

    # ---- what QLayout asks for -------------------------------------------
    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self.invalidate()

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return self._lay(QRect(0, 0, width, 0), False)

    def setGeometry(self, area: QRect) -> None:
        super().setGeometry(area)
        self._lay(area, True)

    def sizeHint(self) -> QSize:
        """All in one row."""
        shown = self._shown()
        width = sum(item.sizeHint().width() for item in shown) + max(0, len(shown) - 1) * self.spacing()
        return self._around(QSize(width, max((item.sizeHint().height() for item in shown), default=0)))

    def minimumSize(self) -> QSize:
        """The widest widget alone in a row."""
        least = QSize()
        for item in self._shown():
            if item.spacerItem() is None:
                least = least.expandedTo(item.minimumSize())
        return self._around(least)

    # ---- more than a row has ---------------------------------------------
    def insert_widget(self, index: int, widget: QWidget) -> None:
        """A widget before the item of that number."""
        self.addWidget(widget)
        self._items.insert(index, self._items.pop())
        self.invalidate()

    def add_gap(self, width: int = 0, keeps: int | None = None) -> None:
        """Room of a fixed width; without one it takes what its row leaves over. With `keeps` the widget before it grows into it
        and leaves it so many pixels; nothing else moves for that."""
        policy = QSizePolicy.Policy.Fixed if width else QSizePolicy.Policy.Expanding
        gap = _Gap(width, 0, policy, QSizePolicy.Policy.Minimum)
        gap.keeps = keeps
        self.addItem(gap)

    # ---- inside -----------------------------------------------------------
    def _living(self) -> list[QLayoutItem]:
        """The items; while a window is destroyed Qt still asks for sizes when the items are gone for Python already."""
        return [item for item in self._items if isValid(item)]

    def _shown(self) -> list[QLayoutItem]:
        """What takes room: widgets that are seen, and gaps, but for a fixed one that nothing stands before."""
        shown: list[QLayoutItem] = []
        for item in self._living():
            if not item.isEmpty() if item.spacerItem() is None else shown or item.expandingDirections():
                shown.append(item)
        return shown

    def _around(self, size: QSize) -> QSize:
        m = self.contentsMargins()
        return size + QSize(m.left() + m.right(), m.top() + m.bottom())

    def _lay(self, area: QRect, move: bool) -> int:
        """Height needed in the width of `area`; with `move` the widgets are placed in it."""
        m: QMargins = self.contentsMargins()
        room = area.width() - m.left() - m.right()
        y = area.y() + m.top()
        rows = self._rows(room)
        for row in rows:
            height = max((size.height() for _, size in row), default=0)
            if move:
                self._place(row, area.x() + m.left(), y, room, height)
            y += height + self.spacing()
        return y - (self.spacing() if rows else 0) + m.bottom() - area.y()

    def _rows(self, room: int) -> list[list[tuple[QLayoutItem, QSize]]]:
        rows: list[list[tuple[QLayoutItem, QSize]]] = []
        at, over = room + 1, self._over() - room if self._giving else 0
        for item in self._shown():
            gap = item.spacerItem()
            size = item.sizeHint()
            if over > 0 and isinstance(item, _Held) and item.gives_way and size.width() - over >= item.minimumSize().width():
                size = QSize(size.width() - over, size.height())
            if gap is None and size.width() > room:
                size = QSize(room, item.heightForWidth(room) if item.hasHeightForWidth() else size.height())
            if gap is not None and not rows:
                rows.append([])
                at = 0
            if gap is None and at + size.width() > room:
                rows.append([])
                at = 0
            rows[-1].append((item, size))
            at += size.width() + self.spacing()
        return rows

    def _over(self) -> int:
        """Width of all in one row, without a gap that ends it."""
        ends = sum(self.spacing() for item in self._shown()[-1:] if item.spacerItem() is not None)
        return self.sizeHint().width() - self._around(QSize(0, 0)).width() - ends

    def _place(self, row: list[tuple[QLayoutItem, QSize]], x: int, y: int, room: int, height: int) -> None:
        used = sum(size.width() for _, size in row) + max(0, len(row) - 1) * self.spacing()
        growing = [item for item, _ in row if item.spacerItem() is not None
                   and item.expandingDirections() & Qt.Orientation.Horizontal]
        over = max(0, room - used) // len(growing) if growing else 0
        for (item, size), (after, _) in zip(row, [*row[1:], (None, None)], strict=True):
            if item.spacerItem() is None:
                more = max(0, over - after.keeps) if isinstance(after, _Gap) and after.keeps is not None else 0
                item.setGeometry(QRect(QPoint(x, y + (height - size.height()) // 2), size + QSize(more, 0)))
            x += size.width() + self.spacing() + (over if item in growing else 0)
