"""A head that was drawn as one closed half and its mirror image."""

from __future__ import annotations

import math
from collections.abc import Sequence

import shapely

from app.formats.drawing_in.likeliest import WIDEST
from app.formats.drawing_in.units import HEADSTOCK
from geometry.curves import Line, Path, shift, stretch, turn
from geometry.joining.network import enclosed
from geometry.tolerance import FLAT, JOIN

ALIKE = 1e-3
"""Part of the area of a half by which the other, mirrored, differs at the most"""
MEET = 0.5
"""Least part of a half's longer side that is the straight edge in which they meet"""


def halves_joined(loops: Sequence[tuple[Path, str]]) -> tuple[list[tuple[Path, str]], int]:
    """Closed paths (mm) with their layers, halves that meet in one straight edge as one, and how many heads were put together so.

    Halves are as long as a head at the least, each the other's mirror image, no wider than a head together, and no rectangles: two
    heads or two boards side by side stay two.
    """
    found = [(edge, *loop) for loop in loops if (edge := _edge(loop[0])) is not None]
    kept, heads = list(loops), 0
    while found:
        edge, path, layer = found.pop()
        other = next((k for k, (line, half, _) in enumerate(found) if _meet(edge, line) and _is_mirrored(path, half, edge)), None)
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


def _is_mirrored(one: Path, other: Path, axis: Line) -> bool:
    """Whether a path is another seen in a mirror along their common edge, and both make a head no wider than any."""
    along = turn(-math.atan2(axis.p1[1] - axis.p0[1], axis.p1[0] - axis.p0[0])).after(shift(-axis.p0[0], -axis.p0[1]))
    a, b = (shapely.make_valid(shapely.Polygon(path.mapped(to).flatten(FLAT))) for path, to in ((one, along), (other, stretch(1.0, -1.0).after(along))))
    _, low, _, high = a.bounds
    return 2 * max(-low, high) <= WIDEST and a.symmetric_difference(b).area <= ALIKE * a.area


def _meet(one: Line, other: Line) -> bool:
    return any(math.dist(one.p0, a) <= JOIN and math.dist(one.p1, b) <= JOIN for a, b in ((other.p0, other.p1), (other.p1, other.p0)))
