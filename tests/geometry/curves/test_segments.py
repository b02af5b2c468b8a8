"""Lines, arcs and cubics: measures in closed form, the nearest point, splitting, flattening."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.curves import MIRROR, Arc, Cubic, Line, Matrix, shift, stretch, turn
from geometry.errors import GeometryError

SEGMENTS = {
    "line": Line((1.0, 2.0), (7.0, 10.0)),
    "arc": Arc.about((3.0, -2.0), 5.0, 0.4, 2.1),
    "clockwise arc": Arc.about((3.0, -2.0), 5.0, 0.4, -2.1),
    "cubic": Cubic((0.0, 0.0), (10.0, 25.0), (30.0, -20.0), (40.0, 5.0)),
    "cubic with a handle on its node": Cubic((0.0, 0.0), (0.0, 0.0), (30.0, 20.0), (40.0, 5.0)),
}
every = pytest.mark.parametrize("segment", SEGMENTS.values(), ids=SEGMENTS)
parameters = st.floats(0, 1)


def chords(segment, n=20_000):
    return np.array([segment.point(i / n) for i in range(n + 1)])


@every
def test_length_is_that_of_many_chords(segment):
    steps = np.diff(chords(segment), axis=0)
    assert segment.length() == pytest.approx(np.hypot(*steps.T).sum(), rel=1e-7)


@every
def test_area_term_is_greens_integral(segment):
    p = chords(segment)
    assert segment.area_term() == pytest.approx((p[:-1, 0] * p[1:, 1] - p[1:, 0] * p[:-1, 1]).sum() / 2, rel=1e-6)


@every
def test_box_is_exact(segment):
    p = chords(segment)
    assert segment.box() == pytest.approx((*p.min(axis=0), *p.max(axis=0)), abs=1e-6)


@every
def test_flattening_stays_within_its_sagitta(segment):
    for sagitta in (0.5, 0.01, 0.0005):
        flat = segment.flatten(sagitta)
        assert flat[0] == segment.start and flat[-1] == segment.end
        n = len(flat) - 1
        for i in range(n):
            for share in (0.25, 0.5, 0.75):
                on = segment.point((i + share) / n)
                assert v.distance(Line(flat[i], flat[i + 1]).point(Line(flat[i], flat[i + 1]).nearest(on)), on) <= (
                    sagitta * (1 + 1e-9))


@every
def test_splitting_gives_the_same_curve(segment):
    one, two = segment.split(0.3)
    assert one.length() + two.length() == pytest.approx(segment.length(), abs=1e-8)
    for t in (0.0, 0.4, 1.0):
        assert one.point(t) == pytest.approx(segment.point(0.3 * t), abs=1e-9)
        assert two.point(t) == pytest.approx(segment.point(0.3 + 0.7 * t), abs=1e-9)


@every
def test_backwards_is_the_same_line_the_other_way(segment):
    back = segment.reversed()
    assert back.point(0.25) == pytest.approx(segment.point(0.75), abs=1e-12)
    assert back.tangent(0.25) == pytest.approx(tuple(-c for c in segment.tangent(0.75)), abs=1e-9)
    assert back.area_term() == pytest.approx(-segment.area_term())
    assert back.curvature(0.25) == pytest.approx(-segment.curvature(0.75))


@every
@given(t=parameters)
def test_walking_by_length_and_back(segment, t):
    assert segment.length_to(segment.at_length(segment.length_to(t))) == pytest.approx(segment.length_to(t), abs=1e-8)


@every
@given(x=st.floats(-30, 60), y=st.floats(-40, 40))
def test_no_other_point_is_nearer(segment, x, y):
    p = (x, y)
    found = v.distance(segment.point(segment.nearest(p)), p)
    assert found <= min(v.distance(segment.point(i / 200), p) for i in range(201)) + 1e-9


@every
@given(axis=st.integers(0, 1), t=parameters)
def test_levels_are_found(segment, axis, t):
    value = segment.point(t)[axis]
    for found in segment.level(axis, value):
        assert segment.point(found)[axis] == pytest.approx(value, abs=2e-6)
    assert any(v.distance(segment.point(found), segment.point(t)) < 0.02 for found in segment.level(axis, value))


def test_a_level_that_is_met_is_not_left_again():
    assert Cubic((12.0, 0.0), (12.0, 1.0), (12.0, 2.0), (1.0, 3.0)).level(0, 10.625) == [0.5]


@every
def test_curvature_is_the_turn_of_the_tangent(segment):
    t, h = 0.45, 1e-5
    a, b = segment.tangent(t - h), segment.tangent(t + h)
    ds = segment.length_to(t + h) - segment.length_to(t - h)
    assert segment.curvature(t) == pytest.approx(math.atan2(v.cross(a, b), v.dot(a, b)) / ds, rel=1e-4, abs=1e-7)


@every
@pytest.mark.parametrize("matrix", [MIRROR, shift(3.0, -4.0), turn(0.7, (1.0, 2.0)), stretch(2.5)],
                         ids=["mirror", "shift", "turn", "stretch"])
def test_mapping_a_segment_maps_its_points(segment, matrix):
    for t in (0.0, 0.3, 1.0):
        assert segment.mapped(matrix).point(t) == pytest.approx(matrix(segment.point(t)), abs=1e-9)


@given(st.floats(-20, 20).filter(lambda b: abs(b) > 1e-3))
def test_bulge_there_and_back(bulge):
    arc = Arc.bulging((1.0, 1.0), (4.0, 5.0), bulge)
    assert arc.bulge == pytest.approx(bulge, rel=1e-9)
    assert arc.point(0.0) == (1.0, 1.0) and arc.point(1.0) == (4.0, 5.0)
    mid = arc.point(0.5)
    assert abs(v.distance(mid, (2.5, 3.0)) - 2.5 * abs(bulge)) < 1e-6 * max(1, abs(bulge))


def test_an_arc_through_three_points():
    for on in ((0.0, 5.0), (0.0, -5.0), (3.0, 4.0)):
        arc = Arc.through((5.0, 0.0), on, (-5.0, 0.0))
        assert arc.radius == pytest.approx(5.0) and arc.centre == pytest.approx((0.0, 0.0), abs=1e-12)
        assert v.distance(arc.point(arc.nearest(on)), on) < 1e-9
    with pytest.raises(GeometryError, match="straight line"):
        Arc.through((0.0, 0.0), (1.0, 0.0), (2.0, 0.0))


@pytest.mark.parametrize(("ends", "bulge"), [(((0.0, 0.0), (0.0, 0.0)), 1.0), (((0.0, 0.0), (1.0, 0.0)), 0.0),
                                             (((0.0, 0.0), (1.0, 0.0)), math.inf)])
def test_arcs_without_sense_are_refused(ends, bulge):
    with pytest.raises(GeometryError, match="two different ends"):
        Arc.bulging(*ends, bulge)


def test_an_uneven_map_needs_cubics():
    arc = SEGMENTS["arc"]
    with pytest.raises(GeometryError, match="no arc"):
        arc.mapped(stretch(1.0, 2.0))
    for piece in arc.cubics():
        for t in (0.0, 0.2, 0.5, 1.0):
            assert v.distance(piece.point(t), arc.centre) == pytest.approx(arc.radius, rel=1e-7)


def test_matrices_compose():
    both = turn(0.3).after(shift(1.0, 2.0))
    assert both((5.0, 6.0)) == pytest.approx(turn(0.3)((6.0, 8.0)))
    assert MIRROR.determinant == -1 and MIRROR.similarity() == 1
    assert Matrix(a=1.0, c=0.5).similarity() is None
    assert stretch(0.0).similarity() is None


def test_a_line_without_length():
    spot = Line((1.0, 1.0), (1.0, 1.0))
    assert spot.length() == 0 and spot.at_length(3.0) == 0 and spot.nearest((5.0, 5.0)) == 0
    assert spot.tangent(0.5) == (1.0, 0.0)


def test_a_curve_of_no_numbers_has_a_length_of_no_number_and_says_so_at_once():
    assert math.isnan(Cubic((0.0, 0.0), (math.nan, 1.0), (2.0, 1.0), (3.0, 0.0)).length_to(1.0))


@pytest.mark.parametrize("segment", [
    Cubic((0.0, 0.0), (40_000.0, 90_000.0), (80_000.0, -90_000.0), (120_000.0, 0.0)), Arc.about((0.0, 0.0), 2e6, 0.4, 2.1)])
def test_a_curve_as_long_as_a_road_keeps_its_sagitta(segment):
    """The cap on chords once left a cubic of tens of metres further from its chords than promised."""
    sagitta = 2e-4 if isinstance(segment, Cubic) else 2e-3
    flat = segment.flatten(sagitta)
    n = len(flat) - 1
    assert n == segment.chords(sagitta) > (20_000 if isinstance(segment, Cubic) else 1000)
    for i in range(0, n, max(1, n // 3000)):
        chord, on = Line(flat[i], flat[i + 1]), segment.point((i + 0.5) / n)
        assert v.distance(chord.point(chord.nearest(on)), on) <= sagitta * (1 + 1e-6) + 1e-9 * segment.length() / n


@pytest.mark.parametrize("segment", [
    Cubic((0.0, 0.0), (1e11, 1e11), (-1e11, 1e11), (0.0, 5.0)), Arc.about((0.0, 0.0), 1e16, 0.0, 3.0), Arc.about((0.0, 0.0), 1e11, 0.0, 3.0)])
def test_a_curve_that_would_take_a_million_chords_is_refused_with_a_sentence(segment):
    with pytest.raises(GeometryError, match="check the unit"):
        segment.flatten(0.002)
