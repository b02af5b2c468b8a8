"""What the maker has chosen for the tools: one record that the window changes and running gestures read."""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from geometry.errors import GeometryError
from geometry.lengths import at_most
from geometry.saying import say
from geometry.units import LengthUnit

DrawKind = Literal["straight", "arc", "tangent arc", "curve"]

WIDEST_SLOT = 500.0
"""mm: a new slot that is wider is a slip of the finger."""


def sound_width(width: float) -> float:
    """The width of a new slot, mm. GeometryError when it is none."""
    if not 0 < width <= WIDEST_SLOT:
        raise GeometryError(say("A slot needs a width above zero, and of {widest} at most.", widest=at_most(WIDEST_SLOT)))
    return width


class Options(Struct):
    """Choices of the tools (mm). Gestures read them anew with every pointer, so they may change on the way."""

    unit: LengthUnit = "mm"
    snapping: bool = True
    grid: float | None = 1.0
    """spacing that places are rounded to while snapping, None for no grid"""
    mirrored: bool = False
    """what is done on one side of the centreline is done on the other"""
    shape: bool = False
    """whether nodes, handles and edges of the outline can be taken hold of though it is not held yet"""
    pins: bool = False
    """whether a pin is taken hold of before the tuner in whose bore it stands"""
    nodes: tuple[int, ...] = ()
    """nodes in hand of the one loop that is held: dragging one of them takes all along"""
    kind: DrawKind = "straight"
    """edge drawn next"""
    slot_width: float = 13.0
    pattern: str = ""
    """hardware placed next"""
    pin_diameter: float = 6.0
    hole_diameter: float = 6.0
