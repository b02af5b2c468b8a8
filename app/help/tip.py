"""A tip of a sentence and a small drawing."""

from __future__ import annotations

import base64
from functools import lru_cache
from html import escape

from PySide6.QtCore import QBuffer, QIODevice, QRectF
from PySide6.QtGui import QColor, QPainter, QPalette, QPixmap, QTransform

from app.help.pictures import picture
from app.look.painting import Painting
from app.look.theme import DAY, LAMP, Theme
from geometry.drawing import Drawing, Label

WIDTH, HEIGHT = 300, 190
"""Pixels of a drawing in a tip."""


def pictured(sentence: str, drawing: str, palette: QPalette) -> str:
    """The sentence with the drawing of that name under it, in the colours that the palette belongs to."""
    if not drawing:
        return sentence
    dark = palette.window().color().lightness() < 128
    return f'<p>{escape(sentence)}</p><img src="data:image/png;base64,{_encoded(drawing, dark)}">'


@lru_cache(maxsize=80)
def _encoded(drawing: str, dark: bool) -> str:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    drawn(picture(drawing), LAMP if dark else DAY).save(buffer, "PNG")
    return base64.b64encode(bytes(buffer.data())).decode("ascii")


def drawn(marks: Drawing, theme: Theme) -> QPixmap:
    """A drawing of the glossary with its words, fitted into a tip."""
    painting = Painting(marks)
    box = QRectF(painting.box)
    for mark in marks:
        if isinstance(mark, Label):
            half = 1.05 * len(mark.text) + 1
            left = {"left": 0.0, "middle": -half, "right": -2 * half}[mark.anchor]
            box = box.united(QRectF(mark.at[0] + left, mark.at[1] - 2, 2 * half, 4))
    pixmap = QPixmap(WIDTH, HEIGHT)
    pixmap.fill(QColor(theme.paper))
    scale = min((WIDTH - 24) / box.width(), (HEIGHT - 20) / box.height())
    view = QTransform()
    view.translate(WIDTH / 2, HEIGHT / 2)
    view.scale(scale, -scale)
    view.translate(-box.center().x(), -box.center().y())
    painter = QPainter(pixmap)
    painting.paint(painter, view, theme, WIDTH)
    painter.end()
    return pixmap
