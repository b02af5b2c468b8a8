"""Splines in DXF files: closed, periodic, unclamped, with missing knots, through fit points."""

import math

import numpy as np
import pytest

from tests.app.formats.drawing_in import dxf_text as dxf
from tests.app.formats.drawing_in.reading import areas, read

RING = [(60 * math.cos(a), 40 * math.sin(a)) for a in np.linspace(0, math.tau, 9)[:-1]]


def uniform_cubic_area(points) -> float:
    """Area of the closed uniform cubic B-spline of a ring of control points, by quadrature of its textbook pieces."""
    total = 0.0
    nodes, weights = np.polynomial.legendre.leggauss(8)
    t, w = (nodes + 1) / 2, weights / 2
    n = len(points)
    for i in range(n):
        p = np.array([points[(i + k) % n] for k in range(4)])
        b = np.array([(1 - t) ** 3, 3 * t**3 - 6 * t**2 + 4, -3 * t**3 + 3 * t**2 + 3 * t + 1, t**3]) / 6
        d = np.array([-3 * (1 - t) ** 2, 9 * t**2 - 12 * t, -9 * t**2 + 6 * t + 3, 3 * t**2]) / 6
        (x, y), (u, v) = p.T @ b, p.T @ d
        total += float(((x * v - y * u) / 2 * w).sum())
    return total


TRUTH = uniform_cubic_area(RING)


def test_a_wrapped_periodic_spline_is_closed():
    wrapped = RING + RING[:3]
    found = read(dxf.drawing(dxf.spline(3, list(range(len(wrapped) + 4)), wrapped, flags=11)))
    assert areas(found) == pytest.approx([TRUTH], rel=1e-9)


def test_a_periodic_spline_that_leaves_the_wrapping_to_the_reader_is_closed():
    found = read(dxf.drawing(dxf.spline(3, list(range(len(RING) + 7)), RING, flags=11)))
    assert areas(found) == pytest.approx([TRUTH], rel=1e-9)


def test_a_periodic_spline_without_knots_is_closed():
    found = read(dxf.drawing(dxf.spline(3, [], RING, flags=11)))
    assert areas(found) == pytest.approx([TRUTH], rel=1e-9)


def test_a_spline_without_its_outermost_knots_is_the_same_curve():
    points = [(0, 0), (0, 90), (120, 90), (120, 0)]
    full = read(dxf.drawing(dxf.spline(3, [0, 0, 0, 0, 1, 1, 1, 1], points) + dxf.line((0, 0), (120, 0))))
    short = read(dxf.drawing(dxf.spline(3, [0, 0, 0, 1, 1, 1], points) + dxf.line((0, 0), (120, 0))))
    assert areas(short) == pytest.approx(areas(full), rel=1e-12)


def test_a_clamped_closed_spline_is_closed():
    points = [(50, 0), (50, 60), (-50, 60), (-50, -60), (50, -60), (50, 0)]
    found = read(dxf.drawing(dxf.spline(3, [0, 0, 0, 0, 1, 2, 3, 3, 3, 3], points, flags=11)))
    assert len(found.loops) == 1 and found.open_chains == ()


def test_a_spline_through_points_passes_through_them():
    points = [(0, 0), (30, 50), (80, 60), (120, 0)]
    found = read(dxf.drawing(dxf.fit_spline(points) + dxf.line((0, 0), (120, 0))))
    path = found.loops[0].path
    assert max(path.nearest(p).distance for p in points) < 1e-6


def test_a_closed_spline_through_points_is_closed():
    found = read(dxf.drawing(dxf.fit_spline(RING, closed=True)))
    assert len(found.loops) == 1
    assert found.loops[0].path.area == pytest.approx(math.pi * 60 * 40, rel=0.01)


def test_a_spline_with_broken_numbers_is_counted_and_the_rest_is_read():
    found = read(dxf.drawing(dxf.circle((0, 0), 50) + dxf.spline(3, [0, 1, 2], [(0, 0), (1, 5), (9, 9), (12, 0)])))
    assert areas(found) == pytest.approx([math.pi * 2500])
    assert found.warnings == ("Left out: 1 damaged spline shape.",)
