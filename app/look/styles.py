"""How each style of the display list looks on the screen."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from msgspec import Struct
from msgspec.structs import replace
from PySide6.QtCore import Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPainterPath, QPen, QTransform

from app.look.theme import Theme
from geometry.drawing import Disc, Mark, Stroke


class Look(Struct, frozen=True):
    """Field names of a Theme for line and fill ("" for none), and how they are laid on."""

    line: str
    fill: str = ""
    opacity: float = 1.0
    dash: tuple[float, ...] = ()
    width: float = 1.0
    z: float = 5.0
    hatch: bool = False
    """filled with slanted lines, so that it is known without its colour"""


LOOKS: dict[str, Look] = {
    "blank": Look("rim", "strip", z=0.0),
    "waste": Look("", "waste", z=0.5),
    "wood": Look("", "wood", z=1.0),
    "outline": Look("edge", width=1.6, z=6.0),
    "slot": Look("edge", "slot", z=2.0, width=1.2),
    "pocket that is there": Look("edge", "slot", dash=(3, 3), opacity=0.5, z=2.0, width=1.2),
    "template": Look("template", dash=(5, 3), z=7.0),
    "post bore": Look("edge", "slot", z=6.0),
    "counterbore": Look("edge", "slot", opacity=0.35, dash=(3, 2), z=5.0),
    "clearance bore": Look("edge", dash=(3, 2), z=5.5),
    "screw pilot": Look("edge", "slot", opacity=0.6, z=6.5),
    "pin hole": Look("edge", "slot", z=6.5),
    "hole": Look("edge", "slot", z=6.0),
    "hole that is there": Look("edge", "slot", dash=(1.5, 2), opacity=0.5, z=6.0),
    "locating pin hole": Look("template", "slot", z=6.5),
    "side bore": Look("bore", "bore_fill", opacity=0.55, z=4.0),
    "axis": Look("bore", dash=(8, 3, 2, 3), z=5.0),
    "seat": Look("metal", "metal", opacity=0.16, z=3.0),
    "button": Look("metal", "metal", opacity=0.08, dash=(2, 2), z=2.8),
    "post": Look("metal", "metal", opacity=0.4, z=6.8),
    "waste hole": Look("metal", "metal", opacity=0.4, z=6.8),
    "centreline": Look("bore", dash=(12, 4, 2, 4), z=3.5),
    "nut line": Look("edge", width=2.4, z=7.0),
    "fold": Look("dim", dash=(1, 3), z=3.0),
    "string": Look("string", z=8.0),
    "glue line": Look("dim", dash=(6, 2, 1, 2, 1, 2), z=3.4),
    "glued on": Look("dim", "metal", opacity=0.3, z=1.2),
    "cross": Look("edge", z=9.0),
    "dimension": Look("dim", z=9.0),
    "note": Look("dim", z=9.0),
    "check bar": Look("ink", z=9.0),
    "measured": Look("focus", width=2.0, z=9.6),
    "section line": Look("spoils", width=2.0, dash=(10, 3, 2, 3), z=9.5),
    "tile": Look("dim", z=9.0),
    "template board": Look("template", "template", opacity=0.2, z=3.2),
    "router base": Look("metal", "metal", opacity=0.12, z=3.1),
    "shank": Look("metal", "metal", opacity=0.35, z=7.1),
    "cutter": Look("edge", "metal", opacity=0.7, z=7.2),
    "follower": Look("template", "template", opacity=0.55, dash=(4, 2), z=7.3),
    "left standing": Look("tight", "tight", opacity=0.6, z=7.0),
    "ramp": Look("edge", "slot", opacity=0.45, dash=(4, 2), z=1.8),
    "flat": Look("edge", width=2.4, z=6.2),
    "grain risk": Look("tight", dash=(6, 3), width=3.0, z=7.5),
    "feed": Look("note", width=1.4, z=7.4),
    "margin kept": Look("", "metal", opacity=0.7, z=7.0),
    "margin short": Look("tight", "tight", opacity=0.6, z=7.6),
    "spoiled": Look("spoils", "spoils", opacity=0.7, z=7.7),
    "proposed": Look("template", dash=(4, 3), width=1.8, z=9.5),
    "removed": Look("ink", "note", opacity=0.9, hatch=True, width=1.8, z=7.8),
}


BROADER = 0.9
"""Pixels by which the lines of what is spoiled are broader, so that it is known without its colour."""
HIDDEN = " hidden"
"""Appended to the style of a mark on the far side of what is looked at."""
_LINE = " as a line"
"""Appended to the style of a closed line in a style that fills areas."""


def style_key(mark: Mark) -> str:
    """The style under which a mark is painted."""
    if isinstance(mark, Stroke):
        return mark.style + _LINE if mark.path.closed and LOOKS[mark.style].fill else mark.style
    return mark.style + HIDDEN if isinstance(mark, Disc) and mark.hidden else mark.style


def look_of(key: str) -> Look:
    """How what is painted under a key of `style_key` looks."""
    look = LOOKS[key.removesuffix(HIDDEN).removesuffix(_LINE)]
    return replace(look, fill="", dash=(3, 2)) if key.endswith(HIDDEN) else replace(look, fill="") if key.endswith(_LINE) else look


@lru_cache(maxsize=1024)
def pen_and_brush(style: str, theme: Theme, state: str) -> tuple[QPen, QBrush]:
    """Pen and brush of a style; `state` is "", "held", "tight" or "spoils", with " held" appended when both."""
    look = look_of(style)
    colour = getattr(theme, look.line) if look.line else ""
    fill = getattr(theme, look.fill) if look.fill else ""
    width = look.width
    own = style.removesuffix(_LINE) not in ("seat", "button", "string", "axis", "centreline")
    if state.startswith(("spoils", "tight")) and own and colour:
        colour = theme.spoils if state.startswith("spoils") else theme.tight
        width += BROADER if state.startswith("spoils") else 0.0
    if state.endswith("held") and own:
        width += 1.2
    pen = QPen(Qt.PenStyle.NoPen)
    if colour:
        pen = QPen(QColor(colour), width)
        pen.setCosmetic(True)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        if look.dash:
            pen.setDashPattern([d / width for d in look.dash])
    brush = QBrush()  # told by its name to paint nothing, the toolkit would first make the names of all gradients (as in ground.py)
    if fill:
        tint = QColor(fill)
        tint.setAlphaF(look.opacity)
        brush = QBrush(tint, Qt.BrushStyle.BDiagPattern if look.hatch else Qt.BrushStyle.SolidPattern)
    return pen, brush


def paint_paths(painter: QPainter, paths: Iterable[tuple[QPainterPath, str]], move: QTransform, theme: Theme) -> None:
    """Paint paths with their styles through `move` (mm to pixels)."""
    for path, style in paths:
        pen, brush = pen_and_brush(style, theme, "")
        painter.setPen(pen)
        painter.setBrush(brush)
        painter.drawPath(move.map(path))
