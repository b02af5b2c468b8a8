"""The uncertainty engine: streams of chance, spreads of values, and first-order propagation of any function.

It knows nothing of headstocks. A function takes a matrix (m, n), one row an
uncertain input and one column a trial, and gives (n,) or (k, n) results.

Sources of the method: JCGM 101:2008 (propagation of distributions by a Monte
Carlo method) and JCGM 100:2008 section 5.1.2 (root of summed squares).
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

Function = Callable[[np.ndarray], np.ndarray]
BARS = 41
STEP = 0.5
"""Standard deviations to either side of the nominal value at which a slope is taken."""


class Spread(Struct, frozen=True):
    """How some values are spread, in their own unit; `edges` (k + 1) and `counts` (k) are a histogram from the least to the most."""

    mean: float
    sd: float
    edges: tuple[float, ...]
    counts: tuple[int, ...]


class Linear(Struct, frozen=True):
    """First-order propagation: the nominal value, its standard deviation, and each input's part of the variance."""

    value: float
    sd: float
    shares: tuple[float, ...]
    """one an input, together 1; all 0 when nothing is uncertain"""


def stream(seed: int, block: int) -> np.random.Generator:
    """The random stream of one block of trials: it depends on the seed and the block's number alone."""
    return np.random.Generator(np.random.SFC64(np.random.SeedSequence((seed, block))))


def spread_of(values: np.ndarray) -> Spread:
    """The spread of some values (n,), n at least 2. Values that are all the same have one bar about them."""
    low, high = float(values.min()), float(values.max())
    counts, edges = np.histogram(values, BARS, (low, high) if high > low else (low - 0.5, low + 0.5))
    return Spread(float(values.mean()), float(values.std(ddof=1)), tuple(edges.tolist()), tuple(counts.tolist()))


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
