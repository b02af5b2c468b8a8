"""Least ways out of slots and back inside outlines: by hand, and by brute force with an independent polygon clipper."""

import math

import numpy as np
import pyclipper
import pytest
import shapely
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from geometry.curves import circle
from geometry.layout import DrawnSlot, Slot, StraightSlot, loop_path, slot_path
from geometry.solids.slot_ways import _CHORDS, _core, into_outline, out_of_slot
from geometry.solids.sums import _swept, united, way_out
from geometry.solids.walls import Wall
from geometry.solids.ways_out import _nearest_room, from_slot, level_from_outside, strip, upright_from_outside
from tests.geometry.checks.heads import loop
from tests.outside.overlap_cases import drilling

SCALE = 1e6
DIAGONAL = math.sqrt(0.5)


def straight(nut, tip, width, depth=None):
    slot = Slot(id="s", shape=StraightSlot(nut_end=nut, tip_end=tip, width=width), depth=depth)
    return slot, Wall(slot_path(slot))


def shares(one, two):
    """The area in mm2 that two polygons share, by the independent clipper."""
    clip = pyclipper.Pyclipper()
    clip.AddPath([(round(x * SCALE), round(y * SCALE)) for x, y in one], pyclipper.PT_SUBJECT, True)
    clip.AddPath([(round(x * SCALE), round(y * SCALE)) for x, y in two], pyclipper.PT_CLIP, True)
    return sum(abs(pyclipper.Area(p)) for p in clip.Execute(pyclipper.CT_INTERSECTION, pyclipper.PFT_NONZERO,
                                                            pyclipper.PFT_NONZERO)) / SCALE ** 2


def test_a_bore_across_a_slot_leaves_it_endways_or_sideways_whichever_is_nearer():
    # The slot's wall stands at x = -6..6 from y = 0 to 60. A bore 8 wide ends 4 past the near wall: 4 back along itself.
    slot, wall = straight((0.0, 0.0), (0.0, 60.0), 12.0)
    out = from_slot(drilling((20.0, 30.0, 8.0), (-1.0, 0.0, 0.0), 18.0, 4.0), slot, wall)
    assert (out.depth, out.way) == (pytest.approx(4.0), pytest.approx((1.0, 0.0, 0.0)))
    # Beside the round end, 3 short of clearing it: the end reaches y = 66, the bore's flank lies at y = 63.
    out = from_slot(drilling((20.0, 67.0, 8.0), (-1.0, 0.0, 0.0), 40.0, 4.0), slot, wall)
    assert (out.depth, out.way) == (pytest.approx(3.0), pytest.approx((0.0, 1.0, 0.0)))


def test_the_deepest_corner_is_not_the_depth():
    # A bore 2 wide runs from x = 10 to -12 right across a slot 4 wide: no corner of either lies in the other, and the
    # nearest way out is 10 + 2 on over the far end, not 12 + 2 back.
    slot, wall = straight((0.0, -40.0), (0.0, 40.0), 4.0)
    out = from_slot(drilling((10.0, 0.0, 8.0), (-1.0, 0.0, 0.0), 22.0, 1.0), slot, wall)
    assert (out.depth, out.way[1]) == (pytest.approx(12.0), pytest.approx(0.0))


def test_out_below_a_blind_floor():
    # Axis 5 deep, floor at 6: straight down by 6 - 5 + 4 = 5, where the way in plan would be 10.
    slot, wall = straight((0.0, -40.0), (0.0, 40.0), 12.0, depth=6.0)
    out = from_slot(drilling((20.0, 0.0, 5.0), (-1.0, 0.0, 0.0), 24.0, 4.0), slot, wall)
    assert (out.depth, out.way) == (pytest.approx(5.0), pytest.approx((0.0, 0.0, 1.0)))
    # From the back to a level of 4, 2 above the floor: drilled 2 less deep.
    out = from_slot(drilling((0.0, 0.0, 16.0), (0.0, 0.0, -1.0), 12.0, 3.0), slot, wall)
    assert (out.depth, out.way) == (pytest.approx(2.0), pytest.approx((0.0, 0.0, 1.0)))
    # From the face there is no such way: 6 to the wall and a radius of 3 more.
    out = from_slot(drilling((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), 4.0, 3.0), slot, wall)
    assert out.depth == pytest.approx(9.0) and abs(out.way[0]) == pytest.approx(1.0)


def test_aslant_past_a_floor_and_a_round_end():
    """A bore along x below the round end of a slot of radius 6 whose floor is level with its axis: sinking by 4 sin t leaves
    a strip 4 cos t wide to either side, which lies 3 - 4 (1 - cos t) deep beside the end at y = 66."""
    slot, wall = straight((0.0, 0.0), (0.0, 60.0), 12.0, depth=8.0)
    out = from_slot(drilling((20.0, 67.0, 8.0), (-1.0, 0.0, 0.0), 40.0, 4.0), slot, wall)
    t = np.linspace(0, math.pi / 2, 100_001)
    # Squared: 16 sin^2 t + (4 cos t - 1)^2 = 17 - 8 cos t, least without sinking.
    assert out.depth == pytest.approx(np.sqrt(17 - 8 * np.cos(t)).min(), abs=1e-9) == pytest.approx(3.0)


def test_an_upright_bore_in_a_corner_of_the_outline():
    # Radius 5, 2 from both edges of a square corner: not 3 but 3 times the root of 2, along the diagonal.
    square = Wall(loop_path(loop((0.0, 0.0), (40.0, 0.0), (40.0, 40.0), (0.0, 40.0))))
    out = upright_from_outside((2.0, 2.0), 5.0, square)
    assert out.depth == pytest.approx(3 * math.sqrt(2), abs=1e-6) and out.way[:2] == pytest.approx((DIAGONAL, DIAGONAL), abs=1e-6)
    out = upright_from_outside((2.0, 20.0), 5.0, square)
    assert (out.depth, out.plan) == (pytest.approx(3.0), pytest.approx((1.0, 0.0)))
    assert upright_from_outside((2.0, 20.0), 30.0, square) is None
    # A pin may as well leave: it lies 2 inside the edge, so 5 + 2 out, but 3 in.
    assert upright_from_outside((-1.0, 20.0), 5.0, square, either_side=True).plan == pytest.approx((-1.0, 0.0))


def test_two_slots_and_a_slot_beyond_the_outline():
    one, two = straight((0.0, 0.0), (0.0, 60.0), 12.0), straight((9.0, 10.0), (9.0, 50.0), 10.0)
    depth, way = out_of_slot(*one, *two)
    assert (depth, way) == (pytest.approx(6 + 5 - 9), pytest.approx((-1.0, 0.0)))
    square = Wall(loop_path(loop((-10.0, -10.0), (40.0, -10.0), (40.0, 64.0), (-10.0, 64.0))))
    assert into_outline(*one, square) == (pytest.approx(2.0, abs=0.001), pytest.approx((0.0, -1.0), abs=1e-3))
    assert into_outline(*two, square) is None


@settings(max_examples=25)
@given(st.floats(0, 6.28), st.tuples(st.floats(-25, 35), st.floats(-25, 35)), st.floats(5, 30), st.floats(0.8, 5),
       st.floats(8, 12), st.floats(15, 30), st.floats(-0.3, 0.3))
def test_out_of_a_hollow_slot_against_a_clipper(turn, start, length, radius, w, arm, bulge):
    shape = loop((0.0, 0.0), (2.4 * w, 0.0, bulge), (2.4 * w, arm), (1.4 * w, arm), (1.4 * w, w), (w, w), (w, arm), (0.0, arm))
    slot = Slot(id="s", shape=DrawnSlot(loop=shape))
    wall = Wall(slot_path(slot))
    bore = drilling((*start, 8.0), (math.cos(turn), math.sin(turn), 0.0), length, radius)
    out = from_slot(bore, slot, wall)
    rim, corners = Wall(wall.path, 1e-4).points[:-1], strip(bore)
    if out.depth <= 0:
        assert shares(corners, rim) < 1e-3
        return
    assert shares(corners + (out.depth + 0.002) * np.array(out.plan), rim) < 1e-4
    if out.depth <= 0.002:  # it touches: there is no shorter way to try
        return
    for k in range(180):
        n = np.array([math.cos(k * math.pi / 90), math.sin(k * math.pi / 90)])
        assert shares(corners + (out.depth - 0.002) * n, rim) > 0


@settings(max_examples=25)
@given(st.floats(0, 6.28), st.floats(15, 34), st.floats(0.8, 5), st.lists(st.floats(25, 40), min_size=6, max_size=6),
       st.floats(-0.25, 0.25))
def test_back_inside_an_outline_against_a_clipper(turn, length, radius, spokes, bulge):
    corners = [(r * math.cos(k * math.pi / 3), r * math.sin(k * math.pi / 3), bulge) for k, r in enumerate(spokes)]
    outline = Wall(loop_path(loop(*corners)).counter_clockwise())
    bore = drilling((0.0, 0.0, 8.0), (math.cos(turn), math.sin(turn), 0.0), length, radius)
    out = level_from_outside(bore, Wall(outline.path, 5e-4).points)
    rim, shape = Wall(outline.path, 5e-4).points[:-1], strip(bore)
    whole = 2 * radius * length
    if out is None:
        assert shares(shape, rim) == pytest.approx(whole, abs=1e-3)
        return
    assert shares(shape + (out.depth + 0.002) * np.array(out.plan), rim) == pytest.approx(whole, abs=1e-3)
    for k in range(180):
        n = np.array([math.cos(k * math.pi / 90), math.sin(k * math.pi / 90)])
        if k % 4 == 0 and out.depth > 0.01:
            assert shares(shape + (out.depth - 0.01) * n, rim) < whole - 1e-6


@given(st.lists(st.tuples(st.floats(-20, 20), st.floats(-20, 20)), min_size=2, max_size=9, unique=True),
       st.tuples(st.floats(-15, 15), st.floats(-15, 15)), st.tuples(st.floats(-15, 15), st.floats(-15, 15)))
def test_what_a_line_sweeps_along_a_chain_is_what_it_sweeps_along_each_chord(points, one, two):
    points = [*points, points[0]]
    chain, b = np.round(np.array(points), 3), np.round(np.array([one, two]), 3)
    each = [shapely.MultiPoint((chain[i:i + 2, None] + b[None]).reshape(-1, 2)).convex_hull for i in range(len(chain) - 1)]
    # On a grid: of two areas that differ by rounding alone the library may else lose a corner.
    apart = shapely.symmetric_difference(united(_swept(chain, b)), shapely.union_all([hull for hull in each if hull.area > 0]), grid_size=1e-9)
    assert apart.area < 1e-6


def test_a_slot_far_outside_the_outline_is_led_back():
    square = Wall(loop_path(loop((-10.0, -10.0), (40.0, -10.0), (40.0, 64.0), (-10.0, 64.0))))
    depth, way = into_outline(*straight((500.0, 0.0), (500.0, 50.0), 12.0), square)
    assert (depth, way) == (pytest.approx(466.0, abs=0.001), pytest.approx((-1.0, 0.0), abs=1e-3))


def _drawn(*corners):
    slot = Slot(id="s", shape=DrawnSlot(loop=loop(*corners)))
    return slot, Wall(slot_path(slot))


def _places(outline, core, radius):
    """The shifts that bring every point of a rim inside, asked one by one: all places inside are among them, for the rim is only
    a row of points half a millimetre apart. Between two of them the wall of a hollow corner may stand some hundredths deep."""
    rim = shapely.segmentize(shapely.MultiPoint(core).convex_hull, 0.5)
    room = shapely.buffer(outline.area, -radius, quad_segs=64) if radius else outline.area
    points = shapely.get_coordinates(rim)
    found = shapely.transform(room, lambda xy: xy - points[0])
    for p in points[1:]:
        found = shapely.intersection(found, shapely.transform(room, lambda xy, p=p: xy - p))
    return found


@example(True, 0.0, -1.0, 3.25, 24.0, 5.0, -0.28125)  # the sum with the whole outline had a hole of no width
@settings(max_examples=40)
@given(st.booleans(), st.floats(-70, 90), st.floats(-60, 130), st.floats(0, 6.28), st.floats(10, 50), st.floats(5, 16),
       st.floats(-0.3, 0.3))
def test_the_way_back_inside_leads_there_and_none_is_shorter(drawn, x, y, turn, length, width, bulge):
    """Shorter than by points of the rim one by one no way can be, longer than of a slot larger all round by what the chords stray none
    is, and the clipper finds all inside at its end."""
    outline = Wall(loop_path(loop((-40.0, -10.0, bulge), (40.0, -10.0), (46.0, 100.0, 0.2), (-46.0, 100.0))).counter_clockwise())
    way = (math.cos(turn), math.sin(turn))
    end = (x + length * way[0], y + length * way[1])
    out = (width * -way[1], width * way[0])
    slot, wall = _drawn((x, y), end, (end[0] + out[0], end[1] + out[1], 0.3), (x + out[0], y + out[1], 0.2)) if drawn else straight(
        (x, y), end, width)
    found = into_outline(slot, wall, outline)
    core, radius, _ = _core(slot, wall)
    places = _places(outline, core, radius)
    if found is None:
        assert shapely.distance(places, shapely.Point(0, 0)) < 1e-3 or shapely.buffer(places, -0.1).is_empty, "inside, or hardly a place"
        return
    least = shapely.distance(places, shapely.Point(0, 0))
    most = shapely.distance(_places(outline, core, radius + 2 * _CHORDS), shapely.Point(0, 0))
    assert least - 2e-3 <= found[0] <= most + 0.05
    moved = shapely.transform(wall.area, lambda xy: xy + (found[0] + 0.002) * np.array(found[1]))
    assert shapely.difference(moved, outline.area).area < 0.01


def test_a_round_hole_is_led_back():
    square = Wall(loop_path(loop((-10.0, -10.0), (40.0, -10.0), (40.0, 64.0), (-10.0, 64.0))))
    depth, way = into_outline(*straight((38.0, 20.0), (38.0, 20.0), 12.0), square)
    assert (depth, way) == (pytest.approx(4.0, abs=0.001), pytest.approx((-1.0, 0.0), abs=1e-3))


def test_a_slot_with_no_place_inside():
    square = Wall(loop_path(loop((-10.0, -10.0), (40.0, -10.0), (40.0, 64.0), (-10.0, 64.0))))
    assert into_outline(*straight((0.0, 0.0), (0.0, 90.0), 12.0), square) is None
    assert into_outline(*_drawn((0.0, 0.0), (60.0, 0.0), (60.0, 80.0), (0.0, 80.0)), square) is None


@example([(2.5, 1), (-1, 0), (0, 7), (13.5, 0), (-3, -18)], [(0, 0), (1.5, 4), (-7, 0)])  # 16 mm2 were lost without a grid
@given(st.lists(st.tuples(st.floats(-20, 20), st.floats(-20, 20)), min_size=3, max_size=7, unique=True),
       st.lists(st.tuples(st.floats(-15, 15), st.floats(-15, 15)), min_size=3, max_size=4, unique=True))
def test_what_a_shape_sweeps_along_a_chain_is_what_it_sweeps_along_each_chord(points, corners):
    chain, b = np.round(np.array([*points, points[0]]), 3), np.round(np.array(corners), 3)
    assume(shapely.Polygon(chain).is_valid)  # where a chain runs back over itself, the library's union may lose a corner
    each = [shapely.MultiPoint((chain[i:i + 2, None] + b[None]).reshape(-1, 2)).convex_hull for i in range(len(chain) - 1)]
    # On a grid: of two areas that differ by rounding alone the library may else lose a corner.
    apart = shapely.symmetric_difference(united(_swept(chain, b)), shapely.union_all([hull for hull in each if hull.area > 0]), grid_size=1e-9)
    assert apart.area < 1e-6


def test_a_hole_of_no_width_is_no_way_out():
    """A square of 20 mm with a real hole of 2 mm at a corner, and a crack that rounding left beside the middle."""
    square = shapely.box(-10, -10, 10, 10)
    crack = shapely.Polygon([(1, -1), (1 + 1e-12, 1), (1, 1)])
    cracked = shapely.Polygon(square.exterior, [crack.exterior])
    assert way_out(cracked)[0] == pytest.approx(10.0)
    holed = shapely.Polygon(square.exterior, [shapely.box(4, -1, 6, 1).exterior, crack.exterior])
    assert way_out(holed) == (pytest.approx(4.0), pytest.approx((1.0, 0.0)))
    apart = shapely.MultiPolygon([cracked, shapely.box(20, 0, 20.0001, 0.0001)])
    assert way_out(apart)[0] == pytest.approx(10.0)


@pytest.mark.parametrize("side", [1.0, -1.0])
def test_the_way_back_past_a_nick_is_as_short_on_either_side(side):
    """The wall above a bore 6 wide comes down to 92.6 where the bore's flank lies at 93; behind that a notch runs back to the edge."""
    chain = np.array([(39.0, 93.5), (37.0, 92.6), (33.0, 96.0), (20.0, 96.0), (20.0, 110.0), (40.0, 110.0)]) * (side, 1.0)
    out = level_from_outside(drilling((side * 40.0, 90.0, 8.0), (-side, 0.0, 0.0), 80.0, 3.0), chain[::int(side)])
    assert (out.depth, out.way) == (pytest.approx(0.4, abs=1e-9), pytest.approx((0.0, -1.0, 0.0), abs=1e-9))


@pytest.mark.parametrize("turn", [0.0, 0.3, 2.0])
def test_beside_a_curve_a_way_back_is_no_longer_than_it_takes(turn):
    """By hand: of a square 10 wide, its outer side 52 from the middle of a disc of 50, both corners come to lie on the rim."""
    disc, way = Wall(circle((0.0, 0.0), 50.0)), (math.cos(turn), math.sin(turn))
    square = [(u * way[0] - w * way[1], u * way[1] + w * way[0]) for u, w in ((42.0, -5.0), (52.0, -5.0), (52.0, 5.0), (42.0, 5.0))]
    slot = Slot(id="s", shape=DrawnSlot(loop=loop(*square)))
    depth, back = into_outline(slot, Wall(slot_path(slot)), disc)
    assert -1e-4 <= depth - (52.0 - math.sqrt(50.0 ** 2 - 5.0 ** 2)) <= 2e-3
    assert back == pytest.approx((-way[0], -way[1]), abs=1e-2)


def test_an_outline_without_an_inside_offers_no_way_back():
    assert _nearest_room((0.0, 0.0), 3.0, shapely.Polygon(), 1.0) is None
    assert _nearest_room((0.0, 0.0), 3.0, shapely.Polygon(), -1.0) is None
