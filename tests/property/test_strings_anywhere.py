"""Strings, ramps and flats in layouts that make little sense: checked, never refused, never overstated by a mirror."""

import math

from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check
from geometry.edits import mirror_layout
from geometry.layout import Flat, Nut, Ramp, Slot, StraightSlot
from tests.property.layouts import DEMO

PLACES = st.tuples(st.floats(-40, 40), st.floats(-20, 190))
STRINGS = ("string-to-wall", "string-to-nut-end", "string-to-ramp", "string-to-post", "string-to-string", "flat-rail")


@settings(max_examples=40)
@given(PLACES, PLACES, st.floats(4, 40), st.floats(0.5, 30), st.floats(0.2, 20), st.none() | st.floats(1, 60),
       st.floats(0.1, 12), st.none() | st.floats(2, 16), st.sampled_from(["bass", "treble"]))
def test_any_slot_and_ramp_is_checked_and_its_mirror_alike(a, b, width, length, depth, wide, height, blind, winds):
    slot = Slot(id="bass slot", shape=StraightSlot(nut_end=a, tip_end=b, width=width), depth=blind,
                ramp=Ramp(length=length, depth=depth, width=wide))
    layout = replace(DEMO, slots=(slot,), nut=Nut(spread=40.0, height=height), tuners=tuple(
        replace(t, winds=winds, flat=Flat(size=20.0, depth=0.4)) if t.id.startswith("bass side") else t
        for t in DEMO.tuners))
    found = _measures(layout)
    assert all(math.isfinite(value) for _, value in found)
    for (kind, one), (other, two) in zip(found, _measures(mirror_layout(layout)), strict=True):
        assert kind == other and abs(one - two) < 0.01
    check(replace(layout, slots=(replace(slot, ramp=None),)))


def _measures(layout):
    return sorted((snag.kind, snag.measured) for snag in check(layout).snags if snag.kind in STRINGS)
