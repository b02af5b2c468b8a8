"""The back paper: the head seen from behind, for the marks that are pricked and drilled on the back."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.curves import MIRROR
from geometry.drawing.glue_lines import joint_line
from geometry.drawing.hole_words import bore_words
from geometry.drawing.margin_labels import Named, margin_labels
from geometry.drawing.marks import Area, Cross, Disc, Drawing, Mark, Stroke
from geometry.drawing.nut_names import line_names
from geometry.drawing.opened_out import opened_out_groups
from geometry.drawing.shapes import DATUM, nut_lines, straight
from geometry.drawing.side_titles import side_titles
from geometry.drawing.slot_marks import slot_style
from geometry.drawing.tuner_plan import OVERRUN
from geometry.layout import Headstock, loop_path, slot_path
from geometry.saying import say
from geometry.solids import Hole, once_plugged

LETTER = 2.0
"""Capital height of hole names, mm."""
BESIDE = 5.0
"""From the outline to the column of names, mm."""


def back_drawing(layout: Headstock) -> Drawing:
    """Seen from behind: x runs to the bass side. Empty when nothing is drilled from the back.

    Bores from the back and through bores are pricked; bores that do not reach the back are left out.
    GeometryError when outline or a slot has no inside.
    """
    drilled = once_plugged(layout)
    if not any(d.surface == "back" and not d.there for hole in drilled for d in hole.drillings):
        return ()
    outline = loop_path(layout.outline).mapped(MIRROR)
    x0, y0, x1, y1 = outline.box
    marks: list[Mark] = [Stroke(outline, "outline", "outline")]
    marks += [Stroke(slot_path(slot).mapped(MIRROR), slot_style(slot), slot.id)
              for slot in layout.slots if slot.through(layout.blank.thickness)]
    marks += [Stroke(mark.outer.mapped(MIRROR), "seat", mark.owner) for tuner in layout.tuners
              if layout.pattern(tuner.pattern).mount == "face"
              for mark in opened_out_groups(layout)[tuner.id] if isinstance(mark, Area) and mark.style == "seat"]
    nut = replace(layout.nut, slant=-layout.nut.slant)
    marks += [*nut_lines(nut, DATUM), *line_names(nut),
              Stroke(straight((0.0, min(y0, 0.0) - 4.0), (0.0, y1 + 4.0)), "centreline", "blank")]
    marks += joint_line(layout.blank, layout.nut, True, x0, x1)
    named: list[Named] = []
    for hole in drilled:
        marks += _hole(hole, named)
    marks += margin_labels(named, x0 - BESIDE, x1 + BESIDE, LETTER, y0, y1, marks)
    return (*marks, *side_titles(x0, x1, y1, say("treble side"), say("seen from the back"), say("bass side")))


def _hole(hole: Hole, named: list[Named]) -> list[Mark]:
    """Circles seen from behind: full for what is drilled from here, dashed for what comes through from the face."""
    upright = [d for d in hole.drillings if d.upright and (d.surface == "back" or d.through)]
    if not upright:
        return []
    at = MIRROR(upright[0].start[:2])
    marks: list[Mark] = [Disc(at, d.radius, d.operation, hole.of, hidden=d.surface != "back") for d in upright]
    if not upright[0].there:
        marks.append(Cross(at, upright[0].radius + OVERRUN, "cross", hole.of))
    own = [d for d in upright if d.surface == "back" or d.there]
    if own:
        named.append(Named(at, upright[0].radius + OVERRUN / 2, (hole.id, *(bore_words(d) for d in own)), hole.of))
    return marks
