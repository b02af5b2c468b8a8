"""Slots that overlap made into one."""

from __future__ import annotations

from collections.abc import Iterable

import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.words import listed
from geometry.curves import Path
from geometry.curves.undivided import undivided
from geometry.edits.adding import remove_features
from geometry.edits.loops import with_smooth
from geometry.edits.parts import slot_of, with_feature
from geometry.errors import GeometryError
from geometry.joining.network import enclosed
from geometry.layout import DrawnSlot, Headstock, Slot, loop_of, slot_path
from geometry.saying import say
from geometry.solids.ramps import ramp_cut
from geometry.solids.slot_area import slot_area
from geometry.tolerance import FLAT, JOIN, SAME_HOLE


def join_slots(layout: Headstock, ids: Iterable[str]) -> Headstock:
    """The layout with slots that overlap as one drawn slot along the border of them all, in the place and under the name of the first.
    The ramp nearest to the nut stays where the new slot can have it at its place: that of a drawn one lies where that begins (nut_end).

    GeometryError for slots of different depths, one of which is there already and one not, that do not overlap, or that shut in wood.
    """
    slots = [slot_of(layout, id) for id in dict.fromkeys(ids)]
    if len(slots) < 2:
        raise GeometryError(say("Hold two slots or more that overlap."))
    names = listed([slot.id for slot in slots])
    if len({slot.there for slot in slots}) > 1:
        raise GeometryError(say("Of {slots} some are there already and some are to be routed: they do not make one slot.", slots=names))
    if len({slot.floor(layout.blank.thickness) for slot in slots}) > 1:
        raise GeometryError(say("{slots} are not of one depth: give them the same first.", slots=names))
    walls, areas = [slot_path(slot) for slot in slots], [slot_area(slot) for slot in slots]
    if None in areas:
        raise GeometryError(say("The wall of {slot} crosses itself or shuts nothing in: mend that first.", slot=slots[areas.index(None)].id))
    whole = shapely.union_all(areas)
    if whole.geom_type != "Polygon":
        raise GeometryError(say("{slots} do not all overlap: move them together first.", slots=names))
    if whole.interiors:
        raise GeometryError(say("{slots} shut in wood between them, which would fall out: they do not make one slot.", slots=names))
    rings = enclosed([piece for wall in walls for piece in wall.segments], JOIN).rings
    if len(rings) != 1 or abs(abs(rings[0].area) - whole.area) > FLAT * whole.length:
        raise GeometryError(say("The walls of {slots} meet too closely to be joined: move one of them a little.", slots=names))
    loop = with_smooth(loop_of(Path(tuple(undivided(rings[0].counter_clockwise().segments)), closed=True)))
    made = with_feature(layout, _with_ramp(replace(slots[0], shape=DrawnSlot(loop=loop), ramp=None), slots))
    return remove_features(made, [slot.id for slot in slots[1:]])


def _with_ramp(made: Slot, slots: list[Slot]) -> Slot:
    """A slot with the ramp nearest to the nut of those that it was made of, if it can have that at its place."""
    ramped = min((slot for slot in slots if slot.ramp is not None), key=lambda slot: slot_path(slot).box[1], default=None)
    if ramped is None:
        return made
    was = ramp_cut(ramped)
    found = replace(made, ramp=replace(ramped.ramp, width=2 * was.half))
    # One that turned would begin elsewhere too.
    return found if v.distance(was.start, ramp_cut(found).start) <= SAME_HOLE else made
