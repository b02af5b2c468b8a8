"""Middles and centres of edges, lines that meet an edge square or touch it."""

import math

import pytest

from app.tools.snap_edges import marked, met, on_ray
from geometry.curves import Cubic, Line, Path, circle
from geometry.layout import Loop, Node


def test_middles_of_edges_and_centres_of_arcs():
    # A half circle of 10 mm about (0, 10) over a straight edge.
    loop = Loop(nodes=(Node(at=(-10.0, 10.0)), Node(at=(10.0, 10.0), bulge=1.0)))
    spots = {spot.words: spot.at for spot in marked(loop, "outline")}
    assert spots["middle of edge 1 of the outline"] == (0.0, 10.0)
    assert spots["middle of edge 2 of the outline"] == pytest.approx((0.0, 20.0))
    assert spots["centre of edge 2 of the outline"] == pytest.approx((0.0, 10.0))
    assert not list(marked(loop, "outline", frozenset({0})))


def test_a_line_that_touches_a_circle():
    # Tangent points from (0, 0) to a circle of 3 about (5, 0): at 9/5 before its centre, 12/5 off the line (hand-computed).
    ring = circle((5.0, 0.0), 3.0)
    spot = met((0.0, 0.0), (3.1, 2.5), ring, "the ring", 0.5)
    assert spot.at == pytest.approx((16 / 5, 12 / 5))
    assert spot.words == "touching the ring"
    assert met((0.0, 0.0), (8.1, 0.1), ring, "the ring", 0.5).at == pytest.approx((8.0, 0.0))
    assert met((0.0, 0.0), (5.0, 3.1), ring, "the ring", 0.5) is None


def test_a_line_that_meets_a_curve_square():
    curve = Cubic((0.0, 10.0), (5.0, 14.0), (12.0, 8.0), (20.0, 12.0))
    spot = met((6.0, 0.0), (6.0, 11.5), Path((curve,)), "the curve", 2.0)
    assert spot.words == "square to the curve"
    near = Path((curve,)).nearest(spot.at)
    tangent, way = curve.tangent(near.t), (spot.at[0] - 6.0, spot.at[1])
    assert abs(tangent[0] * way[0] + tangent[1] * way[1]) < 1e-9 * math.hypot(*way)
    assert met((0.0, 0.0), (5.0, 5.1), Path((Line((0.0, 10.0), (10.0, 0.0)),)), "the line", 1.0).at == pytest.approx(
        (5.0, 5.0))


def test_on_along_a_direction():
    ways = (((0.0, 1.0), "straight on"), ((1.0, 0.0), "square"))
    assert on_ray((0.0, 0.0), ways, (0.3, 12.4), 0.5, 1.0).at == (0.0, 12.0)
    assert on_ray((0.0, 0.0), ways, (-7.3, 0.2), 0.5, None).at == pytest.approx((-7.3, 0.0))
    assert on_ray((0.0, 0.0), ways, (3.0, 3.0), 0.5, 1.0) is None
