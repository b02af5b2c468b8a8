"""How deep a follower lets its cutter go, from one side of the wood: the rules of one bit.

The template lies on the wood and the router's base on the template. At wood
depth d the lower end of the cutting edges stands d below the wood's surface, so
the edges reach from -d up to L - d (L the cutting length). A shank or a bearing
on the shank begins right above them; a guide bush reaches down from the base.
Where a follower is as wide as its cutter it may follow the wall that the edges
above it have cut already. Passes take at most one cutter diameter of solid
wood; where the waste is out and no more than 2 mm is left to take, one and a half. Half of
either in hard wood with cutters under 8 mm. Pass depths: common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

from msgspec import Struct

from geometry.layout import Router, RouterBit
from geometry.lengths import mm
from geometry.routing.follower import Follower
from geometry.routing.refusal import Refusal
from geometry.saying import say
from geometry.tolerance import TOUCH

FLUSH = 0.02
"""Follower and cutter that differ by less (mm, diameter) count as the same size."""
BEARING_HEIGHT = 5.0
"""Height of a bearing that the rack does not state, mm (common practice, no source)."""
LIGHT = 2.0
"""Most wood in mm that a light pass takes from a wall."""
LIGHT_STEP = 1.5
"""Depth of a light pass in cutter diameters; of one in solid wood: 1."""
SLIM = 8.0
"""Cutters under this diameter (mm) take half in hard wood."""
OVERLAP = 1.0
"""How far the cuts from both sides pass each other, mm."""


class Job(Struct, frozen=True):
    """What has to be routed (mm)."""

    of: str
    """id of the slot, or "outline" """
    depth: float
    """of the finished cut, from the face"""
    thickness: float
    """of the wood"""
    template: float
    """thickness of the template"""
    contact: float
    """least height of a follower that has to rub"""
    light: bool
    """the waste is out, at most LIGHT mm is left to take"""
    entry: float
    """widest hole through the waste, which lets a bearing on the tip in; 0 for none, infinite beside the outline"""
    hard: bool
    router: Router
    width: float | None = None
    """of the slot where it is narrowest; None for the outline"""
    widest: float | None = None
    """of the slot where it is widest; None for the outline"""
    nut_end: bool = False
    """whether the outline ends on the nut line, and its template there"""
    neck: bool = False
    """whether wood goes on behind the nut line"""
    lean: float = 0.0
    """how far its edges lean out there (geometry.routing.nut_end.lean_out)"""

    @property
    def through(self) -> bool:
        return self.depth >= self.thickness - TOUCH


class Reach(Struct, frozen=True):
    """Depths of wood (mm) that a follower can rout to from one side, and how much at a pass."""

    least: float
    """shallower than this too little of the follower rubs"""
    most: float
    step: float
    because: Callable[[], str]
    """says what keeps it from going deeper: many are asked how deep they go, few why"""
    on_wall: float
    """least depth at which it can follow a cut wall alone; infinity when it cannot"""

    @property
    def binds(self) -> str:
        """What keeps it from going deeper, for a sentence."""
        return self.because()


def bearing_height(bit: RouterBit) -> float:
    """Height of a bit's bearing in mm."""
    return BEARING_HEIGHT if bit.bearing_height is None else bit.bearing_height


def step_of(bit: RouterBit, job: Job) -> float:
    """Deepest single pass, mm; never more than the cutting edges are long."""
    share = LIGHT_STEP if job.light else 1.0
    if job.hard and bit.cutter < SLIM:
        share /= 2
    return min(share * bit.cutter, bit.cutting_length)


def contact(follower: Follower, depth: float, template: float) -> tuple[float, float]:
    """(height of the follower that rubs on the template, height that rubs on the wall below it), mm.

    For a follower above the cutting edges, at a wood depth in mm, with the wall above the edges cut
    already. The wall counts only for followers as wide as their cutter.
    """
    if follower.bush is not None:
        return min(follower.bush.length, template), 0.0
    low = follower.bit.cutting_length - depth
    high = low + (bearing_height(follower.bit) if follower.bit.bearing == "shank" else math.inf)
    on_template = max(0.0, min(template, high) - max(0.0, low))
    flush = abs(follower.diameter - follower.bit.cutter) <= FLUSH
    on_wall = max(0.0, min(0.0, high) - low) if flush else 0.0
    return on_template, on_wall


def reach_of(follower: Follower, job: Job) -> Reach | Refusal:
    """What one follower above its cutting edges can do; a bearing on the tip is judged in tip.py."""
    bit = follower.bit
    floor = min(bit.stick_out, job.router.plunge)
    most = floor - job.template
    binds: Callable[[], str] = partial(_router, bit, job)
    on_wall = math.inf
    flush = abs(follower.diameter - bit.cutter) <= FLUSH
    if follower.bush is not None:
        refused = _bush(follower, job)
        least, limit, why = 0.0, math.inf, str
        if bit.shank > bit.cutter + FLUSH:
            limit, why = bit.cutting_length, partial(_thick_shank, bit)
        elif bit.bearing == "shank" and bit.bearing_diameter is not None and bit.bearing_diameter > bit.cutter + FLUSH:
            limit, why = bit.cutting_length, _wide_bearing
    else:
        height = bearing_height(bit) if bit.bearing == "shank" else math.inf
        refused = _above(follower, job, height)
        least = max(0.0, bit.cutting_length + job.contact - job.template)
        limit, why = math.inf, str
        if follower.diameter > bit.cutter + FLUSH:
            limit, why = bit.cutting_length, (_wide_bearing if bit.bearing == "shank" else partial(_thick_shank, bit))
        elif not flush:
            least = max(least, bit.cutting_length)
            limit = bit.cutting_length + height - job.contact
            why = partial(_leaving, height) if math.isfinite(height) else str
        else:
            on_wall = bit.cutting_length + job.contact
    if refused is not None:
        return refused
    if limit < most:
        most, binds = limit, why
    return Reach(least, most, step_of(bit, job), binds, on_wall)


def _router(bit: RouterBit, job: Job) -> str:
    if bit.stick_out <= job.router.plunge:
        return say("it stands {stick_out} out of the router and the template takes {template} of that",
                   stick_out=mm(bit.stick_out), template=mm(job.template))
    return say("the router plunges {plunge} and the template takes {template} of that",
               plunge=mm(job.router.plunge), template=mm(job.template))


def _wide_bearing() -> str:
    return say("its bearing is wider than the cutter and must stay out of the wood")


def _leaving(height: float) -> str:
    return say("below that its bearing of {height} leaves the template", height=mm(height))


def _thick_shank(bit: RouterBit) -> str:
    return say("its {shank} shank is thicker than the cutter and must stay out of the wood", shank=mm(bit.shank))


def _bush(follower: Follower, job: Job) -> Refusal | None:
    bush = follower.bush
    if bush.length > job.template + TOUCH:
        return Refusal(2, say("{bush} stands {length} out of the base, more than the {template} template is thick, so "
                              "the base would not sit down: take a thicker template.",
                              bush=bush.id, length=mm(bush.length), template=mm(job.template)))
    if bush.length < job.contact - TOUCH:
        return Refusal(2, say("Only {length} of {bush} stands out of the base, and {contact} have to rub on the "
                              "template: take a longer bush.",
                              length=mm(bush.length), bush=bush.id, contact=mm(job.contact)))
    return None


def _above(follower: Follower, job: Job, height: float) -> Refusal | None:
    bit = follower.bit
    if job.template < job.contact - TOUCH:
        return Refusal(2, say("The template is {template} thick and {contact} of the follower have to rub on it: take "
                              "a thicker template.",
                              template=mm(job.template), contact=mm(job.contact)))
    if height < job.contact - TOUCH:
        return Refusal(2, say("Its bearing is {height} high and {contact} have to rub on the template: take a bit "
                              "with a higher bearing, or ask for less in the margins.",
                              height=mm(height), contact=mm(job.contact)))
    if bit.bearing == "shank" and bit.shank > follower.diameter + FLUSH:
        return Refusal(2, say("Its {shank} shank is thicker than its {diameter} bearing and would rub first: check "
                              "the numbers in the rack.",
                              shank=mm(bit.shank), diameter=mm(follower.diameter)))
    return None
