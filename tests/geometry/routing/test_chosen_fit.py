"""What the chosen bit does in a slot 13 mm wide through 16 mm of wood, with a template of 6 mm; the waste is drilled out."""

import pytest
from msgspec.structs import replace

from app.window.demo import demo
from geometry.edits.slots import moved_slot
from geometry.layout import Drill, Rack, RouterBit
from geometry.routing import chosen_fit as module
from geometry.routing.chosen_fit import chosen_fit
from geometry.routing.follower import follower, follower_of
from tests.benchmarks.heads import waisted
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


def test_a_slot_that_is_only_moved_is_asked_once(monkeypatch):
    asked = []
    passes = module.passes_for
    monkeypatch.setattr(module, "passes_for", lambda *given: asked.append(given) or passes(*given))
    layout, slot = demo(), waisted()
    chosen = follower(layout)
    one = chosen_fit(layout, slot, chosen)
    for by in ((1.0, 2.0), (-0.3, 1 / 3)):
        assert chosen_fit(layout, moved_slot(slot, by), chosen) == one
    assert len(asked) == 1
    thicker = replace(layout, template=replace(layout.template, thickness=layout.template.thickness + 3.0))
    chosen_fit(thicker, slot, chosen)
    assert len(asked) == 2
