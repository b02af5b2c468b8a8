"""A ramp on the face: what it takes, and the line where it begins."""

from __future__ import annotations

from geometry.drawing.marks import Area, Drawing
from geometry.layout import Slot
from geometry.solids.ramps import ramp_cut


def ramp_marks(slot: Slot) -> Drawing:
    """The slope from where it leaves the face to where the slot has swallowed it; empty for a slot without one.

    GeometryError when the slot has no inside.
    """
    cut = ramp_cut(slot)
    return () if cut is None else (Area(cut.path(), "ramp", slot.id),)
