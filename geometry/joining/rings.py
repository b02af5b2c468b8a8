"""What is drawn end to end all round, whatever runs over it or branches off it."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.joining.chains import SAME, Chain, link
from geometry.joining.ends import same_point
from geometry.tolerance import FLAT


def end_to_end(segments: Sequence[Segment], reach: float) -> tuple[list[Chain], set[int]]:
    """Rings of segments (mm) that meet end to end, and the numbers of all segments that are in one or a twin of one that is.

    Where more than two ends meet, straight lines that lead nowhere are not counted, as the lines of a dimension that begin at a
    corner; nor is a second drawing of the same piece. A line that runs on over a piece of a ring takes nothing from it. Rings do
    not cross themselves and are wider than about 2 `reach` mm. Sources of the chains are numbers of segments.
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
    at = np.setdiff1d(np.arange(len(segments)), list(twins))
    straight = np.array([isinstance(segments[i], Line) for i in at], dtype=bool)
    while True:
        crowd = np.bincount(nodes[at].ravel(), minlength=1)
        leads = ~straight | (crowd[nodes[at]] > 1).all(axis=1)
        if leads.all():
            break
        at, straight = at[leads], straight[leads]
    chains, _ = link([(i, segments[i]) for i in at.tolist()])
    rings = [chain for chain in chains if chain.path.closed and is_simple(chain.path) and abs(chain.path.area) > reach * chain.path.length]
    taken = {i for ring in rings for i in ring.sources}
    return rings, taken | {i for i, twin in twins.items() if twin in taken}


def is_simple(path: Path) -> bool:
    """Whether a path stays clear of itself; chords that only seem to cross get a second, closer look."""
    return any(shapely.is_simple(shapely.linestrings(path.flatten(sagitta))) for sagitta in (FLAT, FLAT / 40))
