"""What a drawing without an outline is told, and what `outline` prints and refuses on the command line."""

from __future__ import annotations

from typing import Any

from app.formats.drawing_in.result import DrawingRead
from app.formats.drawing_in.units import refuse_doubtful_unit
from app.formats.errors import FormatError
from geometry.joining.placing import Placing
from geometry.saying import count, say


def outline_report(read: DrawingRead, placed: Placing) -> dict[str, Any]:
    """The content of `outline --json`: mm, mm2 and degrees, boxes as [min x, min y, max x, max y], the nut as it was found (width null: it was not)."""
    return {
        "unit": read.unit,
        "unit_source": read.unit_source,
        "loops": [{"role": loop.role, "area_mm2": abs(loop.path.area), "perimeter_mm": loop.path.length,
                   "bbox_mm": list(loop.path.box), "layer": loop.layer} for loop in read.loops],
        "nut": {"width_mm": placed.nut_width, "slant_degrees": placed.slant},
        "warnings": list(read.warnings),
    }


def require_outline(read: DrawingRead) -> None:
    """FormatError when the drawing gives no outline to go on with: nothing closed, or a size no headstock has."""
    if read.outline is None:
        raise FormatError(not_closed(read))
    refuse_doubtful_unit(read)


def not_closed(read: DrawingRead) -> str:
    """That a drawing has no outline, and where its loose ends are nearest."""
    if not read.gaps:
        return say("The drawing has no closed outline: its lines do not close.")
    gap, more = read.gaps[0], len(read.gaps) - 1
    where = {"size": gap.size, "x": gap.place[0], "y": gap.place[1]}
    if more:
        return count(more, "The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm and at {n} "
                     "more place; join them in the drawing.",
                     "The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm and at {n} "
                     "more places; join them in the drawing.", **where)
    return say("The drawing has no closed outline: loose ends are {size:.3f} mm apart at ({x:.2f}, {y:.2f}) mm; join them in "
               "the drawing.", **where)
