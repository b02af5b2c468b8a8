"""Where exact curves meet the polygon library: flattening, offsets, containment.

Flattening a curve moves it by at most the stated sagitta; checks that must not
overstate a clearance measure on the exact curve (Path.nearest) instead.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from geometry.curves.blunted import blunted
from geometry.curves.path import Path
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT, QUAD_SEGS, SLIVER_AREA

_BLOCK = 16
"""chords that are looked at together: each may meet all others"""


def polygon(path: Path, sagitta: float = FLAT) -> Polygon:
    """The area inside a closed path. Raises GeometryError when the path crosses itself."""
    if not path.closed:
        raise GeometryError(say("An open path has no inside: close it first."))
    made = Polygon(path.flatten(sagitta))
    if not made.is_valid:
        x, y = crosses_itself(path, sagitta) or path.start
        raise GeometryError(say("The outline crosses itself at {x:.1f} across, {y:.1f} along.", x=x, y=y))
    return made


def line(path: Path, sagitta: float = FLAT) -> LineString:
    """The path as a chain of chords."""
    return LineString(path.flatten(sagitta))


def crosses_itself(path: Path, sagitta: float = FLAT) -> tuple[float, float] | None:
    """A point in mm where the path crosses or touches itself, or None."""
    made = line(path, sagitta)
    if made.is_simple:
        return None
    reason = shapely.is_valid_reason(Polygon(path.flatten(sagitta))) if path.closed else ""
    if "[" in reason:
        x, y = reason[reason.index("[") + 1:reason.index("]")].split()[:2]
        return (float(x), float(y))
    point = made.representative_point()
    return (point.x, point.y)


def tangled(path: Path, most: int, sagitta: float) -> tuple[float, float] | None:
    """The first point in mm at which a path crosses or touches itself when it does so more than `most` times, else None.

    Chords are counted, each `sagitta` mm from the curve at most, and no further than needed.
    """
    points = np.array(path.flatten(sagitta))
    points = points[np.append(True, np.any(np.diff(points, axis=0) != 0.0, axis=1))]
    if len(points) < 4 or shapely.is_simple(shapely.LineString(points)):
        return None
    chords = shapely.linestrings(np.stack([points[:-1], points[1:]], axis=1))
    tree, last, seen, first = shapely.STRtree(chords), len(chords) - 1, 0, None
    for k in range(0, len(chords), _BLOCK):
        i, j = tree.query(chords[k:k + _BLOCK], predicate="intersects")
        meet = (j > i + k + 1) & ~((i + k == 0) & (j == last))  # each pair once, and none of neighbours
        if first is None and meet.any():
            one = int(np.argmax(meet))
            first = shapely.shortest_line(chords[int(i[one]) + k], chords[int(j[one])]).coords[0]
        seen += int(meet.sum())
        if seen > most:
            return first
    return None


def widest_circle(area: BaseGeometry, tolerance: float) -> LineString:
    """From the middle of the largest circle inside an area to its rim, the radius true to `tolerance` mm.

    The library strays through huge numbers on the way in very thin areas; the answer is sound.
    """
    with np.errstate(over="ignore", invalid="ignore", divide="ignore"):
        return shapely.maximum_inscribed_circle(area, tolerance)


def grown(area: BaseGeometry, by: float) -> BaseGeometry:
    """The area grown by `by` mm with round corners; a negative amount shrinks it.

    Radii are exact to within 0.0001 of the amount (QUAD_SEGS chords a quarter turn).
    The result may be empty or fall into several parts.
    """
    return shapely.buffer(blunted(area, by), by, quad_segs=QUAD_SEGS)


def opened(area: BaseGeometry, by: float) -> BaseGeometry:
    """What a disc of radius `by` mm can sweep inside the area."""
    return grown(grown(area, -by), by)


def parts(area: BaseGeometry, least: float = SLIVER_AREA) -> list[Polygon]:
    """The polygons of a result, slivers under `least` mm2 dropped, largest first."""
    found = shapely.get_parts(area)
    sizes = shapely.area(found)
    keep = (sizes >= least) & (shapely.get_type_id(found) == shapely.GeometryType.POLYGON)
    return found[keep][np.argsort(-sizes[keep], kind="stable")].tolist()
