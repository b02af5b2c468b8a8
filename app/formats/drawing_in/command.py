"""What `outline` prints and refuses on the command line."""

from __future__ import annotations

from typing import Any

from app.formats.drawing_in.result import DrawingRead
from app.formats.drawing_in.units import refuse_doubtful_unit
from app.formats.errors import FormatError


def outline_report(read: DrawingRead) -> dict[str, Any]:
    """The content of `outline --json`: mm and mm2, boxes as [min x, min y, max x, max y]."""
    return {
        "unit": read.unit,
        "unit_source": read.unit_source,
        "loops": [{"role": loop.role, "area_mm2": abs(loop.path.area), "perimeter_mm": loop.path.length,
                   "bbox_mm": list(loop.path.box), "layer": loop.layer} for loop in read.loops],
        "warnings": list(read.warnings),
    }


def require_outline(read: DrawingRead) -> None:
    """FormatError when the drawing gives no outline to go on with: nothing closed, or a size no headstock has."""
    if read.outline is None:
        raise FormatError(f"The drawing has no closed outline{_widest(read)}.")
    refuse_doubtful_unit(read)


def _widest(read: DrawingRead) -> str:
    if not read.gaps:
        return ": its lines do not close"
    gap = read.gaps[0]
    more = f" and at {len(read.gaps) - 1} more places" if len(read.gaps) > 1 else ""
    return f": loose ends are {gap.size:.3f} mm apart at ({gap.place[0]:.2f}, {gap.place[1]:.2f}) mm{more}; join them in the drawing"
