"""The whole program in a process of its own, with faults wherever the toolkit calls back: it goes on, and tells once of each."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from msgspec.structs import replace

from app.document.journal import Journal
from app.document.leftovers import leftovers
from app.window import ask, closing
from app.window.demo import demo
from app.window.rooms.pin_proposal import PinProposal
from app.window.running import recovery
from app.window.windows import Windows

ROOT = Path(__file__).parents[2]


def test_nothing_that_goes_wrong_ends_the_program_or_changes_the_layout(tmp_path):
    places = {name: str(tmp_path) for name in ("HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_DATA_HOME", "APPDATA", "LOCALAPPDATA")}
    done = subprocess.run([sys.executable, "-m", "tests.endurance.faulty"], cwd=ROOT, capture_output=True, text=True, timeout=900,
                          env={**os.environ, **places, "QT_QPA_PLATFORM": "offscreen"})
    told = [json.loads(line) for line in done.stdout.splitlines()]
    assert done.returncode == 0, done.stderr[-2000:]
    assert len(told) == 24, done.stderr[-2000:]
    for one in told:
        assert one["same"] and one["alive"], one
        assert one["dialogs"] == (1 if one["turn"] == 1 else 0), one
        assert one["journal"], "unsaved work is written down"
    assert list(tmp_path.rglob("*.journal.json")) == [], "given up on purpose at the end"


def left_behind(folder, name):
    journal = Journal(folder)
    journal.note(replace(demo(), name=name), None)
    journal.write()
    journal._lock.unlock()


@pytest.fixture
def told(monkeypatch):
    """What the program would tell of, in place of a dialog."""
    errors = []
    monkeypatch.setattr(sys, "excepthook", lambda kind, error, trace: errors.append(str(error)))
    return errors


def test_work_that_no_picture_can_be_made_of_is_offered_without_one(bench, tmp_path, monkeypatch, told):
    left_behind(tmp_path, "spoiled")

    def broken(layout):
        raise ZeroDivisionError("planted in the drawing")
    monkeypatch.setattr(recovery, "opened_out", broken)
    seen = []
    monkeypatch.setattr(ask, "recover", lambda _, text, image: seen.append(image.isNull()) or "later")
    assert recovery.recover(bench.window.windows, leftovers(tmp_path)) == 0
    assert seen == [True] and told == ["planted in the drawing"]
    assert len(leftovers(tmp_path)) == 1


def test_work_that_cannot_be_opened_stays_and_the_next_piece_is_offered(bench, tmp_path, monkeypatch, told):
    left_behind(tmp_path, "sound")
    os.utime(leftovers(tmp_path)[0].file, (1_700_000_000, 1_700_000_000))
    left_behind(tmp_path, "spoiled")
    monkeypatch.setattr(ask, "recover", lambda *_: "open")
    live = bench.window.document._live
    real = live.check

    def broken(layout):
        if layout.name == "spoiled":
            raise ZeroDivisionError("planted in the checks")
        return real(layout)
    before = bench.window.document.path
    with monkeypatch.context() as planted:
        planted.setattr(live, "check", broken)
        assert recovery.recover(bench.window.windows, leftovers(tmp_path)) == 1
    assert bench.layout.name == "sound" and bench.window.document.path is before
    assert told == ["planted in the checks"] and "spoiled" in [one.layout.name for one in leftovers(tmp_path)]


def test_a_layout_that_the_checks_break_on_leaves_the_one_on_show(bench, monkeypatch):
    document = bench.window.document
    before, steps = document.layout, document.history

    def broken(layout):
        raise ZeroDivisionError("planted in the checks")
    with monkeypatch.context() as planted, pytest.raises(ZeroDivisionError):
        planted.setattr(document._live, "check", broken)
        document.replace(replace(demo(), name="other"), Path("/other"))
    assert document.layout is before and document.history is steps and document.path is None


def test_an_undo_that_the_checks_break_on_is_none(bench, monkeypatch):
    document = bench.window.document
    document.apply("Rename", replace(demo(), name="other"))
    after = document.layout
    with monkeypatch.context() as planted:
        planted.setattr(document._live, "check", lambda layout: 1 / 0)
        with pytest.raises(ZeroDivisionError):
            document.undo()
    assert document.layout is after and document.shown is after
    assert document.undo() == "Rename"


def test_a_window_that_broke_off_half_made_is_not_counted(bench, monkeypatch):
    windows: Windows = bench.window.windows

    def broken(window):
        raise ZeroDivisionError("planted while the window was made")
    monkeypatch.setattr("app.window.main.MainWindow.lay_out", broken)
    with pytest.raises(ZeroDivisionError):
        windows.new(demo())
    assert windows.all == [bench.window] and windows.current is bench.window


def test_all_ends_are_made_though_one_goes_wrong(bench, monkeypatch):
    ended = []
    bench.window.pins = PinProposal(bench.window)  # made when it is first asked for

    def broken():
        raise ZeroDivisionError("planted at the end")
    with monkeypatch.context() as planted:
        for name in ("cures", "pins", "book_watch"):
            real = getattr(bench.window, name).end
            planted.setattr(getattr(bench.window, name), "end", lambda name=name, real=real: (ended.append(name), real()))
        planted.setattr(bench.window.front, "end", broken)
        with pytest.raises(ZeroDivisionError, match="planted at the end"):
            closing.end(bench.window)
    assert ended == ["cures", "book_watch", "pins"] and bench.window not in bench.window.windows.all
