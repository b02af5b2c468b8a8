"""What one bit with one follower makes of a job on its own, or the one sentence why it cannot."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import TYPE_CHECKING, Literal

from msgspec import Struct

from geometry.errors import GeometryError
from geometry.layout import GuideBush, Rack, RouterBit
from geometry.lengths import at_least, at_most, mm, place
from geometry.routing.depth import FLUSH, OVERLAP, Job, Reach, contact, reach_of
from geometry.routing.follower import Follower, follower_of
from geometry.routing.passes import MOST_PASSES, Guided, Pass, from_template
from geometry.routing.refusal import Refusal
from geometry.routing.tip import template_below
from geometry.saying import number_list, say
from geometry.terms import term
from geometry.tolerance import TOUCH

if TYPE_CHECKING:
    from geometry.routing.reached import Reached

MOST_LOST = 2.0
"""Deepest rounding in mm of a corner of wood that a plan may cost (common practice, no source)."""

Judge = Callable[[float, float], "Reached"]
"""(cutter, offset) in mm -> what it reaches in plan"""


class Alone(Struct, frozen=True):
    """A follower, what it reaches in plan, and the passes that do the whole job."""

    follower: Follower
    reached: Reached
    passes: tuple[Pass, ...]

    @property
    def flips(self) -> int:
        """0, or 1 when the wood is turned over."""
        return int(self.passes[-1].side != self.passes[0].side)


def bushes_for(bit: RouterBit, rack: Rack) -> tuple[GuideBush | None, ...]:
    """What may guide a bit: nothing more than it has, or every bush of the rack besides where it has no bearing."""
    return (None, *rack.bushes) if bit.bearing == "none" else (None,)


def held(bit: RouterBit, bush: GuideBush | None, job: Job) -> Follower | Refusal:
    """The follower, when the router holds the shank and bit and bush go together."""
    collets = job.router.collets
    if collets and all(abs(bit.shank - collet) > FLUSH for collet in collets):
        sizes = number_list(mm(c) for c in sorted(collets))
        return Refusal(0, say("The router has no collet for its {shank} shank (it has {sizes}).",
                              shank=mm(bit.shank), sizes=sizes))
    try:
        return follower_of(bit, bush)
    except GeometryError as error:
        return Refusal(0, str(error))


def enters(follower: Follower, job: Job) -> Refusal | None:
    """The quick look at widths: does the cutter go in, and down through its own template opening?"""
    cutter = follower.bit.cutter
    if job.width is None:
        return None
    if cutter > job.width + TOUCH:
        return Refusal(1, say("Its {cutter} cutter does not pass {of}, which is {width} wide where it is narrowest: "
                              "up to {width} would.",
                              cutter=mm(cutter), of=term(job.of), width=at_most(job.width)))
    opening = job.widest + 2 * follower.offset
    if follower.offset < -FLUSH / 2 and follower.bit.bearing != "tip" and opening < cutter - TOUCH:
        return Refusal(2, say("Its cutter is wider than what follows the template, so the template opening is only "
                              "{opening} wide and the {cutter} cutter cannot be lowered through it.",
                              opening=at_most(opening), cutter=mm(cutter)))
    return None


def fits(follower: Follower, job: Job, judge: Judge) -> Reached | Refusal:
    """The exact look in plan, for what gets down deep enough."""
    reached = judge(follower.bit.cutter, follower.offset)
    if not reached.whole:
        return Refusal(5, say("Its {cutter} cutter does not get everywhere in {of}.",
                              cutter=mm(follower.bit.cutter), of=term(job.of)))
    if reached.left_depth > follower.bit.cutter:
        return Refusal(5, say("It leaves {left_depth} of wood standing at {at}, more than its own diameter: a slimmer "
                              "cutter would get farther in.",
                              left_depth=mm(reached.left_depth), at=place(reached.left[0].at)))
    if reached.lost_depth > MOST_LOST:
        return Refusal(5, say("The template for it rounds the corner of wood at {at} by {lost_depth}: a follower "
                              "nearer to the size of the cutter would not.",
                              at=place(reached.lost[0].at), lost_depth=mm(reached.lost_depth)))
    return reached


def alone(bit: RouterBit, bush: GuideBush | None, job: Job, judge: Judge) -> Alone | Refusal:
    """The best that one bit does without help: from the face if it can, else turned over."""
    follower = held(bit, bush, job)
    if isinstance(follower, Refusal):
        return follower
    refused = enters(follower, job)
    if refused is not None:
        return refused
    passes = passes_of(follower, job)
    if isinstance(passes, Refusal):
        return passes
    reached = fits(follower, job, judge)
    return reached if isinstance(reached, Refusal) else Alone(follower, reached, passes)


def passes_of(follower: Follower, job: Job) -> tuple[Pass, ...] | Refusal:
    """The passes in which one follower gets to the job's depth, from the face if it can, else turned over; or why not.

    The one rule of depth: the planner and the checks both ask here. Nothing is looked at in plan.
    """
    made, reach = _tried(follower, job)
    return _why(follower, reach, job) if made is None else made


def outcome_of(follower: Follower, job: Job) -> Literal["face", "both", "none"]:
    """What passes_of comes to, without its words: all passes from the face, or from both sides, or none."""
    made, _ = _tried(follower, job)
    if made is None or isinstance(made, Refusal):
        return "none"
    return "face" if made[-1].side == made[0].side else "both"


def _tried(follower: Follower, job: Job) -> tuple[tuple[Pass, ...] | Refusal | None, Reach | None]:
    """(the passes, or a refusal, or None where the reach is not enough; the reach)."""
    if follower.bit.bearing == "tip":
        below = template_below(follower, job)
        return below if isinstance(below, Refusal) else (below,), None
    reach = reach_of(follower, job)
    if isinstance(reach, Refusal):
        return reach, None
    one = Guided(follower, reach)
    straight = from_template(one, 0.0, job.depth, "face", job)
    if straight is not None:
        return straight, reach
    return _both_sides(one, job) if job.through else None, reach


def _both_sides(one: Guided, job: Job) -> tuple[Pass, ...] | None:
    """The fewest passes from the face and then from the back that meet with OVERLAP mm, or None."""
    reach, total = one.reach, job.thickness + OVERLAP
    low, high = max(reach.least, total - reach.most), min(reach.most, job.thickness)
    if low > high + TOUCH:
        return None
    counts = range(1, min(MOST_PASSES, math.ceil(total / reach.step)) + 1)
    trials = {min(max(face, low), high) for face in (total / 2, low, high, *(k * reach.step for k in counts))}
    best: tuple[Pass, ...] | None = None
    for face in sorted(trials, key=lambda face: abs(face - total / 2)):
        back = max(total - face, reach.least)
        upper, lower = (from_template(one, 0.0, deep, side, job) for side, deep in (("face", face), ("back", back)))
        if upper and lower and (best is None or len(upper) + len(lower) < len(best)):
            best = upper + lower
    return best


def _why(follower: Follower, reach: Reach, job: Job) -> Refusal:
    """Why no passes were found: the first one is too shallow to be guided, or the last one does not get down."""
    bit = follower.bit
    first = min(reach.step, job.depth)
    if reach.least > first + TOUCH:
        if follower.offset < -FLUSH / 2:
            return Refusal(3, say("Its cutter is wider than what follows the template, so all {cutting_length} of its "
                                  "cutting edges have to be down in the wood before it may touch the template, and a "
                                  "pass may take only {first}.",
                                  cutting_length=mm(bit.cutting_length), first=mm(first)))
        rubs, _ = contact(follower, first, job.template)
        what = say("bearing") if bit.bearing == "shank" else say("shank")
        left = say("nothing") if rubs < 0.05 else say("only {length}", length=at_most(rubs))
        return Refusal(3, say("Its cutting edges are {cutting_length} long and a pass may take {first}: so high up in "
                              "the {template} template they leave {left} of the {what} to rub, and {contact} are "
                              "wanted. A template of {thick} would do, or a cutting length up to {most}.",
                              cutting_length=mm(bit.cutting_length), first=mm(first), template=mm(job.template),
                              left=left, what=what, contact=mm(job.contact),
                              thick=at_least(bit.cutting_length - first + job.contact),
                              most=at_most(first + job.template - job.contact)))
    sides = 2 if job.through else 1
    if job.depth / sides > MOST_PASSES * reach.step:
        return Refusal(4, say("A pass may take only {step}, so it would need more than {most_passes} passes: take a "
                              "wider cutter or longer cutting edges.",
                              step=mm(reach.step), most_passes=MOST_PASSES * sides))
    down = max(0.0, reach.most)
    if not job.through:
        return Refusal(4, say("It reaches {down} into the wood, because {binds}; {of} is {depth} deep.",
                              down=at_most(down), binds=reach.binds, of=term(job.of), depth=mm(job.depth)))
    half = (job.thickness + OVERLAP) / 2
    return Refusal(4, say("It reaches {down} into the wood, because {binds}; the wood is {thickness} thick, and even "
                          "turned over it would have to reach {half}.",
                          down=at_most(down), binds=reach.binds, thickness=mm(job.thickness), half=at_least(half)))
