"""A sign as an icon for a button or a menu, in the colours of a theme and in every size that a screen may ask for."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap

from app.look.icons.shapes import SHAPES
from app.look.icons.sketch import Sketch
from app.look.theme import Theme

PIXELS = (16, 18, 20, 24, 27, 30, 32, 36, 40, 48, 64)
"""Sides that are painted, each on its own: 16 to 32 points at 1, 1.5 and 2 pixels to a point, without any stretching."""


def paint(name: str, size: int, ink: str, tone: str, mark: str) -> QPixmap:
    """One sign in a square of `size` pixels on nothing. KeyError for a name without one."""
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    SHAPES[name](Sketch(painter, size, ink, tone, mark))
    painter.end()
    return pixmap


@lru_cache(maxsize=200)
def button_icon(name: str, theme: Theme) -> QIcon:
    """For a button: dark on light, light on dark while it is pressed down, dim while it cannot be pressed."""
    made = QIcon()
    for size in PIXELS:
        plain = paint(name, size, theme.ink, theme.wood, theme.bore)
        down = paint(name, size, theme.accent_ink, theme.dim, theme.accent_ink)
        dim = paint(name, size, theme.dim, theme.card, theme.dim)
        for mode in (QIcon.Mode.Normal, QIcon.Mode.Active, QIcon.Mode.Selected):
            made.addPixmap(plain, mode, QIcon.State.Off)
            made.addPixmap(down, mode, QIcon.State.On)
        made.addPixmap(dim, QIcon.Mode.Disabled, QIcon.State.Off)
        made.addPixmap(dim, QIcon.Mode.Disabled, QIcon.State.On)
    return made


@lru_cache(maxsize=200)
def menu_icon(name: str, theme: Theme) -> QIcon:
    """For a menu, in which the entry pointed at stands on the dark bar of a choice."""
    made = QIcon()
    for size in PIXELS:
        made.addPixmap(paint(name, size, theme.ink, theme.wood, theme.bore), QIcon.Mode.Normal)
        chosen = paint(name, size, theme.accent_ink, theme.dim, theme.accent_ink)
        for mode in (QIcon.Mode.Active, QIcon.Mode.Selected):
            made.addPixmap(chosen, mode)
        made.addPixmap(paint(name, size, theme.dim, theme.card, theme.dim), QIcon.Mode.Disabled)
    return made
