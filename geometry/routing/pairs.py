"""Two bits one after the other, where no single one does the job."""

from __future__ import annotations

from collections.abc import Iterator

from geometry.routing.depth import OVERLAP, Job
from geometry.routing.follower import Follower
from geometry.routing.passes import Guided, Pass, from_template, in_turn
from geometry.routing.refusal import Refusal
from geometry.routing.tip import finish, finishing_pass
from geometry.tolerance import TOUCH


def starters(able: list[Guided]) -> list[Guided]:
    """Those that can begin in full wood: the first pass is deep enough for them to be guided."""
    return [one for one in able if one.reach.least <= one.reach.step + TOUCH]


def one_side(able: list[Guided], job: Job) -> Iterator[tuple[Pass, ...]]:
    """Two bits from the face: the first starts, the second goes on where the first gets no farther."""
    begin = [one for one in starters(able) if one.reach.least < job.depth]
    for second in able:
        if second.reach.most < job.depth - TOUCH:
            continue
        for first in begin:
            if first.follower.bit.id != second.follower.bit.id:
                found = in_turn(first, second, job.depth, "face", job)
                if found is not None:
                    yield found


def two_sides(able: list[Guided], tips: list[Follower], job: Job) -> Iterator[tuple[Pass, ...]]:
    """Two bits and one flip: a bit on the template first, then one that follows its wall from either side."""
    if not job.through:
        return
    total = job.thickness + OVERLAP
    for first in starters(able):
        one = first.reach
        for tip in tips:
            found = _tip_last(first, tip, job)
            if found is not None:
                yield found
        others = [second for second in able if second.follower.bit.id != first.follower.bit.id]
        for second in others:
            if one.most + second.reach.most < total - TOUCH:
                continue
            back = max(one.least, min(one.most, total / 2))
            upper = in_turn(first, second, max(total - back, second.reach.least), "face", job)
            lower = from_template(first, 0.0, back, "back", job)
            if upper and lower:
                yield upper + lower
        for second in others:
            if one.most + second.reach.most < total - TOUCH <= 2 * second.reach.most:
                found = _both_on_both(first, second, job)
                if found is not None:
                    yield found


def _both_on_both(first: Guided, second: Guided, job: Job) -> tuple[Pass, ...] | None:
    """Both bits from the face and both again from the back, half the wood each: for the thickest blanks."""
    half = max((job.thickness + OVERLAP) / 2, second.reach.least)
    if half > second.reach.most + TOUCH:
        return None
    upper, lower = (in_turn(first, second, half, side, job) for side in ("face", "back"))
    return upper + lower if upper and lower else None


def _tip_last(first: Guided, tip: Follower, job: Job) -> tuple[Pass, ...] | None:
    """A bit from the face, then the wood turned over and the rest taken by a bearing on the cut wall."""
    span = finish(tip, job)
    if isinstance(span, Refusal):
        return None
    cut = max(span[0], first.reach.least, min(first.reach.most, job.thickness / 2))
    upper = from_template(first, 0.0, cut, "face", job)
    return None if upper is None or cut > span[1] else (*upper, finishing_pass(tip, job, cut))
