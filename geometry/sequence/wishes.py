"""In which unit the steps of the work are told."""

from __future__ import annotations

from msgspec import Struct

from geometry.units import LengthUnit, format_close, format_down


class Wishes(Struct, frozen=True):
    """What the maker wishes of the words of a step, which the layout does not hold."""

    unit: LengthUnit = "mm"

    def told(self, length: float, decimals: int = 1) -> str:
        """A length (mm) with its sign in the maker's unit; `decimals` is for mm."""
        return format_close(length, self.unit, decimals, mark=True)

    def told_down(self, length: float, decimals: int = 1) -> str:
        """As `told`, but never more than the length is: how deep something is drilled."""
        return format_down(length, self.unit, decimals, mark=True)
