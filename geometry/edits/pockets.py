"""Pockets that the blank has already: a new one for a truss rod, and slots made into one or back."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.edits.parts import appended, feature, fresh_id, taken_ids, with_feature
from geometry.errors import GeometryError
from geometry.layout import Headstock, Slot, StraightSlot
from geometry.saying import say

WIDTH, LENGTH, DEPTH = 12.0, 28.0, 10.0
"""mm of the access pocket of a truss rod: from wall to wall, from the nut line to its end, below the face (common practice, no source)"""
_OF_THE_WOOD = 0.7
"""A thin blank has a pocket no deeper than this share of it, until the maker has measured."""


def add_truss_rod_pocket(layout: Headstock, width: float = WIDTH, length: float = LENGTH, depth: float = DEPTH) -> Headstock:
    """A pocket on the centreline, there already: round ended, over the nut line into the neck by its width, `length` mm of it in the head.

    It comes last among the slots. GeometryError where it would be shorter than its round end.
    """
    if length < width / 2:
        raise GeometryError(say("A pocket with round ends reaches at least half its width into the head."))
    name = fresh_id(taken_ids(layout), "truss rod pocket")
    shape = StraightSlot(nut_end=(0.0, -width / 2), tip_end=(0.0, length - width / 2), width=width)
    return appended(layout, "slots", Slot(id=name, shape=shape, depth=min(depth, _OF_THE_WOOD * layout.blank.thickness), there=True))


def set_slots_there(layout: Headstock, ids: Iterable[str], there: bool) -> Headstock:
    """The layout with slots that are in the blank already, or that are to be routed.

    GeometryError when one of them is no slot, or has a ramp, which is still to be cut.
    """
    for id in dict.fromkeys(ids):
        slot = feature(layout, id)
        if not isinstance(slot, Slot):
            raise GeometryError(say("{id} is no slot.", id=id))
        if there and slot.ramp is not None:
            raise GeometryError(say("{id} has a ramp, and nothing is cut for a pocket that is there: leave the ramp out first.", id=id))
        layout = with_feature(layout, id, replace(slot, there=there))
    return layout
