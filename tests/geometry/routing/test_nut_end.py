"""The outside template at the nut line: it ends there, and its sides guide the router down to it."""

import math
from pathlib import Path

import numpy as np
import pyclipper
import pytest
from msgspec.structs import replace
from shapely import union_all
from shapely.geometry import Polygon, box

from app.formats.headstock import read
from geometry.drawing import Stroke
from geometry.drawing.outside_template import outside_lines
from geometry.drawing.template import template_drawing
from geometry.layout import Loop, Node, Nut, Rack, RouterBit, loop_path
from geometry.routing import plan_outline
from geometry.routing.follower import template_outline
from geometry.routing.nut_end import lean_out, led_on, neck_strip, nut_end
from geometry.sequence import operations
from tests.geometry.routing.specimens import head, loop

SAMPLES = sorted(Path("samples").glob("*.headstock.json"))
LEVEL = Nut()
NECK, FINE = 40.0, 1e6
"""mm of neck behind the nut line; units of the other library to the mm"""


def shrunk(area: Polygon, by: float) -> Polygon:
    """An area shrunk by a polygon library that the program does not use."""
    tool = pyclipper.PyclipperOffset(2.0, 0.0005 * FINE)
    tool.AddPath([(round(x * FINE), round(y * FINE)) for x, y in area.exterior.coords[:-1]], pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)
    return union_all([Polygon(np.array(ring) / FINE) for ring in tool.Execute(-by * FINE)])


def with_neck(loop_: Loop) -> Polygon:
    """A head and its neck: the directions in which its sides come to the nut line are taken from points of the outline."""
    points = loop_path(loop_).counter_clockwise().flatten(1e-5)[:-1]
    on = np.flatnonzero(np.abs(points[:, 1]) < 1e-9)
    bass, treble = (on[f(points[on, 0])] for f in (np.argmin, np.argmax))
    ends = []
    for foot, beside in ((bass, points[bass - 1]), (treble, points[(treble + 1) % len(points)])):
        way = points[foot] - beside
        ends.append(points[foot] + way / -way[1] * NECK)
    return union_all([Polygon(points), Polygon([points[bass], ends[0], ends[1], points[treble]]).buffer(1e-6)])


@pytest.mark.parametrize("offset", [0.4, 2.5, 4.5, -0.4, -1.5, -4.5])
@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name.split(".")[0])
def test_as_if_the_neck_went_on_and_the_template_were_cut_off_at_the_nut_line(path, offset):
    """Larger than the head (below 0) it ends there as well, where nut and fingerboard stand."""
    layout = read(path)
    drawn = with_neck(layout.outline) if offset > 0 else Polygon(loop_path(layout.outline).counter_clockwise().flatten(1e-5))
    wanted = shrunk(drawn, offset).intersection(box(-500.0, 0.0, 500.0, 500.0))
    line, = [mark.path for mark in template_drawing(layout, offset) if isinstance(mark, Stroke) and mark.style == "template"
             and mark.owner == "outline"]
    for found in (Polygon(line.flatten()), template_outline(layout, offset)):
        assert found.symmetric_difference(wanted).area < 0.003 * wanted.length
        assert found.bounds[1] == pytest.approx(0.0, abs=1e-6 if offset > 0 else 1e-9)
    assert offset > 0 or line.counter_clockwise() == line


def test_a_larger_template_by_hand_stays_lines_and_arcs():
    """Sides that lean out by 10 over 90: set out by 3 they cross the nut line 3 sqrt(1 + 1/81) further out, at 33.018.

    The edge's normal looks down by 1/sqrt 82 mm a mm: 0.331 of the edge have their place behind the nut line.
    """
    leaning = loop((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0))
    line, = outside_lines(leaning, LEVEL, -3.0)
    assert [type(segment).__name__ for segment in line.segments] == ["Line", "Arc", "Line", "Arc", "Line", "Line"]
    feet = sorted(segment.start[0] for segment in line.segments if abs(segment.start[1]) < 1e-9)
    assert feet == pytest.approx([-33.01846, 33.01846], abs=1e-5)
    assert 3.0 * lean_out(nut_end(leaning, LEVEL)) == pytest.approx(0.33129, abs=1e-5)
    narrowing = loop((-30.0, 0.0), (30.0, 0.0), (20.0, 90.0), (-20.0, 90.0))
    assert lean_out(nut_end(narrowing, LEVEL)) == 0.0


@pytest.mark.parametrize("mirrored", [False, True])
def test_edges_that_leave_the_nut_line_each_in_its_own_way(mirrored):
    """One edge leans out by 10 over 90, 10 / sqrt(8200) mm a mm along it; the other narrows, or leaves at a shoulder, which is no lean."""
    for other in (((-20.0, 90.0), (-30.0, 0.0)), ((-30.0, 90.0), (-30.0, 0.0)), ((-50.0, 90.0), (-50.0, 1.0), (-30.0, 0.0))):
        corners = [(30.0, 0.0), (40.0, 90.0), *other]
        end = nut_end(loop(*([(-x, y) for x, y in corners] if mirrored else corners)), LEVEL)
        assert lean_out(end) == pytest.approx(10 / 8200 ** 0.5)
    assert end.shoulders == ((False, True) if mirrored else (True, False))


def test_beside_a_neck_it_reaches_past_the_shoulders():
    """The router follows it along the shoulder, behind the nut line; the neck, 40 wide, stays free."""
    shouldered = loop((-20.0, 0.0), (20.0, 0.0), (40.0, 1.0), (40.0, 90.0), (-40.0, 90.0), (-40.0, 1.0))
    area = template_outline(head(outline=shouldered), -3.0)
    line, = outside_lines(shouldered, LEVEL, -3.0)
    for found in (area, Polygon(line.flatten())):
        assert found.intersection(box(-20.0, -10.0, 20.0, 0.0)).area == pytest.approx(0.0, abs=1e-9)
        assert found.intersection(box(20.1, -10.0, 40.0, 0.0)).bounds[1] == pytest.approx(-2.99, abs=0.02)


def test_the_plan_says_where_it_ends_and_what_stays():
    """A cutter of 16 on a bearing of 10: 3 mm larger; the last 0.331 of the edge are told, rounded up."""
    wide = RouterBit(id="wide", cutter=16.0, cutting_length=16.0, shank=8.0, stick_out=50.0, bearing="shank", bearing_diameter=10.0,
                     bearing_height=5.0)
    leaning = head(outline=loop((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0)), rack=Rack(bits=(wide,)))
    words = " ".join(plan_outline(leaning).best.steps)
    assert "outside template 3 mm larger than the finished outline, cut off at the nut line." in words
    assert "The last 0.34 mm at the nut line are not guided by the template" in words
    low = head(outline=loop((-30.0, -8.0), (30.0, -8.0), (40.0, 90.0), (-40.0, 90.0)), rack=Rack(bits=(wide,)))
    words = " ".join(plan_outline(low).best.steps)
    assert "3 mm larger all round than the finished outline." in words and "at the nut line" not in words


@pytest.mark.parametrize(("bearing", "behind", "says"), [(10.0, 0.0, "into the head"), (10.0, 20.0, "into the neck"), (16.0, 0.0, ""), (20.0, 0.0, "")])
def test_where_the_router_may_not_go_round_the_end_of_the_template(bearing, behind, says):
    """A cutter of 16 that goes round the whole template, by the other library: does it cut into the head at the nut line?"""
    bit = RouterBit(id="bit", cutter=16.0, cutting_length=16.0, shank=8.0, stick_out=50.0, bearing="shank", bearing_diameter=bearing,
                    bearing_height=5.0)
    layout = head(outline=loop((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0)), rack=Rack(bits=(bit,)))
    layout = replace(layout, blank=replace(layout.blank, behind=behind))
    plan = plan_outline(layout).best
    left = shrunk(shrunk(template_outline(layout, plan.offset), -bearing / 2), 8.0)
    lost = box(-20.0, 0.0, 20.0, 20.0).difference(left).bounds
    assert (lost[3] if lost[3] > 0.01 else 0.0) == pytest.approx((16.0 - bearing) / 2 if bearing < 16.0 else 0.0, abs=0.002)
    told = [text for text in plan.cautions if "Begin and stop at the nut line" in text]
    assert [says in text for text in told] == [True] * bool(says)
    step = next(op for op in operations(layout) if op.kind == "rout outline")
    assert [text for text in step.cautions if "Begin and stop" in text] == told


def test_a_leaning_side_by_hand():
    """Sides that lean out by 10 over 90: set in by 3 they cross the nut line 3 sqrt(1 + 1/81) further in, at 30 - 3.018."""
    leaning = loop((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0))
    x0, y0, x1, _ = template_outline(head(outline=leaning), 3.0).intersection(box(-50.0, -1.0, 50.0, 1e-6)).bounds
    assert (x0, y0, x1) == pytest.approx((-26.982, 0.0, 26.982), abs=0.001)


def test_nodes_on_the_nut_line_and_the_way_round_change_nothing():
    corners = ((-30.0, 0.0), (-10.0, 0.0), (0.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0))
    areas = [led_on(loop(*points), LEVEL, 3.0).area for points in (corners, corners[2:] + corners[:2], corners[::-1], (corners[0], *corners[3:]))]
    assert areas == pytest.approx([areas[-1]] * 4) and areas[-1] == pytest.approx(6300 + 3 * (60 - 1 / 3))


def test_a_shoulder_goes_on_square():
    """Edges that leave the nut line nearly along it: the neck is as wide as the nut."""
    shouldered = loop((-20.0, 0.0), (20.0, 0.0), (40.0, 1.0), (40.0, 90.0), (-40.0, 90.0), (-40.0, 1.0))
    assert led_on(shouldered, LEVEL, 3.0).box == pytest.approx((-40.0, -3.0, 40.0, 90.0))
    assert led_on(shouldered, LEVEL, 3.0).area - loop_path(shouldered).area == pytest.approx(3 * 40)


def test_an_outline_that_does_not_end_on_the_nut_line_is_left_alone():
    high = loop((-30.0, 5.0), (30.0, 5.0), (40.0, 90.0), (-40.0, 90.0))
    low = loop((-30.0, -8.0), (30.0, -8.0), (40.0, 90.0), (-40.0, 90.0))
    pointed = Loop(nodes=(Node(at=(0.0, 0.0)), Node(at=(40.0, 90.0)), Node(at=(-40.0, 90.0))))
    for outline in (high, low, pointed):
        assert led_on(outline, LEVEL, 3.0) == loop_path(outline).counter_clockwise()
        assert neck_strip(outline, LEVEL, -3.0) is None
        line, = outside_lines(outline, LEVEL, -3.0)
        assert line.box[1] == pytest.approx(loop_path(outline).box[1] - 3.0)
    square = replace(head(), outline=loop((-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0)))
    assert led_on(square.outline, LEVEL, -2.0) == led_on(square.outline, LEVEL, 0.0) == loop_path(square.outline)


def leaned(corners, degrees):
    """Corners as they lie when the whole head leans with its nut line: its bass end leads to the tip."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return [(x * c + y * s, y * c - x * s) for x, y in corners]


@pytest.mark.parametrize("degrees", [9.0, -9.0, 22.0])
@pytest.mark.parametrize("offset", [3.0, -3.0])
def test_it_ends_along_a_slanted_nut_line_as_along_a_level_one(offset, degrees):
    """Within a few hundredths: the end is drawn in tenths."""
    corners, slanted = [(-30.0, 0.0), (30.0, 0.0), (40.0, 90.0), (-40.0, 90.0)], Nut(slant=degrees)
    there = loop(*((round(x, 1), round(y, 1)) for x, y in leaned(corners, degrees)))
    level, = outside_lines(loop(*corners), LEVEL, offset)
    made, = outside_lines(there, slanted, offset)
    wanted = Polygon(leaned(level.flatten(1e-3).tolist(), degrees))
    for found in (Polygon(made.flatten()), template_outline(replace(head(outline=there), nut=slanted), offset)):
        assert found.hausdorff_distance(wanted) < 0.12
        assert (min if offset < 0 else max)(0.0, min(slanted.before(p) for p in found.exterior.coords)) == pytest.approx(0.0, abs=0.1)
    assert lean_out(nut_end(there, slanted)) == pytest.approx(lean_out(nut_end(loop(*corners), LEVEL)), abs=0.002)


def test_beside_shoulders_at_a_slanted_nut_line_the_neck_goes_on_along_the_centreline():
    """The neck, 40 wide, stays free behind the line, which is 20 tan 10 = 3.527 nearer the tip at the bass edge."""
    slanted, rise = Nut(slant=10.0), math.tan(math.radians(10.0))
    corners = ((-20.0, 20 * rise), (20.0, -20 * rise), (40.0, -40 * rise + 1.0), (40.0, 90.0), (-40.0, 90.0), (-40.0, 40 * rise + 1.0))
    end = nut_end(loop(*corners), slanted)
    assert end.shoulders == (True, True)
    area = template_outline(replace(head(outline=loop(*corners)), nut=slanted), -3.0)
    assert area.intersection(Polygon([(-20.0, 20 * rise), (-20.0, -9.0), (20.0, -9.0), (20.0, -20 * rise)])).area == pytest.approx(0.0, abs=1e-6)
    for x in (-20.05, 20.05):  # beside it the router follows the shoulder, 3 behind it square to it
        assert area.intersection(box(x - 0.01, -20.0, x + 0.01, 20.0)).bounds[1] == pytest.approx(-x * rise - 3.0 / math.cos(math.radians(10)), abs=0.1)
    inner = led_on(loop(*corners), slanted, 3.0)
    assert inner.area - loop_path(loop(*corners)).area == pytest.approx(3 / math.cos(math.radians(10.0)) * 40)
