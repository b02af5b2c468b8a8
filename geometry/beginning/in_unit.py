"""What a layout begins with in the maker's unit: numbers, hardware, blank."""

from __future__ import annotations

from typing import TYPE_CHECKING

from geometry.beginning.numbers import Numbers
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from geometry.layout import Headstock


def usual_numbers(unit: LengthUnit) -> Numbers:
    """The numbers to begin with: whole millimetres, or fractions of an inch."""
    if unit == "mm":
        return Numbers()
    from geometry.beginning.inches import INCHES
    return INCHES


def hardware_in_unit(layout: Headstock, unit: LengthUnit) -> Headstock:
    """The layout itself in mm; in inches with the generic hardware in fractional sizes."""
    if unit == "mm":
        return layout
    from geometry.beginning.inches import with_inch_hardware
    return with_inch_hardware(layout)


def blank_in_unit(layout: Headstock, unit: LengthUnit) -> Headstock:
    """The layout itself in mm; in inches with a blank of whole eighths and sixteenths, for one that was made to fit."""
    if unit == "mm":
        return layout
    from geometry.beginning.inches import with_inch_blank
    return with_inch_blank(layout)


def cure_in_unit(asked: Numbers, cure: Numbers, unit: LengthUnit) -> Numbers:
    """The numbers that would do, in inches a little farther on in whole sixteenths where that does too."""
    if unit == "mm":
        return cure
    from geometry.beginning.inches import in_sixteenths
    return in_sixteenths(asked, cure)
