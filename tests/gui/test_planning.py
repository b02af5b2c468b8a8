"""While a plan takes long the stage says that what it shows is older, how far the new one is, and lets go of it on Stop."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.window.rooms import planning as planning_file
from geometry.edits import move_features
from tests.waiting import press, until

STAGES = ("router", "order", "sheets", "book")


@pytest.fixture(autouse=True)
def soon(monkeypatch: pytest.MonkeyPatch) -> None:
    """The note comes after a moment and stays for one."""
    monkeypatch.setattr("app.panels.forms.work_note.APPEARS_MS", 20)
    monkeypatch.setattr("app.panels.forms.work_note.STAYS_MS", 100)


@pytest.fixture(autouse=True)
def held(beside, soon, bench):
    """Until a test lets go of it, whatever works beside the window waits."""
    beside.set()
    return beside


@pytest.fixture(params=("order",))
def room(request, bench, held):
    """A stage with its first answer on show; from then on what works beside the window waits."""
    bench.window.set_stage(request.param)
    found = bench.window.rooms[request.param]
    until(lambda: found.planning.current and found.errand.free and not found.planning.note.isVisible())
    held.clear()
    return found


def change(bench):
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))


def says(room) -> str:
    note = room.planning.note
    return note.words.text() if note.isVisible() else ""


@pytest.mark.parametrize("room", STAGES, indirect=True)
def test_an_older_plan_says_so_until_the_new_one_is_there(room, bench, held):
    change(bench)
    until(lambda: "older than the last change" in says(room))
    assert room.planning.note.button.text() == "Stop"
    held.set()
    until(lambda: room.planning.current)
    until(lambda: "of this layout" in says(room) or not says(room))
    assert not room.planning.note.button.isVisible()
    until(lambda: not says(room))


@pytest.mark.parametrize("room", STAGES, indirect=True)
def test_a_plan_that_was_stopped_is_not_begun_again_until_it_is_wanted(room, bench, held):
    change(bench)
    press(room.planning.note.button)
    held.set()
    until(lambda: room.errand.free)
    assert says(room).startswith("Stopped") and not room.planning.current
    bench.window.set_stage("tuners")
    bench.window.set_stage(room.key)
    assert says(room).startswith("Stopped") and room.errand.free
    press(room.planning.note.button)
    until(lambda: room.planning.current)
    until(lambda: not says(room))


def test_another_change_has_the_plan_worked_out_though_the_one_before_was_stopped(room, bench, held):
    change(bench)
    press(room.planning.note.button)
    change(bench)
    held.set()
    until(lambda: room.planning.current and room.errand.free)


def test_a_step_back_and_on_has_the_plan_that_was_stopped_worked_out(room, bench, held):
    change(bench)
    press(room.planning.note.button)
    held.set()
    until(lambda: room.errand.free)
    bench.window.commands.run("undo")
    until(lambda: room.planning.current)
    assert room.errand.free, "the plan of the layout before is still known"
    bench.window.commands.run("redo")
    until(lambda: room.planning.current and room.errand.free)


def test_a_window_closes_with_a_plan_that_was_stopped(room, bench):
    change(bench)
    press(room.planning.note.button)
    bench.window.asked = True
    bench.window.close()
    assert room.errand.busy is False


@pytest.mark.parametrize("room", ("router", "sheets"), indirect=True)
def test_the_note_is_reached_with_the_keyboard_and_told_to_those_who_hear(room, bench, held, monkeypatch):
    heard = []
    monkeypatch.setattr(planning_file, "announce", lambda widget, text: heard.append(text))
    change(bench)
    note = room.planning.note
    until(note.isVisible)
    for _ in range(60):
        if QApplication.focusWidget() is note.button:
            break
        bench.window.focusNextPrevChild(True)
    assert QApplication.focusWidget() is note.button
    QTest.keyClick(note.button, Qt.Key.Key_Space)
    assert [text[:7] for text in heard] == [heard[0][:7], "Stopped"] and "older" in heard[0]
    assert note.accessibleName() == note.words.text() and note.button.hasFocus()
    QTest.keyClick(note.button, Qt.Key.Key_Space)
    held.set()
    until(lambda: room.planning.current and not note.isVisible())
    assert QApplication.focusWidget() not in (None, note.button), "the keyboard is where the work goes on"


def test_pages_whose_laying_out_was_stopped_are_not_printed(bench, held, monkeypatch):
    printed = []
    monkeypatch.setattr("app.printing.job.print_sheets", lambda *given: printed.append(given) or "Printed")
    bench.window.set_stage("sheets")
    room = bench.window.rooms["sheets"]
    until(lambda: room.planning.current and room.errand.free)
    held.clear()
    change(bench)
    press(room.planning.note.button)
    held.set()
    until(lambda: room.errand.free)
    bench.window.commands.run("print")
    assert not printed and "older than the last change" in bench.window.foot.said


def test_a_first_plan_that_was_stopped_leaves_none(bench, held):
    held.clear()
    for stage in STAGES:
        bench.window.set_stage(stage)
        room = bench.window.rooms[stage]
        press(room.planning.note.button)
        assert says(room).startswith("Stopped: there")
    held.set()


def test_a_note_tells_how_far_the_work_is(bench, held):
    """The work tells a place and waits there until it was seen."""
    held.clear()
    bench.window.set_stage("router")
    room = bench.window.rooms["router"]
    note = room.planning.note
    until(note.isVisible)
    room.errand._place.hear(lambda: "Router plan of treble slot: bit 2 of 9")
    until(lambda: note.at.text() == "Router plan of treble slot: bit 2 of 9")
    assert note.accessibleDescription() == note.at.text()
    held.set()
    until(lambda: room.planning.current)
