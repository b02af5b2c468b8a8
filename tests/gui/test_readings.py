"""The readings of the job book by the keyboard: what a caliper says is typed down the holes, one measure at a time."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.sheets.reading_pages import reading_blocks
from geometry.book import made_by, put_reading, task_of, tick_off
from geometry.drawing import Label
from geometry.edits import mirror_layout
from geometry.sequence import operations
from geometry.solids import side_bore
from geometry.units import parse_length
from tests.gui.hands import pick, type_on
from tests.waiting import press


@pytest.fixture
def room(bench):
    return bench.enter("book")


def test_a_reading_on_the_bass_side_needs_no_sign(bench, room):
    press(room.view.tabs.button(3))
    table = room.readings.page.table
    planned = next(row for row, one in enumerate(room.readings._rows) if one.planned < -10)
    table.setFocus()
    table.stand_at(planned, 2)
    type_on(table, f"{-room.readings._rows[planned].planned:.2f}")
    taken, = bench.layout.book.readings
    assert taken.value < 0 and abs(taken.value - taken.planned) < 0.01


def test_that_nothing_was_written_is_not_said_once_something_is(bench, room):
    press(room.view.tabs.button(3))
    room._back()
    assert bench.window.foot.said == "Nothing was written since the layout was opened"
    table = room.readings.page.table
    table.setFocus()
    table.stand_at(0, 2)
    type_on(table, f"{room.readings._rows[0].planned:.2f}")
    assert len(bench.layout.book.readings) == 1
    assert bench.window.foot.said == ""


def test_a_slip_is_named_with_its_measure_and_another_measure_begins_at_the_first_hole(bench, room):
    press(room.view.tabs.button(3))
    page = room.readings.page
    page.table.setFocus()
    page.table.stand_at(3, 2)
    type_on(page.table, "321")
    assert f"{room.readings._rows[3].drilling} ({page.way.words})" in page.said
    page.ways.setFocus()
    QTest.keyClick(page.ways, Qt.Key.Key_Down)
    bench.pump()
    assert page.table.currentIndex().row() == 0


def test_a_reading_that_was_refused_is_not_shown_of_another_measure(bench, room):
    press(room.view.tabs.button(3))
    page = room.readings.page
    page.table.setFocus()
    page.table.stand_at(1, 2)
    type_on(page.table, "wide")
    assert page.table.words.index(1, 2).data() == "wide"
    page.ways.setFocus()
    QTest.keyClick(page.ways, Qt.Key.Key_Down)
    bench.pump()
    assert page.table.words.index(1, 2).data() == ""


def test_a_table_read_in_a_wrong_unit_is_not_told_hole_by_hole(bench, room):
    """Hundreds of doubtful readings made one sentence of as many names."""
    first = room.readings._rows[0]
    readings = tuple(replace(first, drilling=f"{first.drilling} {n}", piece=bench.layout.book.piece, value=first.planned * 25.4)
                     for n in range(400))
    bench.window.document.record("Readings", lambda book: replace(book, readings=readings))
    press(room.view.tabs.button(3))
    assert "400 readings" in room.readings.page.said and len(room.readings.page.said) < 3000
    assert "and 388 more" in room.readings.page.said


@pytest.mark.parametrize("what", ["y", "depth"])
def test_a_bore_is_measured_at_the_square_edge_in_the_middle_of_the_work(bench, room, what):
    """The drilling card tells mark and stop at the square edge: who reads just these is not off, 0.4 mm more is 0.4 mm off."""
    press(room.view.tabs.button(3))
    page = room.readings.page
    at = {way.how == "square edge": index for index in range(page.ways.count()) if (way := page.ways.itemData(index)).what == what}
    pick(page.ways, at[False])
    assert "choose the measure at or from the square edge" in page.said
    pick(page.ways, at[True])
    assert "choose the measure at or from the square edge" not in page.said
    rows = [one.drilling for one in room.readings._rows]
    assert len(rows) == 6, "the six post bores, and no screw"
    row = next(row for row, id in enumerate(rows) if id.startswith("treble side 2"))
    bore = side_bore(bench.layout, "treble side 2")
    told = bore.mark[1] if what == "y" else bore.stop_full
    table = page.table
    assert parse_length(table.words.index(row, 1).data(), "mm") == pytest.approx(told, abs=0.006)
    table.setFocus()
    table.stand_at(row, 2)
    type_on(table, f"{told + 0.4:.4f}")
    taken, = bench.layout.book.readings
    assert taken.value - taken.planned == pytest.approx(0.4, abs=0.001)
    assert taken.planned == pytest.approx(told)
    assert table.words.index(row, 3).data() == "+0.4"
    assert parse_length(table.words.index(row, 2).data(), "mm") == pytest.approx(told + 0.4, abs=0.006)
    bench.window.document.apply("Wider", replace(bench.layout, blank=replace(bench.layout.blank, treble=bench.layout.blank.treble + 5.0)))
    assert table.words.index(row, 3).data() == "+0.4", "what was read stands beside what it was read for"
    assert parse_length(table.words.index(row, 2).data(), "mm") == pytest.approx(told + 0.4, abs=0.006)


def test_whose_readings_they_are_is_said(bench, room):
    press(room.view.tabs.button(3))
    page = room.readings.page
    assert page.said.startswith("These are readings of the practice piece")
    press(room.panel.pieces.button(1))
    assert page.said.startswith("These are readings of the real piece")
    page.table.setFocus()
    page.table.stand_at(0, 2)
    type_on(page.table, "30.1")
    assert bench.layout.book.readings[0].piece == "real" and page.said.startswith("These are readings of the real piece")


def test_how_to_have_the_rest_checked_is_said_of_the_real_piece_once_a_hole_is_off(bench, room):
    press(room.view.tabs.button(3))
    page, asked = room.readings.page, room.readings._rows[0]
    for piece, off, said in (("practice", 1.0, False), ("real", 0.1, False), ("real", 1.0, True)):
        bench.window.document.record("Reading", lambda book, piece=piece, off=off: put_reading(
            replace(book, piece=piece), replace(asked, piece=piece, value=asked.planned + off)))
        assert ("tick its step again" in page.said) is said


def test_after_a_mirror_image_a_reading_stands_beside_the_hole_that_was_measured(bench, room):
    document = bench.window.document
    book = replace(document.book, piece="real")
    for number, op in enumerate(operations(document.layout), 1):
        if op.features == ("bass side 2",) and op.drillings:
            book = tick_off(book, task_of(op), number, made_by(document.layout, op))
    document.record("Ticks", lambda _: book)
    pick(room.readings.page.ways, 3)
    row = next(row for row, one in enumerate(room.readings._rows) if one.drilling == "bass side 2.1.1")
    planned = room.readings._rows[row].planned
    document.record("Reading", lambda book: put_reading(book, replace(room.readings._rows[row], piece="real", value=planned + 0.3)))
    document.apply("Mirror", mirror_layout(document.layout))
    bench.pump()

    def shown():
        words = room.readings.page.table.words
        return {room.readings._rows[row].drilling for row in range(len(room.readings._rows)) if words.index(row, 2).data()}
    assert shown() == {"bass side 2.1.1"}
    texts = [mark.text for block in reading_blocks(document.layout, 180.0) for one in block.placed for mark in one.drawing if isinstance(mark, Label)]
    assert any(text.startswith("bass side 2.1.1 ") for text in texts[:texts.index(f"{planned + 0.3:.2f}")][-8:])
    document.record("Minutes", lambda book: replace(book, currency="EUR"))
    bench.pump()
    assert shown() == {"bass side 2.1.1"} and document.book.readings[0].drilling == "bass side 2.1.1"
    document.undo()
    bench.pump()
    assert shown() == {"bass side 2.1.1"}
