"""Rows for what is cut by hand: the ramp of a slot, the flat under a plate."""

from __future__ import annotations

import math

from app.panels.forms.rows import FieldRow
from geometry.edits.hand_cuts import propose_flat, propose_ramp, set_flat, set_ramp
from geometry.layout import Headstock, Slot, Tuner
from geometry.saying import say
from geometry.solids.flats import deep_enough
from geometry.units import LengthUnit, format_close


def ramp_rows(layout: Headstock, slot: Slot) -> list[FieldRow]:
    """The ramp at a slot's nut end, or how to get one."""
    ramp = slot.ramp
    rows = [FieldRow(say("Propose a ramp that frees the strings"), "button", None, lambda _: propose_ramp(layout, slot.id))]
    if ramp is None:
        return rows
    angle = math.degrees(math.atan2(ramp.depth, ramp.length))
    return [FieldRow(say("Ramp"), "heading"),
            FieldRow(say("Length before the slot"), "length", ramp.length,
                     lambda length: set_ramp(layout, slot.id, length=length)),
            FieldRow(say("Depth at the slot"), "length", ramp.depth, lambda depth: set_ramp(layout, slot.id, depth=depth)),
            FieldRow(say("Width"), "length", ramp.width, lambda width: set_ramp(layout, slot.id, width=width), optional=True,
                     empty=say("as the slot")),
            FieldRow(say("Slope"), "fact", say("{angle:.1f} degrees", angle=angle)), *rows,
            FieldRow(say("Leave the ramp out"), "button", None, lambda _: set_ramp(layout, slot.id, gone=True))]


def flat_rows(layout: Headstock, tuner: Tuner, unit: LengthUnit) -> list[FieldRow]:
    """The flat under a side tuner's plate, or how to get one."""
    found = deep_enough(layout, tuner.id)
    rows = [] if found is None else [FieldRow(
        say("Deep enough for the plate: {depth}",
            depth=format_close(found.depth, unit, 2, mark=True)), "button",
        None, lambda _: propose_flat(layout, tuner.id))]
    flat = tuner.flat
    if flat is None:
        return rows
    return [FieldRow(say("Flat under the plate"), "heading"),
            FieldRow(say("Shape"), "choice", flat.shape, lambda shape: set_flat(layout, tuner.id, shape=shape),
                     choices=(("flat", say("a flat along the edge")), ("spot", say("a round spot")))),
            FieldRow(say("Length, or width of the spot"), "length", flat.size,
                     lambda size: set_flat(layout, tuner.id, size=size)),
            FieldRow(say("Depth of the flat"), "length", flat.depth, lambda depth: set_flat(layout, tuner.id, depth=depth)),
            *rows, FieldRow(say("Leave the flat out"), "button", None, lambda _: set_flat(layout, tuner.id, gone=True))]
