"""Words of a table, kept where the toolkit paints from.

A model that answers in Python is asked some ten times a cell and frame, and
each time waits for the interpreter while a thread works beside the window: a
frame of a long table took a second then.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence

from PySide6.QtCore import QObject, QSignalBlocker, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel

from app.look.turns import Steps, Turns

LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
DISPLAY, TOLD, TIP, INK, LETTERS, STANDS = (int(role) for role in (
    Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole,
    Qt.ItemDataRole.ForegroundRole, Qt.ItemDataRole.FontRole, Qt.ItemDataRole.TextAlignmentRole))
"""What a cell says, what a reader reads out, its tip, its colour, its letters, where the words stand"""
STEP = 25
"""Rows that are filled in without looking at the clock."""
READ = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
TYPED = READ | Qt.ItemFlag.ItemIsEditable


class CellModel(QStandardItemModel):
    """Cells of rows of words. Only what differs from before is given to the toolkit, and told in one.

    To fill a cell costs some twenty microseconds, so thousands of rows would hold the window up: of a table with more than
    `at_once` rows the others are filled in turns. Rows wanted sooner, as those in sight, are asked for with `fill`.
    """

    def __init__(self, parent: QObject, at_once: int | None = None) -> None:
        """Without `at_once` all rows are filled at once."""
        super().__init__(parent)
        self.rows: list[tuple[str, ...]] = []
        self._cells: list[list[tuple[QStandardItem, dict[int, object]]]] = []
        """by row and column, with what each has on; nothing in a row that was never filled"""
        self._at_once = at_once
        self._due: set[int] = set()
        """rows that may not show yet what they look like now"""
        self._turns = Turns(self)

    def look(self, row: int, column: int) -> dict[int, object]:
        """What a cell of `rows` shows, by role; the same roles each time, None where there is nothing."""
        raise NotImplementedError

    def typed(self, row: int, column: int) -> bool:
        """Whether a cell may be typed into."""
        return False

    @property
    def busy(self) -> bool:
        """Whether rows are still to be filled."""
        return bool(self._due)

    def set_heads(self, heads: Sequence[str], left: Container[int] = ()) -> None:
        """So many columns under these words, those of the numbers in `left` on the left, and no rows yet. To the views it is another
        table: nothing stays chosen."""
        self.rows, self._cells, self._due = [], [], set()
        self._turns.stop()
        self.clear()
        self.setColumnCount(len(heads))
        self.setHorizontalHeaderLabels(list(heads))
        for column in range(len(heads)):
            self.setHeaderData(column, Qt.Orientation.Horizontal, LEFT if column in left else RIGHT, STANDS)

    def set_rows(self, rows: list[tuple[str, ...]]) -> None:
        """Other words: rows come or go at the end, the others stay rows."""
        before, after = len(self.rows), len(rows)
        self.rows = rows
        if after < before:
            del self._cells[after:]
            self._due.intersection_update(range(after))
            self.removeRows(after, before - after)
        elif after > before:
            self.insertRows(before, after - before)
            self._cells += [[] for _ in range(before, after)]
        self.refresh()

    def refresh(self) -> None:
        """Show what all cells look like now, those of a long table from `at_once` on in turns."""
        count = len(self.rows)
        self._turns.stop()
        self._due = set(range(count))
        if count:
            first = range(count if self._at_once is None else min(count, self._at_once))
            self._fill(first)
            self._tell(first)
        if self._due:
            self._turns.begin(self._others())

    def fill(self, rows: Iterable[int]) -> None:
        """Show now what these rows look like, if that is still due. Of no other row is it told that it changed: what is
        being typed there would be undone."""
        run: list[int] = []
        for row in sorted(self._due.intersection(rows)):
            if run and row != run[-1] + 1:
                self._fill_run(run)
                run = []
            run.append(row)
        if run:
            self._fill_run(run)

    def _fill_run(self, rows: Sequence[int]) -> None:
        if self._fill(rows):
            self._tell(rows)

    def refresh_cell(self, row: int, column: int) -> None:
        """Show what one cell looks like now."""
        if row in self._due:
            self.fill((row,))
            return
        with QSignalBlocker(self):
            self._put_on(self._cells[row][column], row, column)
        self.dataChanged.emit(self.index(row, column), self.index(row, column))

    def _others(self) -> Steps:
        for first in range(self._at_once, len(self.rows), STEP):
            self.fill(range(first, first + STEP))
            yield

    def _fill(self, rows: Sequence[int]) -> bool:
        """Whether any cell of these rows looked otherwise."""
        differs = False
        with QSignalBlocker(self):
            for row in rows:
                cells = self._cells[row]
                if not cells:
                    cells += [self._new(row, column) for column in range(self.columnCount())]
                for column, cell in enumerate(cells):
                    differs |= self._put_on(cell, row, column)
        self._due.difference_update(rows)
        return differs

    def _tell(self, rows: Sequence[int]) -> None:
        self.dataChanged.emit(self.index(rows[0], 0), self.index(rows[-1], self.columnCount() - 1))

    def _new(self, row: int, column: int) -> tuple[QStandardItem, dict[int, object]]:
        item = QStandardItem()
        item.setFlags(TYPED if self.typed(row, column) else READ)
        self.setItem(row, column, item)
        return item, {}

    def _put_on(self, cell: tuple[QStandardItem, dict[int, object]], row: int, column: int) -> bool:
        """Whether the cell looked otherwise."""
        item, worn = cell
        look = self.look(row, column)
        if look == worn:
            return False
        for role, value in look.items():
            if worn.get(role) != value:
                item.setData(value, role)
        item.setFlags(TYPED if self.typed(row, column) else READ)
        worn.update(look)
        return True
