"""The measures that a truss rod's pocket begins with."""

import pytest

from geometry.edits.pockets import usual_pocket
from geometry.units import format_length


def test_usual_measures_are_round_in_the_unit_of_who_works():
    """12 x 28 x 10 mm; 1/2, 1 1/8 and 3/8 inch (common practice, no source)."""
    assert usual_pocket("mm", 16.0) == (12.0, 28.0, 10.0)
    for unit in ("in", "in64"):
        assert [format_length(size, "in64", mark=True) for size in usual_pocket(unit, 15.875)] == ['1/2"', '1 1/8"', '3/8"']


def test_thin_wood_has_a_shallower_pocket_in_round_numbers():
    """Seven tenths of 13 mm are 9.1 mm; of 1/2 inch they are 0.35, which is 5/16 and a bit; of 0.5 mm less than the least step."""
    assert usual_pocket("mm", 13.0)[2] == 9.0
    assert usual_pocket("in64", 12.7)[2] == pytest.approx(25.4 * 5 / 16)
    assert usual_pocket("mm", 10.0)[2] == 7.0, "just as deep as it may be"
    assert usual_pocket("mm", 0.5)[2] == pytest.approx(0.35)
