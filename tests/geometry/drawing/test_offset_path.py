"""Offsets of closed paths against closed forms and an independent clipper (pyclipper)."""

import math

import pyclipper
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from shapely.geometry import Polygon

from geometry.curves import Arc, Cubic, Line, Path, circle
from geometry.drawing.offset_path import offset_path
from geometry.drawing.shapes import chain, rectangle
from geometry.errors import GeometryError
from geometry.layout.slots import straight_path

ELL = chain(((0, 0), (60, 0), (60, 20), (20, 20), (20, 50), (0, 50)), closed=True)


def test_a_grown_rectangle_follows_steiner():
    """100 x 50 by 3: area 5928.274, perimeter 318.850 (Steiner's formula A + P d + pi d^2)."""
    made = offset_path(rectangle(0, 0, 100, 50), 3.0)
    assert made.exact
    assert made.paths[0].area == pytest.approx(5928.274, abs=5e-4)
    assert made.paths[0].length == pytest.approx(318.850, abs=5e-4)


def test_a_shrunk_rectangle_keeps_its_corners():
    """94 x 44 = 4136."""
    made = offset_path(rectangle(0, 0, 100, 50), -3.0)
    assert made.exact and made.paths[0].area == pytest.approx(4136.0, abs=1e-9)
    assert len(made.paths[0].segments) == 4


@pytest.mark.parametrize("by", [2.5, -1.25, 0.4])
def test_straight_slots_stay_straight_slots(by):
    made = offset_path(straight_path((17.0, 30.0), (17.0, 160.0), 13.0), by)
    assert made.exact
    assert made.paths[0].area == pytest.approx(straight_path((17.0, 30.0), (17.0, 160.0), 13.0 + 2 * by).area)
    assert {type(segment) for segment in made.paths[0]} == {Line, Arc}


@pytest.mark.parametrize("by", [3.0, -3.0])
def test_an_inner_corner_is_rounded_only_when_shrinking(by):
    """L of 2400 - ... : growing trims the one dent, shrinking rounds it by a quarter circle of 3 mm."""
    made = offset_path(ELL, by)
    assert made.exact
    grown_area = ELL.area + ELL.length * 3 + (5 * math.pi / 4 - 1) * 9  # five corners out, one dent counted twice
    shrunk_area = ELL.area - ELL.length * 3 + (5 - math.pi / 4) * 9
    assert made.paths[0].area == pytest.approx(grown_area if by > 0 else shrunk_area, abs=1e-9)
    assert sum(isinstance(s, Arc) for s in made.paths[0]) == (5 if by > 0 else 1)


def test_no_offset_is_the_path_itself():
    assert offset_path(ELL, 0.0).paths == (ELL,)
    assert offset_path(ELL.reversed(), 0.0).paths[0].area > 0


def test_a_circle_shrinks_to_nothing():
    assert offset_path(circle((3.0, 4.0), 5.0), -2.0).paths[0].area == pytest.approx(math.pi * 9)
    assert offset_path(circle((3.0, 4.0), 5.0), -5.5).paths == ()


def test_two_arcs_that_meet_in_a_corner_cross_anew_where_they_are_moved_to():
    """A lens of arcs of 50 about x = 30 and x = -30, corners at (0, +-40): set in by 5 they are of 45 and cross at sqrt(45^2 - 30^2)."""
    bulge = math.tan(math.atan2(40.0, 30.0) / 2)
    lens = Path((Arc.bulging((0.0, -40.0), (0.0, 40.0), bulge), Arc.bulging((0.0, 40.0), (0.0, -40.0), bulge)), closed=True)
    made = offset_path(lens, -5.0)
    assert made.exact and len(made.paths[0].segments) == 2
    assert made.paths[0].box == pytest.approx((-15.0, -math.sqrt(1125), 15.0, math.sqrt(1125)))


def test_a_waist_falls_apart_into_two():
    waist = chain(((0, 0), (20, 0), (20, 20), (12, 30), (20, 40), (20, 60), (0, 60), (0, 40), (8, 30), (0, 20)), True)
    made = offset_path(waist, -4.0)
    assert len(made.paths) == 2 and not made.exact


def test_cubics_are_followed_in_fine_chords():
    leaf = Path((Cubic((0, 0), (30, -20), (60, -20), (90, 0)), Cubic((90, 0), (60, 30), (30, 30), (0, 0))), closed=True)
    made = offset_path(leaf, 2.0)
    assert not made.exact
    for x, y in made.paths[0].flatten()[::7]:
        assert leaf.nearest((float(x), float(y))).distance == pytest.approx(2.0, abs=0.004)


def test_a_path_that_crosses_itself_has_no_offset():
    with pytest.raises(GeometryError):
        offset_path(chain(((0, 0), (10, 10), (10, 0), (0, 10)), closed=True), 1.0)


def mixed(points, bulges):
    segments = []
    for i, (a, b) in enumerate(zip(points, points[1:] + points[:1], strict=True)):
        segments.append(Line(a, b) if abs(bulges[i]) < 0.05 else Arc.bulging(a, b, bulges[i]))
    return Path(tuple(segments), closed=True)


@given(radii=st.lists(st.floats(20, 45), min_size=3, max_size=7), bulge=st.lists(st.floats(-0.3, 0.5), min_size=7),
       by=st.floats(-4, 6))
def test_lines_and_arcs_agree_with_an_independent_clipper(radii, bulge, by):
    """Random stars of lines and arcs: the two areas must agree to the chord error of the clipper."""
    assume(abs(by) > 0.05)
    n = len(radii)
    points = [(r * math.cos(2 * math.pi * i / n), r * math.sin(2 * math.pi * i / n)) for i, r in enumerate(radii)]
    path = mixed(points, bulge)
    flat = path.flatten(0.0005)
    assume(Polygon(flat).is_valid and path.area > 0)
    made = offset_path(path, by)
    clipper = pyclipper.PyclipperOffset(2.0, 0.002 * 1e5)
    clipper.AddPath([(round(x * 1e5), round(y * 1e5)) for x, y in flat[:-1]], pyclipper.JT_ROUND,
                    pyclipper.ET_CLOSEDPOLYGON)
    rings = clipper.Execute(by * 1e5)
    expected = sum(pyclipper.Area(ring) for ring in rings) / 1e10
    assert sum(p.area for p in made.paths) == pytest.approx(expected, abs=0.01 * path.length)
