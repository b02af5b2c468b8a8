"""The ramp that frees all strings of a slot: as short as they and a hand allow, as shallow as they do, and longer where it would go too deep."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec.structs import replace

from geometry import vectors as v
from geometry.errors import GeometryError
from geometry.layout.headstock import Headstock
from geometry.layout.shop import Margins
from geometry.layout.slots import Ramp, Slot, slot_path
from geometry.layout.strings import Nut
from geometry.lengths import mm
from geometry.saying import say
from geometry.solids.ramps import RampCut, below, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.dive import Dive, dives_into, first_lacking
from geometry.strings.runs import Run, runs
from geometry.tolerance import TOUCH

NUT_AIR = 2.0
"""mm of flat face that a ramp leaves in front of the nut (common practice, no source)"""
_SHORTEST = 3.0
"""mm: a shorter ramp is steep and gone with a stroke of the file, and a little astray it goes far too deep (common practice, no source)"""
_STEP = 0.1
_TRIES = 12
_FLATTER = 4
"""How many longer ramps are tried, each nearer to the nut, where the shortest leaves too little wood."""
Needs = list[tuple[float, float]]
"""For each string: mm from the nut end along the slot's axis, and how deep a ramp has to be there."""
_UPRIGHT = 0.5
"""Least share of a slot's axis that points to the tip for a ramp to be worked out."""


def dives(layout: Headstock, slot: Slot, found: Sequence[Run] | None = None) -> tuple[Dive, ...]:
    """Every string that dives into a slot, with the ramp that the slot has."""
    wall = Wall(slot_path(slot))
    return tuple(one for one in dives_into(runs(layout) if found is None else found, slot, wall) if one is not None)


def freeing_ramp(layout: Headstock, slot_id: str, width: float | None = None) -> Ramp | None:
    """The ramp that gives every string of a slot its margin over the nut end; None when they have it without one.

    Length and depth in whole tenths of a millimetre, tried on the exact shapes. GeometryError when no
    ramp does: it would begin at the nut, or leave too little wood below it. Without a `width` (mm) it is as wide as the slot.
    """
    slot = next((s for s in layout.slots if s.id == slot_id), None)
    if slot is None:
        raise GeometryError(say("There is no slot named {slot_id}.", slot_id=slot_id))
    found = runs(layout)
    return ramp_for(slot, dives(layout, slot, found), layout.nut, layout.blank.thickness, layout.margins, width)


def ramp_for(slot: Slot, found: Sequence[Dive], nut: Nut, thickness: float, margins: Margins, width: float | None = None) -> Ramp | None:
    """As freeing_ramp, for strings that are known to dive into the slot."""
    air = margins.string_air
    bare = [one.with_ramp(None) for one in found]
    first = first_lacking(bare, air - TOUCH)
    if first is None:
        return None
    # The one that lacked air comes first: most often it is the one to lack it again.
    tried = [bare[first], *bare[:first], *bare[first + 1:]]
    shortest, needs = _first_guess(slot, bare, air)
    room = _room(slot, nut, width)
    shortest = max(shortest, min(_SHORTEST, _down(room)))
    ramp = _freeing(slot, tried, air, shortest, needs, room, width)

    def leaves_enough(one: Ramp) -> bool:
        return _enough_below(replace(slot, ramp=one), found[0].wall, thickness, margins.side_cover)

    if leaves_enough(ramp):
        return ramp
    spare = room - ramp.length
    for k in range(1, _FLATTER + 1):
        # From farther off a ramp comes down flatter, so that its end beyond the edge which the strings cross goes less deep.
        length = _down(ramp.length + spare * k / _FLATTER)
        if not leaves_enough(Ramp(length=length, depth=_shallowest(needs, length), width=width)):
            continue  # none that frees them is shallower: no need to try it on the exact shapes
        try:
            flat = _freeing(slot, tried, air, length, needs, room, width)
        except GeometryError:
            continue
        if leaves_enough(flat):
            return flat
    if not slot.through(thickness) and not ramp.depth < slot.floor(thickness):
        raise GeometryError(say("A ramp that frees the strings of {slot} would be as deep as the slot: start the "
                                "slot nearer to the nut.",
                                slot=slot.id))
    raise GeometryError(say("A ramp that frees the strings of {slot} would leave less than {cover} of wood to the back: start "
                            "the slot nearer to the nut.",
                            slot=slot.id, cover=mm(margins.side_cover)))


def _enough_below(slot: Slot, wall: Wall, thickness: float, cover: float) -> bool:
    """Whether a slot's ramp leaves `cover` mm to the back and ends no deeper than the slot's floor."""
    cut = ramp_cut(slot)
    return (below(slot, cut, wall, thickness) >= cover - TOUCH
            and (slot.through(thickness) or cut.depth < slot.floor(thickness)))


def _freeing(slot: Slot, tried: list[Dive], air: float, length: float, needs: Needs, room: float, width: float | None) -> Ramp:
    """The shallowest ramp from a length on and shorter than `room` (mm) that frees all strings, of which those that lack air move to the front."""
    depth = _shallowest(needs, length)
    for _ in range(_TRIES):
        ramp = Ramp(length=length, depth=depth, width=width)
        if not length < room:
            raise GeometryError(say("A ramp that frees the strings of {slot} would begin {nut_air} or less from "
                                    "the nut: raise the nut, or start the slot nearer to it.",
                                    slot=slot.id, nut_air=mm(NUT_AIR)))
        cut = ramp_cut(replace(slot, ramp=ramp))
        lacking = _lacking(tried, cut, air - TOUCH)
        if lacking is None:
            return ramp
        tried.insert(0, tried.pop(lacking))
        length, depth = round(length + _STEP, 1), round(depth + _STEP, 1)
    raise GeometryError(say("The strings of {slot} leave its ramp sideways: move their posts or widen the slot.",
                            slot=slot.id))


def _lacking(tried: Sequence[Dive], cut: RampCut, needed: float) -> int | None:
    """Which string a ramp does not free: the first one by itself, then all others at once."""
    if first_lacking([tried[0].with_ramp(cut)], needed) is not None:
        return 0
    found = first_lacking([one.with_ramp(cut) for one in tried[1:]], needed)
    return None if found is None else found + 1


def _first_guess(slot: Slot, found: Sequence[Dive], air: float) -> tuple[float, Needs]:
    """The least length from the strings' own slopes, rounded up to tenths, and how deep the ramp has to be where."""
    end = nut_end(slot)
    starts, needs = [], []
    for one in found:
        speed = v.dot(one.way, end.axis)
        upright = (one.run.diameter / 2 + air) / one.steep
        at_edge = v.dot(v.sub(one.edge[:2], end.at), end.axis)
        # What cuts into a wall beside it, farther on than any ramp goes, has nothing to gain from one.
        beside = one.into_a_side and at_edge > end.room + TOUCH
        if one.slope <= 0 or speed <= 0 or beside:
            continue
        begins = one.at(max(0.0, (one.run.nut_height - upright) / one.slope))
        starts.append(v.dot(v.sub(end.at, begins[:2]), end.axis))
        needs.append((at_edge, one.edge[2] + upright))
    if not starts or nut_end(slot).axis[1] < _UPRIGHT:
        raise GeometryError(say("The strings of {slot} do not come over its nut end: turn the slot so that it runs "
                                "from the nut to the tip.",
                                slot=slot.id))
    return _up(max(max(starts), 0.0)), needs


def _shallowest(needs: Needs, length: float) -> float:
    """The least depth at the nut end of a ramp of that length that is deep enough where the strings cross the edge, mm in tenths."""
    return _up(max(_STEP, max(deep / (length + at_edge) for at_edge, deep in needs) * length))


def _room(slot: Slot, nut: Nut, width: float | None) -> float:
    """How long a ramp may be before its nearer corner comes to the nut line, mm along the slot's axis."""
    end = nut_end(slot)
    nearer = abs(v.cross(end.axis, nut.ahead)) * (end.width if width is None else width) / 2
    return (nut.before(end.at) - nearer - NUT_AIR) / max(v.dot(end.axis, nut.ahead), 1e-9)


def _up(length: float) -> float:
    return max(_STEP, math.ceil(length * 10 - 1e-6) / 10)


def _down(length: float) -> float:
    """The length in whole tenths below it, mm."""
    return max(_STEP, (math.ceil(length * 10 - 1e-6) - 1) / 10)
