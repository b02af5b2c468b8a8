"""The pocket of a truss rod by mouse and keyboard: added, measured, dragged, made a slot to rout and back, heard and undone."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.look.choice import Choice
from app.look.descendants import below
from app.panels.forms.fields import LengthField
from app.window.input.spoken import described
from tests.gui.hands import button, field, fill, space
from tests.waiting import press, until

NAME = "truss rod pocket"


def of(bench, kind, label: str):
    """The widget of a row on the panel, as soon as it is there."""
    def found():
        return [w for w in below(bench.window.side, kind) if w.isVisible() and label in (w.accessibleName(), getattr(w, "text", str)())]
    until(found, label)
    return found()[0]


def pocket(bench):
    return next(slot for slot in bench.layout.slots if slot.id == NAME)


@pytest.fixture
def added(bench):
    """The pocket added by its button on the Slots stage."""
    bench.window.set_stage("slots")
    press(button(bench.window.side, "Add a truss rod pocket"))
    bench.pump()
    assert bench.window.document.held == (NAME,), "so that its measures can be typed at once"
    return bench


def test_its_measures_are_typed_and_the_snags_follow(added):
    """The nut pin of the demo stands at y = 26 with 3 mm of radius, 3 of wood wanted: the pocket may end at 20."""
    assert "locating-pin-to-slot" in added.kinds()
    fill(field(added.window.side, "Width"), "8")
    fill(field(added.window.side, "Length over all"), "30")
    fill(field(added.window.side, "Depth"), "9.5")
    slot = pocket(added)
    assert (slot.shape.width, slot.depth) == (8.0, 9.5)
    assert slot.shape.tip_end[1] + 4.0 == pytest.approx(-6.0 - 4.0 + 30.0)
    assert "locating-pin-to-slot" not in added.kinds() and "slot-to-nut" not in added.kinds()
    fill(field(added.window.side, "Length over all"), "5")
    assert pocket(added) == slot, "shorter than wide it is refused"


def test_the_keyboard_goes_from_the_button_to_its_first_field(bench):
    """And not to what comes after the panel: Space on Undo took back what had just been added."""
    bench.window.set_stage("slots")
    space(button(bench.window.side, "Add a truss rod pocket"))
    bench.pump()
    field = QApplication.focusWidget()
    assert field is not None and (field.accessibleName(), field.text()) == ("Name", NAME)


def test_a_choice_makes_it_a_slot_to_rout_and_back(added):
    box = of(added, Choice, "The slot")
    assert box.currentText() == "is there already"
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Up)
    until(lambda: not pocket(added).there)
    until(lambda: "slot-to-nut" in added.kinds())
    added.window.commands.run("undo")
    assert pocket(added).there


def test_the_mouse_drags_it_and_undo_takes_all_back(added):
    before = pocket(added).shape
    added.drag((0.0, 8.0), (9.0, 8.0))
    moved = pocket(added)
    assert moved.there and moved.shape.nut_end[0] == pytest.approx(before.nut_end[0] + 9.0, abs=1.0)
    for _ in range(2):
        added.window.commands.run("undo")
    assert not [slot for slot in added.layout.slots if slot.there]


def test_the_menu_adds_it_from_any_stage_and_a_screen_reader_hears_what_it_is(bench):
    bench.window.set_stage("tuners")
    bench.window.actions_["truss rod pocket"].trigger()
    assert bench.window.stage == "slots" and bench.window.document.held == (NAME,)
    assert described(bench.layout, (NAME,), None, (), "mm").startswith(f"Pocket, {NAME}.")
    bench.window.actions_["truss rod pocket"].trigger()
    assert bench.window.document.held == (f"{NAME} 2",)


def test_the_router_and_the_order_leave_it_alone(added, qtbot):
    from geometry.sequence import operations
    assert not [op.id for op in operations(added.layout) if NAME in op.features]
    added.window.document.hold(())
    added.window.set_stage("router")
    room = added.window.rooms["router"]
    qtbot.waitUntil(lambda: room.panel is not None and room.panel.isVisible())

    def named(what: str) -> bool:
        return any(w.isVisible() and what in getattr(w, "text", str)() for w in below(room.panel))
    qtbot.waitUntil(lambda: named("bass slot"))
    assert not named(NAME)


def test_in_inches_it_begins_with_fractions_that_a_rule_shows(bench):
    """1/2 wide, 1 1/8 in the head and as much again as its width beyond the nut line, 3/8 deep."""
    bench.window.set_unit("in64")
    bench.window.set_stage("slots")
    press(button(bench.window.side, "Add a truss rod pocket"))
    bench.pump()
    assert [of(bench, LengthField, label).text() for label in ("Width", "Length over all", "Depth")] == ['1/2"', '1 5/8"', '3/8"']
    bench.window.document.undo()
    bench.window.actions_["truss rod pocket"].trigger()
    assert (pocket(bench).shape.width, pocket(bench).depth) == pytest.approx((12.7, 9.525))
