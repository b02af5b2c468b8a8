"""The two edges of an outline, from the nut line to the tip."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout import Loop, Node, loop_of, loop_path
from geometry.layout.edges import edge, edges
from tests.geometry.checks.heads import OBLONG, bulging, leaning, loop
from tests.property.layouts import DEMO


def test_edges_of_the_oblong():
    bass, treble = edges(OBLONG)
    assert (bass.length, treble.length) == (180.0, 180.0)
    assert bass.seat(60.0).point == (-40.0, 60.0) and treble.seat(60.0).point == (40.0, 60.0)
    assert bass.seat(60.0).normal == (-1.0, 0.0) and treble.seat(60.0).normal == (1.0, 0.0)
    assert bass.seat(60.0).tangent == treble.seat(60.0).tangent == (0.0, 1.0)


def test_edges_start_at_the_nut_line_when_the_outline_goes_on_below():
    _, treble = edges(loop((-20.0, -30.0), (20.0, -30.0), (40.0, 30.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 30.0)))
    assert treble.seat(0.0).point == pytest.approx((30.0, 0.0))
    assert treble.length == pytest.approx(math.hypot(10.0, 30.0) + 150.0)


def test_an_outline_drawn_the_other_way_round_has_the_same_edges():
    back = loop((-40.0, 180.0), (40.0, 180.0), (40.0, 0.0), (-40.0, 0.0))
    for one, two in zip(edges(OBLONG), edges(back), strict=True):
        assert one.seat(33.0) == two.seat(33.0)


def test_curvature_is_positive_where_the_edge_bellies_out():
    treble = edge(bulging(200.0), "treble")
    assert treble.seat(50.0).curvature == pytest.approx(1 / 200.0)
    hollow = loop((-40.0, 0.0), (40.0, 0.0, -0.1), (40.0, 180.0), (-40.0, 180.0))
    assert edge(hollow, "treble").seat(50.0).curvature < 0


@given(st.floats(0, 200))
def test_seats_of_the_mirrored_sides_mirror(along):
    bass, treble = edges(DEMO.outline)
    one, two = bass.seat(along), treble.seat(along)
    assert (-one.point[0], one.point[1]) == pytest.approx(two.point, abs=1e-9)
    assert (-one.normal[0], one.normal[1]) == pytest.approx(two.normal, abs=1e-9)
    assert one.curvature == pytest.approx(two.curvature, abs=1e-9)


@given(st.floats(0, 190))
def test_normal_points_out_of_the_wood_and_nearest_finds_the_seat(along):
    treble = edge(DEMO.outline, "treble")
    seat = treble.seat(along)
    assert v.dot(seat.normal, seat.tangent) == pytest.approx(0.0, abs=1e-12)
    outside = v.along(seat.point, seat.normal, 1.0)
    assert treble.nearest(outside).along == pytest.approx(seat.along, abs=1e-5)
    assert loop_path(DEMO.outline).nearest(outside).distance == pytest.approx(1.0, abs=1e-6)


def test_ends_are_kept():
    treble = edge(OBLONG, "treble")
    assert treble.seat(-5.0).along == 0.0 and treble.seat(500.0).along == 180.0


def test_a_leaning_edge_is_as_long_as_it_is():
    assert edge(leaning(10.0), "treble").length == pytest.approx(180.0 / math.cos(math.radians(10.0)))


def test_an_outline_without_height_has_no_edges():
    with pytest.raises(GeometryError, match="no height"):
        edges(loop((0.0, 0.0), (10.0, 0.0), (5.0, 0.0)))


def test_a_loop_keeps_its_path():
    for outline in (OBLONG, bulging(120.0), DEMO.outline):
        path = loop_path(outline)
        again = loop_path(loop_of(path))
        assert again.area == pytest.approx(path.area, abs=1e-9)
        assert again.length == pytest.approx(path.length, abs=1e-9)


def test_a_loop_of_one_point_has_no_path():
    with pytest.raises(GeometryError, match="no length"):
        loop_path(Loop(nodes=(Node(at=(1.0, 1.0)), Node(at=(1.0, 1.0)))))


@pytest.mark.parametrize("rise", [5.6, -5.6, 20.0])
@pytest.mark.parametrize("between", [(), (0.0,), (-25.0, 10.0)])
def test_they_start_where_the_outline_leaves_its_end_along_a_slanted_nut_line(rise, between):
    """80 wide, with nodes in its end or none, and as seen when drawn the other way round."""
    points = [(-40.0, rise), *((x, -x * rise / 40) for x in between), (40.0, -rise), (40.0, 180.0), (-40.0, 180.0)]
    for corners in (points, points[::-1], points[2:] + points[:2]):
        bass, treble = edges(Loop(nodes=tuple(Node(at=at) for at in corners)))
        assert bass.path.start == pytest.approx((-40.0, rise)) and treble.path.start == pytest.approx((40.0, -rise))
        assert (bass.length, treble.length) == (pytest.approx(180.0 - rise), pytest.approx(180.0 + rise))


@pytest.mark.parametrize("corners", [
    [(-20.0, 5.0), (0.0, 0.0), (20.0, 5.0), (20.0, 90.0), (-20.0, 90.0)],  # pointed
    [(-20.0, 6.0), (20.0, -2.0), (20.0, 90.0), (-20.0, 90.0)],  # askew, but 2 mm before the nut on the centreline
    [(-20.0, 14.0), (20.0, -14.0), (20.0, 90.0), (-20.0, 90.0)],  # turned by more than a nut may be
])
def test_any_other_end_is_cut_at_the_level_of_the_nut(corners):
    bass, treble = edges(Loop(nodes=tuple(Node(at=at) for at in corners)))
    assert (bass.path.start[1], treble.path.start[1]) == (pytest.approx(0.0, abs=1e-9), pytest.approx(0.0, abs=1e-9))


@pytest.mark.parametrize("degrees", [-30.0, -0.1, 0.002, 0.1, 30.0])
def test_the_edges_of_a_hardly_or_most_slanted_end_begin_at_its_ends(degrees):
    """At 0.1 degrees an end 40 mm wide rises by 0.035 mm to either side: it crosses y = 0 at the centreline, where no edge begins."""
    rise = 20.0 * math.tan(math.radians(degrees))
    outline = Loop(nodes=tuple(Node(at=at) for at in ((-20.0, rise), (20.0, -rise), (30.0, 100.0), (-30.0, 100.0))))
    bass, treble = (edge.path.start for edge in edges(outline))
    assert bass == pytest.approx((-20.0, rise)) and treble == pytest.approx((20.0, -rise))
