"""Pockets that the blank has already: a new one for a truss rod, and slots made into one or back."""

from __future__ import annotations

import math
from collections.abc import Iterable

from msgspec.structs import replace

from geometry.edits.parts import appended, slot_of, with_feature
from geometry.errors import GeometryError
from geometry.layout import Headstock, Slot, StraightSlot
from geometry.layout.names import feature_names
from geometry.saying import say
from geometry.terms import given
from geometry.tolerance import TOUCH
from geometry.units import MM_PER_INCH, LengthUnit

WIDTH, LENGTH, DEPTH = 12.0, 28.0, 10.0
"""mm of the access pocket of a truss rod: from wall to wall, from the nut line to its end, below the face (common practice, no source)"""
_IN_INCHES = MM_PER_INCH / 2, MM_PER_INCH * 9 / 8, MM_PER_INCH * 3 / 8
"""The same for who works in inches: 1/2, 1 1/8 and 3/8 inch."""
_OF_THE_WOOD = 0.7
"""A thin blank has a pocket no deeper than this share of it, until the maker has measured."""


def usual_pocket(unit: LengthUnit, thickness: float) -> tuple[float, float, float]:
    """Width, length in the head and depth, in mm, that a truss rod's pocket begins with in wood of that thickness (mm).

    In thin wood the depth is in whole half millimetres or sixteenths of an inch, unless it is less than one of them.
    """
    width, length, depth = (WIDTH, LENGTH, DEPTH) if unit == "mm" else _IN_INCHES
    step = 0.5 if unit == "mm" else MM_PER_INCH / 16
    most = _OF_THE_WOOD * thickness
    return width, length, min(depth, math.floor(most / step + TOUCH) * step or most)


def add_truss_rod_pocket(layout: Headstock, unit: LengthUnit = "mm") -> Headstock:
    """A pocket on the centreline, there already: round ended, over the nut line into the neck, as large as is usual for who works
    in `unit`. It comes last among the slots."""
    width, length, depth = usual_pocket(unit, layout.blank.thickness)
    name = feature_names(layout).alike(given("truss rod pocket"))
    shape = StraightSlot(nut_end=(0.0, -width / 2), tip_end=(0.0, length - width / 2), width=width)
    return appended(layout, "slots", Slot(id=name, shape=shape, depth=depth, there=True))


def set_slots_there(layout: Headstock, ids: Iterable[str], there: bool) -> Headstock:
    """The layout with slots that are in the blank already, or that are to be routed.

    GeometryError when one of them is no slot, or has a ramp, which is still to be cut.
    """
    for id in dict.fromkeys(ids):
        slot = slot_of(layout, id)
        if there and slot.ramp is not None:
            raise GeometryError(say("{id} has a ramp, and nothing is cut for a pocket that is there: leave the ramp out first.", id=id))
        layout = with_feature(layout, replace(slot, there=there))
    return layout
