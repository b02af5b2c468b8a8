"""The cure on a card: sought once the hand rests, shown as a ghost, carried out by its button as one step."""

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from geometry.checks import check


def _spoilt(bench, qtbot):
    """Drag a side tuner into its neighbour, wait for the cures; the row of the first card with a button."""
    start = bench.inside("treble side 2")
    bench.drag(start, (start[0], start[1] - 9.0))
    assert any(snag.grade == "spoils the work" for snag in bench.window.document.result.snags)
    qtbot.waitUntil(lambda: bench.window.cures.settled)
    bench.pump()
    snags = bench.window.side.snags
    for row in range(snags.model().rowCount()):
        index = snags.model().index(row)
        if snags.button_of(index) is not None:
            snags.scrollTo(index)
            bench.pump()
            return index
    raise AssertionError("no card has a button")


def _button(bench, index) -> QPoint:
    return bench.window.side.snags.button_of(index).center().toPoint()


def test_the_button_carries_the_cure_out_as_one_step(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.snags, bench.layout
    snag = index.data(Qt.ItemDataRole.UserRole)
    QTest.mouseClick(snags.viewport(), Qt.MouseButton.LeftButton, pos=_button(bench, index))
    bench.pump()
    after = check(bench.layout).snags
    assert bench.layout is not before
    assert (snag.kind, snag.between) not in {(one.kind, one.between) for one in after}
    bench.window.document.undo()
    assert bench.layout == before


def test_the_keyboard_reaches_the_cure(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.snags, bench.layout
    snags.setCurrentIndex(index)
    QTest.keyClick(snags, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    bench.pump()
    assert bench.layout is not before
    assert bench.window.document.history.undo_name in bench.window.actions_["undo"].text()


def test_pointing_at_the_button_shows_where_it_leads_and_changes_nothing(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.snags, bench.window.document.shown
    QTest.mouseMove(snags.viewport(), _button(bench, index))
    bench.pump()
    assert bench.window.canvas._guides._marks["guides"]
    assert bench.window.document.shown is before
    QTest.mouseMove(snags.viewport(), QPoint(2, 2))
    bench.pump()
    assert not bench.window.canvas._guides._marks


def test_cures_are_said_in_the_makers_unit_and_never_before_they_are_tried(bench, qtbot):
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] - 9.0))
    snags = bench.window.side.snags
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
    qtbot.waitUntil(lambda: bench.window.cures._thread is not None)
    running = bench.window.cures._search
    here = bench.inside("treble side 2")
    bench.drag(here, (here[0], here[1] + 9.0))
    assert running.stopped
    beside.set()
    qtbot.waitUntil(lambda: bench.window.cures.settled)


def test_a_cure_pressed_with_something_in_hand_says_what_to_do_first(bench, qtbot):
    index = _spoilt(bench, qtbot)
    snags, before = bench.window.side.snags, bench.layout
    bench.press(bench.inside("bass side 1"))
    bench.move(bench.inside("bass side 2"))
    assert bench.window.hand.busy
    snags.cure_wanted.emit(index.data(Qt.ItemDataRole.UserRole))
    assert bench.layout is before and "Esc" in bench.window.foot.said
    bench.key(Qt.Key.Key_Escape)
    assert bench.window.document.shown is before
