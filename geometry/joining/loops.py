"""From whatever a drawing holds to closed loops, and what stays open."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely
from msgspec import Struct, field
from shapely.geometry import Polygon

from geometry import vectors as v
from geometry.curves import Line, Path
from geometry.joining.chains import SAME, Chain, Gap, bridge, link, meeting, onto_corners
from geometry.joining.crossings import HOPELESS, hopeless
from geometry.joining.duplicates import without_duplicates
from geometry.joining.ends import Groups, same_point
from geometry.joining.nearness import near_lines
from geometry.joining.network import enclosed
from geometry.joining.on_edge import closed_by_edges
from geometry.joining.rings import end_to_end, is_simple
from geometry.tolerance import FLAT, JOIN
from geometry.vectors import Vec2

FAR_REACH = 0.1
"""Gaps up to this (mm) are bridged too, but named: wider than JOIN, smaller than a maker can cut."""

MOST_LOOSE = 2000
"""Loose ends up to which their gaps are measured."""


class Joined(Struct, frozen=True):
    """What became of the paths of a drawing (mm)."""

    loops: tuple[Chain, ...] = ()
    """closed, counter-clockwise"""
    open: tuple[Chain, ...] = ()
    bridged: tuple[Gap, ...] = ()
    """gaps closed by running straight pieces on until they meet, or by a short straight piece"""
    gaps: tuple[Gap, ...] = ()
    """loose ends that stayed open, each with the distance to the nearest other loose end"""
    duplicates: int = 0
    """segments dropped because they were drawn twice"""
    crossed: tuple[Vec2, ...] = ()
    """places where a closed line crosses itself; it was taken apart there"""
    tangles: int = 0
    """groups of touching or crossing lines of which the outer border was taken"""
    dropped_lines: int = 0
    """loose lines that enclose nothing, in groups where others do"""
    by_edge: int = 0
    """loose lines that were closed by a straight edge, as wide as a nut, of a loop round them"""
    brackets: tuple[Path, ...] = ()
    """dimensions from corner to corner of a loop, which are no part of it"""
    inexact: int = 0
    """tangles whose border is made of chords"""


class _Work(Struct):
    loops: list[Chain] = field(default_factory=list)
    open: list[Chain] = field(default_factory=list)
    bridged: list[Gap] = field(default_factory=list)
    crossed: list[Vec2] = field(default_factory=list)
    duplicates: int = 0
    tangles: int = 0
    dropped_lines: int = 0
    by_edge: int = 0
    brackets: list[Path] = field(default_factory=list)
    inexact: int = 0


def join(paths: Sequence[Path], reach: float = JOIN, far_reach: float = FAR_REACH) -> Joined:
    """Loops from paths, open or closed, in any order and direction.

    Closed paths that do not cross themselves stay as they are. Open ones are
    linked where two ends meet, then across gaps: up to `far_reach` mm between
    two loose ends or from one to a corner, up to `reach` mm from a loose end to the side of a segment.
    What touches or crosses is worked out as a whole and its outer border taken.
    Everything drawn twice counts once. Curves stay exact.
    """
    work = _Work()
    loose: list[Chain] = []
    for number, path in enumerate(paths):
        closed = path if path.closed else _closing(path)
        if closed is not None:
            _take_closed(Chain(closed, (number,)), work, reach)
        else:
            loose.append(Chain(path, (number,)))
    if loose:
        _take_loose(loose, work, reach, max(reach, far_reach))
    loops = _distinct([Chain(c.path.counter_clockwise(), c.sources) for c in work.loops], work)
    return Joined(tuple(loops), tuple(work.open), tuple(work.bridged), tuple(_gaps(work.open)), work.duplicates,
                  tuple(work.crossed), work.tangles, work.dropped_lines, work.by_edge, tuple(work.brackets), work.inexact)


def _closing(path: Path) -> Path | None:
    """The open path closed, when its ends are one point and it has an inside."""
    if v.distance(path.start, path.end) > SAME or path.length < 100 * SAME:
        return None
    return meeting(path.segments, closed=True)


def _take_closed(chain: Chain, work: _Work, reach: float) -> None:
    """A closed path as a loop, or as the loops that it falls into where it crosses itself."""
    if is_simple(chain.path):
        if abs(chain.path.area) > 0:
            work.loops.append(chain)
        return
    found = enclosed(chain.path.segments, reach)
    least = 1e-4 * max((abs(ring.area) for ring in found.rings), default=0.0)
    rings = [ring for ring in found.rings if abs(ring.area) >= least]
    if len(rings) != 1 or abs(abs(rings[0].area) - abs(chain.path.area)) > 1e-9 * abs(rings[0].area):
        work.crossed.append(_where_crossed(chain.path))
    work.inexact += not found.exact
    work.loops.extend(Chain(ring, chain.sources) for ring in rings)


def _where_crossed(path: Path) -> Vec2:
    """A point where a path crosses itself, as the polygon library names it; else its start."""
    reason = shapely.is_valid_reason(Polygon(path.flatten(FLAT)))
    if "[" not in reason:
        return path.start
    x, y = reason[reason.index("[") + 1:reason.index("]")].split()[:2]
    return (float(x), float(y))


def _take_loose(loose: Sequence[Chain], work: _Work, reach: float, far_reach: float) -> None:
    pieces = [(chain.sources[0], segment) for chain in loose for segment in chain.path.segments]
    segments = [segment for _, segment in pieces]
    rings, taken, aside = end_to_end(segments, reach, far_reach)
    work.brackets.extend(chain.path for chain in aside)
    work.loops.extend(Chain(ring.path, tuple(dict.fromkeys(pieces[i][0] for i in ring.sources))) for ring in rings)
    kept = [(i, segment) for i, segment in without_duplicates(segments, _sameness(loose, reach)) if i not in taken]
    work.duplicates += len(pieces) - len({i for i, _ in kept} | {i for chain in (*rings, *aside) for i in chain.sources})
    chains, _ = link([(pieces[i][0], segment) for i, segment in kept])
    chains, gaps = bridge(chains, far_reach)
    chains, others = onto_corners(chains, far_reach)
    work.bridged.extend([*gaps, *others])
    rest = []
    for chain in chains:
        if chain.path.closed:
            _take_closed(chain, work, reach)
        else:
            rest.append(chain)
    if rest:
        _take_tangles(rest, work, reach)


def _sameness(chains: Sequence[Chain], reach: float) -> float:
    """How near (mm) two pieces must run to be drawn twice: less in a small drawing than in a large one."""
    boxes = np.array([c.path.box for c in chains])
    extent = max(boxes[:, 2].max() - boxes[:, 0].min(), boxes[:, 3].max() - boxes[:, 1].min())
    return min(reach, max(1e-5 * extent, SAME))


def _take_tangles(rest: Sequence[Chain], work: _Work, reach: float) -> None:
    """Open chains in groups that touch or cross, together with the loops that they touch."""
    loops = list(work.loops)
    lines = np.array([shapely.linestrings(c.path.flatten(FLAT)) for c in [*rest, *loops]])
    groups = Groups(len(lines))
    for number, (i, j) in enumerate(near_lines(lines, len(rest), reach)):
        if number > HOPELESS:
            raise hopeless()
        groups.merge(i, j)
    for members in groups.sets():
        chains = [rest[i] for i in members if i < len(rest)]
        if not chains:
            continue
        if len(members) == 1 and shapely.is_simple(lines[members[0]]):
            work.open.append(chains[0])
            continue
        around = [loops[i - len(rest)] for i in members if i >= len(rest)]
        _take_tangle(chains, around, work, reach)


def _take_tangle(chains: Sequence[Chain], around: Sequence[Chain], work: _Work, reach: float) -> None:
    """The outer border of a group; loops that it touches stay as they are, and what an edge of theirs closes is a loop too."""
    segments = [s for c in [*chains, *around] for s in c.path.segments]
    if len(segments) < 3 and all(isinstance(s, Line) for s in segments):
        work.open.extend(chains)  # two straight lines enclose nothing
        return
    inside = [Polygon(c.path.flatten(FLAT)).buffer(10 * FLAT) for c in around if not any(_in_mouth(c.path, chain.path, reach) for chain in chains)]
    for polygon in inside:
        shapely.prepare(polygon)
    found = enclosed(segments, reach, inside)
    sources = tuple(dict.fromkeys(n for c in chains for n in c.sources))
    closed = closed_by_edges([c.path for c in chains], [*(c.path for c in around), *found.rings], reach)
    work.loops.extend(Chain(ring, chains[i].sources) for i, ring in closed.items())
    work.by_edge += len(closed)
    chains = [c for i, c in enumerate(chains) if i not in closed]
    if found.rings:
        work.loops.extend(Chain(ring, sources) for ring in found.rings)
        work.tangles += 1
        work.inexact += not found.exact
        work.dropped_lines += _apart(chains, found.rings)
    elif around:
        work.dropped_lines += len(chains)
    else:
        work.open.extend(chains)


def _in_mouth(loop: Path, line: Path, reach: float) -> bool:
    """Whether a loop lies within an open line and closes it from end to end, as a nut that is drawn on its head does."""
    points = line.flatten(FLAT)
    border = shapely.linestrings(loop.flatten(FLAT))
    ends = shapely.points([line.start, line.end])
    if len(points) < 4 or not shapely.dwithin(border, [*ends, shapely.Point(v.middle(line.start, line.end))], reach).all():
        return False
    return bool(shapely.make_valid(Polygon(points)).buffer(10 * FLAT).covers(border))


def _apart(chains: Sequence[Chain], rings: Sequence[Path]) -> int:
    """How many chains lie on none of the rings."""
    borders = shapely.union_all([shapely.linestrings(ring.flatten(FLAT)) for ring in rings])
    shapely.prepare(borders)
    middles = shapely.points([c.path.point_at(c.path.length / 2) for c in chains])
    return int((~shapely.dwithin(borders, middles, 5 * FLAT)).sum())


_CELL = max(SAME, 4 * FLAT)
"""Side in mm of the cells in which the corners of loops are looked for: twins lie in one or in two next to each other."""


def _distinct(loops: Sequence[Chain], work: _Work) -> list[Chain]:
    """The loops without those drawn twice, the same border to within a chord's sagitta: of two that of fewer pieces is kept."""
    areas = [chain.path.area for chain in loops]
    kept: dict[tuple[int, int], list[int]] = {}
    chosen: list[int] = []
    plainer: dict[int, int] = {}
    for i in sorted(range(len(loops)), key=lambda i: -areas[i]):
        one = loops[i].path
        box = one.box
        near = max(SAME, min(4 * FLAT, 1e-4 * max(box[2] - box[0], box[3] - box[1])))
        x, y = math.floor(box[0] / _CELL), math.floor(box[1] / _CELL)
        around = (j for dx in (-1, 0, 1) for dy in (-1, 0, 1) for j in kept.get((x + dx, y + dy), ()))
        twin = next((j for j in around if areas[j] - areas[i] <= 1e-3 * areas[i] + 1e-9 and _twins(one, loops[j].path, near)), None)
        if twin is None:
            kept.setdefault((x, y), []).append(i)
            chosen.append(i)
            continue
        work.duplicates += 1
        if len(one.segments) < len(loops[plainer.get(twin, twin)].path.segments):
            plainer[twin] = i
    return [loops[i] for i in sorted(plainer.get(i, i) for i in chosen)]


def _twins(one: Path, other: Path, near: float) -> bool:
    """Whether two loops keep within `near` mm of each other all round."""
    return max(abs(a - b) for a, b in zip(one.box, other.box, strict=True)) <= near and bool(shapely.hausdorff_distance(
        shapely.linestrings(one.flatten(near / 4)), shapely.linestrings(other.flatten(near / 4))) <= near)


def _gaps(chains: Sequence[Chain]) -> list[Gap]:
    """Each loose end with the nearest other one, nearest first; two that are nearest to each other count once.

    None at all for more than MOST_LOOSE ends: such a drawing has no gap that a maker would look for.
    """
    ends = [p for c in chains for p in (c.path.start, c.path.end)]
    nodes = np.array(same_point(ends, SAME)) if ends else np.zeros(0, dtype=int)
    loose = np.flatnonzero(np.bincount(nodes)[nodes] == 1) if ends else nodes
    if not 2 <= len(loose) <= MOST_LOOSE:
        return []
    points = shapely.points([ends[i] for i in loose])
    pairs, sizes = shapely.STRtree(points).query_nearest(points, exclusive=True, all_matches=False, return_distance=True)
    found: dict[tuple[int, int], Gap] = {}
    for i, j, size in zip(*pairs.tolist(), sizes.tolist(), strict=True):
        found[min(i, j), max(i, j)] = Gap(v.middle(ends[loose[i]], ends[loose[j]]), size)
    return sorted(found.values(), key=lambda gap: gap.size)
