"""Pasting: copies hang at the pointer until they are set down; what cannot be is said and loses nothing."""

import pytest

from app.tools import Done, Options, Shown
from app.tools.paste import paste_down
from geometry.edits import plan_point
from geometry.edits.clipping import clip
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import plain, sound


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


def test_escape_leaves_nothing(hand):
    hand.move(10.2, 60.3)
    assert hand.key("escape") is None and hand.running.over
