"""One shelf of the rack as a table."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QWidget

from app.look.sizes import keep
from app.panels.forms.cell_model import DISPLAY, LEFT, RIGHT, STANDS, TOLD, CellModel
from app.panels.router.rack_rows import HEADS, cells
from geometry.edits.rack import Shelf
from geometry.layout import Rack
from geometry.saying import say
from geometry.units import LengthUnit


class ShelfModel(CellModel):
    """Words of one shelf, read only."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._heads: tuple[str, ...] = ()

    def show(self, heads: tuple[str, ...], rows: list[tuple[str, ...]]) -> bool:
        """Other words; True when the rows themselves are others, so that a selection is lost."""
        others = [row[0] for row in rows] != [row[0] for row in self.rows] or heads != self._heads
        if others:
            self._heads = heads
            self.set_heads(heads, (0,))
        self.set_rows(rows)
        return others

    def look(self, row: int, column: int) -> dict[int, object]:
        words = self.rows[row][column]
        return {DISPLAY: words, TOLD: f"{self._heads[column]}: {words}", STANDS: RIGHT if column else LEFT}


class ShelfTable(QTableView):
    """Shows a shelf and tells which entry is chosen."""

    chosen = Signal(str)
    """id of the entry, "" for none"""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = ShelfModel(self)
        self.setModel(self._words)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.verticalHeader().hide()
        keep(self, rows=26)
        self.setShowGrid(False)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.setAccessibleName(say("Rack"))
        self.selectionModel().currentRowChanged.connect(self._current)

    @property
    def id(self) -> str:
        """The entry that is chosen, "" for none."""
        row = self.currentIndex().row()
        return self._words.rows[row][0] if 0 <= row < len(self._words.rows) else ""

    def show_shelf(self, rack: Rack, shelf: Shelf, unit: LengthUnit, id: str) -> None:
        """Show a shelf with this entry chosen, the first one when there is none of that name."""
        if self._words.show(HEADS[shelf], cells(rack, shelf, unit)):
            self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.follow_sizes()
        ids = [row[0] for row in self._words.rows]
        if ids and self.id != id or not self.currentIndex().isValid():
            self.setCurrentIndex(self._words.index(ids.index(id) if id in ids else 0, 0))

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.follow_sizes()

    def follow_sizes(self) -> None:
        """Names take what the other columns leave over, but never less than they need: then the table scrolls."""
        header = self.horizontalHeader()
        if not header.count():
            return
        others = sum(header.sectionSize(column) for column in range(1, header.count()))
        room = self.viewport().width() - others >= max(self.sizeHintForColumn(0), header.sectionSizeHint(0))
        modes = QHeaderView.ResizeMode
        header.setSectionResizeMode(0, modes.Stretch if room else modes.ResizeToContents)

    def _current(self, *_: object) -> None:
        self.chosen.emit(self.id)
