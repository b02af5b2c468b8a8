"""What stands upright against the outline and the slots, seen on the face: drillings, plates on the back, buttons behind the head.

All that is new is asked about in one go, for asking takes longer than answering.
Only what comes near is measured, by the family that it belongs to.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
import shapely
from msgspec import Struct

from geometry.checks import buttons, hole_walls, seats
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening, Scene, slots_tree
from geometry.checks.snags import Snag
from geometry.layout.shop import Margins
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT


class Shadow(Struct, frozen=True, eq=False):
    """An item as seen on the face: the middles of its upright drillings, and of a face tuner the plate and the button's space."""

    item: Item
    spots: list[shapely.Point]
    reaches: list[float]
    """how far about each of these something may matter, mm"""
    areas: list[shapely.Geometry]
    """none, or the plate and the button"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of everything that stands upright, with the outline and with the slots."""
    margins = scene.layout.margins
    shadows = scene.memo.each_together(_shadows, scene.items, margins)
    yield from scene.memo.snags_together(_with_outline, shadows, scene.outline, margins)
    yield from scene.memo.snags_together(_with_slots, shadows, scene.openings, margins, scene.layout.blank.thickness)


def _shadows(items: Sequence[Item], margins: Margins) -> list[Shadow]:
    centres = [plan(item.drillings[i].start) for item in items for i in item.upright]
    spots = iter(shapely.points(np.array(centres)).tolist() if centres else ())
    faces = [item.mount == "face" for item in items]
    corners = [ring for item, face in zip(items, faces, strict=True) if face
               for ring in ([plan(corner) for corner in item.plate], buttons.corners(item))]
    # Both are rectangles, and a hull is made quicker than a polygon.
    areas = iter(shapely.convex_hull(shapely.linestrings(np.array(corners))).tolist() if corners else ())
    return [Shadow(item, [next(spots) for _ in item.upright], reaches, [next(areas), next(areas)] if face else [])
            for item, face, reaches in zip(items, faces, hole_walls.reaches(items, margins), strict=True)]


def _with_outline(shadows: Sequence[Shadow], outline: Wall, margins: Margins) -> list[tuple[Snag, ...]]:
    near, meets = _near_outline(shadows, outline, margins)
    found, at = [], 0
    for shadow in shadows:
        item, some = shadow.item, []
        upright = [i for k, i in enumerate(item.upright, at) if near[k] or not meets[k]]
        at += len(shadow.spots)
        if upright:
            some += hole_walls.at_outline(item, upright, outline, margins)
        if shadow.areas:
            # What the outline's line does not come near is all inside or all outside.
            if near[at] or not meets[at]:
                some += seats.on_back(item, outline, margins)
            if near[at + 1] or meets[at + 1]:
                some += buttons.behind(item, meets[at + 1], outline, margins)
            at += 2
        found.append(tuple(some))
    return found


def _near_outline(shadows: Sequence[Shadow], outline: Wall, margins: Margins) -> tuple[list[bool], list[bool]]:
    """Of each spot and area of some shadows, one after the other, whether it is near the outline, and whether it meets what is inside."""
    shapes = [shape for shadow in shadows for shape in (*shadow.spots, *shadow.areas)]
    if not shapes:
        return [], []
    areas = (margins.seat_overhang + FLAT, margins.button_gap + FLAT)
    reach = [reach for shadow in shadows for reach in (*shadow.reaches, *(areas if shadow.areas else ()))]
    asked = np.array(shapes)
    return shapely.dwithin(outline.line, asked, reach).tolist(), shapely.intersects(outline.area, asked).tolist()


def _with_slots(shadows: Sequence[Shadow], openings: tuple[Opening, ...], margins: Margins,
                thickness: float) -> list[tuple[Snag, ...]]:
    shapes = [shape for shadow in shadows for shape in (*shadow.spots, *shadow.areas[:1])]
    if not shapes or not openings:
        return [()] * len(shadows)
    reach = [reach for shadow in shadows for reach in (*shadow.reaches, *(0.0 for _ in shadow.areas[:1]))]
    met: dict[int, list[int]] = {}
    for k, slot in sorted(zip(*slots_tree(openings).query(np.array(shapes), predicate="dwithin", distance=reach).tolist(), strict=True)):
        met.setdefault(k, []).append(slot)
    found, at = [], 0
    for shadow in shadows:
        item, some = shadow.item, []
        upright = range(at, at + len(shadow.spots))
        for which in sorted({slot for k in upright for slot in met.get(k, ())}):
            near = [i for k, i in zip(upright, item.upright, strict=True) if which in met.get(k, ())]
            some += hole_walls.at_slot(item, near, openings[which], margins)
        at = upright.stop
        if shadow.areas:
            for which in met.get(at, ()):
                if openings[which].depth >= thickness:
                    some += seats.over_slot(item, shadow.areas[0], openings[which])
            at += 1
        found.append(tuple(some))
    return found
