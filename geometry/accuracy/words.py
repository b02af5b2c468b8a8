"""Chances and causes as a maker says them."""

from __future__ import annotations

from geometry.accuracy.simulation import Clearance
from geometry.accuracy.sources import TEMPLATE, Share
from geometry.checks.snags import OUTLINE

_FEW = 0.2
"""Chance under which `1 in n` is said"""
_WORTH = 0.15
"""Share of a variance under which a cause is not worth a word"""


def chance_words(chance: float, trials: int) -> str:
    """`about 1 in 45`, `about 30 in 100`, `always`, or for none at all what can be said: `fewer than 1 in 3300`.

    None in n trials leaves room for three in n (95 % sure: the rule of three).
    """
    if chance <= 0:
        return f"fewer than 1 in {_round(trials / 3)}"
    if chance >= 1:
        return "always"
    if chance < _FEW:
        return f"about 1 in {_round(1 / chance)}"
    return f"about {max(1, min(99, round(chance * 100)))} in 100"


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
