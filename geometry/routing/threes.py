"""Three bits one after the other, where two do not get through: the last resort of the search.

Each goes on where the one before gets no farther. Only starters and enders that
can matter are tried: few bits reach deep enough to end, and of the rest those
that reach deepest.
"""

from __future__ import annotations

from collections.abc import Iterator

from geometry.routing.depth import OVERLAP, Job, Reach
from geometry.routing.follower import Follower
from geometry.routing.pairs import Guided
from geometry.routing.passes import Pass, from_template, from_wall, same_offset
from geometry.routing.refusal import Refusal
from geometry.routing.tip import finish, finishing_pass
from geometry.tolerance import TOUCH

MOST = 12
"""Bits tried for each of the three places."""


def three_bits(able: list[Guided], tips: list[Follower], job: Job) -> Iterator[tuple[Pass, ...]]:
    """Three bits from the face; where none get through, three with one flip."""
    found = False
    for passes, _ in _stairs(able, job.depth, job):
        found = True
        yield passes
    if found or not job.through:
        return
    total = job.thickness + OVERLAP
    for first, one, second, two in _pairs(able):
        most = min(two.most, job.thickness)
        upper = _two(first, one, second, two, most, "face", job)
        if upper is None:
            continue
        for tip in tips:
            span = finish(tip, job)
            if not isinstance(span, Refusal) and tip.bit.id not in (first.bit.id, second.bit.id) and span[0] <= most + TOUCH:
                yield (*upper, finishing_pass(tip, job, most))
        for upper, deepest in _stairs(able, None, job, (first, one, second, two)):
            lower = _two(first, one, second, two, max(total - deepest, two.least), "back", job)
            if lower is not None and total - deepest <= two.most + TOUCH:
                yield upper + lower


def _pairs(able: list[Guided]) -> Iterator[tuple[Follower, Reach, Follower, Reach]]:
    """Starters with each bit that can go on behind them and gets deeper, deepest first."""
    deepest = sorted(able, key=lambda pair: (-pair[1].most, pair[0].bit.id))
    starters = [(f, r) for f, r in deepest if r.least <= r.step + TOUCH][:MOST]
    for first, one in starters:
        goes_on = 0
        for second, two in deepest:
            if second.bit.id == first.bit.id or two.most <= one.most + TOUCH:
                continue
            if min(two.least, two.on_wall) - two.step > one.most + TOUCH:
                continue
            yield first, one, second, two
            goes_on += 1
            if goes_on >= MOST:
                break


def _stairs(able: list[Guided], ends: float | None, job: Job, pair: tuple | None = None) -> Iterator[tuple[tuple[Pass, ...], float]]:
    """Three bits from the face down to `ends` (as deep as the third gets without it), with the depth reached."""
    enders = [(f, r) for f, r in able if ends is None or r.most >= ends - TOUCH]
    enders = sorted(enders, key=lambda p: (min(p[1].least, p[1].on_wall) - p[1].step, p[0].bit.id))[:MOST]
    for first, one, second, two in [pair] if pair is not None else _pairs(able):
        for third, three in enders:
            if third.bit.id in (first.bit.id, second.bit.id) or three.most <= two.most + TOUCH:
                continue
            if min(three.least, three.on_wall) - three.step > two.most + TOUCH:
                continue
            deep = min(three.most, job.thickness) if ends is None else ends
            upper = _two(first, one, second, two, min(two.most, deep - TOUCH), "face", job)
            if upper is None:
                continue
            last = _next(first, third, three, upper[-1].ends, deep, "face", job)
            if last is not None:
                yield upper + last, deep


def _two(first: Follower, one: Reach, second: Follower, two: Reach, ends: float, side: str,
         job: Job) -> tuple[Pass, ...] | None:
    """`first` from the surface as deep as it gets, then `second` to `ends`."""
    turn = min(one.most, ends - TOUCH)
    upper = from_template(first, one, 0.0, turn, side, job.template, job.light, job.contact)
    if upper is None:
        return None
    lower = _next(first, second, two, turn, ends, side, job)
    return None if lower is None else upper + lower


def _next(first: Follower, follower: Follower, reach: Reach, begins: float, ends: float, side: str,
          job: Job) -> tuple[Pass, ...] | None:
    """Going on from `begins`: on the first bit's template where the offsets agree, else on the wall already cut."""
    same = same_offset(first.offset, follower.offset)
    on = from_template(follower, reach, begins, ends, side, job.template, job.light, job.contact) if same else None
    if on is None and (same or first.offset >= 0):
        on = from_wall(follower, reach, begins, ends, side, job.template, job.light)
    return on
