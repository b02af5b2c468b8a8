"""Where a blank has no wood because an ear ends there."""

from __future__ import annotations

from collections.abc import Sequence

import shapely
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry

from geometry.layout.blank import Blank, Ear, Side
from geometry.tolerance import FLAT


def bare(blank: Blank, ears: Sequence[Ear], side: Side) -> BaseGeometry:
    """What of the blank's width no ear fills on a side from the nut line on, in plan (mm); of several ears the outermost glue line counts.

    Empty where no ear is glued to that side. Stretches are told where they are longer than 2 FLAT.
    """
    own = [ear for ear in ears if ear.side == side]
    if not own:
        return Polygon()
    edge = blank.edge_x(side)
    glue = min((blank.glue_x(ear) for ear in own), key=lambda x: abs(edge - x))
    low, high = min(edge, glue), max(edge, glue)
    filled = [box(low - 1.0, min(ear.start, ear.end), high + 1.0, max(ear.start, ear.end)) for ear in own]
    stretches = shapely.get_parts(box(low, 0.0, high, blank.tip).difference(shapely.union_all(filled)))
    return shapely.union_all([one for one in stretches if one.bounds[3] - one.bounds[1] > 2 * FLAT])
