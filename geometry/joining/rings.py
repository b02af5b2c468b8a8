"""What is drawn end to end all round, whatever runs over it or branches off it."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.joining.brackets import OFF, brackets
from geometry.joining.chains import SAME, Chain, link
from geometry.joining.ends import same_point
from geometry.tolerance import FLAT

MOST_ASTRAY = 300
"""Lines that lead nowhere beyond which none is left out: no head has so many dimensions (common practice, no source)."""


def end_to_end(segments: Sequence[Segment], reach: float, far_reach: float) -> tuple[list[Chain], set[int], list[Chain]]:
    """Rings of segments (mm) that meet end to end, the numbers of all segments that are done with, and the dimensions among these.

    Done with is what is in a ring or in a dimension drawn from corner to corner of one (`brackets`), and a twin of what is.

    Where more than two ends meet, straight lines that lead nowhere are not counted, as the lines of a dimension that begin at a
    corner; nor is a second drawing of the same piece. What ends within `far_reach` mm of another one, or has another end on it, leads
    somewhere: a head with a gap, or a side drawn past its corner, is no smaller for a line across it. A line that runs on over a piece
    of a ring takes nothing from it. Three lines that go round from one such place and meet nothing else, as the head of an arrow, are a
    ring of their own. Rings do not cross themselves and are wider than about 2 `reach` mm. Sources of the chains are
    numbers of segments, none of which is without length.
    """
    nodes = np.array(same_point([p for s in segments for p in (s.start, s.end)], SAME), dtype=int).reshape(-1, 2)
    first: dict[tuple[int, int], list[int]] = {}
    twins: dict[int, int] = {}
    for i, segment in enumerate(segments):
        alike = first.setdefault((int(nodes[i].min()), int(nodes[i].max())), [])
        twin = next((k for k in alike if type(segments[k]) is type(segment) and v.distance(segments[k].point(0.5), segment.point(0.5)) <= SAME), None)
        if twin is None:
            alike.append(i)
        else:
            twins[i] = twin
    left = [i for i in range(len(segments)) if i not in twins]
    chains, branched = link([(i, segments[i]) for i in left])
    heads = [Chain(Path(chain.path.segments, True), chain.sources) for chain in chains if _is_arrowhead(chain)]
    if heads:
        apart = {i for head in heads for i in head.sources}
        left = [i for i in left if i not in apart]
        chains, branched = link([(i, segments[i]) for i in left])
    while branched and (astray := _astray(segments, nodes, chains, far_reach)):
        left = [i for i in left if i not in astray]
        chains, branched = link([(i, segments[i]) for i in left])
    aside = brackets(segments, nodes, chains) if branched else []
    if aside:
        without = {i for chain in aside for i in chain.sources}
        chains, _ = link([(i, segments[i]) for i in left if i not in without])
    rings = [chain for chain in (*chains, *heads) if chain.path.closed and is_simple(chain.path) and abs(chain.path.area) > reach * chain.path.length]
    taken = {i for chain in (*rings, *aside) for i in chain.sources}
    return rings, taken | {i for i, twin in twins.items() if twin in taken}, aside


def _is_arrowhead(chain: Chain) -> bool:
    """Whether a chain is three straight lines from a place where others meet back to that place."""
    path = chain.path
    return not path.closed and len(path.segments) == 3 and all(isinstance(s, Line) for s in path.segments) and v.distance(path.start, path.end) <= SAME


def _astray(segments: Sequence[Segment], nodes: np.ndarray, chains: Sequence[Chain], far_reach: float) -> set[int]:
    """The numbers of the straight lines among the segments of chains that lead from where others meet to where there is none of them.

    Nor does any begin or end on the way there, but where a line does that it runs along, or one square to it with loose ends, as that
    of a dimension. `nodes`: (n, 2), the numbers of the ends of all segments.
    """
    left = [i for chain in chains for i in chain.sources]
    crowd = np.bincount(nodes[left].ravel(), minlength=1)
    free: set[int] = set()
    found: list[int] = []
    for chain in chains:
        loose = np.count_nonzero(crowd[nodes[list(chain.sources)]] == 1)
        if not loose or not all(isinstance(segments[i], Line) for i in chain.sources):
            continue
        if loose == 2:
            free.update(chain.sources)
        elif len(chain.sources) == 1:
            found += chain.sources
    if not 0 < len(found) <= MOST_ASTRAY:
        return set()
    meet: dict[int, list[int]] = {}
    for i in left:
        for node in nodes[i].tolist():
            meet.setdefault(node, []).append(i)
    out: list[tuple[Segment, set[int]]] = []  # each from where others meet, and the ends that count for nothing: those of lines along it
    for i in found:
        root = int(nodes[i][np.argmax(crowd[nodes[i]])])
        line = _from(root, segments[i], nodes[i])
        along = [k for k in meet[root] if isinstance(segments[k], Line) and _run_together(line, _from(root, segments[k], nodes[k]))]
        out.append((line, {int(node) for k in along for node in nodes[k]}))
    drawn = np.array([shapely.linestrings(Path((segments[i],)).flatten(FLAT)) for i in left])
    tips = shapely.STRtree(drawn).query(shapely.points([line.p1 for line, _ in out]), "dwithin", far_reach)
    ends = shapely.STRtree(shapely.points([p for i in left for p in (segments[i].start, segments[i].end)]))
    on_way = ends.query([shapely.linestrings([line.p0, line.p1]) for line, _ in out], "dwithin", far_reach)
    led: set[int] = set()
    for k, i, at_tip in [*((k, left[j], True) for k, j in tips.T.tolist()), *((k, left[j >> 1], False) for k, j in on_way.T.tolist())]:
        line, along = out[k]
        square = not at_tip and i in free and abs(v.dot(segments[i].tangent(0), line.tangent(0))) <= OFF
        if not square and along.isdisjoint(nodes[i].tolist()):
            led.add(found[k])
    return set(found) - led


def _from(node: int, segment: Segment, nodes: np.ndarray) -> Segment:
    return segment if nodes[0] == node else segment.reversed()


def _run_together(one: Segment, other: Segment) -> bool:
    """Whether one line lies along another that begins where it does."""
    return v.dot(one.tangent(0), other.tangent(0)) > 0 and abs(v.cross(one.tangent(0), other.tangent(0))) <= OFF


def is_simple(path: Path) -> bool:
    """Whether a path stays clear of itself; chords that only seem to cross get a second, closer look."""
    return any(shapely.is_simple(shapely.linestrings(path.flatten(sagitta))) for sagitta in (FLAT, FLAT / 40))
