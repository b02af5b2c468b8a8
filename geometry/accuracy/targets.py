"""What is asked of a headstock: that nothing is spoiled, or that every margin is kept."""

from __future__ import annotations

from typing import Literal

import numpy as np

from geometry.accuracy.spec import Spec
from geometry.tolerance import TOUCH

Aim = Literal["sound", "within"]
"""`sound`: no clearance under zero that costs the piece. `within`: no clearance under its margin."""


def fails(spec: Spec, values: np.ndarray, aim: Aim) -> np.ndarray:
    """(n,) whether a clearance fails in each trial; touching exactly passes, as in the checks."""
    if aim == "within":
        return values < spec.needed - TOUCH
    return (values < -TOUCH) & spec.spoils
