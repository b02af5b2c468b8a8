"""Chains of segments: length, area, walking, parts, corners, flattening, and the polygons made of them."""

import math

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.curves import MIRROR, Arc, Cubic, Line, Path, circle, stretch
from geometry.curves.polygons import crosses_itself, grown, line, opened, parts, polygon
from geometry.errors import GeometryError
from geometry.layout.slots import straight_path

OBROUND = straight_path((0.0, 0.0), (0.0, 100.0), 12.0)
LOBE = Path((Cubic((40.0, 0.0), (60.0, 40.0), (50.0, 120.0), (0.0, 120.0)),
             Cubic((0.0, 120.0), (-50.0, 120.0), (-60.0, 40.0), (-40.0, 0.0)), Line((-40.0, 0.0), (40.0, 0.0))),
            closed=True)


def square(size):
    corners = [(0.0, 0.0), (size, 0.0), (size, size), (0.0, size)]
    return Path(tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)), closed=True)


def test_measures_of_a_straight_slot():
    assert OBROUND.length == pytest.approx(200.0 + 12.0 * math.pi, abs=1e-9)
    assert OBROUND.area == pytest.approx(1200.0 + 36.0 * math.pi, abs=1e-9)
    assert OBROUND.box == pytest.approx((-6.0, -6.0, 6.0, 106.0), abs=1e-12)
    assert OBROUND.reversed().area == pytest.approx(-OBROUND.area)
    assert OBROUND.reversed().counter_clockwise().area > 0


def test_measures_of_a_circle():
    round_ = circle((3.0, 4.0), 7.0)
    assert round_.length == pytest.approx(14.0 * math.pi)
    assert round_.area == pytest.approx(49.0 * math.pi)


@given(st.floats(-400, 900))
def test_walking_a_closed_path_wraps(along):
    assert LOBE.point_at(along) == pytest.approx(LOBE.point_at(along % LOBE.length), abs=1e-6)
    back = LOBE.nearest(LOBE.point_at(along))
    assert back.distance < 1e-7


@given(st.floats(0, 300), st.floats(1, 250))
def test_a_part_has_the_length_asked_for(start, length):
    start %= LOBE.length
    piece = LOBE.part(start, (start + length) % LOBE.length)
    expected = length % LOBE.length
    assert piece.length == pytest.approx(expected, abs=1e-5)
    assert piece.start == pytest.approx(LOBE.point_at(start), abs=1e-5)
    assert piece.end == pytest.approx(LOBE.point_at(start + length), abs=1e-5)


def test_an_open_path_clamps():
    open_ = Path((Line((0.0, 0.0), (10.0, 0.0)), Line((10.0, 0.0), (10.0, 10.0))))
    assert open_.point_at(-5.0) == (0.0, 0.0) and open_.point_at(50.0) == (10.0, 10.0)
    with pytest.raises(GeometryError, match="no area"):
        _ = open_.area
    with pytest.raises(GeometryError, match="no inside"):
        polygon(open_)


def test_a_broken_path_is_refused_with_its_place():
    with pytest.raises(GeometryError, match=r"broken at \(10.000, 0.000\)"):
        Path((Line((0.0, 0.0), (10.0, 0.0)), Line((10.0, 0.1), (10.0, 10.0))))
    with pytest.raises(GeometryError, match="at least one segment"):
        Path(())


def test_corners_are_where_the_direction_jumps():
    assert square(10.0).corners() == [(i, pytest.approx(math.pi / 2)) for i in range(4)]
    assert OBROUND.corners() == []
    assert [i for i, _ in LOBE.corners()] == [0, 2]


def test_mapping_keeps_arcs_only_where_they_stay_round():
    assert all(isinstance(s, Arc | Line) for s in OBROUND.mapped(MIRROR))
    squeezed = OBROUND.mapped(stretch(1.0, 0.5))
    assert not any(isinstance(s, Arc) for s in squeezed)
    assert squeezed.area == pytest.approx(OBROUND.area / 2, rel=1e-6)


def test_flattened_rings_close_exactly_and_stay_near():
    for path in (OBROUND, LOBE, circle((1.0, 2.0), 30.0)):
        points = path.flatten(0.01)
        assert tuple(points[0]) == tuple(points[-1])
        assert abs(polygon(path, 0.01).area - abs(path.area)) <= 0.01 * path.length
    assert line(OBROUND).is_ring


def test_crossing_is_found_where_it_is():
    bow = Path((Line((0.0, 0.0), (10.0, 10.0)), Line((10.0, 10.0), (10.0, 0.0)), Line((10.0, 0.0), (0.0, 10.0)),
                Line((0.0, 10.0), (0.0, 0.0))), closed=True)
    assert crosses_itself(bow) == pytest.approx((5.0, 5.0))
    assert crosses_itself(LOBE) is None
    with pytest.raises(GeometryError, match="crosses itself"):
        polygon(bow)


def test_offsets_of_a_square():
    area = polygon(square(20.0))
    assert grown(area, 3.0).area == pytest.approx(400 + 80 * 3 + math.pi * 9, rel=1e-4)
    assert grown(area, -3.0).area == pytest.approx(14 * 14)
    assert opened(area, 4.0).area == pytest.approx(400 - 16 * (4 - math.pi), rel=1e-4)
    assert grown(area, -11.0).is_empty


def test_parts_drop_slivers_and_sort_by_size():
    many = shapely.union_all([shapely.box(0, 0, 1, 1), shapely.box(5, 0, 8, 3), shapely.box(20, 0, 20.001, 1)])
    assert [p.area for p in parts(many)] == pytest.approx([9.0, 1.0])
    assert parts(shapely.Polygon()) == []


@given(st.floats(-80, 80), st.floats(-40, 160))
def test_nearest_on_a_path_is_nearest_on_its_chords(x, y):
    chord = shapely.distance(line(LOBE, 1e-4), shapely.Point(x, y))
    found = LOBE.nearest((x, y))
    assert found.distance == pytest.approx(chord, abs=1e-4)
    assert v.distance(found.point, LOBE.point_at(found.along)) < 1e-6
