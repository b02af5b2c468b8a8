"""What one bit with one follower makes of a job on its own, or the one sentence why it cannot."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from geometry.errors import GeometryError
from geometry.layout import GuideBush, RouterBit
from geometry.routing.depth import FLUSH, OVERLAP, Job, Reach, contact, reach_of
from geometry.routing.follower import Follower, follower_of
from geometry.routing.passes import MOST_PASSES, Pass, from_template
from geometry.routing.reached import Reached
from geometry.routing.refusal import Refusal
from geometry.routing.tip import template_below
from geometry.routing.words import mm, place
from geometry.tolerance import TOUCH

MOST_LOST = 2.0
"""Deepest rounding in mm of a corner of wood that a plan may cost (common practice, no source)."""

Judge = Callable[[float, float], Reached]
"""(cutter, offset) in mm -> what it reaches in plan"""


@dataclass(frozen=True, slots=True)
class Alone:
    """A follower, what it reaches in plan, and the passes that do the whole job."""

    follower: Follower
    reached: Reached
    passes: tuple[Pass, ...]

    @property
    def flips(self) -> int:
        """0, or 1 when the wood is turned over."""
        return int(self.passes[-1].side != self.passes[0].side)


def held(bit: RouterBit, bush: GuideBush | None, job: Job) -> Follower | Refusal:
    """The follower, when the router holds the shank and bit and bush go together."""
    collets = job.router.collets
    if collets and all(abs(bit.shank - collet) > FLUSH for collet in collets):
        sizes = ", ".join(mm(c) for c in sorted(collets))
        return Refusal(0, f"The router has no collet for its {mm(bit.shank)} shank (it has {sizes}).")
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
        return Refusal(1, f"Its {mm(cutter)} cutter does not pass {job.of}, which is {mm(job.width)} wide where it is "
                          f"narrowest: up to {mm(job.width)} would.")
    opening = job.widest + 2 * follower.offset
    if follower.offset < -FLUSH / 2 and follower.bit.bearing != "tip" and opening < cutter - TOUCH:
        return Refusal(2, f"Its cutter is wider than what follows the template, so the template opening is only {mm(opening)} "
                          f"wide and the {mm(cutter)} cutter cannot be lowered through it.")
    return None


def fits(follower: Follower, job: Job, judge: Judge) -> Reached | Refusal:
    """The exact look in plan, for what gets down deep enough."""
    reached = judge(follower.bit.cutter, follower.offset)
    if not reached.whole:
        return Refusal(5, f"Its {mm(follower.bit.cutter)} cutter does not get everywhere in {job.of}.")
    if reached.left_depth > follower.bit.cutter:
        return Refusal(5, f"It leaves {mm(reached.left_depth)} of wood standing at {place(reached.left[0].at)}, more than its "
                          "own diameter: a slimmer cutter would get farther in.")
    if reached.lost_depth > MOST_LOST:
        return Refusal(5, f"The template for it rounds the corner of wood at {place(reached.lost[0].at)} by "
                          f"{mm(reached.lost_depth)}: a follower nearer to the size of the cutter would not.")
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
    if follower.bit.bearing == "tip":
        below = template_below(follower, job)
        return below if isinstance(below, Refusal) else (below,)
    reach = reach_of(follower, job)
    if isinstance(reach, Refusal):
        return reach
    straight = from_template(follower, reach, 0.0, job.depth, "face", job.template, job.light, job.contact)
    if straight is not None:
        return straight
    turned = both_sides(follower, reach, job) if job.through else None
    return turned if turned is not None else _why(follower, reach, job)


def both_sides(follower: Follower, reach: Reach, job: Job) -> tuple[Pass, ...] | None:
    """The fewest passes from the face and then from the back that meet with OVERLAP mm, or None."""
    total = job.thickness + OVERLAP
    low, high = max(reach.least, total - reach.most), min(reach.most, job.thickness)
    if low > high + TOUCH:
        return None
    counts = range(1, min(MOST_PASSES, math.ceil(total / reach.step)) + 1)
    trials = {min(max(face, low), high) for face in (total / 2, low, high, *(k * reach.step for k in counts))}
    best: tuple[Pass, ...] | None = None
    for face in sorted(trials, key=lambda face: abs(face - total / 2)):
        back = max(total - face, reach.least)
        upper, lower = (from_template(follower, reach, 0.0, deep, side, job.template, job.light, job.contact)
                        for side, deep in (("face", face), ("back", back)))
        if upper and lower and (best is None or len(upper) + len(lower) < len(best)):
            best = upper + lower
    return best


def _why(follower: Follower, reach: Reach, job: Job) -> Refusal:
    """Why no passes were found: the first one is too shallow to be guided, or the last one does not get down."""
    bit = follower.bit
    first = min(reach.step, job.depth)
    if reach.least > first + TOUCH:
        if follower.offset < -FLUSH / 2:
            return Refusal(3, f"Its cutter is wider than what follows the template, so all {mm(bit.cutting_length)} of its "
                              f"cutting edges have to be down in the wood before it may touch the template, and a pass may "
                              f"take only {mm(first)}.")
        rubs, _ = contact(follower, first, job.template)
        what = "bearing" if bit.bearing == "shank" else "shank"
        left = "nothing" if rubs < 0.05 else f"only {mm(rubs)}"
        return Refusal(3, f"Its cutting edges are {mm(bit.cutting_length)} long and a pass may take {mm(first)}: so high up in "
                          f"the {mm(job.template)} template they leave {left} of the {what} to rub, and {mm(job.contact)} are "
                          f"wanted. A template of {mm(bit.cutting_length - first + job.contact)} would do, or a cutting length "
                          f"up to {mm(first + job.template - job.contact)}.")
    sides = 2 if job.through else 1
    if job.depth / sides > MOST_PASSES * reach.step:
        return Refusal(4, f"A pass may take only {mm(reach.step)}, so it would need more than {MOST_PASSES * sides} passes: take a "
                          "wider cutter or longer cutting edges.")
    down = max(0.0, reach.most)
    if not job.through:
        return Refusal(4, f"It reaches {mm(down)} into the wood, because {reach.binds}; {job.of} is {mm(job.depth)} deep.")
    half = (job.thickness + OVERLAP) / 2
    return Refusal(4, f"It reaches {mm(down)} into the wood, because {reach.binds}; the wood is {mm(job.thickness)} thick, and "
                      f"even turned over it would have to reach {mm(half)}.")
