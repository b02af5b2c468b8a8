"""The cure on a card: sought once the hand rests, shown as a ghost, carried out by its button as one step."""

import re

import pytest
from msgspec.structs import replace
from PySide6.QtCore import QModelIndex, QPoint, Qt
from PySide6.QtTest import QTest

from app.panels.snags.snag_list import SnagList
from app.threads.background import running
from app.window import ask
from app.window.background import aside
from app.window.cures import _ghosts
from geometry.checks import check
from geometry.checks.moves import AsCut, Change, Shift, Slide, Wind
from geometry.cures.carry_out import carried_out, touched
from geometry.drawing.opened_out import feature_marks
from geometry.edits import move_node
from geometry.edits.twin_features import twin_feature
from geometry.layout import DrawnSlot, loop_path
from geometry.strings import runs
from tests.geometry.sequence.specimens import demo
from tests.waiting import press


def _spoilt(bench, qtbot):
    """Drag a side tuner into its neighbour, wait for the cures; the row of the first card with a button."""
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    assert any(snag.grade == "spoils the work" for snag in bench.window.document.result.snags)
    qtbot.waitUntil(lambda: bench.window.cures.settled)
    bench.pump()
    snags = bench.window.side.inside.snags
    for row in range(snags.model().rowCount()):
        index = snags.model().index(row)
        if snags.button_of(index) is not None:
            snags.scrollTo(index)
            bench.pump()
            return index
    raise AssertionError("no card has a button")


def _button(bench, index) -> QPoint:
    return bench.window.side.inside.snags.button_of(index).center().toPoint()


def test_the_button_carries_the_cure_out_as_one_step(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.layout
    snag = index.data(Qt.ItemDataRole.UserRole)
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=_button(bench, index))
    bench.pump()
    after = check(bench.layout).snags
    assert bench.layout is not before
    assert (snag.kind, snag.between) not in {(one.kind, one.between) for one in after}
    bench.window.document.undo()
    assert bench.layout == before


@pytest.mark.parametrize("stage", ["tuners", "strings", "order"])
def test_with_mirrored_on_the_twin_is_moved_too_whatever_the_stage(bench, qtbot, stage):
    bench.window.tools.mirrored.setChecked(True)
    snag = _spoilt(bench, qtbot).data(Qt.ItemDataRole.UserRole)
    bench.window.set_stage(stage)
    before, move = bench.layout, snag.move
    twin = twin_feature(before, move.of)
    assert isinstance(move, Shift | Slide) and twin is not None
    bench.window.cures._ghost(snag)
    assert len(bench.window.canvas._guides._marks["guides"]) > len(feature_marks(before, move.of)), "the ghost tells of both"
    bench.window.side.cure_wanted.emit(snag)
    assert all(bench.layout.tuner(id).place != before.tuner(id).place for id in (move.of, twin))
    assert twin_feature(bench.layout, move.of) == twin
    assert bench.window.foot.said.endswith(", and the other side alike") and bench.window.document.history.undo_name == bench.window.foot.said
    bench.window.document.undo()
    assert bench.layout == before, "one step"


def test_moves_are_sought_anew_when_mirrored_is_pressed(bench, qtbot):
    """One that was found for its own side is no longer offered meanwhile."""
    snags = bench.window.side.inside.snags
    _spoilt(bench, qtbot)
    search = bench.window.cures._search
    bench.window.tools.mirrored.setChecked(True)
    assert not any(snags.button_of(snags.model().index(row)) for row in range(snags.model().rowCount()))
    qtbot.waitUntil(lambda: bench.window.cures.settled and bench.window.cures._search is not search)
    assert bench.window.cures._search.mirrored and not search.mirrored
    assert any(snags.button_of(snags.model().index(row)) for row in range(snags.model().rowCount()))


def test_a_row_or_a_width_that_cures_has_its_twin_follow(bench):
    """One number of the layout is a cure too, and so is it as if typed with its part held."""
    cures, layout = bench.window.cures, bench.layout
    bench.window.tools.mirrored.setChecked(True)
    slot = layout.slots[0]
    move = Change(("slots", slot.id, "shape", "width"), slot.shape.width, slot.shape.width + 0.5)
    after, ids = cures._moved(replace(bench.window.document.result.snags[0], move=move))
    assert set(ids) == {one.id for one in layout.slots}
    assert {one.shape.width for one in after.slots} == {slot.shape.width + 0.5}


def test_what_has_no_twin_is_cured_with_mirrored_on_as_without(bench):
    cures, layout, snag = bench.window.cures, bench.layout, bench.window.document.result.snags[0]
    bench.window.tools.mirrored.setChecked(True)
    after, _ = cures._moved(replace(snag, move=Change(("blank", "tip"), layout.blank.tip, layout.blank.tip + 1.0)))
    assert after == replace(layout, blank=replace(layout.blank, tip=layout.blank.tip + 1.0))
    run = runs(layout)[0]
    assert twin_feature(layout, run.tuner) is not None
    assert cures._moved(replace(snag, move=Wind(run.tuner)))[1] == (run.tuner,), "a string is led by itself"


def test_a_cure_is_carried_out_after_something_was_written_into_the_job_book(bench, qtbot, monkeypatch):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.layout
    monkeypatch.setattr(ask, "text", lambda *_: "look at this one")
    bench.window.commands.run("note")
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=_button(bench, index))
    bench.pump()
    assert bench.layout.tuners != before.tuners, bench.window.foot.said
    assert [note.text for note in bench.layout.book.remarks] == ["look at this one"]


def test_the_keyboard_reaches_the_cure(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.layout
    snags.setCurrentIndex(index)
    QTest.keyClick(snags, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    bench.pump()
    assert bench.layout is not before
    assert bench.window.document.history.undo_name in bench.window.actions_["undo"].text()


def test_with_no_card_in_hand_the_keyboard_takes_the_first_before_it_cures_it(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.layout
    snags.setCurrentIndex(QModelIndex())
    QTest.keyClick(snags, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    bench.pump()
    assert snags.currentIndex().row() == 0 and bench.layout is before
    snags.setCurrentIndex(index)
    QTest.keyClick(snags, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    bench.pump()
    assert bench.layout is not before


def test_pointing_at_the_button_shows_where_it_leads_and_changes_nothing(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.window.document.shown
    QTest.mouseMove(snags.viewport(), _button(bench, index))
    bench.pump()
    assert bench.window.canvas._guides._marks["guides"]
    assert bench.window.document.shown is before
    QTest.mouseMove(snags.viewport(), QPoint(2, 2))
    bench.pump()
    assert not bench.window.canvas._guides._marks


def test_of_the_outline_as_it_is_cut_the_ghost_shows_the_outline():
    cut = demo()
    drawn = move_node(cut, "outline", 2, (43.0, 167.0))
    move = AsCut("outline", DrawnSlot(loop=cut.outline), None, None)
    ghosts = _ghosts(carried_out(drawn, move), touched(drawn, move), move)
    assert loop_path(cut.outline).box in [pytest.approx(ghost.path.box) for ghost in ghosts]


def test_cures_are_said_in_the_makers_unit_and_never_before_they_are_tried(bench, qtbot):
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] - 9.0))
    snags = bench.window.side.inside.snags
    # The list is filled at an eye's pace while the hand is at work.
    qtbot.waitUntil(lambda: "Looking for a move" in snags.model().index(0).data())
    assert " mm" in snags.model().index(0).data()
    bench.release((start[0], start[1] - 9.0))
    qtbot.waitUntil(lambda: bench.window.cures.settled)
    bench.pump()
    said = snags.model().index(0).data()
    assert "Looking" not in said
    bench.window.set_unit("in")
    qtbot.waitUntil(lambda: bench.window.cures.settled)
    bench.pump()
    said = snags.model().index(0).data()
    assert '"' in said and " mm" not in said


def test_a_new_drag_stops_the_search(beside, bench, qtbot):
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    qtbot.waitUntil(lambda: bench.window.cures.errand.busy)
    running = bench.window.cures._search
    here = bench.inside("treble side 2")
    bench.drag(here, (here[0], here[1] + 9.0))
    assert running.stopped
    beside.set()
    qtbot.waitUntil(lambda: bench.window.cures.settled)


def test_a_cure_pressed_with_something_in_hand_says_what_to_do_first(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.inside.snags, bench.layout
    bench.press(bench.inside("bass side 1"))
    bench.move(bench.inside("bass side 2"))
    assert bench.window.hand.busy
    snags.cure_wanted.emit(index.data(Qt.ItemDataRole.UserRole))
    assert bench.layout is before and "Esc" in bench.window.foot.said
    bench.key(Qt.Key.Key_Escape)
    assert bench.window.document.shown is before


# ---- a search that finds no end ----------------------------------------------
def _given_up(bench, qtbot) -> SnagList:
    """Cures of a spoilt head for which the search had no patience at all; the list of its snags."""
    bench.window.cures.patience = 0.0
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    snags = bench.window.side.inside.snags
    qtbot.waitUntil(lambda: bench.window.cures.settled and "choose this card" in snags.model().index(0).data())
    return snags


def _sought(snags: SnagList, row: int) -> bool:
    return not any(words in snags.model().index(row).data() for words in ("choose this card", "Looking for"))


def test_a_card_whose_cure_was_not_sought_says_so_and_has_it_sought_when_it_is_chosen(bench, qtbot):
    snags = _given_up(bench, qtbot)
    for row in (1, 0):
        index = snags.model().index(row)
        snags.scrollTo(index)
        bench.pump()
        QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=snags.visualRect(index).topLeft() + QPoint(40, 14))
        qtbot.waitUntil(lambda row=row: bench.window.cures.settled and _sought(snags, row))
    qtbot.waitUntil(lambda: "choose this card" in snags.model().index(2).data())
    assert _sought(snags, 1)
    assert snags.currentIndex().row() == 0, "the card in hand stays in hand"


def test_the_keyboard_has_a_cure_sought_too(bench, qtbot):
    snags = _given_up(bench, qtbot)
    snags.setFocus()
    snags.setCurrentIndex(snags.model().index(0))
    QTest.keyClick(snags, Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: bench.window.cures.settled and _sought(snags, 1))


def test_a_search_that_takes_long_is_told_of_and_ends_on_stop(bench, qtbot, monkeypatch):
    hand_rests = []
    monkeypatch.setattr(aside, "at_rest", lambda: bool(hand_rests))
    cures = bench.window.cures
    cures._long.setInterval(0)
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    qtbot.waitUntil(lambda: cures.note is not None and cures.note.isVisible())
    assert re.search(r"0 of \d+ snags", cures.note.at.text())
    press(cures.note.button)
    snags = bench.window.side.inside.snags
    qtbot.waitUntil(lambda: cures.settled and "choose this card" in snags.model().index(0).data())
    assert cures.note.isHidden()
    hand_rests.append(True)
    bench.window.go_to_snag(snags.model().index(0).data(Qt.ItemDataRole.UserRole))
    cures._chosen(snags.model().index(0).data(Qt.ItemDataRole.UserRole))
    qtbot.waitUntil(lambda: cures.settled and all(_sought(snags, row) for row in range(snags.model().rowCount())))


def test_a_window_closes_while_cures_are_sought(bench, qtbot, monkeypatch):
    monkeypatch.setattr(aside, "at_rest", lambda: False)
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    qtbot.waitUntil(lambda: bool(running(bench.window.cures)))
    bench.window.asked = True
    bench.window.close()
    assert running(bench.window.cures) == []


def test_nothing_is_told_of_a_search_that_an_undo_has_ended(beside, bench, qtbot):
    """The layout before has nothing to cure: no note may come, or stay, over the drawing."""
    start, cures = bench.inside("treble side 2"), bench.window.cures
    for one in (cures._pause, cures._long):  # however long the machine takes to get there: begun amid the drag no search ends
        one.setInterval(10**8)
    bench.drag(start, (start[0], start[1] - 9.0))
    cures._pause.setInterval(0)
    qtbot.waitUntil(cures._long.isActive)
    bench.window.document.undo()
    assert not cures._long.isActive()
    beside.set()
    qtbot.waitUntil(lambda: cures.settled)
    assert not cures._long.isActive() and (cures.note is None or cures.note.isHidden())
