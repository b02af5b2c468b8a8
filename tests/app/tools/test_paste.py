"""Pasting: copies hang at the pointer until they are set down; what cannot be is said and loses nothing."""

import pytest

from app.tools import Done, Options, Shown
from app.tools.paste import paste_down
from geometry.edits import along_edge, plan_point
from geometry.edits.clipping import clip
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import plain, sound, twelve


@pytest.fixture
def hand():
    head = plain()
    return TestHand(paste_down(head, clip(head, ("pin",)), Options()), head)


def test_a_press_sets_down_what_hangs_at_the_pointer(hand):
    assert hand.move(10.2, 60.3).held == ("pin 2",)
    done = hand.press(10.2, 60.3)
    assert isinstance(done, Done) and done.name == "Paste pin 2" and plan_point(sound(done.layout), "pin 2") == (10.0, 60.0)


def test_a_place_can_be_typed(hand):
    hand.move(10.2, 60.3)
    assert plan_point(hand.type("12.5; 40").layout, "pin 2") == (12.5, 40.0)


def test_what_cannot_be_read_or_be_is_said_and_the_copies_stay_at_the_pointer(hand):
    hand.move(10.2, 60.3)
    for text, why in (("radius", "Type a length"), ("radius 3", "Type a place"), ("9000; 0", "5000")):
        shown = hand.type(text)
        assert isinstance(shown, Shown) and why in shown.readout and shown.held == ("pin 2",), text
    shown = hand.press(90000.0, 0.0)
    assert isinstance(shown, Shown) and "5000" in shown.readout
    assert hand.move(10.2, 60.3).readout == "10 mm to the treble, 60 mm from the nut line"
    assert isinstance(hand.key("enter"), Done)


def test_a_side_tuner_goes_to_the_edge_nearest_to_the_pointer_and_the_card_tells_where_it_is():
    head = twelve()
    hand = TestHand(paste_down(head, clip(head, ("bass side 1",)), Options()), head)
    shown = hand.move(44.0, 100.2)
    id, = shown.held
    side, along = along_edge(shown.layout, id)
    assert side == "treble" and shown.readout.startswith(f"along {along:.4g} mm")
    done = hand.type("90")
    assert along_edge(sound(done.layout), id) == ("treble", pytest.approx(90.0)) and done.name == f"Paste {id}"


def test_several_things_are_carried_by_the_one_in_their_middle():
    head = twelve()
    ids = ("treble face 1", "treble face 2", "treble face 3")
    hand = TestHand(paste_down(head, clip(head, ids), Options()), head)
    shown = hand.move(0.0, 100.0)
    at = [plan_point(shown.layout, id) for id in shown.held]
    assert len(at) == 3 and at[1] == pytest.approx((0.0, 100.0))


def test_with_mirrored_on_a_copy_moves_nothing_else():
    head = twelve()
    hand = TestHand(paste_down(head, clip(head, ("treble face 1",)), Options(mirrored=True)), head)
    done = hand.press(3.0, 100.0)
    assert {t: head.tuner(t.id) for t in head.tuners} == {t: done.layout.tuner(t.id) for t in head.tuners}
