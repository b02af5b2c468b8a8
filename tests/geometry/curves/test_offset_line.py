"""Lines set off evenly, held to the polygon library's own offset."""

import math
from pathlib import Path as File

import numpy as np
import pytest
import shapely
from msgspec.structs import replace
from shapely.geometry import Polygon

from app.formats import headstock
from geometry.curves import Arc, Cubic, Line, Path, circle
from geometry.curves.offset_line import CLOSE, offset_line
from geometry.errors import GeometryError
from geometry.layout import loop_path

SAMPLES = sorted((File(__file__).parents[3] / "samples").glob("*.headstock.json"))


def ring(*points):
    return Path(tuple(Line(a, b) for a, b in zip(points, points[1:] + points[:1], strict=True)), closed=True)


def true_offset(path: Path, by: float) -> Polygon:
    """By the polygon library, corners of a growing line round, of a shrinking one sharp."""
    return Polygon(path.counter_clockwise().flatten(0.0005)).buffer(by, quad_segs=256)


def test_a_square_grows_round_corners_and_shrinks_sharp():
    square = ring((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    grown = offset_line(square, 2.0)
    assert grown.area == pytest.approx(100 + 4 * 20 + math.pi * 4)
    assert sum(isinstance(one, Arc) for one in grown) == 4
    assert offset_line(square, -2.0).box == pytest.approx((2.0, 2.0, 8.0, 8.0))
    assert offset_line(square, -2.0).area == pytest.approx(36.0)


def test_arcs_stay_exact_arcs():
    made = offset_line(circle((3.0, 4.0), 10.0), -2.5)
    assert all(isinstance(one, Arc) and one.radius == 7.5 for one in made)
    assert made.area == pytest.approx(math.pi * 7.5 ** 2)


@pytest.mark.parametrize("file", SAMPLES[1::3], ids=lambda file: file.name.split(".")[0])
@pytest.mark.parametrize("by", [-4.0, 3.0])
def test_outlines_agree_with_the_polygon_offset(file, by):
    path = loop_path(headstock.read(file).outline)
    made = offset_line(path, by)
    area = true_offset(path, by)
    line = shapely.LineString(made.flatten(0.0005))
    assert line.hausdorff_distance(area.exterior) < CLOSE + 0.003
    assert len(made.segments) < 90


@pytest.mark.parametrize(("name", "by"), [("six-in-line", 5.0), ("twelve-all-face", -2.0)])
def test_no_curve_strays_farther_than_it_says(name, by):
    path = loop_path(headstock.read(next(file for file in SAMPLES if file.name.startswith(name + "."))).outline)
    curves = [one for one in offset_line(path, by) if isinstance(one, Cubic)]
    off = [abs(path.nearest(curve.point(k / 48)).distance - abs(by)) for curve in curves for k in range(1, 48)]
    assert CLOSE / 3 < max(off) <= CLOSE


def test_a_corner_of_two_curves_that_closes_is_cut_where_they_cross():
    lens = Path((Cubic((0.0, 0.0), (8.0, -9.0), (22.0, -9.0), (30.0, 0.0)),
                 Cubic((30.0, 0.0), (22.0, 9.0), (8.0, 9.0), (0.0, 0.0))), closed=True)
    made = offset_line(lens, -1.5)
    # Symmetric about y = 0, so both ends lie on it, to the last of the flattening.
    ends = sorted(made.flatten(0.001)[:, 0])
    low, high = (min(made.segments, key=lambda one: one.start[0]).start, max(made.segments, key=lambda one: one.start[0]).start)
    assert low[1] == pytest.approx(0.0, abs=1e-6) and high[1] == pytest.approx(0.0, abs=1e-6)
    assert ends[0] > 1.5 and shapely.LineString(made.flatten(0.0005)).hausdorff_distance(
        true_offset(lens, -1.5).exterior) < 0.005


def test_edges_on_the_nut_line_stay():
    head = ring((-20.0, 0.0), (20.0, 0.0), (30.0, 40.0), (-30.0, 40.0))
    made = offset_line(head, 2.0, keep_level=0.0)
    # Each side moves 2 mm square to itself: 2 * sqrt(17) / 4 mm across at y = 0 (hand-computed).
    assert made.box[1] == pytest.approx(0.0, abs=1e-9)
    assert max(p[0] for p in made.flatten() if abs(p[1]) < 1e-9) == pytest.approx(20 + 2 * math.sqrt(17) / 4)
    inward = offset_line(head, -2.0, keep_level=0.0)
    assert inward.box[1] == pytest.approx(0.0, abs=1e-9)
    assert max(p[0] for p in inward.flatten() if abs(p[1]) < 1e-9) == pytest.approx(20 - 2 * math.sqrt(17) / 4)


@pytest.mark.parametrize("by", [0.0, math.nan, -6.0, -1000.0])
def test_what_cannot_be_is_refused_in_a_sentence(by):
    square = ring((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))
    with pytest.raises(GeometryError, match=r"\.$"):
        offset_line(square, by)


def test_there_and_back_is_the_same_line_where_nothing_is_cut():
    path = loop_path(headstock.read(SAMPLES[0]).outline)
    back = offset_line(offset_line(path, 2.0), -2.0)
    points = np.array(back.flatten(0.0005))
    assert max(path.nearest(tuple(p)).distance for p in points[::7]) < 3 * CLOSE


@pytest.mark.parametrize("by", [-2.0, 0.5, 6.0])
@pytest.mark.parametrize("seed", range(6))
def test_nodes_that_nearly_go_straight_on_are_no_hindrance(seed, by):
    # Nodes put down by hand: turns of a fraction of a degree either way, which hardly cross when they are set off.
    chance = np.random.default_rng(seed)
    outline = headstock.read(SAMPLES[seed % len(SAMPLES)]).outline
    strays = [replace(node, at=(node.at[0] + chance.normal() * 0.1, node.at[1] + (node.at[1] > 1) * chance.normal() * 0.1))
              for node in outline.nodes]
    path = loop_path(replace(outline, nodes=tuple(strays)))
    line = shapely.LineString(offset_line(path, by).flatten(0.0005))
    assert line.hausdorff_distance(true_offset(path, by).exterior) < 0.02


def test_a_mouth_that_closes_and_a_waist_that_parts_are_refused():
    mouth = ring((0.0, 0.0), (30.0, 0.0), (30.0, 10.0), (20.0, 10.0), (20.0, 4.0), (6.0, 4.0), (6.0, 18.0), (20.0, 18.0),
                 (20.0, 12.0), (30.0, 12.0), (30.0, 22.0), (0.0, 22.0))
    with pytest.raises(GeometryError, match="too narrow"):
        offset_line(mouth, 1.5)
    waist = ring((0.0, 0.0), (40.0, 0.0), (40.0, 20.0), (22.0, 20.0), (21.0, 2.0), (19.0, 2.0), (18.0, 20.0), (0.0, 20.0))
    with pytest.raises(GeometryError, match="too narrow"):
        offset_line(waist, -1.5)


def test_a_notch_that_fills_up_is_gone_without_a_trace():
    notch = ring((0.0, 0.0), (30.0, 0.0), (30.0, 10.0), (5.0, 10.0), (5.0, 12.0), (30.0, 12.0), (30.0, 22.0), (0.0, 22.0))
    grown = Polygon(offset_line(notch, 1.5).flatten(0.0005))
    assert grown.symmetric_difference(true_offset(notch, 1.5)).area < 0.05


def test_no_line_is_offset_beyond_all_layouts():
    line = Path((Line((0.0, 0.0), (10.0, 0.0)), Line((10.0, 0.0), (10.0, 10.0)), Line((10.0, 10.0), (0.0, 0.0))), closed=True)
    for by in (1e300, -1e300, 5001.0):
        with pytest.raises(GeometryError):
            offset_line(line, by)
