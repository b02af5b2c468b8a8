"""Lengths, places and areas in sentences, in the unit that is spoken.

Sentences are in mm unless they are asked for within `speaking`; nothing but
their words depends on it.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from geometry.saying import number, say
from geometry.units import MM_PER_INCH, LengthUnit, format_close, format_down, format_length
from geometry.vectors import Vec2

_unit: ContextVar[LengthUnit] = ContextVar("unit of the sentences", default="mm")

_mark: ContextVar[Callable[[float, int], str] | None] = ContextVar("how lengths are marked", default=None)

SIXTEENTH = MM_PER_INCH / 16
"""mm: the step of sizes that are proposed in inches."""


@contextmanager
def speaking(unit: LengthUnit) -> Iterator[None]:
    """Within it (and in this thread) every sentence gives its lengths in `unit`.

    Reasons are worded when a plan is made, so make the plan and read it within the same `speaking`.
    """
    before = _unit.set(unit)
    try:
        yield
    finally:
        _unit.reset(before)


@contextmanager
def marking(mark: Callable[[float, int], str]) -> Iterator[None]:
    """Within it lengths are told by `mark`, from mm and the decimals they want in mm, with ` mm` behind where a unit goes.

    So the sentences can be put into any unit later (geometry.checks.said).
    """
    before = _mark.set(mark)
    try:
        yield
    finally:
        _mark.reset(before)


def told(length: float, decimals: int = 2) -> str:
    """A length (mm) for a drawing or a table: in mm to so many decimals and bare, in inches true and with its sign."""
    unit = spoken()
    return format_close(length, unit, decimals, mark=unit != "mm")


def told_down(length: float, decimals: int = 1) -> str:
    """As `told`, but never more than the length is."""
    unit = spoken()
    return format_down(length, unit, decimals, mark=unit != "mm")


def spoken() -> LengthUnit:
    """The unit that sentences are in here and now."""
    return _unit.get()


def mm(length: float) -> str:
    """A length with its unit: to 0.1 mm, or to 0.01 mm where it was given so (6.35); in inches to 0.001, or a 64th true to it."""
    return _format(length, mark=True)


def exact(length: float) -> str:
    """A length with its unit that something is cut to: to 0.001 mm or 0.0001 in, never as a fraction."""
    if _unit.get() == "mm":
        return format_length(length, decimals=3, mark=True)
    return format_length(length, "in", decimals=4, mark=True)


def at_least(length: float) -> str:
    """The least length that will do, with its unit: rounded up, to 0.01 mm or 0.001 in, so that typing it is enough."""
    return _rounded(length, math.ceil, -1e-6)


def at_most(length: float) -> str:
    """The largest length that will do, with its unit: rounded down, to 0.01 mm or 0.001 in, so that typing it is not too much."""
    return _rounded(length, math.floor, 1e-6)


def deep(length: float, through: bool = False) -> str:
    """How deep something is cut, with its unit: to 0.01 mm, 0.001 in or a 64th true to it.

    Never more than it is, but for a cut that has to come `through` the wood.
    """
    return (format_close if through else format_down)(length, _unit.get(), 2, mark=True)


def area(size: float) -> str:
    """An area of so many mm² in words, in square inches to 0.0001 where those are in use."""
    if _unit.get() == "mm":
        return f"{number(size, '.1f')} mm²"
    return say("{size:.4f} sq in", size=size / MM_PER_INCH ** 2)


def place(at: Vec2) -> str:
    """A point for the maker: across from the centreline and to which side, along from the nut line."""
    across = _format(abs(at[0]), coarse=True)
    along = _format(at[1], coarse=True)
    if across in ("0", '0"'):
        return say("the centreline, {along} along", along=along)
    return (say("{across} across to the treble, {along} along", across=across, along=along) if at[0] > 0 else
            say("{across} across to the bass, {along} along", across=across, along=along))


def from_line(y: float, told: str, line: str) -> str:
    """How far along something lies (mm, negative behind) from the nut line or base line (square_line), with `told` for the length itself."""
    return say("{along} behind the {line}", along=told, line=line) if y < 0 else say("{along} from the {line}", along=told, line=line)


def up(length: float) -> float:
    """The next size (mm) that is sold or set: half a mm, or a sixteenth of an inch."""
    step = 0.5 if _unit.get() == "mm" else SIXTEENTH
    return step * math.ceil(length / step - 1e-9)


def down(length: float) -> float:
    """The size (mm) below that is sold or set."""
    step = 0.5 if _unit.get() == "mm" else SIXTEENTH
    return step * math.floor(length / step + 1e-9)


def _rounded(length: float, whole: Callable[[float], int], slack: float) -> str:
    if _unit.get() == "mm":
        return format_length(whole((length + slack) * 100) / 100, decimals=2, mark=True)
    return format_length(whole((length + slack) / MM_PER_INCH * 1000) / 1000 * MM_PER_INCH, "in", mark=True)


def _format(length: float, mark: bool = False, coarse: bool = False) -> str:
    unit, marked = _unit.get(), _mark.get()
    if unit != "mm" and marked is None:
        return format_close(length, unit, mark=True)
    decimals = 2 if not coarse and abs(length - round(length, 3)) < 1e-9 else 1
    if marked is None:
        return format_length(length, decimals=decimals, mark=mark)
    shown = len(f"{length:.{decimals}f}".rstrip("0").partition(".")[2])
    return marked(length, shown) + (" mm" if mark else "")
