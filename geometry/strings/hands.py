"""Which way round the strings lie, and from which side they are counted."""

from __future__ import annotations

from collections.abc import Sequence

from geometry.layout import Side, String


def thick_on_treble(strings: Sequence[String]) -> bool:
    """Whether the thick strings run along the treble edge, as on a left-handed head: sides are named by the frame (treble
    at +x), whatever strings cross it.

    By all strings and their places, for a single thin one may lie among the thick: a drone, or an octave in its course.
    False where neither side has more.
    """
    middle = (len(strings) - 1) / 2
    return sum((i - middle) * string.diameter for i, string in enumerate(strings)) > 1e-9


def counted_from(strings: Sequence[String]) -> Side | None:
    """The side at which string 1 lies where all are named 1, 2, 3 … from one side on, None where they are not; treble where both are so
    (none, or one)."""
    names = [string.id for string in strings]
    counted = [str(i) for i in range(1, len(names) + 1)]
    return "treble" if names == counted[::-1] else "bass" if names == counted else None


def courses_from(strings: Sequence[String]) -> Side:
    """The side at which the first course lies; where there is but one, that at which string 1 does, treble where none tells."""
    ends = (strings[0].course, strings[-1].course) if strings else (1, 1)
    return counted_from(strings) or "treble" if ends[0] == ends[1] else "bass" if ends[0] < ends[1] else "treble"
