"""Where segments cross or touch one another: found on chords, settled on the exact curves."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Arc, Line, Segment
from geometry.vectors import Vec2

CHORD = 0.02
"""Sagitta (mm) of the chords on which crossings are looked for before Newton's method takes over."""

MEET = 1e-7
"""Two curves meet when Newton's method brings them this near (mm)."""

MOST_PAIRS = 400_000
"""Crossing chords beyond which a drawing is too tangled to be worked out exactly."""


class TooTangled(Exception):
    """More crossings than MOST_PAIRS: the caller falls back on chords alone."""


def crossings(segments: Sequence[Segment]) -> list[list[float]]:
    """For each segment the inner parameters (0 < t < 1, ascending) where another segment or itself meets it.

    A meeting at an end of one segment counts for the other. Stretches that run
    together are not meetings: drop duplicates first.
    """
    owner, t0, t1, chords = _chords(segments)
    tree = shapely.STRtree(chords)
    pairs = tree.query(chords, predicate="intersects")
    pairs = pairs[:, pairs[0] < pairs[1]]
    a, b = owner[pairs[0]], owner[pairs[1]]
    neighbours = (a == b) & (pairs[1] - pairs[0] == 1)
    pairs = pairs[:, ~neighbours]
    if pairs.shape[1] > MOST_PAIRS:
        raise TooTangled
    found: list[set[float]] = [set() for _ in segments]
    for i, j in pairs.T:
        one, two = int(owner[i]), int(owner[j])
        guess = _guess(chords[i], chords[j])
        if guess is None:
            continue
        hit = _settle(segments[one], t0[i] + (t1[i] - t0[i]) * guess[0], segments[two], t0[j] + (t1[j] - t0[j]) * guess[1])
        if hit is None or (one == two and abs(hit[0] - hit[1]) < 1e-6):
            continue
        found[one].add(hit[0])
        found[two].add(hit[1])
    return [_inner(segment, ts) for segment, ts in zip(segments, found, strict=True)]


def speed(segment: Segment, t: float) -> Vec2:
    """First derivative by t, mm."""
    if isinstance(segment, Line):
        return v.sub(segment.p1, segment.p0)
    if isinstance(segment, Arc):
        return v.scale(segment.tangent(t), segment.length())
    return segment.derivative(t)


def _chords(segments: Sequence[Segment]) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """All chords with their segment's number and parameters; the parameters are even in t for every kind."""
    owner, lo, hi, coordinates = [], [], [], []
    for number, segment in enumerate(segments):
        points = segment.flatten(CHORD)
        n = len(points) - 1
        for k in range(n):
            owner.append(number)
            lo.append(k / n)
            hi.append((k + 1) / n)
            coordinates.append((points[k], points[k + 1]))
    return np.array(owner), np.array(lo), np.array(hi), shapely.linestrings(np.array(coordinates, dtype=float))


def _guess(one: shapely.LineString, two: shapely.LineString) -> tuple[float, float] | None:
    """Where two chords meet, as parts of each; None for chords that run together."""
    (a, b), (c, d) = one.coords, two.coords
    u, w, gap = v.sub(b, a), v.sub(d, c), v.sub(c, a)
    turn = v.cross(u, w)
    if abs(turn) <= 1e-9 * v.norm(u) * v.norm(w):
        return None
    return (min(1.0, max(0.0, v.cross(gap, w) / turn)), min(1.0, max(0.0, v.cross(gap, u) / turn)))


def _settle(one: Segment, s: float, two: Segment, t: float) -> tuple[float, float] | None:
    """Newton's method from (s, t) to a common point; None when it finds none within the segments."""
    for _ in range(30):
        miss = v.sub(two.point(t), one.point(s))
        u, w = speed(one, s), speed(two, t)
        turn = v.cross(u, w)
        if abs(turn) <= 1e-12 * (v.norm(u) * v.norm(w) + 1e-300):
            break
        ds, dt = v.cross(miss, w) / turn, v.cross(miss, u) / turn
        s, t = min(1.0, max(0.0, s + ds)), min(1.0, max(0.0, t + dt))
        if abs(ds) + abs(dt) < 1e-14:
            break
    return (s, t) if v.distance(one.point(s), two.point(t)) <= MEET else None


def _inner(segment: Segment, found: set[float]) -> list[float]:
    """Parameters in ascending order; those at an end or at a neighbour (to 1e-6 mm) are dropped."""
    kept: list[float] = []
    last = segment.start
    for t in sorted(found):
        p = segment.point(t)
        far = 0.0 < t < 1.0 and v.distance(p, segment.end) > 1e-6
        if far and (v.distance(p, last) > 1e-6 or (not kept and t > 0.5 and v.distance(segment.start, segment.end) <= 1e-6)):
            kept.append(t)
            last = p
    return kept
