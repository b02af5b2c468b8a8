"""What one number of a drawing measures: from the file, from the maker, or guessed from the size."""

from __future__ import annotations

import math
from collections.abc import Callable
from contextlib import suppress

from msgspec import Struct
from msgspec.structs import replace

from app.formats.drawing_in.result import DrawingRead
from app.formats.errors import FormatError
from geometry.saying import number, say

INSUNITS = {
    1: "inch", 2: "foot", 3: "mile", 4: "mm", 5: "cm", 6: "m", 7: "km", 8: "microinch", 9: "mil", 10: "yard",
    11: "angstrom", 12: "nanometre", 13: "micron", 14: "dm", 15: "dam", 16: "hm", 17: "gigametre",
    18: "astronomical unit", 19: "light year", 20: "parsec", 21: "US survey foot", 22: "US survey inch",
    23: "US survey yard", 24: "US survey mile",
}
"""Codes of the DXF header variable $INSUNITS (published DXF reference; 0 is unitless)."""

_SURVEY_FOOT = 1200.0 / 3937.0 * 1000.0
"""US survey foot in mm: 1200/3937 m by its definition of 1893."""

NINETIETH = "1/90 inch"
"""What programs drew in that took 90 points of a screen for an inch"""

MM = {
    "mm": 1.0, "cm": 10.0, "dm": 100.0, "m": 1000.0, "dam": 1e4, "hm": 1e5, "km": 1e6, "gigametre": 1e12,
    "micron": 1e-3, "nanometre": 1e-6, "angstrom": 1e-7,
    "inch": 25.4, "foot": 304.8, "yard": 914.4, "mile": 1609344.0, "microinch": 25.4e-6, "mil": 25.4e-3,
    "astronomical unit": 1.495978707e14, "light year": 9.4607304725808e18, "parsec": 3.0856775814913673e19,
    "US survey foot": _SURVEY_FOOT, "US survey inch": _SURVEY_FOOT / 12, "US survey yard": 3 * _SURVEY_FOOT,
    "US survey mile": 5280 * _SURVEY_FOOT,
    "px": 25.4 / 96, "pt": 25.4 / 72, "pc": 25.4 / 6, "Q": 0.25, NINETIETH: 25.4 / 90,
}
"""Millimetres per unit."""

OFFERED = ("mm", "cm", "inch")


POINTS = {"px": 96, NINETIETH: 90, "pt": 72}
"""How many of them programs that state no size write to the inch"""


def offered(unit: str) -> tuple[str, ...]:
    """Units that the maker is offered for a drawing that was taken in a unit: of points that go by the inch the others too."""
    return (*OFFERED, *(name for name in POINTS if name != unit)) if unit in POINTS else OFFERED


HEADSTOCK = (60.0, 350.0)
"""Longest side in mm that a headstock is expected to have (common practice, no source)."""

PLAUSIBLE = (50.0, 600.0)
"""Longest side in mm outside of which a stated unit is doubted (common practice, no source)."""

NARROWEST = 30.0
"""mm: nothing that a head is part of is narrower (common practice, no source)."""

NECK = (280.0, 1400.0)
"""Longest side in mm of a neck with its head (common practice, no source)."""

INSTRUMENT = (500.0, 1400.0)
"""Longest side in mm of a whole instrument, from a ukulele's to a bass (common practice, no source)."""

LONG = 2.2
"""times its width that a whole instrument is long at the least (common practice, no source)."""

SLIM = 4.0
"""times its width beyond which nothing that long is a headstock (common practice, no source)."""

_TYPICAL = 190.0
_TYPICAL_NECK = 680.0
_TYPICAL_INSTRUMENT = 1000.0
"""Longest side in mm of a usual headstock, of a usual neck with one and of a whole guitar (common practice, no source): they break ties between guesses."""

Sides = Callable[[float], tuple[float, float]]
"""Width and height in mm of what a drawing is of, when one of its units is so many mm."""


HINT = 2.0
"""How many times nearer to a usual size a unit must come to be guessed against the file's hint."""


class Unit(Struct, frozen=True):
    """A unit with where it came from."""

    name: str
    source: str
    """file, option or guess"""
    mm: float
    """millimetres per drawing unit"""
    instead: tuple[str, float] | None = None
    """what the file states, and its mm, where this was guessed since that makes nothing that a head is part of"""


def unit_named(name: str) -> float:
    """Millimetres per unit for a name that the maker gave, or for a number of them. Raises FormatError for an unknown one."""
    found = MM.get({"in": "inch", "ft": "foot", "millimetre": "mm", "centimetre": "cm"}.get(name, name))
    if found is None:
        with suppress(ValueError):
            found = float(name)
    if found is None or not 0 < found < math.inf:
        raise FormatError(say("The unit '{name}' is not known: give mm, cm or inch.", name=name))
    return found


def guessed(sides: Sides, metric: bool | None, first: tuple[str, ...] = ()) -> Unit:
    """The unit in which a drawing makes a headstock, or a neck where it is as slim as one; else that which makes a whole instrument.

    `metric` is the file's own hint, None without one: programs write it unasked, so it counts as much as a size that is
    HINT times nearer to a usual one, and so does a name in `first` against all others. Millimetres when nothing fits.
    """
    known = (*first, "mm", "inch", "cm", "m", "foot")
    fitting = [name for name in known if may_be_cut(sides(MM[name]))]
    whole = [] if fitting else [name for name in known if _may_be_instrument(sides(MM[name]))]
    if not fitting:
        fitting = whole or [*first, "mm"][:1]

    def unlikely(name: str) -> float:
        against = name not in first if first else metric is not None and (name in ("mm", "cm", "m")) != metric
        size = sides(MM[name])
        usual = _TYPICAL_INSTRUMENT if whole else _TYPICAL_NECK if is_slim(size) else _TYPICAL
        return abs(math.log(max(*size, 1e-300) / usual)) + math.log(HINT) * against
    best = min(fitting, key=unlikely)
    return Unit(best, "guess", MM[best])


def settled(stated: Unit, sides: Sides) -> Unit:
    """What a file states, or what is guessed where that is no size from a head to an instrument and the guess makes one."""
    def sized_like_one(unit: Unit) -> bool:
        size = sides(unit.mm)
        return min(size) >= NARROWEST and fits(max(size), (PLAUSIBLE[0], INSTRUMENT[1]))
    other = stated if sized_like_one(stated) else guessed(sides, None)
    return replace(other, instead=(stated.name, stated.mm)) if other != stated and sized_like_one(other) else stated


def _may_be_instrument(size: tuple[float, float]) -> bool:
    return fits(max(size), INSTRUMENT) and max(size) > LONG * min(size)


def is_slim(size: tuple[float, float]) -> bool:
    """Whether something of that size is too slim for a headstock: as a neck is, with its head or without."""
    return max(size) > SLIM * min(size)


def may_be_cut(size: tuple[float, float]) -> bool:
    """Whether something of that size (mm) may be a headstock, or the neck that it is cut from."""
    return min(size) >= NARROWEST and fits(max(size), (HEADSTOCK[0], NECK[1] if is_slim(size) else HEADSTOCK[1]))


def plausible(size: tuple[float, float]) -> bool:
    """Whether a headstock may be of that size (mm), however it lies."""
    return min(size) >= NARROWEST and fits(max(size), PLAUSIBLE)


def fits(mm: float, window: tuple[float, float]) -> bool:
    """Whether a length lies within a window, both ends included."""
    return window[0] <= mm <= window[1]


def is_certain(source: str, size: tuple[float, float], neck: bool = False) -> bool:
    """Whether nobody needs to be asked about a unit from there: the maker named it, or it makes a headstock, or the neck of one."""
    return source == "option" or (source == "file" and (neck or plausible(size)))


class UnitQuestion(Struct, frozen=True):
    """What to ask the maker about the unit of a drawing."""

    text: str
    choices: tuple[tuple[str, float, float], ...]
    """(unit, width in mm, height in mm) for each unit offered"""


def unit_question(read: DrawingRead) -> UnitQuestion | None:
    """The question about a doubtful unit, or None when the unit is certain."""
    if read.unit_certain:
        return None
    width, height = read.size_mm[0] / read.unit_mm, read.size_mm[1] / read.unit_mm
    choices = tuple((name, width * MM[name], height * MM[name]) for name in offered(read.unit))
    if read.instead is not None:
        text = taken_instead(read.instead, (width, height), read.unit, read.size_mm)
    elif read.unit_source == "guess":
        text = say("The drawing does not say its unit; as {unit} it would be {sized}.",
                   unit=read.unit, sized=sized(*read.size_mm))
    else:
        text = say("The drawing says that its unit is {unit}, which makes it {sized}: no headstock is that size.",
                   unit=read.unit, sized=sized(*read.size_mm))
    if read.neck is None and is_slim(read.size_mm) and fits(max(read.size_mm), NECK):
        text = say("{question} If it is a whole neck, cut the outline off at the nut line in the drawing first.", question=text)
    return UnitQuestion(text, choices)


def taken_instead(stated: tuple[str, float], sides: tuple[float, float], unit: str, size: tuple[float, float]) -> str:
    """That a drawing of such sides, in its own numbers, was taken in a unit other than it states, which makes it `size` mm."""
    name, mm = stated
    return say("The drawing says that its unit is {unit}, which makes it {sized}: no headstock is that size. As {other} it is {size}.",
               unit=name, sized=sized(*(side * mm for side in sides)), other=unit, size=sized(*size))


def refuse_doubtful_unit(read: DrawingRead) -> None:
    """FormatError when the drawing's size cannot be a headstock's; a unit given by option is obeyed.

    A guess that makes a plausible size passes: its warning says that it is one. One against what the file states does not.
    """
    if read.unit_source == "option" or read.unit_certain or (read.instead is None and plausible(read.size_mm)):
        return
    question = unit_question(read)
    assert question is not None
    sizes = ", ".join(say("--unit {name} makes it {sized}",
                          name=f'"{name}"' if " " in name else name, sized=sized(w, h)) for name, w, h in question.choices)
    raise FormatError(say("{question}; give the unit: {sizes}.", question=question.text[:-1], sizes=sizes))


def sized(width: float, height: float) -> str:
    """'88.0 x 190.0 mm (3.46 x 7.48 inch)': a size in the words of a message."""
    return say("{size} mm ({size_in} inch)", size=f"{_short(width)} x {_short(height)}",
               size_in=f"{_short(width / 25.4)} x {_short(height / 25.4)}")


def _short(value: float) -> str:
    return number(value, ".2f" if value < 20 else ".1f" if value < 1000 else ".0f" if value < 1e7 else ".1e")
