"""The Job book stage by the keyboard: hours, timer, money, notes, the table for a spreadsheet."""

import csv
import json
from decimal import Decimal

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from app.document.journal import Journal
from app.formats import headstock
from app.look.descendants import below
from app.window import ask
from app.window.stages import STAGES
from geometry.book import add_remark, minutes_of
from geometry.layout import Remark
from geometry.sequence import minutes as estimated
from tests.gui.hands import pick, type_on
from tests.waiting import press, until


@pytest.fixture
def room(bench):
    assert STAGES[-1].key == "book"
    QTest.keyClick(bench.window, Qt.Key(Qt.Key.Key_0 + len(STAGES)), Qt.KeyboardModifier.AltModifier)
    bench.planned("book")
    return bench.window.rooms["book"]


def sums(room):
    return {row.label: row.value for row in room.panel._sums.rows}


def test_minutes_are_typed_down_the_column_and_no_undo_takes_them(bench, room):
    table = room.view.hours
    table.setFocus()
    table.stand_at(0, 3)
    for text in ("4", "1,5 h", "90 s", "1:30"):
        type_on(table, text)
    ids = [row.task.operation for row in room.rows]
    assert [minutes_of(bench.layout.book, "practice", id) for id in ids[:4]] == [4.0, 90.0, 1.5, 90.0]
    assert table.currentIndex().row() == 4
    table.stand_at(0, 3)
    type_on(table, "5", Qt.Key.Key_Tab)
    editor = QApplication.focusWidget()
    QTest.keyClicks(editor, "7")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    bench.pump()
    assert minutes_of(bench.layout.book, "practice", ids[0]) == 5.0
    assert minutes_of(bench.layout.book, "real", ids[0]) == 7.0
    assert table.words.rows[0][5] == "+2"
    assert sums(room)[f"Spent, 4 of {len(ids)} entries"] == "3 h 06"  # 5 + 90 + 1.5 + 90 min
    bench.window.commands.run("undo")
    assert minutes_of(bench.layout.book, "real", ids[0]) == 7.0
    press(room.panel.buttons["back"])
    assert minutes_of(bench.layout.book, "real", ids[0]) is None


def test_what_cannot_be_read_stays_in_its_cell_with_a_sentence(bench, room):
    table = room.view.hours
    table.setFocus()
    table.stand_at(1, 3)
    type_on(table, "soon")
    cell = table.words.index(1, 3)
    assert "is not a time" in bench.window.foot.said and cell.data() == "soon" and not bench.layout.book.times
    table.stand_at(1, 3)
    type_on(table, "6")
    assert cell.data() == "6" and cell.data(Qt.ItemDataRole.ToolTipRole) is None


def test_planned_minutes_are_those_of_the_running_order(room):
    for row in room.rows[:-1]:
        op = next(op for op in room.work.ops if op.id == row.task.operation)
        assert row.planned == pytest.approx(estimated(op, room.work.rates))


def test_money_notes_and_the_table_they_make(bench, room, monkeypatch, tmp_path):
    press(room.view.tabs.button(1))
    table = room.view.money
    table.setFocus()
    table.stand_at(0, 0)
    type_on(table, "=wood", Qt.Key.Key_Tab)
    for text, end in (("3", Qt.Key.Key_Tab), ("0,10", Qt.Key.Key_Return)):
        editor = QApplication.focusWidget()
        editor.selectAll()
        QTest.keyClicks(editor, text)
        QTest.keyClick(editor, end)
        bench.pump()
    assert [(p.part, p.count, p.each) for p in bench.layout.book.prices] == [("=wood", 3, Decimal("0.10"))]
    assert table.words.rows[0][3] == "0.30"
    press(room.view.tabs.button(2))
    room.view.notes.setFocus()
    room.view.notes.stand_at(0, 0)
    type_on(room.view.notes, "clamp it twice")
    monkeypatch.setattr(ask, "save_file", lambda *_: tmp_path / "book.csv")
    bench.window.commands.run("write book")
    rows = list(csv.reader((tmp_path / "book.csv").read_text("utf-8-sig").splitlines()))
    assert ["money", "practice", "'=wood", "", "3", "", "0.10", "", "0.30", ""] in rows
    assert any(row[:3] == ["note", "practice", "clamp it twice"] for row in rows)


@pytest.mark.parametrize("command", ["pinned", "step"])
def test_a_note_that_is_refused_is_asked_for_again_as_it_was_typed(bench, monkeypatch, qtbot, command):
    long, asked = "drill " * 2000, []

    def typed(_, title, label, value):
        asked.append((label, value))
        return long if not value else "drill"
    monkeypatch.setattr(ask, "text", typed)
    if command == "pinned":
        bench.window.commands.run("note")
    else:
        bench.window.set_stage("book")
        room = bench.window.rooms["book"]
        qtbot.waitUntil(lambda: bool(room.rows))
        room.view.hours.stand_at(0, 3)
        room._wanted("note step")
    assert asked[0][1] == "" and asked[1][1] == long
    assert "letters" in asked[1][0] and asked[1][0].endswith(asked[0][0])
    assert [note.text for note in bench.layout.book.remarks] == ["drill"]


def test_a_note_is_pinned_to_what_is_held_and_shown_there(bench, monkeypatch):
    monkeypatch.setattr(ask, "text", lambda *_: "a larger pilot")
    tuner = bench.layout.tuners[0].id
    bench.window.document.hold((tuner,))
    bench.window.commands.run("note")
    note = bench.layout.book.remarks[0]
    assert (note.on, note.text) == (tuner, "a larger pilot") and bench.window.document.unsaved
    assert f"note {tuner}" in bench.window.canvas._notes._marks
    assert "a larger pilot" in shown_in_panel(bench)
    bench.window.document.take_back()
    assert not bench.window.canvas._notes._marks
    assert "a larger pilot" not in shown_in_panel(bench)


def test_of_many_notes_to_one_thing_the_last_are_shown_and_the_others_counted(bench):
    """Each is laid out with the page: of thousands the window did not answer for a minute."""
    tuner = bench.layout.tuners[0].id
    notes = tuple(Remark(piece="real", text=f"note number {k}.", on=tuner) for k in range(15))
    bench.window.document.record("Notes", lambda book: replace(book, remarks=notes))
    bench.window.document.hold((tuner,))
    until(lambda: "note number 14." in shown_in_panel(bench))
    words = shown_in_panel(bench)
    assert [word for word in words if word.startswith("note number")] == [note.text for note in notes[3:]]
    assert "3 older notes stand in the job book." in words


def shown_in_panel(bench) -> list[str]:
    """The words of the labels of the page of what is held."""
    return [label.text() for label in below(bench.window.side, QLabel) if label.isVisible()]


def test_found_minutes_become_the_rates_of_the_plan_as_one_step(bench, room):
    table = room.view.hours
    table.setFocus()
    row = next(i for i, line in enumerate(room.rows) if line.task.rate == "template")
    before = bench.layout.rates.template
    table.stand_at(row, 3)
    type_on(table, "500")
    press(room.panel.buttons["rates"])
    assert bench.layout.rates.template > before
    bench.window.document.undo()
    assert bench.layout.rates.template == before and bench.layout.book.times


def test_readings_are_typed_hole_after_hole_and_taken_into_the_shop_accuracy(bench, room):
    press(room.view.tabs.button(3))
    page = room.readings.page
    pick(page.ways, 3)
    assert page.way.what == "y"
    page.table.setFocus()
    page.table.stand_at(0, 2)
    wanted = [row.planned for row in room.readings._rows]
    for planned, off in zip(wanted, (0.1, -0.2, 0.3, 0.15, -0.1, 0.2, -0.3, 0.05), strict=False):
        type_on(page.table, f"{planned + off:.3f}".replace(".", ","))
    assert len(bench.layout.book.readings) == 8 and page.table.words.rows[0][3] == "+0.1"
    page.table.stand_at(8, 2)
    type_on(page.table, "wide")
    assert "is not a length" in bench.window.foot.said and len(bench.layout.book.readings) == 8
    page.table.stand_at(0, 2)
    QTest.keyClick(page.table, Qt.Key.Key_Delete)
    assert len(bench.layout.book.readings) == 7 and page.table.words.rows[0][2] == ""
    page.ways.setCurrentIndex(next(i for i in range(page.ways.count()) if page.ways.itemData(i).what == "depth"))
    page.way_chosen.emit()
    page.table.setFocus()
    page.table.stand_at(0, 2)
    for reading, off in zip(list(room.readings._rows), (0.4, 0.6, 0.5, 0.7, 0.3), strict=False):
        type_on(page.table, f"{reading.planned + off:.3f}")
    assert "too deep on average" in page.said
    before = bench.layout.accuracy
    press(page.buttons["accuracy"])
    assert bench.layout.accuracy.stop == pytest.approx(2 * 0.1581, abs=1e-3)  # standard deviation of 0.3 to 0.7 by steps of 0.1
    bench.window.document.undo()
    assert bench.layout.accuracy == before and len(bench.layout.book.readings) == 12


def test_readings_are_typed_and_shown_in_inches_too(bench, room):
    bench.window.set_unit("in64")
    page = room.readings.page
    page.ways.setCurrentIndex(next(i for i in range(page.ways.count()) if page.ways.itemData(i).what == "diameter"))
    page.way_chosen.emit()
    press(room.view.tabs.button(3))
    page.table.setFocus()
    page.table.stand_at(0, 2)
    type_on(page.table, "3/8")
    assert bench.layout.book.readings[0].value == pytest.approx(9.525) and page.table.words.rows[0][2] == '0.375"'


def test_words_that_come_while_a_cell_is_typed_into_do_not_undo_the_typing(bench, room):
    table = room.view.hours
    table.setFocus()
    QTest.keyClicks(table, "4")
    table.show_rows([(*row[:2], "7", *row[3:]) for row in table.words.rows], table.words.strong)
    editor = QApplication.focusWidget()
    assert editor.text() == "4"
    QTest.keyClicks(editor, "2")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    QApplication.processEvents()
    assert [time.minutes for time in bench.layout.book.times] == [42.0]


def test_minutes_go_to_the_step_that_they_were_typed_at(bench, room, qtbot):
    """The order is planned anew while a cell is typed into: other steps stand at its number by then."""
    table = room.view.hours
    row = next(i for i, line in enumerate(room.rows) if line.task.operation.startswith("rout "))
    task = room.rows[row].task
    table.setFocus()
    table.stand_at(row, 3)
    QTest.keyClicks(table, "4")
    layout = bench.layout
    bench.window.document.apply("Fewer pins", replace(layout, pins=(), order=()))
    room.refresh()
    qtbot.waitUntil(lambda: not room.errand.busy and room.rows[row].task.operation != task.operation)
    editor = QApplication.focusWidget()
    QTest.keyClicks(editor, "2")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    bench.pump()
    assert [(time.task.operation, time.minutes) for time in bench.layout.book.times] == [(task.operation, 42.0)]


def test_what_was_refused_stays_with_its_row_and_its_piece(bench, room):
    press(room.view.tabs.button(1))
    table = room.view.money
    table.setFocus()
    for row, part in enumerate(("wood", "bone", "screws")):
        table.stand_at(row, 0)
        type_on(table, part)
    table.stand_at(2, 2)
    type_on(table, "a lot")
    assert table.words.index(2, 2).data() == "a lot"
    table.stand_at(0, 0)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    bench.pump()
    assert [row[0] for row in table.words.rows[:2]] == ["bone", "screws"]
    assert table.words.index(1, 2).data() == "a lot", "with the screws, which are one row higher now"
    table.stand_at(1, 0)
    type_on(table, "screws, brass")
    assert table.words.index(1, 2).data() == "a lot", "the same row under another name"
    press(room.panel.pieces.button(1))
    assert not table.words.bad, "the other piece has rows of its own"
    table.stand_at(0, 0)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    assert "Stand on a row" in bench.window.foot.said


def test_what_is_typed_right_after_a_second_press_on_a_cell_counts_from_its_first_key(bench, room):
    """The toolkit would wait whether a double click comes, and let the keys go meanwhile: 12.5 became 2.5, or nothing."""
    table = room.view.hours
    table.setFocus()
    table.stand_at(2, 3)
    at = table.visualRect(table.words.index(2, 3)).center()
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=at)
    editor = QApplication.focusWidget()
    QTest.keyClicks(editor, "12.5")
    QTest.keyClick(editor, Qt.Key.Key_Return)
    bench.pump()
    assert minutes_of(bench.layout.book, "practice", room.rows[2].task.operation) == 12.5
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert table.state() != table.State.EditingState, "a first press only puts the keyboard there"
    type_on(table, "8")
    assert minutes_of(bench.layout.book, "practice", room.rows[2].task.operation) == 8.0


def test_delete_strikes_minutes_out_and_escape_puts_back_what_was_refused(bench, room):
    table, held = room.view.hours, bench.layout
    table.setFocus()
    table.stand_at(0, 3)
    type_on(table, "42")
    table.stand_at(0, 3)
    type_on(table, "soon")
    table.stand_at(0, 3)
    QTest.keyClick(table, Qt.Key.Key_Escape)
    bench.pump()
    assert table.words.index(0, 3).data() == "42" and not table.words.bad
    QTest.keyClick(table, Qt.Key.Key_Delete)
    bench.pump()
    assert not bench.layout.book.times and table.words.index(0, 3).data() == ""
    assert bench.layout.tuners == held.tuners, "nothing of the drawing was struck out"
    assert table.words.index(0, 0).data().startswith("✓ "), "the step is done all the same"
    table.stand_at(0, 1)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    assert "Stand on the minutes" in bench.window.foot.said
    table.stand_at(0, 0)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    assert not bench.layout.book.done and not table.words.index(0, 0).data().startswith("✓")
    press(room.panel.buttons["back"])
    assert bench.layout.book.done


def test_the_keyboard_goes_to_the_table_from_a_timer_button_that_cannot_be_pressed_any_longer(bench, room):
    """It would go to the next button, and Space pressed once more would open a question."""
    start, stop = room.view.button("start"), room.view.button("stop")
    room.view.hours.stand_at(0, 3)
    for button in (start, stop):
        button.setFocus()
        QTest.keyClick(button, Qt.Key.Key_Space)
        bench.pump()
        assert not button.isEnabled() and room.view.hours.hasFocus()


def test_the_keyboard_begins_and_stays_on_the_empty_row_of_the_notes(bench, room):
    """Who turns to the notes and types would write over the first of them."""
    press(room.view.tabs.button(2))
    table = room.view.notes
    for text in ("sharpen it", "slower"):
        bench.window.document.record("A note", lambda book, text=text: add_remark(book, Remark(piece="practice", text=text)))
        bench.pump()
    assert (table.currentIndex().row(), table.currentIndex().column()) == (2, 0)
    table.setFocus()
    type_on(table, "warmer")
    assert [note.text for note in bench.layout.book.remarks] == ["sharpen it", "slower", "warmer"]
    table.stand_at(0, 0)
    bench.window.document.record("A note", lambda book: add_remark(book, Remark(piece="practice", text="last")))
    bench.pump()
    assert table.currentIndex().row() == 0, "who stands on a note stays there"


def test_an_entry_alone_is_kept_for_the_next_start(bench, room, tmp_path):
    bench.window.journal = journal = Journal(tmp_path / "kept", bench.window)
    table = room.view.hours
    table.setFocus()
    type_on(table, "42")
    journal.write()
    kept, = (tmp_path / "kept").glob("*.json")
    again = headstock.decode(json.loads(kept.read_text("utf-8"))["layout"].encode())
    assert [time.minutes for time in again.book.times] == [42.0]
    bench.window.commands.run("undo")
    assert "Nothing to undo" in bench.window.foot.said and "button of their own" in bench.window.foot.said
    journal.end()


@pytest.mark.parametrize("table", ["hours", "money", "notes"])
def test_columns_are_as_wide_as_the_toolkit_would_make_them(bench, room, table):
    """Measured by one cell each; the toolkit itself asks every cell."""
    shown = getattr(room.view, table)
    room.view.show_page(["hours", "money", "notes"].index(table))
    for words in ("12.5", "12.5 and so on, which nobody can read"):
        if table == "money":
            room._price(0, 1, words)
        bench.pump()
        header = shown.horizontalHeader()
        for column, head in enumerate(shown.words.heads):
            if not head.wide:
                assert header.sectionSize(column) == max(header.sectionSizeHint(column), shown.sizeHintForColumn(column))


def test_minutes_typed_for_the_piece_on_the_bench_tick_the_step_off(bench, room):
    """Column 3 is the practice piece, which is on the bench; the timer alone says only that a step is begun."""
    table, ids = room.view.hours, [row.task.operation for row in room.rows]
    table.setFocus()
    for row, column in ((2, 3), (4, 4)):
        table.stand_at(row, column)
        type_on(table, "6")
    assert [(one.task.operation, one.piece, one.number) for one in bench.layout.book.done] == [(ids[2], "practice", 3)]
    assert table.words.index(2, 0).data() == "✓ 3" and table.words.index(4, 0).data() == "5"
    table.stand_at(len(ids) - 1, 3)
    type_on(table, "40")
    assert len(bench.layout.book.done) == 1, "setting up is no step"
