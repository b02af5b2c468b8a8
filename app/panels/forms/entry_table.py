"""A table to type into: Enter goes down, Tab goes on, and what cannot be read stays to be mended."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence

from msgspec import Struct
from PySide6.QtCore import QEvent, QModelIndex, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractItemDelegate,
    QAbstractItemView,
    QHeaderView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from app.look.plain import plain
from app.look.sizes import keep, px
from app.look.theme import theme
from app.panels.forms.cell_model import DISPLAY, INK, LEFT, LETTERS, RIGHT, STANDS, TIP, TOLD, CellModel
from geometry.errors import GeometryError

LEAST = 120
"""Width of the wide column at least, at 100 %, pixels."""
MOST = 900
"""And at most."""
NARROW = 2
"""Pixels: no letter is narrower."""
AT_ONCE = 200
"""Rows that are filled before the table is painted, beside those in sight; see CellModel."""
FREE, TYPED, PRESSED = "", "typed", "pressed"
NEW = "new"
"""Key of the empty row for what is not there yet: the keyboard begins there and stays there, so that nobody types over
what is."""

Shown = tuple[list[tuple[str, ...]], frozenset[int], Sequence[Hashable] | None, Hashable]
"""What EntryModel.show takes: rows, which of them are sums, keys, what the table is of"""


class Head(Struct, frozen=True):
    """One column: its word, whether cells are typed into or pressed, whether they stand left."""

    word: str
    kind: str = FREE
    left: bool = False
    wide: bool = False


def in_two(words: str) -> str:
    """Words in two lines, the longer one as short as can be; a single word stays one."""
    parts = words.split(" ")
    ways = [(" ".join(parts[:i]), " ".join(parts[i:])) for i in range(1, len(parts))]
    return "\n".join(min(ways, key=lambda way: max(map(len, way)))) if ways else words


class EntryModel(CellModel):
    """Words by row; rows are told apart by their number, so that an editor stays open while others change.

    `keys` tell what each row is of: what was refused goes along when rows before it come or go.
    """

    entered = Signal(int, int, str)

    def __init__(self, heads: tuple[Head, ...], parent: QWidget) -> None:
        super().__init__(parent, AT_ONCE)
        self.heads = heads
        self.keys: tuple[Hashable, ...] = ()
        self._of: Hashable = None
        self.strong: frozenset[int] = frozenset()
        self.bad: dict[tuple[int, int], tuple[str, str]] = {}
        self._bold = QFont()
        self._bold.setBold(True)
        self.set_heads([head.word for head in heads], [column for column, head in enumerate(heads) if head.left])

    def show(self, rows: list[tuple[str, ...]], strong: frozenset[int] = frozenset(), keys: Sequence[Hashable] | None = None,
             of: Hashable = None) -> None:
        """Other words; `strong` rows are sums, which nothing is typed into. `keys` are what the rows are of, their
        numbers without any; `of` is what the whole table is of: of another one nothing refused is kept."""
        self._carry(tuple(range(len(rows))) if keys is None else tuple(keys), of)
        self.strong = strong
        self.set_rows(rows)

    def break_heads(self, broken: bool) -> None:
        """Write the word over each column in one line, or in two."""
        for column, head in enumerate(self.heads):
            self.setHeaderData(column, Qt.Orientation.Horizontal, in_two(head.word) if broken and not head.wide else head.word)

    def _carry(self, keys: tuple[Hashable, ...], of: Hashable) -> None:
        """What was refused to the row that it was typed for; a row whose record was edited keeps its place."""
        old, self.keys = self.keys, keys
        refused, self.bad = self.bad, {}
        if of != self._of:
            self._of = of
            return
        places, known = {key: row for row, key in enumerate(keys)}, set(old)
        for (row, column), bad in refused.items():
            to = places.get(old[row])
            if to is None and len(old) == len(keys) and keys[row] not in known:
                to = row
            if to is not None:
                self.bad[to, column] = bad

    def refuse(self, row: int, column: int, text: str, why: str) -> None:
        """Keep what was typed, marked, with the reason as its tip."""
        self.bad[row, column] = text, why
        self.refresh_cell(row, column)

    def accept(self, row: int, column: int) -> None:
        """Forget what was refused in that cell."""
        if self.bad.pop((row, column), None) is not None:
            self.refresh_cell(row, column)

    def typed(self, row: int, column: int) -> bool:
        return self.heads[column].kind == TYPED and row not in self.strong

    def look(self, row: int, column: int) -> dict[int, object]:
        head, bad = self.heads[column], self.bad.get((row, column)) if self.bad else None
        words, why = (self.rows[row][column], None) if bad is None else bad
        told = f"{head.word}: {words}"
        return {
            DISPLAY: words,
            TOLD: told if why is None else f"{told}. {why}",
            TIP: plain(why) if why is not None else plain(words) if head.wide and words else None,
            INK: None if why is None else QColor(theme().spoils),
            LETTERS: self._bold if why is not None or row in self.strong else None,
            STANDS: LEFT if head.left else RIGHT,
        }

    def widest(self, column: int, font: QFont) -> int:
        """The row with the widest words of a column; 0 for an empty table. Words that come again are measured once."""
        first: dict[tuple[str, bool], int] = {}
        for row, words in enumerate(self.rows):
            bad = self.bad.get((row, column)) if self.bad else None
            first.setdefault((words[column] if bad is None else bad[0], bad is not None or row in self.strong), row)
        bold = QFont(font)
        bold.setBold(True)
        letters = {False: QFontMetrics(font), True: QFontMetrics(bold)}
        wide = {row: letters[strong].horizontalAdvance(words) for (words, strong), row in first.items()}
        return max(wide, key=wide.__getitem__, default=0)

    def setData(self, index: QModelIndex, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """An editor is left: whoever keeps the record takes what was typed, and shows it or refuses it."""
        if str(value) != index.data():
            self.entered.emit(index.row(), index.column(), str(value))
        return True


class _InSight(QStyledItemDelegate):
    """Paints the wide column. The toolkit lays out all words of a cell in each frame and then cuts them to its width: of a note of
    thousands of letters it is given the beginning and the end alone, more of each than the cell has room for."""

    def initStyleOption(self, option: QStyleOptionViewItem, index: QModelIndex) -> None:
        super().initStyleOption(option, index)
        words, room = option.text, option.rect.width() // NARROW
        if len(words) > 2 * room > 0:
            option.text = words[:room] + words[-room:]


class EntryTable(QTableView):
    """Sends (row, column, text) when a cell was typed into and (row, column) when one that acts was pressed."""

    entered = Signal(int, int, str)
    pressed_at = Signal(int, int)
    struck = Signal(int)
    """the Delete key on a row"""
    refused = Signal(str)
    """why what was typed was not taken"""

    def __init__(self, name: str, heads: tuple[Head, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._waiting: Shown | None = None
        self.words = EntryModel(heads, self)
        self.words.entered.connect(self.entered)
        self.setModel(self.words)
        self.setAccessibleName(name)
        # A second press on a cell opens it at once (`_clicked`): the toolkit would wait whether a double click comes, and
        # let keys that are typed meanwhile go.
        triggers = QAbstractItemView.EditTrigger
        self.setEditTriggers(triggers.DoubleClicked | triggers.AnyKeyPressed | triggers.EditKeyPressed)
        self._pressed_again = False
        """whether the press under way is on the cell that had the keyboard"""
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setShowGrid(False)
        self.setObjectName("entries")
        self.verticalHeader().hide()
        keep(self, rows=27)
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        # Columns are measured here, once for words and letters: the toolkit would measure every cell at each change of anything.
        for i, head in enumerate(heads):
            header.setSectionResizeMode(i, QHeaderView.ResizeMode.Stretch if head.wide else QHeaderView.ResizeMode.Fixed)
            if head.wide:
                self.setItemDelegateForColumn(i, _InSight(self))
        self._measured: tuple | None = None
        self._widths: dict[bool, dict[int, int]] = {False: {}, True: {}}
        """of each column but the wide one, by whether the heads are in two lines, pixels"""
        self._broken = False
        self.clicked.connect(self._clicked)
        self.words.dataChanged.connect(self.follow_sizes)

    def resizeEvent(self, event) -> None:
        super().resizeEvent(event)
        self.follow_sizes()
        self._fill_in_sight()

    def showEvent(self, event) -> None:
        super().showEvent(event)
        self.follow_sizes()
        self._fill_in_sight()

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        super().scrollContentsBy(dx, dy)
        if dy:
            self._fill_in_sight()

    def currentChanged(self, current: QModelIndex, previous: QModelIndex) -> None:
        """The keyboard goes to a row, which may be out of sight still: what is said and asked of it is of now."""
        self.words.fill((current.row(),))
        super().currentChanged(current, previous)

    def _fill_in_sight(self) -> None:
        """The rows in sight come before the others of a long table."""
        if self.words.busy and self.isVisible():
            first = max(0, self.rowAt(0))
            self.words.fill(range(first, first + self.viewport().height() // self.verticalHeader().defaultSectionSize() + 2))

    def follow_sizes(self) -> None:
        """The wide column takes what the others leave over, but never less than LEAST: then heads go on in a second line, and where
        that is not enough the table scrolls; and never more than MOST, else the eye would lose the row on the way to its numbers."""
        if not self.isVisible():
            return
        header = self.horizontalHeader()
        wide = [i for i, head in enumerate(self.words.heads) if head.wide]
        room = (self.viewport().width() - self._fit(len(wide))) // max(1, len(wide))
        kept = min(max(room, px(LEAST)), px(MOST))
        modes = QHeaderView.ResizeMode
        for i in wide:
            header.setSectionResizeMode(i, modes.Stretch if kept == room else modes.Fixed)
            if kept != room:
                header.resizeSection(i, kept)

    def _fit(self, wide: int) -> int:
        """Make each column but the `wide` ones as wide as its widest words, its head in two lines where these leave the others too little
        room; their width together, pixels."""
        header, words = self.horizontalHeader(), self.words
        state = (words.rows, words.strong, dict(words.bad), self.font(), header.font(), px(100))
        if self._measured != state:
            self._measured = state
            self._widths = self._measure()
            self._broken = False
        broken = self.viewport().width() - sum(self._widths[False].values()) < wide * px(LEAST)
        if broken != self._broken:
            self._broken = broken
            words.break_heads(broken)
        for i, width in self._widths[broken].items():
            header.resizeSection(i, width)
        return sum(self._widths[broken].values())

    def _measure(self) -> dict[bool, dict[int, int]]:
        """The widths that the columns but the wide one ask for, as `_widths` has them; heads are left in one line."""
        header, words = self.horizontalHeader(), self.words
        cells: dict[int, int] = {}
        for i, head in enumerate(words.heads):
            if not head.wide:
                widest = words.widest(i, self.font())
                words.fill((widest,))
                cells[i] = self.sizeHintForIndex(words.index(widest, i)).width() if words.rows else 0
        found: dict[bool, dict[int, int]] = {}
        for broken in (True, False):
            words.break_heads(broken)
            found[broken] = {i: max(header.sectionSizeHint(i), cell) for i, cell in cells.items()}
        return found

    def show_rows(self, rows: list[tuple[str, ...]], strong: frozenset[int] = frozenset(), keys: Sequence[Hashable] | None = None,
                  of: Hashable = None) -> None:
        """Show these words, as EntryModel.show; the place of the keyboard stays.

        While a cell is typed into they wait: they would undo the typing. So who takes an entry asks `key` which row it is of.
        """
        if self.state() == QAbstractItemView.State.EditingState:
            self._waiting = rows, strong, keys, of
            return
        self._waiting = None
        index = self.currentIndex()
        begins = not index.isValid() or self.key(index.row()) == NEW
        self._show((rows, strong, keys, of))
        if rows and begins:
            first = next((i for i, head in enumerate(self.words.heads) if head.kind == TYPED), 0)
            self.stand_at(self.words.keys.index(NEW) if NEW in self.words.keys else 0, index.column() if index.isValid() else first)

    def _show(self, shown: Shown) -> None:
        """Show words as EntryModel.show; those in sight and at the keyboard at once."""
        self.words.show(*shown)
        self.words.fill((self.currentIndex().row(),))
        self._fill_in_sight()

    def key(self, row: int) -> Hashable:
        """What a row on show is of; None for no row."""
        return self.words.keys[row] if 0 <= row < len(self.words.keys) else None

    def put_down(self, row: int, column: int, text: str, put: Callable[[], object]) -> None:
        """Have `put` take what was typed into a cell; where it raises GeometryError the text stays there to be mended."""
        try:
            put()
        except GeometryError as error:
            self.words.refuse(row, column, text, str(error))
            self.refused.emit(str(error))
        else:
            self.words.accept(row, column)

    def follow_theme(self) -> None:
        """What was refused in other colours."""
        for row, column in self.words.bad:
            self.words.refresh_cell(row, column)

    def stand_at(self, row: int, column: int) -> None:
        """Put the keyboard on a cell."""
        self.setCurrentIndex(self.words.index(row, column))

    # ---- the keyboard -------------------------------------------------------
    def moveCursor(self, action, keys):
        step = {QAbstractItemView.CursorAction.MoveNext: 1, QAbstractItemView.CursorAction.MovePrevious: -1}.get(action)
        index = self.currentIndex()
        if step is None or not index.isValid():
            return super().moveCursor(action, keys)
        columns = self.words.columnCount()
        at = index.row() * columns + index.column() + step
        while 0 <= at < columns * self.words.rowCount():
            found = self.words.index(at // columns, at % columns)
            if self.words.typed(found.row(), found.column()):
                return found
            at += step
        return index

    def closeEditor(self, editor: QWidget, hint: QAbstractItemDelegate.EndEditHint) -> None:
        if self._waiting is not None:
            self._show(self._waiting)
            self._waiting = None
        super().closeEditor(editor, hint)
        index = self.currentIndex()
        if hint == QAbstractItemDelegate.EndEditHint.SubmitModelCache and index.row() + 1 < self.words.rowCount():
            self.setCurrentIndex(index.siblingAtRow(index.row() + 1))

    def event(self, event: QEvent) -> bool:
        """The Delete key strikes out here and does not remove what is held on the drawing; Esc puts back what was refused."""
        if event.type() == QEvent.Type.ShortcutOverride and (
                event.key() == Qt.Key.Key_Delete or event.key() == Qt.Key.Key_Escape and self._refused_here):
            event.accept()
            return True
        return super().event(event)

    @property
    def _refused_here(self) -> bool:
        """Whether what was typed into the cell with the keyboard was refused."""
        return (self.currentIndex().row(), self.currentIndex().column()) in self.words.bad

    def keyPressEvent(self, event) -> None:
        index = self.currentIndex()
        key = event.key()
        editing = self.state() == QAbstractItemView.State.EditingState
        if index.isValid() and not editing:
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
                if self._acts(index):
                    self.pressed_at.emit(index.row(), index.column())
                    return
                if key != Qt.Key.Key_Space and self.words.flags(index) & Qt.ItemFlag.ItemIsEditable:
                    self.edit(index)
                    return
            if key == Qt.Key.Key_Delete:
                self.struck.emit(index.row())
                return
            if key == Qt.Key.Key_Escape and self._refused_here:
                self.words.accept(index.row(), index.column())
                return
        super().keyPressEvent(event)

    def _acts(self, index: QModelIndex) -> bool:
        return self.words.heads[index.column()].kind == PRESSED and bool(index.data())

    def mousePressEvent(self, event) -> None:
        index = self.indexAt(event.position().toPoint())
        self._pressed_again = self.hasFocus() and index.isValid() and index == self.currentIndex()
        super().mousePressEvent(event)

    def _clicked(self, index: QModelIndex) -> None:
        if self._acts(index):
            self.pressed_at.emit(index.row(), index.column())
        elif self._pressed_again and self.words.flags(index) & Qt.ItemFlag.ItemIsEditable:
            self.edit(index)
