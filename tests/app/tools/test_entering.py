"""Values typed one after another."""

import pytest

from app.tools.entering import Entering
from app.tools.typed import placed
from app.tools.words import STEP, place_takes
from geometry.layout import Nut


def typed(*texts: str, takes=STEP) -> str:
    entering = Entering()
    for i, text in enumerate(texts):
        if i:
            assert entering.next(takes)
        for letter in text:
            entering.add(letter)
    return entering.composed(takes)


def test_one_value_is_the_first_that_is_taken():
    assert typed("40") == "length 40"
    assert typed("40", takes=(("radius", "radius"),)) == "radius 40"
    assert typed("40", takes=()) == "40"


def test_tab_leads_to_the_next_and_round_again():
    assert typed("40", "30") == "length 40 angle 30"
    assert typed("", "30") == "angle 30"
    assert typed("40", "30", "5") == "length 405 angle 30"
    assert not Entering().next((("radius", "radius"),))
    assert typed("1 1/2 inches") == "length 1 1/2 inches"


def test_a_text_that_says_all_stays_as_it_is():
    for text in ("12.5; 40", "40 30°", "width 12", "12, 40", "30 deg"):
        assert typed(text) == text


def test_taking_back_goes_back_over_a_tab():
    entering = Entering()
    entering.add("4")
    entering.next(STEP)
    entering.back()
    assert entering.open == "4"
    entering.back()
    assert not entering


def test_what_is_shown_while_typing():
    entering = Entering()
    entering.add("4")
    assert entering.shown(STEP) == (("length", "4", True), ("angle", "", False))


def test_a_place_is_typed_to_the_side_on_which_the_pointer_is():
    here = (-31.4, 90.0)
    takes = place_takes(here, Nut())
    assert placed(typed("30", takes=takes), "mm", None, here) == (-30.0, 90.0)
    assert placed(typed("", "88", takes=takes), "mm", None, here) == (-31.4, 88.0)
    assert placed(typed('1"', "3 1/2 inches", takes=takes), "mm", None, here) == pytest.approx((-25.4, 88.9))
    assert placed(typed("30", "88", takes=place_takes((12.0, 0.0), Nut())), "mm", None, here) == (30.0, 88.0)


def test_a_place_behind_the_nut_line_is_typed_as_far_behind_it_as_the_card_says():
    here = (-7.5, -15.0)
    takes = place_takes(here, Nut())
    assert [label for _, label in takes] == ["to the bass", "behind the nut line"]
    assert placed(typed("", "12", takes=takes), "mm", None, here) == (-7.5, -12.0)
    assert placed(typed("5", "12", takes=takes), "mm", None, here) == (-5.0, -12.0)
    assert placed("treble 5 behind 8", "mm", None, here) == (5.0, -8.0)
