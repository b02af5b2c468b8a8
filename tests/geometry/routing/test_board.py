"""The template itself: webs, pins, openings that close, and whether the router stands on it."""

import math

import pytest
from msgspec.structs import replace
from shapely.geometry import box

from geometry.layout import GuideBush, Pin, Template
from geometry.routing.board import board_notes, stands, template_board
from geometry.routing.follower import follower_of
from tests.geometry.routing.specimens import BUSH, bit, drawn, head, loop, straight

EIGHT = bit(cutter=8, cutting=25, shank=8)


def notes(layout, follower, kind):
    return [n for n in board_notes(layout, follower) if n.kind == kind]


def test_the_web_in_the_template_is_thinner_than_in_the_wood():
    """Slots 12 wide, 20 apart: 8 mm of wood between them. Offset (17 - 8) / 2 = 4.5: the openings meet; 2.5 leaves 3 mm."""
    layout = head(straight(width=12, x=-10, id="a"), straight(width=12, x=10, id="b"))
    (met,) = notes(layout, follower_of(EIGHT, BUSH), "openings meet")
    assert met.of == ("a", "b")
    slim = GuideBush(id="slim", outer=13, inner=11, length=5)
    (thin,) = notes(layout, follower_of(EIGHT, slim), "thin web")
    assert thin.measured == pytest.approx(3, abs=0.005) and thin.needed == 6
    assert thin.where[0] == pytest.approx(0, abs=0.01)
    assert "Only 3 mm of template is left between a and b" in thin.words
    bare = follower_of(bit(cutter=8, shank=8), None)
    assert notes(layout, bare, "thin web") == []


def test_the_rail_of_the_template():
    """Rail 40 - 26 - 6 = 8 mm of wood; the opening grows 2.5, the outside shrinks 2.5: 3 mm of template."""
    layout = head(straight(width=12, x=26, id="a"))
    slim = GuideBush(id="slim", outer=13, inner=11, length=5)
    (thin,) = notes(layout, follower_of(EIGHT, slim), "thin web")
    assert thin.of == ("a", "outline") and thin.measured == pytest.approx(3, abs=0.01)
    large = replace(layout, template=Template(board="blank"))
    assert notes(large, follower_of(EIGHT, slim), "thin web") == []


def test_a_pin_in_the_waste_needs_a_board_as_large_as_the_blank():
    layout = head(pins=(Pin(id="far", at=(0.0, 190.0)), Pin(id="in", at=(0.0, 100.0)), Pin(id="edge", at=(35.0, 100.0))))
    follower = follower_of(EIGHT, None)
    (outside,) = notes(layout, follower, "pin outside")
    assert outside.of == ("far",) and outside.measured == pytest.approx(-10, abs=0.01)
    (near,) = notes(layout, follower, "pin near an edge")
    assert near.of == ("edge",) and near.measured == pytest.approx(2, abs=0.01)
    assert notes(replace(layout, template=Template(board="blank")), follower, "pin outside") == []


def test_a_cutter_wider_than_its_follower_closes_a_slim_opening():
    layout = head(straight(width=5))
    (closed,) = notes(layout, follower_of(bit(cutter=14, shank=8), None), "closed opening")
    assert closed.of == ("slot",) and "closes up" in closed.words
    dumbbell = drawn((0.0, 40.0), (20.0, 40.0), (20.0, 57.0), (40.0, 57.0), (40.0, 40.0), (60.0, 40.0), (60.0, 70.0), (40.0, 70.0),
                     (40.0, 62.0), (20.0, 62.0), (20.0, 70.0), (0.0, 70.0))
    (apart,) = notes(head(dumbbell), follower_of(bit(cutter=14, shank=8), None), "opening in pieces")
    assert apart.measured == 2


def test_the_router_tips_where_its_axis_leaves_its_support():
    """Half a board: the axis stands 10 mm inside its edge, or tips 5 mm outside it."""
    board = box(-200, -200, 0, 200)
    assert stands(board, (-10.0, 0.0), 150.0) == pytest.approx(10, abs=0.01)
    assert stands(board, (5.0, 0.0), 150.0) == pytest.approx(-5, abs=0.01)
    assert stands(board, (100.0, 0.0), 150.0) == -75


def test_a_small_base_tips_into_a_wide_opening():
    """Opening 60 wide: a base of 90 spans it, one of 50 falls in."""
    layout = head(drawn((-30.0, 40.0), (30.0, 40.0), (30.0, 140.0), (-30.0, 140.0)))
    layout = replace(layout, template=Template(board="blank"))
    follower = follower_of(EIGHT, None)
    assert notes(layout, follower, "base cannot stand") == []
    small = replace(layout, rack=replace(layout.rack, router=replace(layout.rack.router, base=50.0)))
    (tips,) = notes(small, follower, "base cannot stand")
    assert tips.measured < 0 and "tips into the opening" in tips.words


def test_round_the_outside_the_base_overhangs():
    """Beside a straight edge a shank of 8 stands 4 mm off it: a little under half of the base rests; at a corner a quarter."""
    (over,) = notes(head(), follower_of(EIGHT, None), "base overhangs")
    assert 0.15 < over.measured < 0.25 and abs(over.where[0]) > 39 and over.where[1] > 179


def test_beside_a_slanted_nut_the_base_is_asked_from_its_line_on():
    """On the treble side the line ends 12.4 mm behind y = 0: a spike of the outline between the two leaves the base least to stand on."""
    deep = 34.0 * math.tan(math.radians(20.0))
    outline = loop((-34.0, deep), (34.0, -deep), (34.0, -8.0), (80.0, -6.0), (34.0, -4.0), (34.0, 180.0), (-34.0, 180.0))
    layout = replace(head(), outline=outline, nut=replace(head().nut, slant=20.0))
    over, = notes(layout, follower_of(EIGHT, None), "base overhangs")
    assert over.where[0] > 60.0 and -15.0 < over.where[1] < 0.0


def test_the_board_is_what_is_left():
    """80 x 180 set in by 4.5 but at the nut line, less an opening of 14 x 100 with round ends (17 - 8 = 9 wider than 5), less two pin holes of 6."""
    layout = head(straight(width=5, length=100))
    board = template_board(layout, 4.5)
    opening = 14 * 100 + 3.14159 * 49
    assert board.area.area == pytest.approx((80 - 9) * (180 - 4.5) - opening - 2 * 3.14159 * 9, abs=1)
