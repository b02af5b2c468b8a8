"""The section line: laid, dragged by an end or as a whole, laid anew, ended."""

import pytest

from app.tools import Options
from app.tools.section import section
from tests.app.tools.hands import TestHand
from tests.geometry.edits.heads import plain


@pytest.fixture
def hand():
    head = plain()
    made = TestHand(section(head, Options()), head)
    made.press(-30.0, 100.0)
    made.move(30.0, 104.0)
    made.release()
    return made


def test_a_drag_lays_it_and_changes_nothing(hand):
    shown = hand.move(5.0, 5.0)
    assert shown.line == ((-30.0, 100.0), (30.0, 104.0))
    assert shown.layout == plain() and shown.readout.startswith("section of 60.1")


def test_an_end_is_dragged_alone(hand):
    hand.press(30.0, 104.0)
    hand.move(34.0, 90.0)
    assert hand.release().line == ((-30.0, 100.0), (34.0, 90.0))


@pytest.mark.parametrize(("end", "to", "line"), [((30.0, 104.0), (34.0, 90.0), ((-30.0, 100.0), (34.0, 100.0))),
                                                 ((30.0, 104.0), (-20.0, 180.0), ((-30.0, 100.0), (-30.0, 180.0))),
                                                 ((-30.0, 100.0), (-28.0, 120.0), ((-28.0, 104.0), (30.0, 104.0)))])
def test_an_end_keeps_the_line_level_or_upright_with_shift(hand, end, to, line):
    hand.press(*end)
    hand.move(*to, shift=True)
    assert hand.release(shift=True).line == line


def test_the_whole_line_is_dragged_by_its_middle(hand):
    hand.press(0.0, 102.0)
    hand.move(1.0, 112.0)
    (ax, ay), (bx, by) = hand.release().line
    assert (ax, ay, bx, by) == pytest.approx((-29.0, 110.0, 31.0, 114.0))


def test_a_press_elsewhere_lays_another(hand):
    hand.press(0.0, 20.0)
    hand.move(0.0, 60.0)
    assert hand.release().line == ((0.0, 20.0), (0.0, 60.0))
