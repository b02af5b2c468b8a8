"""Edits of what is cut by hand: ramps at the nut end of slots, flats under the plates of side tuners."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.checks.words import listed
from geometry.edits.parts import checked, feature, slot_of, with_feature
from geometry.edits.sound_ramp import sound_ramp
from geometry.errors import GeometryError
from geometry.layout import Flat, Headstock, Ramp, Slot, Tuner
from geometry.saying import say
from geometry.solids.flats import deep_enough
from geometry.strings import dives


def set_ramp(layout: Headstock, id: str, gone: bool = False, **values: float | None) -> Headstock:
    """Some measures of a slot's ramp (length, depth, width in mm) set, or the ramp left out."""
    if gone:
        return with_feature(layout, replace(slot_of(layout, id), ramp=None))
    slot = _to_cut(layout, id)
    if slot.ramp is None and not {"length", "depth"} <= values.keys():
        raise GeometryError(say("{id} has no ramp yet: give its length and its depth.", id=id))
    ramp = replace(slot.ramp, **values) if slot.ramp is not None else Ramp(**values)
    return with_feature(layout, replace(slot, ramp=checked(ramp, say("Ramp of {id}", id=id))))


def _to_cut(layout: Headstock, id: str) -> Slot:
    slot = slot_of(layout, id)
    if slot.there:
        raise GeometryError(say("{id} is there already: nothing is cut for it, so it has no ramp.", id=id))
    return slot


def propose_ramp(layout: Headstock, id: str) -> Headstock:
    """The slot with a sound ramp that frees all its strings; GeometryError when they need none or none does it."""
    slot = _to_cut(layout, id)
    ramp = sound_ramp(layout, slot)
    if ramp is None:
        aside = [one.run.string for one in dives(layout, replace(slot, ramp=None)) if one.into_a_side]
        if aside:
            raise GeometryError(say("Of the strings of {id} these run into its wall beside the nut end, where no ramp helps: {strings}. Give "
                                    "them posts more in line with their places at the nut, or make the slot wider.",
                                    id=id, strings=listed(aside)))
        raise GeometryError(say("The strings of {id} clear its nut end: it needs no ramp.", id=id))
    return with_feature(layout, replace(slot, ramp=ramp))


def set_flat(layout: Headstock, id: str, gone: bool = False, **values: object) -> Headstock:
    """Some values of a side tuner's flat (shape, size, depth in mm) set, or the flat left out."""
    tuner = feature(layout, id)
    if not isinstance(tuner, Tuner) or layout.pattern(tuner.pattern).mount != "side":
        raise GeometryError(say("{id} does not sit on the edge, so there is no flat to cut for it.", id=id))
    if gone:
        return with_feature(layout, replace(tuner, flat=None))
    if tuner.flat is None and not {"size", "depth"} <= values.keys():
        raise GeometryError(say("{id} has no flat yet: give its size and its depth.", id=id))
    flat = replace(tuner.flat, **values) if tuner.flat is not None else Flat(**values)
    return with_feature(layout, replace(tuner, flat=checked(flat, say("Flat of {id}", id=id))))


def propose_flat(layout: Headstock, id: str) -> Headstock:
    """The side tuner with a flat that its plate sits on; GeometryError where the edge is straight."""
    if not isinstance(feature(layout, id), Tuner):
        raise GeometryError(say("{id} does not sit on the edge, so there is no flat to cut for it.", id=id))
    flat = deep_enough(layout, id)
    if flat is None:
        raise GeometryError(say("The edge under the plate of {id} is straight: it needs no flat.", id=id))
    return set_flat(layout, id, shape="flat", size=flat.size, depth=flat.depth)
