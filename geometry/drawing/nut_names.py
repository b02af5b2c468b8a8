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
BESIDE, CLEAR = 2.0, 0.8
"""From the end of the nut line to the names, and from a line to a name above or below it, mm."""


def line_names(nut: Nut, beyond: float = DATUM) -> Drawing:
    """The names of the base line and of the slanted nut line, with its angle, beside the right end of the nut line, which is drawn so far
    beyond the nut (mm); nothing for a square nut."""
    if not nut.slant:
        return ()
    x, end = nut.at(nut.width / 2 + beyond)
    below = min(end - LETTER / 2, -CLEAR - LETTER)
    above = max(end - LETTER / 2, CLEAR)
    of_base, of_nut = (CLEAR, below) if end < 0 else (-CLEAR - LETTER, above)
    marks: list[Mark] = [Label(term("base line"), (x + BESIDE, of_base), LETTER, "dimension", "nut"),
                         Label(say("nut line, {angle}", angle=format_angle(math.radians(abs(nut.slant)))), (x + BESIDE, of_nut), LETTER,
                               "dimension", "nut")]
    return tuple(marks)
