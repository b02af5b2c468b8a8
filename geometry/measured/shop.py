"""The shop's accuracy that the readings of a piece imply.

A standard deviation s with v degrees of freedom, and the interval that holds the true one 95 times in 100,

    s sqrt(v / c(0.975)) to s sqrt(v / c(0.025)),

c the quantiles of the chi-square distribution with v degrees of freedom (NIST/SEMATECH e-Handbook of Statistical
Methods, 7.2.3.1; number of the section from memory). What accounts for marks is what is left of x and y after shift, rotation and a stretch taken for
real; stop depth and tilt are spread about their own mean, which is told apart: a constant error is set right, not
endured. Half-widths, as geometry.layout.Accuracy keeps them, are two standard deviations.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from geometry.layout import Accuracy, Headstock, Reading
from geometry.measured.chances import chi_square_quantile
from geometry.measured.readings import Off, drillings
from geometry.measured.stretch import Fit, Place, fit_places

Field = Literal["mark", "stop", "tilt_degrees"]
INSIDE = 0.95
ENOUGH = 4
"""Degrees of freedom from which on a source is taken over into the layout: with fewer the interval is wider than 1 to 6."""


class Found(Struct, frozen=True):
    """One source: how many readings and degrees of freedom, mean and standard deviation (mm; tilt: degrees), and its interval."""

    field: Field
    count: int
    freedom: int
    mean: float
    deviation: float
    low: float
    high: float

    @property
    def half_width(self) -> float:
        """As the layout keeps it."""
        return 2 * self.deviation

    @property
    def enough(self) -> bool:
        """Whether there are readings enough to go by."""
        return self.freedom >= ENOUGH


def interval(deviation: float, freedom: int) -> tuple[float, float]:
    """Between what the true standard deviation lies with a chance of INSIDE, in the unit of `deviation`."""
    out = (1 - INSIDE) / 2
    return (deviation * math.sqrt(freedom / chi_square_quantile(1 - out, freedom)),
            deviation * math.sqrt(freedom / chi_square_quantile(out, freedom)))


def places(layout: Headstock, found: Iterable[Off]) -> tuple[Place, ...]:
    """Readings of x and y of holes square to the face as places; doubtful ones and holes that are gone are left out."""
    known, made = drillings(layout), []
    for off in found:
        one: Reading = off.reading
        d = known.get(one.drilling)
        if d is None or not d.upright or off.doubtful or one.what not in ("x", "y"):
            continue
        made.append(Place(d.start[:2], 0 if one.what == "x" else 1, off.moved))
    return tuple(made)


def implied(layout: Headstock, found: Sequence[Off]) -> tuple[tuple[Found, ...], Fit | None]:
    """What the readings say of each source that has two or more, and the fit of the places."""
    fit = fit_places(places(layout, found))
    made = []
    if fit is not None and fit.freedom > 0:
        made.append(_found("mark", len(fit.left), fit.freedom, 0.0, math.sqrt(fit.squares / fit.freedom)))
    for field, what in (("stop", "depth"), ("tilt_degrees", "tilt")):
        values = [off.by for off in found if off.reading.what == what and not off.doubtful]
        if len(values) > 1:
            mean = math.fsum(values) / len(values)
            made.append(_found(field, len(values), len(values) - 1, mean,
                               math.sqrt(math.fsum((value - mean) ** 2 for value in values) / (len(values) - 1))))
    return tuple(made), fit


def take_accuracy(accuracy: Accuracy, found: Iterable[Found]) -> Accuracy:
    """The accuracy with half-widths of sources that have readings enough."""
    return replace(accuracy, **{one.field: round(one.half_width, 3) for one in found if one.enough})


def _found(field: Field, count: int, freedom: int, mean: float, deviation: float) -> Found:
    return Found(field, count, freedom, mean, deviation, *interval(deviation, freedom))
