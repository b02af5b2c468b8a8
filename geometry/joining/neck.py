"""The head of a whole neck: where the nut line lies in an outline that runs on to the heel, and what is left when it is cut there."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.curves import Line, Path
from geometry.errors import GeometryError
from geometry.joining.chains import meeting
from geometry.joining.placing import Edge, straight_runs
from geometry.lengths import mm
from geometry.saying import say
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

SHAFT = 120.0
"""Least mm that both sides of a neck run straight beside each other: as far as to the body of the smallest ukulele (common practice, no source)."""
STUB = 30.0
"""Least mm of them where a line across tells the nut: as far as a neck is drawn that is broken off behind its head (common practice, no source)."""
BROKEN = 8.0
"""Least mm of them where it is broken off in a zigzag or a curve, as no nut is (common practice, no source)."""
WIDTH = (25.0, 110.0)
"""mm across a neck, from nut to heel (common practice, no source)."""
BOWED = 2.0
"""mm by which the side of a neck may bow, drawn as one long curve (common practice, no source)."""
TAPER = math.radians(6.0)
"""Most between the two sides of a neck, rad (common practice, no source)."""
PARALLEL = 0.3
"""mm by which a neck has to narrow for its narrow end to be the nut's"""
LEAST_HEAD = 50.0
"""mm from the nut line to the tip of the smallest head (common practice, no source)."""
SHORTEST = 30.0
"""mm: no head is shorter (common practice, no source)."""
WIDER = 1.08
"""times the width at the nut that a head is wide at the least (common practice, no source)"""
OFF_LINE = 0.05
"""mm off the line of a side beyond which it has turned"""
NEAR_TURN = 15.0
"""mm from where the sides turn within which a line across is the nut line: the first fret is farther from it (common practice, no source)."""
MOST_CHORDS = 20_000
_MOST_BENT = 5
"""Degree of the curve that a side is taken for at the most"""
MOST_SIDES = 20
"""Straight runs of an outline, the longest, of which two may be the sides of a neck"""
OVERHANG = 15.0
SHORT_OF = 1.0
"""mm that a line across may end beyond the sides, or short of them"""
STEEPEST = math.tan(math.radians(30.0))
"""Slope of a line across that may still be a slanted nut (common practice, no source)."""


class Neck(Struct, frozen=True):
    """Where the head of a neck begins, by proposal."""

    nut: Vec2
    """where the nut line crosses the middle of the neck, mm"""
    to_tip: Vec2
    """unit vector along the middle of the neck"""
    length: float
    """mm from there to the tip, along the neck"""
    slope: float = 0.0
    """radians by which the nut line is turned counter-clockwise from square to the neck"""
    drawn: bool = False
    """whether a line across tells the place; else the sides do, where the first of them turns"""


class _Side(Struct, frozen=True):
    """One side of a neck, straight or slightly bowed, in a frame whose u runs along the neck: w is a polynomial of u - middle."""

    powers: tuple[float, ...]
    """highest first"""
    middle: float
    lo: float
    hi: float
    """the u between which the outline keeps to it, mm"""

    def w(self, u: float) -> float:
        return float(np.polyval(self.powers, u - self.middle))

    def slope(self, u: float) -> float:
        return float(np.polyval(np.polyder(self.powers), u - self.middle))


def neck_of(outline: Path, lines: Sequence[Line] = ()) -> Neck | None:
    """What a closed outline (mm) has of a neck: None where no two sides, straight or slightly bowed, run to a head that is wider than they.

    Of the lines of the drawing the one across the neck that is nearest to where its sides turn is the nut line.
    """
    path = outline.counter_clockwise()
    sides = straight_runs(path.segments)
    found = next(_necks(path, sides, lines, SHAFT), None) or next(_necks(path, straight_runs(_chords(path), BOWED), lines, SHAFT), None)
    return found or next((neck for shaft in (STUB, BROKEN) for neck in _necks(path, sides, lines, shaft) if neck.drawn), None)


def _chords(path: Path) -> list[Line]:
    """The path in short lines; none of one with more than MOST_CHORDS, which takes long and is no side of a neck as it is drawn."""
    points = [(float(x), float(y)) for x, y in path.flatten(FLAT)]
    if len(points) > MOST_CHORDS:
        return []
    return [Line(p, q) for p, q in zip(points, points[1:], strict=False)]


def _necks(path: Path, sides: Sequence[Edge], lines: Sequence[Line], shaft: float) -> Iterator[Neck]:
    """The necks between two of these sides that run beside each other for `shaft` mm at the least, the longest first; none that is
    shorter than STUB and ends in a third of them."""
    longest = sorted(sides, key=lambda side: -side.width)[:MOST_SIDES]
    runs = [(run.start, run.end) for run in longest if run.width >= shaft]
    pairs = [(_beside(one, other), one, other) for n, one in enumerate(runs) for other in runs[n + 1:]]
    points = shapely.get_coordinates(shapely.segmentize(shapely.linestrings(path.flatten(0.01)), 1.0)) if pairs else np.empty((0, 2))
    for overlap, one, other in sorted(pairs, reverse=True):
        if overlap < shaft:
            return
        if overlap < STUB and any(_leads(side.start, side.end, a[1], b[0]) for side in sides for a, b in ((one, other), (other, one))):
            continue
        along = v.unit(v.sub(v.unit(v.sub(one[1], one[0])), v.unit(v.sub(other[1], other[0]))))
        found = _headed(points, along, (one, other), lines) or _headed(points, v.scale(along, -1.0), (other, one), lines)
        if found is not None:
            yield found


def _leads(start: Vec2, end: Vec2, a: Vec2, b: Vec2) -> bool:
    return v.distance(start, a) <= OFF_LINE and v.distance(end, b) <= OFF_LINE


def _beside(one: tuple[Vec2, Vec2], other: tuple[Vec2, Vec2]) -> float:
    """How far (mm) two sides run beside each other with the wood of a neck between them; 0 where they are none."""
    d, e = v.unit(v.sub(one[1], one[0])), v.unit(v.sub(other[0], other[1]))
    if v.dot(d, e) < math.cos(TAPER):
        return 0.0
    along = v.unit(v.add(d, e))
    if not all(WIDTH[0] <= v.dot(v.sub(p, one[0]), v.left(along)) <= 1.5 * WIDTH[1] for p in other):
        return 0.0
    u = [v.dot(v.sub(p, one[0]), along) for p in (*one, *other)]
    return max(0.0, min(u[1], u[2]) - max(u[0], u[3]))


def _headed(points: np.ndarray, along: Vec2, sides: tuple[tuple[Vec2, Vec2], tuple[Vec2, Vec2]], lines: Sequence[Line]) -> Neck | None:
    """The neck with its head in the direction of `along`, the first side on the right; None where it has none there."""
    frame = np.array([along, v.left(along)]).T
    at = points @ frame
    right, left = (_side(at, np.array(side) @ frame) for side in sides)
    if right is None or left is None:
        return None
    turn, heel = min(right.hi, left.hi), max(right.lo, left.lo)
    width, wide = left.w(turn) - right.w(turn), left.w(heel) - right.w(heel)
    head = at[at[:, 0] > turn]
    if not WIDTH[0] <= width <= WIDTH[1] or wide - width < -PARALLEL or not len(head):
        return None
    tip = float(head[:, 0].max())
    if tip - turn < LEAST_HEAD or np.ptp(head[:, 1]) < WIDER * width:
        return None
    ends = np.array([(line.p0, line.p1) for line in lines], dtype=float).reshape(-1, 2, 2) @ frame
    u, slope, drawn = min(_across(ends, right, left, turn), key=lambda found: abs(found[0] - turn), default=(turn, 0.0, False))
    nut = frame @ np.array([u, (right.w(u) + left.w(u)) / 2])
    off = math.atan((right.slope(turn) + left.slope(turn)) / 2)
    return Neck((float(nut[0]), float(nut[1])), v.turned(along, off), tip - u, slope - off if drawn else 0.0, drawn)


def _side(at: np.ndarray, run: np.ndarray) -> _Side | None:
    """The line through the middle part of a run, bent where that is bowed, and how far the outline keeps to it. None where it keeps to
    none, as in a damaged drawing."""
    lo, hi = sorted(run[:, 0].tolist())
    middle = (lo + hi) / 2
    slope, base = np.polyfit(run[:, 0], run[:, 1], 1)
    on = at[(np.abs(at[:, 1] - slope * at[:, 0] - base) <= BOWED + OFF_LINE) & (at[:, 0] >= lo - 1e-6) & (at[:, 0] <= hi + 1e-6)]
    inner = on[np.abs(on[:, 0] - middle) <= 0.4 * (hi - lo)]
    if len(inner) <= _MOST_BENT:
        return None
    for degree in (1, 3, _MOST_BENT):
        powers = np.polyfit(inner[:, 0] - middle, inner[:, 1], degree)
        if np.abs(np.polyval(powers, inner[:, 0] - middle) - inner[:, 1]).max() <= OFF_LINE / 5:
            break
    on = on[np.abs(np.polyval(powers, on[:, 0] - middle) - on[:, 1]) <= OFF_LINE]
    return _Side(tuple(powers.tolist()), middle, float(on[:, 0].min()), float(on[:, 0].max())) if len(on) else None


def _across(ends: np.ndarray, right: _Side, left: _Side, turn: float) -> Iterator[tuple[float, float, bool]]:
    """(u in the middle of the neck, slope, True) of each line from side to side near where they turn; `ends` in (u, w)."""
    near = (np.abs(ends[:, :, 0] - turn) <= NEAR_TURN + WIDTH[1] * STEEPEST).all(axis=1)
    for (u0, w0), (u1, w1) in ends[near].tolist():
        if w0 > w1:
            u0, w0, u1, w1 = u1, w1, u0, w0
        over = right.w(u0) - w0, w1 - left.w(u1)
        if not all(-SHORT_OF <= beyond <= OVERHANG for beyond in over) or abs(u1 - u0) > STEEPEST * (w1 - w0):
            continue
        u = u0 + (u1 - u0) * ((right.w(turn) + left.w(turn)) / 2 - w0) / (w1 - w0)
        if abs(u - turn) <= NEAR_TURN:
            yield u, -math.atan2(u1 - u0, w1 - w0), True


def head_of(outline: Path, neck: Neck, length: float) -> Path:
    """The closed outline (mm) cut straight across `length` mm behind the tip: what lies towards it, counter-clockwise, its last
    segment the nut line from the bass side to the treble side of the neck.

    A shoulder square to the neck that begins there stays with the head. GeometryError where the line does not cross the neck,
    or lies at its tip.
    """
    path = outline.counter_clockwise()
    at = nut_at(neck, length)
    up = v.turned(neck.to_tip, neck.slope)
    across = v.right(up)
    found = [(v.dot(v.sub(point, at), across), along) for point, along in _crossed(path, at, up)]
    treble = min((hit for hit in found if hit[0] > 0), default=None)
    bass = max((hit for hit in found if hit[0] < 0), default=None)
    if treble is None or bass is None or not length > 0:
        raise GeometryError(say("A nut line {length} from the tip does not cross the neck.", length=mm(length)))
    if length < SHORTEST:
        raise GeometryError(say("A nut line {length} from the tip leaves no headstock: that is {least} long at the least.",
                                length=mm(length), least=mm(SHORTEST)))
    return meeting(path.part(treble[1], bass[1]).segments, closed=True)


def nut_at(neck: Neck, length: float) -> Vec2:
    """Where a nut line `length` mm behind the tip crosses the middle of the neck."""
    return v.along(neck.nut, neck.to_tip, neck.length - length)


def beyond(path: Path, neck: Neck, length: float) -> bool:
    """Whether all of a path lies behind such a nut line."""
    up = v.turned(neck.to_tip, neck.slope)
    return bool(((path.flatten(0.05) - np.array(nut_at(neck, length))) @ np.array(up)).max() <= OFF_LINE)


def _crossed(path: Path, at: Vec2, up: Vec2) -> Iterator[tuple[Vec2, float]]:
    """(point, mm from the path's start) wherever it crosses the line through `at` square to `up`."""
    for segment, end, size in zip(path.segments, path.ends, np.diff([0.0, *path.ends]), strict=True):
        points = np.array(segment.flatten(0.05))
        above = (points - np.array(at)) @ np.array(up) >= -TOUCH
        for k in np.flatnonzero(above[1:] != above[:-1]).tolist():
            lo, hi = k / (len(points) - 1), (k + 1) / (len(points) - 1)
            for _ in range(60):
                t = (lo + hi) / 2
                if (v.dot(v.sub(segment.point(t), at), up) >= -TOUCH) == above[k]:
                    lo = t
                else:
                    hi = t
            yield segment.point(hi), end - float(size) + segment.length_to(hi)
