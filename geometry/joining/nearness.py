"""Which lines come near one another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
import shapely

LONG = 2000
"""Points in the two lines of a pair from which a rougher picture of both is compared first."""

ROUGH = 1e-5
"""How far the rougher picture may be off, as a part of the extent of all lines."""

_ROWS = 256
"""Lines whose pairs are looked at together, so that no drawing fills the memory with pairs."""


def near_lines(lines: Sequence[shapely.LineString], first: int, reach: float) -> Iterator[tuple[int, int]]:
    """Every (i, j) with i < j and i among the `first` lines whose distance is at most `reach` (mm).

    Every line has a length. Long ones that run side by side are told apart by fewer points: a line simplified by t
    stays within t of itself, so two that keep more than `reach` + 2 t apart are not near.
    """
    lines = np.array(lines)
    if len(lines) < 2:
        return
    tree, points = shapely.STRtree(lines), shapely.get_num_coordinates(lines)
    boxes = shapely.bounds(lines)
    slack = ROUGH * float(max(np.ptp(boxes[:, (0, 2)]), np.ptp(boxes[:, (1, 3)])))
    around = shapely.box(*(boxes[:first] + (-reach, -reach, reach, reach)).T)
    rough: np.ndarray | None = None
    for start in range(0, first, _ROWS):
        i, j = tree.query(around[start:start + _ROWS])
        i += start
        i, j = i[i < j], j[i < j]
        long = points[i] + points[j] >= LONG
        if long.any():
            if rough is None:
                rough = shapely.simplify(lines, slack, preserve_topology=False)
                rough = np.where(shapely.length(rough) > 0, rough, lines)  # small closed ones shrink to nothing
                shapely.prepare(rough[:first])
            far = long.copy()
            far[long] = ~shapely.dwithin(rough[i[long]], rough[j[long]], reach + 2.001 * slack)
            i, j = i[~far], j[~far]
        shapely.prepare(lines[start:min(start + _ROWS, first)])
        near = within(lines[i], lines[j], reach)
        yield from zip(i[near].tolist(), j[near].tolist(), strict=True)


def within(some: np.ndarray, others: np.ndarray, reach: float) -> np.ndarray:
    """Which pairs are at most `reach` apart, by every point that they have."""
    return shapely.dwithin(some, others, reach)
