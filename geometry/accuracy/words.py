"""Chances and causes as a maker says them. No chance is ever called certain: the trials are a sample."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from geometry.accuracy.sources import BACK, RAMP, TEMPLATE, WRAP, Share
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.terms import term

if TYPE_CHECKING:
    from geometry.accuracy.simulation import Clearance

_FEW = 0.02
"""Chance under which `1 in n` is said"""
_WORTH = 0.15
"""Share of a variance under which a cause is not worth a word"""
_SURELY = 3.0
"""What never happened in n trials happens less often than three times in n (95 % sure: the rule of three)."""


def chance_words(chance: float, trials: int) -> str:
    """A chance of harm: `about 1 in 90`, `9 in 100`, and at the ends what the trials allow to be said.

    Rounded to the nearest. None in 10,000 trials is `under 1 in 3,300 (none seen in 10,000)`, all of them
    `nearly always (all of 10,000 tried)`.
    """
    words = short_chance_words(chance, trials)
    if chance <= 0:
        return say("{chance} (none seen in {trials:,})", chance=words, trials=trials)
    if chance >= 1:
        return say("{chance} (all of {trials:,} tried)", chance=words, trials=trials)
    return say("about {chance}", chance=words) if chance < _FEW else words


def short_chance_words(chance: float, trials: int) -> str:
    """The same for a narrow place, without what stands in brackets and without `about`."""
    if chance <= 0:
        return say("under 1 in {n:,}", n=_down(trials / _SURELY))
    if chance >= 1:
        return say("nearly always")
    if chance < _FEW:
        return say("1 in {n:,}", n=_round(1 / chance))
    return say("{n:,} in {whole:,}", n=round(chance * 100), whole=100) if chance < 0.985 else say("over 98 in 100")


def success_words(chance: float, trials: int) -> str:
    """A chance that something comes out, rounded down so that it is never overstated: `97 in 100`, `998 in 1,000`."""
    words = short_success_words(chance, trials)
    if chance <= 0:
        return say("{chance} (none of {trials:,} tried)", chance=words, trials=trials)
    return say("{chance} (all of {trials:,} tried)", chance=words, trials=trials) if chance >= 1 else words


def short_success_words(chance: float, trials: int) -> str:
    """The same for a narrow place, without what stands in brackets."""
    if chance <= 0:
        return say("under 1 in {n:,}", n=_down(trials / _SURELY))
    if chance >= 1:
        whole = max(10 ** math.floor(math.log10(trials / _SURELY) + 1e-9), 1)
        return say("over {n:,} in {whole:,}", n=whole - 1, whole=whole)
    if chance < 0.01:
        return say("about {chance}", chance=say("1 in {n:,}", n=_round(1 / chance)))
    n, whole = _success(chance)
    return say("{n:,} in {whole:,}", n=n, whole=whole)


def _success(chance: float) -> tuple[int, int]:
    """How many of how many come out, for a chance from 0.01 and below 1."""
    whole = next((size for size in (100, 1000) if chance < 1 - 1 / size), 10_000)
    n = math.floor(chance * whole + 1e-9)
    while whole > 100 and n % 10 == 0:
        n, whole = n // 10, whole // 10
    return n, whole


def rise_words(before: float, after: float, trials: int) -> str:
    """Two chances of coming out beside each other: `from 91 to 99 in 100`."""
    if 0.01 <= before < 1 and 0.01 <= after < 1:
        (one, whole), (two, same) = _success(before), _success(after)
        if whole == same:
            return say("from {one:,} to {two:,} in {whole:,}", one=one, two=two, whole=whole)
    return say("from {one} to {two}", one=short_success_words(before, trials), two=short_success_words(after, trials))


def cause_words(clearance: Clearance) -> str:
    """`Mostly the mark of treble face 1 (32 %), then the tilt of treble side 1 (30 %).` or that nothing strays."""
    worth = [s for s in clearance.shares if s.share >= _WORTH][:3] or list(clearance.shares[:1])
    if not worth:
        return say("Nothing strays here.")
    one, *more = (say("{cause} ({share:.0f} %)", cause=share_words(each), share=each.share * 100) for each in worth)
    if not more:
        return say("Mostly {one}.", one=one)
    if len(more) == 1:
        return say("Mostly {one}, then {two}.", one=one, two=more[0])
    return say("Mostly {one}, then {two}, then {three}.", one=one, two=more[0], three=more[1])


def share_words(share: Share) -> str:
    """What strays, with its place: `the mark of treble face 1`, `the place of the template`."""
    if share.source == "template":
        if share.where == TEMPLATE:
            return say("the place of the template")
        return say("how the outline is followed") if share.where == OUTLINE else say("how {slot} is followed", slot=share.where)
    if share.source == "paper":
        return say("the stretch of the {paper}", paper=term(share.where))
    if share.where.startswith(RAMP):
        slot = share.where.removeprefix(RAMP)
        return (say("the mark of the ramp of {slot}", slot=slot) if share.source == "mark" else
                say("how deep the ramp of {slot} is filed", slot=slot))
    return {"mark": say("the mark of {what}", what=share.where), "wander": say("the drill's wander in {what}", what=share.where),
            "tilt": say("the tilt of {what}", what=share.where), "square": say("how square {what} is drilled", what=share.where),
            "stop": say("the stop depth of {what}", what=share.where)}[share.source]


def place_words(where: str) -> str:
    """Where a need has to be met: the name of a feature, of a paper, or of a slot with its ramp."""
    if where.startswith(RAMP):
        return say("ramp of {slot}", slot=where.removeprefix(RAMP))
    return term(where) if where in (WRAP, BACK, TEMPLATE) else where


def _round(number: float) -> int:
    """To two figures, at least 1."""
    whole = max(1, round(number))
    step = 10 ** max(0, len(str(whole)) - 2)
    return round(whole / step) * step


def _down(number: float) -> int:
    """To two figures below it, at least 1: "under 1 in" so many must hold."""
    whole = max(1, math.floor(number + 1e-9))
    step = 10 ** max(0, len(str(whole)) - 2)
    return whole // step * step
