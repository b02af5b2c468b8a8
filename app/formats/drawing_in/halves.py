"""A head that was drawn as one closed half and its mirror image."""

from __future__ import annotations

import math
from collections.abc import Sequence

from app.formats.drawing_in.units import HEADSTOCK
from geometry.curves import Line, Path
from geometry.joining.network import enclosed
from geometry.tolerance import JOIN

ALIKE = 1e-3
"""Part by which the areas of two halves differ at the most"""
MEET = 0.5
"""Least part of a half's longer side that is the straight edge in which they meet"""


def halves_joined(loops: Sequence[tuple[Path, str]]) -> tuple[list[tuple[Path, str]], int]:
    """Closed paths (mm) with their layers, halves that meet in one straight edge as one, and how many heads were put together so.

    Halves are as long as a head at the least, of one size, and no rectangles: two boards side by side stay two.
    """
    found = [(edge, *loop) for loop in loops if (edge := _edge(loop[0])) is not None]
    kept, heads = list(loops), 0
    while found:
        edge, path, layer = found.pop()
        other = next((k for k, (line, half, _) in enumerate(found) if _meet(edge, line) and abs(abs(half.area) - abs(path.area)) <= ALIKE * abs(path.area)), None)
        if other is None:
            continue
        _, half, beside = found.pop(other)
        rings = enclosed([*path.segments, *half.segments], JOIN).rings
        if len(rings) == 1 and abs(rings[0].area) > (2 - 2 * ALIKE) * abs(path.area):
            kept = [*(loop for loop in kept if loop[0] is not path and loop[0] is not half), (rings[0].counter_clockwise(), beside or layer)]
            heads += 1
    return kept, heads


def _edge(path: Path) -> Line | None:
    """The longest straight edge of what may be half a head."""
    x0, y0, x1, y1 = path.box
    long, lines = max(x1 - x0, y1 - y0), [segment for segment in path.segments if isinstance(segment, Line)]
    if not lines or long < HEADSTOCK[0] or len(lines) == len(path.segments) == 4:
        return None
    edge = max(lines, key=Line.length)
    return edge if edge.length() >= MEET * long else None


def _meet(one: Line, other: Line) -> bool:
    return any(math.dist(one.p0, a) <= JOIN and math.dist(one.p1, b) <= JOIN for a, b in ((other.p0, other.p1), (other.p1, other.p0)))
