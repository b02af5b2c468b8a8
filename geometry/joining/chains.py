"""Loose segments linked end to end, without touching what branches."""

from __future__ import annotations

from collections.abc import Sequence

import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.joining.ends import near_pairs, same_point
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

SAME = 1e-6
"""Ends this near (mm) are one node; anything wider is a gap and gets a bridge."""

MOST_LED = 4000
"""Loose ends beyond which none is led to a corner: no headstock has so many (common practice, no source)."""


class Chain(Struct, frozen=True):
    """A path and the numbers of the input paths that it was made from."""

    path: Path
    sources: tuple[int, ...]


class Gap(Struct, frozen=True):
    """A place (mm) where two loose ends are `size` mm apart."""

    place: Vec2
    size: float


def meeting(segments: Sequence[Segment], closed: bool) -> Path:
    """A path of segments that meet to within a gap: every gap over 1e-6 mm gets a short straight bridge.

    Averaging the two ends instead would move the drawn curves.
    """
    out: list[Segment] = []
    for segment in segments:
        if out and v.distance(out[-1].end, segment.start) > TOUCH:
            out.append(Line(out[-1].end, segment.start))
        out.append(segment)
    if closed and v.distance(out[-1].end, out[0].start) > TOUCH:
        out.append(Line(out[-1].end, out[0].start))
    return Path(tuple(out), closed)


def running_on(segments: Sequence[Segment], closed: bool) -> list[Segment]:
    """The segments, straight ones that a gap parts made longer up to where they meet: a corner that was drawn short keeps its place.

    Neither is made longer by more than the gap is wide; other gaps stay.
    """
    out = list(segments)
    for i in range(len(out) if closed else len(out) - 1):
        k = (i + 1) % len(out)
        one, other = out[i], out[k]
        corner = _corner(one, other) if isinstance(one, Line) and isinstance(other, Line) and k != i else None
        if corner is not None:
            out[i], out[k] = Line(one.p0, corner), Line(corner, other.p1)
    return out


def _corner(one: Line, other: Line) -> Vec2 | None:
    """Where two lines meet beyond the gap between the end of one and the start of the other; None where they do not, or too far away."""
    apart = v.sub(other.p0, one.p1)
    gap = v.norm(apart)
    if gap <= TOUCH:
        return None
    ahead, back = v.unit(v.sub(one.p1, one.p0)), v.unit(v.sub(other.p0, other.p1))
    skew = v.cross(ahead, back)
    if abs(skew) < 1e-9:
        return None
    far = v.cross(apart, back) / skew, v.cross(apart, ahead) / skew
    return v.along(one.p1, ahead, far[0]) if all(-TOUCH <= by <= gap for by in far) else None


def link(pieces: Sequence[tuple[int, Segment]]) -> tuple[list[Chain], bool]:
    """Chains through every node where exactly two ends meet, and whether some node has more.

    A chain stops at loose ends and at branches. Deterministic: chains start
    at the first piece not yet used, walked from its chain's first end.
    """
    nodes = same_point([p for _, s in pieces for p in (s.start, s.end)], SAME)
    at: dict[int, list[int]] = {}
    for end, node in enumerate(nodes):
        at.setdefault(node, []).append(end)

    def next_end(end: int) -> int | None:
        """The end that continues past this one, or None at a loose end or a branch."""
        here = at[nodes[end]]
        if len(here) != 2:
            return None
        return here[1] if here[0] == end else here[0]

    used = [False] * len(pieces)
    chains: list[Chain] = []
    for first in range(len(pieces)):
        if used[first]:
            continue
        entry = 2 * first
        while True:  # back up to where the chain begins
            before = next_end(entry)
            if before is None or before ^ 1 == 2 * first:
                break
            entry = before ^ 1
            if entry >> 1 == first:
                break
        start, walk, sources = entry, [], []
        while True:
            piece, backwards = entry >> 1, entry & 1
            used[piece] = True
            walk.append(pieces[piece][1].reversed() if backwards else pieces[piece][1])
            sources.append(pieces[piece][0])
            following = next_end(entry ^ 1)
            if following is None or following == start or used[following >> 1]:
                break
            entry = following
        closed = following == start
        chains.append(Chain(meeting(walk, closed), tuple(dict.fromkeys(sources))))
    return chains, any(len(ends) > 2 for ends in at.values())


def bridge(chains: Sequence[Chain], reach: float) -> tuple[list[Chain], list[Gap]]:
    """Open chains joined across gaps of at most `reach` mm, nearest ends first, straight ones by `running_on`; and the gaps bridged.

    Only ends where nothing else ends are joined. A chain is not closed onto
    itself when it is shorter than three times its own gap.
    """
    closed = [c for c in chains if c.path.closed]
    loose = [c for c in chains if not c.path.closed]
    points = [p for c in loose for p in (c.path.start, c.path.end)]
    node = same_point(points, SAME)
    crowd: dict[int, int] = {}
    for n in node:
        crowd[n] = crowd.get(n, 0) + 1
    partner: dict[int, int] = {}
    gaps: list[Gap] = []
    free = [i for i in range(len(points)) if crowd[node[i]] == 1]
    for size, a, b in near_pairs([points[i] for i in free], reach):
        i, j = free[a], free[b]
        if i in partner or j in partner or (i >> 1 == j >> 1 and loose[i >> 1].path.length < 3 * size):
            continue
        partner[i], partner[j] = j, i
        gaps.append(Gap(v.middle(points[i], points[j]), size))
    done = [False] * len(loose)
    for first in range(len(loose)):
        if done[first]:
            continue
        entry = 2 * first
        while entry in partner and (partner[entry] ^ 1) >> 1 != first:
            entry = partner[entry] ^ 1
        start, walk, sources = entry, [], []
        while True:
            i = entry >> 1
            done[i] = True
            path = loose[i].path.reversed() if entry & 1 else loose[i].path
            walk.extend(path.segments)
            sources.extend(loose[i].sources)
            following = partner.get(entry ^ 1)
            if following is None or following == start:
                break
            entry = following
        closed.append(Chain(meeting(running_on(walk, following == start), following == start), tuple(dict.fromkeys(sources))))
    return closed, gaps


def onto_corners(chains: Sequence[Chain], reach: float) -> tuple[list[Chain], list[Gap]]:
    """The chains, loose ends led straight on to the nearest end of a piece of another chain at most `reach` mm away, and these gaps.

    What such an end is led to is a branch. All as they are where more than MOST_LED ends are loose.
    """
    ends = [(k, p) for k, chain in enumerate(chains) if not chain.path.closed for p in (chain.path.start, chain.path.end)]
    if not 0 < len(ends) <= MOST_LED:
        return list(chains), []
    corners = [(k, p) for k, chain in enumerate(chains) for s in chain.path.segments for p in (s.start, s.end)]
    tree = shapely.STRtree(shapely.points([p for _, p in corners]))
    led: list[tuple[int, Segment]] = []
    for k, end in ends:
        others = [corners[n][1] for n in tree.query(shapely.Point(end), "dwithin", reach).tolist() if corners[n][0] != k]
        corner = min(others, key=lambda p, end=end: v.distance(p, end), default=end)
        if v.distance(end, corner) > SAME:
            led.append((k, Line(end, corner)))
    if not led:
        return list(chains), []
    parted, _ = link([*((k, s) for k, chain in enumerate(chains) for s in chain.path.segments), *led])
    return ([Chain(chain.path, tuple(dict.fromkeys(n for k in chain.sources for n in chains[k].sources))) for chain in parted],
            [Gap(line.point(0.5), line.length()) for _, line in led])
