"""Outlines with known geometry, drawn as scans with blur, grain and JPEG, come back within a point and in few pieces."""

import math
from functools import lru_cache

import numpy as np
import pytest
import shapely

from app.window.demo import samples
from geometry.curves import Cubic, Line, Path, circle
from geometry.errors import GeometryError
from geometry.layout import loop_path
from geometry.tracing.corners import corners, evenly
from geometry.tracing.edges_of import edge_about, loops, softened, threshold
from geometry.tracing.fit import fit, strays
from geometry.tracing.pieces import arc_fit, cubic_fit, line_error
from tests.geometry.tracing.scans import Scan


@lru_cache
def outline(name: str) -> Path:
    from app.formats import headstock
    return loop_path(headstock.read(samples() / f"{name}.headstock.json").outline)


def traced(path: Path, dpi: float, tolerance: float = 0.15, **faults):
    scan = Scan(path, dpi, **faults)
    edge = scan.to_mm(edge_about(scan.grey, threshold(scan.grey), scan.at(0.0, path.box[3] - 40)))
    return fit(edge, tolerance, 25.4 / dpi), edge


def apart(one: Path, two: Path) -> float:
    """Greatest distance between two exact paths, both ways, by exact nearest points: not the measure under test."""
    worst = 0.0
    for a, b in ((one, two), (two, one)):
        worst = max(worst, *(b.nearest(a.point_at(a.length * i / 300)).distance for i in range(300)))
    return worst


@pytest.mark.parametrize(("name", "dpi"), [
    ("three-a-side", 300), ("six-in-line", 150), ("twelve-string-mixed", 300), ("four-strings-small", 150)])
def test_a_scan_comes_back_within_a_quarter_millimetre_and_in_few_pieces(name, dpi):
    true = outline(name)
    found, edge = traced(true, dpi)
    assert apart(found.path, true) < 0.25
    assert found.deviation < 0.25
    assert found.deviation >= apart_from_points(found.path, edge) - 1e-9
    assert len(found.path.segments) <= 2 * len(true.segments)


def apart_from_points(path: Path, line: np.ndarray) -> float:
    """Of every tenth point, by the exact nearest point."""
    return max(path.nearest((float(x), float(y))).distance for x, y in line[::10])


def test_corners_at_the_nut_stay_corners_in_their_place():
    true = outline("three-a-side")
    found, _ = traced(true, 300)
    turns = found.path.corners(math.radians(20))
    assert len(turns) == 2
    ends = sorted(found.path.segments[i].start for i, _ in turns)
    assert ends[0] == pytest.approx((-21.5, 0.0), abs=0.15) and ends[1] == pytest.approx((21.5, 0.0), abs=0.15)
    # Everywhere else the line goes on in its direction.
    assert len(found.path.corners(math.radians(4))) == 2


def test_more_deviation_allowed_means_no_more_pieces():
    true = outline("twelve-string-mixed")
    fine, coarse = traced(true, 150, 0.1)[0], traced(true, 150, 0.5)[0]
    assert len(coarse.path.segments) <= len(fine.path.segments)
    assert apart(coarse.path, true) < 0.75


def test_a_rectangle_is_four_lines():
    corners_ = ((-30.0, 0.0), (30.0, 0.0), (30.0, 90.0), (-30.0, 90.0))
    true = Path(tuple(Line(a, b) for a, b in zip(corners_, corners_[1:] + corners_[:1], strict=True)), closed=True)
    found, _ = traced(true, 200)
    assert [type(s) for s in found.path] == [Line] * 4
    for place in corners_:
        assert min(math.dist(place, s.start) for s in found.path) < 0.13


def test_a_round_without_corners_is_found_too():
    found, _ = traced(circle((0.0, 40.0), 30.0), 150)
    assert found.path.corners(math.radians(6)) == []
    assert found.path.area == pytest.approx(math.pi * 900, rel=2e-3)


def test_telling_may_stop_the_work():
    scan = Scan(outline("six-in-line"), 100)
    edge = scan.to_mm(edge_about(scan.grey, threshold(scan.grey), scan.at(0, 100)))
    told = []

    class Stopped(Exception):
        pass

    def tell(part):
        told.append(part)
        if part > 0.3:
            raise Stopped

    with pytest.raises(Stopped):
        fit(edge, 0.15, 0.254, tell)
    assert told == sorted(told) and told[0] == 0


# ---- the parts -------------------------------------------------------------------
def test_the_threshold_lies_between_two_greys():
    """By hand: two greys, 40 and 200, part half way between them, however many points of each there are."""
    grey = np.full((20, 20), 200, dtype=np.uint8)
    grey[:3] = 40
    assert threshold(grey) == 120.0
    assert threshold(np.full((4, 4), 77, dtype=np.uint8)) == 77.0


def test_an_edge_is_found_to_a_fraction_of_a_point():
    """A step of 25 % in one column: by hand the half way level is crossed a quarter point beside its middle."""
    grey = np.full((40, 40), 200.0)
    grey[10:30, 10:30] = 0.0
    grey[10:30, 30] = 50.0
    line = max(loops(grey, 100.0), key=len)
    beside = line[(line[:, 1] > 15) & (line[:, 1] < 25) & (line[:, 0] > 25)]
    # Between the middles 30.5 (50) and 31.5 (200) the level 100 lies a third of the way.
    assert beside[:, 0] == pytest.approx(30.5 + 1 / 3)


def test_the_largest_loop_under_the_press_is_taken_and_holes_are_not():
    grey = np.full((100, 100), 220.0)
    grey[10:90, 20:80] = 60.0
    grey[45:55, 45:55] = 220.0
    found = edge_about(grey, 140.0, (50.0, 50.0))
    assert shapely.Polygon(found).area == pytest.approx(80 * 60, rel=0.01)
    with pytest.raises(GeometryError, match="press inside the head"):
        edge_about(grey, 140.0, (5.0, 50.0))


def test_a_head_that_runs_out_of_the_picture_is_no_loop():
    grey = np.full((60, 60), 220.0)
    grey[10:, 20:40] = 60.0
    with pytest.raises(GeometryError, match="all of it is in the picture"):
        edge_about(grey, 140.0, (30.0, 40.0))


def test_softening_keeps_the_light_and_lessens_the_grain():
    grain = np.random.default_rng(1).normal(100, 10, (80, 80))
    soft = softened(grain)
    assert soft.mean() == pytest.approx(grain.mean(), abs=0.2)
    # By hand: weights 1 2 1 over 4 leave (6/16) of the variance in each direction.
    assert soft[1:-1, 1:-1].std() == pytest.approx(grain.std() * 6 / 16, rel=0.08)


def test_a_small_round_is_no_corner():
    t = np.linspace(0, math.tau, 2000)
    for radius, many in ((4.0, 0),):
        a = 30 - radius
        rounded = shapely.box(-a, -a, a, a).buffer(radius, quad_segs=64)
        points = evenly(shapely.get_coordinates(rounded.exterior), 0.1)
        assert len(corners(points, 0.1, 0.2)) == many
    assert len(corners(evenly(np.stack([30 * np.cos(t), 30 * np.sin(t)], 1), 0.1), 0.1, 0.2)) == 0


def test_a_quarter_circle_has_its_bulge():
    """By hand: the bulge of a quarter circle is tan(90 / 4 degrees) = 0.41421."""
    t = np.linspace(0, math.pi / 2, 51)
    points = np.stack([10 * np.cos(t), 10 * np.sin(t)], axis=1)
    bulge, error = arc_fit(points[1:-1], points[0], points[-1])
    assert bulge == pytest.approx(math.tan(math.pi / 8), abs=1e-9) and error < 1e-9
    assert arc_fit(points[::-1][1:-1], points[-1], points[0])[0] == pytest.approx(-math.tan(math.pi / 8), abs=1e-9)
    assert line_error(points, points[0], points[-1]) == pytest.approx(10 - 10 / math.sqrt(2), abs=1e-3)


def test_a_cubic_through_its_own_points_is_found_again():
    true = Cubic((0, 0), (10, 20), (40, 25), (60, 0))
    points = np.array([true.point(i / 80) for i in range(1, 80)])
    out, into = np.array(true.tangent(0)), -np.array(true.tangent(1))
    control, error = cubic_fit(points, np.array(true.p0), np.array(true.p1), out, into)
    assert error < 0.02
    assert control[1] == pytest.approx((10, 20), abs=0.6) and control[2] == pytest.approx((40, 25), abs=0.6)


def test_straying_is_measured_both_ways():
    """By hand: a square of 10 against the same with a spike of 3 on one side, from either of the two."""
    square = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    spiked = np.array([*square[:2], (10, 5), (13, 5), (10, 5.001), *square[2:], square[0]])
    path = Path(tuple(Line(a, b) for a, b in zip(square, square[1:] + square[:1], strict=True)), closed=True)
    assert strays(path, spiked) == pytest.approx(3.0, abs=0.003)
    other = Path(tuple(Line(tuple(a), tuple(b)) for a, b in zip(spiked[:-1], spiked[1:], strict=True)), closed=True)
    assert strays(other, np.array([*square, square[0]])) == pytest.approx(3.0, abs=0.003)


@pytest.mark.parametrize("line", [np.zeros((0, 2)), np.zeros((40, 2)), np.random.default_rng(1).random((40, 2))])
def test_what_is_no_outline_is_refused(line):
    with pytest.raises(GeometryError):
        fit(line, 0.15, 0.2)
    with pytest.raises(GeometryError):
        fit(np.array([(0, 0), (50, 0), (50, 50), (0, 0)] * 5), 0.0, 0.2)
