"""Strings into slots against points sampled along them, and the ramp that frees them."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from shapely.geometry import LineString

from geometry.curves import Arc, Cubic, Line
from geometry.errors import GeometryError
from geometry.layout import Nut, Ramp, Slot, StraightSlot
from geometry.layout.slots import slot_path
from geometry.solids.ramps import ramp_cut
from geometry.solids.walls import Wall
from geometry.strings import dives, freeing_ramp
from geometry.strings.dive import dives_into, first_lacking, surely
from geometry.strings.near_curve import Pieces, Stretch, chord_gaps, curve_gap
from geometry.strings.runs import Run
from tests.geometry.checks.cases_strings import _DROP, _dive
from tests.one_dive import dive
from tests.property.layouts import DEMO


def run(nut, height, post, low, thick=0.5):
    return Run("1", "a", (nut, 0.0), post, 0.0, -low, height, thick)


def straight(x, width, ramp=None):
    return Slot(id="slot", shape=StraightSlot(nut_end=(x, 30.0), tip_end=(x, 120.0), width=width), ramp=ramp)


@given(st.floats(-12, 12), st.floats(2, 9), st.floats(0.1, 0.9), st.floats(50, 115), st.floats(1, 9), st.floats(8, 20))
def test_air_is_what_sampled_points_of_the_string_have_to_the_wood(nut, height, share, y, low, width):
    """Wood below the face outside the slot, in plan half a width off its middle line. Only strings that cut nothing."""
    x = (share - 0.5) * (width - 1)
    slot = straight(0.0, width)
    found = dive(run(nut, height, (x, y), low), slot)
    assert found is not None
    least = min(found.end().air, found.beside().air)
    assume(found.low < 0)
    share = np.linspace(found.enters / found.run.length, 1.0, 4001)[:, None]
    points = np.array(found.run.start) * (1 - share) + np.array(found.run.end) * share
    aside = width / 2 - shapely.distance(LineString([(0, 30), (0, 120)]), shapely.points(points[:, :2]))
    sampled = np.hypot(aside, np.minimum(points[:, 2], 0.0)).min() - 0.25
    # The tip end is left to the post's own check; points are up to 0.015 mm apart along the string.
    assert least == pytest.approx(sampled, abs=0.02)
    assert least <= sampled + 2e-5


def test_a_string_that_stays_above_the_face_or_ends_elsewhere_does_not_dive():
    assert dive(run(0.0, 5.0, (0.0, 80.0), -1.0), straight(0.0, 12.0)) is None
    assert dive(run(0.0, 5.0, (9.0, 80.0), 3.0), straight(0.0, 12.0)) is None


def test_a_cut_into_a_wall_beside_is_no_matter_of_the_nut_end():
    # From x = 0 to x = 10 at y = 100, 10 mm down: over the wall x = 5 at y = 50, 1 mm too low there.
    found = dive(run(0.0, 8.0, (10.0, 100.0), 10.0), straight(11.0, 12.0))
    assert found.end().air == math.inf
    assert found.edge == pytest.approx((5.0, 50.0, 1.0))
    # Aside it lacks less: it is level with the face at 44.4 of 100, x = 4.444, so 0.5556 from the wall.
    assert found.beside().air == pytest.approx(-(5 - 40 / 9) - 0.25)


def test_a_string_below_the_face_where_its_ramp_begins_cuts_in_by_what_it_lacks_there():
    """It falls 10 in 80 from 2 above the face: level with it at 16, 0.375 below it at 19, where a ramp of 5 begins; square to it 8/sqrt(65) of that."""
    found = dive(run(0.0, 2.0, (0.0, 80.0), 8.0), straight(0.0, 12.0, Ramp(length=5.0, depth=1.5)))
    assert found.low == pytest.approx(1.0 - 1.5)
    assert found.end().air == pytest.approx(-0.375 * 8 / math.sqrt(65) - 0.25)


def test_a_ramp_goes_down_from_the_face():
    cut = ramp_cut(straight(3.0, 10.0, Ramp(length=9.0, depth=3.0)))
    assert cut.start == pytest.approx((3.0, 16.0))
    assert math.degrees(cut.angle) == pytest.approx(18.434948822922)
    assert cut.level((3.0, 16.0)) == 0.0
    assert cut.level((3.0, 25.0)) == pytest.approx(3.0)
    assert cut.level((7.9, 22.0)) == pytest.approx(2.0)
    assert cut.level((8.1, 22.0)) == 0.0
    assert cut.path().area == pytest.approx(10.0 * 14.0)


def test_the_freeing_ramp_by_hand():
    """The string falls 5 in 12 and cuts 1.3 mm into the nut end: 12/13 of what it lacks there is (1.3 + 13/12) deep."""
    layout = _dive(_DROP - 1.3)
    ramp = freeing_ramp(layout, "slot")
    # The ramp lies level with the string, 13/12 below it, so it begins where that leaves the face.
    deep = 1.3 + 13 / 12
    assert (ramp.length, ramp.depth) == (math.ceil(deep * 12 / 5 * 10) / 10, pytest.approx(deep, abs=0.1))
    found, = dives(replace(layout, slots=(replace(layout.slots[0], ramp=ramp),)), replace(layout.slots[0], ramp=ramp))
    assert found.end().air >= layout.margins.string_air - 1e-6
    shallow = replace(layout.slots[0], ramp=replace(ramp, depth=ramp.depth - 0.1))
    assert dives(layout, shallow)[0].end().air < layout.margins.string_air
    assert freeing_ramp(_dive(30.0), "slot") is None


def test_no_ramp_begins_at_the_nut():
    layout = _dive(_DROP - 1.3)
    low = replace(layout, nut=Nut(height=0.4))
    with pytest.raises(GeometryError, match="nut"):
        freeing_ramp(low, "slot")
    with pytest.raises(GeometryError, match="no slot named"):
        freeing_ramp(low, "other")


CURVES = (Line((0.0, 0.0), (8.0, 3.0)), Arc.bulging((0.0, 0.0), (8.0, 3.0), 0.7),
          Cubic((0.0, 0.0), (2.0, 6.0), (6.0, -5.0), (8.0, 3.0)))


@pytest.mark.parametrize("curve", CURVES, ids=["line", "arc", "cubic"])
@given(st.tuples(*[st.floats(-5, 12)] * 6))
def test_a_line_and_a_curve_against_many_chords(curve, at):
    a, b = at[:3], at[3:]
    far, near, there = curve_gap(a, b, Pieces([Stretch(curve, 0.0, 1.0)]))
    t = np.linspace(0, 1, 3001)
    points = np.array([(*curve.point(float(s)), 0.0) for s in t])
    sampled = chord_gaps(np.array(a), np.array(b), points[:-1], points[1:])[0].min()
    assert far == pytest.approx(sampled, abs=2e-5)
    assert far <= math.dist(near, there) + 1e-9


def test_crossing_pieces_by_hand():
    d, on, there = chord_gaps(np.array((0.0, 0.0, 1.0)), np.array((4.0, 0.0, 1.0)), np.array([(1.0, -1.0, 0.0)] * 2),
                              np.array([(1.0, 1.0, 0.0), (1.0, -3.0, 0.0)]))
    assert d == pytest.approx([1.0, math.sqrt(2.0)])
    assert on[0] == pytest.approx((1.0, 0.0, 1.0))
    assert there[1] == pytest.approx((1.0, -1.0, 0.0))


@given(st.lists(st.tuples(st.floats(-12, 12), st.floats(2, 9), st.floats(-5, 5), st.floats(50, 115), st.floats(1, 9),
                          st.none() | st.tuples(st.floats(1, 20), st.floats(0.1, 8))), min_size=1, max_size=5),
       st.floats(0.05, 3))
def test_what_is_told_for_all_strings_at_once_is_never_wrong(cases, enough):
    """From chords alone: sure only where the exact measure agrees."""
    found = [dive(run(nut, height, (x, y), low), straight(0.0, 12.0, ramp and Ramp(length=ramp[0], depth=ramp[1])))
             for nut, height, x, y, low, ramp in cases]
    told = surely(found, [enough] * len(found))
    assert len(told) == len(found)
    for one, (over, by) in zip(found, told, strict=True):
        assert not over or one.end().air >= enough
        assert not by or one.beside().air >= enough


def test_strings_far_from_all_wood_are_told_sure():
    slots = [straight(0.0, 12.0), straight(0.0, 12.0, Ramp(length=20.0, depth=9.0))]
    found = [dive(run(0.0, 9.0, (0.0, 100.0), 3.0), slot) for slot in slots]
    assert surely(found, [1.0, 1.0]) == [(True, True), (True, True)]


_STRINGS = st.lists(st.tuples(st.floats(-12, 12), st.floats(2, 9), st.floats(-5, 5), st.floats(50, 115), st.floats(1, 9)),
                    min_size=1, max_size=4)


@settings(max_examples=40)
@given(_STRINGS, st.none() | st.tuples(st.floats(1, 20), st.floats(0.1, 8)), st.floats(0.05, 3))
def test_whether_the_end_is_clear_is_what_its_air_says(strings, ramp, needed):
    """The decision, and the strings of one slot told at once, against each string measured by itself."""
    slot = straight(0.0, 12.0, ramp and Ramp(length=ramp[0], depth=ramp[1]))
    found = [run(nut, height, (x, y), low) for nut, height, x, y, low in strings]
    for one, alone in zip(dives_into(found, slot, Wall(slot_path(slot))), (dive(each, slot) for each in found), strict=True):
        assert (one is None) == (alone is None)
        if one is not None:
            assert (one.end(), one.beside()) == (alone.end(), alone.beside())
            assert (one.with_ramp(None).end(), one.with_ramp(one.ramp).end()) == (dive(one.run, replace(slot, ramp=None)).end(), one.end())
            assert (first_lacking([one], needed) is None) == (one.end().air >= needed) or abs(one.end().air - needed) < 1e-8


@given(st.lists(st.tuples(st.floats(-9, 9), st.floats(10, 40)), min_size=1, max_size=6), st.floats(1, 20), st.floats(0.1, 8))
def test_levels_of_a_ramp_are_those_of_each_point(points, length, depth):
    cut = ramp_cut(straight(1.0, 12.0, Ramp(length=length, depth=depth)))
    assert cut.levels(np.array(points)).tolist() == [cut.level(point) for point in points]


@settings(max_examples=150)
@given(st.floats(-9, 9), st.floats(0.5, 9), st.floats(-7, 7), st.floats(25, 125), st.floats(0.1, 9), st.floats(6, 20), st.floats(0.05, 3))
def test_what_three_points_tell_of_a_straight_slot_is_never_wrong(nut, height, x, y, low, width, wanted):
    one = dive(run(nut, height, (x, y), low), straight(0.0, width))
    if one is not None and one.surely_clear(wanted):
        assert min(one.end().air, one.beside().air) >= wanted - 1e-9


def test_three_points_tell_of_all_strings_of_the_demo():
    strings = [found for slot in DEMO.slots for found in dives(DEMO, slot)]
    assert len(strings) == 6 and all(one.surely_clear(DEMO.margins.string_air) for one in strings)
