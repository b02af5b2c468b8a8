"""The style of a slot's shape: one to rout, or a pocket that is there already."""

from __future__ import annotations

from geometry.layout import Slot
from geometry.terms import POCKET

SLOT_STYLES = ("slot", POCKET)
"""Both of them."""


def slot_style(slot: Slot) -> str:
    """Style of what is cut of a slot, or has been cut before the work begins."""
    return POCKET if slot.there else "slot"
