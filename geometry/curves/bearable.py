"""How many chords a curve may be cut into: a drawing read in the wrong unit can be as long as a road."""

from __future__ import annotations

from geometry.errors import GeometryError
from geometry.saying import say

MOST_CHORDS = 1_000_000
"""Chords of one curve. A curve of a layout takes fewer down to a sagitta of 2e-5 mm: its points lie within 5 m and its bulge is at most 1000."""


def bearable(count: int) -> int:
    """The count of chords, as it is. GeometryError when it is more than MOST_CHORDS: nothing is cut coarser than promised."""
    if count > MOST_CHORDS:
        raise GeometryError(say("A curve is so long that it would take {count:,} straight pieces to follow it: check the unit of "
                                "the drawing.", count=count))
    return count
