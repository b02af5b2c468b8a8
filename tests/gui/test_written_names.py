"""Names of files to write, typed without their ending: completed, and never written over unasked."""

import pytest
from PySide6 import QtWidgets

from app.window import ask
from tests.waiting import until


@pytest.fixture
def typed(monkeypatch, tmp_path):
    """The system's dialog, in which a name is typed: it asks about that very name and no other."""
    def type_(name: str):
        monkeypatch.setattr(QtWidgets.QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / name), ""))
        return tmp_path
    return type_


@pytest.mark.parametrize(("name", "whole"), [("job 1.2", "job 1.2.csv"), ("job.csv", "job.csv"), ("job.CSV", "job.CSV")])
def test_a_name_gets_its_ending_once(qapp, typed, name, whole):
    folder = typed(name)
    assert ask.save_file(None, "", "", "", (".csv",)) == folder / whole


def test_any_of_several_endings_will_do(qapp, typed):
    folder = typed("board.svg")
    assert ask.save_file(None, "", "", "", (".dxf", ".svg")) == folder / "board.svg"


@pytest.mark.parametrize("again", [True, False])
def test_a_file_of_the_whole_name_is_asked_about(qapp, typed, monkeypatch, again):
    folder = typed("board")
    (folder / "board.dxf").write_text("mine")
    asked = []
    monkeypatch.setattr(ask, "write_over", lambda _, name, kept: asked.append((name, kept)) or again)
    assert ask.save_file(None, "", "", "", (".dxf", ".svg")) == (folder / "board.dxf" if again else None)
    assert asked == [("board.dxf", False)]


@pytest.mark.parametrize(("stage", "write", "name"), [
    ("book", lambda room: room.write(), "mine.csv"),
    ("router", lambda room: room._write_template(room.panel.sheet.tool), "mine.dxf"),
    ("router", lambda room: room.rack._export(), "mine.json")])
def test_what_is_there_under_the_whole_name_stays(bench, typed, monkeypatch, stage, write, name):
    folder = typed("mine")
    (folder / name).write_text("of another job")
    monkeypatch.setattr(ask, "write_over", lambda *_, **__: False)
    bench.window.set_stage(stage)
    room = bench.window.rooms[stage]
    until(lambda: not room.errand.busy)
    write(room)
    assert (folder / name).read_text() == "of another job"
    monkeypatch.setattr(ask, "write_over", lambda *_, **__: True)
    write(room)
    assert (folder / name).read_text(encoding="utf-8-sig") != "of another job"
