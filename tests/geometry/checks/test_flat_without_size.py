"""A flat so small that its two ends are one place ended the whole program: its rail is measured from that place."""

import pytest

from geometry.checks import check
from geometry.layout import Flat
from tests.geometry.checks.heads import head, side, slot
from tests.geometry.checks.test_flats import SEAT


@pytest.mark.parametrize("size", [1e-300, 1e-14])
def test_the_rail_of_a_flat_without_size_is_that_of_its_middle(size):
    def rails(size):
        layout = head(tuners=(side("a", 90.0, SEAT, edge="treble", flat=Flat(size=size, depth=1.0)),), patterns=(SEAT,), slots=(slot(x=34.0),))
        return [snag.measured for snag in check(layout).snags if snag.kind == "flat-rail"]
    assert len(rails(1e-6)) == 1 and rails(size) == pytest.approx(rails(1e-6), abs=1e-5)
