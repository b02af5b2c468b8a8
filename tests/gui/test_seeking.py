"""A proposal that takes long can be stopped and asked for again, and never turns up where nobody looks for it."""

import pytest
from PySide6.QtCore import Qt

from geometry.edits import move_features
from tests.waiting import press, until


@pytest.fixture(autouse=True)
def held(beside, bench):
    """Until a test lets go of it, whatever works beside the window waits."""
    beside.set()
    return beside


@pytest.fixture
def pins(bench, held):
    """Pins are being looked for, and it takes long."""
    bench.window.set_stage("slots")
    held.clear()
    bench.window.commands.run("propose pins")
    return bench.window.pins.seeking


def test_a_search_that_was_stopped_brings_nothing(bench, pins, held):
    before = bench.layout
    press(pins.note.button)
    held.set()
    until(lambda: pins.errand.free)
    assert "Stopped" in bench.window.foot.said and not bench.window.hand.busy
    assert bench.layout is before and pins.note.isHidden()


def test_a_search_that_was_stopped_is_asked_for_again_while_it_is_on_its_way_out(bench, pins, held):
    press(pins.note.button)
    bench.window.commands.run("propose pins")
    held.set()
    until(lambda: bench.window.hand.busy)
    bench.key(Qt.Key.Key_Return)
    assert bench.window.document.history.undo_name == "Propose pins"


def test_pins_found_after_the_maker_went_to_another_stage_wait_for_no_enter_there(bench, pins, held):
    before = bench.layout
    bench.window.set_stage("sheets")
    held.set()
    until(lambda: pins.errand.free)
    assert not bench.window.hand.busy and bench.layout is before and "ask again" in bench.window.foot.said


def test_posts_looked_for_do_not_turn_up_on_another_stage(bench, held):
    bench.window.set_stage("strings")
    room = bench.window.rooms["strings"]
    held.clear()
    press(room.panel.propose)
    bench.window.set_stage("router")
    held.set()
    until(lambda: room.errand.free)
    assert room.proposal is None and "string proposal" not in bench.window.canvas._more._marks
    bench.window.set_stage("strings")
    bench.window.document.apply("Nudge", move_features(bench.layout, ("treble face 2",), (0.0, 0.5)))
    press(room.panel.propose)
    until(lambda: room.errand.free)


def test_a_window_closes_in_the_midst_of_a_search(bench, pins):
    bench.window.close()
    assert not pins.errand.busy
