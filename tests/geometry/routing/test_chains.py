"""Properties of plans with several bits: each pass goes on where the last one ended, and corners come last."""

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.drawing.router_picture import pass_picture
from geometry.edits.rack import choose_route
from geometry.layout import Rack
from geometry.routing.search import plan_slot
from geometry.routing.together import plan_routing
from geometry.sequence import best_order, operations, precedence
from tests.geometry.routing.specimens import BRAD, bit, drawn, head, rubbing, straight, with_rack

LADDERS = st.lists(st.tuples(st.floats(6, 30), st.floats(4, 14), st.booleans(), st.sampled_from(["none", "shank"])),
                   min_size=2, max_size=7)


def ladder(steps):
    """Bits of one cutter, each with its own length of edges and reach."""
    return [bit(f"b{i}", cutter=10, cutting=round(length, 1), shank=10.0 if thick and kind == "none" else 8.0,
                out=round(6 + length + more, 1), bearing=kind, high=5.0) for i, (length, more, thick, kind) in enumerate(steps)]


@settings(max_examples=120, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
@given(LADDERS, st.sampled_from([18.0, 26.0, 34.0, 42.0]), st.booleans())
def test_a_chain_of_bits_leaves_no_step_out(steps, depth, blind):
    slot = straight(depth=depth) if blind else straight()
    layout = with_rack(head(slot, thickness=depth + 10.0 if blind else depth), *ladder(steps))
    found = plan_slot(layout.slots[0], layout)
    for one in found.plans:
        cut = {"face": 0.0, "back": 0.0}
        sides = [p.side for p in one.passes]
        assert sides == sorted(sides, reverse=True) and (not blind or set(sides) == {"face"})
        for p in one.passes:
            assert abs(p.begins - cut[p.side]) < 1e-6, "every pass goes on where the one before ended"
            assert 0 < p.takes <= min(10.0, p.follower.bit.cutting_length) + 1e-6
            assert any(p.contact == pytest.approx(told) for told in rubbing(p, 6.0)) and p.contact >= 3 - 1e-6
            assert not p.light
            assert p.ends <= p.follower.bit.stick_out - 6 + 1e-6
            if p.rubs_on == "wall already cut":
                assert p.ends - p.takes >= 3 - 1e-6, "there is a wall to rub on"
            cut[p.side] = p.ends
        assert cut["face"] + cut["back"] >= depth + one.flips - 1e-6
        assert len(one.bits) <= 3


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
@given(st.sampled_from([10.0, 12.0, 12.7]), st.sampled_from([3.0, 4.0, 6.0, 8.0]), st.sampled_from([16.0, 20.0, 24.0]))
def test_a_corner_bit_takes_what_the_wide_one_leaves(wide, slim, thickness):
    tools = [bit("wide", cutter=wide, cutting=16, bearing="shank", high=5, out=40),
             bit("slim", cutter=slim, cutting=min(slim * 1.5 + 2, 12), shank=slim, bearing="shank", high=5, out=40)]
    slot = drawn((0.0, 40.0), (16.0, 40.0), (16.0, 140.0), (0.0, 140.0))
    layout = with_rack(head(slot, thickness=thickness), *tools, drills=(BRAD,))
    more = next((p for p in plan_slot(slot, layout).plans if any(one.corners for one in p.passes)), None)
    assume(more is not None)
    cuts = [one for one in more.passes if one.side == "face"]
    assert [one.corners for one in cuts] == sorted(one.corners for one in cuts), "the corners come last on each side"
    assert {one.bit for one in more.passes if one.corners} == {"slim"}
    share = 2 ** 0.5 - 1
    assert abs(more.corner_wood - share * wide / 2) < 0.02 and abs(more.reached.left_depth - share * slim / 2) < 0.02
    assert all(abs(one.follower.offset - more.offset) < 1e-9 for one in more.passes)
    for number in range(len(more.passes)):
        assert pass_picture(more, number)
    chosen = choose_route(layout, "slot", more.tools)
    ops = operations(chosen, plan_routing(chosen))
    routs = [op for op in ops if op.features == ("slot",) and op.setup.machine == "router"]
    assert any("rout the corners of slot with slim" in op.words for op in routs)
    assert not any(op.blocked for op in routs)
    order = best_order(ops, tuple(precedence(chosen, ops)))
    assert [id for id in order.steps if id in {op.id for op in routs}] == [op.id for op in routs]


def test_the_empty_rack_has_no_plan_and_says_what_to_buy():
    layout = head(straight(), rack=Rack())
    found = plan_slot(layout.slots[0], layout)
    assert found.best is None and found.verdicts == () and "would" in found.would[0]
    assert replace(layout, rack=Rack()) == layout
