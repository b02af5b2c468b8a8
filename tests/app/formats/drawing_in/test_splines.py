"""Splines against the recursion of Cox and de Boor, which shares nothing with the blossom used by the reader."""

import math

import numpy as np
import pytest
from ezdxf.math import open_uniform_knot_vector, uniform_knot_vector
from hypothesis import given, settings
from hypothesis import strategies as st

from app.formats.drawing_in.splines import spline_segments
from geometry.curves import Arc, Cubic, Line
from geometry.errors import GeometryError


def basis(i: int, p: int, t: float, knots: list[float]) -> float:
    """The B-spline basis function by its textbook recursion."""
    if p == 0:
        return 1.0 if knots[i] <= t < knots[i + 1] else 0.0
    left = (t - knots[i]) / (knots[i + p] - knots[i]) * basis(i, p - 1, t, knots) if knots[i + p] > knots[i] else 0.0
    right = (knots[i + p + 1] - t) / (knots[i + p + 1] - knots[i + 1]) * basis(i + 1, p - 1, t, knots) if knots[i + p + 1] > knots[i + 1] else 0.0
    return left + right


def evaluated(p, knots, points, weights, t):
    """Point of the spline at t, by the recursion."""
    values = np.array([basis(i, p, t, list(knots)) * (weights[i] if weights else 1.0) for i in range(len(points))])
    return values @ np.array(points) / values.sum()


def distance_to(segments, q):
    p = (float(q[0]), float(q[1]))
    return min(math.dist(s.point(s.nearest(p)), p) for s in segments)


POINTS = [(0.0, 0.0), (10.0, 60.0), (50.0, 70.0), (90.0, 20.0), (140.0, 30.0), (150.0, 90.0), (60.0, 120.0)]
WEIGHTS = [1.0, 0.4, 2.0, 1.0, 3.0, 0.6, 1.0]
CLAMPED = open_uniform_knot_vector(4, 4)
"""Knots of a cubic with four control points."""


@pytest.mark.parametrize("degree", [1, 2, 3, 4, 5])
@pytest.mark.parametrize("weights", [[], WEIGHTS])
@pytest.mark.parametrize("knots", [open_uniform_knot_vector, uniform_knot_vector])
def test_every_degree_follows_the_recursion(degree, weights, knots):
    at = knots(len(POINTS), degree + 1)
    segments = spline_segments(degree, at, POINTS, weights)
    exact = not weights and degree <= 3
    for t in np.linspace(at[degree], at[len(POINTS)] - 1e-9, 13):
        assert distance_to(segments, evaluated(degree, at, POINTS, weights, t)) < (1e-7 if exact else 1e-4)
    for one, two in zip(segments, segments[1:], strict=False):
        assert math.dist(one.end, two.start) < 1e-9


@given(st.lists(st.tuples(st.floats(-100, 100), st.floats(-100, 100)), min_size=4, max_size=9), st.data())
@settings(max_examples=60)
def test_cubics_with_any_knots_are_exact(points, data):
    steps = data.draw(st.lists(st.sampled_from([0.0, 0.3, 1.0, 2.5]), min_size=len(points) + 3, max_size=len(points) + 3))
    knots = list(np.cumsum([0.0, *steps]))
    inner = knots[3:len(points) + 1]
    if inner[-1] - inner[0] < 0.1 or any(knots[i + 3] == knots[i] for i in range(len(knots) - 3)):
        return  # a knot repeated more often than the degree tears the curve: nothing to compare
    segments = spline_segments(3, knots, points)
    assert all(isinstance(s, Cubic) for s in segments)
    for t in np.linspace(inner[0], inner[-1] - 1e-9, 9):
        assert distance_to(segments, evaluated(3, knots, points, [], t)) < 1e-6


def test_a_rational_circle_becomes_arcs():
    s = math.sqrt(0.5)
    square = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1), (1, 0)]
    segments = spline_segments(2, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4], [(70 * x + 5, 70 * y) for x, y in square], [1, s] * 4 + [1])
    assert [type(x) for x in segments] == [Arc] * 4
    assert all(x.radius == pytest.approx(70, abs=1e-9) and x.centre == pytest.approx((5, 0), abs=1e-9) for x in segments)


def test_a_rational_ellipse_is_no_circle_and_its_area_is_right():
    s = math.sqrt(0.5)
    square = [(1, 0), (1, 1), (0, 1), (-1, 1), (-1, 0), (-1, -1), (0, -1), (1, -1), (1, 0)]
    segments = spline_segments(2, [0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4], [(70 * x, 30 * y) for x, y in square], [1, s] * 4 + [1])
    assert all(isinstance(x, Cubic) for x in segments)
    assert sum(x.area_term() for x in segments) == pytest.approx(math.pi * 70 * 30, rel=1e-7)


def test_equal_weights_count_as_none():
    assert spline_segments(3, CLAMPED, POINTS[:4], [2.0] * 4) == spline_segments(3, CLAMPED, POINTS[:4])


def test_a_straight_spline_becomes_lines():
    segments = spline_segments(1, open_uniform_knot_vector(4, 2), POINTS[:4])
    assert segments == [Line(a, b) for a, b in zip(POINTS[:3], POINTS[1:4], strict=True)]


@pytest.mark.parametrize("degree,knots,points,weights", [
    (3, CLAMPED, POINTS[:3], []), (3, [0.0] * 7, POINTS[:4], []), (0, [0.0, 1.0], POINTS[:1], []),
    (3, [0, 0, 0, 0, 1, 1, 1, 0.5], POINTS[:4], []), (3, CLAMPED, POINTS[:4], [1.0, 1.0]),
    (3, CLAMPED, POINTS[:4], [1.0, -1.0, 1.0, 1.0])])
def test_numbers_that_make_no_spline_are_refused(degree, knots, points, weights):
    with pytest.raises(GeometryError):
        spline_segments(degree, knots, points, weights)
