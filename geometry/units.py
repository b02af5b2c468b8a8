"""Lengths and angles as makers write them, and back. Inside the program everything is mm and radians."""

from __future__ import annotations

import math
import re
from typing import Literal

from geometry.errors import GeometryError, quoted
from geometry.saying import say, written

MM_PER_INCH = 25.4
"""Exact by definition (international inch, 1959)."""

LengthUnit = Literal["mm", "in", "in64"]
"""How lengths are shown: millimetres, decimal inches, inches in fractions down to 1/64."""



def usual_pin(unit: LengthUnit) -> float:
    """Diameter in mm of a locating pin that is new: 6 mm, or 1/4 inch for who works in inches (common practice, no source)."""
    return 6.0 if unit == "mm" else MM_PER_INCH / 4


def usual_slot(unit: LengthUnit) -> float:
    """Width in mm of a straight slot that is new: 13 mm, or 1/2 inch for who works in inches (common practice, no source)."""
    return 13.0 if unit == "mm" else MM_PER_INCH / 2


UNPARTED = "\N{NO-BREAK SPACE}"
"""A space at which no line ends."""
_WITHIN = re.compile(r"(?<=\d) (?=\d+/\d|\d{3}\b|(?:mm|m/s|min|degrees|Grad|hours|Stunden)\b|%|x )|(?<=\d x) |(?<=\b[A-Z]) (?=\d)")


def unparted(words: str) -> str:
    """The words with UNPARTED for the spaces within a number and a size: before fraction, thousands and unit, about an x (6 x bore), and
    behind the single letter that the number is of (L 100)."""
    return _WITHIN.sub(UNPARTED, words)


_UNITS = {"mm": 1.0, "cm": 10.0, "in": MM_PER_INCH, '"': MM_PER_INCH, "inch": MM_PER_INCH, "inches": MM_PER_INCH, "zoll": MM_PER_INCH,
          "″": MM_PER_INCH, "”": MM_PER_INCH, "''": MM_PER_INCH}
_TERM = (
    r"\s*(?P<sign>[+-]?)\s*"
    r"(?:(?P<whole>\d+)[ -](?P<num1>\d+)\s*/\s*(?P<den1>\d+)"
    r"|(?P<num2>\d+)\s*/\s*(?P<den2>\d+)"
    r"|(?P<number>\d+(?:[.,]\d*)?|[.,]\d+))"
    r"\s*(?P<unit>mm|cm|inches|inch|in|zoll|''|[\"″”])?")


def parse_length(text: str, unit: LengthUnit = "mm") -> float:
    """A length in mm from what was typed: `12.5`, `12,5`, `1/2"`, `1 5/8" + 2 mm`, `-3`.

    A number without a unit is taken in `unit`; so is a fraction. Terms are
    added or subtracted. Comma and point both stand before the decimals, in any
    language, and never set thousands apart: no length of a headstock has any,
    and `1,234` taken for a thousand times as much would be the worse mistake.
    GeometryError with one sentence when it cannot be read, also for a number
    with both signs.
    """
    default = 1.0 if unit == "mm" else MM_PER_INCH
    cleaned = text.strip().lower().replace("−", "-")
    if not cleaned:
        raise GeometryError(say('Type a length, for example 12.5, 12 mm or 1/2".'))
    term = re.compile(_TERM)  # here, where it is kept from the second time on: to make it takes a millisecond, and a start types nothing
    total, at, first = 0.0, 0, True
    while at < len(cleaned):
        match = term.match(cleaned, at)
        if match is None or (not first and not match["sign"]):
            raise GeometryError(say('{text} is not a length: write for example 12.5, 12 mm, 1/2" or 1 5/8" + 2 mm.',
                                    text=quoted(text)))
        # Floats throughout: thousands of digits then read as infinite and not as an error of the language.
        denominator = match["den1"] or match["den2"]
        if denominator is not None and float(denominator) == 0:
            raise GeometryError(say('{text} divides by zero.', text=quoted(text)))
        if match["den1"]:
            value = float(match["whole"]) + float(match["num1"]) / float(match["den1"])
        elif match["den2"]:
            value = float(match["num2"]) / float(match["den2"])
        else:
            value = float(match["number"].replace(",", "."))
        value *= _UNITS[match["unit"]] if match["unit"] else default
        total += -value if match["sign"] == "-" else value
        at, first = match.end(), False
        while at < len(cleaned) and cleaned[at] == " ":
            at += 1
    if not math.isfinite(total) or abs(total) > 1e6:
        raise GeometryError(say('{text} is far too long for a headstock.', text=quoted(text)))
    return total


def format_length(mm: float, unit: LengthUnit = "mm", decimals: int | None = None, mark: bool = False) -> str:
    """A length for the eye: `12.5`, `0.492`, or `1 5/8` (nearest 1/64). `mark` appends the unit.

    With the decimal sign of the language in use. `decimals` defaults to 2 for mm and 3 for decimal inches; trailing zeros go.
    """
    if unit == "mm":
        text = _trim(f"{mm:.{2 if decimals is None else decimals}f}")
        return f"{text} mm" if mark else text
    inches = mm / MM_PER_INCH
    if unit == "in":
        text = _trim(f"{inches:.{3 if decimals is None else decimals}f}")
        return f'{text}"' if mark else text
    sixty_fourths = round(abs(inches) * 64)
    whole, rest = divmod(sixty_fourths, 64)
    sign = "-" if inches < 0 and sixty_fourths else ""
    shared = math.gcd(rest, 64)
    part = f"{rest // shared}/{64 // shared}" if rest else ""
    text = sign + " ".join(bit for bit in (str(whole) if whole or not part else "", part) if bit)
    return f'{text}"' if mark else text


CLOSE = 0.05
"""mm: a length that a 64th of an inch misses by more is told in thousandths where the number is worked to."""


LACK = 1e-6
"""mm: a length that lacks no more than this is whole: sums of floats come out a hair short."""


def format_close(mm: float, unit: LengthUnit = "mm", decimals: int = 1, mark: bool = False) -> str:
    """As format_length, but a fraction of an inch only where it is true to within CLOSE and a hundredth of itself, else thousandths.

    `decimals` is for mm.
    """
    if unit == "mm":
        return format_length(mm, unit, decimals, mark)
    step = MM_PER_INCH / 64
    near = unit == "in64" and abs(round(mm / step) * step - mm) <= min(CLOSE, abs(mm) / 100)
    return format_length(mm, "in64" if near else "in", mark=mark)


def format_size(across: float, along: float, unit: LengthUnit = "mm", decimals: int = 1) -> str:
    """Two sides of something as format_close tells them: `88 x 190 mm`, `3.465" x 7.48"`."""
    first = format_close(across, unit, decimals, mark=unit != "mm")
    return f"{first} x {format_close(along, unit, decimals, mark=True)}"


def format_down(mm: float, unit: LengthUnit = "mm", decimals: int = 1, mark: bool = False) -> str:
    """As format_close, but never more than the length is: for how deep a hole is drilled, what passes, what is left.

    In inches a thousandth below it, or a 64th that is not above it and as near as format_close asks.
    """
    if unit == "mm":
        whole = 10 ** decimals
        return format_length(math.floor((mm + LACK) * whole) / whole, unit, decimals, mark)
    step = MM_PER_INCH / 64
    near = math.floor((mm + LACK) / step) * step
    if unit == "in64" and mm - near <= min(CLOSE, abs(mm) / 100):
        return format_length(near, "in64", mark=mark)
    return format_length(math.floor((mm + LACK) / MM_PER_INCH * 1000) / 1000 * MM_PER_INCH, "in", mark=mark)


def parse_angle(text: str) -> float:
    """An angle in radians from degrees as typed: `14`, `14.5°`, `-3,5 deg`. GeometryError when it cannot be read."""
    match = re.fullmatch(r"\s*([+-]?\s*(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(?:°|deg|degrees|grad)?\s*", text.replace("−", "-"), re.IGNORECASE)
    if match is None:
        raise GeometryError(say('{text} is not an angle: write degrees, for example 14.5.', text=quoted(text)))
    degrees = float(match[1].replace(" ", "").replace(",", "."))
    if not abs(degrees) <= 1e6:
        raise GeometryError(say('{text} turns round and round: write degrees, for example 14.5.', text=quoted(text)))
    return math.radians(degrees)


def format_angle(radians: float, decimals: int = 1) -> str:
    """Degrees for the eye with the degree sign, never `-0`."""
    return _trim(f"{math.degrees(radians):.{decimals}f}", keep=decimals) + "°"


def _trim(text: str, keep: int = 0) -> str:
    if "." in text and not keep:
        text = text.rstrip("0").rstrip(".")
    return written(text.removeprefix("-") if float(text) == 0 else text)
