"""The page of a slot: a straight one can be given a wall of nodes, to be shaped by hand."""

import pytest

from app.panels.describe import describe
from app.panels.several import several
from geometry.edits import add_straight_slot
from geometry.edits.parts import shaped_loop
from geometry.layout import slot_path
from tests.geometry.edits.heads import demo


def test_a_straight_slot_gets_nodes_and_keeps_its_shape() -> None:
    layout, label = demo(), "Shape its wall freely"
    slot = layout.slots[0]
    row, = [row for row in describe(layout, slot.id, "mm").fields if row.label == label]
    made = row.change(None)
    assert shaped_loop(layout, slot.id) is None and shaped_loop(made, slot.id) is not None
    assert slot_path(made.slots[0]).area == pytest.approx(slot_path(slot).area, abs=1e-9)
    assert made.slots[0].ramp == slot.ramp and made.slots[1:] == layout.slots[1:]
    assert label not in [row.label for row in describe(made, slot.id, "mm").fields]


def test_slots_that_are_held_together_are_joined_by_a_button() -> None:
    layout = add_straight_slot(demo(), (-15.0, 150.0), (-30.0, 150.0), 8.0)
    held = (layout.slots[0].id, layout.slots[-1].id)
    row, = [row for row in several(layout, held, "mm").fields if row.label == "Join into one slot"]
    assert [slot.id for slot in row.change(None).slots] == [slot.id for slot in demo().slots]
