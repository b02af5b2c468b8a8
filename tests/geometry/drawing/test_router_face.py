"""What the Router stage puts on the face: hatching inside its wood, the tightest place, arrows the right way round."""

import math
from itertools import combinations

import pytest
from msgspec.structs import replace
from shapely.geometry import LineString, Point, Polygon, box

from geometry.curves.polygons import polygon
from geometry.drawing import Area, Cross, Label, Stroke
from geometry.drawing.marks import STYLES
from geometry.drawing.room import _box
from geometry.drawing.router_face import HATCH, arrow, face_groups, hatching, note_marks, tightest_place
from geometry.layout import slot_path
from geometry.routing import plan_routing
from geometry.routing.board import board_notes
from tests.geometry.routing.specimens import BRAD, bit, drawn, head, straight, with_rack

BEARING = bit("bearing 12", cutter=12, cutting=16, bearing="shank", high=5, out=38)


def groups(slot):
    layout = with_rack(head(slot), BEARING, drills=(BRAD,))
    return face_groups(layout, plan_routing(layout))


def test_the_wood_left_in_square_corners_is_hatched_and_labelled():
    """6 (sqrt 2 - 1) = 2.49 mm in each of four corners."""
    found = groups(drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0)))["left"]
    assert sum(isinstance(mark, Area) for mark in found) == 4
    assert [mark.text for mark in found if isinstance(mark, Label)] == ["2.5 mm"] * 4
    areas = [polygon(mark.outer) for mark in found if isinstance(mark, Area)]
    lines = [mark.path for mark in found if isinstance(mark, Stroke)]
    assert len(lines) >= 8
    for line in lines:
        assert any(area.buffer(0.01).covers(LineString([line.start, line.end])) for area in areas)


def test_depths_of_two_slots_beside_a_narrow_web_do_not_lie_on_each_other():
    """Square slots 8 mm apart: the words of their inner corners, each about 6 mm wide, have no room beside each other in between."""
    slots = [drawn((x, 40.0), (x + 16.0, 40.0), (x + 16.0, 140.0), (x, 140.0), id=id) for x, id in ((-20.0, "one"), (4.0, "two"))]
    layout = with_rack(head(*slots), BEARING, drills=(BRAD,))
    found = [mark for mark in face_groups(layout, plan_routing(layout))["left"] if isinstance(mark, Label)]
    boxes = [box(*_box(mark)) for mark in found]
    assert len(found) == 8 and not any(one.intersects(other) for one, other in combinations(boxes, 2))


def test_each_slot_shows_the_opening_of_its_own_template():
    """Two slots 30 mm apart, 13 wide, a bearing as wide as its cutter: each opening is its own slot's, 13 mm wide about its middle."""
    layout = with_rack(head(straight(x=-15.0, id="one"), straight(x=15.0, id="two")), BEARING, drills=(BRAD,))
    lines = {mark.owner: mark.path for mark in face_groups(layout, plan_routing(layout))["template"]}
    assert {name: (path.box[0], path.box[2]) for name, path in lines.items() if name != "outline"} == {
        "one": pytest.approx((-21.5, -8.5)), "two": pytest.approx((8.5, 21.5))}


def test_hatching_lies_evenly_across():
    lines = hatching(Polygon([(0, 0), (10, 0), (10, 4), (0, 4)]))
    assert all(b[1] - a[1] == pytest.approx(b[0] - a[0]) for a, b in lines)
    feet = sorted(a[0] - a[1] for a, b in lines)
    assert {round((y - x) / math.sqrt(2), 6) for x, y in zip(feet, feet[1:], strict=False)} == {HATCH}
    assert len(lines) == pytest.approx(14 / math.sqrt(2) / HATCH, abs=2)


def test_the_narrowest_place_of_an_hourglass_is_its_waist():
    slot = drawn((-9.0, 40.0), (9.0, 40.0), (5.5, 90.0), (9.0, 140.0), (-9.0, 140.0), (-5.5, 90.0))
    a, b = tightest_place(slot)
    assert (a[1] + b[1]) / 2 == pytest.approx(90, abs=1.5) and math.dist(a, b) == pytest.approx(11, abs=0.3)
    area = polygon(slot_path(slot))
    assert all(area.exterior.distance(Point(p)) < 1e-6 for p in (a, b))


def test_a_straight_slot_is_measured_across_its_middle():
    a, b = tightest_place(straight(width=13.0))
    assert sorted((a, b)) == [pytest.approx((-6.5, 90.0)), pytest.approx((6.5, 90.0))]


def test_feed_arrows_go_counter_clockwise_outside_and_clockwise_inside():
    found = groups(straight())["grain"]
    shafts = [mark for mark in found if mark.style == "feed" and len(mark.path.segments) == 1]

    def turns(mark, middle):
        (ax, ay), (bx, by) = mark.path.start, mark.path.end
        mx, my = (ax + bx) / 2 - middle[0], (ay + by) / 2 - middle[1]
        return mx * (by - ay) - my * (bx - ax)
    outside = [mark for mark in shafts if mark.owner == "outline"]
    inside = [mark for mark in shafts if mark.owner == "slot"]
    assert len(outside) >= 8 and len(inside) == 2
    assert all(turns(mark, (0.0, 90.0)) > 0 for mark in outside)
    assert all(turns(mark, (0.0, 90.0)) < 0 for mark in inside)


def test_an_arrow_has_its_barbs_at_its_tip():
    shaft, barbs = arrow((0.0, 0.0), (0.0, 1.0), "x")
    assert shaft.path.end == pytest.approx((0.0, 3.5))
    assert barbs.path.segments[0].end == pytest.approx((0.0, 3.5)) and barbs.path.start[1] < 3.5


def test_template_lines_are_those_of_the_plan_and_every_style_is_known():
    found = groups(straight(width=13.0))
    slot_line, outline = found["template"]
    assert slot_line.path.box == pytest.approx(slot_path(straight(width=13.0)).box)
    assert outline.owner == "outline"
    assert {mark.style for marks in found.values() for mark in marks} <= set(STYLES)


def test_a_thin_web_of_the_template_is_marked_in_its_middle():
    """Slots 13 wide at -6 and 12: 18 - 13 = 5 mm of board between their openings, where 6 are wanted."""
    layout = with_rack(head(straight(x=-6.0, id="a"), straight(x=12.0, id="b")), BEARING, drills=(BRAD,))
    notes = board_notes(layout, plan_routing(layout).slots[0].best.passes[0].follower)
    crosses = [mark for mark in note_marks(notes) if isinstance(mark, Cross)]
    words = [mark.text for mark in note_marks(notes) if isinstance(mark, Label)]
    assert "template 5 mm" in words and any(mark.centre[0] == pytest.approx(3.0) for mark in crosses)
    assert not any("base" in text for text in words)


def test_the_template_of_the_outline_is_shown_whatever_board_the_slots_have():
    layout = with_rack(head(straight()), BEARING, drills=(BRAD,))
    layout = replace(layout, template=replace(layout.template, board="blank"))
    assert [mark.owner for mark in face_groups(layout, plan_routing(layout))["template"]] == ["slot", "outline"]
