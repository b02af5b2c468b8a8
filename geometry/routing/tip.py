"""Bits with the bearing on the tip: on a template below the wood, or on a wall that is cut already.

Such a bit cuts nothing with its tip, so it has to be let into the waste, and its
edges have to cover all that they cut at once: above them there is no follower.
"""

from __future__ import annotations

from geometry.lengths import at_least, at_most, mm
from geometry.routing.depth import FLUSH, OVERLAP, Job, bearing_height, step_of
from geometry.routing.follower import Follower
from geometry.routing.passes import Pass
from geometry.routing.refusal import Refusal
from geometry.saying import say
from geometry.tolerance import TOUCH


def template_below(follower: Follower, job: Job) -> Pass | Refusal:
    """One pass through the whole thickness with the template under the wood and the base on the face."""
    refused = _entering(follower, job)
    if refused is not None:
        return refused
    bit = follower.bit
    height = bearing_height(bit)
    rubs = min(height, job.template)
    if rubs < job.contact - TOUCH:
        return Refusal(2, say("Only {rubs} of its bearing would rub on the template below, and {contact} are wanted: "
                              "take a thicker template or a bit with a higher bearing.",
                              rubs=at_most(rubs), contact=mm(job.contact)))
    step = step_of(bit, job)
    if step < job.thickness - TOUCH:
        words = {"thickness": mm(job.thickness), "step": at_most(step)}
        return Refusal(4, say("With the bearing on its tip it has to cut the whole {thickness} at once, and its cutting "
                              "edges are {step}.", **words) if step == bit.cutting_length else
                       say("With the bearing on its tip it has to cut the whole {thickness} at once, and the deepest "
                           "pass that suits it is {step}.", **words))
    refused = _reaching(follower, job, job.thickness + height)
    return refused or Pass("face", follower, 0.0, job.thickness, "template below", rubs, job.light)


def finish(follower: Follower, job: Job) -> tuple[float, float] | Refusal:
    """Least and greatest depth in mm that another bit has to cut from the face for this one to finish from the back.

    The wood is turned over, the bearing runs on the wall cut from the face and the edges take the rest,
    OVERLAP mm past the seam.
    """
    refused = _entering(follower, job)
    if refused is not None:
        return refused
    bit = follower.bit
    height = bearing_height(bit)
    if abs(follower.diameter - bit.cutter) > FLUSH:
        return Refusal(2, say("Its bearing and its cutter differ in size, so it cannot copy a wall that is cut "
                              "already."))
    if height < job.contact - TOUCH:
        return Refusal(2, say("Its bearing is {height} high and {contact} have to rub: take a bit with a higher "
                              "bearing, or ask for less in the margins.",
                              height=mm(height), contact=mm(job.contact)))
    reaches = min(bit.stick_out, job.router.plunge) - height
    least = max(job.contact + OVERLAP, job.thickness + OVERLAP - min(step_of(bit, job), reaches))
    if least > job.thickness - TOUCH:
        return Refusal(4, say("It reaches only {step_of} into the wood from the back.",
                              step_of=at_most(max(0.0, min(step_of(bit, job), reaches)))))
    return least, job.thickness


def finishing_pass(follower: Follower, job: Job, cut: float) -> Pass:
    """The pass of finish() after another bit has cut `cut` mm deep from the face."""
    return Pass("back", follower, 0.0, job.thickness - cut + OVERLAP, "wall already cut",
                min(bearing_height(follower.bit), cut - OVERLAP), job.light)


def _entering(follower: Follower, job: Job) -> Refusal | None:
    if not job.through:
        return Refusal(2, say("The bearing on its tip keeps the cutter off the floor of a blind slot."))
    if job.entry <= 0:
        return Refusal(2, say("With a bearing on its tip it cannot be lowered into solid wood, and no drill of the "
                              "rack opens the waste: add a brad point or Forstner bit at least 2 mm slimmer than the "
                              "slot."))
    widest = max(follower.diameter, follower.bit.cutter)
    if widest > job.entry + TOUCH:
        return Refusal(2, say("With a bearing on its tip it has to be let into the drilled waste, and {widest} does "
                              "not go into a hole of {entry}.",
                              widest=mm(widest), entry=mm(job.entry)))
    return None


def _reaching(follower: Follower, job: Job, needed: float) -> Refusal | None:
    bit = follower.bit
    has = min(bit.stick_out, job.router.plunge)
    if has >= needed - TOUCH:
        return None
    words = {"needed": at_least(needed), "has": at_most(has)}
    return Refusal(4, say("To put its bearing on the template below it needs {needed} under the base, and it stands only "
                          "{has} out of it.", **words) if bit.stick_out <= job.router.plunge else
                   say("To put its bearing on the template below it needs {needed} under the base, and the router plunges "
                       "only {has}.", **words))
