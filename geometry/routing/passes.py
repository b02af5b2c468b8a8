"""Passes: the depths that one bit, or one after another, takes on the way down."""

from __future__ import annotations

import math
from typing import Literal

from msgspec import Struct

from geometry.lengths import deep, mm
from geometry.routing.depth import Job, Reach, bearing_height, contact
from geometry.routing.follower import Follower
from geometry.saying import say
from geometry.tolerance import TOUCH

MOST_PASSES = 40
"""Passes from one side that a plan may ask for; more is no plan (common practice, no source)."""

Side = Literal["face", "back"]
Rubs = Literal["template", "template below", "wall already cut"]


class Pass(Struct, frozen=True):
    """One trip round the slot or the outline (mm, measured from the side that is up)."""

    side: Side
    """the side of the wood that is up"""
    follower: Follower
    begins: float
    """depth already cut from this side"""
    ends: float
    """depth of the lower end of the cutting edges"""
    rubs_on: Rubs
    contact: float
    """height of the follower that rubs"""
    light: bool
    """at most 2 mm is taken from the wall"""
    corners: bool = False
    """only what a wider cutter has left in the corners is taken"""

    @property
    def bit(self) -> str:
        """Id of the bit."""
        return self.follower.bit.id

    @property
    def bush(self) -> str | None:
        """Id of the guide bush."""
        return None if self.follower.bush is None else self.follower.bush.id

    @property
    def takes(self) -> float:
        """Depth of wood that this pass takes, mm."""
        return self.ends - self.begins

    def below_base(self, template: float) -> float:
        """How far the lower end of the bit stands below the router's base, mm: what its depth is set to.

        The base rests on the template of that thickness (mm), but for a bearing on the tip on the wood itself; such a
        bearing is the lower end.
        """
        bit = self.follower.bit
        bearing = bearing_height(bit) if bit.bearing == "tip" else 0.0
        return self.ends + bearing + (0.0 if self.follower.kind == "bearing on the tip" else template)

    def said(self, through: bool, template: float) -> str:
        """One sentence for the bench; `through` where the cut that it is a part of goes through the wood, `template` its thickness."""
        what = {"guide bush": say("bush"), "bare shank": say("shank")}.get(self.follower.kind, say("bearing"))
        on = {"template": say("on the template"), "template below": say("on the template below"),
              "wall already cut": say("on the wall already cut")}[self.rubs_on]
        only = say(", in the corners only") if self.corners else ""
        up = say("Face up") if self.side == "face" else say("Back up")
        return say("{up}, {follower}{only}: from {begins} to {ends} deep, the bit set {below} below the base, {contact} of the {what} "
                   "rubbing {on}.",
                   up=up, follower=self.follower.name, only=only, begins=deep(self.begins, through),
                   ends=deep(self.ends, through), below=deep(self.below_base(template), through), contact=mm(self.contact), what=what, on=on)


def depths(reach: Reach, begins: float, ends: float, least: float | None = None) -> tuple[float, ...] | None:
    """Depths in mm of the fewest even passes from `begins` to `ends`, or None when the rules allow none.

    More than MOST_PASSES are none. Each pass ends at `least` (reach.least when not given) or deeper, not below reach.most, and takes
    no more than reach.step. Depths in between are rounded to 0.1 mm where that keeps the rules.
    """
    least = reach.least if least is None else least
    if ends > reach.most + TOUCH or ends < least - TOUCH or ends <= begins + TOUCH:
        return None
    if begins + reach.step < least - TOUCH:
        return None
    count = max(1, math.ceil((ends - begins - TOUCH) / reach.step))
    if count > MOST_PASSES:
        return None
    found = [begins]
    for left in range(count, 1, -1):
        last = found[-1]
        even = max(last + (ends - last) / left, least)
        tenth = round(even, 1)
        keeps = least <= tenth <= last + reach.step and ends - tenth <= (left - 1) * reach.step
        found.append(tenth if keeps else even)
    return (*found[1:], ends)


class Guided(Struct, frozen=True):
    """A follower above its cutting edges, and how deep it lets its cutter go."""

    follower: Follower
    reach: Reach


def from_template(one: Guided, begins: float, ends: float, side: Side, job: Job) -> tuple[Pass, ...] | None:
    """Passes from one depth to another (mm) that are guided by the template, or None."""
    way = depths(one.reach, begins, ends)
    if way is None:
        return None
    made = []
    for start, end in zip((begins, *way), way, strict=False):
        on_template, on_wall = contact(one.follower, end, job.template)
        on = "template" if on_template >= job.contact - TOUCH else "wall already cut"
        made.append(Pass(side, one.follower, start, end, on, on_template + on_wall, job.light))
    return tuple(made)


def from_wall(one: Guided, begins: float, ends: float, side: Side, job: Job) -> tuple[Pass, ...] | None:
    """Passes that follow the wall that another bit has cut from the same side, or None."""
    if not math.isfinite(one.reach.on_wall):
        return None
    way = depths(one.reach, begins, ends, one.reach.on_wall)
    if way is None:
        return None
    return tuple(Pass(side, one.follower, start, end, "wall already cut", contact(one.follower, end, job.template)[1], job.light)
                 for start, end in zip((begins, *way), way, strict=False))


def going_on(first: Follower, one: Guided, begins: float, ends: float, side: Side, job: Job) -> tuple[Pass, ...] | None:
    """Passes on behind a first bit, or None: on its template when the offsets agree; otherwise the second has to follow the
    wall, and the opening must not be narrower than the slot."""
    same = same_offset(first.offset, one.follower.offset)
    on = from_template(one, begins, ends, side, job) if same else None
    return from_wall(one, begins, ends, side, job) if on is None and (same or first.offset >= 0) else on


def in_turn(first: Guided, second: Guided, ends: float, side: Side, job: Job) -> tuple[Pass, ...] | None:
    """The fewest passes to `ends` by `first` from the surface and then `second`, or None."""
    best: tuple[Pass, ...] | None = None
    step, stop = first.reach.step, min(first.reach.most, ends - TOUCH)
    for k in range(1, min(MOST_PASSES, max(1, math.ceil(stop / step))) + 1):
        turn = min(stop, k * step)
        upper = from_template(first, 0.0, turn, side, job)
        lower = None if upper is None else going_on(first.follower, second, turn, ends, side, job)
        if lower is not None and (best is None or len(upper) + len(lower) < len(best)):
            best = upper + lower
    return best


FLUSH_OFFSET = 0.01
"""Offsets that differ by less (mm) share one template."""


def same_offset(one: float, other: float) -> bool:
    """Whether two offsets (mm) are those of one template."""
    return abs(one - other) <= FLUSH_OFFSET
