"""A piece begun anew: the next head of a layout has nothing done, and the record of the last one can be had back."""

import pytest
from msgspec.structs import replace

from tests.gui.hands import type_on
from tests.waiting import press


@pytest.fixture
def room(bench):
    bench.enter("book")
    return bench.window.rooms["book"]


def test_the_next_head_of_a_layout_begins_with_no_step_done_and_the_record_can_be_had_back(bench, room):
    bench.window.document.record("Real", lambda book: replace(book, piece="real"))
    room.view.hours.setFocus()
    for row in (1, 2):
        room.view.hours.stand_at(row, 4)
        type_on(room.view.hours, "6")
    before = bench.layout.book
    assert len(before.done) == 2
    press(room.panel.buttons["anew"])
    assert not bench.layout.book.done and not bench.layout.book.times and "brings its record back" in bench.window.foot.said
    assert room.view.hours.words.index(1, 0).data() == "2"
    bench.window.commands.run("undo")
    assert not bench.layout.book.done, "no step of the drawing"
    press(room.panel.buttons["anew"])
    assert "Nothing is written down" in bench.window.foot.said
    press(room.panel.buttons["back"])
    assert bench.layout.book == before
