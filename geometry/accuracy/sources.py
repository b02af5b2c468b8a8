"""Where errors come from in a small shop, and the list of every single error of a layout.

Half-widths are kept in the layout (geometry.layout.Accuracy, common practice,
no source); a standard deviation is half of a half-width.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Literal

import numpy as np
from msgspec import Struct, field

from geometry.layout import Accuracy
from geometry.saying import say

Source = Literal["mark", "wander", "tilt", "square", "stop", "template", "paper"]
SOURCES: tuple[Source, ...] = ("mark", "wander", "tilt", "square", "stop", "template", "paper")

TITLES: dict[Source, str] = {
    "mark": say("marks"), "wander": say("drill wander"), "tilt": say("table tilt of side bores"),
    "square": say("drill press square to the face"), "stop": say("stop depth"), "template": say("template and following"),
    "paper": say("printed paper")}
UNITS: dict[Source, str] = {"mark": "mm", "wander": "mm per 50 mm", "tilt": "degrees", "square": "degrees",
                            "stop": "mm", "template": "mm", "paper": "%"}
FIELDS: dict[Source, str] = {"mark": "mark", "wander": "wander_per_50", "tilt": "tilt_degrees",
                             "square": "tilt_degrees", "stop": "stop", "template": "template",
                             "paper": "paper_percent"}
"""The field of Accuracy that holds each source; two sources share the squareness of the drill press."""

WRAP, BACK, TEMPLATE = "wrap paper", "back paper", "template"
"""Where paper and template errors belong: they are no feature's own."""

RAMP = "ramp of: "
"""Before a slot's id, where an error belongs to its ramp: it is marked and filed by itself."""


def half_width(accuracy: Accuracy, source: Source) -> float:
    """How far a source strays to either side, in its unit of UNITS."""
    return getattr(accuracy, FIELDS[source])


def deviation(accuracy: Accuracy, source: Source) -> float:
    """Standard deviation of a source: mm; rad for wander, tilt and square; a plain ratio for paper."""
    half = half_width(accuracy, source)
    size = {"wander": half / 50.0, "tilt": math.radians(half), "square": math.radians(half),
            "paper": half / 100.0}.get(source, half)
    return size / 2


class Error(Struct, frozen=True):
    """One independent normal error: its source, and the feature (or paper, or template) that it belongs to."""

    source: Source
    where: str


class ErrorList(Struct):
    """All errors of a layout in a fixed order; each is a row of the matrix of draws."""

    errors: list[Error] = field(default_factory=list)

    def add(self, source: Source, where: str, count: int = 1) -> tuple[int, ...]:
        """Rows of `count` new errors."""
        first = len(self.errors)
        self.errors += [Error(source, where)] * count
        return tuple(range(first, first + count))

    def deviations(self, accuracy: Accuracy) -> np.ndarray:
        """(m,) standard deviations."""
        size = {source: deviation(accuracy, source) for source in SOURCES}
        return np.array([size[error.source] for error in self.errors])


class Share(Struct, frozen=True):
    """A part (0 to 1) of a clearance's variance: from which source, and at which feature."""

    source: Source
    where: str
    share: float


def grouped(errors: Sequence[Error], parts: Sequence[float]) -> tuple[Share, ...]:
    """Parts of a variance, one an error, summed by source and feature, largest first; under 0.1 % is left out."""
    sums: dict[Error, float] = {}
    for error, part in zip(errors, parts, strict=True):
        sums[error] = sums.get(error, 0.0) + part
    found = [Share(error.source, error.where, part) for error, part in sums.items() if part >= 1e-3]
    return tuple(sorted(found, key=lambda s: (-s.share, SOURCES.index(s.source), s.where)))
