"""Every rule of precedence on a case of its own."""


import msgspec
import pytest
from msgspec.structs import replace

from geometry.edits.hand_cuts import set_flat, set_ramp
from geometry.layout import Ear, EdgePlace, FreePlace, Headstock, Pin, SingleHole, Slot, StraightSlot, Template
from geometry.sequence import Before, Wishes, operations, precedence
from geometry.sequence.plans import Routing
from geometry.sequence.precedence import RULES
from geometry.sequence.shadows import drilled
from geometry.solids import holes
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, finished, stocked
from tests.geometry.solids.test_reamed import pegs

REPLACE = msgspec.structs.replace
PLANS = {"slot": THROUGH, "outline": THROUGH}


def edges(layout: Headstock, plans: dict[str, Routing] | None = None, wishes: Wishes | None = None) -> list[Before]:
    ops = operations(layout, plans, wishes)
    return list(precedence(layout, ops))


def between(found: list[Before], first: str, then: str) -> list[Before]:
    return [e for e in found if (e.first, e.then) == (first, then)]


EARED = stocked(ears=(Ear(id="ear", side="treble", width=10.0, start=20.0, end=150.0),))
GLUED = REPLACE(EARED, blank=REPLACE(EARED.blank, face_veneer=1.5, back_veneer=0.6, scarf=70.0), holes=(SingleHole(id="old", at=(0.0, 100.0), diameter=3.0, there=True, plugged=True),))
PINNED_BORE = stocked(pins=(Pin(id="pin", at=(-28.0, 60.0), diameter=4.0),))
SHARED_BORE = stocked(pins=(Pin(id="pin", at=(-28.0, 60.0), diameter=6.5),))
IN_SLOT = stocked(pins=(Pin(id="pin", at=(17.0, 60.0)),))
IN_WASTE = stocked(pins=(Pin(id="pin", at=(0.0, 185.5), diameter=4.0),), template=Template(board="blank"))
UNREACHED = stocked(pins=IN_WASTE.pins)
ABOUT_A_BORE = stocked(holes=(SingleHole(id="wide", at=(-28.0, 60.0), diameter=14.0, depth=3.0, surface="back"),
                              SingleHole(id="slim", at=(-28.0, 60.0), diameter=5.0)))
"""Single holes on the axis of the bores of front, 8.8 and 6.5 wide."""
NEAR_SLOT = stocked(tuners=(REPLACE(stocked().tuners[0], place=FreePlace(at=(2.0, 60.0))),))
NEAR_EDGE = stocked(tuners=(REPLACE(stocked().tuners[0], place=FreePlace(at=(-33.0, 60.0))),))


@pytest.mark.parametrize(("layout", "first", "then", "grade", "suffers"), [
    (EARED, "glue ear ear", "mark", "impossible", "then"),
    (EARED, "glue ear ear", "side bore flank.1.1", "impossible", "then"),
    (EARED, "glue ear ear", "cut outline", "impossible", "then"),
    (stocked(), "template", "pin hole pin.1", "unsafe", "then"),
    (stocked(), "template", "rout slot 1", "impossible", "then"),
    (stocked(), "template", "cut outline", "impossible", "then"),
    (stocked(), "mark", "counterbore front.1.1", "impossible", "then"),
    (stocked(), "mark", "side bore flank.1.1", "impossible", "then"),
    (stocked(), "mark", "cut outline", "impossible", "then"),
    (stocked(pins=()), "mark", "rout slot 1", "impossible", "then"),
    (IN_WASTE, "mark", "rout outline 1", "impossible", "then"),
    (IN_WASTE, "pin hole pin.1", "rout slot 1", "unsafe", "then"),
    (UNREACHED, "mark", "rout slot 1", "impossible", "then"),
    (stocked(), "pin hole pin.1", "rout slot 1", "unsafe", "then"),
    (stocked(), "pin hole pin.1", "rout outline 1", "unsafe", "then"),
    (ABOUT_A_BORE, "bore wide.1", "counterbore front.1.1", "unsafe", "first"),
    (ABOUT_A_BORE, "bore front.1.2", "bore slim.1", "unsafe", "first"),
    (set_ramp(stocked(), "slot", length=8.0, depth=3.0), "mark", "ramp slot", "impossible", "then"),
    (set_ramp(stocked(), "slot", length=8.0, depth=3.0), "ramp slot", "clean up", "impossible", "first"),
    (PINNED_BORE, "counterbore front.1.1", "pin hole pin.1", "unsafe", "first"),
    (PINNED_BORE, "pin hole pin.1", "bore front.1.2", "impossible", "first"),
    (PINNED_BORE, "rout slot 1", "bore front.1.2", "unsafe", "first"),
    (SHARED_BORE, "counterbore front.1.1", "pin hole pin.1", "unsafe", "first"),
    (IN_SLOT, "rout outline 1", "waste holes slot", "unsafe", "first"),
    (IN_WASTE, "rout slot 1", "cut outline", "unsafe", "first"),
    (stocked(), "side bore flank.1.1", "waste holes slot", "unsafe", "first"),
    (stocked(), "side bore flank.1.1", "saw slot", "unsafe", "first"),
    (stocked(), "side bore flank.1.1", "rout slot 1", "unsafe", "first"),
    (stocked(), "side bore flank.1.1", "cut outline", "impossible", "first"),
    (stocked(), "counterbore front.1.1", "bore front.1.2", "unsafe", "first"),
    (NEAR_SLOT, "bore front.1.2", "rout slot 1", "unwise", "first"),
    (NEAR_EDGE, "counterbore front.1.1", "cut outline", "unwise", "first"),
    (stocked(), "bore front.1.2", "pilot front.2.1", "unwise", "then"),
    (stocked(), "side bore flank.1.1", "edge pilot flank.2.1", "impossible", "then"),
    (stocked(), "waste holes slot", "saw slot", "impossible", "then"),
    (stocked(), "waste holes slot", "rout slot 1", "unsafe", "then"),
    (stocked(), "saw slot", "rout slot 1", "unsafe", "then"),
    (stocked(), "cut outline", "rout outline 1", "unsafe", "then"),
    (stocked(), "rout slot 1", "cut outline", "unwise", "first"),
    (stocked(), "rout outline 1", "edge pilot flank.2.1", "impossible", "then"),
    (stocked(), "side bore flank.1.1", "clean up", "impossible", "first"),
    (stocked(), "rout slot 1", "clean up", "impossible", "first"),
    (stocked(), "edge pilot flank.2.1", "clean up", "unwise", "then"),
    (stocked(), "bore front.1.2", "cut outline", "unwise", "first"),
    (stocked(), "bore front.1.2", "rout outline 1", "unwise", "first"),
])
def test_a_rule_gives_its_edge_with_grade_and_who_is_harmed(layout: Headstock, first: str, then: str, grade: str,
                                                            suffers: str) -> None:
    found = between(edges(layout), first, then)
    assert (grade, suffers) in [(e.grade, e.suffers) for e in found]
    assert all(e.reason.endswith(".") and e.protects for e in found)


@pytest.mark.parametrize(("layout", "first", "then"), [
    (stocked(), "bore front.1.2", "rout slot 1"),
    (stocked(), "pin hole pin.1", "bore front.1.2"),
    (IN_WASTE, "pin hole pin.1", "rout outline 1"),
    (IN_WASTE, "mark", "rout slot 1"),
    (UNREACHED, "pin hole pin.1", "rout slot 1"),
    (stocked(), "mark", "edge pilot flank.2.1"),
    (EARED, "glue ear ear", "counterbore front.1.1"),
    (EARED, "glue ear ear", "rout slot 1"),
])
def test_what_has_nothing_to_do_with_each_other_is_free(layout: Headstock, first: str, then: str) -> None:
    assert between(edges(layout), first, then) == []


def test_a_side_bore_that_ends_before_the_slot_may_come_after_it() -> None:
    far = Slot(id="slot", shape=StraightSlot(nut_end=(-10.0, 40.0), tip_end=(-10.0, 150.0), width=13.0))
    assert between(edges(stocked(slots=(far,))), "side bore flank.1.1", "rout slot 1") == []


def test_a_side_bore_below_a_blind_slot_may_come_after_it() -> None:
    # The bore takes 4.8 to 11.2 below the face.
    for depth, count in ((4.7, 0), (4.9, 1)):
        slot = REPLACE(stocked().slots[0], depth=depth)
        found = edges(stocked(slots=(slot,)), {"slot": THROUGH, "outline": THROUGH})
        assert len(between(found, "side bore flank.1.1", "rout slot 1")) == count


def test_a_side_bore_crosses_the_glue_line_of_an_ear_that_lies_in_the_waste_alone() -> None:
    """The edge at 40, the square edge at 45, the ear 3 wide: the bore at y = 100 meets it only on its way from mark to seat."""
    ear = Ear(id="ear", side="treble", width=3.0, start=20.0, end=150.0)
    crossed = between(edges(stocked(ears=(ear,))), "glue ear ear", "side bore flank.1.1")
    assert [edge.grade for edge in crossed] == ["impossible"] and "glue line" in crossed[0].protects
    assert not between(edges(stocked(ears=(replace(ear, end=90.0),))), "glue ear ear", "side bore flank.1.1")


def test_in_plan_a_side_bore_takes_wood_from_its_mark_to_its_end() -> None:
    """From the square edge at 45 through 5 of waste and 30 more, 6.4 wide about y = 100."""
    flank = next(d for hole in holes(stocked()) for d in hole.drillings if d.of == "flank" and d.role == "post")
    assert drilled(flank).bounds == pytest.approx((10.0, 96.8, 45.0, 103.2))
    assert drilled(replace(flank, mark=None, stop=30.0)).bounds == pytest.approx((10.0, 96.8, 40.0, 103.2))


@pytest.mark.parametrize(("x", "beside_slot", "near_outline"), [(31.4, True, True), (32.6, False, True), (30.2, True, True), (29.4, True, False)])
def test_thin_wood_beside_a_bore_is_up_to_twice_its_margin(x: float, beside_slot: bool, near_outline: bool) -> None:
    """A bore of 5 between the slot's wall at 23.5 and the edge at 40: 2 x 3 mm count beside the slot, 2 x 4 mm beside the outline."""
    layout = stocked(holes=(SingleHole(id="peep", at=(x, 120.0), diameter=5.0, depth=7.0),), tuners=stocked().tuners[:1])
    found = edges(layout)
    assert bool(between(found, "bore peep.1", "waste holes slot")) == beside_slot
    (outline,) = between(found, "bore peep.1", "cut outline")
    assert ("backs the wood" in outline.reason) == near_outline


def test_later_trips_wait_for_earlier_ones() -> None:
    found = edges(stocked(), {"slot": TURNED, "outline": THROUGH})
    assert [e.grade for e in between(found, "rout slot 1", "rout slot 2")] == ["unsafe"]


def test_a_trip_along_a_wall_already_cut_asks_for_no_pin() -> None:
    along = along_the_wall(TURNED)
    found = edges(stocked(), {"slot": along, "outline": THROUGH})
    assert between(found, "pin hole pin.1", "rout slot 1") != []
    assert between(found, "pin hole pin.1", "rout slot 2") == []


def along_the_wall(routing: Routing) -> Routing:
    """The same, its last trip along the wall already cut."""
    return replace(routing, trips=(*routing.trips[:-1], replace(routing.trips[-1], template=False)))


def test_finish_comes_after_cleaning_up_and_before_final_diameters() -> None:
    found = edges(finished(stocked()), PLANS)
    assert [e.grade for e in between(found, "clean up", "finish")] == ["unsafe"]
    assert [e.suffers for e in between(found, "finish", "final diameter front.1.1")] == ["first"]
    assert between(found, "final diameter front.1.1", "bore front.1.2") == []


def test_a_wide_bore_from_the_side_comes_before_its_narrow_one() -> None:
    side = stocked().patterns[1]
    wide = REPLACE(side.bores[0], role="counterbore", diameter=10.0, depth=4.0)
    found = edges(stocked(patterns=(stocked().patterns[0], REPLACE(side, bores=(wide, *side.bores)))))
    assert [e.grade for e in between(found, "side counterbore flank.1.1", "side bore flank.1.2")] == ["unsafe"]


def hand_cut() -> Headstock:
    """The demo with a ramp and a flat."""
    made = set_ramp(demo(), "bass slot", length=6.0, depth=2.0)
    return set_flat(made, "bass side 1", size=24.0, depth=0.3)


def test_every_rule_speaks_up_somewhere() -> None:
    silent = set(RULES)
    for layout in (finished(EARED), GLUED, PINNED_BORE, IN_SLOT, IN_WASTE, NEAR_SLOT, NEAR_EDGE, demo(), hand_cut(), pegs()):
        turned = {slot.id: TURNED for slot in layout.slots} | {"outline": THROUGH}
        ops = operations(layout, turned if layout is IN_SLOT else None)
        silent -= {rule for rule in silent if any(True for _ in rule(layout, ops))}
    assert silent == set()


def test_all_edges_join_operations_that_exist_and_no_operation_waits_for_itself() -> None:
    layout = demo()
    ops = operations(layout)
    ids = {op.id for op in ops}
    for edge in precedence(layout, ops):
        assert {edge.first, edge.then} <= ids
        assert edge.first != edge.then
        assert edge.harmed in (edge.first, edge.then)
        assert edge.hard == (edge.grade != "unwise")


def test_a_tuner_on_the_bass_edge_is_found_by_its_own_slot() -> None:
    mirrored = REPLACE(stocked().tuners[1], id="other", place=EdgePlace(side="bass", along=100.0))
    found = edges(stocked(tuners=(*stocked().tuners, mirrored)))
    assert between(found, "side bore other.1.1", "rout slot 1") == []
    assert [e.grade for e in between(found, "side bore other.1.1", "cut outline")] == ["impossible"]
