"""What a family wants to know of pairs of cylinders."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from geometry.checks.snags import Snag
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import Gaps


class Asked(Struct, frozen=True, eq=False):
    """The gap between a[i] and b[i], exact where it may be less than wish[i] mm; `told` makes each row's snags of those that are exact."""

    a: Cylinders
    b: Cylinders
    wish: np.ndarray
    told: Callable[[Gaps], list[tuple[Snag, ...]]]
