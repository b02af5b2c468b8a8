"""Where a held slot, pin or hole is cut."""

import pytest

from geometry.drawing.held_line import BEYOND, held_line
from geometry.drawing.line_section import line_section
from geometry.drawing.marks import Area, Label
from geometry.edits import to_drawn
from tests.geometry.edits.heads import demo


def test_a_slot_is_cut_lengthwise_and_told_in_its_length():
    head = demo()
    slot = head.slots[1]
    a, b = held_line(head, slot.id)
    assert a == pytest.approx((slot.shape.nut_end[0], slot.shape.nut_end[1] - slot.shape.width / 2 - BEYOND))
    drawing = line_section(head, a, b)
    assert any(isinstance(mark, Area) and mark.style == "slot" for mark in drawing)
    # 131 mm between the ends and 13 mm for the round ends.
    assert "144" in {mark.text.removesuffix(".0") for mark in drawing if isinstance(mark, Label)}
    same = held_line(to_drawn(head, slot.id), slot.id)
    assert same == (pytest.approx(a), pytest.approx(b))


def test_a_pin_is_cut_straight_across_and_nothing_else_has_a_line():
    head = demo()
    pin = head.pins[0]
    (x0, y0), (x1, y1) = held_line(head, pin.id)
    assert y0 == y1 == pin.at[1] and x0 < pin.at[0] < x1
    assert held_line(head, "outline") is None and held_line(head, head.tuners[0].id) is None
