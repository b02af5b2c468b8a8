"""What a slot is drawn as: one to rout or a pocket that is there already, and the slope of its ramp."""

from __future__ import annotations

from geometry.drawing.marks import Area, Drawing
from geometry.layout import Slot
from geometry.solids.ramps import ramp_cut
from geometry.terms import POCKET

SLOT_STYLES = ("slot", POCKET)
"""Both of them."""


def slot_style(slot: Slot) -> str:
    """Style of what is cut of a slot, or has been cut before the work begins."""
    return POCKET if slot.there else "slot"


def ramp_marks(slot: Slot) -> Drawing:
    """The slope from where it leaves the face to where the slot has swallowed it; empty for a slot without one.

    GeometryError when the slot has no inside.
    """
    cut = ramp_cut(slot)
    return () if cut is None else (Area(cut.path(), "ramp", slot.id),)
