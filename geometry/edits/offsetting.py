"""Offset copies: the outline set in or out all round, a slot made wider or narrower, or a new slot beside either."""

from __future__ import annotations

import math

from geometry.curves import Path
from geometry.curves.matrix import turn
from geometry.curves.offset_line import offset_line
from geometry.edits.parts import loop_at
from geometry.edits.slots import add_drawn_slot, add_straight_slot, set_slot_width
from geometry.edits.whole import replace_loop
from geometry.errors import GeometryError
from geometry.layout import Headstock, StraightSlot, loop_path
from geometry.layout.edges import end_line
from geometry.layout.names import OUTLINE
from geometry.saying import say


def offset_in_place(layout: Headstock, ref: str, by: float) -> Headstock:
    """The outline or a slot grown by `by` mm all round, shrunk when negative. The nut line, slanted or not, keeps its place.

    GeometryError when the line turns too tightly for that, or nothing is left.
    """
    slot = _straight(layout, ref)
    if slot is not None:
        return set_slot_width(layout, ref, _width(slot, by))
    if ref != OUTLINE:
        return replace_loop(layout, ref, offset_line(_path(layout, ref), by))
    end, ahead = end_line(layout.outline)
    slant = math.atan2(*ahead)
    level = turn(slant)
    made = offset_line(_path(layout, ref).mapped(level), by, level(end)[1] if slant else 0.0)
    return replace_loop(layout, ref, made.mapped(turn(-slant)))


def offset_copy(layout: Headstock, ref: str, by: float) -> Headstock:
    """A new slot along the outline or another slot, `by` mm outside its line, inside when negative. It comes last."""
    slot = _straight(layout, ref)
    depth = next((one.depth for one in layout.slots if one.id == ref), None)
    if slot is not None:
        return add_straight_slot(layout, slot.nut_end, slot.tip_end, _width(slot, by), depth)
    return add_drawn_slot(layout, offset_line(_path(layout, ref), by), depth)


def _path(layout: Headstock, ref: str) -> Path:
    return loop_path(loop_at(layout, ref))


def _straight(layout: Headstock, ref: str) -> StraightSlot | None:
    shape = next((one.shape for one in layout.slots if one.id == ref), None)
    return shape if isinstance(shape, StraightSlot) else None


def _width(slot: StraightSlot, by: float) -> float:
    if slot.width + 2 * by <= 0:
        raise GeometryError(say("Nothing would be left of the slot: it is narrower than twice this distance."))
    return slot.width + 2 * by
