"""Words of a table, kept where the toolkit paints from.

A model that answers in Python is asked some ten times a cell and frame, and
each time waits for the interpreter while a thread works beside the window: a
frame of a long table took a second then.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, QSignalBlocker, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel

LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
DISPLAY, TOLD, TIP, INK, LETTERS, STANDS = (int(role) for role in (
    Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole,
    Qt.ItemDataRole.ForegroundRole, Qt.ItemDataRole.FontRole, Qt.ItemDataRole.TextAlignmentRole))
"""What a cell says, what a reader reads out, its tip, its colour, its letters, where the words stand"""
READ = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
TYPED = READ | Qt.ItemFlag.ItemIsEditable


class CellModel(QStandardItemModel):
    """Cells of rows of words. Only what differs from before is given to the toolkit, and told in one."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.rows: list[tuple[str, ...]] = []
        self._cells: list[list[tuple[QStandardItem, dict[int, object]]]] = []
        """by row and column, with what each has on"""

    def look(self, row: int, column: int) -> dict[int, object]:
        """What a cell of `rows` shows, by role; the same roles each time, None where there is nothing."""
        raise NotImplementedError

    def typed(self, row: int, column: int) -> bool:
        """Whether a cell may be typed into."""
        return False

    def set_heads(self, heads: Sequence[str]) -> None:
        """So many columns under these words, and no rows yet. To the views it is another table: nothing stays chosen."""
        self.rows, self._cells = [], []
        self.clear()
        self.setColumnCount(len(heads))
        self.setHorizontalHeaderLabels(list(heads))

    def set_rows(self, rows: list[tuple[str, ...]]) -> None:
        """Other words: rows come or go at the end, the others stay rows."""
        before, after = len(self.rows), len(rows)
        self.rows = rows
        if after < before:
            del self._cells[after:]
            self.removeRows(after, before - after)
        elif after > before:
            self.insertRows(before, after - before)
            with QSignalBlocker(self):
                self._cells += [[self._new(row, column) for column in range(self.columnCount())] for row in range(before, after)]
        self.refresh()

    def refresh(self) -> None:
        """Show what all cells look like now."""
        with QSignalBlocker(self):
            for row, cells in enumerate(self._cells):
                for column, cell in enumerate(cells):
                    self._put_on(cell, row, column)
        if self._cells:
            self.dataChanged.emit(self.index(0, 0), self.index(len(self._cells) - 1, self.columnCount() - 1))

    def refresh_cell(self, row: int, column: int) -> None:
        """Show what one cell looks like now."""
        with QSignalBlocker(self):
            self._put_on(self._cells[row][column], row, column)
        self.dataChanged.emit(self.index(row, column), self.index(row, column))

    def _new(self, row: int, column: int) -> tuple[QStandardItem, dict[int, object]]:
        item = QStandardItem()
        item.setFlags(TYPED if self.typed(row, column) else READ)
        self.setItem(row, column, item)
        return item, {}

    def _put_on(self, cell: tuple[QStandardItem, dict[int, object]], row: int, column: int) -> None:
        item, worn = cell
        look = self.look(row, column)
        if look == worn:
            return
        for role, value in look.items():
            if worn.get(role) != value:
                item.setData(value, role)
        item.setFlags(TYPED if self.typed(row, column) else READ)
        worn.update(look)
