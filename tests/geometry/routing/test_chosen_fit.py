"""What the chosen bit does in a slot 13 mm wide through 16 mm of wood, with a template of 6 mm; the waste is drilled out."""

import pytest

from geometry.layout import Drill, Rack, RouterBit
from geometry.routing.chosen_fit import chosen_fit
from geometry.routing.follower import follower_of
from tests.geometry.drawing.specimens import plain_head


def fit(**sizes):
    head = plain_head(rack=Rack(drills=(Drill(id="waste", kind="brad", diameter=11.0, length=60.0),)))
    bit = RouterBit(**({"id": "bit", "cutter": 12.0, "cutting_length": 16.0, "shank": 8.0, "stick_out": 38.0,
                        "bearing": "shank", "bearing_diameter": 12.0, "bearing_height": 5.0} | sizes))
    return chosen_fit(head, head.slots[0], follower_of(bit, None))


def test_a_slim_bit_that_is_long_enough_does_it_from_one_side():
    found = fit()
    assert (found.cutter_enters, found.follower_enters, found.way) == (True, True, "one side")
    assert found.through and found.depth >= 16.0


def test_a_bit_wider_than_the_slot_is_too_fat():
    assert not fit(cutter=13.5, bearing_diameter=13.5).cutter_enters
    assert fit(cutter=13.0, bearing_diameter=13.0).cutter_enters  # as wide as the slot: it passes


def test_what_follows_the_template_may_be_too_wide_where_the_cutter_is_not():
    """Cutter 6 on a bearing of 20: the template opening is 13 + 2 * 7 = 27 wide, so it goes in; on one of 6 too."""
    assert fit(cutter=6.0, bearing_diameter=20.0).follower_enters
    assert fit(cutter=6.0, bearing_diameter=6.0).follower_enters


@pytest.mark.parametrize(("sticks_out", "way"), [(38.0, "one side"), (14.0, "too short")])
def test_how_far_it_stands_out_decides_how_deep_it_comes(sticks_out, way):
    """From the base down: 6 mm of template, then the wood. 14 mm come 8 mm into it, half of the 16, with nothing to spare
    for the cuts from both sides to overlap."""
    found = fit(stick_out=sticks_out)
    assert found.way == way
    assert (found.reach is None) == (way == "one side") or found.reach == pytest.approx(8.0)
