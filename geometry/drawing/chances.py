"""A picture of chance: how one clearance is spread."""

from __future__ import annotations

from typing import TYPE_CHECKING

from geometry.drawing.marks import Area, Drawing, Label, Mark, Stroke
from geometry.drawing.shapes import rectangle, straight
from geometry.units import LengthUnit, format_close

if TYPE_CHECKING:
    from geometry.accuracy.simulation import Clearance

LETTER = 1.8
"""Capital height of the words, mm."""
_FOOT = 4.0
"""Below the bars, for the numbers, mm"""
_HEAD = 1.0
"""Above the highest bar, mm"""
_SIDE = 2.0
"""Left and right of the bars, mm"""
_CLOSE = 5.0
"""Numbers nearer than this share one place, mm"""


def spread_picture(clearance: Clearance, width: float = 60.0, height: float = 24.0,
                   unit: LengthUnit = "mm") -> Drawing:
    """The histogram of a clearance in a box of width x height mm, lower left corner at the origin.

    x is the clearance in mm, growing to the right, the bars are how often it
    came out so. A heavy line stands at zero, where the wood is gone, and a thin
    one at the margin. Bars under zero, under the margin and beyond it have
    styles of their own; marks belong to the clearance's first feature.
    """
    spread, owner = clearance.spread, clearance.between[0]
    low, high = min(spread.edges[0], 0.0), max(spread.edges[-1], clearance.needed, 0.1)
    wide, top = width - 2 * _SIDE, height - _FOOT - _HEAD
    most = max(spread.counts)

    def across(value: float) -> float:
        return _SIDE + (value - low) / (high - low) * wide

    marks: list[Mark] = []
    for count, left, right in zip(spread.counts, spread.edges[:-1], spread.edges[1:], strict=True):
        for start, end, style in _parts(left, right, clearance.needed):
            if count:
                marks.append(Area(rectangle(across(start), _FOOT, across(end), _FOOT + top * count / most), style,
                                  owner))
    marks.append(Stroke(straight((_SIDE, _FOOT), (width - _SIDE, _FOOT)), "note", owner))
    marks.append(Stroke(straight((across(0.0), _FOOT - 0.8), (across(0.0), height)), "nut line", owner))
    marks.append(Label("0", (across(0.0), 0.6), LETTER, "note", owner, anchor="middle"))
    if clearance.needed > 0:
        at = across(clearance.needed)
        marks.append(Stroke(straight((at, _FOOT - 0.8), (at, height)), "dimension", owner))
        if at - across(0.0) >= _CLOSE:
            marks.append(Label(format_close(clearance.needed, unit, 2, mark=unit != "mm"), (at, 0.6), LETTER, "note", owner, anchor="middle"))
    return tuple(marks)


def _parts(left: float, right: float, needed: float) -> list[tuple[float, float, str]]:
    """A bar cut at zero and at the margin, each piece with its style."""
    cuts = sorted({left, right, *(cut for cut in (0.0, needed) if left < cut < right)})
    return [(a, b, "spoiled" if b <= 0 else "margin short" if b <= needed else "margin kept")
            for a, b in zip(cuts[:-1], cuts[1:], strict=True)]
