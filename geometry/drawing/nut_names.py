"""The names of the two lines at a slanted nut, on paper."""

from __future__ import annotations

import math

from geometry.drawing.heights import LEAST
from geometry.drawing.marks import Drawing, Label, Mark
from geometry.drawing.shapes import DATUM
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.terms import term
from geometry.units import format_angle

LETTER = LEAST
"""Capital height of the names of both lines, mm."""
BESIDE, CLEAR, LINE = 2.0, 0.8, 1.6 * LETTER
"""From the end of the nut line to the names, from a line to a name above or below it, and from one line of words to the next, mm."""


def line_names(nut: Nut, beyond: float = DATUM, turn: int = 1, narrow: bool = False) -> Drawing:
    """The names of the base line and of the slanted nut line, with its angle, beside the right end of the nut line, which is drawn so far
    beyond the nut (mm), or with `turn` -1 beside its left end; `narrow` in three lines instead of two. Nothing for a square nut."""
    if not nut.slant:
        return ()
    x, end = nut.at(turn * (nut.width / 2 + beyond))
    x, anchor = x + turn * BESIDE, "left" if turn > 0 else "right"
    below = min(end - LETTER / 2, -CLEAR - LETTER)
    above = max(end - LETTER / 2, CLEAR)
    words = say("nut line, {angle}", angle=format_angle(math.radians(abs(nut.slant))))
    lines = words.rsplit(" ", 1) if narrow else [words]
    of_base, of_nut = (CLEAR, below) if end < 0 else (-CLEAR - LETTER, above + LINE * (len(lines) - 1))
    marks: list[Mark] = [Label(term("base line"), (x, of_base), LETTER, "dimension", "nut", anchor=anchor)]
    marks += [Label(line, (x, of_nut - LINE * i), LETTER, "dimension", "nut", anchor=anchor) for i, line in enumerate(lines)]
    return tuple(marks)
