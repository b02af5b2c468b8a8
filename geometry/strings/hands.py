"""Which way round the strings lie."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.layout import String


def thick_on_treble(strings: Sequence[String]) -> bool:
    """Whether the thick strings run along the treble edge, as on a left-handed head: sides are named by the frame (treble
    at +x), whatever strings cross it.

    By all strings and their places, for a single thin one may lie among the thick: a drone, or an octave in its course.
    False where neither side has more.
    """
    middle = (len(strings) - 1) / 2
    return sum((i - middle) * string.diameter for i, string in enumerate(strings)) > 1e-9
