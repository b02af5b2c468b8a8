"""Ramps by hand: a slot 12 wide from y = 40 on about x = 0, its round end from y = 34 on, a ramp 20 long and 4 deep before it."""

import math

import numpy as np
import pytest

from geometry.layout import Ramp, Slot, StraightSlot, slot_path
from geometry.solids.ramps import RampCut, below, last_wood, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT
from tests.geometry.checks.heads import drawn

ROUND = 20.0 + 6.0 - math.sqrt(6.0 ** 2 - 3.0 ** 2)
"""How far the wood beside a ramp 6 wide goes on along it, to where its sides meet the round end, mm"""


def slot(width=None, tip=(0.0, 140.0)):
    return Slot(id="s", shape=StraightSlot(nut_end=(0.0, 40.0), tip_end=tip, width=12.0), ramp=Ramp(length=20.0, depth=4.0, width=width))


def with_ramp(of, width=None):
    return Slot(id=of.id, shape=of.shape, depth=of.depth, ramp=Ramp(length=20.0, depth=4.0, width=width))


@pytest.mark.parametrize(("of", "at", "axis", "width", "room"), [
    (slot(), (0.0, 34.0), (0.0, 1.0), 12.0, 6.0), (slot(tip=(60.0, 120.0)), (-3.6, 35.2), (0.6, 0.8), 12.0, 6.0),
    (slot(tip=(0.0, 40.0)), (0.0, 34.0), (0.0, 1.0), 12.0, 6.0),
    (drawn("d", (-8.0, 40.0), (2.0, 40.0), (2.0, 140.0), (-8.0, 140.0)), (-3.0, 40.0), (0.0, 1.0), 10.0, 5.0),
    (drawn("d", (-8.0, 40.0), (2.0, 40.0), (2.0, 46.0), (-8.0, 46.0)), (-3.0, 40.0), (0.0, 1.0), 10.0, 3.0)],
    ids=["straight", "aslant", "round", "drawn", "drawn wider than long"])
def test_a_ramp_goes_down_to_the_nut_end_of_its_slot_and_on_as_far_as_that_is_round(of, at, axis, width, room):
    end = nut_end(of)
    assert (end.at, end.axis, end.width, end.room) == (pytest.approx(at), pytest.approx(axis), width, room)
    for wide, half in ((None, width / 2), (5.0, 2.5)):
        cut = ramp_cut(with_ramp(of, wide))
        assert cut.start == pytest.approx((at[0] - 20.0 * axis[0], at[1] - 20.0 * axis[1])) and cut.axis == end.axis
        assert (cut.length, cut.depth, cut.half, cut.reach) == (20.0, 4.0, half, 20.0 + room)
    assert (cut.slope, cut.angle) == pytest.approx((0.2, math.atan(0.2)))


@pytest.mark.parametrize(("of", "middle", "width"), [
    (drawn("leans", (0.0, 40.0), (14.0, 40.0), (44.0, 100.0), (30.0, 100.0)), 10.5, 14.0),
    (drawn("bends aside", (-20.0, 40.0), (-8.0, 40.0), (-8.0, 70.0), (20.0, 110.0), (8.0, 110.0), (-20.0, 70.0)), -14.0, 12.0),
    (drawn("widens", (-4.0, 40.0), (4.0, 40.0), (4.0, 64.0), (9.0, 120.0), (-9.0, 120.0), (-4.0, 64.0)), 0.0, 8.0),
    (drawn("lies across", (0.0, 40.0), (30.0, 40.0), (50.0, 52.0), (20.0, 52.0)), 25.0, 30.0)], ids=lambda of: getattr(of, "id", None))
def test_a_drawn_slot_has_its_nut_end_where_it_begins_not_in_the_middle_of_its_box(of, middle, width):
    cut = ramp_cut(with_ramp(of))
    assert (cut.start, 2 * cut.half) == (pytest.approx((middle, 20.0)), pytest.approx(width))


def test_a_slot_without_a_ramp_has_none():
    assert ramp_cut(drawn("d", (-8.0, 40.0), (2.0, 40.0), (2.0, 140.0), (-8.0, 140.0))) is None


@pytest.mark.parametrize(("aside", "along", "level"), [
    (0.0, 10.0, 2.0), (3.0, 10.0, 2.0), (-3.0, 10.0, 2.0), (3.01, 10.0, 0.0), (-3.01, 10.0, 0.0), (0.0, 0.0, 0.0), (0.0, -0.01, 0.0),
    (2.0, 26.0, 5.2), (2.0, 26.01, 0.0)])
def test_the_wood_begins_on_the_ramp_as_deep_as_it_goes_down_and_beside_it_at_the_face(aside, along, level):
    """Told of one point and of many, on a ramp straight on and one aslant."""
    for cut in (ramp_cut(slot(6.0)), ramp_cut(slot(6.0, (60.0, 120.0)))):
        (x, y), (u, v) = cut.start, cut.axis
        at = (x + along * u + aside * v, y + along * v - aside * u)
        assert (cut.along(at), cut.across(at)) == pytest.approx((along, abs(aside)))
        assert cut.level(at) == pytest.approx(level)
        assert cut.levels(np.array([at, cut.start])) == pytest.approx([level, 0.0])


def test_its_corners_and_what_it_takes_of_the_face():
    cut = ramp_cut(slot(6.0))
    assert (cut.corner(5.0, 1.0), cut.corner(5.0, -1.0)) == ((-3.0, 19.0), (3.0, 19.0))
    assert cut.path().box == (-3.0, 14.0, 3.0, 40.0) and cut.path().area == pytest.approx(26.0 * 6.0) and cut.path().closed


@pytest.mark.parametrize(("width", "last"), [(6.0, ROUND), (None, 26.0), (14.0, 26.0)])
def test_beside_a_round_end_a_ramp_goes_on_past_it_and_is_deepest_there(width, last):
    of = slot(width)
    assert last_wood(of, ramp_cut(of), Wall(slot_path(of))) == pytest.approx(last)
    assert below(of, ramp_cut(of), Wall(slot_path(of)), 16.0) == pytest.approx(16.0 - last * 4 / 20)


def test_beside_a_drawn_end_it_goes_on_as_far_as_there_is_wood():
    """Its round end drawn as an arc; a square end, where it ends at once; one aslant, 6 mm farther on its one side."""
    half_turn = drawn("d", (-6.0, 40.0, 1.0), (6.0, 40.0), (6.0, 140.0), (-6.0, 140.0))
    square = drawn("d", (-6.0, 34.0), (6.0, 34.0), (6.0, 140.0), (-6.0, 140.0))
    aslant = drawn("d", (-6.0, 34.0), (6.0, 40.0), (6.0, 140.0), (-6.0, 140.0))
    found = [last_wood(of, ramp_cut(of), Wall(slot_path(of))) for of in (with_ramp(half_turn, 6.0), with_ramp(square), with_ramp(aslant))]
    assert found == [pytest.approx(ROUND, abs=4 * FLAT), 20.0, pytest.approx(26.0, abs=4 * FLAT)]


def test_a_ramp_without_length_is_as_steep_as_can_be_told():
    assert RampCut((0.0, 0.0), (0.0, 1.0), 0.0, 4.0, 3.0, 6.0).slope == pytest.approx(4e6)
