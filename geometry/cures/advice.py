"""What an advice takes that is too much to seek in every frame of a drag."""

from __future__ import annotations

import math

import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks import Snag
from geometry.checks.snags import short
from geometry.checks.string_slots import CLEAR
from geometry.checks.words import tenths, up
from geometry.curves.polygons import grown
from geometry.edits.parts import feature
from geometry.layout import DrawnSlot, Headstock, Slot, StraightSlot, loop_of, slot_path
from geometry.saying import say
from geometry.solids.walls import Wall, ring
from geometry.strings.dive import Dive, dives_into
from geometry.strings.runs import Run, runs
from geometry.tolerance import TOUCH

_SHARES = (1.0, 1.1, 1.3, 1.6, 2.0, 2.8, 4.0)
"""how far a wall may have to go away, in times of what a string lacks"""
_MOST = 1000
"""chords of a slot up to which moving its walls is tried"""


def advised(layout: Headstock, snag: Snag) -> str:
    """The advice of a snag of check(layout): of a string beside the wall of its slot with how far (mm) that has to go away."""
    if snag.kind != "string-to-wall":
        return snag.advice
    tuner, of = snag.between
    slot = feature(layout, of)
    wall = Wall(slot_path(slot))
    one, = dives_into([run for run in runs(layout) if run.tuner == tuner], slot, wall)
    string = one.run.string
    by, ramp = _wall_away(slot, wall, one, layout.margins.string_air) or (None, False)
    if by is None:
        return say("Give string {string} a post more in line with its place at the nut.", string=string)
    if ramp:
        return say("Move that wall of {opening} away by {needed} mm and lead the string down by a ramp, or give string {string} a post "
                   "more in line with its place at the nut.", opening=of, needed=tenths(by), string=string)
    return say("Move that wall of {opening} away by {needed} mm, or give string {string} a post more in line with "
               "its place at the nut.", opening=of, needed=tenths(by), string=string)


def _wall_away(slot: Slot, wall: Wall, one: Dive, needed: float) -> tuple[float, bool] | None:
    """(how far a slot's walls have to go away to give a string `needed` mm of air beside it, in tenths of a mm; whether it then lacks
    air over the nut end). A string that crosses a wall aslant takes more than it lacks; None where even four times that does not do.
    Of a slot drawn in very many pieces what lacks is told."""
    beside, over = one.beside(needed + CLEAR), min(needed, one.end(needed + CLEAR).air)
    lacking = needed - beside.air
    if len(wall.points) > _MOST:
        return up(lacking), False
    aslant = 1.0 / _gains(slot, one.run)
    # Below the face a string gains what the wall goes away, until it lacks more above it.
    for share in (*([1.0] if beside.where[2] > TOUCH else []), aslant, *(share for share in _SHARES if share > aslant)):
        by = up(lacking * share)
        wider = _wider(slot, wall, by)
        made = None if wider is None else dives_into([one.run], wider, Wall(slot_path(wider)))[0]
        if made is not None and not short(made.beside(needed + CLEAR).air, needed):
            return by, short(made.end(needed + CLEAR).air, over)
    return None


def _gains(slot: Slot, run: Run) -> float:
    """How much air (mm) a string above the face gains for each mm by which the edge of a straight slot goes away: less where it crosses
    that aslant. 1 for slots of any other shape."""
    shape = slot.shape
    if not isinstance(shape, StraightSlot) or shape.nut_end == shape.tip_end or run.height == run.nut_height:
        return 1.0
    way, edge = v.sub(run.post, run.nut), v.unit(v.sub(shape.tip_end, shape.nut_end))
    fall = abs(run.height - run.nut_height)
    return fall / math.hypot(fall, v.cross(way, edge))


def _wider(slot: Slot, wall: Wall, by: float) -> Slot | None:
    """A slot with all of its walls `by` mm farther out; None where that is none in one piece."""
    shape = slot.shape
    if isinstance(shape, StraightSlot):
        return replace(slot, shape=replace(shape, width=shape.width + 2 * by))
    area = grown(wall.area, by)
    return replace(slot, shape=DrawnSlot(loop=loop_of(ring(tuple(area.exterior.coords[:-1]))))) if isinstance(
        area, shapely.Polygon) and not area.is_empty else None
