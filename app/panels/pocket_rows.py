"""Rows for pockets: whether a slot is in the blank already, what is known of one that is, and a new one for a truss rod."""

from __future__ import annotations

from app.panels.forms.rows import FieldRow
from geometry.edits.pockets import add_truss_rod_pocket, set_slots_there
from geometry.layout import Headstock, Slot
from geometry.saying import say
from geometry.units import LengthUnit, format_down


def slot_there_row(layout: Headstock, ids: tuple[str, ...]) -> FieldRow:
    """Whether held slots are to be routed or in the blank already."""
    known = {slot.there for slot in layout.slots if slot.id in ids}
    shown = "" if len(known) > 1 else "there" if known == {True} else "rout"
    several = (("", say("both")),) if len(known) > 1 else ()
    return FieldRow(say("The slot"), "choice", shown,
                    lambda word: layout if not word else set_slots_there(layout, ids, word == "there"),
                    choices=(*several, ("rout", say("is to be routed")), ("there", say("is there already"))), key="slots.there")


def pocket_facts(slot: Slot, thickness: float, unit: LengthUnit) -> list[FieldRow]:
    """What holds for a pocket that is there, in a blank of that thickness (mm)."""
    below = say("none, it goes through") if slot.through(thickness) else format_down(thickness - slot.floor(thickness), unit, 2, mark=True)
    return [FieldRow(say("There already"), "fact", say("all keeps clear of it, nothing cuts it")),
            FieldRow(say("Wood below its floor"), "fact", below)]


def new_pocket_row(layout: Headstock, unit: LengthUnit) -> FieldRow:
    """The button that adds the pocket of a truss rod, with measures that are usual in that unit."""
    return FieldRow(say("Add a truss rod pocket"), "button", None, lambda _: add_truss_rod_pocket(layout, unit=unit),
                    help=say("One that the blank has already, under the nut. Its first measures are common practice, no source: "
                             "measure yours and type them."))
