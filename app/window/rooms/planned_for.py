"""What a plan depends on, so that nothing is planned anew for a change that no plan reads."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.layout import Book, Headstock
from geometry.units import LengthUnit

Wanted = tuple[Headstock, LengthUnit]


def asked_for(layout: Headstock, unit: LengthUnit) -> Wanted:
    """All that a plan depends on: neither the maker's order nor what was written into the book."""
    return replace(layout, order=(), notes=(), book=Book()), unit
