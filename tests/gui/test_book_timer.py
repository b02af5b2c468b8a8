"""The timer of the job book: over a restart, over a clock that is set back, and for steps that are gone."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.formats import headstock
from app.window.rooms import book_room
from geometry.book import minutes_of, tick_off
from geometry.edits import mirror_layout
from geometry.layout import Task


@pytest.fixture
def room(bench):
    return bench.enter("book")


def test_the_timer_runs_over_a_restart(bench, room, monkeypatch):
    now = [1_000_000.0]
    monkeypatch.setattr(book_room.time, "time", lambda: now[0])
    table = room.view.hours
    table.setFocus()
    table.stand_at(2, 6)
    QTest.keyClick(table, Qt.Key.Key_Space)
    assert bench.window.foot._timer.isVisible() and "0:00:00" in bench.window.foot._timer.text()
    now[0] += 750
    again = headstock.decode(headstock.encode(bench.layout))
    bench.window.document.replace(again, None)
    assert "0:12:30" in bench.window.foot._timer.text()
    QTest.keyClick(table, Qt.Key.Key_Space)
    assert minutes_of(bench.layout.book, "practice", room.rows[2].task.operation) == 12.5
    assert not bench.window.foot._timer.isVisible() and bench.window.document.unsaved
    assert bench.window.foot.said == "12 min counted: Side bore bass side 1"


def test_a_timer_over_which_the_clock_was_set_back_counts_nothing_and_says_so(bench, room, monkeypatch):
    now = [1_000_000.0]
    monkeypatch.setattr(book_room.time, "time", lambda: now[0])
    room.view.hours.stand_at(2, 6)
    room.view.wanted.emit("start")
    now[0] -= 3600
    room.view.wanted.emit("stop")
    assert bench.layout.book.clock is None and bench.layout.book.times == ()
    assert "was set back while the timer ran: nothing is counted" in bench.window.foot.said


def test_no_timer_starts_for_a_step_that_has_left_the_order(bench, room):
    gone = Task(operation="bore post 9.1.1", title="Bore post 9", features=("post 9",))
    bench.window.document.record("done", lambda book: tick_off(book, gone, 3))
    room.view.hours.stand_at(len(room.rows) - 1, 0)
    room.view.wanted.emit("start")
    assert bench.layout.book.clock is None
    assert bench.window.foot.said == "“Bore post 9” has left the running order: there is nothing to time."


def test_after_a_mirror_image_minutes_stay_with_the_slot_that_is_in_the_wood(bench, room, monkeypatch):
    """The drawing calls it by the other side's name for a moment: what is counted on goes to what was begun, and the table shows it there."""
    now = [1_000_000.0]
    monkeypatch.setattr(book_room.time, "time", lambda: now[0])

    def row():
        return next(i for i, line in enumerate(room.rows) if line.task.operation == "rout bass slot 1")

    def count(minutes):
        room.view.hours.stand_at(row(), 6)
        room.view.wanted.emit("start")
        now[0] += 60 * minutes
        room.view.wanted.emit("stop")

    count(5)
    bench.window.document.apply("mirror", mirror_layout(bench.layout))
    bench.planned("book")
    assert room.rows[row()].practice == 5.0
    count(2)
    assert room.rows[row()].practice == 7.0
    assert [(time.task.operation, time.minutes) for time in bench.layout.book.times] == [("rout bass slot 1", 7.0)]
