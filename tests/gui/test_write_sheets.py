"""While the sheets are written: how far that is, stopping it, changing the layout, and closing the window in the midst of it."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QProgressDialog

from app.look.descendants import below
from app.window import ask
from app.window.rooms.sheets import SheetWriter
from geometry.edits import move_features
from tests.gui.hands import button, space
from tests.waiting import press, until


@pytest.fixture(autouse=True)
def held(beside, bench):
    """Until a test lets go of it, whatever works beside the window waits."""
    beside.set()
    return beside


@pytest.fixture
def folder(tmp_path, monkeypatch):
    out = tmp_path / "sheets"
    out.mkdir()
    monkeypatch.setattr(ask, "folder", lambda *_: out)
    monkeypatch.setattr("app.window.rooms.sheets.QDesktopServices.openUrl", lambda url: True)
    return out


@pytest.fixture
def writer(bench, folder, held):
    """Sheets are being written, and it takes long."""
    held.clear()
    bench.window.commands.run("write sheets")
    return bench.window.sheet_writer


def test_stopped_it_writes_no_file_and_can_be_asked_for_again(bench, writer, folder, held):
    press(writer.note.button)
    held.set()
    until(lambda: not writer.busy)
    assert "no file was written" in bench.window.foot.said and not list(folder.iterdir()) and writer.note.isHidden()
    bench.window.commands.run("write sheets")
    until(lambda: "files written" in bench.window.foot.said)
    assert list(folder.iterdir())


def test_the_keyboard_stays_on_the_button_that_was_pressed(bench, folder, held):
    """A button that is greyed out hands the keyboard on, to undo and redo at last."""
    bench.enter("sheets")
    bench.window.activateWindow()
    pressed = button(bench.window.tools, "Write the sheets…")
    pressed.setFocus()
    held.clear()
    space(pressed)
    assert bench.window.sheet_writer.busy and pressed.hasFocus()
    space(pressed)
    assert bench.window.foot.said == "The sheets are being written already."
    held.set()
    until(lambda: "files written" in bench.window.foot.said)
    assert pressed.hasFocus()


def test_stopped_too_late_it_says_what_was_written(bench, folder, monkeypatch):
    """The wish comes when the files are there already and the thread has not told of them yet."""
    write = SheetWriter._write

    def and_then_stop(writer, *given):
        paths = write(writer, *given)
        writer.stop()
        return paths
    monkeypatch.setattr(SheetWriter, "_write", and_then_stop)
    bench.window.commands.run("write sheets")
    until(lambda: "files written" in bench.window.foot.said)
    assert list(folder.iterdir())


def test_what_is_written_is_the_layout_as_it_was_asked_for(bench, writer, folder, held):
    """Editing and another stage in the midst of it change nothing of it."""
    before = bench.layout.name
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    bench.window.set_stage("router")
    until(writer.note.isVisible)
    held.set()
    until(lambda: "files written" in bench.window.foot.said)
    assert before in (folder / next(p.name for p in folder.iterdir() if p.suffix == ".svg")).read_text(encoding="utf-8")


def test_a_back_paper_of_an_earlier_plan_in_the_folder_is_told_of(bench, folder, monkeypatch):
    told = []
    monkeypatch.setattr(ask, "tell", lambda parent, title, text: told.append(text))
    for left in (0, 1):
        bench.window.foot.say("")
        bench.window.commands.run("write sheets")
        until(lambda: "files written" in bench.window.foot.said and not bench.window.sheet_writer.busy)
        assert len(told) == left
        bench.window.document.apply("Bare", replace(bench.layout, tuners=(), rows=(), strings=()))
    assert ".dxf and " in told[0] and len([path for path in folder.iterdir() if path.stem.endswith("-back")]) == 2


def waits(bench) -> QProgressDialog | None:
    return next((one for one in below(bench.window) if isinstance(one, QProgressDialog) and one.isVisible()), None)


@pytest.mark.parametrize("stopped", [False, True])
def test_a_window_that_closes_waits_for_the_sheets_unless_they_are_stopped(bench, writer, folder, held, stopped):
    """The loop in which it waits is the test's moment: there the box is on show, and the window answers."""
    seen = []

    def look():
        box = waits(bench)
        if box is None:
            return
        clock.stop()
        seen.append(box.labelText())
        if stopped:
            box.canceled.emit()
        held.set()
    clock = QTimer(bench.window)
    clock.timeout.connect(look)
    clock.start(20)
    bench.window.close()
    assert seen and "still being written" in seen[0]
    assert not bench.window.isVisible() and not writer.busy
    assert bool(list(folder.iterdir())) is not stopped
