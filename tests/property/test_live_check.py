"""Checking only what changed gives what checking everything gives, to the last bit."""

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.checks import LiveCheck, check
from tests.property.layouts import DEMO, SAMPLES, edited

_QUICK = (Phase.explicit, Phase.generate)
"""No shrinking: a drawn edit sequence is as readable as its shrunk kin, and shrinking takes minutes."""


_HEADS = [DEMO, *map(read, SAMPLES)]


@settings(phases=_QUICK, max_examples=40)
@given(st.data())
def test_live_check_equals_check_over_edits(data):
    live, layout = LiveCheck(), data.draw(st.sampled_from(_HEADS))
    before = [layout]
    assert live.check(layout) == check(layout)
    for _ in range(data.draw(st.integers(1, 6))):
        back = data.draw(st.integers(0, 5)) == 0
        layout = data.draw(st.sampled_from(before)) if back else data.draw(edited(layout))
        before.append(layout)
        assert live.check(layout) == check(layout)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.name)
def test_going_to_another_layout_forgets_nothing_it_needs(path):
    live = LiveCheck()
    for layout in (DEMO, read(path), DEMO, read(path)):
        assert live.check(layout) == check(layout)


@given(st.permutations(DEMO.tuners), st.permutations(DEMO.slots), st.permutations(DEMO.pins), st.data())
@settings(phases=_QUICK, max_examples=15)
def test_features_in_another_order_are_told_anew(tuners, slots, pins, data):
    """What is kept goes by places: another order, then a move, then the first order again."""
    live, turned = LiveCheck(), replace(DEMO, tuners=tuple(tuners), slots=tuple(slots), pins=tuple(pins))
    moved = data.draw(edited(turned))
    for layout in (DEMO, turned, moved, DEMO, moved):
        assert live.check(layout) == check(layout)
