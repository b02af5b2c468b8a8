"""The line across the head that lengths along it are from, in words: the nut line, or the base line of a slanted nut."""

from __future__ import annotations

import math

from geometry.layout.strings import Nut
from geometry.lengths import mm
from geometry.saying import say
from geometry.terms import term
from geometry.units import format_angle


def square_line(nut: Nut) -> str:
    """What a sentence calls the line square to the centreline through the middle of the nut."""
    return term("base line") if nut.slant else term("nut line")


def slant_words(nut: Nut) -> str:
    """How a slanted nut lies to its base line; nothing where it is square to the centreline."""
    if not nut.slant:
        return ""
    half = nut.width / 2
    return say("The nut is slanted by {angle}, its {side} end nearer the tip: {half} to either side of the centreline, at its ends, the nut "
               "line lies {off} off the base line, which is square to the centreline through the middle of the nut. Distances along the "
               "head, those from the nut line too, are from the base line.",
               angle=format_angle(math.radians(abs(nut.slant))), side=term("bass" if nut.slant > 0 else "treble"), half=mm(half),
               off=mm(abs(nut.at(half)[1])))


def base_words(nut: Nut) -> str:
    """What the base line is, where distances from it are told again; nothing where the nut is square to the centreline."""
    return say("Distances along the head are from the base line, square to the centreline through the middle of the nut.") if nut.slant else ""
