"""The whole work without a mouse: things and nodes one after the other, the pen, and what a screen reader is told."""

import pytest
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from app.look.choice import Choice
from app.look.descendants import below
from app.window.input import spoken
from app.window.input.stepping import things
from geometry import edits
from geometry.edits import move_features
from geometry.layout import Pin, loop_path
from tests.gui.bench import at_rest
from tests.waiting import until

KEY, SHIFT, CTRL = Qt.Key, Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(bench):
    bench.window.activateWindow()
    bench.view.setFocus()
    bench.pump()
    return bench.window


def test_n_leads_through_every_thing_and_round(bench, window):
    window.set_stage("slots")
    known = things(bench.layout, "slots")
    seen = []
    for _ in known:
        bench.key(KEY.Key_N)
        seen += window.document.held
    assert seen == known and seen[0] == bench.layout.slots[0].id and set(seen) >= {"outline", "nut", "blank"}
    bench.key(KEY.Key_N, SHIFT)
    assert window.document.held == (known[-2],)
    bench.key(KEY.Key_E)
    assert window.document.held == (known[-2], known[-1])


def test_arrow_keys_nudge_what_was_reached_by_keys(bench, window):
    bench.key(KEY.Key_N)
    held = window.document.held[0]
    before = bench.origin(held)
    bench.key(KEY.Key_Up)
    assert bench.origin(held)[1] != before[1]


def test_what_the_keyboard_comes_to_by_enter_is_seen(bench, window):
    window.resize(1024, 700)
    window.looks.choose_letters(200)
    window.document.hold(("bass face 1",))
    at_rest(window)
    window.canvas.view.setFocus()
    bench.key(KEY.Key_Return)
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit) and field.visibleRegion().boundingRect().height() == field.height()


def test_enter_leads_into_the_first_field_and_esc_back_to_the_drawing(bench, window):
    bench.key(KEY.Key_N)
    bench.key(KEY.Key_Return)
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit) and field.accessibleName() == "Name"
    held = window.document.held
    QTest.keyClick(field, KEY.Key_Escape)
    assert bench.view.hasFocus() and window.document.held == held
    bench.key(KEY.Key_Escape)
    assert window.document.held == ()


def test_esc_in_a_field_puts_it_back_before_it_leads_to_the_drawing(bench, window):
    bench.key(KEY.Key_N)
    bench.key(KEY.Key_Return)
    field, held, before = QApplication.focusWidget(), window.document.held, bench.layout
    QTest.keyClicks(field, "x")
    assert field.text().endswith("x")
    QTest.keyClick(field, KEY.Key_Escape)
    assert field.text() == held[0] and field.hasFocus()
    QTest.keyClick(field, KEY.Key_Escape)
    assert bench.view.hasFocus() and bench.layout is before and window.document.held == held


def test_nodes_of_the_outline_one_after_the_other_moved_and_added(bench, window):
    window.set_stage("outline")
    count = len(bench.layout.outline.nodes)
    bench.key(KEY.Key_K)
    bench.key(KEY.Key_K)
    assert window.document.held == ("outline",) and window.node == 1
    at = bench.layout.outline.nodes[1].at
    bench.key(KEY.Key_Up)
    assert bench.layout.outline.nodes[1].at == pytest.approx((at[0], at[1] + 1))
    bench.key(KEY.Key_Insert)
    assert len(bench.layout.outline.nodes) == count + 1 and window.node == 2
    bench.key(KEY.Key_K, SHIFT)
    assert window.node == 1


def test_a_node_that_an_undo_has_taken_away_is_in_hand_no_longer(bench, window):
    """Its number stayed, and the next key said that there was no such node."""
    window.set_stage("outline")
    window.document.hold(("outline",))
    last = len(bench.layout.outline.nodes) - 1
    window.hold_nodes(last, (last,))
    bench.key(KEY.Key_Insert)
    assert window.node == last + 1
    bench.key(KEY.Key_Z, CTRL)
    assert len(bench.layout.outline.nodes) == last + 1 and window.node is None and window.nodes == ()
    bench.key(KEY.Key_K)
    assert window.node == 0


def test_snags_one_after_the_other(bench, window):
    rows = window.side.inside.snags.model().rowCount()
    bench.key(KEY.Key_S)
    assert window.side.inside.snags.currentIndex().row() == 0
    bench.key(KEY.Key_S, SHIFT)
    assert window.side.inside.snags.currentIndex().row() == rows - 1
    window.actions_["next snag"].trigger()
    assert window.side.inside.snags.currentIndex().row() == 0 and window.document.held


def test_an_outline_is_drawn_by_typed_places_alone(bench, window):
    window.set_stage("outline")
    window.set_tool("draw outline")
    for text in ("-22; 0", "22; 0", "42; 60", "36; 190", "-36; 190", "-42; 60"):
        bench.text(text)
        bench.key(KEY.Key_Return)
    bench.key(KEY.Key_Return)
    assert [node.at for node in bench.layout.outline.nodes] == [
        (-22, 0), (22, 0), (42, 60), (36, 190), (-36, 190), (-42, 60)]


def test_a_pin_is_set_down_by_the_pen(bench, window):
    window.set_stage("slots")
    window.set_tool("pin")
    bench.key(KEY.Key_Right)
    begin = window.keyboard.pen
    assert window.canvas.pen.isVisible()
    bench.key(KEY.Key_Right, SHIFT)
    bench.key(KEY.Key_Down, Qt.KeyboardModifier.AltModifier)
    before = len(bench.layout.pins)
    bench.key(KEY.Key_Space)
    assert len(bench.layout.pins) == before + 1
    assert bench.layout.pins[-1].at == pytest.approx((begin[0] + 10, begin[1] - 0.1))
    bench.move((0.0, 80.0))
    assert window.keyboard.pen is None and not window.canvas.pen.isVisible(), "the mouse points again"


def test_a_section_line_is_laid_by_the_pen(bench, window):
    window.set_tool("section")
    bench.key(KEY.Key_Left)
    bench.key(KEY.Key_Space)
    for _ in range(4):
        bench.key(KEY.Key_Right, SHIFT)
    assert window.laying
    bench.key(KEY.Key_Space)
    bench.key(KEY.Key_Up, SHIFT)
    assert window.laying and "40" in window.foot.said, "the line stays when the pen is lifted"


def test_a_distance_is_measured_by_the_pen(bench, window):
    window.set_tool("measure")
    bench.key(KEY.Key_Left)
    bench.key(KEY.Key_Space)
    bench.key(KEY.Key_Right, SHIFT)
    assert "from" in window.foot.said and "to" in window.foot.said


def test_a_slot_is_laid_by_the_pen(bench, window):
    window.set_stage("slots")
    window.set_tool("slot")
    before = len(bench.layout.slots)
    bench.key(KEY.Key_Right)
    bench.key(KEY.Key_Space)
    for _ in range(5):
        bench.key(KEY.Key_Up, SHIFT)
    bench.key(KEY.Key_Space)
    assert len(bench.layout.slots) > before
    made = bench.layout.slots[before].shape
    assert made.tip_end[1] - made.nut_end[1] == pytest.approx(50)


def test_the_paper_is_moved_and_zoomed_by_keys(bench, window):
    middle = bench.view.middle
    bench.key(KEY.Key_Right, Qt.KeyboardModifier.ControlModifier)
    assert bench.view.middle[0] > middle[0] + 5


# ---- what a screen reader is told ---------------------------------------------
def test_what_is_held_is_told_with_its_place_and_its_snags(bench, window, monkeypatch):
    told = []
    monkeypatch.setattr(spoken, "announce", lambda widget, text: told.append(text))
    window.document.hold(("treble side 2",))
    words = window.canvas.view.accessibleDescription()
    assert words == told[-1] and words.startswith("Side tuner, treble side 2.")
    x, y = bench.origin("treble side 2")
    assert f"{x:.1f} mm to the treble side, {y:.1f} mm from the nut line." in words
    window.document.apply("Nudge", move_features(bench.layout, ("treble side 2",), (0.0, -20.0)))
    words = window.canvas.view.accessibleDescription()
    assert "snags." in words and "spoils the work: " in words and told[-1] == words
    window.document.hold(())
    assert window.canvas.view.accessibleDescription().startswith("Nothing is held.")


def test_a_place_behind_the_nut_line_is_told_as_such(bench):
    layout = replace(bench.layout, pins=(Pin(id="back pin", at=(-4.0, -3.0)),))
    assert "4 mm to the bass side, 3 mm behind the nut line." in spoken.described(layout, ("back pin",), None, (), "mm")


def test_a_drag_is_told_when_it_is_over(bench, window, monkeypatch):
    told = []
    monkeypatch.setattr(spoken, "announce", lambda widget, text: told.append(text))
    start = bench.inside("treble side 2")
    bench.press(start)
    bench.move_along(start, (start[0], start[1] + 6), 6)
    assert not [text for text in told if text.startswith("Side tuner")]
    bench.release((start[0], start[1] + 6))
    assert told and any(text.startswith("Side tuner, treble side 2.") for text in told)


def test_sentences_of_the_foot_are_announced(window, monkeypatch):
    told = []
    monkeypatch.setattr(spoken, "announce", lambda widget, text: told.append((widget, text)))
    window.say("Put back")
    assert told == [(window.foot, "Put back")]


def test_the_outline_keeps_its_shape_when_a_node_is_added(bench, window):
    window.set_stage("outline")
    box = loop_path(bench.layout.outline).box
    bench.key(KEY.Key_K)
    bench.key(KEY.Key_Insert)
    assert loop_path(bench.layout.outline).box == pytest.approx(box)


def test_what_was_copied_is_set_down_by_keys(bench, window):
    pin = bench.layout.pins[0]
    window.document.hold((pin.id,))
    window.commands.run("copy")
    window.commands.run("paste")
    bench.key(KEY.Key_Right)
    bench.key(KEY.Key_Right, SHIFT)
    at = window.keyboard.pen
    bench.key(KEY.Key_Return)
    assert len(bench.layout.pins) == 3 and bench.layout.pins[-1].at == pytest.approx(at)


def test_a_string_is_led_past_the_other_side_by_the_pen(bench, window):
    window.set_stage("strings")
    window.set_tool("wind")
    before = bench.layout.tuner("treble face 2").winds
    window.document.hold(("treble face 2",))
    bench.key(KEY.Key_Right)
    bench.key(KEY.Key_Space)
    assert bench.layout.tuner("treble face 2").winds != before


def test_letters_choose_the_edge_before_the_first_node_too(bench, window):
    window.set_stage("outline")
    window.set_tool("draw outline")
    row = window.side.inside.snags.currentIndex().row()
    bench.text("a")
    assert window.chooser.options.kind == "arc" and window.side.inside.snags.currentIndex().row() == row
    bench.text("s")
    assert window.chooser.options.kind == "straight" and window.side.inside.snags.currentIndex().row() == row


def test_enter_on_a_tool_leads_to_the_drawing_and_a_number_is_typed_there(bench, window):
    window.set_stage("tuners")
    before = len(bench.layout.holes)
    window.keyboard.part(-1)
    tool = QApplication.focusWidget()
    assert window.tools.isAncestorOf(tool)
    QTest.keyClick(tool, KEY.Key_Return)
    assert bench.view.hasFocus() and window.tools.tool == "hold"
    window.keyboard.part(-1)
    for _ in range(2):
        QTest.keyClick(QApplication.focusWidget(), KEY.Key_Right)
    assert window.tools.tool == "hole" and not bench.view.hasFocus(), "the arrows lead on from tool to tool"
    QTest.keyClick(QApplication.focusWidget(), "1")
    assert bench.view.hasFocus()
    bench.text("2;85")
    bench.key(KEY.Key_Return)
    assert len(bench.layout.holes) == before + 1 and bench.layout.holes[-1].at == (12.0, 85.0)
    window.keyboard.escape()
    window.keyboard.part(1)
    stage = QApplication.focusWidget()
    while not window.stages.isAncestorOf(stage):
        window.keyboard.part(1)
        stage = QApplication.focusWidget()
    QTest.keyClick(stage, KEY.Key_Return)
    assert bench.view.hasFocus()


def test_the_first_sign_of_a_number_is_not_lost_where_the_pointer_lies_on_the_drawing_already(bench, window):
    window.set_stage("tuners")
    window.keyboard.part(-1)
    for _ in range(2):
        QTest.keyClick(QApplication.focusWidget(), KEY.Key_Right)
    bench.move((3.0, 60.0))
    assert window.tools.tool == "hole" and window.hand.busy and not bench.view.hasFocus()
    before = len(bench.layout.holes)
    QTest.keyClick(QApplication.focusWidget(), "1")
    bench.text("2;85")
    bench.key(KEY.Key_Return)
    assert len(bench.layout.holes) == before + 1 and bench.layout.holes[-1].at == (12.0, 85.0)


@pytest.mark.parametrize("count", [1, 2])
def test_where_what_is_held_gives_way_to_something_else_the_drawing_takes_the_keyboard(bench, count):
    """The page of the holes goes as they do; the next in the window's order is Undo, which a key would press unasked."""
    window, head = bench.window, bench.layout
    window.activateWindow()
    until(window.isActiveWindow)
    for i in range(count):
        head = edits.add_hole(head, (0.0, 150.0 + 12 * i), 10.0)
    window.document.apply("Add holes", head)
    window.document.hold(tuple(one.id for one in head.holes[-count:]))
    bench.pump()
    box = next(one for one in below(window.side, Choice) if one.isVisible() and "in" in one.accessibleName().split())
    box.setFocus()
    box.setCurrentIndex(1)
    box.activated.emit(1)
    bench.pump()
    assert len(window.document.held) == count and bench.layout.tuner(window.document.held[0])
    assert QApplication.focusWidget() is bench.view
