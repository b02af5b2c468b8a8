"""How deep two cylinders overlap: the least shift that parts them, its direction, and a proof that no other is shorter.

The shift along a unit direction n that parts two convex solids is the sum of
their supports along n and -n. Its least value over all directions is the depth
of overlap. Least values lie where a flat end is met squarely, where both axes
are, along one of the creases (the directions square to one axis), or between
them. The first two are six directions in closed form; on the creases Newton's
method finds the rest; what may still lie between them is left to
distance_proof, which goes over all directions until none can be better.
"""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from geometry.solids.cylinders import Cylinders, crosses, dots, norms, square_to
from geometry.solids.distance_proof import Pairs, proved

_SCAN = 8
_SHARES = np.linspace(0.0, 1.0, _SCAN + 1)[:, None]
_ROUNDS = 5


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
    turned = _second_first(a, b)
    one, two = _chosen(turned, b, a), _chosen(turned, a, b)
    local = _local(one, two)
    value, n = _in_closed_form(local.pairs)
    found, way = _on_creases(local.pairs)
    value, n = np.where(found < value, found, value), np.where(found < value, way, n)
    value, n = proved(local.pairs, value, n)
    out = local.e * n[0][:, None] + local.f * n[1][:, None] + local.m * n[2][:, None]
    out /= norms(out)[:, None]
    way = np.where(turned[:, None], -out, out)
    return a.support(-way) + b.support(way), way


def _second_first(a: Cylinders, b: Cylinders) -> np.ndarray:
    """Which pairs are turned round: the wider cylinder goes first, then the longer, then the one that starts earlier."""
    first = np.column_stack([a.radius, a.length, a.start, a.axis])
    second = np.column_stack([b.radius, b.length, b.start, b.axis])
    apart = first != second
    at = np.argmax(apart, axis=1)
    rows = np.arange(len(a))
    return apart.any(axis=1) & (first[rows, at] < second[rows, at])


def _chosen(which: np.ndarray, yes: Cylinders, no: Cylinders) -> Cylinders:
    many = which[:, None]
    return Cylinders(np.where(many, yes.start, no.start), np.where(many, yes.axis, no.axis),
                     np.where(which, yes.length, no.length), np.where(which, yes.radius, no.radius))


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


def _in_closed_form(pairs: Pairs) -> tuple[np.ndarray, np.ndarray]:
    """The best of the ways along either axis, and square to both."""
    one, none = np.ones_like(pairs.c), np.zeros_like(pairs.c)
    ways = np.array([(one, none, none), (-one, none, none), (pairs.c, pairs.s, none), (-pairs.c, -pairs.s, none),
                     (none, none, one)]).swapaxes(0, 1)
    value = pairs.shift(ways)
    best, rows = np.argmin(value, axis=0), np.arange(len(one))
    return value[best, rows], ways[:, best, rows]


def _on_creases(pairs: Pairs) -> tuple[np.ndarray, np.ndarray]:
    """The best of the four quarter turns square to one of the axes, from the plane of both up to m."""
    c, s = pairs.c, pairs.s
    none, one = np.zeros_like(c), np.ones_like(c)
    aside = np.array([(none, one), (none, -one), (-s, c), (s, -c)])
    # Along each the shift is lift sin(d) + level cos(d) + a constant + radius sqrt(1 - s2 cos(d)^2).
    level = aside[:, 0] * pairs.wx + aside[:, 1] * pairs.wy
    level[0] += pairs.length_b * s
    level[2] += pairs.length_a * s
    radius = np.array([pairs.radius_b, pairs.radius_b, pairs.radius_a, pairs.radius_a])
    lift, s2 = pairs.wz, s * s
    # Within an angle c of the plane the last of these turns sharply: the marks lie closer there.
    grid = np.arctan((c + _SHARES) * _SHARES / np.maximum(1 - _SHARES, 1e-15))
    sin, cos = np.sin(grid)[:, None], np.cos(grid)[:, None]
    rough = lift * sin + level * cos + radius * np.sqrt(np.maximum(0.0, 1 - s2 * cos * cos))
    at, rows = np.argmin(rough, axis=0), np.arange(len(c))
    low, d, high = grid[np.maximum(at - 1, 0), rows], grid[at, rows], grid[np.minimum(at + 1, _SCAN), rows]
    for _ in range(_ROUNDS):
        # Newton's step where the slope rises, held between marks on either side of the foot; else halving.
        sin, cos = np.sin(d), np.cos(d)
        root = np.sqrt(np.maximum(1e-30, 1 - s2 * cos * cos))
        slope = lift * cos - level * sin + radius * s2 * cos * sin / root
        bend = -lift * sin - level * cos + radius * s2 * ((cos * cos - sin * sin) / root - s2 * (cos * sin / root) ** 2 / root)
        low, high = np.where(slope < 0, d, low), np.where(slope < 0, high, d)
        step = d - slope / np.where(bend > 1e-12, bend, 1.0)
        d = np.where((bend > 1e-12) & (step >= low) & (step <= high), step, (low + high) / 2)
    sin, cos = np.sin(d), np.cos(d)
    ways = np.array([aside[:, 0] * cos, aside[:, 1] * cos, sin])
    value = pairs.shift(ways)
    best = np.argmin(value, axis=0)
    return value[best, rows], ways[:, best, rows]
