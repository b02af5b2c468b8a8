"""One line, arc or cubic through a run of points between two fixed ends, and how far it strays."""

from __future__ import annotations

import math

import numpy as np

from geometry.curves import Arc, Cubic, Line, Segment

STEPS = 6
"""Rounds of fitting and moving the parameters to the nearest places."""
FLATTEST = 1500.0
"""Arcs of a larger radius (mm) say nothing that a line or a cubic does not."""


def line_error(points: np.ndarray, a: np.ndarray, b: np.ndarray) -> float:
    """Greatest distance (mm) of points from the straight line between two ends."""
    way = b - a
    size = math.hypot(*way)
    if size < 1e-9:
        return math.inf
    offset = points - a
    return float(np.abs(offset[:, 0] * way[1] - offset[:, 1] * way[0]).max() / size) if len(points) else 0.0


def arc_fit(points: np.ndarray, a: np.ndarray, b: np.ndarray) -> tuple[float, float]:
    """(bulge, greatest distance in mm) of the arc between two fixed ends nearest to the points (least squares).

    The centre lies on the middle line of the chord, so one number is sought and the equations are linear.
    """
    middle, way = (a + b) / 2, b - a
    size = math.hypot(*way)
    if size < 1e-9 or len(points) < 3:
        return 0.0, math.inf
    n = np.array([-way[1], way[0]]) / size
    offset = points - middle
    across = offset @ n
    rest = (offset ** 2).sum(axis=1) - size * size / 4
    below = float((across * across).sum())
    if below < 1e-12:
        return 0.0, math.inf
    s = float((rest * across).sum()) / (2 * below)
    radius = math.hypot(s, size / 2)
    if radius > FLATTEST:
        return 0.0, math.inf
    error = float(np.abs(np.hypot(*(points - (middle + n * s)).T) - radius).max())
    side = -1.0 if across[np.abs(across).argmax()] > 0 else 1.0
    height = (radius - abs(s)) if side * s > 0 else (radius + abs(s))
    return side * 2 * height / size, error


def cubic_fit(points: np.ndarray, a: np.ndarray, b: np.ndarray, out: np.ndarray,
              into: np.ndarray) -> tuple[np.ndarray, float]:
    """(4 x 2 control points, greatest distance in mm) of the cubic nearest to the points.

    It leaves `a` along the unit vector `out` and comes to `b` from the side of
    the unit vector `into`; only the two handle lengths are free (least squares,
    parameters moved to the nearest places in between, distances square to
    the curve). Handles that would turn back are a third of the way long.
    """
    size = math.hypot(*(b - a))
    if len(points) < 2 or size < 1e-9:
        return np.array([a, a + out * size / 3, b + into * size / 3, b]), 0.0
    path = np.vstack([a, points, b])
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(path, axis=0).T))])
    t = (along / along[-1])[1:-1]
    control = np.array([a, a + out * along[-1] / 3, b + into * along[-1] / 3, b])
    best, least = control, math.inf
    across = None
    for _ in range(STEPS):
        control = _handles(points, t, a, b, out, into, along[-1], across)
        t = _nearer(control, points, t)
        error = float(np.hypot(*(_at(control, t) - points).T).max())
        if error < least:
            best, least = control, error
        elif error > least * 0.999 and across is not None:
            break
        across = _normals(control, t)
    return best, least


def segment(kind: str, a: np.ndarray, b: np.ndarray, shape: np.ndarray | float) -> Segment:
    """The exact segment of a fit: `shape` is the bulge of an arc, the control points of a cubic."""
    p, q = (float(a[0]), float(a[1])), (float(b[0]), float(b[1]))
    if kind == "line":
        return Line(p, q)
    if kind == "arc":
        return Arc.bulging(p, q, float(shape))
    return Cubic(p, (float(shape[1][0]), float(shape[1][1])), (float(shape[2][0]), float(shape[2][1])), q)


def _handles(points, t, a, b, out, into, length, across) -> np.ndarray:
    """Control points with the handle lengths that suit these parameters; with `across` (normals) only the distance
    square to the curve counts, which comes to the best lengths in few rounds."""
    u = 1 - t
    fixed = (u ** 3 + 3 * u * u * t)[:, None] * a + (t ** 3 + 3 * u * t * t)[:, None] * b
    one, two = (3 * u * u * t)[:, None] * out, (3 * u * t * t)[:, None] * into
    rest = points - fixed
    if across is not None:
        one, two, rest = ((v * across).sum(axis=1)[:, None] for v in (one, two, rest))
    m = np.array([[(one * one).sum(), (one * two).sum()], [(one * two).sum(), (two * two).sum()]])
    r = np.array([(one * rest).sum(), (two * rest).sum()])
    det = m[0, 0] * m[1, 1] - m[0, 1] ** 2
    found = np.linalg.solve(m, r) if det > 1e-9 * m[0, 0] * m[1, 1] else np.array([length / 3, length / 3])
    # A handle that turns back or runs past everything makes a loop: a third of the length is the calm choice.
    found = np.where((found > 0.02 * length) & (found < 1.5 * length), found, length / 3)
    return np.array([a, a + out * found[0], b + into * found[1], b])


def _normals(c: np.ndarray, t: np.ndarray) -> np.ndarray:
    u, s = (1 - t)[:, None], t[:, None]
    d = np.diff(c, axis=0)
    way = u * u * d[0] + 2 * u * s * d[1] + s * s * d[2]
    return np.stack([-way[:, 1], way[:, 0]], axis=1) / np.maximum(np.hypot(*way.T), 1e-12)[:, None]


def _at(c: np.ndarray, t: np.ndarray) -> np.ndarray:
    u = (1 - t)[:, None]
    t = t[:, None]
    return u ** 3 * c[0] + 3 * u * u * t * c[1] + 3 * u * t * t * c[2] + t ** 3 * c[3]


def _nearer(c: np.ndarray, points: np.ndarray, t: np.ndarray) -> np.ndarray:
    """Two Newton steps of each parameter towards the place nearest to its point, kept within 0..1."""
    d1, d2 = 3 * np.diff(c, axis=0), 6 * np.diff(c, 2, axis=0)
    for _ in range(2):
        u = (1 - t)[:, None]
        s = t[:, None]
        w = _at(c, t) - points
        d = u * u * d1[0] + 2 * u * s * d1[1] + s * s * d1[2]
        dd = u * d2[0] + s * d2[1]
        slope = (w * d).sum(axis=1)
        bend = (d * d).sum(axis=1) + (w * dd).sum(axis=1)
        t = np.clip(np.where(bend > 1e-12, t - slope / np.maximum(bend, 1e-12), t), 0.0, 1.0)
    return t
