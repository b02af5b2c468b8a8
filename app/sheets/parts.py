"""The full-size drawings that are printed, before they are cut into pages."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import partial
from typing import Literal

from msgspec import Struct
from msgspec.structs import replace

from app.formats.mark_shapes import drawing_box, mapped, mark_box
from app.sheets.compensation import compensation
from geometry.checks.words import listed
from geometry.curves import LYING
from geometry.drawing import Disc, Drawing, Label, blank_box
from geometry.drawing.back import back_drawing
from geometry.drawing.room import Room
from geometry.drawing.router_marks import waste_marks
from geometry.drawing.side_titles import face_titles
from geometry.drawing.template import template_drawing
from geometry.drawing.tuner_plan import folded
from geometry.drawing.wrap import LETTER, drilled_later, wrap_drawing
from geometry.layout import Headstock, slot_path
from geometry.routing import Waste
from geometry.saying import say
from geometry.solids import holes
from geometry.strings.square_line import square_line
from geometry.terms import term
from geometry.vectors import Box, box_of_all

PADDING = 1.0
"""White space kept round each drawing, mm."""
WORDS_OUTSIDE = 7.0
"""Room for the names over and under the wrap, mm."""
EDGE_NAME, BEHIND, MIDWAY = 2.0, 12.0, (0.5, 0.3, 0.7, 0.2, 0.8)
"""To the name of an edge that has no room at the tip: from the nut line, or else from the end behind it, mm; or else a part of the way
from the nut line to the tip."""
FACE = 2.0
"""Height of the word on the face, mm."""
BARE = 10.0
"""Of a blank that goes on beyond its marks a short wrap paper covers so much at either end, mm."""
BESIDE = 30.0
"""Of it beyond the mark of a bore on an edge, for the words there, mm."""
OF_BLANK = {"blank", "fold", "centreline"}
"""Styles of the lines on the wrap that run as far as the blank does."""


class Part(Struct, frozen=True):
    """One drawing at full size and what it is for."""

    name: Literal["template", "wrap", "back"]
    """in the names of its files"""
    title: str
    purpose: str
    note: str
    """what must be known at the page itself"""
    drawing: Drawing
    box: Box
    """what has to be printed of it, mm in drawing coordinates"""
    tight: Part | None = None
    """the same with its names inside or left out, for a paper on which that saves a page"""
    short: Callable[[], Part] | None = None
    """makes the same without the bare ends of a long blank, likewise"""
    turned: bool = False
    """whether the nut lies to the left on the page, see `turned`"""


def turned(part: Part) -> Part:
    """The same lying on its side, the nut to the left and the bass edge up: for a paper whose longer side it needs."""
    drawing = tuple(mapped(mark, LYING) for mark in part.drawing)
    x0, y0, x1, y1 = part.box
    return replace(part, drawing=drawing, box=(y0, -x1, y1, -x0), tight=None, short=None, turned=True)


def parts(layout: Headstock, waste: Sequence[Waste] = (), sawn: bool = False, template: bool = True) -> list[Part]:
    """Template, where one is wanted, wrap paper, and back paper where something is drilled from the back.

    `waste` are the holes that clear the slots, to be pricked through the wrap paper; `sawn` whether the head has its outline already. GeometryError when the outline or a slot has no inside.
    """
    found = [_template_part(layout)] if template else []
    found.append(wrap_part(layout, waste, sawn))
    back = back_drawing(layout)
    if back:
        found.append(_back_part(back, square_line(layout.nut)))
    return found


def _template_part(layout: Headstock) -> Part:
    """The template with the names of its sides over it, and without for a tight paper: its note names them too."""
    comp = compensation(layout)
    made = Part("template", say("Template"), say("Glue it on the template sheet, prick every cross, cut. {words}", words=comp.words),
                say("Seen from the face, the nut towards you: the bass side is on the left.") + " " + comp.words + _stop_at_nut(layout),
                *_tightly(template_drawing(layout, comp.offset)))
    drawing, box = _boxed((*made.drawing, *face_titles(layout)))
    return replace(made, drawing=drawing, box=box, tight=made)


def _back_part(back: Drawing, line: str) -> Part:
    """The back paper with the names of its sides over it, and without for a tight paper: its note names them too."""
    made = Part("back", say("Back paper"), say("Glue it on the back, {line} and centreline on their marks: prick what is drilled from "
                                       "behind (full circles).", line=line),
                say("Seen from behind, the nut towards you: the treble side is on the left."), *_boxed(back))
    drawing, box = _tightly(tuple(mark for mark in back if not isinstance(mark, Label) or mark.owner))
    return replace(made, tight=replace(made, drawing=drawing, box=box))


def wrap_part(layout: Headstock, waste: Sequence[Waste], sawn: bool = False) -> Part:
    """The wrap paper, and a short one where the blank goes on bare farther than BARE beyond what is marked on it."""
    made = _wrap(layout, waste, sawn)
    blank = layout.blank
    _, low, _, high = drawing_box(mark for mark in made.drawing if mark.style not in OF_BLANK and not isinstance(mark, Label))
    words = max((d.mark[1] + BESIDE for hole in holes(layout) for d in hole.drillings
                 if not d.upright and d.role == "post" and d.mark is not None), default=0.0)
    behind, tip = min(blank.behind, max(BARE - low, 0.0)), min(blank.tip, max(high + BARE, words))
    if (behind, tip) == (blank.behind, blank.tip):
        return made
    shorter = replace(layout, blank=replace(blank, behind=behind, tip=tip))
    return replace(made, short=partial(_wrap, shorter, waste, sawn, say("The blank goes on beyond this paper.")))


def _wrap(layout: Headstock, waste: Sequence[Waste], sawn: bool, more: str = "") -> Part:
    """The paper for that blank with its names outside, and inside for a tight paper: a bore that misses the blank does not stretch it.
    `more` is said in its note."""
    blank = layout.blank
    x0, y0, x1, y1 = blank_box(blank)
    drawing = (*wrap_drawing(layout), *_waste(waste))
    inside = tuple(mark for mark in drawing if not isinstance(mark, Label) or y0 <= mark.at[1] <= y1)
    names = [mark_box(mark) for mark in drawing if isinstance(mark, Label) and mark.at[1] > y1]
    line = square_line(layout.nut)
    made = Part("wrap", say("Wrap paper"), say("Cut it out along the outline and glue it on the face of the sawn head, {line} on {line} and centreline on "
                                  "centreline: there are no square edges left to fold it round.", line=line) if sawn else
                say("Cut it out, fold it back along both fold lines and glue it on the square blank, "
                    "{line} on {line}: it marks the face and both edges.", line=line), _wrap_note(layout, bool(waste), more),
                drawing, box_of_all([(x0 - PADDING, y0 - WORDS_OUTSIDE, x1 + PADDING, y1 + WORDS_OUTSIDE), *names]))
    room = Room(inside)
    titles = room.put([[Label(term("face"), at, FACE, "note", "blank", anchor=anchor)] for at, anchor in (
        ((2.0, y1 - 4.5), "left"), ((blank.treble - 2.0, y1 - 4.5), "right"), ((2.0 - blank.bass, y1 - 4.5), "left"), ((2.0, y0 + 2.0), "left"))])
    for side in ("bass", "treble"):  # the letters' tops point to -x
        x = folded(blank, side, 0.0, 0.9)[0] + (LETTER if side == "treble" else 0.0)
        titles += room.put([[Label(say("fold"), (x, y0 + 2.0), LETTER, "note", "blank", angle=math.pi / 2)]])
        titles += room.put([[Label(term(f"{side} edge"), (x, y), LETTER, "note", "blank", angle=math.pi / 2, anchor=anchor)]
                            for y, anchor in ((y1 - 2.0, "right"), (EDGE_NAME, "left"), (y0 + BEHIND, "left"), *((y1 * part, "middle") for part in MIDWAY))])
    box = (x0 - PADDING, y0 - PADDING, x1 + PADDING, y1 + PADDING)
    return replace(made, tight=replace(made, drawing=(*inside, *titles), box=box))


def _wrap_note(layout: Headstock, waste: bool, more: str) -> str:
    """What there is to be known of the marks on it, and `more`."""
    said = []
    if any(not d.upright for hole in holes(layout) for d in hole.drillings):
        said.append(say("Edges: diameter, tilt of the table and the end that is raised for it, stop from the square edge to full diameter."))
    if waste:
        said.append(say("Thin circles in the slots: waste holes."))
    if drilled_later(layout):
        said.append(say("Screws beside side bores have no mark: drill them by hand through the plate, on the finished edge."))
    beyond = [slot.id for slot in layout.slots if slot.there and slot_path(slot).box[1] < -layout.blank.behind]
    if beyond:
        said.append(say("Not whole on this paper, for it goes on behind the end of the blank: {pockets}.", pockets=listed(beyond)))
    return " ".join(filter(None, (*said, more)))


def _waste(waste: Sequence[Waste]) -> Drawing:
    """Waste holes with their crosses, thin, so that they are not taken for bores."""
    return tuple(replace(mark, style="waste hole") if isinstance(mark, Disc) else mark for row in waste for mark in waste_marks(row))


def _boxed(drawing: Drawing) -> tuple[Drawing, Box]:
    x0, y0, x1, y1 = drawing_box(drawing)
    return drawing, (x0 - PADDING, y0 - PADDING, x1 + PADDING, y1 + PADDING)


def _tightly(drawing: Drawing) -> tuple[Drawing, Box]:
    """As `_boxed`, with no paper for the ends of the centreline that run out of the head."""
    return drawing, _boxed(tuple(mark for mark in drawing if mark.style != "centreline"))[1]


def _stop_at_nut(layout: Headstock) -> str:
    """The outline closes along the nut line, where nothing is to be cut off."""
    return " " + say("Stop at the nut line: the neck goes on behind it.") if layout.blank.behind > 0 else ""
