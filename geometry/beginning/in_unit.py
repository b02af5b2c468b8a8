"""What a layout begins with in the maker's unit: numbers, hardware, blank."""

from __future__ import annotations

from types import ModuleType

from msgspec.structs import replace

from geometry.beginning.begin import begin
from geometry.beginning.given_names import tools_in_language
from geometry.beginning.instruments import FOLLOWS, following, usual
from geometry.beginning.numbers import FIELDS, Numbers, Refused
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.solids.pins_along import pins_along
from geometry.units import LengthUnit


def usual_numbers(unit: LengthUnit, instrument: str = "guitar") -> Numbers:
    """The numbers of an instrument to begin with: whole millimetres, or fractions of an inch."""
    return in_unit(usual(instrument), unit)


def followed(numbers: Numbers, typed: frozenset[str], unit: LengthUnit) -> Numbers:
    """The numbers with what was not `typed` as it is usual for their instrument (`following`), in the maker's unit."""
    made = in_unit(following(numbers, typed), unit)
    return replace(made, **{key: getattr(numbers, key) for key in typed})


def in_unit(numbers: Numbers, unit: LengthUnit) -> Numbers:
    """The numbers themselves in mm; in inches each length in fractions that a rule shows."""
    return numbers if unit == "mm" else _inches().in_fractions(numbers)


def fitting(numbers: Numbers, typed: frozenset[str], unit: LengthUnit) -> Numbers:
    """The numbers with blank and row as the rest of them asks, where these were not `typed`; what else they are refused for is left
    to `begin`."""
    asked = numbers
    for _ in FIELDS:
        try:
            begin(numbers)
        except Refused as refused:
            if refused.field not in FOLLOWS or refused.field in typed:
                break
            numbers = replace(numbers, **{refused.field: refused.value})
        except GeometryError:
            break
        else:
            return cure_in_unit(asked, numbers, unit)
    return asked


def hardware_in_unit(layout: Headstock, unit: LengthUnit) -> Headstock:
    """The layout with generic hardware and rack under their names in the language in use, in inches those in fractional sizes,
    and pins as wide as the bores in which they stand."""
    return tools_in_language(layout if unit == "mm" else pins_along(layout, _inches().with_inch_hardware(layout)))


def blank_in_unit(layout: Headstock, unit: LengthUnit) -> Headstock:
    """The layout itself in mm; in inches with a blank of whole eighths and sixteenths, for one that was made to fit."""
    return layout if unit == "mm" else _inches().with_inch_blank(layout)


def cure_in_unit(asked: Numbers, cure: Numbers, unit: LengthUnit) -> Numbers:
    """The numbers that would do, in inches a little farther on in whole sixteenths where that does too."""
    return cure if unit == "mm" else _inches().in_sixteenths(asked, cure)


def _inches() -> ModuleType:
    """Loaded when it is needed: with it come all the hardware and racks in fractional sizes."""
    from geometry.beginning import inches
    return inches
