"""The small loops of a line that was set off, taken out of it.

Where a corner closes, the pieces beside it run on beyond the place where they
cross. The loop behind that place turns clockwise on a line that shrank and
counter-clockwise on one that grew; it is cut off at the crossing, the shortest
first. A loop that turns the other way is no such rest: the line is too narrow
there, and whoever asked must say so.
"""

from __future__ import annotations

import math

import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves.line import Line
from geometry.curves.path import Segment
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

_FINE = 0.0002
"""mm by which a piece is flattened to look for crossings."""

Crossing = tuple[int, float, int, float, Vec2]
"""Two pieces with their parameters, the earlier one first, and the place."""


def joined(chains: list[list[Segment]], by: float) -> list[Segment]:
    """The chains, set off by `by` mm, as one closed run of pieces, straight lines laid over what is open between them.

    Where a line nearly goes straight on, the ends run past one another by so little that they are led to their middle:
    sideways that is less than can be seen in the flattening.
    """
    out = [list(chain) for chain in chains]
    for i, chain in enumerate(out):
        following = out[(i + 1) % len(out)]
        end, start = chain[-1].end, following[0].start
        gap = v.distance(end, start)
        if gap <= 10 * TOUCH:
            continue
        if gap * gap <= 2 * abs(by) * _FINE and min(chain[-1].length(), following[0].length()) > 4 * gap:
            middle = v.middle(end, start)
            chain[-1] = replace(chain[-1], p1=middle)
            following[0] = replace(following[0], p0=middle)
        else:
            chain.append(Line(end, start))
    return [one for chain in out for one in chain]


def unknotted(pieces: list[Segment], by: float) -> list[Segment]:
    """A counter-clockwise closed run of pieces set off by `by` mm without the loops of its corners; others are left."""
    while True:
        for crossing in sorted(_crossings(pieces), key=lambda one: _short(pieces, one)):
            without = _cut(pieces, crossing, by)
            if without is not None:
                pieces = without
                break
        else:
            return pieces


def _crossings(pieces: list[Segment]) -> list[Crossing]:
    flats = [shapely.LineString(one.flatten(_FINE)) for one in pieces]
    found = []
    for i, j in shapely.STRtree(flats).query(flats, predicate="intersects").T:
        if i < j:
            for place in shapely.get_coordinates(shapely.intersection(flats[i], flats[j])):
                crossing = _settled(pieces, int(i), int(j), (float(place[0]), float(place[1])))
                if crossing is not None:
                    found.append(crossing)
    return found


def _settled(pieces: list[Segment], i: int, j: int, p: Vec2) -> Crossing | None:
    """The crossing near `p` to the last bit; None where the two only follow one another there."""
    a, b = pieces[i], pieces[j]
    for end, start, next_to in ((a.end, b.start, j == i + 1), (b.end, a.start, (j + 1) % len(pieces) == i)):
        if next_to and v.distance(p, end) <= _FINE and v.distance(p, start) <= _FINE:
            return None
    s, t = a.nearest(p), b.nearest(p)
    for _ in range(4):
        one, two, ds, dt = a.point(s), b.point(t), a.tangent(s), b.tangent(t)
        across = v.cross(ds, dt)
        if abs(across) < 1e-9:
            break
        p = v.along(one, ds, v.cross(v.sub(two, one), dt) / across)
        s, t = a.nearest(p), b.nearest(p)
    return i, s, j, t, p


def _short(pieces: list[Segment], crossing: Crossing) -> float:
    i, s, j, t, _ = crossing
    inner = pieces[j].length_to(t) - pieces[i].length_to(s) + sum(one.length() for one in pieces[i:j])
    return min(inner, sum(one.length() for one in pieces) - inner)


def _cut(pieces: list[Segment], crossing: Crossing, by: float) -> list[Segment] | None:
    """The run without the shorter of the two loops that meet there; None where that one is no rest of a corner."""
    i, s, j, t, p = crossing
    loops = [[*_after(pieces[i], s, p), *pieces[i + 1:j], *_before(pieces[j], t, p)],
             [*pieces[:i], *_before(pieces[i], s, p), *_after(pieces[j], t, p), *pieces[j + 1:]]]
    loops.sort(key=lambda loop: sum(one.length() for one in loop))
    lost, kept = loops
    if sum(one.area_term() for one in lost) * math.copysign(1, by) < -TOUCH or len(kept) < 2:
        return None
    return kept


def _before(edge: Segment, t: float, p: Vec2) -> list[Segment]:
    if v.distance(edge.start, p) <= TOUCH:
        return []
    return [replace(edge if t >= 1 else edge.split(max(t, 1e-9))[0], p1=p)]


def _after(edge: Segment, t: float, p: Vec2) -> list[Segment]:
    if v.distance(edge.end, p) <= TOUCH:
        return []
    return [replace(edge if t <= 0 else edge.split(min(t, 1 - 1e-9))[1], p0=p)]
