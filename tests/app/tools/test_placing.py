"""Placing tuners, pins and holes, and drawing straight slots."""

import pytest

from app.tools import Options, Running
from app.tools.place import place
from app.tools.slot import draw_slot
from geometry.checks import words
from geometry.edits import along_edge, plan_point, twin_feature
from geometry.edits.holes import set_there
from geometry.errors import GeometryError
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import FACE, LOPSIDED, SIDE, plain, sound, twelve


def placing(layout, what, **options):
    return TestHand(place(layout, what, Options(**options)), layout)


def slotting(layout, **options):
    chosen = Options(**options)
    hand = TestHand(draw_slot(layout, chosen), layout)
    hand.options = chosen
    return hand


@pytest.mark.parametrize("what", ["tuner", "pin", "hole"])
def test_what_is_to_be_pressed_is_said(what):
    assert placing(plain(), what, pattern=FACE).running.shown.readout == f"press where the {what} goes"


def test_a_face_tuner_is_in_the_layout_before_it_is_set_down():
    hand = placing(plain(), "tuner", pattern=FACE)
    shown = hand.move(-20.2, 90.3)
    assert shown.held == ("bass face 1",) and plan_point(shown.layout, "bass face 1") == (-20.0, 90.0)
    assert shown.readout == "20 mm to the bass, 90 mm from the nut line"
    done = hand.press(-20.2, 90.3)
    assert done.name == "Add bass face 1" and done.held == ("bass face 1",)
    sound(done.layout)


def test_a_side_tuner_follows_the_nearest_edge_or_its_mark():
    hand = placing(plain(), "tuner", pattern=SIDE)
    assert along_edge(hand.move(33.0, 120.2).layout, "treble side 2") == ("treble", pytest.approx(120.0))
    assert along_edge(hand.move(-55.0, 140.3).layout, "bass side 1") == ("bass", pytest.approx(140.0))
    done = hand.press(-55.0, 140.3)
    assert done.held == ("bass side 1",) and hand.running.over


@pytest.mark.parametrize("pattern", [FACE, SIDE])
def test_a_tuner_is_not_set_on_another(pattern):
    """A second press, where the first has set one: told while the pointer is there, and no step."""
    first = placing(plain(), "tuner", pattern=pattern).press(-35.2, 120.3)
    id, at = first.held[0], plan_point(first.layout, first.held[0])
    hand = placing(first.layout, "tuner", pattern=pattern)
    assert hand.move(at[0] + 0.4, at[1] + 0.3).layout is first.layout
    shown = hand.press(at[0] + 0.4, at[1] + 0.3)
    assert not hand.running.over and shown.readout == f"{words.first(id)} sits here already: press elsewhere, or Esc and press {id} to move it."
    assert f"{words.first(id)} sits here already" in hand.type(f"{at[0]}; {at[1]}").readout
    assert hand.press(at[0], at[1] + 40.0).name.startswith("Add")


def test_a_mirror_image_is_not_set_on_another_tuner():
    first = placing(plain(), "tuner", pattern=FACE).press(-20.2, 90.3)
    hand = placing(first.layout, "tuner", pattern=FACE, mirrored=True)
    assert hand.press(20.0, 90.0).readout == f"The mirror image would sit on {first.held[0]}: press elsewhere, or switch Mirrored off."
    assert not hand.running.over


@pytest.mark.parametrize("what", ["pin", "hole"])
def test_a_pin_or_hole_is_not_set_on_one_like_it(what):
    first = placing(plain(), what, hole_diameter=6.0).press(0.2, 120.2)
    id = first.held[0]
    hand = placing(first.layout, what, hole_diameter=6.0)
    assert hand.press(1.0, 121.0).readout == f"{words.first(id)} sits here already: press elsewhere, or Esc and press {id} to move it."
    assert not hand.running.over and f"{words.first(id)} sits here already" in hand.type("0; 120").readout
    assert hand.press(0.0, 126.0).name.startswith("Add"), "beside it there is room"
    other = placing(first.layout, "hole", hole_diameter=12.0).press(0.2, 120.2)
    last = other.layout.holes[-1]
    assert (last.at, last.diameter) == ((0.0, 120.0), 12.0), "a hole over a pin, or a wider one over a hole, may be meant"


def test_a_hole_may_be_set_on_one_that_is_plugged_first():
    first = placing(plain(), "hole", hole_diameter=6.0).press(0.2, 120.2)
    plugged = placing(set_there(first.layout, first.held, True, True), "hole", hole_diameter=6.0).press(2.0, 120.2)
    assert [hole.at for hole in plugged.layout.holes[-2:]] == [(0.0, 120.0), (2.0, 120.0)]


def test_what_the_layout_has_is_asked_once_for_all_steps_of_the_pointer(monkeypatch):
    head, asked = twelve(), []
    hand = placing(head, "tuner", pattern=FACE)
    monkeypatch.setattr("app.tools.place.plan_point", lambda layout, id: asked.append(id) or plan_point(layout, id))
    for step in range(5):
        hand.move(-20.0 + step, 90.0)
    assert len(asked) == 5, "the new one, at each step"


def test_pins_and_holes():
    pin = placing(plain(), "pin", pin_diameter=5.0).press(0.2, 120.2)
    assert pin.layout.pins[-1].at == (0.0, 120.0) and pin.layout.pins[-1].diameter == 5.0
    hole = placing(plain(), "hole", hole_diameter=3.0).press(-12.2, 120.2)
    assert (hole.layout.holes[-1].diameter, hole.layout.holes[-1].depth) == (3.0, None)


def test_typed_places():
    assert placing(plain(), "pin").type("0; 120").layout.pins[-1].at == (0.0, 120.0)
    hand = placing(plain(), "tuner", pattern=SIDE)
    hand.move(-39.0, 20.0)
    assert along_edge(hand.type("73.9").layout, "bass side 1") == ("bass", pytest.approx(73.9))
    again = placing(plain(), "tuner", pattern=SIDE)
    again.move(39.0, 20.0)
    assert along_edge(again.type("along 60").layout, "treble side 2") == ("treble", pytest.approx(60.0))
    assert "how far along" in placing(plain(), "tuner", pattern=SIDE).type("width 60").readout
    assert "two lengths" in placing(plain(), "pin").type("60").readout


def test_both_sides_at_once():
    done = placing(twelve(), "tuner", pattern=SIDE, mirrored=True).press(43.0, 150.2)
    assert len(done.held) == 2 and twin_feature(sound(done.layout), done.held[0]) == done.held[1]
    assert placing(twelve(), "pin", mirrored=True).press(0.0, 100.2).held == ("pin 1",)


def test_without_hardware_nothing_is_placed():
    with pytest.raises(GeometryError, match="Choose the hardware"):
        Running(place(plain(), "tuner", Options()), plain())
    with pytest.raises(GeometryError, match="no hardware pattern"):
        Running(place(plain(), "tuner", Options(pattern="none")), plain())


def test_esc_leaves_no_trace():
    head = plain()
    hand = placing(head, "pin")
    hand.move(0.0, 120.0)
    assert hand.running.cancel() is head
    assert "5000" in placing(head, "pin").move(0.0, 9e3).readout


def test_a_slot_by_two_presses():
    hand = slotting(plain(), slot_width=11.0)
    assert hand.move(-17.3, 40.2).readout == "17 mm to the bass, 40 mm from the nut line"
    hand.click(-17.3, 40.2)
    shown = hand.move(-17.2, 120.3)
    assert shown.held == ("bass slot",) and shown.readout.startswith("length 91 mm over the ends")
    done = hand.press(-17.2, 120.3)
    slot = sound(done.layout).slots[-1]
    assert (slot.shape.nut_end, slot.shape.tip_end, slot.shape.width, slot.depth) == (
        (-17.0, 40.0), (-17.0, 120.0), 11.0, None)
    assert done.name == "Add bass slot"


def test_a_slot_by_one_pull():
    done = slotting(plain()).drag((-17.3, 120.2), (-17.2, 40.3))
    assert done.layout.slots[-1].shape.nut_end == (-17.0, 40.0)


def test_a_slot_by_numbers():
    hand = slotting(plain())
    hand.type("-17; 40")
    hand.type("width 10")
    assert hand.options.slot_width == 10.0
    hand.move(-17.0, 90.0)
    assert "cannot be shorter" in hand.type("length 5").readout
    assert hand.type("length 100").layout.slots[-1].shape.tip_end == pytest.approx((-17.0, 130.0))
    other = slotting(plain(), slot_width=10.0)
    other.type("-17; 40")
    assert other.type("length 60 angle 90").layout.slots[-1].shape.tip_end == pytest.approx((-17.0, 90.0))
    assert "above zero" in slotting(plain()).type("width 0").readout
    turned = slotting(plain(), slot_width=10.0)
    turned.type("-17; 40")
    assert "the length over both ends" in turned.type("radius 4").readout
    assert turned.type("60 90°").layout.slots[-1].shape.tip_end == pytest.approx((-17.0, 90.0))


def test_slots_on_both_sides():
    done = slotting(plain(slots=()), mirrored=True).drag((-17.3, 120.2), (-17.2, 40.3))
    assert done.held == ("bass slot", "treble slot")
    single = slotting(plain(slots=()), mirrored=True).drag((0.0, 120.0), (0.0, 40.0))
    assert single.held == ("slot 1",)


def test_shift_keeps_a_slot_upright():
    hand = slotting(plain())
    hand.click(-17.0, 40.0)
    assert hand.press(-14.0, 120.0, shift=True).layout.slots[-1].shape.tip_end == (-17.0, 120.0)


def test_hardware_with_a_hand_comes_as_its_mirror_image_on_the_other_edge_and_says_so():
    head, told = plain(tuners=(), rows=()), "hardware mirrored for this edge"
    for x, name, end in ((-25.0, LOPSIDED, ""), (25.0, f"{LOPSIDED} mirrored", f", its {told}")):
        hand = placing(head, "tuner", pattern=LOPSIDED)
        shown = hand.move(x, 60.0)
        assert shown.layout.tuners[-1].pattern == name and (told in shown.snapped) is bool(end)
        done = hand.press(x, 60.0)
        assert done.name == f"Add {done.held[0]}{end}" and done.layout.tuners[-1].pattern == name
        head = sound(done.layout)


def test_both_hands_come_at_once_with_symmetric_editing():
    head = placing(plain(tuners=(), rows=()), "tuner", pattern=LOPSIDED, mirrored=True).press(25.0, 60.0).layout
    assert [tuner.pattern for tuner in head.tuners] == [LOPSIDED, f"{LOPSIDED} mirrored"]
    more = placing(head, "tuner", pattern=LOPSIDED, mirrored=True).press(-25.0, 90.0).layout
    assert [tuner.pattern for tuner in more.tuners[2:]] == [f"{LOPSIDED} mirrored", LOPSIDED], "the same as before on each edge"
