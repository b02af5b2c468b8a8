"""Where exact curves meet the polygon library: flattening, offsets, containment.

Flattening a curve moves it by at most the stated sagitta; checks that must not
overstate a clearance measure on the exact curve (Path.nearest) instead.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from geometry.curves.path import Path
from geometry.errors import GeometryError
from geometry.saying import say
from geometry.tolerance import FLAT, QUAD_SEGS, SLIVER_AREA


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
    return shapely.buffer(area, by, quad_segs=QUAD_SEGS)


def opened(area: BaseGeometry, by: float) -> BaseGeometry:
    """What a disc of radius `by` mm can sweep inside the area."""
    return grown(grown(area, -by), by)


def parts(area: BaseGeometry, least: float = SLIVER_AREA) -> list[Polygon]:
    """The polygons of a result, slivers under `least` mm2 dropped, largest first."""
    found = shapely.get_parts(area)
    sizes = shapely.area(found)
    keep = (sizes >= least) & (shapely.get_type_id(found) == shapely.GeometryType.POLYGON)
    return found[keep][np.argsort(-sizes[keep], kind="stable")].tolist()
