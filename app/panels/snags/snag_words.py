"""The few words of a snag that drawing, list and screen reader share."""

from __future__ import annotations

from functools import lru_cache

from geometry.checks import KINDS, Snag
from geometry.checks.said import rounded_down
from geometry.checks.words import apart
from geometry.drawing.same import Same
from geometry.saying import number, say
from geometry.units import LengthUnit, format_close, format_down, format_length


def title(snag: Snag) -> str:
    """The heading of a snag's kind."""
    return KINDS[snag.kind].title


@lru_cache(maxsize=2)
def placed(snags: Same[tuple[Snag, ...]], unit: LengthUnit) -> list[tuple[Snag, str]]:
    """The snags that have a place, each with the words of its card: none for a note. The same list while the snags are the same."""
    return [(snag, "" if snag.grade == "note" else numbers(snag, unit)) for snag in snags.value if snag.has_place]


def numbers(snag: Snag, unit: LengthUnit) -> str:
    """`1.4 of 3.0`, in inches `0.055" of 0.118"`, or "" when the snag has no two lengths."""
    if snag.measured is None or snag.needed is None or snag.unit != "mm":
        return ""
    if unit == "mm":
        decimals = apart(snag.measured, snag.needed)
        return say("{measured} of {needed}", measured=rounded_down(snag.measured, decimals),
                   needed=number(snag.needed, f".{decimals}f"))
    measured, needed = format_down(snag.measured, unit, mark=True), format_close(snag.needed, unit, mark=True)
    if {".", ","} & {*measured, *needed}:  # no fraction beside a decimal
        measured, needed = format_down(snag.measured, "in", mark=True), format_length(snag.needed, "in", mark=True)
    return say("{measured} of {needed}", measured=measured, needed=needed)
