"""From exact curves to the paths that Qt paints, in mm with y up, and on to where they stand on the screen."""

from __future__ import annotations

import math
from collections.abc import Iterator

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainterPath, QTransform

from geometry.curves import Arc, Cubic, Path
from geometry.drawing import Area, Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.vectors import Vec2

Box = tuple[float, float, float, float]
SMALL, PIECE, STRAY = 70.0, 4.0, 0.25
"""mm: what is kept clear of as a whole, the narrower side of a box along a line, and how far a curve may leave its boxes"""


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


def middle_of(label: Label) -> Vec2:
    """Half the height of its capitals above the line on which a label stands, mm: there stays the middle of letters that keep
    their size on the screen."""
    up = label.height / 2
    return label.at[0] - up * math.sin(label.angle), label.at[1] + up * math.cos(label.angle)


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


def boxes_of(marks: Drawing) -> tuple[Box, ...]:
    """(left, right, lower, upper) in mm of what marks cover, but for labels: one box for what is small, else boxes along their lines.

    Round and cross things are covered each as a whole.
    """
    lines: list[list[Vec2]] = []
    squares: list[Box] = []
    for mark in marks:
        if isinstance(mark, Disc | Cross):
            (x, y), reach = mark.centre, mark.radius if isinstance(mark, Disc) else mark.arm
            squares.append((x - reach, x + reach, y - reach, y + reach))
        elif not isinstance(mark, Label):
            for path in (mark.path,) if isinstance(mark, Stroke) else (mark.outer, *mark.openings):
                lines.append([path.start, *(at for piece in path for at in piece.flatten(STRAY)[1:])])
    corners = [at for line in lines for at in line] + [at for left, right, low, high in squares for at in ((left, low), (right, high))]
    if not corners:
        return ()
    x, y = zip(*corners, strict=True)
    left, right, low, high = min(x), max(x), min(y), max(y)
    if max(right - left, high - low) <= SMALL:
        return ((left, right, low, high),)
    return *squares, *(box for line in lines for box in _along(line))


def _along(points: list[Vec2]) -> Iterator[Box]:
    """Boxes along a line through some points, as many of its pieces in each as stay narrow together."""
    x0, y0 = points[0]
    left = right = x0
    low = high = y0
    some = False
    for x1, y1 in points[1:]:
        # Compared one by one, since thousands of points a frame are: min and max take four times as long.
        l, r = left if left < x1 else x1, right if right > x1 else x1
        b, t = low if low < y1 else y1, high if high > y1 else y1
        if r - l <= PIECE or t - b <= PIECE:
            left, right, low, high, some = l, r, b, t, True
        else:
            if some:
                yield left, right, low, high
            left, right, low, high, some = min(x0, x1), max(x0, x1), min(y0, y1), max(y0, y1), True
            n = math.ceil(min(right - left, high - low) / PIECE)
            if n > 1:
                across, up = (x1 - x0) / n, (y1 - y0) / n
                for x, y in ((x0 + i * across, y0 + i * up) for i in range(n)):
                    yield min(x, x + across), max(x, x + across), min(y, y + up), max(y, y + up)
                left, right, low, high, some = x1, x1, y1, y1, False
        x0, y0 = x1, y1
    if some:
        yield left, right, low, high


def fitted(box: QRectF, room: QRectF) -> QTransform:
    """From mm with y up to pixels, `box` as large as it goes into the middle of `room`."""
    scale = min(room.width() / max(box.width(), 1e-6), room.height() / max(box.height(), 1e-6))
    move = QTransform()
    move.translate(room.center().x(), room.center().y())
    move.scale(scale, -scale)
    move.translate(-box.center().x(), -box.center().y())
    return move
