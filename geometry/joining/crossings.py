"""Where segments cross or touch one another: found on chords, settled on the exact curves."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Arc, Line, Segment
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT
from geometry.vectors import Vec2

MEET = 1e-7
"""Two curves meet when Newton's method brings them this near (mm)."""

MOST_PAIRS = 8_000
"""Crossing chords beyond which a drawing is too tangled to be worked out exactly in about a second."""
HOPELESS = 25_000
"""Crossing chords beyond which it is not worked out at all: no headstock has so many."""
_AT_ONCE = 500
"""Chords whose neighbours are asked for at a time, so that a dense tangle is given up before it fills the memory."""


class TooTangled(Exception):
    """More crossings than MOST_PAIRS: the caller falls back on chords alone."""


def hopeless() -> GeometryError:
    """What to say of a drawing with more than HOPELESS crossings."""
    return GeometryError(say("The lines of the drawing touch or cross one another in more than {most:,} places: draw the outline as "
                             "one closed line, or export it alone.", most=HOPELESS))


def crossings(segments: Sequence[Segment]) -> list[set[float]]:
    """For each segment the parameters (0..1) where another segment or itself meets it.

    Ends may be among them. A meeting at an end of one segment counts for the
    other. Stretches that run together are not meetings: drop duplicates first.
    Touching without crossing may be missed. Raises TooTangled, and GeometryError for more than HOPELESS crossings.
    """
    owner, lo, hi, ends = _chords(segments)
    pairs = _pairs(ends)
    if pairs.shape[1] > MOST_PAIRS:
        raise TooTangled
    found: list[set[float]] = [set() for _ in segments]
    for i, j in pairs.T.tolist():
        guess = _guess(ends[i].tolist(), ends[j].tolist())
        if guess is None:
            continue
        a, b = int(owner[i]), int(owner[j])
        hit = _settle(segments[a], float(lo[i] + (hi[i] - lo[i]) * guess[0]),
                      segments[b], float(lo[j] + (hi[j] - lo[j]) * guess[1]))
        if hit is not None and (a != b or abs(hit[0] - hit[1]) > 1e-6):
            found[a].add(hit[0])
            found[b].add(hit[1])
    return found


def inner(segment: Segment, found: set[float], apart: float) -> list[float]:
    """The parameters in ascending order, without those within `apart` mm of an end or of the one before."""
    kept: list[float] = []
    before = 0.0
    for t in sorted(found):
        p = segment.point(t)
        # A loop comes back to the same point: then the curve between has left it.
        stayed = max(v.distance(p, segment.point(before)), v.distance(p, segment.point((t + before) / 2))) <= apart
        at_end = max(v.distance(p, segment.end), v.distance(p, segment.point((t + 1) / 2))) <= apart
        if 0.0 < t < 1.0 and not stayed and not at_end:
            kept.append(t)
            before = t
    return kept


def speed(segment: Segment, t: float) -> Vec2:
    """First derivative by t, mm."""
    if isinstance(segment, Line):
        return v.sub(segment.p1, segment.p0)
    if isinstance(segment, Arc):
        return v.scale(segment.tangent(t), segment.length())
    return segment.derivative(t)


def _chords(segments: Sequence[Segment]) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """All chords: their segment's number, first and last parameter, and ends (n, 2, 2)."""
    owner, lo, hi, ends = [], [], [], []
    for number, segment in enumerate(segments):
        points = segment.flatten(FLAT)
        n = len(points) - 1  # every kind of segment is flattened in even steps of t
        for k in range(n):
            owner.append(number)
            lo.append(k / n)
            hi.append((k + 1) / n)
            ends.append((points[k], points[k + 1]))
    return np.array(owner), np.array(lo), np.array(hi), np.array(ends, dtype=float)


def _pairs(ends: np.ndarray) -> np.ndarray:
    """Numbers (2, m) of the chords (n, 2, 2) that meet, each pair once, without those that share an end."""
    lines = shapely.linestrings(ends)
    tree = shapely.STRtree(lines)
    found, many = [], 0
    for first in range(0, len(lines), _AT_ONCE):
        pairs = tree.query(lines[first:first + _AT_ONCE], predicate="intersects")
        pairs[0] += first
        pairs = pairs[:, pairs[0] < pairs[1]]
        one, two = ends[pairs[0]], ends[pairs[1]]
        share_an_end = np.zeros(pairs.shape[1], dtype=bool)
        for a in (0, 1):
            for b in (0, 1):
                share_an_end |= (one[:, a] == two[:, b]).all(axis=1)
        found.append(pairs[:, ~share_an_end])
        many += found[-1].shape[1]
        if many > HOPELESS:
            raise hopeless()
    return np.concatenate(found, axis=1)


def _guess(one: list[Vec2], two: list[Vec2]) -> tuple[float, float] | None:
    """Where two chords meet, as parts of each; None for chords that run together."""
    (a, b), (c, d) = one, two
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
