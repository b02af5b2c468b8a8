"""How deep two cylinders overlap: the least shift that parts them, its direction, and a proof that no other is shorter.

The shift along a unit direction n that parts two convex solids is the sum of
their supports along n and -n. Its least value over all directions is the depth
of overlap. Least values lie where a flat end is met squarely, where both axes
are, along one of the creases (the directions square to one axis), or between
them. The first two are six directions in closed form; on the creases there is
one too where the axes are square, else Newton's method finds the least; most of
what lies between is ruled out by a formula (distance_lunes),
and what is not is left to distance_proof, which goes over all directions there
until none can be better.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry.solids.cylinders import Cylinders, crosses, dots, norms, square_to
from geometry.solids.distance_lunes import AXES, begin, creases
from geometry.solids.distance_proof import Pairs, proved

_SCAN = 24
_SHARES = np.linspace(0.0, 1.0, _SCAN + 1)[:, None]
_SAME = 1e-12
"""mm: what differs by less differs by rounding"""
_ROUNDS = 3


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
    within distance_proof.AGREE of the least. The answer for a pair is the same in any company,
    and the same with the two exchanged, but for the sign of the direction.
    """
    # Each pair is measured the one way round, so that exchanging the two changes nothing.
    turned, one, two = _wider_first(a, b)
    local = _local(one, two)
    pairs = local.pairs
    ring = pairs.ring()
    around = pairs.shift(ring)
    least, ways = creases(pairs, ring, around)
    value, n = _best_of(pairs, np.concatenate([ring[:, AXES], ways, _up(pairs)], axis=1))
    # Where the axes are not square the best on a crease may lie elsewhere.
    crease, row = np.nonzero(least < value - _SAME)
    if len(row):
        found, ways = _on_creases(pairs, crease, row)
        # Of each pair the best of its creases.
        best = np.lexsort((crease, found, row))
        best = best[np.searchsorted(row[best], np.unique(row))]
        best = best[found[best] < value[row[best]]]
        value[row[best]], n[:, row[best]] = found[best], ways[:, best]
    value, n = proved(pairs, value, n, *begin(pairs, ring, around, value))
    out = local.e * n[0][:, None] + local.f * n[1][:, None] + local.m * n[2][:, None]
    out /= norms(out)[:, None]
    way = np.where(turned[:, None], -out, out)
    return a.support(-way) + b.support(way), way


def _wider_first(a: Cylinders, b: Cylinders) -> tuple[np.ndarray, Cylinders, Cylinders]:
    """(which pairs are turned round, the first, the second of each): the wider goes first, then the longer, then the one that starts earlier."""
    first, second = (np.column_stack([one.radius, one.length, one.start, one.axis]) for one in (a, b))
    apart = first != second
    at, rows = np.argmax(apart, axis=1), np.arange(len(a))
    turned = first[rows, at] < second[rows, at]
    many = turned[:, None]
    return turned, *(Cylinders(rows[:, 2:5], rows[:, 5:], rows[:, 1], rows[:, 0])
                     for rows in (np.where(many, second, first), np.where(many, first, second)))


class _Local(Struct, frozen=True, eq=False):
    """Pairs in frames of their own: e along the first axis, f in the plane of both, m square to both."""

    pairs: Pairs
    e: np.ndarray
    f: np.ndarray
    m: np.ndarray


def _local(a: Cylinders, b: Cylinders) -> _Local:
    # The second axis is turned so that it leans towards the first; m so that going along it shortens the way out.
    back = dots(a.axis, b.axis) < 0
    start = np.where(back[:, None], b.start + b.axis * b.length[:, None], b.start)
    axis = np.where(back[:, None], -b.axis, b.axis)
    w = start - a.start
    m = crosses(a.axis, axis)
    size = norms(m)
    level = size < 1e-9
    if level.any():
        aside = w - dots(w, a.axis)[:, None] * a.axis
        far = norms(aside)[:, None]
        m = np.where(level[:, None], np.where(far > 1e-9, aside / np.maximum(far, 1e-300), square_to(a.axis)), m)
    m = m / norms(m)[:, None]
    m = np.where((dots(m, w) > 0)[:, None], -m, m)
    f = crosses(m, a.axis)
    f = f / norms(f)[:, None]
    f = np.where((dots(f, axis) < 0)[:, None], -f, f)
    s = np.maximum(dots(f, axis), 0.0)
    return _Local(Pairs(np.array([dots(w, a.axis), dots(w, f), dots(w, m), np.maximum(dots(a.axis, axis), 0.0), s,
                                  a.length, a.radius, b.length, b.radius])), a.axis, f, m)


def _up(pairs: Pairs) -> np.ndarray:
    """The direction m of each pair (3, 1, n)."""
    up = np.zeros((3, 1, len(pairs.c)))
    up[2] = 1.0
    return up


def _best_of(pairs: Pairs, ways: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The best shift of each pair and its direction (3, n), among directions (3, k, n)."""
    value = pairs.shift(ways)
    best, rows = np.argmin(value, axis=0), np.arange(len(pairs.c))
    return value[best, rows], ways[:, best, rows]


def _on_creases(pairs: Pairs, crease: np.ndarray, row: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The best shift (k,) and its direction (3, k) on quarter turns square to one of the axes, from the plane of both up to m.

    Each is one of the four creases of a pair, by its place in CREASES, and the pair's number.
    """
    own = Pairs(pairs.rows[:, row])
    c, s = own.c, own.s
    along, sign = crease >= 2, 1.0 - 2 * (crease % 2)
    x, y = sign * np.where(along, -s, 0.0), sign * np.where(along, c, 1.0)
    # Along each the shift is lift sin(d) + level cos(d) + a constant + radius sqrt(1 - s2 cos(d)^2).
    level = x * own.wx + y * own.wy
    level += np.where(crease == 0, own.length_b * s, np.where(crease == 2, own.length_a * s, 0.0))
    radius = np.where(along, own.radius_a, own.radius_b)
    lift, s2 = own.wz, s * s
    # Within an angle c of the plane the last of these turns sharply: the marks lie closer there.
    grid = np.arctan((c + _SHARES) * _SHARES / np.maximum(1 - _SHARES, 1e-15))
    sin, cos = np.sin(grid), np.cos(grid)
    rough = lift * sin + level * cos + radius * np.sqrt(np.maximum(0.0, 1 - s2 * cos * cos))
    at, each = np.argmin(rough, axis=0), np.arange(len(row))
    low, d, high = grid[np.maximum(at - 1, 0), each], grid[at, each], grid[np.minimum(at + 1, _SCAN), each]
    for _ in range(_ROUNDS):
        # Newton's step where the slope rises, held between marks on either side of the foot; else halving.
        sin, cos = np.sin(d), np.cos(d)
        cos2 = cos * cos
        under = np.maximum(1e-30, 1 - s2 * cos2)
        rim = radius * s2 / np.sqrt(under)
        slope = (lift + rim * sin) * cos - level * sin
        bend = rim * (2 * cos2 - 1 - s2 * cos2 * (1 - cos2) / under) - lift * sin - level * cos
        falls = slope < 0
        low, high = np.where(falls, d, low), np.where(falls, high, d)
        bowl = bend > 1e-12
        step = d - slope / np.where(bowl, bend, 1.0)
        d = np.where(bowl & (step >= low) & (step <= high), step, (low + high) / 2)
    sin, cos = np.sin(d), np.cos(d)
    ways = np.array([x * cos, y * cos, sin])
    return own.shift(ways), ways
