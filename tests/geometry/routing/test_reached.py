"""Wood left in corners and wood lost round them, by hand and against a second clipper."""

import math

import pyclipper
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.layout import Node
from geometry.layout.outline import Loop
from geometry.routing.reached import outline_reached, routed_area, slot_reached
from tests.geometry.routing.specimens import drawn, head, loop, straight

SQUARE = drawn((0.0, 0.0), (60.0, 0.0), (60.0, 20.0), (0.0, 20.0))


def test_a_square_corner_keeps_what_the_cutter_cannot_reach():
    """Of each right angle a cutter of radius r leaves (1 - pi/4) r2, (sqrt 2 - 1) r deep."""
    found = slot_reached(SQUARE, 12.0)
    assert found.whole and len(found.left) == 4 and found.lost == ()
    assert found.left_area == pytest.approx(4 * (1 - math.pi / 4) * 36, abs=0.05)
    assert found.left_depth == pytest.approx((math.sqrt(2) - 1) * 6, abs=0.01)
    assert sorted((round(p.at[0]), round(p.at[1])) for p in found.left) == [(0, 0), (0, 20), (60, 0), (60, 20)]


@pytest.mark.parametrize("degrees", [40, 60, 120])
def test_the_depth_in_a_corner_follows_its_angle(degrees):
    """r (1 / sin(angle / 2) - 1)."""
    half = math.radians(degrees / 2)
    far = 70 / math.tan(half)
    found = slot_reached(drawn((0.0, 0.0), (far, -70.0), (far, 70.0)), 8.0)
    corner = next(p for p in found.left if math.hypot(*p.at) < 0.01)
    assert corner.depth == pytest.approx(4 * (1 / math.sin(half) - 1), abs=0.02)


def test_a_straight_slot_is_judged_by_its_width_alone():
    assert slot_reached(straight(width=12.0), 12.0).whole
    assert slot_reached(straight(width=12.0), 12.0).left == ()
    assert not slot_reached(straight(width=12.0), 12.00001).whole


def test_a_drawn_slot_lets_a_cutter_of_its_own_width_through():
    found = slot_reached(drawn((0.0, 0.0), (60.0, 0.0), (60.0, 12.0), (0.0, 12.0)), 12.0)
    assert found.whole
    assert found.left_depth == pytest.approx((math.sqrt(2) - 1) * 6, abs=0.02)


def test_a_neck_keeps_a_wide_cutter_from_the_other_end():
    dumbbell = drawn((0.0, 0.0), (20.0, 0.0), (20.0, 7.0), (40.0, 7.0), (40.0, 0.0), (60.0, 0.0), (60.0, 20.0), (40.0, 20.0),
                     (40.0, 13.0), (20.0, 13.0), (20.0, 20.0), (0.0, 20.0))
    assert slot_reached(dumbbell, 6.0).whole
    assert not slot_reached(dumbbell, 6.1).whole
    assert not slot_reached(dumbbell, 40.0).whole


def test_growing_an_opening_rounds_the_wood_that_points_into_the_slot():
    """An L-shaped slot has one corner of wood: a template 3 mm larger all round costs (sqrt 2 - 1) 3 mm of it."""
    ell = drawn((0.0, 0.0), (60.0, 0.0), (60.0, 20.0), (20.0, 20.0), (20.0, 60.0), (0.0, 60.0))
    found = slot_reached(ell, 8.0, 3.0)
    assert len(found.lost) == 1
    assert found.lost_depth == pytest.approx((math.sqrt(2) - 1) * 3, abs=0.01)
    assert found.lost[0].size == pytest.approx((1 - math.pi / 4) * 9, abs=0.02)
    assert found.lost[0].at == pytest.approx((20.0, 20.0), abs=0.01)
    assert slot_reached(ell, 8.0, 0.0).lost == slot_reached(ell, 8.0, -2.0).lost == ()


def test_an_outline_keeps_wood_in_its_dents_and_loses_its_points_to_a_wide_follower():
    """A notch with a right angle at its bottom: (sqrt 2 - 1) r left there; points of the head lose (sqrt 2 - 1) o."""
    notched = loop((-40.0, 0.0), (40.0, 0.0), (40.0, 150.0), (20.0, 150.0), (0.0, 130.0), (-20.0, 150.0), (-40.0, 150.0))
    found = outline_reached(head(outline=notched), 10.0, 4.0)
    assert [p.at for p in found.left] == [pytest.approx((0.0, 130.0), abs=0.01)]
    assert found.left_depth == pytest.approx((math.sqrt(2) - 1) * 5, abs=0.01)
    corners = {(round(p.at[0]), round(p.at[1])): p.depth for p in found.lost}
    assert set(corners) == {(40, 150), (-40, 150), (20, 150), (-20, 150)}
    assert corners[40, 150] == pytest.approx((math.sqrt(2) - 1) * 4, abs=0.01)
    assert corners[20, 150] == pytest.approx(4 * (1 / math.sin(math.radians(67.5)) - 1), abs=0.01)


def test_the_neck_goes_on_behind_the_nut_line():
    """Neither the right angles at the foot nor a flare that starts there count: the neck is there."""
    flared = loop((-20.0, 0.0), (20.0, 0.0), (45.0, 40.0), (45.0, 150.0), (-45.0, 150.0), (-45.0, 40.0))
    for shape in (None, flared):
        found = outline_reached(head(outline=shape), 20.0, 6.0)
        assert all(p.at[1] > 30 for p in (*found.left, *found.lost))
        assert found.left == ()


@pytest.mark.parametrize("side", [1.0, -1.0])
def test_a_dent_beside_a_slanted_nut_counts_below_the_higher_end_of_its_line(side):
    """From 5.29 behind y = 0 on one side to as much before it on the other; a right-angled dent of the lower side at y = 0, and one behind the line."""
    rise = 30.0 * math.tan(math.radians(10.0))
    dent = [(30.0, -3.0), (27.0, 0.0), (30.0, 3.0)]
    shape = loop(*((side * x, y) for x, y in [(-30.0, rise), (30.0, -rise), *dent, (30.0, 150.0), (-30.0, 150.0)]))
    found = outline_reached(head(outline=shape), 2.0, 1.0)
    assert [p.at for p in found.left] == [pytest.approx((27.0 * side, 0.0), abs=0.01)]
    assert found.left_depth == pytest.approx(math.sqrt(2) - 1, abs=0.01)
    ends = {(round(p.at[0]), round(p.at[1])) for p in found.lost}
    assert {(30 * side, -3), (30 * side, 3)} <= ends and not {(30 * side, round(-rise)), (-30 * side, round(rise))} & ends


def test_no_wood_stands_between_the_neck_and_a_nut_end_that_is_not_straight():
    """Its dents are closed by the neck, so that no cutter comes there; a saw of them made every offset of the outline take minutes."""
    dented = [(-20.0, 0.0), *((x, 6.0 * (i % 2)) for i, x in enumerate(range(-18, 20, 2))), (20.0, 0.0)]
    shape = loop(*dented, (45.0, 40.0), (45.0, 150.0), (-45.0, 150.0), (-45.0, 40.0))
    assert len(routed_area(shape).interiors) == 0
    found = outline_reached(head(outline=shape), 3.0, 6.0)
    assert found.left == () and all(p.at[1] > 30 for p in found.lost)


def test_smooth_outlines_lose_and_keep_nothing():
    dome = Loop(nodes=(Node(at=(-30.0, 0.0)), Node(at=(30.0, 0.0)), Node(at=(30.0, 100.0), bulge=1.0), Node(at=(-30.0, 100.0))))
    found = outline_reached(head(outline=dome), 25.0, 6.0)
    assert found.left == found.lost == ()


# ---- against a second clipper ------------------------------------------------
SCALE = 1e6


def offset(paths, by):
    """Round offset by the other library, arcs within 0.0005 mm."""
    maker = pyclipper.PyclipperOffset(2.0, 0.0005 * SCALE)
    maker.AddPaths(paths, pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)
    return maker.Execute(by * SCALE)


def area(paths):
    return sum(pyclipper.Area(p) for p in paths) / SCALE ** 2


def minus(a, b):
    maker = pyclipper.Pyclipper()
    maker.AddPaths(a, pyclipper.PT_SUBJECT, True)
    if b:
        maker.AddPaths(b, pyclipper.PT_CLIP, True)
    return maker.Execute(pyclipper.CT_DIFFERENCE, pyclipper.PFT_NONZERO, pyclipper.PFT_NONZERO)


def scaled(points):
    path = [(round(x * SCALE), round(y * SCALE)) for x, y in points]
    return path if pyclipper.Orientation(path) else path[::-1]


def starlike(radii):
    return [(r * math.cos(2 * math.pi * i / len(radii)), r * math.sin(2 * math.pi * i / len(radii)))
            for i, r in enumerate(radii)]


SHAPES = st.lists(st.floats(14, 40).map(lambda r: round(r, 2)), min_size=5, max_size=9).map(starlike)


@settings(max_examples=40)
@given(SHAPES, st.sampled_from([3.0, 6.0, 8.0, 12.0]), st.sampled_from([0.0, 1.0, 2.5, 4.5]))
def test_what_the_follower_sweeps_is_the_slot_less_what_is_left_and_with_what_is_lost(points, cutter, grow):
    """Brute force by the other clipper: the follower's middle in the opening, then the cutter round it."""
    slot = [scaled(points)]
    found = slot_reached(drawn(*points), cutter, grow)
    opening = offset(slot, grow)
    swept = offset(offset(opening, -(cutter / 2 + grow)), cutter / 2)
    missed, spoiled = minus(slot, swept), minus(swept, slot)
    assert found.left_area == pytest.approx(area(missed), abs=0.02 * sum(map(math.hypot, *zip(*points, strict=True))) / 10)
    assert sum(p.size for p in found.lost) == pytest.approx(area(spoiled), abs=0.5)
    for patch in found.left[:3]:
        near = swept and min(_distance(patch.at, ring) for ring in swept)
        assert patch.depth == pytest.approx(near, abs=0.02)


def _distance(p, ring):
    best = math.inf
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1], strict=True):
        a, d = (ax / SCALE, ay / SCALE), ((bx - ax) / SCALE, (by - ay) / SCALE)
        size = d[0] ** 2 + d[1] ** 2
        t = max(0.0, min(1.0, ((p[0] - a[0]) * d[0] + (p[1] - a[1]) * d[1]) / size)) if size else 0.0
        best = min(best, math.hypot(p[0] - a[0] - t * d[0], p[1] - a[1] - t * d[1]))
    return best


@settings(max_examples=30)
@given(st.lists(st.floats(15, 45).map(lambda x: round(x, 1)), min_size=3, max_size=6), st.sampled_from([6.0, 10.0, 16.0]),
       st.sampled_from([1.0, 3.0]))
def test_outside_the_other_clipper_leaves_and_loses_the_same(half_widths, cutter, shrink):
    """A head of random half widths every 30 mm, compared above y = 1: the foot is the neck's."""
    right = [(20.0, 0.0), (20.0, 20.0), *((w, 50.0 + 30 * i) for i, w in enumerate(half_widths))]
    points = right + [(-x, y) for x, y in reversed(right)]
    found = outline_reached(head(outline=loop(*points)), cutter, shrink)
    body = [scaled([(20.0, -60.0), *right, *((-x, y) for x, y in reversed(right)), (-20.0, -60.0)])]
    neck = [scaled([(-100.0, -70.0), (100.0, -70.0), (100.0, 1.0), (-100.0, 1.0)])]
    left = area(minus(minus(offset(offset(body, cutter / 2), -cutter / 2), body), neck))
    lost = area(minus(minus(body, offset(offset(body, -shrink), shrink)), neck))
    assert found.left_area == pytest.approx(left, abs=0.25)
    assert sum(p.size for p in found.lost) == pytest.approx(lost, abs=0.25)
