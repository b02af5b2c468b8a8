"""How each style of the display list looks in ink: lines and words black on white, told apart by weight and dashes alone.

Lines are never grey: a printer breaks thin grey into dots.
"""

from __future__ import annotations

import math

from msgspec import Struct


class Ink(Struct, frozen=True):
    """Line width (mm, 0 for no line), dashes (mm on, off, ...), darkness of the fill (0 white, 1 black)."""

    width: float
    dash: tuple[float, ...] = ()
    fill: float | None = None


HAIRLINE = 0.1
"""Width of the lines that are measured from, mm: as thin as office printers hold."""

INKS: dict[str, Ink] = {
    "blank": Ink(0.18),
    "waste": Ink(HAIRLINE, (0.6, 0.9), fill=0.03),
    "wood": Ink(0.18, fill=0.10),
    "outline": Ink(0.35),
    "slot": Ink(0.25, fill=0.0),
    "pocket that is there": Ink(0.25, (1.6, 1.1)),
    "template": Ink(0.25, (5.0, 1.0, 1.0, 1.0)),
    "post bore": Ink(0.2, fill=0.0),
    "counterbore": Ink(0.2, fill=0.0),
    "clearance bore": Ink(0.2, fill=0.0),
    "screw pilot": Ink(0.15, fill=0.0),
    "pin hole": Ink(0.15, fill=0.0),
    "hole": Ink(0.2, fill=0.0),
    "hole that is there": Ink(0.2, (1.6, 1.1)),
    "locating pin hole": Ink(0.3),
    "side bore": Ink(0.18, (2.2, 0.9)),
    "axis": Ink(HAIRLINE, (5.0, 1.0, 1.0, 1.0)),
    "seat": Ink(0.13, (1.0, 1.0)),
    "button": Ink(HAIRLINE, (1.0, 1.0)),
    "post": Ink(HAIRLINE),
    "waste hole": Ink(HAIRLINE),
    "centreline": Ink(0.13, (9.0, 1.4, 1.4, 1.4)),
    "nut line": Ink(0.5),
    "fold": Ink(0.18, (4.0, 2.0)),
    "string": Ink(HAIRLINE),
    "glue line": Ink(0.2, (4.0, 1.0, 0.5, 1.0, 0.5, 1.0)),
    "glued on": Ink(0.13, fill=0.25),
    "cross": Ink(HAIRLINE),
    "dimension": Ink(HAIRLINE),
    "note": Ink(0.15),
    "check bar": Ink(0.2),
    "tile": Ink(0.15),
    "measured": Ink(0.35),
    "section line": Ink(0.35, (6.0, 2.0, 1.0, 2.0)),
    "template board": Ink(0.2, (3.0, 1.0), fill=0.05),
    "router base": Ink(0.15, fill=0.08),
    "shank": Ink(0.15, fill=0.2),
    "cutter": Ink(0.25, fill=0.35),
    "follower": Ink(0.25, fill=0.55),
    "left standing": Ink(0.15, fill=0.7),
    "ramp": Ink(0.25, (1.4, 0.8)),
    "flat": Ink(0.5),
    "grain risk": Ink(0.6, (2.0, 1.2)),
    "feed": Ink(0.25),
    "margin kept": Ink(0.0, fill=0.15),
    "margin short": Ink(0.15, fill=0.4),
    "spoiled": Ink(0.15, fill=0.8),
    "proposed": Ink(0.2, (2.0, 1.0)),
    "removed": Ink(0.4, fill=0.35),
}

HIDDEN = (1.1, 0.8)
"""Dashes (mm) of a bore that is drilled from the far side."""


def hidden_dashes(radius: float) -> tuple[float, float]:
    """About those dashes, fitted to a circle of that radius (mm): a whole number of them, at least six."""
    around = 2 * math.pi * radius
    unit = around / max(6, round(around / sum(HIDDEN)))
    return (unit * HIDDEN[0] / sum(HIDDEN), unit * HIDDEN[1] / sum(HIDDEN))


def ink(style: str) -> Ink:
    """The look of a style; KeyError for one that is not in geometry.drawing.STYLES."""
    return INKS[style]
