"""Holes that take the waste out."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from shapely.geometry import LinearRing, Point, Polygon

from geometry.layout import DrawnSlot, Drill, DrillPress, Loop, Node, Rack, Slot, loop_of, slot_path
from geometry.routing import waste
from geometry.routing.refusal import Refusal
from geometry.routing.waste import Waste, _tips, drill_waste, drilled, widest
from tests.geometry.routing.specimens import BRAD, FORSTNER, bit, drawn, head, straight, with_rack

ELL = drawn((0.0, 40.0), (24.0, 40.0), (24.0, 56.0), (16.0, 56.0), (16.0, 130.0), (0.0, 130.0))


def plan(slot, *drills, thickness=16.0, press=None):
    layout = with_rack(head(slot, thickness=thickness), drills=drills)
    if press:
        layout = replace(layout, rack=replace(layout.rack, press=press))
    return drill_waste(slot, layout.blank, layout.rack)


def wood_left(slot, found):
    """Least wood in mm between a hole and the finished wall, by the polygon library."""
    wall = LinearRing(slot_path(slot).flatten(1e-7))
    return min(wall.distance(Point(c)) for c in found.centres) - found.drill.diameter / 2


def test_a_chain_along_a_straight_slot_by_hand():
    """Width 13, brad 10: the ends stand 6.5 - 5 - 1 = 0.5 past the centres, 101 mm for gaps of 11 or more: nine of 11.22."""
    found = plan(straight(width=13, length=100), BRAD)
    assert isinstance(found, Waste) and found.through
    assert len(found.centres) == 10 and found.spacing == pytest.approx(101 / 9)
    assert found.centres[0] == pytest.approx((0, 39.5)) and found.centres[-1] == pytest.approx((0, 140.5))
    assert wood_left(straight(width=13, length=100), found) == pytest.approx(1.0), "before the ends; beside the holes 1.5"
    assert found.left_most == pytest.approx(6.5), "the holes do not meet"
    assert found.saw and found.light
    assert found.stop == pytest.approx(16 + 3), "the point has to come through"
    assert found.words == ("Drill the waste out of slot: 10 holes with brad 10, through, 19 mm with the point, 11.22 mm from "
                           "centre to centre. Then saw it out to within 2 mm of the line.")


def test_forstner_holes_overlap():
    """Gaps of at most 7.5 mm in 101 mm: fourteen. Between two holes 6.5 - sqrt(25 - 3.607^2) = 3.04 mm are left."""
    found = plan(straight(width=13, length=100), FORSTNER)
    assert len(found.centres) == 15 and found.spacing == pytest.approx(101 / 14)
    assert found.left_most == pytest.approx(6.5 - math.sqrt(25 - (101 / 28) ** 2))


def test_a_blind_slot_keeps_its_floor_and_goes_without_a_saw():
    """Depth 9: the point of 2 and 0.5 above the floor leave 6.5. Lapped until 2 mm are left at the cusps."""
    found = plan(straight(width=13, length=100, depth=9.0), FORSTNER)
    assert not found.through and found.stop == pytest.approx(6.5)
    assert found.left_most <= 2 + 1e-9 and not found.saw and found.light
    assert "6.5 mm deep" in found.words
    brad = plan(straight(width=13, length=100, depth=9.0), BRAD)
    assert brad.saw and not brad.light and "Chop out" in brad.words


def test_the_widest_drill_that_leaves_a_millimetre_is_taken():
    drills = tuple(replace(BRAD, id=f"brad {d}", diameter=float(d)) for d in (6, 10, 11, 12))
    assert plan(straight(width=13), *drills).drill.diameter == 11
    assert plan(straight(width=12.99), *drills).drill.diameter == 10


def test_a_round_hole_gets_one_hole():
    found = plan(straight(width=12, length=0), BRAD)
    assert found.centres == ((0, 40),)
    short = plan(straight(width=12, length=3), BRAD)
    assert short.centres == (pytest.approx((0, 41.5)),)


def test_one_hole_in_a_short_slot_leaves_wood_before_both_ends():
    """Width 12, brad 10, 3 mm between the ends' centres: beside the hole 1 mm stands, before an end 6 + 1.5 - 5 = 2.5."""
    found = plan(straight(width=12, length=3), BRAD)
    assert wood_left(straight(width=12, length=3), found) == pytest.approx(1.0) and found.left_most == pytest.approx(2.5)
    assert found.saw and "saw it out" in found.words
    blind = plan(straight(width=12, length=3, depth=9.0), BRAD)
    assert not blind.light and "Chop out" in blind.words
    assert not plan(straight(width=12, length=1, depth=9.0), BRAD).saw, "1 + 0.5 is a light pass"


def test_what_stands_between_holes_of_a_drawn_slot_counts_as_in_a_straight_one():
    """The same slot drawn and straight: webs between brad holes reach from wall to middle, cusps between lapped ones less."""
    shape = straight(width=14.2, length=80)
    drawn_one = replace(shape, shape=DrawnSlot(loop=loop_of(slot_path(shape))))
    for drill in (BRAD, FORSTNER, replace(FORSTNER, id="forstner 12", diameter=12.0)):
        one, two = plan(shape, drill), plan(drawn_one, drill)
        assert two.left_most == pytest.approx(one.left_most, abs=0.15), drill.id
    narrow = drawn((0.0, 40.0), (6.2, 40.0), (6.2, 140.0), (0.0, 140.0))
    small = replace(BRAD, id="brad 4", diameter=4.0)
    assert plan(replace(narrow, depth=9.0), small).saw, "webs of 1 mm across the whole slot are no light pass"


def test_wood_between_two_holes_that_a_third_one_takes_is_none():
    """Holes of 12, 10 apart, meet at sqrt(36 - 25) to either side of their middle; a third one beside it takes the one place."""
    low = (5.0, -math.sqrt(11.0))
    assert sorted(_tips(((0.0, 0.0), (10.0, 0.0)), 6.0)) == [pytest.approx(low), pytest.approx((5.0, math.sqrt(11.0)))]
    tips = _tips(((0.0, 0.0), (10.0, 0.0), (5.0, 4.0)), 6.0)
    assert any(tip == pytest.approx(low) for tip in tips)
    assert all(min(math.dist(tip, centre) for centre in ((0.0, 0.0), (10.0, 0.0), (5.0, 4.0))) > 6.0 - 1e-6 for tip in tips)


@pytest.mark.parametrize(("slot", "drills", "press", "words"), [
    (straight(), (), None, "holds no brad point or Forstner bit"),
    (straight(), (Drill(id="t", kind="twist", diameter=8, length=80),), None, "holds no brad point or Forstner bit"),
    (straight(width=11), (BRAD,), None, "up to 9 mm would do"),
    (straight(width=1.5), (BRAD,), None, "too narrow to drill"),
    (straight(), (replace(BRAD, length=18.0),), None, "brad 10 is 18 mm long"),
    (straight(), (BRAD,), DrillPress(quill=15.0), "quill of the drill press travels 15 mm"),
    (straight(depth=3.0), (FORSTNER,), None, "would mark the floor"),
])
def test_why_not(slot, drills, press, words):
    found = plan(slot, *drills, press=press)
    assert isinstance(found, Refusal) and words in found.reason


def test_a_drawn_slot_is_drilled_along_its_middle():
    """A rectangle 16 wide: the middle line is x = 8."""
    slot = drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0))
    found = plan(slot, BRAD)
    assert all(x == pytest.approx(8, abs=0.05) for x, _ in found.centres if 55 < _ < 125)
    assert len(found.centres) >= 8
    assert wood_left(slot, found) == pytest.approx(1, abs=0.02), "the end holes stand as far out as they may"


def test_a_bent_slot_is_drilled_along_its_bend():
    """A slot 16 wide along a quarter of a circle of radius 80: every hole on that circle, but for the ends."""
    quarter = math.tan(math.pi / 8)
    shape = Loop(nodes=(Node(at=(88.0, 0.0), bulge=quarter), Node(at=(0.0, 88.0), bulge=1.0), Node(at=(0.0, 72.0), bulge=-quarter),
                        Node(at=(72.0, 0.0), bulge=1.0)))
    slot = Slot(id="bent", shape=DrawnSlot(loop=shape))
    found = plan(slot, BRAD)
    assert len(found.centres) >= 11
    assert all(math.hypot(*c) == pytest.approx(80, abs=0.05) for c in found.centres if min(c) > 1)
    assert wood_left(slot, found) >= 1


def test_a_side_branch_is_drilled_too():
    wide = drawn((0.0, 40.0), (60.0, 40.0), (60.0, 56.0), (38.0, 56.0), (38.0, 130.0), (22.0, 130.0), (22.0, 56.0), (0.0, 56.0))
    found = plan(wide, BRAD)
    for x, y in ((8, 48), (52, 48), (30, 120)):
        assert min(math.hypot(cx - x, cy - y) for cx, cy in found.centres) < 9


@pytest.mark.parametrize("drill", [BRAD, FORSTNER, replace(BRAD, id="brad 6", diameter=6.0)])
def test_no_hole_comes_near_a_rail(drill):
    found = plan(ELL, drill)
    area = Polygon([(n.at) for n in ELL.shape.loop.nodes])
    for centre in found.centres:
        assert area.contains(Point(centre))
        assert area.exterior.distance(Point(centre)) >= drill.diameter / 2 + 1 - 1e-6
    if drill.kind == "brad":
        gaps = [math.dist(a, b) for i, a in enumerate(found.centres) for b in found.centres[i + 1:]]
        assert min(gaps) >= drill.diameter, "brad points want whole wood under them"


def test_the_widest_disc():
    assert widest(straight(width=13)) == 13
    assert widest(drawn((0.0, 0.0), (60.0, 0.0), (60.0, 20.0), (0.0, 20.0))) == pytest.approx(20, abs=0.01)


@settings(max_examples=60)
@given(st.floats(6, 30), st.floats(0, 150), st.sampled_from(["brad", "forstner"]), st.floats(3, 26), st.booleans())
def test_holes_in_straight_slots_stay_clear_and_cover_the_slot(width, length, kind, diameter, blind):
    drill = Drill(id="d", kind=kind, diameter=diameter, length=100.0, spur=1.5)
    found = plan(straight(width=width, length=length, depth=8.0 if blind else None), drill)
    if isinstance(found, Refusal):
        assert diameter > width - 2
        return
    ends = (40.0, 40.0 + length)
    for x, y in found.centres:
        beyond = max(ends[0] - y, y - ends[1], 0.0)
        assert abs(x) < 1e-9 and width / 2 - beyond >= diameter / 2 + 1 - 1e-6
    if kind == "brad":
        assert all(b[1] - a[1] >= diameter + 1 - 1e-6 for a, b in zip(found.centres, found.centres[1:], strict=False))


def test_a_layout_without_drills_still_has_a_plan_for_its_bits():
    layout = with_rack(head(straight()), bit(cutter=12, cutting=10, shank=12))
    assert isinstance(drill_waste(layout.slots[0], layout.blank, layout.rack), Refusal)
    assert Rack().drills == ()


@pytest.mark.parametrize("drill", [BRAD, FORSTNER], ids=lambda drill: drill.kind)
@pytest.mark.parametrize("lean", [0.0, 3.7, 9.3])
def test_what_is_left_in_a_sharp_corner_is_not_missed(drill, lean):
    """The farthest corner of a drawn slot from all holes, measured on the corners themselves."""
    corners = ((0.0, 40.0), (19.0, 43.0), (17.0 + lean, 110.0), (-3.0, 104.0))
    found = plan(drawn(*corners), drill)
    assert isinstance(found, Waste)
    assert found.left_most >= max(min(math.dist(corner, c) for c in found.centres) for corner in corners) - drill.diameter / 2 - 1e-9


ROUND = Slot(id="slot", shape=DrawnSlot(loop=Loop(nodes=tuple(
    Node(at=(12 * math.cos(turn), 60 + 12 * math.sin(turn)), bulge=math.tan(math.tau / 12)) for turn in (0.0, math.tau / 3, 2 * math.tau / 3)))))


@pytest.mark.parametrize(("slot", "drills", "at_once"), [
    (ELL, (BRAD, FORSTNER), True), (ELL, (BRAD,), True), (replace(ELL, depth=9.0), (BRAD, FORSTNER), False),
    (ELL, (replace(BRAD, diameter=30.0),), False), (ELL, (replace(BRAD, length=5.0), replace(FORSTNER, diameter=8.0)), True),
    (drawn((0.0, 40.0), (14.0, 40.0), (14.0, 54.0), (0.0, 54.0)), (BRAD,), False), (ROUND, (BRAD,), False), (straight(width=13, length=100), (BRAD,), False)])
def test_what_the_router_finds_is_known_without_setting_out_holes(slot, drills, at_once, monkeypatch):
    layout = with_rack(head(slot), drills=drills)
    asked = []
    monkeypatch.setattr(waste, "drill_waste", lambda *given: asked.append(given) or drill_waste(*given))
    found = drilled(slot, layout.blank, layout.rack)
    made = plan(slot, *drills)
    assert found == ((made.light, made.drill.diameter if made.through else 0.0) if isinstance(made, Waste) else (False, 0.0))
    assert asked == ([] if at_once else [(slot, layout.blank, layout.rack)])
