"""How near a drilling comes to a ramp, or how deep it overlaps one: a cylinder beside a wedge that is open at the face.

Both are convex, so the gap is the greatest of all gaps seen along one
direction, and the depth of overlap the least shift along one: the same number
with the other sign, less the sum of what both reach along it. No shift leads
out of a ramp through the face, and a drilling from the face is open there too.

The least lies square to a face or a cap, or square to an edge or to the axis:
a dense set and each of those creases is searched, and the best of each refined.
"""

from __future__ import annotations

import numpy as np

from geometry.solids.cylinders import crosses, norms, square_to
from geometry.solids.drilling import Drilling
from geometry.solids.ramps import RampCut
from geometry.solids.ways_out import WayOut

_BALL, _TURNS, _ROUNDS = 700, 96, 60
_FIRST_STEP = 0.08
"""rad, about half the spacing of the dense set"""


def from_ramp(drilling: Drilling, ramp: RampCut, ahead: float = 0.0) -> WayOut:
    """The way of a drilling out of a ramp; its `depth` is the gap, below zero, where the two are apart.

    `ahead` counts a cone so many mm beyond its end too, down to the drill's point.

    A gap is never overstated and a depth never understated; both are true to 0.001 mm.
    """
    corners = np.array([(*ramp.corner(along, side), along * ramp.slope)
                        for along in (0.0, ramp.reach) for side in (1.0, -1.0)])
    start, axis = np.array(drilling.start), np.array(drilling.direction)
    length, radius = drilling.depth, drilling.radius
    level = drilling.upright and drilling.direction[2] > 0

    def shift(n: np.ndarray) -> np.ndarray:
        """How far the drilling has to go along each of the unit directions n (k, 3) until it is clear."""
        against = -(n @ axis)
        aside = np.sqrt(np.maximum(0.0, 1 - against * against))
        back = np.maximum(0.0, length * against) + radius * aside
        if ahead:
            back = np.maximum(back, (length + ahead) * against)
        return (n @ corners.T).max(axis=1) - n @ start + back

    into, left = (*ramp.axis, 0.0), (-ramp.axis[1], ramp.axis[0], 0.0)
    slope = (-ramp.slope * ramp.axis[0], -ramp.slope * ramp.axis[1], 1.0)
    down = (ramp.axis[0], ramp.axis[1], ramp.slope)
    creases = [(0.0, 0.0, 1.0)] if level else [(0.0, 0.0, 1.0), into, left, down, tuple(axis)]
    faces = np.array([into, left, slope, tuple(axis)])
    starts = [_allowed(np.concatenate([faces, -faces]), level)]
    ties = [np.zeros(3)]
    if not level:
        starts.append(_allowed(_ball(), level))
        ties.append(np.zeros(3))
    for crease in creases:
        starts.append(_allowed(_ring(np.array(crease)), level))
        ties.append(np.array(crease))
    starts, ties = zip(*[(some, tie) for some, tie in zip(starts, ties, strict=True) if len(some)], strict=True)
    first = [some[int(np.argmin(shift(some)))] for some in starts]
    n, value = _refined(shift, np.array(first), np.array(ties), level)
    best = int(np.argmin(value))
    return WayOut(float(value[best]), tuple(float(c) for c in n[best]))


def _allowed(n: np.ndarray, level: bool) -> np.ndarray:
    """The unit directions that are not upwards, or level alone."""
    n = n / np.maximum(np.sqrt((n * n).sum(axis=1)), 1e-300)[:, None]
    return n[np.abs(n[:, 2]) < 1e-12] if level else n[n[:, 2] >= -1e-12]


def _ball() -> np.ndarray:
    k = np.arange(_BALL) + 0.5
    height, turn = 1 - k / _BALL, k * np.pi * (3 - np.sqrt(5))
    flat = np.sqrt(1 - height * height)
    return np.stack([flat * np.cos(turn), flat * np.sin(turn), height], axis=1)


def _ring(axis: np.ndarray) -> np.ndarray:
    """Directions all round, square to an axis."""
    axis = axis / np.linalg.norm(axis)
    e = square_to(axis[None])[0]
    f = np.cross(axis, e)
    turn = np.arange(_TURNS) * (2 * np.pi / _TURNS)
    return np.cos(turn)[:, None] * e + np.sin(turn)[:, None] * f


def _refined(shift, n: np.ndarray, tie: np.ndarray, level: bool) -> tuple[np.ndarray, np.ndarray]:
    """(directions, shifts): pattern search on the sphere from each row of n (k, 3); a tie keeps a row square to itself."""
    count, rows = len(n), np.arange(len(n))
    tied = tie.any(axis=1)[:, None]
    axis = tie / np.maximum(norms(tie), 1e-300)[:, None]
    value, step = shift(n), np.full(count, _FIRST_STEP)
    for round_ in range(_ROUNDS):
        e = np.stack([-n[:, 1], n[:, 0], np.zeros(count)], axis=1) if level else square_to(n)
        cos, sin = np.cos(2.4 * round_), np.sin(2.4 * round_)
        f = crosses(n, e)
        e, f = (e, e) if level else (e * cos + f * sin, f * cos - e * sin)
        e = np.where(tied, crosses(n, axis), e)
        f = np.where(tied, e, f)
        trial = np.concatenate([n + way * step[:, None] for way in (e, -e, f, -f)])
        # Upwards counts as level.
        trial[:, 2] = np.maximum(trial[:, 2], 0.0)
        trial /= norms(trial)[:, None]
        found = shift(trial).reshape(4, count)
        pick = np.argmin(found, axis=0)
        least = found[pick, rows]
        won = least < value - 1e-12
        n = np.where(won[:, None], trial[pick * count + rows], n)
        value = np.where(won, least, value)
        step = np.where(won, step, step / 2)
        if step.max() < 1e-9:
            break
    return n, value
