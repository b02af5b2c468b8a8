"""A hole in a few words, the same on every sheet."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.solids import Drilling, Hole
from geometry.units import format_length


def bore_words(d: Drilling) -> str:
    """Diameter and depth in mm: "8.8 to 8", "6.5 through"."""
    return f"{format_length(d.diameter)} " + ("through" if d.through else f"to {format_length(d.depth)}")


def bores_words(drillings: Sequence[Drilling]) -> str:
    """The bores of one hole; the ones from the back say so."""
    return ", ".join(bore_words(d) + (", back" if d.surface == "back" and not d.through else "")
                     for d in drillings)
