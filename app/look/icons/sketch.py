"""The grid that every sign is drawn on, and the pen that keeps its lines crisp at every size.

The grid is 16 by 16 with the origin at the upper left; a sign keeps half a unit
free all round. A line is as wide as 1.15 units come to in whole pixels, and its
nodes are moved to where such a line covers whole pixels: upright and level
lines have no soft edges at any size.
"""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

UNITS = 16
STROKE = 1.15
"""Width of a line in units."""

Point = tuple[float, float]


class Sketch:
    """Paints one sign into a square of `size` pixels. `ink` draws lines, `tone` fills what is wood, `mark` is the one
    thing that the sign is about."""

    def __init__(self, painter: QPainter, size: int, ink: str, tone: str, mark: str) -> None:
        self._painter = painter
        self._scale = size / UNITS
        self.width = max(1, round(STROKE * self._scale))
        self._colours = {"ink": ink, "tone": tone, "mark": mark}
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)

    # ---- what a sign is made of ---------------------------------------------
    def line(self, *points: Point, colour: str = "ink", dash: bool = False, fill: str = "", closed: bool = False) -> None:
        """Straight from point to point."""
        path = QPainterPath(self._at(points[0]))
        for point in points[1:]:
            path.lineTo(self._at(point))
        if closed:
            path.closeSubpath()
        self._draw(path, colour, fill, dash)

    def curve(self, start: Point, *pieces: tuple[Point, Point, Point], colour: str = "ink", fill: str = "",
              closed: bool = False) -> None:
        """Cubic pieces: two handles and an end each."""
        path = QPainterPath(self._at(start))
        for first, second, end in pieces:
            path.cubicTo(self._free(first), self._free(second), self._at(end))
        if closed:
            path.closeSubpath()
        self._draw(path, colour, fill, False)

    def ring(self, centre: Point, radius: float, colour: str = "ink", fill: str = "") -> None:
        """A circle."""
        path = QPainterPath()
        size = self._length(radius)
        path.addEllipse(self._at(centre), size, size)
        self._draw(path, colour, fill, False)

    def disc(self, centre: Point, radius: float, colour: str = "ink") -> None:
        """A filled circle without a line."""
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(self._colours[colour]))
        size = max(1.0, round(2 * radius * self._scale) / 2)
        self._painter.drawEllipse(self._at(centre), size, size)

    def arc(self, centre: Point, radius: float, start: float, span: float, colour: str = "ink") -> None:
        """Part of a circle: degrees from +x, counter-clockwise as seen."""
        size = self._length(radius)
        at = self._at(centre)
        box = QRectF(at.x() - size, at.y() - size, 2 * size, 2 * size)
        path = QPainterPath()
        path.arcMoveTo(box, start)
        path.arcTo(box, start, span)
        self._draw(path, colour, "", False)

    def box(self, left: float, top: float, right: float, bottom: float, corner: float = 0.0, colour: str = "ink",
            fill: str = "") -> None:
        """A rectangle, its corners rounded by `corner` units."""
        one, two = self._at((left, top)), self._at((right, bottom))
        path = QPainterPath()
        path.addRoundedRect(QRectF(one, two), corner * self._scale, corner * self._scale)
        self._draw(path, colour, fill, False)

    def arrow(self, tip: Point, towards: float, size: float) -> None:
        """An open head in the colour of marks whose point lies at `tip`, pointing `towards` degrees from +x, counter-clockwise as seen."""
        ends = []
        for turn in (145.0, -145.0):
            angle = math.radians(towards + turn)
            ends.append((tip[0] + size * math.cos(angle), tip[1] - size * math.sin(angle)))
        self.line(ends[0], tip, ends[1], colour="mark")

    # ---- inside ----------------------------------------------------------------
    def _snap(self, value: float) -> float:
        half = (self.width % 2) / 2
        return round(value * self._scale - half) + half

    def _at(self, point: Point) -> QPointF:
        return QPointF(self._snap(point[0]), self._snap(point[1]))

    def _free(self, point: Point) -> QPointF:
        return QPointF(point[0] * self._scale, point[1] * self._scale)

    def _length(self, units: float) -> float:
        return max(1, round(units * self._scale))

    def _draw(self, path: QPainterPath, colour: str, fill: str, dash: bool) -> None:
        pen = QPen(QColor(self._colours[colour]), self.width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap,
                   Qt.PenJoinStyle.RoundJoin)
        if dash:
            pen.setDashPattern([2.0, 1.5])
        else:
            pen.setCapStyle(Qt.PenCapStyle.SquareCap)
        self._painter.setPen(pen)
        self._painter.setBrush(QColor(self._colours[fill]) if fill else Qt.BrushStyle.NoBrush)
        self._painter.drawPath(path)
