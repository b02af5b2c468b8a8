"""Flats that go through the rail into a slot, or so deep that their bottom meets no wall of it at all."""

import pytest

from geometry.checks import check
from geometry.layout import Flat
from tests.geometry.checks.heads import bore, head, pattern, side, slot

SEAT = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0), seat=(12.0, 12.0, 10.0))


def _rails(side_of, depth):
    """The slot is 12 wide and stands 8 mm inside the edge x = 40, or its mirror image."""
    x = 26.0 if side_of == "treble" else -26.0
    layout = head(tuners=(side("a", 90.0, SEAT, edge=side_of, flat=Flat(size=24.0, depth=depth)),), patterns=(SEAT,), slots=(slot(x=x),))
    return [snag for snag in check(layout).snags if snag.kind == "flat-rail"]


@pytest.mark.parametrize("side_of", ["bass", "treble"])
@pytest.mark.parametrize(("depth", "measured", "grade"), [
    (3.0, 5.0, "tight"), (9.0, -1.0, "spoils the work"), (14.0, -6.0, "spoils the work"), (30.0, -22.0, "spoils the work")])
def test_a_flat_that_goes_through_its_rail_is_told_by_how_much(side_of, depth, measured, grade):
    (snag,) = _rails(side_of, depth)
    assert snag.measured == pytest.approx(measured, abs=1e-9) and snag.grade == grade
