"""Lengths on the sheets, in the unit that the sheets are laid out in (geometry.lengths.speaking).

In mm they stand bare, as the head of a table or card says. In inches each carries its sign, as thousandths or, where
the maker reads fractions, as a 64th that is true to within CLOSE; what is no 64th stays in thousandths.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from geometry.lengths import at_least, spoken, told, told_down
from geometry.saying import number, say
from geometry.tolerance import TOUCH
from geometry.units import format_close, format_length


def length(value: float, decimals: int = 2) -> str:
    """A length without trailing zeros: in mm to so many decimals and bare."""
    return told(value, decimals)


def tenths(value: float) -> str:
    """A length in mm always to a tenth, so that columns line up; in inches as `length`."""
    return _lined_up(value, 1)


def hundredths(value: float) -> str:
    """As `tenths`, but to a hundredth of a mm: what a caliper is held against."""
    return _lined_up(value, 2)


def in_column(values: Sequence[float]) -> list[str]:
    """In mm all to as many decimals, 3 at most, as the one that needs the most of them, so that they line up; in inches as `length`."""
    decimals = next((n for n in range(3) if all(abs(round(one, n) - one) < TOUCH for one in values)), 3)
    return [_lined_up(one, decimals) for one in values]


def _lined_up(value: float, decimals: int) -> str:
    return number(round(value, decimals) + 0.0, f".{decimals}f") if spoken() == "mm" else length(value)


def deep(value: float, decimals: int = 1) -> str:
    """As `tenths`, or to so many decimals, but never more than the length is: how deep a hole is drilled, what is left."""
    if spoken() != "mm":
        return told_down(value)
    return _lined_up(math.floor((value + TOUCH) * 10 ** decimals) / 10 ** decimals, decimals)


def enough(value: float) -> str:
    """As `tenths`, but never less than the length is: the least that will do."""
    return _lined_up(math.ceil((value - TOUCH) * 10) / 10, 1) if spoken() == "mm" else at_least(value)


def thousandths(value: float, decimals: int = 1) -> str:
    """As `tenths`, or to so many decimals of a mm, but never a fraction of an inch: what is set with shims or worked out."""
    return _lined_up(value, decimals) if spoken() == "mm" else format_length(value, "in", mark=True)


def marked(value: float, decimals: int = 2) -> str:
    """A length that carries its unit in mm too."""
    return format_close(value, spoken(), decimals, mark=True)


def card_number(number: int) -> str:
    """The number of a card for its head, with the unit of the lengths on it that stand bare: cards are cut apart."""
    name = say("card {number}", number=number)
    return f"{name}, {unit_words()}" if spoken() == "mm" else name


def unit_words() -> str:
    """What lengths are in, for the head of a table."""
    return "mm" if spoken() == "mm" else say("inches")
