"""The answer to "what must I hold?", as data."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.accuracy.sources import Source, half_width
from geometry.accuracy.targets import Aim
from geometry.layout import Accuracy

FINEST = 0.1
"""Nobody is asked to work more than ten times finer."""
ROUGHEST = 3.0
"""Nor is anybody told that more than three times rougher will do."""


class Need(Struct, frozen=True):
    """Hold `source` to +-`wanted` instead of +-`now` (both in `unit`) at the features `where`; elsewhere as now."""

    source: Source
    now: float
    wanted: float
    unit: str
    where: tuple[str, ...]


class Requirements(Struct, frozen=True):
    """The answer.

    `wanted` is the chance asked for, `now` the chance with the present accuracy.
    `needs` together reach the chance `reached`, proven on other trials; empty
    when nothing has to be finer. `alone` are the sources of which one, held
    finer by itself, would do. `spare` says how many times rougher everything
    could be (1 when nothing may be, at most ROUGHEST). When even ten times
    finer work does not do, `possible` is False: then the layout has to change,
    `blocked` names the features in the way.
    """

    aim: Aim
    wanted: float
    now: float
    reached: float
    needs: tuple[Need, ...]
    alone: tuple[Need, ...]
    spare: float
    possible: bool
    blocked: tuple[tuple[str, ...], ...] = ()


def rounded_down(accuracy: Accuracy, source: Source, scale: float) -> float:
    """A scaled half-width to two figures, downwards; never less than a thousandth of the unit."""
    exact = half_width(accuracy, source) * scale
    if exact <= 0:
        return 0.0
    step = 10.0 ** (math.floor(math.log10(exact)) - 1)
    return max(round(math.floor(exact / step + 1e-9) * step, 6), 0.001 if exact >= 0.001 else exact)
