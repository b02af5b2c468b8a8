"""What must be held, in words."""

import pytest

from app.formats import headstock
from app.panels.snags.need_words import amount, left_out_words
from app.window.demo import demo, samples
from geometry.accuracy import Need
from geometry.checks import check


@pytest.mark.parametrize(("value", "unit", "told"), [
    (0.15, "mm", "±0.15 mm"), (0.15, "in", '±0.0059"'), (0.15, "in64", '±0.0059"'), (0.01, "in", '±0.0003"'),
    (1.27, "in", '±0.05"')])
def test_a_half_width_is_never_told_wider_than_it_may_be(value, unit, told):
    assert amount(Need("drill", 0.5, value, "mm", ()), value, unit) == told


def test_the_length_it_is_held_over_is_told_in_the_same_unit():
    need = Need("drill", 0.5, 0.2, "mm per 50 mm", ())
    assert amount(need, need.wanted, "mm") == "±0.2 mm in 50 mm"
    assert amount(need, need.wanted, "in") == '±0.0078" in 1.969"'


def test_what_spoils_the_work_and_has_no_chance_is_told_before_any_chance():
    slotted = headstock.read(samples() / "slotted-snags-to-find.headstock.json")
    assert left_out_words(check(slotted).snags).startswith("As drawn one snag spoils the work"), "plates over each other"
    assert left_out_words(check(demo()).snags) == ""
