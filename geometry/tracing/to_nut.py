"""The straight end of a traced head brought onto the nut line."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.curves import Arc, Line, Path
from geometry.vectors import Vec2

NEAR = 0.8
"""mm from the nut line within which a straight edge is meant to lie on it."""


def to_nut(path: Path) -> tuple[Path, float]:
    """The path with its straight edge by the nut line laid onto it (y = 0), and how far its ends were moved (mm).

    The path as it is, and 0, when no straight edge lies that near, or an arc would have to be bent.
    """
    edges = list(path.segments)
    for i, edge in enumerate(edges):
        before, after = (i - 1) % len(edges), (i + 1) % len(edges)
        far = max(abs(edge.start[1]), abs(edge.end[1]))
        if not isinstance(edge, Line) or far > NEAR or abs(edge.end[0] - edge.start[0]) < 10.0:
            continue
        if isinstance(edges[before], Arc) or isinstance(edges[after], Arc):
            continue
        a: Vec2 = (edge.start[0], 0.0)
        b: Vec2 = (edge.end[0], 0.0)
        edges[i] = Line(a, b)
        edges[before] = replace(edges[before], p1=a)
        edges[after] = replace(edges[after], p0=b)
        return Path(tuple(edges), closed=True), far
    return path, 0.0
