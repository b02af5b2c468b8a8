"""The full-size drawings that are printed, before they are cut into pages."""

from __future__ import annotations

from dataclasses import dataclass

from app.formats.letters import text_width
from app.formats.paper import Box
from app.sheets.compensation import compensation
from geometry.drawing import Drawing, Label
from geometry.drawing.back import back_drawing
from geometry.drawing.template import template_drawing
from geometry.drawing.wrap import wrap_drawing
from geometry.layout import Headstock

PADDING = 2.0
"""White space kept round each drawing, mm."""


@dataclass(frozen=True, slots=True)
class Part:
    """One drawing at full size and what it is for."""

    title: str
    purpose: str
    note: str
    """what must be known at the page itself"""
    drawing: Drawing
    box: Box
    """holds every mark, mm in drawing coordinates"""


def parts(layout: Headstock) -> list[Part]:
    """Template, wrap paper, and back paper where something is drilled from the back.

    GeometryError when the outline or a slot has no inside.
    """
    comp = compensation(layout)
    found = [
        Part("Template", f"Glue it on the template sheet, prick every cross, cut. {comp.words}", comp.words,
             *_boxed(template_drawing(layout, comp.offset))),
        Part("Wrap paper", "Cut it out, fold it back along both fold lines and glue it on the square blank, nut line "
             "on nut line: it marks the face and both edges.", "Edges: diameter, tilt of the table "
             "(positive: the bore climbs to the tip on its way out), stop from the square edge to full diameter.",
             *_boxed(wrap_drawing(layout))),
    ]
    back = back_drawing(layout)
    if back:
        found.append(Part("Back paper", "Glue it on the back, nut line and centreline on their marks: prick what is "
                          "drilled from behind (full circles).", "Seen from behind: the treble side is on the left.",
                          *_boxed(back)))
    return found


def _boxed(drawing: Drawing) -> tuple[Drawing, Box]:
    boxes = [_box(mark) for mark in drawing]
    return drawing, (min(b[0] for b in boxes) - PADDING, min(b[1] for b in boxes) - PADDING,
                     max(b[2] for b in boxes) + PADDING, max(b[3] for b in boxes) + PADDING)


def _box(mark) -> Box:
    """The exact box of a mark; words by the measures of the printed letters."""
    if not isinstance(mark, Label):
        return _shape_box(mark)
    width = text_width(mark.text, mark.height)
    start = {"left": 0.0, "middle": -width / 2, "right": -width}[mark.anchor]
    (x, y), low, high = mark.at, -0.3 * mark.height, 1.3 * mark.height
    if abs(mark.angle) > 0.1:  # the only turned words stand upright, reading upwards
        return (x - high, y + start, x - low, y + start + width)
    return (x + start, y + low, x + start + width, y + high)


def _shape_box(mark) -> Box:
    from app.formats.pdf_out import mark_box
    from geometry.curves import Matrix
    return mark_box(mark, Matrix())
