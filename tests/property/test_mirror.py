"""A mirrored layout has the mirrored snags; mirrored twice it is the layout again."""

import math
from collections import Counter
from pathlib import Path

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from app.formats.headstock import read
from geometry.checks import check
from geometry.edits import mirror_layout
from geometry.edits.slots import swapped_sides
from geometry.solids import holes
from tests.geometry.checks.heads import FACE, face, head
from tests.property.layouts import DEMO, edited

_QUICK = (Phase.explicit, Phase.generate)
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


HEADS = {path.name.partition(".")[0]: read(path) for path in sorted((Path(__file__).parents[2] / "samples").glob("*.headstock.json"))}


@pytest.mark.parametrize("name", HEADS)
def test_every_drilling_of_a_sample_is_mirrored_and_twice_gives_the_same_layout(name):
    layout = HEADS[name]
    once = mirror_layout(layout)
    assert mirror_layout(once) == layout

    def drilled(of, sign):
        """Two screws that are each other's image change their numbers."""
        return sorted((swapped_sides(d.of) if sign < 0 else d.of, d.role, d.diameter, d.through,
                       swapped_sides(d.surface) if sign < 0 else d.surface,
                       *(round(c, 6) + 0.0 for x, y, z in (d.start, d.end, d.mark or d.start) for c in (sign * x, y, z)),
                       round(d.depth, 6), round(d.stop, 6)) for hole in holes(of) for d in hole.drillings)
    found = drilled(once, 1.0)
    assert len(found) > 10
    for two, one in zip(found, drilled(layout, -1.0), strict=True):
        assert two[:5] == one[:5] and two[5:] == pytest.approx(one[5:], abs=2e-6)


def test_a_button_turned_any_way_comes_back_when_mirrored_twice():
    layout = head(tuners=(face("a", 20.0, 90.0),), patterns=(FACE,))
    tuner = layout.tuners[0]
    for half_degrees in range(-719, 721):
        turned = replace(tuner, place=replace(tuner.place, turn=half_degrees / 2))
        once = mirror_layout(replace(layout, tuners=(turned,)))
        assert math.cos(math.radians(once.tuners[0].place.turn)) == pytest.approx(-math.cos(math.radians(half_degrees / 2)))
        assert math.sin(math.radians(once.tuners[0].place.turn)) == pytest.approx(math.sin(math.radians(half_degrees / 2)))
        assert mirror_layout(once).tuners[0].place.turn == half_degrees / 2


@pytest.mark.parametrize("side", ["bass", "treble"])
def test_the_corner_at_the_nut_counts_on_either_side(side):
    """The nut line begins near a bore this low on the edge: its first chord may not be taken for the bore's own mouth."""
    tuner = f"{side} side 3"
    tuners = tuple(replace(one, place=replace(one.place, along=7.0)) if one.id == tuner else one for one in DEMO.tuners)
    found = [snag for snag in check(replace(DEMO, tuners=tuners)).snags
             if snag.kind == "side-bore-to-outline" and tuner in snag.between]
    assert [snag.measured for snag in found] == [pytest.approx(3.821, abs=1e-3)]
