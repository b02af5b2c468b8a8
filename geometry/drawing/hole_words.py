"""A hole in a few words, the same on every sheet."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.saying import say
from geometry.solids import Drilling
from geometry.units import format_length


def bore_words(d: Drilling) -> str:
    """Diameter and depth in mm: "8.8 to 8", "6.5 through"."""
    if d.through:
        return say("{diameter} through", diameter=format_length(d.diameter))
    return say("{diameter} to {depth}", diameter=format_length(d.diameter), depth=format_length(d.depth))


def bores_words(drillings: Sequence[Drilling]) -> str:
    """The bores of one hole; the ones from the back say so."""
    return ", ".join(bore_words(d) + (say(", back") if d.surface == "back" and not d.through else "")
                     for d in drillings)
