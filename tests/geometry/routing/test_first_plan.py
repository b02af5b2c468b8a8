"""The first plan by itself: the first of all plans, with as few bits as possible looked at in plan."""

import math

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.layout import Route, Template, Tool
from geometry.routing import first_plan
from geometry.routing.first_plan import first_of_slot
from geometry.routing.search import plan_slot
from tests.benchmarks.heads import waisted
from tests.geometry.routing.specimens import BRAD, BUSH, bit, drawn, head, straight, with_rack
from tests.geometry.routing.test_search import RACKS

STAR = drawn(*[((14.0 if k % 2 else 20.0) * math.cos(k * math.pi / 6), 60 + (14.0 if k % 2 else 20.0) * math.sin(k * math.pi / 6))
               for k in range(12)])
SLOTS = [straight(), straight(width=8.0, depth=9.0), straight(width=9.99), waisted(), replace(waisted(), depth=10.0), STAR,
         drawn((0.0, 40.0), (11.0, 40.0), (11.0, 120.0), (0.0, 120.0))]


@settings(max_examples=150, suppress_health_check=[HealthCheck.too_slow])
@given(RACKS, st.sampled_from(SLOTS), st.sampled_from([8.0, 16.0, 22.0, 30.0]), st.sampled_from([4.0, 6.0, 12.0]), st.booleans(),
       st.integers(0, 5), st.booleans())
def test_it_is_the_first_of_all_plans(bits, slot, thickness, template, drilled, number, bush):
    layout = with_rack(head(slot, thickness=thickness, template=template), *bits, bushes=(BUSH,), drills=(BRAD,) if drilled else ())
    chosen = bits[number % len(bits)]
    layout = replace(layout, template=replace(layout.template, bit=chosen.id, bush=BUSH.id if bush and chosen.bearing == "none" else None))
    best = plan_slot(slot, layout).best
    assert first_of_slot(slot, layout) == (None if best is None else best.passes)


@pytest.mark.parametrize("tools", [("slim",), ("slim", "wide"), ("gone",)])
def test_it_is_the_makers_own_choice(tools):
    slot = straight()
    layout = with_rack(head(slot), bit("wide", cutter=12, bearing="shank"), bit("slim", cutter=8, bearing="shank"), drills=(BRAD,))
    layout = replace(layout, routes=(Route(of=slot.id, tools=tuple(Tool(bit=one) for one in tools)),))
    assert first_of_slot(slot, layout) == plan_slot(slot, layout).best.passes


def test_one_bit_is_looked_at_in_plan_where_it_does(monkeypatch):
    """Of ten that come down as deep the one on the maker's template; how wide the slot is at most is asked for none of them."""
    looked, asked = [], []
    own, wide = first_plan.slot_reached, first_plan.widest
    monkeypatch.setattr(first_plan, "slot_reached", lambda slot, *size: looked.append(size) or own(slot, *size))
    monkeypatch.setattr(first_plan, "widest", lambda slot: asked.append(slot) or wide(slot))
    bits = [bit(f"b{k}", cutter=11.0 + k / 10, shank=8.0, bearing=("none", "shank")[k % 2], high=5.0) for k in range(10)]
    slot = STAR
    layout = replace(with_rack(head(slot), *bits, drills=(BRAD,)), template=Template(thickness=6.0, bit="b5"))
    assert {one.bit for one in first_of_slot(slot, layout)} == {"b5"}
    assert looked == [(11.5, 0.0)] and not asked
