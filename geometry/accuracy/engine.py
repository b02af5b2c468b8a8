"""The uncertainty engine: draws, spreads and first-order propagation of any function of uncertain inputs.

It knows nothing of headstocks. A function takes a matrix (m, n), one row an
input and one column a trial, and gives (n,) or (k, n) results.

Sources of the method: JCGM 101:2008 (propagation of distributions by a Monte
Carlo method) and JCGM 100:2008 section 5.1.2 (root of summed squares).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Literal

import numpy as np
from msgspec import Struct

from geometry.errors import GeometryError
from geometry.saying import say

Shape = Literal["normal", "even", "student 3"]
Function = Callable[[np.ndarray], np.ndarray]
PERCENTS = (0.1, 1.0, 2.5, 5.0, 25.0, 50.0, 75.0, 95.0, 97.5, 99.0, 99.9)
BARS = 41
STEP = 0.5
"""Standard deviations to either side of the nominal value at which a slope is taken."""


class Input(Struct, frozen=True):
    """An uncertain number: its mean and standard deviation, and how it is spread.

    `even` is the rectangular distribution, mean - sqrt(3) sd to mean + sqrt(3) sd;
    `student 3` is Student's t with 3 degrees of freedom, scaled to that standard deviation.
    """

    mean: float
    sd: float
    shape: Shape = "normal"


class Spread(Struct, frozen=True):
    """How some values are spread, in their own unit.

    `percentiles` holds a value for each of PERCENTS; `edges` (k + 1) and `counts` (k) are a histogram
    from the least to the most.
    """

    mean: float
    sd: float
    least: float
    most: float
    percentiles: tuple[float, ...]
    edges: tuple[float, ...]
    counts: tuple[int, ...]

    def percentile(self, percent: float) -> float:
        """One of the kept percentiles; ValueError for a number that is not in PERCENTS."""
        return self.percentiles[PERCENTS.index(percent)]


class Linear(Struct, frozen=True):
    """First-order propagation: the nominal value, its standard deviation, and each input's part of the variance."""

    value: float
    sd: float
    shares: tuple[float, ...]
    """one an input, together 1; all 0 when nothing is uncertain"""


def stream(seed: int, block: int) -> np.random.Generator:
    """The random stream of one block of trials: it depends on the seed and the block's number alone."""
    return np.random.Generator(np.random.SFC64(np.random.SeedSequence((seed, block))))


def drawn(inputs: Sequence[Input], trials: int, seed: int) -> np.ndarray:
    """(m, trials) values of the inputs, independent of each other. GeometryError for fewer than 2 trials."""
    if trials < 2:
        raise GeometryError(say("A simulation needs at least 2 trials, got {trials}.", trials=trials))
    source = stream(seed, 0)
    rows = np.empty((len(inputs), trials))
    for row, one in zip(rows, inputs, strict=True):
        if one.shape == "normal":
            source.standard_normal(out=row)
        elif one.shape == "even":
            row[:] = source.uniform(-np.sqrt(3.0), np.sqrt(3.0), trials)
        else:
            row[:] = source.standard_t(3, trials) / np.sqrt(3.0)
        row *= one.sd
        row += one.mean
    return rows


def spread_of(values: np.ndarray) -> Spread:
    """The spread of some values (n,), n at least 2. Values that are all the same have one bar about them."""
    low, high = float(values.min()), float(values.max())
    counts, edges = np.histogram(values, BARS, (low, high) if high > low else (low - 0.5, low + 0.5))
    return Spread(float(values.mean()), float(values.std(ddof=1)), low, high,
                  tuple(np.percentile(values, PERCENTS).tolist()), tuple(edges.tolist()), tuple(counts.tolist()))


def simulated(function: Function, inputs: Sequence[Input], trials: int, seed: int) -> Spread:
    """The spread of function(inputs) over seeded trials; the function gives (n,)."""
    return spread_of(function(drawn(inputs, trials, seed)))


def propagated(function: Function, inputs: Sequence[Input]) -> Linear:
    """First-order propagation of independent inputs through a function that gives (n,)."""
    means, sds = np.array([one.mean for one in inputs]), np.array([one.sd for one in inputs])
    values, steps = slopes(function, means, sds)
    return linear(float(values[0]), steps[0])


def slopes(function: Function, means: np.ndarray, sds: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(values (k,) at the means, change of each for one standard deviation of each input (k, m)).

    Central differences over STEP standard deviations to either side: all
    inputs at once, as the 2 m + 1 columns of one matrix.
    """
    count = len(means)
    columns = np.repeat(means[:, None], 2 * count + 1, axis=1)
    at = np.arange(count)
    columns[at, 1 + at] += STEP * sds
    columns[at, 1 + count + at] -= STEP * sds
    found = np.atleast_2d(function(columns))
    return found[:, 0], (found[:, 1:1 + count] - found[:, 1 + count:]) / (2 * STEP)


def linear(value: float, steps: np.ndarray) -> Linear:
    """Root of summed squares of the changes (m,) that one standard deviation of each input makes."""
    variance = float(steps @ steps)
    shares = steps * steps / variance if variance > 0 else np.zeros(len(steps))
    return Linear(value, float(np.sqrt(variance)), tuple(shares.tolist()))
