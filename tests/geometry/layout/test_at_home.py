"""A slot at home: one object for every place of it, and the same answers there."""

import pytest
from msgspec.structs import replace

from geometry.edits.slots import moved_slot
from geometry.layout import DrawnSlot, Loop, Node, Slot, slot_path
from geometry.layout.slots import at_home
from geometry.routing import medial, waste
from geometry.routing.fit import narrowest
from geometry.routing.waste import drill_waste
from tests.benchmarks.heads import waisted
from tests.geometry.routing.specimens import BRAD, drawn, head, straight, with_rack

ELSEWHERE = ((0.1, 0.2), (-17.3, 1 / 3), (1e-4, -1e3))


@pytest.mark.parametrize("slot", [waisted(), drawn((0.0, 40.0), (9.1, 40.0), (9.1, 140.0), (0.0, 140.0)), straight()])
def test_wherever_a_slot_stands_it_is_one_object_at_home(slot):
    home, begins = at_home(slot)
    assert slot_path(moved_slot(home, begins)).start == pytest.approx(slot_path(slot).start, abs=1e-8)
    for by in ELSEWHERE:
        moved, here = at_home(moved_slot(slot, by))
        assert moved is home and here == (begins[0] + by[0], begins[1] + by[1])
    assert at_home(home)[0] is home
    assert at_home(replace(slot, depth=7.0))[0] is not home


def test_a_loop_too_small_to_be_rounded_stays_where_it_is():
    speck = Slot(id="speck", shape=DrawnSlot(loop=Loop(nodes=(Node(at=(5.0, 50.0)), Node(at=(5.0 + 1e-10, 50.0)), Node(at=(5.0, 50.0 + 1e-10))))))
    assert at_home(speck) == (speck, (0.0, 0.0))


def test_holes_for_the_waste_go_with_the_slot(monkeypatch):
    """They are looked for once, and stand in the slot wherever it is."""
    asked = []
    lines = medial.middle_lines
    monkeypatch.setattr(medial, "middle_lines", lambda *given: asked.append(given) or lines(*given))
    waste._drawn.cache_clear()
    slot, rack = waisted(), with_rack(head(), drills=(replace(BRAD, diameter=8.0),))
    made = drill_waste(slot, rack.blank, rack.rack)
    for by in ELSEWHERE:
        moved = moved_slot(slot, by)
        there = drill_waste(moved, rack.blank, rack.rack)
        for one, other in zip(made.centres, there.centres, strict=True):
            assert other == (pytest.approx(one[0] + by[0], abs=1e-9), pytest.approx(one[1] + by[1], abs=1e-9))
        assert (there.spacing, there.left_most, narrowest(moved)) == (made.spacing, made.left_most, narrowest(slot))
    assert len(asked) == 1
