"""How a tilt of the drill press table is told: how far, and which end of the blank is raised for it.

A sign would say it too, but nobody at a drill press knows which way a sign turns.
"""

from __future__ import annotations

from typing import Literal

from geometry.saying import say
from geometry.terms import term
from geometry.units import format_angle


def raised_end(tilt: float) -> Literal["tip", "nut"] | None:
    """The end of the blank that is raised for a tilt in rad (positive: the tip); None when it shows as 0.0 degrees."""
    if format_angle(abs(tilt)) == format_angle(0.0):
        return None
    return "tip" if tilt > 0 else "nut"


def tilt_words(tilt: float) -> str:
    """A tilt in rad for the eye: `3.1° nut raised`, or `level`."""
    end = raised_end(tilt)
    return say("level") if end is None else say("{tilt} {end} raised", tilt=format_angle(abs(tilt)), end=term(end))
