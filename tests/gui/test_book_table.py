"""The job book as a table for a spreadsheet, asked for before the plan is there whose times it holds."""

import csv

import pytest
from msgspec.structs import replace

from app.window import ask
from geometry.book import set_minutes


def test_the_table_written_from_another_stage_holds_the_times_of_the_plan(beside, bench, qtbot, monkeypatch, tmp_path):
    path = tmp_path / "book.csv"
    monkeypatch.setattr(ask, "save_file", lambda *_: path)
    room = bench.window.rooms["book"]
    beside.set()
    bench.window.set_stage("book")
    qtbot.waitUntil(lambda: room.work is not None and not room.errand.busy)
    real = room.planned()[0]
    timed = replace(real, planned=real.planned + 90)
    bench.window.set_stage("tuners")
    beside.clear()
    bench.window.document.record("Time", lambda book: set_minutes(book, "practice", timed, 5.0))
    bench.window.document.apply("Narrower", replace(bench.layout, nut=replace(bench.layout.nut, width=bench.layout.nut.width - 0.01)))
    bench.window.commands.run("write book")
    bench.pump()
    assert not path.exists() and "as soon as" in bench.window.foot.said
    beside.set()
    qtbot.waitUntil(path.exists)
    rows = list(csv.reader(path.read_text("utf-8-sig").splitlines()))
    planned, = [float(row[5]) for row in rows if row[0] == "time"]
    assert planned == pytest.approx(real.planned, abs=0.01)
