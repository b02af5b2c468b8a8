"""Tables of thousands of rows: what is in sight or asked for is there at once, the rest comes in turns of the event loop."""

from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QTableView

from app.look.sizes import px
from app.panels.forms.entry_table import AT_ONCE, LEAST, MOST, TYPED, EntryTable, Head
from geometry.layout import Remark
from tests.gui.test_cell_model import Counted, shown
from tests.waiting import on_screen, press, until


def counted(qtbot):
    view = QTableView()
    qtbot.addWidget(view)
    made = Counted(view, at_once=10)
    made.view = view
    view.setModel(made)
    made.set_heads(["one", "two"])
    return made


def numbers(count, mark=""):
    return [(f"{k}{mark}", f"-{k}") for k in range(count)]


def test_of_a_long_table_the_first_rows_are_there_at_once_and_the_others_in_turns(qtbot):
    model, rows = counted(qtbot), numbers(300)
    model.set_rows(rows)
    assert model.asked == 10 * 2 and model.rowCount() == 300 and model.busy
    assert shown(model) == rows[:10] + [(None, None)] * 290
    model.fill(range(295, 400))
    assert shown(model)[294:] == [(None, None), *rows[295:]]
    until(lambda: not model.busy)
    assert shown(model) == rows and model.asked == 300 * 2


def test_what_becomes_of_a_long_table_before_all_of_it_is_there(qtbot):
    model = counted(qtbot)
    model.set_rows(numbers(300))
    fewer = numbers(120, "x")
    model.set_rows(fewer)
    model.refresh_cell(100, 0)
    assert shown(model)[100] == fewer[100]
    until(lambda: not model.busy)
    assert shown(model) == fewer
    model.set_rows(numbers(300, "y"))
    model.set_heads(["one"])
    assert model.rowCount() == 0 and not model.busy
    model.set_rows([("a",)])
    assert shown(model) == [("a",)] and not model.busy


def test_rows_that_look_as_before_are_not_told_of_anew(qtbot):
    model, rows, told = counted(qtbot), numbers(300), []
    model.set_rows(rows)
    until(lambda: not model.busy)
    model.dataChanged.connect(lambda first, last: told.append((first.row(), last.row())))
    model.set_rows([*rows[:200], ("other", ""), *rows[201:]])
    until(lambda: not model.busy)
    assert told[0] == (0, 9) and len(told) == 2 and told[1][0] <= 200 <= told[1][1]
    assert shown(model)[200] == ("other", "")


def test_what_is_in_sight_or_has_the_keyboard_is_there_before_the_rest_of_a_long_table(qtbot):
    table = EntryTable("Words", (Head("one", TYPED, wide=True), Head("two")))
    qtbot.addWidget(table)
    table.resize(400, 300)
    rows = [(f"{k}", "w" * (k % 7) if k != 2900 else "the widest of all words") for k in range(3000)]
    table.show_rows(rows)
    words = table.words
    assert words.busy and words.index(AT_ONCE, 0).data() is None
    table.show()
    on_screen(table)
    assert words.index(2900, 1).data() == rows[2900][1], "the column is as wide as its widest words"
    assert table.columnWidth(1) >= table.sizeHintForIndex(words.index(2900, 1)).width()
    table.show_rows([(f"{one}!", two) for one, two in rows])
    table.verticalScrollBar().setValue(table.verticalScrollBar().maximum() // 2)
    first, last = table.rowAt(0), table.rowAt(table.viewport().height() - 1)
    assert AT_ONCE < first < last
    assert all(words.index(row, 0).data() == f"{row}!" for row in range(first, last + 1))
    table.stand_at(2500, 0)
    assert words.index(2500, 0).data() == "2500!" and words.flags(words.index(2500, 0)) & Qt.ItemFlag.ItemIsEditable
    assert words.busy, "all this did not wait for the rest"
    until(lambda: not words.busy)
    assert all(words.index(row, 0).data() == f"{row}!" for row in range(3000))


def test_what_is_typed_while_a_long_table_is_filled_is_not_undone(qtbot):
    table = EntryTable("Words", (Head("one", TYPED, wide=True), Head("two")))
    qtbot.addWidget(table)
    table.resize(400, 300)
    table.show()
    on_screen(table)
    table.show_rows(numbers(3000))
    table.setFocus()
    table.stand_at(1510, 0)
    QTest.keyClicks(table, "4")
    editor = QApplication.focusWidget()
    assert table.words.busy and editor.text() == "4"
    until(lambda: not table.words.busy)
    QTest.keyClicks(editor, "2")
    assert editor.text() == "42"


def test_thousands_of_notes_are_not_all_filled_in_before_the_window_answers(bench, monkeypatch):
    """Who stands on the empty row sees the last notes and may type the next one, while the first are filled in."""
    window = bench.window
    window.set_stage("book")
    view = window.rooms["book"].view
    press(view.tabs.button(2))
    table, asked = view.notes, []
    look = table.words.look
    monkeypatch.setattr(table.words, "look", lambda row, column: asked.append(row) or look(row, column))
    many = tuple(Remark(piece=bench.layout.book.piece, text=f"note {k}") for k in range(3000))
    window.document.record("Notes", lambda book: replace(book, remarks=many))
    assert table.words.busy and table.words.rowCount() == 3001 and len(set(asked)) < 400
    assert table.key(table.currentIndex().row()) == "new"
    first, last = table.rowAt(0), table.rowAt(table.viewport().height() - 1)
    assert [table.words.index(row, 0).data() for row in range(first, last)] == [f"note {row}" for row in range(first, last)]
    table.setFocus()
    QTest.keyClicks(table, "o")
    editor = QApplication.focusWidget()
    QTest.keyClicks(editor, "ne more")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    bench.pump()
    assert bench.layout.book.remarks[-1].text == "one more" and len(bench.layout.book.remarks) == 3001
    until(lambda: not table.words.busy)
    assert [table.words.index(row, 0).data() for row in range(3001)] == [*(f"note {k}" for k in range(3000)), "one more"]


def test_on_a_large_screen_the_numbers_stay_near_their_words(qtbot):
    table = EntryTable("Words", (Head("one", wide=True), Head("two")))
    qtbot.addWidget(table)
    table.show_rows([("words", "12")])
    for width in (700, 2560, 90, 700):
        table.resize(width, 300)
        table.show()
        wide = table.horizontalHeader().sectionSize(0)
        room = table.viewport().width() - table.horizontalHeader().sectionSize(1)
        assert wide == min(max(room, px(LEAST)), px(MOST)), width


def test_heads_go_on_in_a_second_line_before_a_table_scrolls_sideways(qtbot):
    table = EntryTable("Words", (Head("one", wide=True), Head("minutes that are planned"), Head("real − practice")))
    qtbot.addWidget(table)
    table.show_rows([("words", "12", "3")])
    table.resize(700, 300)
    table.show()
    head = table.horizontalHeader()
    low = head.height()
    assert table.words.headerData(1, Qt.Orientation.Horizontal) == "minutes that are planned"
    table.resize(px(LEAST) + head.sectionSize(1) + head.sectionSize(2) - 40, 300)
    assert [table.words.headerData(i, Qt.Orientation.Horizontal) for i in range(3)] == ["one", "minutes that\nare planned", "real −\npractice"]
    until(lambda: head.height() > low)
    assert sum(head.sectionSize(i) for i in range(3)) <= table.viewport().width()
    table.resize(700, 300)
    until(lambda: head.height() == low)
