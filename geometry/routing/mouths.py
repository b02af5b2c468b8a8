"""Mouths of side bores in a wall that a follower rubs on: there it finds less wall, or none, and sinks in with the cutter.

The bores are drilled while the slot is full and the edge square, so their mouths are there when the router comes. A follower
on the template runs past them; one that has nothing but the wall already cut needs wall above or below them.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import shapely
from msgspec import Struct
from shapely.geometry import LineString

from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import at_least, at_most, deep
from geometry.routing.depth import Job, bearing_height
from geometry.routing.passes import Pass
from geometry.saying import say
from geometry.solids.drilling import as_cut, to_drill
from geometry.solids.slot_area import slot_area
from geometry.tolerance import TOUCH

WIDE = ("post", "counterbore", "clearance")
"""Bores that are wide enough to matter; screws of side tuners are drilled when the edge is finished."""
FAINT = 0.05
"""mm: a follower that sinks in less does not sink for a maker"""


class Mouth(Struct, frozen=True):
    """Where a level bore opens into a wall (mm)."""

    of: str
    """the tuner's id"""
    depth: float
    """of its axis below the face"""
    radius: float


class Sunk(Struct, frozen=True):
    """What a follower finds at the worst mouth of a pass, mm."""

    of: tuple[str, ...]
    """tuners at whose mouths it finds too little wall"""
    wall: float
    """height of the wall left to rub on there"""
    deep: float
    """how far it sinks in; 0 while any wall is left, infinite where it goes right into the bore"""


def mouths(layout: Headstock, of: str) -> tuple[Mouth, ...]:
    """The mouths of side bores in the walls of a slot, or in the outline ("outline"): drilled from the square edge, each begins there."""
    try:
        level = [as_cut(d, layout.rack.drills) for hole in to_drill(layout) for d in hole.drillings if not d.upright and d.role in WIDE]
    except GeometryError:  # the outline gives tuners no place, and has no plan itself; its slots have one
        return ()
    slot = next((one for one in layout.slots if one.id == of), None)
    if slot is not None and level:
        area = slot_area(slot)
        wall = LineString() if area is None else area.boundary
        level = [d for d in level if d.start[2] - d.radius < slot.floor(layout.blank.thickness)
                 and shapely.intersects(wall, LineString([d.start[:2], d.end[:2]]))]
    return tuple(Mouth(d.of, d.start[2], d.radius) for d in level)


def sunk(one: Pass, job: Job, there: Iterable[Mouth]) -> Sunk | None:
    """What a pass on the wall already cut finds at the mouths; None where enough wall guides it past all, or the template does.

    As if each bore met the wall squarely.
    """
    if one.rubs_on != "wall already cut" or one.follower.bush is not None:
        return None
    bit = one.follower.bit
    if bit.bearing == "tip":
        low, high = one.ends, one.ends + bearing_height(bit)
    else:
        high = one.ends - bit.cutting_length
        low = high - bearing_height(bit) if bit.bearing == "shank" else 0.0
    top = max(low, 0.0)
    worst: Sunk | None = None
    names = []
    for mouth in there:
        middle = mouth.depth if one.side == "face" else job.thickness - mouth.depth
        open_ = max(0.0, min(high, middle + mouth.radius) - max(top, middle - mouth.radius))
        wall = one.contact - open_
        if wall >= job.contact - TOUCH:
            continue
        names.append(mouth.of)
        deep = 0.0 if wall > TOUCH else _sinks(one.follower.diameter / 2, mouth.radius, max(abs(top - middle), abs(high - middle)))
        if worst is None or (wall, -deep) < (worst.wall, -worst.deep):
            worst = Sunk((), max(0.0, wall), deep)
    return None if worst is None else Sunk(tuple(dict.fromkeys(names)), worst.wall, worst.deep)


def _sinks(follower: float, bore: float, off: float) -> float:
    """How far a round follower sinks into a bore that is narrowest `off` mm from its axis where it rubs (radii, mm).

    Infinite for one that finds no wall to either side of it: nothing stops it before the bore's end.
    """
    half = math.sqrt(max(0.0, bore ** 2 - off ** 2))
    return math.inf if half >= follower else follower - math.sqrt(follower ** 2 - half ** 2)


def sunk_words(found: Sunk, one: Pass, job: Job) -> str:
    """What to mind at the mouths in a pass, in one or two sentences."""
    where = {"begins": deep(one.begins, job.through), "ends": deep(one.ends, job.through), "side": say("Face up") if one.side == "face" else say("Back up"),
             "of": ", ".join(found.of)}
    if found.deep < FAINT:
        return say("{side}, from {begins} to {ends} deep: at the mouths of the side bores of {of} only {wall} of wall are left to rub "
                   "on, and {contact} are wanted. Plug these bores flush with dowels before.",
                   wall=at_most(found.wall), contact=at_least(job.contact), **where)
    if math.isinf(found.deep):
        return say("{side}, from {begins} to {ends} deep: the side bores of {of} are wider than the follower. It goes right into them, "
                   "and the cutter with it: plug these bores flush with dowels before.", **where)
    return say("{side}, from {begins} to {ends} deep: at the mouths of the side bores of {of} there is no wall to rub on. The follower "
               "sinks in by up to {sunk}, and the cutter cuts as much too far: plug these bores flush with dowels before.",
               sunk=at_least(found.deep), **where)
