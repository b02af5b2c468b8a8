"""Exact distances from walls in plan, against closed forms and very fine chords."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from geometry.curves import Arc, Cubic, Line, Path, circle
from geometry.layout.slots import straight_path
from geometry.solids.walls import Wall, oblong

SLOT = Wall(straight_path((0.0, 0.0), (0.0, 100.0), 12.0))
LOBE = Wall(Path((Cubic((40.0, 0.0), (60.0, 40.0), (50.0, 120.0), (0.0, 120.0)),
                  Cubic((0.0, 120.0), (-50.0, 120.0), (-60.0, 40.0), (-40.0, 0.0)), Line((-40.0, 0.0), (40.0, 0.0))),
                 closed=True))
FINE = Wall(LOBE.path, sagitta=1e-7)


@pytest.mark.parametrize(("point", "expected"), [
    ((0.0, 50.0), 6.0), ((4.0, 50.0), 2.0), ((10.0, 50.0), -4.0), ((0.0, 110.0), -4.0), ((6.0, 50.0), 0.0),
    ((3.0, 104.0), 1.0), ((30.0, 140.0), 6.0 - 50.0), ((0.0, -6.0), 0.0)])
def test_signed_distance_to_a_straight_slot(point, expected):
    assert SLOT.inside(point) == pytest.approx(expected, abs=1e-9)
    assert SLOT.about(np.array([point]))[0] == pytest.approx(expected, abs=0.0021)


@given(st.floats(-70, 70), st.floats(-20, 140))
def test_nearest_point_is_that_of_fine_chords(x, y):
    expected = shapely.distance(FINE.line, shapely.Point(x, y))
    assert LOBE.foot((x, y)).distance == pytest.approx(expected, abs=1e-6)
    assert LOBE.foot((x, y)).distance == pytest.approx(LOBE.path.nearest((x, y)).distance, abs=1e-9)


@given(st.floats(-90, 90), st.floats(-40, 160), st.floats(0, 6.28), st.floats(1, 50), st.floats(0.5, 6))
def test_distance_to_an_oblong_is_that_to_fine_chords(x, y, turn, length, half):
    bore = Wall(oblong((x, y), (math.cos(turn), math.sin(turn)), length, half))
    expected = shapely.distance(FINE.line, bore.line)
    assert LOBE.to(bore)[0] == pytest.approx(expected, abs=1e-6) or expected < 0.003


def test_distance_between_walls_by_hand():
    assert SLOT.to(Wall(straight_path((30.0, 0.0), (30.0, 100.0), 10.0)))[0] == pytest.approx(19.0, abs=1e-12)
    assert SLOT.to(Wall(circle((0.0, 130.0), 7.0)))[0] == pytest.approx(30.0 - 6.0 - 7.0, abs=1e-12)
    distance, here, there = SLOT.to(Wall(circle((30.0, 140.0), 7.0)))
    assert distance == pytest.approx(50.0 - 13.0, abs=1e-12)
    assert here == pytest.approx((3.6, 104.8)) and there == pytest.approx((30.0 - 4.2, 140.0 - 5.6))
    assert SLOT.to(Wall(circle((6.0, 50.0), 7.0)))[0] == 0.0


def test_a_wall_without_length_is_as_far_as_its_place():
    """The polygon library alone ends the program here: one line is prepared, the other has no length."""
    place = Wall(Path((Line((30.0, 50.0), (30.0, 50.0)),)))
    assert SLOT.to(place) == (pytest.approx(24.0), pytest.approx((6.0, 50.0)), (30.0, 50.0))
    assert place.to(SLOT) == (pytest.approx(24.0), (30.0, 50.0), pytest.approx((6.0, 50.0)))


@pytest.mark.parametrize(("start", "way", "expected"), [
    ((40.0, 50.0), (-1.0, 0.0), [(34.0, 46.0)]),
    ((0.0, 50.0), (0.0, 1.0), [(0.0, 56.0)]),
    ((0.0, 50.0), (-1.0, 0.0), [(0.0, 6.0)]),
    ((40.0, 50.0), (1.0, 0.0), []),
    ((3.0, 150.0), (0.0, -1.0), [(50.0 - math.sqrt(27), 150.0 + math.sqrt(27))]),
    ((40.0, 300.0), (-1.0, 0.0), [])])
def test_stretches_of_a_ray(start, way, expected):
    found = SLOT.stretches(start, way)
    assert len(found) == len(expected)
    for one, other in zip(found, expected, strict=True):
        assert one == pytest.approx(other, abs=1e-9)


def test_a_ray_across_two_rooms_has_two_stretches():
    corners = [(0, 0), (30, 0), (30, 20), (20, 20), (20, 10), (10, 10), (10, 20), (0, 20)]
    wall = Wall(Path(tuple(Line(tuple(map(float, a)), tuple(map(float, b)))
                           for a, b in zip(corners, corners[1:] + corners[:1])), closed=True))
    assert wall.stretches((-5.0, 15.0), (1.0, 0.0)) == [(5.0, 15.0), (25.0, 35.0)]


def test_sides_of_a_wall_that_crosses_itself_still_answer():
    bow = Wall(Path((Line((0.0, 0.0), (10.0, 10.0)), Line((10.0, 10.0), (10.0, 0.0)), Line((10.0, 0.0), (0.0, 10.0)),
                     Line((0.0, 10.0), (0.0, 0.0))), closed=True))
    assert bow.crossing == pytest.approx((5.0, 5.0))
    assert bow.inside((9.0, 5.0)) > 0 and bow.inside((5.0, 9.0)) < 0


def test_what_a_wall_winds_about_twice_is_inside():
    """A star drawn in one go: a cutter that follows it frees its middle too."""
    tips = [(10 * math.sin(4 * math.pi * k / 5), 10 * math.cos(4 * math.pi * k / 5)) for k in range(5)]
    star = Wall(Path(tuple(Line(one, other) for one, other in zip(tips, tips[1:] + tips[:1], strict=True)), closed=True))
    inner = 10 * math.cos(2 * math.pi / 5)
    assert star.about(np.array([(0.0, 0.0)])) == pytest.approx([inner], abs=1e-9)
    assert star.about(np.array([(0.0, -8.0)])) < 0


def test_a_clockwise_wall_has_the_same_inside():
    for point in ((0.0, 50.0), (0.0, 105.9995), (5.9995, 50.0), (0.0, 106.0005)):
        assert Wall(SLOT.path.reversed()).inside(point) == pytest.approx(SLOT.inside(point), abs=1e-12)


def test_arcs_of_an_outline_are_not_overstated():
    """A hole inside a round head: chords lie inside the arc, the exact answer is used."""
    head = Wall(Path((Arc.about((0.0, 0.0), 60.0, 0.0, math.pi), Arc.about((0.0, 0.0), 60.0, math.pi, math.pi)),
                     closed=True), sagitta=0.5)
    assert head.inside((30.0, 20.0)) == pytest.approx(60.0 - math.hypot(30, 20), abs=1e-9)


@given(st.floats(-120, 120), st.floats(-60, 160), st.floats(0, 6.28), st.floats(0, 120), st.floats(0.5, 40))
def test_the_outermost_of_some_points_is_the_one_of_all_that_lies_farthest_outside(x, y, turn, length, width):
    points = Wall(straight_path((x, y), (x + length * math.cos(turn), y + length * math.sin(turn)), width)).points
    depth, k = LOBE.outermost(points)
    every = LOBE.about(points)
    assert depth == every[k] == pytest.approx(every.min(), abs=1e-6)


def test_a_curve_nearer_than_its_chords_is_not_passed_over():
    """A waist of radius 60 bellies to within 6 mm of a slot; on its other side stands a straight edge 0.0015 mm farther off.

    The chords of the waist are up to 0.002 mm farther off than the waist itself: told from the nearest chord alone the gap would
    be that to the straight edge.
    """
    radius, gap, more = 60.0, 6.0, 0.0015
    slot = Wall(straight_path((0.0, -30.0), (0.0, 30.0), 10.0))
    # However many chords the waist has: of an odd number the one in the middle strays most.
    for half in np.linspace(36.0, 40.0, 16).tolist():
        left, right = -5.0 - gap - more, 5.0 + gap + radius - math.sqrt(radius ** 2 - half ** 2)
        low, high = (right, -half), (right, half)
        waist = Arc.bulging(low, high, -math.tan(math.asin(half / radius) / 2))
        around = Wall(Path((Line((left, -60.0), (right, -60.0)), Line((right, -60.0), low), waist, Line(high, (right, 60.0)),
                            Line((right, 60.0), (left, 60.0)), Line((left, 60.0), (left, -60.0))), closed=True))
        for one, two in ((around, slot), (slot, around)):
            assert one.to(two)[0] == pytest.approx(gap, abs=1e-12)
