"""Pictures of chance: how one clearance is spread, and where on the head anything goes wrong."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from geometry import vectors as v
from geometry.accuracy.words import short_chance_words
from geometry.drawing.marks import Area, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.shapes import rectangle, straight
from geometry.units import LengthUnit, format_length
from geometry.vectors import Vec2

if TYPE_CHECKING:
    from geometry.accuracy.simulation import Clearance, Simulation

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
_SMALL, _LARGE = 1.2, 4.0
"""Radii of the rarest and of the surest trouble on the map, mm"""
_RAREST = 1e-4
_SAME_PLACE = 1.5
"""mm: of clearances nearer to each other than this the worse one is marked"""


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
            marks.append(Label(format_length(clearance.needed, unit), (at, 0.6), LETTER, "note", owner, anchor="middle"))
    return tuple(marks)


def chance_map(simulation: Simulation, most: int = 30) -> Drawing:
    """A disc at each of the worst clearances, seen on the face (mm), with the chance beside it.

    Larger discs for likelier trouble, in steps of its logarithm. What is spoiled
    in some trial tells the chance of that; the others tell how often they fall
    under their margin. Marks belong to the clearance's first feature.
    """
    marks: list[Mark] = []
    taken: list[Vec2] = []
    for clearance in simulation.clearances:
        if len(taken) == most:
            break
        if any(v.distance(place, clearance.where[:2]) < _SAME_PLACE for place in taken):
            continue
        taken.append(clearance.where[:2])
        spoiled = clearance.spoils and clearance.spoiled > 0
        chance = clearance.spoiled if spoiled else clearance.short
        x, y, _ = clearance.where
        radius, owner = _radius(chance), clearance.between[0]
        words = short_chance_words(chance, simulation.trials)
        sign = 1.0 if x >= 0 else -1.0
        marks += [Disc((x, y), radius, "spoiled" if spoiled else "margin short", owner),
                  Label(words, (x + sign * (radius + 0.8), y - LETTER / 2), LETTER, "note", owner,
                        anchor="left" if sign > 0 else "right")]
    return tuple(marks)


def _parts(left: float, right: float, needed: float) -> list[tuple[float, float, str]]:
    """A bar cut at zero and at the margin, each piece with its style."""
    cuts = sorted({left, right, *(cut for cut in (0.0, needed) if left < cut < right)})
    return [(a, b, "spoiled" if b <= 0 else "margin short" if b <= needed else "margin kept")
            for a, b in zip(cuts[:-1], cuts[1:], strict=True)]


def _radius(chance: float) -> float:
    share = 1 - math.log(max(chance, _RAREST)) / math.log(_RAREST)
    return _SMALL + (_LARGE - _SMALL) * min(1.0, max(0.0, share))
