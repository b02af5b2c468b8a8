"""Three bits one after the other, where two do not get through: the last resort of the search.

Each goes on where the one before gets no farther. Only starters and enders that
can matter are tried: few bits reach deep enough to end, and of the rest those
that reach deepest.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from geometry.routing.depth import OVERLAP, Job
from geometry.routing.follower import Follower
from geometry.routing.pairs import starters
from geometry.routing.passes import Guided, Pass, Side, from_template, going_on
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
    for first, second in _pairs(able):
        most = min(second.reach.most, job.thickness)
        upper = _two(first, second, most, "face", job)
        if upper is None:
            continue
        for tip in tips:
            span = finish(tip, job)
            if not isinstance(span, Refusal) and tip.bit.id not in _ids(first, second) and span[0] <= most + TOUCH:
                yield (*upper, finishing_pass(tip, job, most))
        for upper, deepest in _stairs(able, None, job, (first, second)):
            lower = _two(first, second, max(total - deepest, second.reach.least), "back", job)
            if lower is not None and total - deepest <= second.reach.most + TOUCH:
                yield upper + lower


def _ids(*able: Guided) -> set[str]:
    return {one.follower.bit.id for one in able}


def _goes_on(behind: Guided, one: Guided) -> bool:
    """Whether one gets deeper than the other and finds its guide where that stops."""
    reach, most = one.reach, behind.reach.most
    return reach.most > most + TOUCH and min(reach.least, reach.on_wall) - reach.step <= most + TOUCH


def _pairs(able: list[Guided]) -> Iterator[tuple[Guided, Guided]]:
    """Starters with each bit that can go on behind them and gets deeper, deepest first."""
    deepest = sorted(able, key=lambda one: (-one.reach.most, one.follower.bit.id))
    for first in starters(deepest)[:MOST]:
        on = (second for second in deepest if second.follower.bit.id != first.follower.bit.id and _goes_on(first, second))
        yield from ((first, second) for second in islice(on, MOST))


def _stairs(able: list[Guided], ends: float | None, job: Job, pair: tuple[Guided, Guided] | None = None) -> Iterator[tuple[tuple[Pass, ...], float]]:
    """Three bits from the face down to `ends` (as deep as the third gets without it), with the depth reached."""
    enders = [one for one in able if ends is None or one.reach.most >= ends - TOUCH]
    enders = sorted(enders, key=lambda one: (min(one.reach.least, one.reach.on_wall) - one.reach.step, one.follower.bit.id))[:MOST]
    for first, second in [pair] if pair is not None else _pairs(able):
        for third in enders:
            if third.follower.bit.id in _ids(first, second) or not _goes_on(second, third):
                continue
            deep = min(third.reach.most, job.thickness) if ends is None else ends
            upper = _two(first, second, min(second.reach.most, deep - TOUCH), "face", job)
            if upper is None:
                continue
            last = going_on(first.follower, third, upper[-1].ends, deep, "face", job)
            if last is not None:
                yield upper + last, deep


def _two(first: Guided, second: Guided, ends: float, side: Side, job: Job) -> tuple[Pass, ...] | None:
    """`first` from the surface as deep as it gets, then `second` to `ends`."""
    turn = min(first.reach.most, ends - TOUCH)
    upper = from_template(first, 0.0, turn, side, job)
    lower = None if upper is None else going_on(first.follower, second, turn, ends, side, job)
    return None if lower is None else upper + lower
