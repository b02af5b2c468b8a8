"""Lengths in the sentences of refusals, in the unit of `geometry.routing.words.speaking`."""

from __future__ import annotations

import math

from geometry.routing.words import mm, spoken
from geometry.units import MM_PER_INCH, format_length


def given(length: float) -> str:
    """A length (mm) that was asked for, with its unit."""
    return mm(length)


def at_least(length: float) -> str:
    """A least length: in inches rounded up to a thousandth, so that typing what is told is enough."""
    return _thousandths(length, math.ceil)


def at_most(length: float) -> str:
    """A largest length: in inches rounded down to a thousandth."""
    return _thousandths(length, math.floor)


def _thousandths(length: float, rounded) -> str:
    if spoken() == "mm":
        return mm(length)
    hair = -1e-6 if rounded is math.ceil else 1e-6
    return format_length(rounded(length / MM_PER_INCH * 1000 + hair) / 1000 * MM_PER_INCH, "in", mark=True)
