"""Edits of slots: straight ones with round ends, and drawn ones."""

from __future__ import annotations

import math
from typing import Literal

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Path, shift
from geometry.edits.loops import flipped, with_smooth
from geometry.edits.parts import appended, point, slot_of, with_feature
from geometry.edits.twins import NEAR
from geometry.edits.whole import mapped_loop
from geometry.errors import GeometryError
from geometry.layout import DrawnSlot, Headstock, Loop, Slot, StraightSlot, loop_of, slot_path
from geometry.layout.names import feature_names
from geometry.lengths import mm
from geometry.saying import say
from geometry.terms import given
from geometry.vectors import Vec2

SlotEnd = Literal["nut", "tip"]


def move_slot_end(layout: Headstock, id: str, end: SlotEnd, to: Vec2) -> Headstock:
    """The centre of a straight slot's round end put at a point in mm; the other end stays."""
    slot = _straight(layout, id)
    return with_feature(layout, replace(slot, shape=replace(slot.shape, **{f"{end}_end": point(to)})))


def set_slot_length(layout: Headstock, id: str, length: float, fixed: SlotEnd = "nut") -> Headstock:
    """A straight slot made `length` mm long over its round ends, one end held where it is, evenly across the centreline its middle.

    GeometryError under its width; a slot that is a round hole grows towards the tip.
    """
    slot = _straight(layout, id)
    shape = slot.shape
    if not length >= shape.width:
        raise GeometryError(say("Slot {id} is {width} wide, so it cannot be shorter than that.",
                                id=id, width=mm(shape.width)))
    kept, other = (shape.nut_end, shape.tip_end) if fixed == "nut" else (shape.tip_end, shape.nut_end)
    if v.distance(kept, other) < 1e-9:
        way = (0.0, 1.0) if fixed == "nut" else (0.0, -1.0)
    elif lies_across(shape):
        far = math.copysign((length - shape.width) / 2, shape.nut_end[0])
        return with_feature(layout, replace(slot, shape=replace(shape, nut_end=(far, kept[1]), tip_end=(-far, other[1]))))
    else:
        way = v.unit(v.sub(other, kept))
    return move_slot_end(layout, id, "tip" if fixed == "nut" else "nut", v.along(kept, way, length - shape.width))


def set_slot_width(layout: Headstock, id: str, width: float) -> Headstock:
    """A straight slot made `width` mm wide about its middle line."""
    slot = _straight(layout, id)
    return with_feature(layout, replace(slot, shape=replace(slot.shape, width=width)))


def add_straight_slot(layout: Headstock, one: Vec2, two: Vec2, width: float, depth: float | None = None) -> Headstock:
    """A new straight slot between two end centres (mm); the lower one becomes its nut end. It comes last."""
    one, two = point(one), point(two)
    nut_end, tip_end = (one, two) if one[1] <= two[1] else (two, one)
    name = _name(layout, (nut_end[0] + tip_end[0]) / 2)
    return appended(layout, "slots", Slot(id=name, depth=depth,
                                          shape=StraightSlot(nut_end=nut_end, tip_end=tip_end, width=width)))


def add_drawn_slot(layout: Headstock, wall: Path, depth: float | None = None) -> Headstock:
    """A new slot with any closed wall (mm), made counter-clockwise. It comes last."""
    loop = with_smooth(loop_of(wall.counter_clockwise()))
    box = wall.box
    return appended(layout, "slots", Slot(id=_name(layout, (box[0] + box[2]) / 2), shape=DrawnSlot(loop=loop),
                                          depth=depth))


def to_drawn(layout: Headstock, id: str) -> Headstock:
    """A straight slot turned into a drawn one of exactly the same shape, so that its nodes can be edited."""
    slot = _straight(layout, id)
    loop = with_smooth(loop_of(slot_path(slot)))
    return with_feature(layout, replace(slot, shape=DrawnSlot(loop=loop)))


def lies_across(shape: StraightSlot) -> bool:
    """Whether its ends are each other's mirror images, to within NEAR."""
    return v.distance(v.mirrored(shape.nut_end), shape.tip_end) <= NEAR < abs(shape.nut_end[0])


def moved_slot(slot: Slot, by: Vec2) -> Slot:
    """A slot moved by a vector, nothing checked."""
    shape = slot.shape
    if isinstance(shape, StraightSlot):
        return replace(slot, shape=replace(shape, nut_end=v.add(shape.nut_end, by), tip_end=v.add(shape.tip_end, by)))
    return replace(slot, shape=DrawnSlot(loop=mapped_loop(shape.loop, shift(*by))))


def flipped_slot(slot: Slot) -> Slot:
    """A slot mirrored about the centreline, nothing checked; twice gives the same slot."""
    shape = slot.shape
    if isinstance(shape, StraightSlot):
        return replace(slot, shape=replace(shape, nut_end=v.mirrored(shape.nut_end), tip_end=v.mirrored(shape.tip_end)))
    return replace(slot, shape=DrawnSlot(loop=Loop(nodes=tuple(flipped(list(shape.loop.nodes))))))


_SIDES = (("bass", "treble"), ("Bass", "Treble"),
          *((f"Bass{what}", f"Diskant{what}") for what in ("seite", "reihe", "schlitz", "ohr")))
_OTHER_WORD = {word: other for one, two in _SIDES for word, other in ((one, two), (two, one))}
"""Words of either side in the names that are given in any language (`geometry.terms.given`): each stands for one other alone."""


def swapped_sides(name: str) -> str:
    """A name with the words bass and treble exchanged, unchanged where it would grow over 60 signs. Done twice it is the name again."""
    swapped = " ".join(_OTHER_WORD.get(word, word) for word in name.split(" "))
    return swapped if len(swapped) <= 60 else name


def _straight(layout: Headstock, id: str) -> Slot:
    slot = slot_of(layout, id)
    if not isinstance(slot.shape, StraightSlot):
        raise GeometryError(say("Slot {id} is drawn freely: it has no ends and no width, only nodes.", id=id))
    return slot


def _name(layout: Headstock, x: float) -> str:
    names = feature_names(layout)
    return names.numbered(given("slot")) if abs(x) < 1.0 else names.alike(given("treble slot" if x > 0 else "bass slot"))
