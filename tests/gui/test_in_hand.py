"""What only follows the pointer is not in hand yet: undo, Esc, Delete and the way to the panel pass through it, and what was begun is
put back first."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.formats.headstock import encode
from app.look.descendants import below
from app.panels.forms.fields import Field
from app.window import texts
from app.window.sign_button import SignButton
from geometry.edits import add_hole, add_pin
from geometry.errors import GeometryError

CTRL, KEY = Qt.KeyboardModifier.ControlModifier, Qt.Key
AT, BESIDE = (-3.0, 85.0), (4.0, 120.0)


def leave(bench):
    QApplication.sendEvent(bench.view, QEvent(QEvent.Type.Leave))
    bench.pump()


@pytest.fixture
def placing(bench):
    """A hole set down with the tool for it, the next one following the pointer."""
    bench.window.set_tool("hole")
    bench.click(AT)
    bench.move(BESIDE)
    return bench.window


def holes(window):
    return len(window.document.layout.holes), len(window.document.shown.holes)


def test_undo_takes_back_what_was_set_down_and_not_what_hangs_at_the_pointer(bench, placing):
    assert holes(placing) == (1, 2) and not placing.hand.begun
    bench.key(KEY.Key_Z, CTRL)
    assert holes(placing) == (0, 0) and placing.foot.said == "Undone: Add hole 1"
    bench.move(AT)
    assert holes(placing) == (0, 1), "the tool stays in hand"


def test_esc_lays_a_tool_down_though_the_mouse_moves(bench, placing):
    bench.key(KEY.Key_Escape)
    bench.move(AT)
    assert placing.tools.tool == "hold" and holes(placing) == (1, 1)


def test_what_follows_the_pointer_goes_with_it(bench, placing):
    leave(bench)
    assert holes(placing) == (1, 1) and not placing.hand.busy and not placing.canvas.tag.said
    placing.set_tool("measure")
    bench.move(AT)
    leave(bench)
    assert not placing.hand.busy


def test_what_was_begun_stays_when_the_pointer_goes(bench):
    window = bench.window
    window.set_tool("measure")
    bench.click(AT)
    leave(bench)
    assert window.hand.begun
    window.set_tool("hole")
    bench.move(AT)
    assert not window.actions_["undo"].isEnabled()
    bench.text("12")
    assert window.actions_["undo"].isEnabled()
    leave(bench)
    assert window.hand.begun and window.hand.entries
    bench.key(KEY.Key_Escape)
    assert not window.hand.busy and window.foot.said == "Put back" and window.tools.tool == "hole"
    assert not window.actions_["undo"].isEnabled()


def test_the_pen_of_the_arrow_keys_stays_when_the_mouse_goes(bench):
    bench.window.set_tool("hole")
    bench.key(KEY.Key_Right)
    leave(bench)
    assert bench.window.hand.busy and holes(bench.window) == (0, 1)


@pytest.mark.parametrize("key", ["remove", "duplicate", "cut", "copy", "level", "row on a line", "fillet", "offset"])
def test_what_hangs_at_the_pointer_is_not_taken_for_a_thing_of_the_layout(placing, key):
    before = placing.document.layout
    placing.commands.run(key)
    assert placing.document.layout is before
    if key == "remove":
        assert placing.foot.said == "Put back" and not placing.hand.busy
    else:
        assert placing.foot.said == texts.IN_HAND and placing.hand.busy


def test_delete_puts_a_drag_back_and_then_removes(bench):
    window = bench.window
    window.document.apply("", add_pin(add_hole(bench.layout, AT, 6.0), BESIDE))
    before = bench.layout
    bench.press(AT)
    bench.move_along(AT, (-3.0, 95.0))
    assert window.document.shown is not before
    bench.key(KEY.Key_Delete)
    assert window.document.shown is before and window.foot.said == "Put back"
    bench.release((-3.0, 95.0))
    bench.key(KEY.Key_Delete)
    assert not bench.layout.holes and bench.layout.pins


def test_undo_takes_a_line_back_node_by_node(bench):
    window = bench.window
    window.set_stage("outline")
    before = bench.layout
    assert not window.actions_["undo"].isEnabled()
    window.set_tool("draw outline")
    for at in ((-25.0, 0.0), (25.0, 0.0), (30.0, 60.0)):
        bench.click(at)
    assert window.actions_["undo"].isEnabled(), "what is drawn can be taken back, though there is no step"
    bench.text("40")
    bench.key(KEY.Key_Z, CTRL)
    assert window.hand.busy and not window.hand.entries, "what is being typed goes first"
    assert window.canvas._grips.boundingRect().isEmpty(), "the nodes of the outline that is there are not those of the line"
    crosses = [window.hand._running.shown]
    for left in (2, 1, 0):
        bench.key(KEY.Key_Z, CTRL)
        crosses.append(window.hand._running.shown)
        assert crosses[-1].back == (left > 0)
    assert [len(shown.marks) for shown in crosses] == sorted((len(shown.marks) for shown in crosses), reverse=True)
    bench.key(KEY.Key_Delete)
    assert bench.layout is before


def test_delete_takes_the_last_node_of_a_line_back_and_nothing_that_is_held(bench):
    window = bench.window
    window.set_stage("slots")
    window.document.hold((bench.layout.slots[0].id,))
    before = bench.layout
    window.set_tool("draw slot")
    for at in ((-5.0, 40.0), (5.0, 40.0), (5.0, 60.0)):
        bench.click(at)
    bench.key(KEY.Key_Delete)
    assert bench.layout is before and window.hand.busy
    bench.click((5.0, 62.0))
    bench.click((-5.0, 62.0))
    bench.click((-5.0, 40.0))
    assert window.foot.said.startswith("Draw ") and window.tools.tool == "hold"
    nodes = bench.layout.slots[-1].shape.loop.nodes
    assert [node.at for node in nodes] == [pytest.approx(at, abs=0.5) for at in ((-5, 40), (5, 40), (5, 62), (-5, 62))]


def test_a_cure_is_made_while_a_tool_only_follows_the_pointer(bench, placing, monkeypatch):
    """Its button is pressed by a key while the mouse rests on the drawing."""
    asked = []
    monkeypatch.setattr("geometry.cures.apply_cure", lambda layout, snag, mirrored: asked.append(snag) or layout)
    placing.cures.carry_out("snag")
    assert placing.foot.said != texts.IN_HAND
    placing.set_tool("hold")
    bench.press((0.0, 150.0))
    placing.cures.carry_out("snag")
    assert placing.foot.said == texts.IN_HAND
    bench.release((0.0, 150.0))


@pytest.mark.parametrize("letters", ["100", "150"])
@pytest.mark.parametrize(("stage", "tools"), [("outline", ("hold", "draw outline")), ("slots", ("hold", "slot", "draw slot"))])
def test_no_button_moves_as_a_tool_is_taken(bench, stage, tools, letters):
    window = bench.window
    window.actions_[f"letters {letters}"].trigger()
    window.set_stage(stage)
    for width in range(1100, 1500, 40):
        window.resize(width, 880)
        places = set()
        for tool in tools:
            window.set_tool(tool)
            bench.pump()
            places.add(tuple((button.geometry().getRect(), button.isVisible()) for button in below(window.tools, SignButton)))
        assert len(places) == 1, width


def test_a_number_of_which_nothing_comes_does_not_stay_in_its_field(bench):
    window = bench.window
    window.set_stage("slots")
    window.tools.mirrored.setChecked(True)
    pin = next(pin for pin in bench.layout.pins if pin.at[0] == 0)
    window.document.hold((pin.id,))
    before, field = bench.layout, next(one for one in below(window.side, Field)
                                       if one.isVisible() and one.accessibleName() == "Across, from the centreline")
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, "3")
    QTest.keyClick(field, KEY.Key_Return)
    assert bench.layout is before and "switch Mirrored off" in window.foot.said
    assert field.text() == "0 mm"


def test_a_place_that_is_refused_leaves_nothing_in_hand(bench, monkeypatch):
    window = bench.window
    window.set_tool("hole")
    bench.move(AT)
    assert window.hand.busy

    def refuse(*_):
        raise GeometryError("No.")

    monkeypatch.setattr("app.tools.place.add_hole", refuse)
    bench.click(AT)
    assert window.hand.busy and not window.hand.begun and not window.actions_["undo"].isEnabled()
    bench.key(KEY.Key_Escape)
    assert window.tools.tool == "hold", "there is nothing to be put back first"


def test_another_layout_takes_what_is_in_hand_away_without_a_word_about_changes(bench, tmp_path):
    window, other = bench.window, tmp_path / "other.headstock.json"
    other.write_bytes(encode(bench.layout))
    window.set_tool("slot")
    bench.click(AT)
    assert window.hand.begun
    assert window.files.open(other) and not window.hand.busy
    assert "meanwhile" not in window.foot.said
