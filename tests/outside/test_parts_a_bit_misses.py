"""A cutter that gets into one part of a slot alone is no fit, though what it gets into is one place: by hand."""

import math
import re

import pytest
from msgspec.structs import replace

from geometry.checks import check
from geometry.layout import DrawnSlot, Loop, Node, RouterBit, Slot
from geometry.routing.chosen_fit import chosen_fit
from geometry.routing.follower import follower
from tests.property.layouts import DEMO

ROUND, LEG, LONG = 7.0, 4.5, 40.0


def keyhole():
    """A leg 9 mm wide that runs 40 mm below the middle of a circle 14 mm wide."""
    up = math.sqrt(ROUND ** 2 - LEG ** 2)
    x, y = 0.0, 110.0
    sweep = 2 * math.pi - 2 * math.asin(LEG / ROUND)
    return Slot(id="keyhole", shape=DrawnSlot(loop=Loop(nodes=(
        Node(at=(x - LEG, y - LONG)), Node(at=(x + LEG, y - LONG)), Node(at=(x + LEG, y - up), bulge=math.tan(sweep / 4)),
        Node(at=(x - LEG, y - up))))))


@pytest.mark.parametrize(("cutter", "grade", "enters"), [(8.0, "note", True), (10.0, "tight", False), (12.0, "tight", False)])
def test_a_bit_that_enters_the_round_of_a_keyhole_but_not_its_leg(cutter, grade, enters):
    """Wider than 9 mm it stays in the round: of the leg's 40 mm the lower corners, at 4.5 across and 40 down, are left whole."""
    bit = RouterBit(id="bit", cutter=cutter, cutting_length=25.0, shank=cutter, stick_out=60.0)
    head = replace(DEMO, slots=(keyhole(),), rack=replace(DEMO.rack, bits=(bit,)),
                   template=replace(DEMO.template, bit="bit", bush=None))
    left = next(snag for snag in check(head).snags if snag.kind == "wood-left")
    assert left.grade == grade
    if not enters:
        assert float(re.search(r"up to ([0-9.]+) mm deep", left.text)[1]) == pytest.approx(_depth(cutter), abs=0.06)
    assert chosen_fit(head, head.slots[0], follower(head)).cutter_enters == enters


def _depth(cutter):
    """From the leg's lower corners to the lowest place of a cutter that rests on both corners of the leg's mouth, mm."""
    up, r = math.sqrt(ROUND ** 2 - LEG ** 2), cutter / 2
    middle = -up + math.sqrt(r ** 2 - LEG ** 2)
    return math.hypot(LEG, LONG + middle) - r
