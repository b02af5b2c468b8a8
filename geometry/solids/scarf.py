"""The glue line of a scarf joint in the head: a plane across it, parallel to the nut line, that dips from the face of the core
towards the nut.

The neck's wood is sawn through at the pitch of the head, the cut-off piece is turned over and glued under the slope. The
underside that it is glued to runs on as the neck does, so that the joint lies at the pitch to the head's own face: it comes
out on the face further up the head, on the back nearer to the nut. Millimetres and radians; plane trigonometry.
"""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.layout import Blank, Nut
from geometry.vectors import Vec2


class Scarf(Struct, frozen=True):
    """The joint from the face of the core at z = `top` to its back at z = `bottom`."""

    face: float
    """where it comes out on the face of the core: y on the centreline"""
    pitch: float
    """rad, above zero"""
    nut: Nut
    """the nut that it is parallel to"""
    top: float
    bottom: float

    @property
    def back(self) -> float:
        """Where it comes out on the back of the core: y on the centreline, negative behind the nut line."""
        return self.face - (self.bottom - self.top) / (math.tan(self.pitch) * self.nut.ahead[1])

    @property
    def length(self) -> float:
        """Along the glued slope, square to the nut line, from where it comes out to where it comes out: thickness / sin(pitch)."""
        return (self.bottom - self.top) / math.sin(self.pitch)

    @property
    def neck(self) -> float:
        """How thick the neck's wood is that the head piece is glued under, square to the neck, below where the core's face
        meets the nut line."""
        return self.nut.before((0.0, self.face)) * math.sin(self.pitch)

    def y(self, x: float, back: bool) -> float:
        """Where it comes out on the face, or the back, of the core at x."""
        return (self.back if back else self.face) + self.nut.at(x)[1]

    def off(self, p: Vec2, back: bool) -> float:
        """How far a point in plan lies past the line on the face, or the back, towards the tip; negative nearer to the nut."""
        return self.nut.before(p) - self.nut.before((0.0, self.back if back else self.face))

    def level(self, p: Vec2) -> float:
        """How far below the head's face it lies at a point in plan; outside top and bottom it lies in no wood."""
        return self.top - self.off(p, False) * math.tan(self.pitch)


def scarf_of(blank: Blank, nut: Nut) -> Scarf | None:
    """The joint of a blank whose head leans back by the nut's pitch (above zero) where it runs in the head; None without one, and
    for one behind the nut line."""
    if not blank.scarf:
        return None
    return Scarf(blank.scarf, math.radians(nut.pitch), nut, blank.face_veneer, blank.thickness - blank.back_veneer)
