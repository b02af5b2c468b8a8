"""A tip of a sentence and a small drawing."""

from __future__ import annotations

import base64
from functools import lru_cache
from html import escape

from PySide6.QtCore import QBuffer, QIODevice, QRectF
from PySide6.QtGui import QColor, QPainter, QPixmap

from app.help.pictures import picture
from app.look.painting import Painting
from app.look.paths import fitted, middle_of
from app.look.sizes import sizes
from app.look.theme import Theme, theme
from geometry.drawing import Drawing, Label

WIDTH, HEIGHT = 300, 190
"""Pixels of a drawing in a tip at 100 %."""
GRAIN = 2
"""Pixels to a point, so that a tip is sharp on any screen."""


def pictured(sentence: str, drawing: str) -> str:
    """The sentence with the drawing of that name under it."""
    if not drawing:
        return sentence
    factor = sizes().factor
    size = f'width="{round(WIDTH * factor)}" height="{round(HEIGHT * factor)}"'
    return f'<p>{escape(sentence)}</p><img {size} src="data:image/png;base64,{_encoded(drawing, theme(), factor)}">'


@lru_cache(maxsize=80)
def _encoded(drawing: str, colours: Theme, factor: float) -> str:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    drawn(picture(drawing), colours, factor).save(buffer, "PNG")
    return base64.b64encode(bytes(buffer.data())).decode("ascii")


def drawn(marks: Drawing, colours: Theme, factor: float = 1.0) -> QPixmap:
    """A drawing of the glossary with its words, fitted into a tip that is `factor` times as large as at 100 %."""
    painting = Painting(marks)
    box = QRectF(painting.box)
    for mark in marks:
        if isinstance(mark, Label):
            half = 1.05 * len(mark.text) + 1
            left = {"left": 0.0, "middle": -half, "right": -2 * half}[mark.anchor]
            x, y = middle_of(mark)
            box = box.united(QRectF(x + left, y - 2, 2 * half, 4))
    width, height = round(WIDTH * factor), round(HEIGHT * factor)
    pixmap = QPixmap(width * GRAIN, height * GRAIN)
    pixmap.setDevicePixelRatio(GRAIN)
    pixmap.fill(QColor(colours.paper))
    painter = QPainter(pixmap)
    painting.paint(painter, fitted(box, QRectF(12, 10, width - 24, height - 20)), colours, width)
    painter.end()
    return pixmap
