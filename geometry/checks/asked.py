"""What a family wants to know of pairs of cylinders."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from geometry.checks.snags import Snag
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import Gaps


@dataclass(frozen=True, slots=True, eq=False)
class Asked:
    """The gap between a[i] and b[i], exact where it may be less than wish[i] mm; `told` makes each row's snags of them."""

    a: Cylinders
    b: Cylinders
    wish: np.ndarray
    told: Callable[[Gaps], list[tuple[Snag, ...]]]
