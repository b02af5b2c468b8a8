"""From exact curves to the paths that Qt paints. Coordinates stay in mm with y up."""

from __future__ import annotations

import math

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath

from geometry.curves import Arc, Cubic, Path
from geometry.drawing import Area, Cross, Disc, Mark, Stroke


def painter_path(path: Path) -> QPainterPath:
    """The path with true cubics; arcs as pieces that stray under 1e-7 of their radius."""
    made = QPainterPath()
    _follow(made, path)
    return made


def add_mark(made: QPainterPath, mark: Mark) -> None:
    """Append a mark's lines to a path; labels are not lines and are left out."""
    if isinstance(mark, Stroke):
        _follow(made, mark.path)
    elif isinstance(mark, Disc):
        r = mark.radius
        made.addEllipse(QRectF(mark.centre[0] - r, mark.centre[1] - r, 2 * r, 2 * r))
    elif isinstance(mark, Cross):
        x, y = mark.centre
        c, s = math.cos(mark.angle) * mark.arm, math.sin(mark.angle) * mark.arm
        made.moveTo(x - c, y - s)
        made.lineTo(x + c, y + s)
        made.moveTo(x + s, y - c)
        made.lineTo(x - s, y + c)
    elif isinstance(mark, Area):
        for path in (mark.outer, *mark.openings):
            _follow(made, path)


def _follow(made: QPainterPath, path: Path) -> None:
    made.moveTo(*path.start)
    for segment in path:
        if isinstance(segment, Cubic):
            made.cubicTo(*segment.c0, *segment.c1, *segment.p1)
        elif isinstance(segment, Arc):
            for piece in segment.cubics():
                made.cubicTo(*piece.c0, *piece.c1, *piece.p1)
        else:
            made.lineTo(*segment.p1)
    if path.closed:
        made.closeSubpath()
