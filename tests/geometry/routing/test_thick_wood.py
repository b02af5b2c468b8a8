"""Wood as thick as a file may say: a plan or what would do is told without trying thousands of bits."""

import pytest

from geometry.routing import would
from geometry.routing.search import plan_outline
from tests.geometry.routing.specimens import bit, head, straight, with_rack


@pytest.fixture
def tried(monkeypatch):
    """Cutting lengths of the new bits that are tried."""
    lengths = []

    def alone(bit, *more, real=would.alone):
        if bit.id == "new":
            lengths.append(bit.cutting_length)
        return real(bit, *more)
    monkeypatch.setattr(would, "alone", alone)
    return lengths


@pytest.mark.parametrize("thickness", [150.0, 5000.0])
def test_no_bit_longer_than_bits_are_is_tried_or_proposed(tried, thickness):
    found = plan_outline(with_rack(head(straight(), thickness=thickness), bit("short", cutter=10, cutting=8, shank=10, out=15)))
    assert found.best is None
    assert tried and max(tried) <= would.LONGEST_CUT and len(tried) < 15_000
