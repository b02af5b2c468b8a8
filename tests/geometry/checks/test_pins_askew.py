"""Pins near the edge of the blank, and pins for a template that turns over: said while they are placed, cured by one move where one does it, as the order says."""

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.cures import apply_cure, settle
from geometry.layout import Pin
from geometry.layout.pin_pairs import mirrored, mirroring_moves
from geometry.sequence import operations
from tests.geometry.checks.cases_wood import _TURNS as TURNS
from tests.geometry.checks.heads import PINS, head, slot

TURNED = head(slots=(slot(x=26.0),), rack=TURNS)


def pin(name, x, y, diameter=2.0):
    return Pin(id=name, at=(x, y), diameter=diameter)


def settled(*pins):
    layout = replace(TURNED, pins=pins)
    result = check(layout)
    snag = next(s for s in result.snags if s.kind == "pins-askew")
    return layout, settle(layout, result, snag)


def test_one_pin_beside_the_centreline_goes_onto_it():
    layout, snag = settled(PINS[0], pin("tip pin", 1.5, 172.0))
    assert snag.cure == "Move tip pin by 1.5 mm to the bass side."
    after = apply_cure(layout, snag)
    assert after.pins == PINS and {s.grade for s in check(after).snags} == {"note"}


def test_the_second_of_a_pair_goes_exactly_to_the_image_of_the_first():
    """(-20, 100) and (24.37, 98.25) become (-20, 100) and (20, 100), or the first goes to (-24.37, 98.25): as far."""
    layout, snag = settled(*PINS, pin("one", -20.0, 165.0), pin("two", 24.37, 163.25))
    after = apply_cure(layout, snag)
    assert mirrored(after.pins) and {p.at for p in after.pins} & {(20.0, 165.0), (-24.37, 163.25)}
    assert "4.37 mm" in snag.cure and "1.75 mm" in snag.cure


def test_where_two_pins_have_to_move_it_says_so():
    _, snag = settled(pin("one", -20.0, 8.0), pin("two", 15.0, 172.0))
    assert snag.move is None and "Have two pins proposed" in snag.cure


def test_pins_of_two_sizes_are_no_pair():
    assert not mirrored((pin("one", -20.0, 8.0), pin("two", 20.0, 8.0, 3.0)))
    assert mirroring_moves((pin("one", -20.0, 8.0), pin("two", 20.0, 8.0, 3.0))) == ()
    assert mirroring_moves(PINS) == ()


def test_check_and_running_order_agree():
    for pins in (PINS, (PINS[0], pin("tip pin", 1.5, 172.0)), (PINS[0], pin("tip pin", 0.02, 172.0)),
                 (pin("one", -20.0, 8.0), pin("two", 20.0, 8.0)), (*PINS, pin("p", 30.0, 100.0))):
        layout = replace(TURNED, pins=pins)
        said = any("does not come back to its place" in op.blocked for op in operations(layout))
        assert said == any(s.kind == "pins-askew" for s in check(layout).snags)


def test_a_head_that_is_routed_from_the_face_asks_nothing_of_its_pins():
    layout = head(slots=(slot(x=26.0),), pins=(PINS[0], pin("tip pin", 1.5, 172.0)))
    assert not [s for s in check(layout).snags if s.kind == "pins-askew"]


@pytest.mark.parametrize(("at", "push"), [((-46.5, 90.0), (1.5, 0.0)), ((47.5, 90.0), (-2.5, 0.0)), ((0.0, -18.5), (0.0, 3.5)),
                                          ((0.0, 187.0), (0.0, -2.0)), ((-48.0, 188.0), (3.0, -3.0))])
def test_a_pin_near_the_blanks_edge_goes_inwards_by_what_it_lacks(at, push):
    """The blank goes from -50 to 50 and from -20 to 190; a pin of 4 wants 3 mm about it."""
    snag, = [one for one in check(head(pins=(*PINS, pin("p", *at, 4.0)))).snags if one.kind == "pin-to-blank"]
    assert snag.push == pytest.approx(push)
