"""Which loop is the outline, and what the loops inside it are."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from msgspec.structs import replace
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from app.formats.drawing_in.result import DrawingRead, Loop
from app.formats.drawing_in.units import PLAUSIBLE, fits
from geometry.curves import Path
from geometry.tolerance import FLAT, JOIN

LARGEST_HOLE = 20.0
"""Diameter in mm up to which a round loop is taken for a hole (common practice, no source)."""

ROUND = 0.01
"""How much a round loop's radius may vary, as a part of it."""


def with_roles(paths: Sequence[tuple[Path, str]], outline: Path | None = None) -> tuple[Loop, ...]:
    """Loops from (closed path, layer), largest first.

    The largest is the outline, unless another is named as such. Inside it, round loops up to LARGEST_HOLE are
    holes and the others slots; loops inside a slot that are not holes, loops
    outside and loops across the outline are 'other'.
    """
    ordered = sorted(paths, key=lambda item: -abs(item[0].area))
    loops: list[Loop] = []
    areas = [_area(path) for path, _ in ordered]
    about = shapely.STRtree(areas)
    slots: dict[int, BaseGeometry] = {}
    at = next((i for i, (path, _) in enumerate(ordered) if path is outline), 0)
    within = areas[at].buffer(JOIN) if areas else None
    shapely.prepare(within)
    for number, ((path, layer), area) in enumerate(zip(ordered, areas, strict=True)):
        if number == at:
            role = "outline"
        elif not within.covers(area):
            role = "other"
        elif is_hole(path):
            role = "hole"
        elif any(slots[i].covers(area) for i in about.query(area, "dwithin", 2 * JOIN).tolist() if i in slots):
            role = "other"
        else:
            role = "slot"
            slots[number] = area.buffer(JOIN)
            shapely.prepare(slots[number])
        loops.append(Loop(path, role, layer))
    return tuple(loops)


def with_outline(read: DrawingRead, number: int) -> DrawingRead:
    """The drawing with another of its loops as the outline: what lies inside that one has its role, and sizes are told of it."""
    outline = read.loops[number].path
    x0, y0, x1, y1 = outline.box
    size = (x1 - x0, y1 - y0)
    certain = read.unit_source == "option" or (read.unit_source == "file" and fits(max(size), PLAUSIBLE))
    loops = with_roles([(loop.path, loop.layer) for loop in read.loops], outline)
    return replace(read, loops=loops, size_mm=size, unit_certain=certain)


def _area(path: Path) -> BaseGeometry:
    """What a loop covers; of one that is nowhere wider than its chords stray, the line along it."""
    points = path.flatten(4 * FLAT)
    points = points[:-1] if len(points) > 1 and np.array_equal(points[0], points[-1]) else points
    return Polygon(points) if len(points) > 2 else LineString(points[[0, -1]])


def is_hole(path: Path) -> bool:
    """Whether a closed path is round and at most LARGEST_HOLE across."""
    x0, y0, x1, y1 = path.box
    if max(x1 - x0, y1 - y0) > LARGEST_HOLE * (1 + ROUND):
        return False
    points = path.flatten(max(1e-6, 1e-3 * max(x1 - x0, y1 - y0)))
    middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
    radii = np.hypot(*(points - middle).T)
    chords = np.hypot(*((points[1:] + points[:-1]) / 2 - middle).T)
    mean = float(radii.mean())
    return bool(mean > 0 and np.abs(radii / mean - 1).max() <= ROUND and np.abs(chords / mean - 1).max() <= 2 * ROUND)
