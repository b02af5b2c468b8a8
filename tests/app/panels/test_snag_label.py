"""What stands at a snag's ring on the drawing: what there is of what is wanted, never more than there is."""

import pytest
from msgspec.structs import replace

from app.panels.snags.snag_words import numbers
from geometry.checks import check
from tests.geometry.edits.heads import demo


@pytest.fixture(scope="module")
def snag():
    return check(demo()).snags[0]


@pytest.mark.parametrize(("measured", "needed", "unit", "words"), [
    (1.4, 3.0, "mm", "1.4 of 3.0"), (2.76, 3.0, "mm", "2.7 of 3.0"), (2.97, 3.0, "mm", "2.97 of 3.00"),
    (-0.04, 3.0, "mm", "-0.04 of 3.00"), (0.0, 3.0, "mm", "0.00 of 3.00"), (12.69, 12.7, "in", '0.499" of 0.5"'),
    (12.69, 12.7, "in64", '0.499" of 0.5"'), (6.35, 12.7, "in64", '1/4" of 1/2"')])
def test_the_numbers_at_a_ring(snag, measured, needed, unit, words):
    """A clearance that lacks a hair is told with so many decimals that it shows."""
    assert numbers(replace(snag, measured=measured, needed=needed, unit="mm"), unit) == words
