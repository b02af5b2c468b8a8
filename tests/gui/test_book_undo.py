"""Undo at the Job book stage: nothing is undone there that is not seen there."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.window.history_buttons import ACCURACY_TAKEN
from geometry.edits import add_hole
from tests.gui.hands import type_on
from tests.waiting import press


@pytest.fixture
def room(bench):
    return bench.enter("book")


def test_undo_leaves_a_drawing_alone_that_is_not_seen(bench, room):
    """Who presses Ctrl+Z at the book means what was just written: a step of the drawing would be gone without a sign."""
    window, actions = bench.window, bench.window.actions_
    window.document.apply("Hole", add_hole(bench.layout, (0.0, 20.0), 8.8))
    drawn = bench.layout
    assert actions["undo"].text() == "&Undo" and actions["undo"].isEnabled()
    QTest.keyClick(room.view.hours, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert bench.layout is drawn and "Take the last entry back" in window.foot.said and "another stage" in window.foot.said
    window.set_stage("tuners")
    assert actions["undo"].text() == "&Undo: Hole"
    window.commands.run("undo")
    window.set_stage("book")
    assert actions["redo"].text() == "&Redo"
    window.commands.run("redo")
    assert len(bench.layout.holes) == len(drawn.holes) - 1 and "another stage" in window.foot.said


def test_undo_takes_back_the_minutes_that_the_book_has_found(bench, room):
    """The one step of the layout that is made here, and whose button promises it."""
    table = room.view.hours
    table.setFocus()
    table.stand_at(0, 3)
    for text in ("40", "50", "60"):
        type_on(table, text)
    before = bench.layout.rates
    press(room.panel.buttons["rates"])
    assert bench.layout.rates != before and bench.window.actions_["undo"].text() == "&Undo: Minutes found by the job book"
    bench.window.commands.run("undo")
    assert bench.layout.rates == before
    bench.window.commands.run("redo")
    assert bench.layout.rates != before


def test_undo_takes_back_the_accuracy_that_was_taken_here(bench, room):
    """The foot promises one undo as the readings become the shop's accuracy."""
    window = bench.window
    window.document.apply(ACCURACY_TAKEN, replace(bench.layout, accuracy=replace(bench.layout.accuracy, mark=0.77)))
    assert window.actions_["undo"].text() == f"&Undo: {ACCURACY_TAKEN}"
    window.commands.run("undo")
    assert bench.layout.accuracy.mark != 0.77
