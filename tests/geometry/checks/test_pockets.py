"""A pocket that the blank has already: what keeps clear of it, by hand, at the margin and beyond; what nobody asks of it."""

import math

import pytest
from msgspec.structs import replace

from app.window.demo import demo
from geometry.accuracy import simulate
from geometry.checks import LiveCheck, check
from geometry.checks.snags import SPOILS, TIGHT
from geometry.cures import settle
from geometry.edits import add_truss_rod_pocket, move_features, set_slots_there
from geometry.errors import GeometryError
from geometry.layout import Pin, Ramp, SingleHole, Slot, StraightSlot, validate
from tests.geometry.checks.heads import SIDE, drawn, head, loop, side, slot

POCKET = Slot(id="pocket", shape=StraightSlot(nut_end=(0.0, -6.0), tip_end=(0.0, 22.0), width=12.0), depth=10.0, there=True)
"""From 12 mm behind the nut line to 28 mm before it, its walls at x = -6 and 6, as deep as a truss rod's pocket may be."""


def told(*slots, **parts):
    """Snags of a head without pins in which a pocket takes part."""
    layout = head(**({"slots": slots, "pins": ()} | parts))
    return layout, {s.kind: s for s in check(layout).snags if "pocket" in s.between}


def test_nobody_asks_anything_of_the_pocket_itself():
    """Over the nut line, 0.5 mm of wood below its floor, no bit that enters it: as a slot to rout it is told of, there it is not."""
    narrow = replace(POCKET, shape=replace(POCKET.shape, width=4.0), depth=15.5)
    assert {"slot-to-nut", "slot-floor", "bit-too-wide"} <= told(replace(narrow, there=False))[1].keys()
    assert told(narrow)[1] == {}
    layout, _ = told(narrow)
    assert {s.kind for s in check(layout).snags} == set(), "no pins are wanted for it either"


@pytest.mark.parametrize(("x", "measured"), [(11.5, None), (11.4, 2.9), (6.0, -2.5)])
def test_a_post_bore_keeps_clear_of_its_wall(x, measured):
    """A hole of 5 mm beside the wall at x = 6: 3 mm of wood wanted, so its middle may stand at 11.5."""
    layout, found = told(POCKET, holes=(SingleHole(id="post", at=(x, 10.0), diameter=5.0),))
    if measured is None:
        assert found == {}
        return
    snag = found["hole-to-slot"]
    assert snag.measured == pytest.approx(measured) and snag.grade == (SPOILS if measured < 0 else TIGHT)
    assert "wall of pocket, which is there already" in snag.text
    cured = settle(layout, check(layout), snag)
    assert cured.move is not None and cured.move.of == "post"


def test_behind_the_nut_line_it_is_kept_clear_of_as_before_it():
    _, found = told(POCKET, holes=(SingleHole(id="old", at=(10.0, -6.0), diameter=4.0, there=False),))
    assert found["hole-to-slot"].measured == pytest.approx(2.0)
    assert told(POCKET, holes=(SingleHole(id="old", at=(10.0, -6.0), diameter=4.0, there=True),))[1] == {}, "both are there already"


def test_a_drilling_below_its_floor_wants_wood_above_it():
    """A hole from the back, 4 mm deep in 16 mm of wood, ends 2 mm below the floor at 10; 3 mm are wanted."""
    below = SingleHole(id="screw", at=(0.0, 10.0), diameter=3.0, depth=4.0, surface="back")
    assert told(POCKET, holes=(below,))[1]["hole-to-slot"].measured == pytest.approx(2.0)
    assert told(POCKET, holes=(replace(below, depth=3.0),))[1].keys() == {"drill-point"}, "which runs 0.9 mm ahead"
    assert told(POCKET, holes=(replace(below, depth=2.1),))[1] == {}


def test_a_side_bore_into_it_is_no_post_in_a_slot():
    """The bore of 6 mm from x = 40 is 30 long and ends at x = 10, 5 to 11 mm below the face: the floor is at 10. No slot for its post."""
    wide = replace(POCKET, shape=replace(POCKET.shape, width=26.0))
    layout = head(slots=(wide,), pins=(), patterns=(SIDE,), tuners=(side("tuner", 15.0),))
    found = {s.kind: s for s in check(layout).snags if "tuner" in s.between}
    assert "no-slot" in found and not found.keys() & {"post-to-wall", "string-hole", "slot-too-shallow"}
    assert found["side-bore-to-slot"].grade == SPOILS and set(found["side-bore-to-slot"].between) == {"tuner", "pocket"}
    assert "which is there already" in found["side-bore-to-slot"].text
    routed = replace(layout, slots=(replace(wide, there=False),))
    assert "side-bore-to-slot" not in {s.kind for s in check(routed).snags}, "a slot is what the bore should run into"


def test_a_side_bore_passes_beneath_its_floor():
    """Its axis at 8 mm, its top at 5: a pocket 2 mm deep leaves the 3 mm that are wanted, one of 2.5 mm does not."""
    def below(depth):
        wide = replace(POCKET, depth=depth, shape=replace(POCKET.shape, width=26.0))
        return {s.kind: s for s in check(head(slots=(wide,), pins=(), patterns=(SIDE,), tuners=(side("tuner", 15.0),))).snags
                if "pocket" in s.between}
    assert below(2.0) == {}
    assert below(2.5)["side-bore-to-slot"].measured == pytest.approx(2.5)


@pytest.mark.parametrize(("x", "measured"), [(22.0, None), (20.0, 8.0)])
def test_the_web_to_a_slot_is_told_and_the_slot_gives_way(x, measured):
    """A slot 12 mm wide beside the pocket: 12 mm less than from middle to middle, 10 wanted."""
    layout, found = told(POCKET, slot("slot", x=x, width=12.0, nut=10.0, tip=150.0))
    if measured is None:
        assert found == {}
        return
    snag = found["web"]
    assert snag.measured == pytest.approx(measured) and "Keep the slot away from pocket" in snag.cure
    assert settle(layout, check(layout), snag).move.of == "slot"


def test_two_pockets_are_nobodys_business():
    assert told(POCKET, replace(POCKET, id="bed"))[1] == {}
    assert "slots-overlap" in told(POCKET, slot("slot", x=0.0, nut=10.0, tip=100.0))[1]


def test_rail_at_the_margin_and_cut_by_the_outline():
    """The treble edge is x = 40, 8 mm of rail wanted: a pocket 12 mm wide may lie about x = 26 and no farther out."""
    def at(x, y=90.0):
        return told(replace(POCKET, shape=StraightSlot(nut_end=(x, y), tip_end=(x, y + 20.0), width=12.0)))[1]
    assert at(26.0) == {}
    assert at(26.5)["rail"].measured == pytest.approx(7.5) and "which is there already" in at(26.5)["rail"].text
    assert at(37.0)["slot-outside"].measured == pytest.approx(-3.0, abs=0.06) and at(37.0)["slot-outside"].grade == SPOILS
    assert -at(37.0)["slot-outside"].measured >= 3.0, "never told as less"
    assert at(47.0) == {}, "all of it in the waste"
    assert at(26.5, -10.0)["rail"].measured == pytest.approx(7.5), "over the nut line the edge beside it counts as elsewhere"


def test_an_outline_that_goes_on_into_the_neck_may_end_across_it():
    """An outline from 15 mm behind the nut line on: it crosses the pocket only where the neck goes on."""
    longer = loop((-30.0, -9.0), (30.0, -9.0), (40.0, 30.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 30.0))
    assert told(POCKET, outline=longer)[1] == {}
    narrow = loop((-12.0, -9.0), (12.0, -9.0), (12.0, 40.0), (40.0, 60.0), (40.0, 180.0), (-40.0, 180.0), (-40.0, 60.0), (-12.0, 40.0))
    found = told(POCKET, outline=narrow)[1]
    assert found["rail"].measured == pytest.approx(6.0, abs=0.02) and found["rail"].measured <= 6.0


def test_a_drawn_pocket_is_told_of_as_a_straight_one():
    bed = drawn("pocket", (-6.0, -5.0), (6.0, -5.0), (6.0, 28.0), (-6.0, 28.0))
    hole = SingleHole(id="post", at=(10.0, 10.0), diameter=5.0)
    there = replace(bed, there=True)
    assert told(there, holes=(hole,))[1]["hole-to-slot"].measured == pytest.approx(1.5)
    assert told(there)[1] == {}


def test_a_locating_pin_keeps_clear_of_it():
    pins = (Pin(id="nut pin", at=(0.0, 31.0), diameter=4.0), Pin(id="tip pin", at=(0.0, 170.0), diameter=4.0))
    _, found = told(POCKET, pins=pins)
    assert found["locating-pin-to-slot"].measured == pytest.approx(1.0)


OUTLINES = (loop((-40.0, 0.0), (40.0, 180.0), (-40.0, 180.0), (40.0, 0.0)), loop((-40.0, 0.0), (40.0, 0.0)),
            loop((-40.0, 5.0), (0.0, 0.0), (40.0, 5.0), (40.0, 180.0), (-40.0, 180.0)), loop((-1.0, 0.0), (1.0, 0.0), (1.0, 1.0)))
SHAPES = (POCKET, drawn("pocket", (-5.0, 0.0), (5.0, 30.0), (-5.0, 30.0), (5.0, 0.0)), drawn("pocket", (0.0, 0.0), (5.0, 0.0)),
          drawn("pocket", (-200.0, -200.0), (200.0, -200.0), (200.0, 400.0), (-200.0, 400.0)),
          slot("pocket", x=0.0, width=4.0, nut=0.0, tip=0.0), slot("pocket", x=0.0, width=6.0, nut=-60.0, tip=-40.0))


@pytest.mark.parametrize("outline", OUTLINES)
@pytest.mark.parametrize("shape", SHAPES)
def test_shapes_without_sense_give_snags_and_no_error(outline, shape):
    """Crossed or empty outlines and walls, pockets larger than the head, round ones, and ones far behind the nut line."""
    layout, found = told(replace(shape, there=True, depth=10.0), outline=outline)
    assert all(math.isfinite(n) for snag in found.values() for n in (*snag.where, snag.measured or 0.0))
    assert ("slot-crosses" in found) == (shape in SHAPES[1:3])
    assert all(math.isfinite(clearance.nominal) for clearance in simulate(layout, 20).clearances)


def test_while_it_is_dragged_the_snags_are_those_of_a_check_made_anew():
    """Past the pins and between the slots of the demo, into the waste, and made a slot and back on the way."""
    layout, live = add_truss_rod_pocket(demo()), LiveCheck()
    live.check(layout)
    for step in range(8):
        layout = move_features(layout, ["truss rod pocket"], (3.0 if step % 2 else -4.0, 9.0 * step))
        layout = set_slots_there(layout, ["truss rod pocket"], step not in (3, 6))
        assert live.check(layout).snags == check(layout).snags


def test_it_has_no_ramp():
    with pytest.raises(GeometryError, match="pocket is there already and nothing is cut for it"):
        validate(head(slots=(replace(POCKET, ramp=Ramp(length=8.0, depth=2.0)),)))
