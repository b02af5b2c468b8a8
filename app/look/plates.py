"""Pictures that are painted once and then copied: rounded plates under words that change often, signs about a middle."""

from __future__ import annotations

import math
from functools import lru_cache

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPixmap


def plate(width: float, height: float, radius: float, grain: float, fill: str, opacity: float, frame: str = "") -> QPixmap:
    """The picture of a plate, in points, for a screen of `grain` pixels to a point; not to be painted on.

    `frame` is the colour of a line of one point round it. To fill and stroke round corners takes eight times as long
    as to copy their picture.
    """
    return _plate(math.ceil(width), math.ceil(height), radius, grain, fill, opacity, frame)


@lru_cache(maxsize=128)
def _plate(width: int, height: int, radius: float, grain: float, fill: str, opacity: float, frame: str) -> QPixmap:
    return painted_plate(width, height, radius, grain, fill, opacity, frame)


def painted_plate(width: float, height: float, radius: float, grain: float, fill: str, opacity: float, frame: str,
                  thick: float = 1.0) -> QPixmap:
    """As `plate`, painted each time; the line of its frame is so many points `thick`."""
    picture = QPixmap(math.ceil(width * grain), math.ceil(height * grain))
    picture.setDevicePixelRatio(grain)
    picture.fill(Qt.GlobalColor.transparent)
    painter, colour = QPainter(picture), QColor(fill)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    colour.setAlphaF(opacity)
    painter.setBrush(colour)
    painter.setPen(QPen(QColor(frame), thick) if frame else Qt.PenStyle.NoPen)
    inside = thick / 2 if frame else 0.0
    painter.drawRoundedRect(QRectF(inside, inside, width - 2 * inside, height - 2 * inside), radius, radius)
    painter.end()
    return picture


def about_middle(reach: int, grain: float) -> tuple[QPixmap, QPainter]:
    """An empty picture that reaches so far (points) from its middle at `grain` pixels a point, and a painter that begins there; end it."""
    made = QPixmap(math.ceil(2 * reach * grain), math.ceil(2 * reach * grain))
    made.setDevicePixelRatio(grain)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(reach, reach)
    return made, painter
