"""The glue line of a scarf joint in the head: a plane across it that dips from the face of the core towards the nut.

The neck's wood is sawn through at the pitch of the head, the cut-off piece is turned over and glued under the slope. The
underside that it is glued to runs on as the neck does, so that the joint lies at the pitch to the head's own face: it comes
out on the face further up the head, on the back nearer to the nut. Millimetres and radians; plane trigonometry.
"""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.layout import Blank


class Scarf(Struct, frozen=True):
    """The joint from the face of the core at z = `top` to its back at z = `bottom`."""

    face: float
    """y where it comes out on the face of the core"""
    pitch: float
    """rad, above zero"""
    top: float
    bottom: float

    @property
    def back(self) -> float:
        """y where it comes out on the back of the core; negative behind the nut line."""
        return self.face - (self.bottom - self.top) / math.tan(self.pitch)

    @property
    def length(self) -> float:
        """Along the glued slope, from where it comes out to where it comes out: thickness / sin(pitch)."""
        return (self.bottom - self.top) / math.sin(self.pitch)

    @property
    def neck(self) -> float:
        """How thick the neck's wood is that the head piece is glued under, square to the neck, below where the core's face
        meets the nut line."""
        return self.face * math.sin(self.pitch)

    def level(self, y: float) -> float:
        """How far below the head's face it lies at y; outside top and bottom it lies in no wood."""
        return self.top + (self.face - y) * math.tan(self.pitch)


def scarf_of(blank: Blank, pitch: float) -> Scarf | None:
    """The joint of a blank whose head leans back by `pitch` (degrees, above zero) where it runs in the head; None without one, and
    for one behind the nut line."""
    if not blank.scarf:
        return None
    return Scarf(blank.scarf, math.radians(pitch), blank.face_veneer, blank.thickness - blank.back_veneer)
