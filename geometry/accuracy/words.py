"""Chances and causes as a maker says them. No chance is ever called certain: the trials are a sample."""

from __future__ import annotations

import math

from geometry.accuracy.sources import TEMPLATE, Share
from geometry.checks.snags import OUTLINE

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
    if chance <= 0:
        return f"under 1 in {_round(trials / _SURELY):,} (none seen in {trials:,})"
    if chance >= 1:
        return f"nearly always (all of {trials:,} tried)"
    if chance < _FEW:
        return f"about 1 in {_round(1 / chance):,}"
    return f"{round(chance * 100)} in 100" if chance < 0.985 else "over 98 in 100"


def short_chance_words(chance: float, trials: int) -> str:
    """The same for a narrow place, without what stands in brackets and without `about`."""
    return chance_words(chance, trials).partition(" (")[0].removeprefix("about ")


def success_words(chance: float, trials: int) -> str:
    """A chance that something comes out, rounded down so that it is never overstated: `97 in 100`, `998 in 1,000`."""
    if chance <= 0:
        return f"under 1 in {_round(trials / _SURELY):,} (none of {trials:,} tried)"
    if chance >= 1:
        whole = max(10 ** math.floor(math.log10(trials / _SURELY) + 1e-9), 1)
        return f"over {whole - 1:,} in {whole:,} (all of {trials:,} tried)"
    if chance < 0.01:
        return f"about 1 in {_round(1 / chance):,}"
    whole = next((size for size in (100, 1000) if chance < 1 - 1 / size), 10_000)
    count = math.floor(chance * whole + 1e-9)
    while whole > 100 and count % 10 == 0:
        count, whole = count // 10, whole // 10
    return f"{count:,} in {whole:,}"


def rise_words(before: float, after: float, trials: int) -> str:
    """Two chances of coming out beside each other: `from 91 to 99 in 100`."""
    one, two = (success_words(c, trials).partition(" (")[0] for c in (before, after))
    first, _, whole = one.partition(" in ")
    second, _, same = two.partition(" in ")
    return f"from {first} to {second} in {whole}" if whole == same else f"from {one} to {two}"


def cause_words(clearance: Clearance) -> str:
    """`Mostly the mark of treble face 1 (32 %), then the tilt of treble side 1 (30 %).` or that nothing strays."""
    worth = [s for s in clearance.shares if s.share >= _WORTH][:3] or list(clearance.shares[:1])
    if not worth:
        return "Nothing strays here."
    return f"Mostly {', then '.join(f'{share_words(s)} ({s.share * 100:.0f} %)' for s in worth)}."


def share_words(share: Share) -> str:
    """What strays, with its place: `the mark of treble face 1`, `the place of the template`."""
    if share.source == "template":
        followed = f"the {share.where}" if share.where == OUTLINE else share.where
        return "the place of the template" if share.where == TEMPLATE else f"how {followed} is followed"
    return {"mark": "the mark of {}", "wander": "the drill's wander in {}", "tilt": "the tilt of {}",
            "square": "how square {} is drilled", "stop": "the stop depth of {}",
            "paper": "the stretch of the {}"}[share.source].format(share.where)


def _round(number: float) -> int:
    """To two figures, at least 1."""
    whole = max(1, round(number))
    step = 10 ** max(0, len(str(whole)) - 2)
    return round(whole / step) * step
