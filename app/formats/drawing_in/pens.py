"""Lines of one layer told apart by their pens: by colour and kind of line."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely

from app.formats.drawing_in.haul import Strand
from geometry.joining.chains import Chain, bridge, link
from geometry.joining.ends import Groups
from geometry.tolerance import FLAT

MEET = 1.0
"""mm within which the loose end of a line meets one of another pen (common practice, no source)."""
OVERSHOT = 5.0
"""mm within which two loose ends are of lines drawn past the corner in which they meet (common practice, no source)."""
MOST_ENDS = 4000
"""Loose ends beyond which none is looked at for that."""


def pens_apart(strands: Sequence[Strand], far: float) -> list[list[Strand]]:
    """The strands (mm) of a layer by their pens; pens are one where an open line of one ends on an open line of another, or is drawn past it at a
    corner, gaps up to `far` mm closed.

    A grid or a dimension may end on a closed outline, and is none of it. Two open lines that meet are an outline drawn in two colours:
    what one of them encloses by itself is but a part of the head.
    """
    pens: dict[str, list[Strand]] = {}
    for strand in strands:
        pens.setdefault(strand.pen, []).append(strand)
    if len(pens) < 2:
        return list(pens.values())
    loose = [(number, chain.path) for number, members in enumerate(pens.values()) for chain in _chains(members, far) if not chain.path.closed]
    groups = Groups(len(pens))
    if loose:
        of, paths = np.array([number for number, _ in loose]), [path for _, path in loose]
        ends = shapely.points([end for path in paths for end in (path.start, path.end)])
        lines = shapely.STRtree([shapely.linestrings(path.flatten(FLAT)) for path in paths])
        i, j = lines.query(ends, predicate="dwithin", distance=MEET)
        met = np.stack((of[i // 2], of[j]), axis=1)
        long = np.flatnonzero(np.repeat([path.length > 2 * OVERSHOT for path in paths], 2))
        if len(long) <= MOST_ENDS:
            i, j = shapely.STRtree(ends[long]).query(ends[long], predicate="dwithin", distance=OVERSHOT)
            met = np.concatenate((met, np.stack((of[long[i] // 2], of[long[j] // 2]), axis=1)))
        for a, b in np.unique(met[met[:, 0] != met[:, 1]], axis=0).tolist():
            groups.merge(a, b)
    members = list(pens.values())
    return [[strand for k in group for strand in members[k]] for group in groups.sets()]


def _chains(strands: Sequence[Strand], far: float) -> list[Chain]:
    """Open lines linked end to end."""
    chains, _ = link([(i, segment) for i, strand in enumerate(strands) if not strand.path.closed for segment in strand.path.segments])
    return bridge(chains, far)[0]
