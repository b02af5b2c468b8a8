"""Two bits one after the other, where no single one does the job."""

from __future__ import annotations

from collections.abc import Iterator

from geometry.routing.depth import OVERLAP, Job, Reach
from geometry.routing.follower import Follower
from geometry.routing.passes import Pass, from_template, in_turn
from geometry.routing.refusal import Refusal
from geometry.routing.tip import finish, finishing_pass
from geometry.tolerance import TOUCH

Guided = tuple[Follower, Reach]
"""A follower above its cutting edges and what it can do."""


def one_side(able: list[Guided], job: Job) -> Iterator[tuple[Pass, ...]]:
    """Two bits from the face: the first starts, the second goes on where the first gets no farther."""
    starters = [(f, r) for f, r in able if r.least <= r.step + TOUCH and r.least < job.depth]
    for second, two in able:
        if two.most < job.depth - TOUCH:
            continue
        for first, one in starters:
            if first.bit.id != second.bit.id:
                found = in_turn(first, one, second, two, job.depth, "face", job.template, job.light, job.contact)
                if found is not None:
                    yield found


def two_sides(able: list[Guided], tips: list[Follower], job: Job) -> Iterator[tuple[Pass, ...]]:
    """Two bits and one flip: a bit on the template first, then one that follows its wall from either side."""
    if not job.through:
        return
    starters = [(f, r) for f, r in able if r.least <= r.step + TOUCH]
    total = job.thickness + OVERLAP
    for first, one in starters:
        for tip in tips:
            found = _tip_last(first, one, tip, job)
            if found is not None:
                yield found
        for second, two in able:
            if first.bit.id == second.bit.id or one.most + two.most < total - TOUCH:
                continue
            back = max(one.least, min(one.most, total / 2))
            deep = max(total - back, two.least)
            upper = in_turn(first, one, second, two, deep, "face", job.template, job.light, job.contact)
            lower = from_template(first, one, 0.0, back, "back", job.template, job.light, job.contact)
            if upper and lower:
                yield upper + lower
        for second, two in able:
            if first.bit.id != second.bit.id and one.most + two.most < total - TOUCH <= 2 * two.most:
                found = _both_on_both(first, one, second, two, job)
                if found is not None:
                    yield found


def _both_on_both(first: Follower, one: Reach, second: Follower, two: Reach, job: Job) -> tuple[Pass, ...] | None:
    """Both bits from the face and both again from the back, half the wood each: for the thickest blanks."""
    half = max((job.thickness + OVERLAP) / 2, two.least)
    if half > two.most + TOUCH:
        return None
    upper, lower = (in_turn(first, one, second, two, half, side, job.template, job.light, job.contact)
                    for side in ("face", "back"))
    return upper + lower if upper and lower else None


def _tip_last(first: Follower, one: Reach, tip: Follower, job: Job) -> tuple[Pass, ...] | None:
    """A bit from the face, then the wood turned over and the rest taken by a bearing on the cut wall."""
    span = finish(tip, job)
    if isinstance(span, Refusal):
        return None
    cut = max(span[0], one.least, min(one.most, job.thickness / 2))
    upper = from_template(first, one, 0.0, cut, "face", job.template, job.light, job.contact)
    return None if upper is None or cut > span[1] else (*upper, finishing_pass(tip, job, cut))
