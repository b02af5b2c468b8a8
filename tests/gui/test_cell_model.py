"""Tables paint without asking Python: what a cell looks like is handed over once, and only what differs later."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QTableView

from app.panels.forms.cell_model import DISPLAY, TOLD, CellModel
from app.panels.forms.entry_table import EntryTable, Head
from app.panels.router.rack_table import ShelfTable
from app.window.demo import demo


class Counted(CellModel):
    """Counts how often it is asked."""

    asked = 0

    def look(self, row, column):
        self.asked += 1
        words = self.rows[row][column]
        return {DISPLAY: words, TOLD: f"cell {words}" if words else None}


@pytest.fixture
def model(qtbot):
    view = QTableView()
    qtbot.addWidget(view)
    made = Counted(view)
    made.view = view
    view.setModel(made)
    made.set_heads(["one", "two"])
    return made


def shown(model):
    return [tuple(model.index(row, column).data() for column in range(model.columnCount())) for row in range(model.rowCount())]


def test_rows_come_change_and_go(model):
    for rows in ([("a", "b"), ("c", "d")], [("a", "x")], [], [("1", "2"), ("3", ""), ("5", "6")]):
        model.set_rows(rows)
        assert shown(model) == rows
        for row, words in enumerate(rows):
            for column, word in enumerate(words):
                assert model.index(row, column).data(Qt.ItemDataRole.AccessibleTextRole) == (f"cell {word}" if word else None)


def test_a_frame_asks_nothing(model):
    model.view.show()
    model.set_rows([(str(k), "") for k in range(30)])
    before = model.asked
    model.view.grab()
    model.view.resize(300, 700)
    model.view.grab()
    assert model.asked == before


def test_what_changes_is_told_in_one(model):
    model.set_rows([("a", "b"), ("c", "d")])
    told = []
    model.dataChanged.connect(lambda first, last: told.append((first.row(), first.column(), last.row(), last.column())))
    model.set_rows([("a", "b"), ("c", "e")])
    assert told == [(0, 0, 1, 1)] and shown(model) == [("a", "b"), ("c", "e")]


def test_another_table_has_other_columns_and_nothing_chosen(model):
    model.set_rows([("a", "b")])
    model.view.setCurrentIndex(model.index(0, 1))
    model.set_heads(["one", "two", "three"])
    assert model.rowCount() == 0 and not model.view.currentIndex().isValid()
    model.set_rows([("a", "b", "c")])
    assert shown(model) == [("a", "b", "c")]
    assert model.headerData(2, Qt.Orientation.Horizontal) == "three"


@pytest.mark.parametrize("kind", ["entries", "shelf"])
def test_the_head_of_a_column_stands_where_its_words_do(qtbot, kind):
    table = EntryTable("Money", (Head("part", left=True, wide=True), Head("number"))) if kind == "entries" else ShelfTable()
    qtbot.addWidget(table)
    if kind == "entries":
        table.show_rows([("hook", "2")])
    else:
        table.show_shelf(demo().rack, "bits", "mm", "")
    across, stands = Qt.Orientation.Horizontal, Qt.ItemDataRole.TextAlignmentRole
    model = table.model()
    assert [model.headerData(column, across, stands) for column in (0, 1)] == [model.index(0, column).data(stands) for column in (0, 1)]
    assert model.headerData(0, across, stands) != model.headerData(1, across, stands)
