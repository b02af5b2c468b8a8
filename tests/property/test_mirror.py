"""A mirrored layout has the mirrored snags; mirrored twice it is the layout again."""

from collections import Counter

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from geometry.checks import check
from geometry.edits import mirror_layout
from geometry.edits.slots import swapped_sides
from tests.property.layouts import DEMO, edited

_QUICK = (Phase.explicit, Phase.reuse, Phase.generate)
"""No shrinking: a drawn edit sequence is as readable as its shrunk kin, and shrinking takes minutes."""

_STABLE = 3
"""decimals: what the last bits of a mirrored computation may not change"""


def _seen(snag, mirrored):
    measured = None if snag.measured is None else round(snag.measured, _STABLE)
    between = tuple(sorted(swapped_sides(one) if mirrored else one for one in snag.between))
    return snag.kind, snag.grade, between, measured


@settings(phases=_QUICK, max_examples=40)
@given(st.data())
def test_mirrored_snags(data):
    layout = DEMO
    for _ in range(data.draw(st.integers(0, 4))):
        layout = data.draw(edited(layout))
    here, there = check(layout), check(mirror_layout(layout))
    assert here.counts == there.counts
    one = Counter(_seen(snag, False) for snag in here.snags)
    two = Counter(_seen(snag, True) for snag in there.snags)
    assert one.total() == two.total()
    # A value that rounds the other way at the third decimal counts as the same snag.
    left, right = one - two, two - one
    assert Counter(key[:3] for key in left.elements()) == Counter(key[:3] for key in right.elements())
    for key in left:
        assert any(key[:3] == other[:3] and abs((key[3] or 0) - (other[3] or 0)) < 0.01 for other in right)


@settings(phases=_QUICK, max_examples=40)
@given(st.data())
def test_twice_is_the_same_layout(data):
    layout = data.draw(edited(DEMO))
    once, twice = check(layout).snags, check(mirror_layout(mirror_layout(layout))).snags
    assert [snag.kind for snag in once] == [snag.kind for snag in twice]
    for one, two in zip(once, twice, strict=True):
        assert (one.grade, one.between) == (two.grade, two.between)
        assert one.where == pytest.approx(two.where, abs=1e-6)
        assert one.measured == pytest.approx(two.measured, abs=1e-6)


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_the_corner_at_the_nut_counts_on_either_side(side):
    """The nut line begins near a bore this low on the edge: its first chord may not be taken for the bore's own mouth."""
    tuner = f"{side} side 3"
    tuners = tuple(replace(one, place=replace(one.place, along=7.0)) if one.id == tuner else one for one in DEMO.tuners)
    found = [snag for snag in check(replace(DEMO, tuners=tuners)).snags
             if snag.kind == "side-bore-to-outline" and tuner in snag.between]
    assert [snag.measured for snag in found] == [pytest.approx(3.821, abs=1e-3)]
