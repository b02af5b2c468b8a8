"""Pins for what is planned, and what pins that are not mirrored do to a template that turns over."""

import msgspec
import pytest
import shapely

from geometry.accuracy import simulate
from geometry.checks import check
from geometry.checks.snags import SPOILS
from geometry.layout import Bore, Headstock, Pin, SingleHole
from geometry.layout.pin_pairs import mirrored
from geometry.sequence import NoPins, PinPlan, Routing, Trip, best_order, operations, plan_pins, precedence
from geometry.sequence.pin_plan import turns_over
from tests.geometry.sequence.specimens import THROUGH, TURNED, demo, stocked


def with_pins(*places: tuple[float, float]):
    return stocked(pins=tuple(Pin(id=f"pin {i}", at=at) for i, at in enumerate(places, 1)))


def fat(head: Headstock) -> Headstock:
    """With a pin for which there is no wood."""
    return msgspec.structs.replace(head, pins=(Pin(id="fat", at=(0.0, 0.0), diameter=60.0),))


def test_the_proposal_is_legal_by_the_checks_and_within_the_free_places() -> None:
    head = demo()
    plan = plan_pins(head)
    assert isinstance(plan, PinPlan) and not plan.turns_over
    found = check(msgspec.structs.replace(head, pins=plan.pins)).snags
    names = {pin.id for pin in plan.pins}
    assert [snag for snag in found if names & set(snag.between)] == []
    for pin in plan.pins:
        assert any(area.buffer(1e-6).contains(shapely.Point(pin.at)) for area in plan.free)
    assert plan.words == "170.5 mm apart, on the centreline"  # 183.5 - 13 along the centreline


def test_names_that_are_taken_are_left_alone() -> None:
    head = msgspec.structs.replace(demo(), pins=(), holes=(SingleHole(id="nut pin", at=(0.0, 90.0), diameter=4.0),))
    plan = plan_pins(head)
    assert [pin.id for pin in plan.pins] == ["nut pin 2", "tip pin"]


def test_the_size_is_that_of_the_pins_there_are() -> None:
    head = msgspec.structs.replace(demo(), pins=(Pin(id="a", at=(0.0, 30.0), diameter=4.0),))
    assert {pin.diameter for pin in plan_pins(head).pins} == {4.0}


def test_no_room_gives_a_reason() -> None:
    margins = msgspec.structs.replace(demo().margins, pin_any=60.0)
    found = plan_pins(msgspec.structs.replace(demo(), margins=margins))
    assert isinstance(found, NoPins) and "thinner pins" in found.reason


def test_fat_pins_go_into_bores_to_come() -> None:
    plan = plan_pins(fat(demo()))
    assert {pin.diameter for pin in plan.pins} == {6.5} and "mm apart, in two bores to come, " in plan.words


def test_a_pin_in_a_counterbored_bore_to_come_is_no_snag_and_spoils_nothing_in_the_simulation() -> None:
    plan = plan_pins(fat(demo()))
    layout = msgspec.structs.replace(demo(), pins=plan.pins)
    names = {pin.id for pin in plan.pins}
    assert not [snag.said for snag in check(layout).snags if names & set(snag.between)]
    assert not [one for one in simulate(layout, trials=50).clearances if one.kind == "counterbore-to-locating-pin"]
    # Shifted along, the hole is one of its own.
    beside = msgspec.structs.replace(plan.pins[0], at=(plan.pins[0].at[0], plan.pins[0].at[1] + 1.0))
    moved = check(msgspec.structs.replace(layout, pins=(beside, plan.pins[1])))
    assert any(beside.id in snag.between and snag.grade == SPOILS for snag in moved.snags)


def bored(*bores: Bore) -> Headstock:
    """The demo, its face tuners drilled so and no wood but theirs for pins as fat as those."""
    return msgspec.structs.replace(fat(demo()), patterns=tuple(
        msgspec.structs.replace(one, bores=bores) if one.mount == "face" else one for one in demo().patterns))


@pytest.mark.parametrize(("deep", "serves"), [(12.0, True), (12.1, False)])
def test_a_bore_that_is_short_below_its_counterbore_holds_no_pin(deep: float, serves: bool) -> None:
    """16 thick: 4 mm have to be left."""
    found = plan_pins(bored(Bore(role="counterbore", diameter=8.8, surface="face", depth=deep), Bore(role="post", diameter=6.5, surface="face")))
    assert isinstance(found, NoPins) != serves


def test_a_hole_in_the_waste_is_no_place_for_a_pin_and_one_that_is_there_keeps_its_margin() -> None:
    plain = Bore(role="post", diameter=6.5, surface="face")
    at = [pin.at for pin in plan_pins(bored(plain)).pins]
    waste = (SingleHole(id="a", at=(-47.0, 6.0), diameter=5.0), SingleHole(id="b", at=(47.0, 186.0), diameter=5.0))
    assert [pin.at for pin in plan_pins(msgspec.structs.replace(bored(plain), holes=waste)).pins] == at
    # Two from the edge of the lower one's bore.
    beside = SingleHole(id="old", at=(at[0][0], at[0][1] - 3.25 - 2.0 - 2.0), diameter=4.0, there=True)
    assert at[0] not in [pin.at for pin in plan_pins(msgspec.structs.replace(bored(plain), holes=(beside,))).pins]


def test_only_the_template_of_a_slot_turned_over_counts() -> None:
    wall = Routing((Trip("face", "b", None, 0.0, 9.0), Trip("back", "b", None, 0.0, 7.0, template=False)))
    assert turns_over({"slot": TURNED, "outline": THROUGH})
    assert not turns_over({"slot": THROUGH, "outline": TURNED})
    assert not turns_over({"slot": wall, "outline": THROUGH})


@pytest.mark.parametrize(("places", "right"), [
    (((0.0, 30.0), (0.0, 150.0)), True), (((-20.0, 30.0), (20.0, 30.0)), True), (((0.04, 30.0), (0.0, 150.0)), False),
    (((0.02, 30.0), (0.0, 150.0)), True), (((0.0, 30.0), (12.0, 150.0)), False), (((-20.0, 30.0), (20.0, 31.0)), False)])
def test_mirrored_pins(places, right) -> None:
    # Off the centreline by 0.04 mm a pin misses its image by 0.08 mm.
    assert mirrored(with_pins(*places).pins) == right


def test_pins_that_are_not_mirrored_block_the_turned_trip() -> None:
    plans = {"slot": TURNED, "outline": THROUGH}
    askew = operations(with_pins((0.0, 25.0), (6.0, 175.0)), plans)
    blocked = {op.id: op.blocked for op in askew if op.blocked}
    assert list(blocked) == ["rout slot 2"] and "not mirrored about the centreline" in blocked["rout slot 2"]
    head = with_pins((0.0, 25.0), (6.0, 175.0))
    assert any("not mirrored" in text for text in best_order(askew, precedence(head, askew)).blocked)
    assert not any(op.blocked for op in operations(with_pins((0.0, 25.0), (0.0, 175.0)), plans))
    assert not any(op.blocked for op in operations(with_pins((0.0, 25.0), (6.0, 175.0)), {"slot": THROUGH, "outline": THROUGH}))
