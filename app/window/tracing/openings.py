"""Holes and slots that are seen in a head that was traced."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import Polygon

from app.formats.picture_in import covered
from geometry.curves import Path
from geometry.tolerance import FLAT
from geometry.tracing.colours import GREY
from geometry.tracing.in_lines import Drawn
from geometry.tracing.openings import Opening, openings_in
from geometry.tracing.openings_drawn import openings_drawn
from geometry.tracing.plane_map import PlaneMap
from geometry.vectors import Vec2

INSET = 0.8
"""mm within the edge of the head, its line counted, from which on holes and slots are looked for"""
BESIDE = 4
"""Points of the picture beside the head that are looked at too"""


def seen_in(path: Path, colours: np.ndarray, place: PlaneMap, at: Vec2, drawn: Drawn | None = None) -> tuple[Opening, ...]:
    """The holes and slots within an outline (mm) in a (height, width, 3) picture, `drawn` in lines or not; `at`: a point of it in the head."""
    head = shapely.make_valid(Polygon(path.flatten(FLAT))).buffer(-INSET - (drawn.width if drawn is not None else 0.0))
    inside = max(shapely.get_parts(head), key=shapely.area, default=None)
    if not isinstance(inside, Polygon) or inside.is_empty:
        return ()
    rows, columns = colours.shape[:2]
    border = place.inverse().many(shapely.get_coordinates(inside.exterior))
    x0, y0 = np.maximum(border.min(axis=0).astype(int) - BESIDE, 0).tolist()
    x1, y1 = np.minimum(border.max(axis=0).astype(int) + BESIDE, (columns, rows)).tolist()
    if x1 <= x0 or y1 <= y0:
        return ()
    grey = colours[y0:y1, x0:x1].astype(np.float32) @ GREY.astype(np.float32)
    wood = covered(x1 - x0, y1 - y0, border - (x0, y0))
    there, point = place.after(PlaneMap((1, 0, x0, 0, 1, y0, 0, 0, 1))), place.size_at(at)
    if drawn is None:
        return tuple(openings_in(grey, wood, there, point))
    return tuple(openings_drawn(grey, wood, drawn.level, drawn.width, there, point))
