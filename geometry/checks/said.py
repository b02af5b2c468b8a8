"""Sentences that keep their lengths: written once in the checks, read in the maker's unit.

A length in a sentence is the number itself between two marks that no name can
hold, with the decimals that it wants in mm. `read` puts it into words; the
unit behind it in the sentence (` mm` or ` mm²`) goes with it.
"""

from __future__ import annotations

import math
import re

from geometry.saying import number, say
from geometry.tolerance import TOUCH
from geometry.units import MM_PER_INCH, LengthUnit, format_close, format_down, format_length

_OPEN, _BREAK, _CLOSE = "\x01", "\x02", "\x03"
_LENGTH = re.compile(f"{_OPEN}([^{_BREAK}]+){_BREAK}(\\d)([!+-]?){_CLOSE}( mm²| mm\\b)?")
_MORE_IN_INCHES = 2
"""An inch is 25 times a millimetre: two more decimals keep what was said, three at least."""


def length(mm: float, decimals: int = 1, exact: bool = False, down: bool = False, up: bool = False) -> str:
    """A length (mm, or mm2 where the sentence goes on so) for a sentence, with so many decimals in mm.

    `exact` asks for a number to work to: in inches it is rounded up to a
    thousandth, never to a fraction, so that doing as told is enough. `down`
    asks for a clearance: it is never told as more than it is; `up` for how far
    two things are into each other: never told as less.
    """
    return f"{_OPEN}{mm!r}{_BREAK}{decimals}{'!' if exact else '-' if down else '+' if up else ''}{_CLOSE}"


def rounded_down(value: float, decimals: int) -> str:
    """A number in words with so many decimals that is not above it, but for TOUCH; never `-0.0`."""
    return number(_down(value, decimals), f".{decimals}f")


def read(said: str, unit: LengthUnit = "mm") -> str:
    """The sentence in a unit: `2.4 mm`, `0.094"`, or `3/32"` where a fraction is true to it; areas as `0.012 sq in`."""
    return _LENGTH.sub(lambda found: _put(float(found[1]), int(found[2]), found[3], found[4] or "", unit), said)


def _put(value: float, decimals: int, way: str, behind: str, unit: LengthUnit) -> str:
    if way == "+":  # a clearance below nothing, told without its sign
        return _put(-value, decimals, "-", behind, unit).lstrip("-")
    if unit == "mm":
        return (rounded_down(value, decimals) if way == "-" else number(value, f"z.{decimals}f")) + behind
    if behind == " mm²":
        return say("{size:.4f} sq in", size=value / MM_PER_INCH ** 2)
    if way == "!":
        return format_length(math.ceil(value / MM_PER_INCH * 1000 - 1e-6) / 1000 * MM_PER_INCH, "in", mark=True)
    if unit == "in64" and decimals <= 1:
        return format_down(value, unit, mark=True) if way == "-" else format_close(value, unit, mark=True)
    # What is told to a hundredth of a millimetre is finer than a 64th of an inch shows.
    decimals = max(3, decimals + _MORE_IN_INCHES)
    if way == "-":
        value = _down(value / MM_PER_INCH, decimals) * MM_PER_INCH
    return format_length(value, "in", decimals, mark=True)


def _down(value: float, decimals: int) -> float:
    whole = 10 ** decimals
    return math.floor((value + TOUCH) * whole) / whole + 0.0
