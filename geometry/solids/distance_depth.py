"""How deep two cylinders overlap: the least shift that parts them, and its direction.

The shift along a unit direction n that parts two convex solids is the sum of
their supports along n and -n. Its least value over all directions is the depth
of overlap. Directions in which a lateral surface is met squarely are creases of
that function, so the search runs in three families: all round, square to the
first axis, square to the second. The best direction of a dense set in each is
refined by a pattern search that stays on its crease.
"""

from __future__ import annotations

import math

import numpy as np

from geometry.solids.cylinders import Cylinders, crosses, dots, norms

_TURNS = 48
_BALL = 600
_GOLDEN = math.pi * (3 - math.sqrt(5))
_ROUNDS = 18
_FIRST_STEP = 0.06
"""rad, about half the spacing of the dense set"""


def depths(a: Cylinders, b: Cylinders, shared: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """(-depth in mm (n,), point (n, 3), point (n, 3)) of overlapping pairs.

    The points are a shared point moved half the shift either way, so that the
    vector from the second to the first is the shift of `a` that parts the pair.
    """
    depth, way = escapes(a, b)
    half = way * (depth / 2)[:, None]
    return -depth, shared + half, shared - half


def escapes(a: Cylinders, b: Cylinders) -> tuple[np.ndarray, np.ndarray]:
    """(depth (n,) in mm, unit direction (n, 3) in which a has to move by it to be clear of b).

    The depth is that of a real direction, so it is never understated; it is
    within 0.01 mm of the least.
    """
    starts = _families(a, b)
    best = [_best_of(a, b, directions) for directions, _ in starts]
    n = np.concatenate([found[0] for found in best])
    value = np.concatenate([found[1] for found in best])
    n, value = _refined(Cylinders.joined([a] * 3), Cylinders.joined([b] * 3), n, value,
                        np.concatenate([crease for _, crease in starts]))
    count = len(a)
    pick = np.argmin(value.reshape(3, count), axis=0) * count + np.arange(count)
    return value[pick], n[pick]


def sharpest(a: Cylinders, b: Cylinders, n: np.ndarray) -> np.ndarray:
    """Greatest gap (n,) in mm of two separate solids along any direction near `n` (n, 3) or along a crease near it.

    Unit directions from a to b. The gap along a direction is a proven lower bound
    of the distance; the greatest of all is the distance.
    """
    none = np.zeros_like(n)
    starts, creases = [n], [none]
    for one in (a, b):
        along = dots(n, one.axis)
        flat = n - along[:, None] * one.axis
        size = norms(flat)[:, None]
        starts += [one.axis * np.where(along < 0, -1.0, 1.0)[:, None],
                   np.where(size > 1e-9, flat / np.maximum(size, 1e-300), _square_to(one.axis))]
        creases += [none, one.axis]
    many = len(starts)
    alls = (Cylinders.joined([a] * many), Cylinders.joined([b] * many))
    way = -np.concatenate(starts)
    _, value = _refined(*alls, way, _shift(*alls, way), np.concatenate(creases))
    return -value.reshape(many, len(a)).min(axis=0)


def _shift(a: Cylinders, b: Cylinders, n: np.ndarray) -> np.ndarray:
    """How far a has to move along n until it is clear of b."""
    return a.support(-n) + b.support(n)


def _ball() -> np.ndarray:
    k = np.arange(_BALL) + 0.5
    height, turn = 1 - 2 * k / _BALL, k * np.pi * (3 - np.sqrt(5))
    flat = np.sqrt(1 - height * height)
    return np.stack([flat * np.cos(turn), flat * np.sin(turn), height], axis=1)


_EVERYWHERE = _ball()


def _families(a: Cylinders, b: Cylinders) -> list[tuple[np.ndarray, np.ndarray]]:
    """(directions (n, k, 3), crease axis (n, 3), zero for none) to start from."""
    count = len(a)
    angle = np.arange(_TURNS) * (2 * np.pi / _TURNS)
    everywhere = np.concatenate([np.broadcast_to(_EVERYWHERE, (count, _BALL, 3)),
                                 np.stack([a.axis, -a.axis, b.axis, -b.axis], axis=1)], axis=1)
    out = [(everywhere, np.zeros((count, 3)))]
    crossing = crosses(a.axis, b.axis)
    size = norms(crossing)
    for one in (a, b):
        e = _square_to(one.axis)
        f = crosses(one.axis, e)
        ring = np.cos(angle)[None, :, None] * e[:, None, :] + np.sin(angle)[None, :, None] * f[:, None, :]
        common = np.where(size[:, None] > 1e-9, crossing / np.maximum(size, 1e-300)[:, None], e)
        out.append((np.concatenate([ring, common[:, None], -common[:, None]], axis=1), one.axis))
    return out


def _best_of(a: Cylinders, b: Cylinders, starts: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    count, many, _ = starts.shape
    index = np.repeat(np.arange(count), many)
    value = _shift(a.pick(index), b.pick(index), starts.reshape(-1, 3)).reshape(count, many)
    pick = np.argmin(value, axis=1)
    return starts[np.arange(count), pick], value[np.arange(count), pick]


def _refined(a: Cylinders, b: Cylinders, n: np.ndarray, value: np.ndarray,
             crease: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Pattern search on the sphere; a non-zero crease axis keeps n square to it."""
    count = len(a)
    step = np.full(count, _FIRST_STEP)
    tied = (norms(crease) > 0.5)[:, None]
    four_a, four_b = Cylinders.joined([a] * 4), Cylinders.joined([b] * 4)
    rows = np.arange(count)
    for round_ in range(_ROUNDS):
        # The tangents turn from round to round: at a crease a descent may lie between fixed ones.
        e, cos, sin = _square_to(n), math.cos(_GOLDEN * round_), math.sin(_GOLDEN * round_)
        e, f = e * cos + crosses(n, e) * sin, crosses(n, e) * cos - e * sin
        e = np.where(tied, crosses(n, crease), e)
        f = np.where(tied, e, f)
        trial = np.concatenate([n + e * step[:, None], n - e * step[:, None],
                                n + f * step[:, None], n - f * step[:, None]])
        trial /= norms(trial)[:, None]
        found = _shift(four_a, four_b, trial).reshape(4, count)
        pick = np.argmin(found, axis=0)
        least = found[pick, rows]
        won = least < value
        n = np.where(won[:, None], trial[pick * count + rows], n)
        value = np.where(won, least, value)
        step = np.where(won, step, step * 0.5)
    return n, value


def _square_to(n: np.ndarray) -> np.ndarray:
    """A unit vector square to each row of n."""
    steep = np.abs(n[:, 2]) >= 0.7
    # n x (0, 0, 1), or n x (1, 0, 0) where n is nearly upright.
    e = np.zeros_like(n)
    e[:, 0] = np.where(steep, 0.0, n[:, 1])
    e[:, 1] = np.where(steep, n[:, 2], -n[:, 0])
    e[:, 2] = np.where(steep, -n[:, 1], 0.0)
    return e / norms(e)[:, None]
