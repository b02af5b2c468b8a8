"""What rubs on the template, and how far the cut lies from the template's edge.

Offset o = (follower diameter - cutter diameter) / 2. Inside an opening the cut
lies o inside the template's edge, so the opening is the slot grown by o.
Outside a template the cut lies o outside it, so the template is the outline
shrunk by o. It ends at the nut line (nut_end). o may be negative.
"""

from __future__ import annotations

from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from geometry.curves.polygons import grown, polygon
from geometry.errors import GeometryError
from geometry.layout.headstock import Headstock
from geometry.layout.shop import GuideBush, Rack, RouterBit, Template
from geometry.layout.slots import Slot, slot_path
from geometry.lengths import mm
from geometry.routing.nut_end import outside_template
from geometry.routing.words import with_bush
from geometry.saying import say


class Follower(Struct, frozen=True):
    """The chosen bit and what guides it (mm)."""

    bit: RouterBit
    bush: GuideBush | None
    diameter: float
    kind: str
    """guide bush, bearing on the tip, bearing on the shank, or bare shank"""

    @property
    def offset(self) -> float:
        """From the template's edge to the cut, mm; negative when the cutter is wider than the follower."""
        return (self.diameter - self.bit.cutter) / 2

    @property
    def name(self) -> str:
        """The bit with what guides it, by their names in the rack."""
        return with_bush(self.bit.id, self.bush and self.bush.id)


def follower_of(bit: RouterBit, bush: GuideBush | None) -> Follower:
    """The follower that a bit has with or without a guide bush.

    GeometryError when the bit or its bearing does not pass the bush, or when a bearing that guides it has no diameter.
    """
    if bush is not None:
        if bit.shank > bush.inner:
            raise GeometryError(say('The {shank} shank does not pass through the guide bush "{bush}" with a bore of {bore}: '
                                    "choose a wider bush or a slimmer bit.",
                                    shank=mm(bit.shank), bush=bush.id, bore=mm(bush.inner)))
        if bit.cutter > bush.inner:
            raise GeometryError(say('The {cutter} cutter does not pass through the guide bush "{bush}" with a bore of {bore}: '
                                    "choose a wider bush or a slimmer bit.",
                                    cutter=mm(bit.cutter), bush=bush.id, bore=mm(bush.inner)))
        if bit.bearing != "none" and bit.bearing_diameter is not None and bit.bearing_diameter > bush.inner:
            raise GeometryError(say('The {bearing} bearing does not pass through the guide bush "{bush}" with a bore of {bore}: '
                                    "take it off, choose a wider bush or another bit.",
                                    bearing=mm(bit.bearing_diameter), bush=bush.id, bore=mm(bush.inner)))
        return Follower(bit, bush, bush.outer, "guide bush")
    if bit.bearing == "none":
        return Follower(bit, None, bit.shank, "bare shank")
    if bit.bearing_diameter is None:
        raise GeometryError(say("The bit {bit} has a bearing without a diameter: enter it in the rack.", bit=bit.id))
    return Follower(bit, None, bit.bearing_diameter, f"bearing on the {bit.bearing}")


def follower(layout: Headstock) -> Follower | None:
    """The follower chosen for the template, or None when no bit is chosen."""
    return chosen_of(layout.template, layout.rack)


def chosen_of(template: Template, rack: Rack) -> Follower | None:
    """As follower."""
    bit = next((b for b in rack.bits if b.id == template.bit), None)
    if bit is None:
        return None
    return follower_of(bit, next((b for b in rack.bushes if b.id == template.bush), None))


def template_offset(template: Template, rack: Rack) -> float:
    """From the template's edge to the cut, mm; 0 with no bit chosen: its lines are those of what is cut then. GeometryError as follower_of."""
    chosen = chosen_of(template, rack)
    return 0.0 if chosen is None else chosen.offset


def template_opening(slot: Slot, offset: float) -> BaseGeometry:
    """The template opening for a slot: its wall grown by `offset` mm (shrunk when negative).

    May be empty when a negative offset closes the slot.
    """
    return grown(polygon(slot_path(slot)), offset)


def template_outline(layout: Headstock, offset: float) -> BaseGeometry:
    """The outside template for the outline: shrunk by `offset` mm (grown when negative), ending at the nut line."""
    return outside_template(layout.outline, layout.nut, offset)
