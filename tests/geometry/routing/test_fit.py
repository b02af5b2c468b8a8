"""Which bits fit a slot: closed forms, and an independent clipper."""

import math

import numpy as np
import pyclipper
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check
from geometry.curves.polygons import polygon
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, GuideBush, Loop, Node, Rack, RouterBit, Slot, Template
from geometry.layout.slots import slot_path
from geometry.routing import fit
from geometry.routing.fit import (
    WITHIN,
    enters,
    narrowest,
    passes,
    passes_below,
    pieces,
    template_spill,
    tightest,
    wood_left,
)
from geometry.routing.follower import follower_of, template_offset
from tests.geometry.checks.heads import drawn, head, slot

SCALE = 10_000


def neck(width, room=20.0, length=10.0):
    """Two square rooms joined by a straight neck."""
    h, r = width / 2, room / 2
    return drawn("neck", (-r, 0.0), (r, 0.0), (r, room), (h, room), (h, room + length), (r, room + length),
                 (r, 2 * room + length), (-r, 2 * room + length), (-r, room + length), (-h, room + length), (-h, room),
                 (-r, room))


def clipped(area, by):
    """Pieces of the area grown by `by` mm, by the clipper."""
    offset = pyclipper.PyclipperOffset(arc_tolerance=0.0005 * SCALE)
    ring = [(round(x * SCALE), round(y * SCALE)) for x, y in area.exterior.coords[:-1]]
    offset.AddPath(ring, pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)
    return offset.Execute(by * SCALE)


def test_a_straight_slot_takes_its_own_width():
    one = slot(width=12.7)
    area = polygon(slot_path(one))
    assert narrowest(one) == 12.7
    assert enters(one, area, 12.7) == 1 and enters(one, area, 12.7001) == 0
    assert wood_left(one, area, 8.0) is None
    assert tightest(one) == pytest.approx(12.7)


@settings(max_examples=25)
@given(st.floats(3, 18))
def test_a_neck_sets_the_largest_bit(width):
    assert narrowest(neck(width)) == pytest.approx(width, abs=1e-9)


@pytest.mark.parametrize(("wrong", "width"), [(0.0, 7.31), (7.1, 7.32), (7.6, 7.33), (19.0, 7.34), (math.inf, 7.35), (math.nan, 7.36)])
def test_where_the_exact_wall_seems_to_tell_otherwise_what_chords_are_sure_of_is_told(wrong, width, monkeypatch):
    monkeypatch.setattr(fit, "neck_width", lambda *_: wrong)
    assert width - 0.1 < narrowest(neck(width)) <= width


@pytest.mark.parametrize(("wrong", "side"), [(0.0, 9.01), (8.7, 9.02), (9.4, 9.03), (math.inf, 9.04)])
def test_so_it_is_of_one_room_without_a_neck(wrong, side, monkeypatch):
    monkeypatch.setattr(fit, "room_width", lambda *_: wrong)
    room = drawn("room", (0.0, 0.0), (side, 0.0), (side, 40.0), (0.0, 40.0))
    assert side - 0.1 < narrowest(room) <= side
    tiny = drawn("tiny", (0.0, 0.0), (side / 1000, 0.0), (side / 1000, 1.0), (0.0, 1.0))
    assert 0.0 <= narrowest(tiny) <= side / 1000


@settings(max_examples=15)
@given(st.floats(4, 16), st.floats(2, 19))
def test_the_clipper_agrees_on_how_many_places_a_cutter_finds(width, diameter):
    area = polygon(slot_path(neck(width)))
    if min(abs(diameter - width), abs(diameter - 20.0)) > WITHIN:
        assert pieces(area, diameter) == len(clipped(area, -diameter / 2))


def test_the_clipper_agrees_on_the_largest_bit_of_a_curved_slot():
    quarter = math.tan(math.pi / 8)
    waist = drawn("waist", (-12.0, 0.0), (12.0, 0.0), (12.0, 20.0, -quarter), (4.25, 27.75), (4.25, 32.0),
                  (12.0, 40.0), (12.0, 60.0), (-12.0, 60.0), (-12.0, 40.0), (-4.25, 32.0), (-4.25, 27.75, -quarter),
                  (-12.0, 20.0))
    area = polygon(slot_path(waist))
    low, high = 1.0, 24.0
    while high - low > 0.001:
        middle = (low + high) / 2
        low, high = (middle, high) if len(clipped(area, -middle / 2)) == 1 else (low, middle)
    assert narrowest(waist) == pytest.approx(low, abs=WITHIN)
    assert passes(area, low - 0.05) and not passes(area, low + 0.05)


@settings(max_examples=15)
@given(st.floats(3, 12), st.floats(0.05, 0.5))
def test_a_bit_that_a_small_room_behind_a_neck_would_take_is_told_the_neck(width, more):
    """A wider one never finds the room: to it the neck is a corner."""
    h, w, r = width / 2, (width + more) / 2, 10.0
    slot = drawn("bulb", (-r, 0.0), (r, 0.0), (r, 30.0), (h, 30.0), (h, 34.0), (w, 34.0), (w, 34.0 + 2 * w), (-w, 34.0 + 2 * w),
                 (-w, 34.0), (-h, 34.0), (-h, 30.0), (-r, 30.0))
    area, cutter = polygon(slot_path(slot)), width + more / 2
    assert pieces(area, cutter) == len(clipped(area, -cutter / 2)) == 2
    assert passes(area, width + more + 1.0)
    assert passes_below(slot, cutter) == pytest.approx(width, abs=WITHIN)
    bit = RouterBit(id="bit", cutter=cutter, cutting_length=20.0, shank=8.0, stick_out=40.0, bearing="shank", bearing_diameter=cutter)
    layout = head(slots=(slot,), rack=Rack(bits=(bit,)), template=Template(bit="bit", thickness=6.0))
    snag = next(snag for snag in check(layout).snags if snag.kind == "bit-too-wide")
    assert snag.measured == pytest.approx(width, abs=WITHIN) and snag.measured < cutter


def test_square_corners_keep_wood():
    square = drawn("s", (0.0, 0.0), (20.0, 0.0), (20.0, 30.0), (0.0, 30.0))
    left = wood_left(square, polygon(slot_path(square)), 10.0)
    assert left.area == pytest.approx(100 * (1 - math.pi / 4), rel=2e-3)
    assert left.depth == pytest.approx(5 * (math.sqrt(2) - 1), abs=1e-3)
    assert len(left.places) == 4
    corners = ((0.0, 0.0), (20.0, 0.0), (20.0, 30.0), (0.0, 30.0))
    assert {min(corners, key=lambda corner: math.dist(place, corner)) for place in left.places} == set(corners)
    assert all(math.dist((10.0, 15.0), place) > 15.0 for place in left.places)
    assert tightest(square) == 0.0


@pytest.mark.parametrize("width", [6.0, 12.0, 12.7])
def test_a_drawn_slot_takes_a_cutter_as_wide_as_itself_and_keeps_no_wood(width):
    """Two straight walls and two half circles: the cutter sweeps all of it, though chords of the ends lie inside them."""
    half = width / 2
    round_ended = drawn("r", (-half, 90.0), (-half, half, 1.0), (half, half), (half, 90.0, 1.0))
    area = polygon(slot_path(round_ended))
    assert enters(round_ended, area, width) == 1 and wood_left(round_ended, area, width) is None
    assert wood_left(round_ended, area, width - 0.01) is None


def test_a_rounded_corner_takes_the_bit_of_its_radius():
    quarter = math.tan(math.pi / 8)
    rounded = drawn("r", (5.0, 0.0), (15.0, 0.0, quarter), (20.0, 5.0), (20.0, 25.0, quarter), (15.0, 30.0),
                    (5.0, 30.0, quarter), (0.0, 25.0), (0.0, 5.0, quarter))
    assert tightest(rounded) == pytest.approx(10.0)
    area = polygon(slot_path(rounded))
    assert wood_left(rounded, area, 10.0) is None
    assert wood_left(rounded, area, 12.0).area == pytest.approx((36 - 25) * (4 - math.pi), rel=5e-3)


def test_a_corner_of_a_free_curve_takes_the_bit_of_its_sharpest_bend():
    """Of 200,000 places along the curve, by the derivatives of its polynomials; the other corners are rounder."""
    quarter, ends = math.tan(math.pi / 8), np.array([(20.0, 20.0), (20.0, 27.0), (18.0, 30.0), (12.0, 30.0)])
    x, y = (np.poly1d([-a + 3 * b - 3 * c + d, 3 * a - 6 * b + 3 * c, 3 * b - 3 * a, a]) for a, b, c, d in ends.T)
    t = np.linspace(0.0, 1.0, 200_001)
    dx, dy, ddx, ddy = x.deriv()(t), y.deriv()(t), x.deriv(2)(t), y.deriv(2)(t)
    sharpest = ((dx * ddy - dy * ddx) / np.hypot(dx, dy) ** 3).max()
    assert 4.0 < 1 / sharpest < 7.0
    nodes = (Node(at=(8.0, 0.0)), Node(at=(12.0, 0.0), bulge=quarter), Node(at=(20.0, 8.0)), Node(at=(20.0, 20.0), handles=((20.0, 27.0), (18.0, 30.0))),
             Node(at=(12.0, 30.0)), Node(at=(8.0, 30.0), bulge=quarter), Node(at=(0.0, 22.0)), Node(at=(0.0, 8.0), bulge=quarter))
    assert tightest(Slot(id="r", shape=DrawnSlot(loop=Loop(nodes=nodes)))) == pytest.approx(2 / sharpest, rel=1e-8)


@pytest.mark.parametrize(("tool", "words"), [
    ({"shank": 8.1}, "8.1 mm shank does not pass"), ({"cutter": 8.1}, "8.1 mm cutter does not pass"),
    ({"bearing": "tip", "bearing_diameter": 8.1}, "8.1 mm bearing does not pass")])
def test_what_is_wider_than_a_bush_does_not_pass_it(tool, words):
    made, bush = RouterBit(id="a", cutter=8.0, cutting_length=20.0, shank=8.0, stick_out=40.0), GuideBush(id="b", outer=10.0, inner=8.0, length=5.0)
    assert follower_of(made, bush).offset == pytest.approx(1.0), "as wide as its bore: half of 10 less half of 8"
    with pytest.raises(GeometryError, match=words):
        follower_of(replace(made, **tool), bush)
    with pytest.raises(GeometryError, match="a bearing without a diameter"):
        follower_of(replace(made, bearing="tip", bearing_diameter=None), None)
    assert template_offset(Template(), Rack(bits=(made,))) == 0.0, "no bit is chosen"


def test_a_follower_no_larger_than_its_cutter_spills_nothing():
    area = polygon(slot_path(neck(8.0)))
    shank = RouterBit(id="a", cutter=8.0, cutting_length=20.0, shank=8.0, stick_out=40.0)
    assert template_spill(area, follower_of(shank, None)) is None
