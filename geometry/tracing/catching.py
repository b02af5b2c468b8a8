"""The corner in a picture next to a mark, to a fraction of a point.

Every point of a window with a gradient g says that the corner lies on the
straight line through it square to g; the corner is where these lines meet best
(least squares of gradients, Foerstner and Guelch 1987). The window is brought
over the corner and asked again until it rests.
"""

from __future__ import annotations

import numpy as np

from geometry.tracing.edges_of import softened
from geometry.vectors import Vec2

REACH = 9
"""Points to either side of the mark that are looked at."""
SMALL_REACH = 5
"""The same of the smaller window that is asked again."""
SAME = 0.75
"""Points within which both windows have to tell of one corner."""
LEAST_STEP = 14.0
"""Levels of grey between the sides of an edge that is worth a corner."""
ROUND = 0.06
"""Least ratio of the two eigenvalues: below it the window shows one straight edge and no corner."""


def corner_near(grey: np.ndarray, at: Vec2, reach: int = REACH) -> Vec2 | None:
    """The corner next to a place of the picture (y down, middles of points at halves); None when there is none.

    None too where the corner would lie farther than `reach` from the place.
    """
    x, y = at
    for _ in range(12):
        found = _asked(grey, x, y, reach)
        if found is None or np.hypot(found[0] - at[0], found[1] - at[1]) > reach:
            return None
        moved = np.hypot(found[0] - x, found[1] - y)
        x, y = found
        if moved < 0.01:
            break
    return (float(x), float(y))


def caught(grey: np.ndarray, at: Vec2, hand: float) -> Vec2 | None:
    """The corner that a mark is meant for which was set by a hand that strays by so many points of the picture.

    None where a smaller window tells of another place: there are the ends of several lines, as those of a ruler are, and what
    would be caught is somewhere in their midst.
    """
    wide = max(REACH, min(3 * REACH, round(2 * hand)))
    rough = corner_near(grey, at, wide)
    fine = None if rough is None else corner_near(grey, rough)
    close = None if fine is None else corner_near(grey, fine, SMALL_REACH)
    return fine if close is not None and np.hypot(close[0] - fine[0], close[1] - fine[1]) <= SAME else None


def _asked(grey: np.ndarray, x: float, y: float, reach: int) -> tuple[float, float] | None:
    left, top = int(x) - reach - 2, int(y) - reach - 2
    size = 2 * reach + 5
    if left < 0 or top < 0 or left + size > grey.shape[1] or top + size > grey.shape[0]:
        return None
    window = softened(grey[top:top + size, left:left + size], 2)
    gy, gx = np.gradient(window)
    rows, columns = np.mgrid[0:size, 0:size]
    px, py = left + columns + 0.5, top + rows + 0.5
    weight = np.exp(-((px - x) ** 2 + (py - y) ** 2) / (2 * (reach / 2) ** 2))
    if float(window.max() - window.min()) < LEAST_STEP:
        return None
    xx, xy, yy = ((weight * one).sum() for one in (gx * gx, gx * gy, gy * gy))
    root = np.hypot((xx - yy) / 2, xy)
    low, high = (xx + yy) / 2 - root, (xx + yy) / 2 + root
    if high <= 0 or low / high < ROUND:
        return None
    bx = (weight * (gx * gx * px + gx * gy * py)).sum()
    by = (weight * (gx * gy * px + gy * gy * py)).sum()
    det = xx * yy - xy * xy
    return ((yy * bx - xy * by) / det, (xx * by - xy * bx) / det)
