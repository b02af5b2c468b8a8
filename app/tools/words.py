"""Readouts: lengths, places and angles of what is held, in the maker's unit."""

from __future__ import annotations

import math

from app.tools.pointer import Takes
from geometry.layout import Nut
from geometry.saying import say
from geometry.strings.square_line import square_line
from geometry.units import LengthUnit, format_angle, format_close, format_down, format_length
from geometry.vectors import Vec2


def length(mm: float, unit: LengthUnit) -> str:
    """A length with its unit: one decimal in mm; fractions of an inch only where they are true to it, else thousandths."""
    return format_close(mm, unit, mark=True)


def clearance(mm: float, unit: LengthUnit, decimals: int = 1) -> str:
    """As length, but never more than it is: wood that is left, and what is measured."""
    return format_down(mm, unit, decimals, mark=True)


def place(p: Vec2, unit: LengthUnit, nut: Nut) -> str:
    """A point of the face as makers say it: `12.3 mm to the treble, 94 mm from the nut line`, of a slanted nut from the base line."""
    line = square_line(nut)
    if abs(p[0]) < 0.005:
        across = say("on the centreline")
    else:
        far = _off(abs(p[0]), unit)
        across = say("{far} to the treble", far=far) if p[0] > 0 else say("{far} to the bass", far=far)
    if abs(p[1]) < 0.005:
        return say("{across}, on the {line}", across=across, line=line)
    along = _off(abs(p[1]), unit)
    return (say("{across}, {along} from the {line}", across=across, along=along, line=line) if p[1] > 0 else
            say("{across}, {along} behind the {line}", across=across, along=along, line=line))


def _off(mm: float, unit: LengthUnit) -> str:
    """How far off a line, which a point that is not on it is seen to be: never `0 mm`."""
    if mm >= 0.1:
        return length(mm, unit)
    return format_length(mm, "mm" if unit == "mm" else "in", 2 if unit == "mm" else 4, mark=True)


def step(a: Vec2, b: Vec2, unit: LengthUnit) -> str:
    """Length and direction from a to b."""
    d = (b[0] - a[0], b[1] - a[1])
    return say("length {length}, angle {angle}", length=length(math.hypot(*d), unit),
               angle=format_angle(math.atan2(d[1], d[0])))


def place_takes(p: Vec2, nut: Nut) -> tuple[Takes, ...]:
    """The two values of a place, to be typed: how far to the side on which p lies, and how far from the nut line or base line, behind which it may lie."""
    side = ("bass", say("to the bass")) if p[0] < -0.005 else ("treble", say("to the treble"))
    line = square_line(nut)
    return (side, ("behind", say("behind the {line}", line=line)) if p[1] < -0.005 else ("along", say("from the {line}", line=line)))


STEP: tuple[Takes, ...] = (("length", say("length")), ("angle", say("angle")))
"""The two values of a step from one place to the next."""


def next_takes(p: Vec2, nut: Nut) -> tuple[Takes, ...]:
    """What the next place of a line may be given by: a step to it, or the place itself as calipers find it on a template."""
    return (*STEP, *place_takes(p, nut))
