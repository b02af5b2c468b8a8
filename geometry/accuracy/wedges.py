"""How near drillings come to a ramp over many trials: a cylinder beside a wedge that is open at the face.

As geometry.solids.ramp_gap for one, all in the ramp's frame (along, across,
down; mm). Each direction that points away from the wedge, and not up, tells a
gap that is never overstated; the greatest is the gap, and where the two overlap
the least shift. Tried are the directions of the wedge's faces, those square to
the axis and an edge, and one that the caller knows; where there is wood left,
points that are nearest in turn lead to the true one.
"""

from __future__ import annotations

import numpy as np

from geometry.accuracy.ramp_built import FiledRamp
from geometry.accuracy.rods import AGREE, Array, Rod, dot, length3, nearest, some
from geometry.vectors import Vec3

_ROUNDS = 60
_LOOKS = 5
"""Places along the axis of a drilling from the face at which its distance in plan is taken"""
_NEXT_TO_NOTHING = 1e-9
Way = tuple[Array, Array, Array]


def from_the_face(rod: Rod, ramp: FiledRamp, known: Vec3) -> Array:
    """(n,) gap in plan of drillings (in the ramp's frame) that begin at the face, as the ramp does.

    Negative by the least level shift that parts them. `known` is a level unit direction worth a try.
    """
    places = [rod.at(rod.length * share)[:2] for share in np.linspace(0.0, 1.0, _LOOKS)]
    gap = np.minimum.reduce([ramp.aside(*place) for place in places]) - rod.radius
    into = np.flatnonzero(gap < 0)
    if into.size:
        one, cut = some(rod, into), ramp.picked(into)
        ways = [n for n in _ways(one, cut, known) if not n[2].any()]
        for x, y in (places[0], places[-1]):
            x, y = x[into], y[into]
            ways.append(_level(x - np.clip(x, 0.0, cut.reach), y - np.clip(y, -cut.half, cut.half)))
        gap[into] = np.maximum.reduce([_along(one, cut, n) for n in ways])
    return gap


def wedge_gap(rod: Rod, ramp: FiledRamp, known: Vec3) -> Array:
    """(n,) gap of drillings (in the ramp's frame) that do not begin at the face; `known` is a unit direction worth a try.

    Never overstated; where there is wood left, understated by at most AGREE.
    """
    low = np.maximum.reduce([_along(rod, ramp, n) for n in _ways(rod, ramp, known)])
    _settle(rod, ramp, low)
    return low


def _ways(rod: Rod, ramp: FiledRamp, known: Vec3) -> list[Way]:
    """Directions to try, each of length 1 and not upwards."""
    one, none = np.ones_like(ramp.slope), np.zeros_like(ramp.slope)
    found = [tuple(c * one for c in known)]
    found += [(sign * one, none, none) for sign in (1.0, -1.0)] + [(none, sign * one, none) for sign in (1.0, -1.0)]
    size = np.sqrt(1.0 + ramp.slope ** 2)
    found += [(none, none, one), (-ramp.slope / size, none, one / size)]
    x, y, z = rod.axis
    down = ramp.slope
    found += [_not_up(x, y, z), _not_up(-x, -y, -z), _not_up(none, z, -y), _not_up(z, none, -x),
              _not_up(y * down, z - x * down, -y)]
    right, left = _level(y, -x), _level(-y, x)
    return [*found, right, left]


def _level(x: Array, y: Array) -> Way:
    """A level direction; along the ramp where x and y are nothing."""
    size = np.hypot(x, y)
    nothing = size < _NEXT_TO_NOTHING
    size = np.where(nothing, 1.0, size)
    return np.where(nothing, 1.0, x / size), np.where(nothing, 0.0, y / size), np.zeros_like(size)


def _not_up(x: Array, y: Array, z: Array) -> Way:
    """A vector with its end turned downwards if need be, of length 1; straight down where it is nothing."""
    size = length3(x, y, z)
    nothing = size < _NEXT_TO_NOTHING
    by = np.where(z < 0, -1.0, 1.0) / np.where(nothing, 1.0, size)
    return np.where(nothing, 0.0, x * by), np.where(nothing, 0.0, y * by), np.where(nothing, 1.0, z * by)


def _along(rod: Rod, ramp: FiledRamp, n: Way) -> Array:
    """The gap seen along unit directions that are not upwards."""
    lean = dot(n, rod.axis)
    near = (dot(n, rod.start) + np.minimum(lean * rod.length, 0.0)
            - rod.radius * np.sqrt(np.maximum(1.0 - lean * lean, 0.0)))
    return near - np.maximum(ramp.reach * (n[0] + ramp.slope * n[2]), 0.0) - ramp.half * np.abs(n[1])


def _settle(rod: Rod, ramp: FiledRamp, low: Array) -> None:
    """Raise `low` to the gap: alternating projection with momentum, each turn proven along the line between the two points."""
    left = np.arange(len(low))
    towards = [a - b for a, b in zip(_on_wedge(ramp, rod.at(rod.length / 2)), rod.start, strict=True)]
    y = rod.at(np.clip(dot(rod.axis, towards), 0.0, rod.length))
    before = y
    for turn in range(_ROUNDS):
        q = _on_wedge(ramp, y)
        p = nearest(rod, q)
        between = [u - w for u, w in zip(p, _on_wedge(ramp, p), strict=True)]
        far = length3(*between)
        apart = far > 1e-6
        n = _not_up(*(np.where(apart, c, 0.0) for c in between))
        low[left] = np.where(apart, np.maximum(low[left], _along(rod, ramp, n)), low[left])
        open_ = apart & (far - low[left] > AGREE)
        if not open_.any():
            return
        push = turn / (turn + 3.0)
        y = tuple(u + push * (u - w) for u, w in zip(p, before, strict=True))
        before = p
        if np.count_nonzero(open_) < 0.7 * len(left):
            left = left[open_]
            y, before = (tuple(c[open_] for c in point) for point in (y, before))
            rod, ramp = some(rod, open_), ramp.picked(open_)


def _on_wedge(ramp: FiledRamp, point: Way) -> Way:
    """The point of the wedge nearest to a point."""
    u, w, z = point
    level = np.minimum(np.maximum(u, 0.0), ramp.reach)
    over = z <= ramp.slope * level
    foot = np.minimum(np.maximum((u + ramp.slope * z) / (1.0 + ramp.slope ** 2), 0.0), ramp.reach)
    return (np.where(over, level, foot), np.minimum(np.maximum(w, -ramp.half), ramp.half),
            np.where(over, z, ramp.slope * foot))
