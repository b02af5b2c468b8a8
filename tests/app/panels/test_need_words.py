"""What must be held, in words."""

import pytest

from app.panels.snags.need_words import amount
from geometry.accuracy import Need


@pytest.mark.parametrize(("value", "unit", "told"), [
    (0.15, "mm", "±0.15 mm"), (0.15, "in", '±0.0059"'), (0.15, "in64", '±0.0059"'), (0.01, "in", '±0.0003"'),
    (1.27, "in", '±0.05"')])
def test_a_half_width_is_never_told_wider_than_it_may_be(value, unit, told):
    assert amount(Need("drill", 0.5, value, "mm", ()), value, unit) == told


def test_the_length_it_is_held_over_is_told_in_the_same_unit():
    need = Need("drill", 0.5, 0.2, "mm per 50 mm", ())
    assert amount(need, need.wanted, "mm") == "±0.2 mm in 50 mm"
    assert amount(need, need.wanted, "in") == '±0.0078" in 1.969"'
