"""Functions of a few uncertain numbers, simulated and propagated by the engine."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from msgspec import Struct

from geometry.accuracy.engine import Function, Linear, Spread, linear, slopes, spread_of, stream


class Input(Struct, frozen=True):
    """An uncertain number: its mean and standard deviation, and how it is spread.

    `even` is the rectangular distribution, mean - sqrt(3) sd to mean + sqrt(3) sd;
    `student 3` is Student's t with 3 degrees of freedom, scaled to that standard deviation.
    """

    mean: float
    sd: float
    shape: Literal["normal", "even", "student 3"] = "normal"


def drawn(inputs: Sequence[Input], trials: int, seed: int) -> np.ndarray:
    """(m, trials) values of the inputs, independent of each other."""
    source = stream(seed, 0)
    shapes = {"normal": source.standard_normal, "even": lambda n: source.uniform(-np.sqrt(3.0), np.sqrt(3.0), n),
              "student 3": lambda n: source.standard_t(3, n) / np.sqrt(3.0)}
    return np.array([one.mean + one.sd * shapes[one.shape](trials) for one in inputs])


def simulated(function: Function, inputs: Sequence[Input], trials: int, seed: int) -> tuple[np.ndarray, Spread]:
    """Values (n,) of function(inputs) over seeded trials, and their spread."""
    values = function(drawn(inputs, trials, seed))
    return values, spread_of(values)


def propagated(function: Function, inputs: Sequence[Input]) -> Linear:
    """First-order propagation of independent inputs through a function that gives (n,)."""
    values, steps = slopes(function, np.array([one.mean for one in inputs]), np.array([one.sd for one in inputs]))
    return linear(float(values[0]), steps[0])
