"""What is asked of a headstock: that nothing is spoiled, or that every margin is kept."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np

from geometry.accuracy.built import Built
from geometry.accuracy.spec import Spec
from geometry.cancellation import Ask
from geometry.tolerance import TOUCH

Aim = Literal["sound", "within"]
"""`sound`: no clearance under zero that costs the piece. `within`: no clearance under its margin."""


def limit(spec: Spec, aim: Aim) -> float:
    """What a clearance must not come under, mm."""
    return spec.needed if aim == "within" else 0.0


def fails(spec: Spec, values: np.ndarray, aim: Aim) -> np.ndarray:
    """(n,) whether a clearance fails in each trial; touching exactly passes, as in the checks."""
    return (values < limit(spec, aim) - TOUCH) & (spec.spoils or aim == "within")


def any_fails(specs: Sequence[Spec], built: Built, aim: Aim, ask: Ask) -> np.ndarray:
    """(n,) whether any clearance fails in each built headstock, measured no finer than that takes; `ask` may stop it."""
    bad = np.zeros(built.trials, dtype=bool)
    for spec in specs:
        ask()
        if spec.spoils or aim == "within":
            bad |= fails(spec, spec.least(built, limit(spec, aim)), aim)
    return bad
