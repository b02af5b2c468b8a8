"""An outline that was left open where it runs into the neck."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import shapely

from app.formats.drawing_in.likeliest import area_of, is_rectangle, is_wide
from geometry import vectors as v
from geometry.curves import Path
from geometry.joining.chains import Chain, bridge
from geometry.tolerance import FLAT, JOIN

OPEN = (0.05, 0.75)
"""How wide the open end may be, in the longest side of what the line encloses: a nut is a quarter to a half of a head's length,
the heel of a neck less than a tenth of the neck's."""
LARGER = 4.0
"""How many times the area of any closed loop it has to enclose: what is drawn on a head is small beside it."""

GAP = 1.0
"""mm: a wider gap is left open on purpose (common practice, no source)."""


def open_head(open_lines: Sequence[Path], loops: Sequence[Path]) -> Path | None:
    """The one open line that is the outline of a head, or of a neck, without its straight end at neck or heel; None where there is none, or several.

    It lies on one side of the straight line between its ends, does not cross itself, encloses one closed loop at least, and no
    other lines go round from end to end. All loops are far smaller, but for frames of sheets and for bodies with what is in them
    that do not lie in it. In a drawing without loops it has to be the only line.
    """
    if not loops and len(open_lines) != 1:
        return None
    found = [line for line in open_lines if _is_open_head(line, loops)]
    return found[0] if len(found) == 1 and not _closes_otherwise(found[0], open_lines) else None


def _closes_otherwise(head: Path, open_lines: Sequence[Path]) -> bool:
    """Whether other lines go round from one end of an open line to the other across GAPs, and not straight: as the nut line does that
    comes with a piece of the side of the head."""
    chains, _ = bridge([Chain(line, (i,)) for i, line in enumerate(open_lines)], GAP)
    mine = next(i for i, line in enumerate(open_lines) if line is head)
    around = next((chain.path for chain in chains if mine in chain.sources and len(chain.sources) > 1 and chain.path.closed), None)
    straight = shapely.Polygon(head.flatten(FLAT)).area
    return around is not None and abs(abs(around.area) - straight) > JOIN * math.dist(head.start, head.end)


def _is_open_head(line: Path, loops: Sequence[Path]) -> bool:
    a, b = line.start, line.end
    x0, y0, x1, y1 = line.box
    if not OPEN[0] <= math.dist(a, b) / max(x1 - x0, y1 - y0, JOIN) <= OPEN[1]:
        return False
    points = np.array(line.flatten(FLAT))
    if len(points) < 3:
        return False
    across = v.left(v.unit(v.sub(b, a)))
    beside = (points - np.array(a)) @ np.array(across)
    if not (beside.min() >= -JOIN or beside.max() <= JOIN):
        return False
    area = shapely.Polygon(points)
    if not area.is_valid or loops and not any(area.contains(shapely.Point(loop.start)) for loop in loops):
        return False
    large = [loop for loop in loops if LARGER * abs(loop.area) > area.area]
    sheets = [loop for loop in large if is_rectangle(loop) or is_wide(loop)]
    bodies = [area_of(loop) for loop in sheets if not is_rectangle(loop)]
    return not any(area.contains(start) or loop not in sheets and not any(body.contains(start) for body in bodies)
                   for loop in large for start in [shapely.Point(loop.start)])
