"""Slots: ends, sizes, new ones."""

import pytest

from geometry.curves import circle
from geometry.edits import (
    add_drawn_slot,
    add_straight_slot,
    move_features,
    move_slot_end,
    new_ids,
    set_slot_length,
    set_slot_width,
    to_drawn,
)
from geometry.errors import GeometryError
from geometry.layout import slot_path
from tests.geometry.edits.heads import curved, demo, plain, sound


def shape(layout, id="treble slot"):
    return next(slot for slot in layout.slots if slot.id == id).shape


def test_a_slot_moves_whole_or_by_an_end():
    moved = sound(move_features(plain(), ("treble slot",), (1.0, -2.0)))
    assert (shape(moved).nut_end, shape(moved).tip_end) == ((18.0, 38.0), (18.0, 148.0))
    end = sound(move_slot_end(plain(), "treble slot", "tip", (19.0, 140.0)))
    assert (shape(end).nut_end, shape(end).tip_end) == ((17.0, 40.0), (19.0, 140.0))
    drawn = sound(move_features(plain(), ("heart",), (0.0, 5.0)))
    assert slot_path(drawn.slots[1]).area == pytest.approx(slot_path(plain().slots[1]).area)
    assert move_features(drawn, ("heart",), (0.0, -5.0)) == plain()


def test_sizes():
    assert shape(set_slot_width(plain(), "treble slot", 11.0)).width == 11.0
    assert shape(set_slot_length(plain(), "treble slot", 100.0)).tip_end == pytest.approx((17.0, 127.0))
    assert shape(set_slot_length(plain(), "treble slot", 100.0, "tip")).nut_end == pytest.approx((17.0, 63.0))
    round_hole = set_slot_length(plain(), "treble slot", 13.0)
    assert shape(round_hole).tip_end == (17.0, 40.0)
    assert shape(set_slot_length(round_hole, "treble slot", 20.0)).tip_end == pytest.approx((17.0, 47.0))


def test_new_slots_are_named_for_their_side_and_lie_the_right_way_up():
    made = sound(add_straight_slot(plain(), (-17.0, 150.0), (-17.0, 40.0), 12.0, 8.0))
    assert new_ids(plain(), made) == ("bass slot",)
    assert shape(made, "bass slot").nut_end == (-17.0, 40.0)
    again = add_straight_slot(made, (17.0, 40.0), (17.0, 50.0), 12.0)
    assert new_ids(made, again) == ("treble slot 2",)
    middle = sound(add_drawn_slot(again, circle((0.0, 60.0), 8.0).reversed(), 4.0))
    assert new_ids(again, middle) == ("slot 1",)
    assert slot_path(middle.slots[-1]).area == pytest.approx(64 * 3.141592653589793)


def test_a_straight_slot_can_be_drawn_on():
    made = sound(to_drawn(demo(), "bass slot"))
    assert slot_path(made.slots[0]).area == pytest.approx(slot_path(demo().slots[0]).area, abs=1e-9)
    assert all(node.smooth for node in made.slots[0].shape.loop.nodes)


def test_refusals():
    head = curved()
    for sentence, edit in (
            ("drawn freely", lambda: move_slot_end(head, "heart", "tip", (0.0, 0.0))),
            ("Treble slot: width must be above 0", lambda: set_slot_width(head, "treble slot", 0.0)),
            ("cannot be shorter", lambda: set_slot_length(head, "treble slot", 12.0)),
            ("width must be above 0", lambda: add_straight_slot(head, (0.0, 1.0), (0.0, 2.0), -2.0))):
        with pytest.raises(GeometryError, match=sentence):
            edit()
