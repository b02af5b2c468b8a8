"""Corners of a dense closed line: where it turns within a few of its points, and where exactly they lie."""

from __future__ import annotations

import math

import numpy as np

SHARP = math.radians(32)
"""Turns sharper than this, within REACH, are corners that stay."""
REACH = 2.6
"""mm to either side over which the direction is taken."""


def evenly(line: np.ndarray, step: float) -> np.ndarray:
    """(n, 2) points evenly spaced by about `step` mm along a closed line, the first point not repeated."""
    closed = line if np.array_equal(line[0], line[-1]) else np.vstack([line, line[:1]])
    gaps = np.hypot(*np.diff(closed, axis=0).T)
    along = np.concatenate([[0.0], np.cumsum(gaps)])
    count = max(24, math.ceil(along[-1] / step))
    at = np.arange(count) * along[-1] / count
    return np.stack([np.interp(at, along, closed[:, 0]), np.interp(at, along, closed[:, 1])], axis=1)


def corners(points: np.ndarray, step: float, blunt: float) -> list[tuple[int, np.ndarray]]:
    """(index, place) of each corner of evenly spaced points, in order.

    `blunt` is how far (mm) a picture rounds a corner; that much beside it is
    not looked at, and its place is where the two sides meet.
    """
    count = len(points)
    near, far = max(1, round(blunt / step)), max(4, round((blunt + REACH) / step))
    if 2 * far + 1 >= count:
        return []
    window = np.arange(near, far + 1)
    ahead, ahead_mid = _lines(points, window)
    back, back_mid = _lines(points, -window)
    turn = np.abs(np.arctan2(-back[:, 0] * ahead[:, 1] + back[:, 1] * ahead[:, 0],
                             -(back[:, 0] * ahead[:, 0] + back[:, 1] * ahead[:, 1])))
    found: list[tuple[int, np.ndarray]] = []
    for i in np.argsort(-turn).tolist():
        if turn[i] < SHARP:
            break
        if any(min((i - k) % count, (k - i) % count) <= far for k, _ in found):
            continue
        if not _concentrated(points, i, near, far, turn[i]):
            continue
        place = _meeting(ahead_mid[i], ahead[i], back_mid[i], back[i])
        if place is None or np.hypot(*(place - points[i])) > 2 * blunt + 3 * step:
            place = points[i]
        found.append((i, place))
    return sorted(found, key=lambda c: c[0])


def _lines(points: np.ndarray, window: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """(unit directions away from each point, middles) of the lines fitted to the points at those index offsets."""
    count = len(points)
    chosen = points[(np.arange(count)[:, None] + window[None]) % count]
    middle = chosen.mean(axis=1)
    offset = chosen - middle[:, None]
    t = np.abs(window) - np.abs(window).mean()
    way = (offset * t[None, :, None]).sum(axis=1)
    return way / np.maximum(np.hypot(way[:, 0], way[:, 1]), 1e-12)[:, None], middle


def _concentrated(points: np.ndarray, i: int, near: int, far: int, turn: float) -> bool:
    """Whether the turn happens at the point, not evenly over the reach as on a small round.

    Behind a corner the sides run straight on: the direction near it is the direction far from it.
    """
    count = len(points)
    half = (near + far) // 2
    if half - near < 2:
        return True
    p = [points[(i + k) % count] for k in (-far, -half, -near, near, half, far)]
    angle = [math.atan2(b[1] - a[1], b[0] - a[0]) for a, b in zip(p, p[1:], strict=False)]
    bend = sum(abs(math.remainder(angle[a] - angle[b], math.tau)) for a, b in ((0, 1), (3, 4)))
    return bend < 0.6 * turn


def _meeting(p: np.ndarray, u: np.ndarray, q: np.ndarray, v: np.ndarray) -> np.ndarray | None:
    det = u[0] * v[1] - u[1] * v[0]
    if abs(det) < 0.2:
        return None
    t = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / det
    return p + u * t
