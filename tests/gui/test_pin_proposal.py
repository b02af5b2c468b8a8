"""Propose pins by button: a ghost first, then one step or none; and pins that the mouse moves."""

import msgspec
import pytest
from PySide6.QtCore import Qt

from app.panels.describe import describe
from geometry.edits import plan_point, set_field
from tests.waiting import press


@pytest.fixture
def asked(bench, qtbot):
    bench.window.set_stage("slots")
    before = bench.layout
    press(bench.window.tools._actions["propose pins"])
    qtbot.waitUntil(lambda: bench.window.hand.busy)
    assert bench.layout is before and bench.window.document.shown.pins != before.pins
    assert "170.5 mm apart" in bench.window.foot.said and "A press or Enter takes these pins" in bench.window.foot.said
    assert len(bench.window.foot.said) < 100, "the foot of a window 1366 wide shows it whole"
    return before


def test_enter_takes_them_in_one_step(bench, asked):
    bench.key(Qt.Key.Key_Return)
    assert [pin.at for pin in bench.layout.pins] == [(0.0, 13.0), (0.0, 183.5)]
    assert bench.window.document.history.undo_name == "Propose pins"
    bench.window.commands.run("undo")
    assert bench.layout == asked


def test_a_press_takes_them_too(bench, asked):
    bench.click((30.0, 100.0))
    assert bench.window.document.held == tuple(pin.id for pin in bench.layout.pins)
    assert bench.layout.pins != asked.pins and not bench.window.hand.busy


def test_esc_puts_back(bench, asked):
    bench.window.keyboard.escape()
    assert bench.layout is asked and bench.window.document.shown is asked and not bench.window.hand.busy


def test_another_stage_or_tool_puts_back_and_says_so(bench, asked):
    bench.window.set_stage("tuners")
    assert bench.layout is asked and not bench.window.hand.busy and bench.window.foot.said == "What was in hand is put back."
    bench.window.set_stage("slots")
    assert bench.window.foot.said != "What was in hand is put back."


def test_no_room_is_said(bench, qtbot):
    wide = msgspec.structs.replace(bench.layout.margins, pin_any=60.0)
    bench.window.document.apply("Wide margin", msgspec.structs.replace(bench.layout, margins=wide))
    bench.window.commands.run("propose pins")
    qtbot.waitUntil(lambda: "No two pins find room" in bench.window.foot.said)
    assert not bench.window.hand.busy


def test_the_mouse_moves_a_pin(bench):
    bench.window.set_stage("slots")
    pin = bench.layout.pins[1]
    bench.drag(pin.at, (pin.at[0], pin.at[1] + 8.0))
    moved = next(one for one in bench.layout.pins if one.id == pin.id)
    assert moved.at[1] == pytest.approx(pin.at[1] + 8.0, abs=1.0)


def test_the_panel_says_what_becomes_of_a_pins_hole(bench):
    """The pins of the demo stand in the web between its slots; beyond the tip is waste."""
    bench.window.set_stage("slots")
    pin = bench.layout.pins[1]
    bench.click(pin.at)
    assert _facts(bench)["Its hole"] == "stays in the finished head, and is plugged at the end"
    bench.window.document.apply("Into the waste", set_field(bench.layout, ("pins", pin.id, "at"), (40.0, 188.0)))
    bench.pump()
    assert _facts(bench)["Its hole"] == "goes with the waste, a slot or a later hole"
    bench.window.document.apply("Into a bore", set_field(bench.layout, ("pins", pin.id, "at"), plan_point(bench.layout, "bass face 1")))
    bench.pump()
    assert _facts(bench)["Its hole"] == "stands in the bore of bass face 1, and goes where that goes"
    for stage, met in (("tuners", "bass face 1"), ("slots", pin.id)):
        bench.window.set_stage(stage)
        bench.window.document.hold(())
        bench.click(plan_point(bench.layout, "bass face 1"))
        assert bench.window.document.held == (met,), "on the Slots stage the pin is met before its tuner"


def _facts(bench) -> dict[str, str]:
    return {row.label: row.value for row in describe(bench.layout, bench.window.document.held[0], "mm").fields if row.kind == "fact"}
