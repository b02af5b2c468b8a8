"""Open lines that a straight edge of a loop closes, as the nut line closes the pocket of a truss rod."""

from __future__ import annotations

from collections.abc import Sequence

import shapely
from shapely.geometry import LineString, Polygon

from geometry.curves import Line, Path
from geometry.joining.network import enclosed
from geometry.joining.placing import NUT_WIDTH, Edge, straight_runs
from geometry.tolerance import FLAT, JOIN

LARGEST = 0.25
"""Part of a loop that a pocket on its edge covers at the most (common practice, no source)."""

NARROWEST = 2.0
"""mm of such a pocket: the slots of strings are narrower (common practice, no source)"""

SHORT_OF = 0.5
"""mm that its ends may be off that edge at the least (common practice, no source)"""


def nut_edges(loop: Path) -> list[Edge]:
    """The straight edges of a loop (mm) that are as wide as nuts are."""
    return [edge for edge in straight_runs(loop.segments) if NUT_WIDTH[0] <= edge.width <= NUT_WIDTH[1]]


def lies_on(path: Path, edges: Sequence[Edge]) -> bool:
    """Whether a straight piece of a path (mm) lies along one of the edges."""
    lines = [LineString([edge.start, edge.end]) for edge in edges]
    return any(shapely.dwithin(line, shapely.points([piece.start, piece.end]), JOIN).all()
               for piece in path.segments if isinstance(piece, Line) for line in lines)


def closed_by_edges(chains: Sequence[Path], loops: Sequence[Path], reach: float) -> dict[int, Path]:
    """The numbers of open lines (mm) in one of the loops that an edge of it closes, or a straight line as wide as a nut that is one of the
    open ones, with what they are then: their ends meet the edge to `reach` mm, or to SHORT_OF, or cross it."""
    reach = max(reach, SHORT_OF)
    bent = [i for i, chain in enumerate(chains) if len(chain.segments) > 1 or not isinstance(chain.segments[0], Line)]
    if not bent:
        return {}
    drawn = shapely.STRtree([LineString(chains[i].flatten(FLAT)) for i in bent])
    found: dict[int, Path] = {}
    across = [Edge(chain.start, chain.end) for chain in chains if len(chain.segments) == 1 and NUT_WIDTH[0] <= chain.length <= NUT_WIDTH[1]]
    for edge, within in (*((edge, [loop]) for loop in loops for edge in nut_edges(loop)), *((edge, loops) for edge in across)):
        for k in drawn.query(LineString([edge.start, edge.end]), "dwithin", reach + FLAT).tolist():
            ring = _closed(chains[bent[k]], edge, reach) if bent[k] not in found else None
            if ring is not None and any(_holds(loop, ring) for loop in within):
                found[bent[k]] = ring
    return found


def _closed(chain: Path, edge: Edge, reach: float) -> Path | None:
    """The one ring, no narrower than a pocket is, of an open line and the edge on which it ends."""
    rings = enclosed([*chain.segments, Line(edge.start, edge.end)], reach).rings
    return rings[0] if len(rings) == 1 and NARROWEST * rings[0].length / 2 < abs(rings[0].area) and lies_on(rings[0], [edge]) else None


def _holds(loop: Path, ring: Path) -> bool:
    """Whether a ring lies in a loop that is far larger."""
    return abs(ring.area) <= LARGEST * abs(loop.area) and bool(Polygon(loop.flatten(FLAT)).buffer(10 * FLAT).covers(LineString(ring.flatten(FLAT))))
