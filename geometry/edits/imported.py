"""From loops of a drawing to a layout: outline, slots and holes in the frame of the head."""

from __future__ import annotations

import math
from collections.abc import Sequence

from msgspec.structs import replace

from geometry.curves import Matrix, Path
from geometry.curves.polygons import crosses_itself
from geometry.edits.adding import unpinned
from geometry.edits.imported_hardware import without_hardware
from geometry.edits.imported_openings import Role, tidy, with_openings, without_replaced
from geometry.edits.loops import with_smooth
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, Template, feature_ids, loop_of
from geometry.layout.generic import PATTERNS, RACK
from geometry.lengths import mm
from geometry.lengths import place as place_words
from geometry.saying import say

WASTE = 5.0
"""Least wood left around an imported outline, mm (common practice, no source)."""


def layout_from(loops: Sequence[Role], place: Matrix, name: str, nut_width: float | None = None,
                slant: float = 0.0) -> Headstock:
    """A new layout around the outline among these loops, mapped by `place`; the blank is made to fit.

    `nut_width` (mm) is the edge that was taken for the nut, as joining.placing tells it: the nut takes it, and its
    strings keep their distance from its ends. `slant`: degrees by which the nut is slanted, as told there too.

    GeometryError when no loop is the outline, when several are, or when it crosses itself.
    """
    outline = _outline(loops, place)
    x0, y0, x1, y1 = outline.box
    half = math.ceil(max(abs(x0), abs(x1), 1.0) + WASTE)
    blank = Blank(bass=half, treble=half, tip=math.ceil(max(y1, 1.0) + WASTE),
                  behind=math.ceil(max(-y0, 0.0)) + 20.0, thickness=16.0)
    made = Headstock(name=name, about=say("From an imported drawing."), blank=blank, outline=tidy(with_smooth(loop_of(outline))),
                     patterns=PATTERNS, rack=RACK, template=Template(bit=RACK.bits[3].id))
    if nut_width is not None:
        spread = max(nut_width - (made.nut.width - made.nut.spread), nut_width / 2)
        made = replace(made, nut=replace(made.nut, width=round(nut_width, 3), spread=round(spread, 3), slant=round(slant, 3)))
    return with_openings(made, loops, place)


def with_shape(layout: Headstock, loops: Sequence[Role], place: Matrix, openings: bool, slant: float | None = None) -> Headstock:
    """The layout with another outline; with `openings` its slots and single holes are those of the drawing too.

    Pockets and holes that are there stay where the drawing brings none, and what is drawn as it was, or in its place, keeps its name
    and depth. What tuners and pins drill is set no second time. `slant`: degrees by which the nut is slanted; None: as it is. A note that was pinned to what is gone stays, with its name before the text.
    """
    nut = layout.nut if slant is None else replace(layout.nut, slant=round(slant, 3))
    made = replace(layout, nut=nut, outline=tidy(with_smooth(loop_of(_outline(loops, place)))))
    if not openings:
        return with_openings(made, (), place)
    loops = without_hardware(loops, place, (layout, made))
    made = with_openings(without_replaced(made, loops), loops, place, layout)
    return unpinned(made, set(feature_ids(layout)) - set(feature_ids(made)))


def _outline(loops: Sequence[Role], place: Matrix) -> Path:
    outlines = [path for path, role, *_ in loops if role == "outline"]
    if len(outlines) != 1:
        raise GeometryError(say("Choose one loop as the outline.") if outlines else
                            say("No closed loop is the outline: the drawing has none, or its ends do not meet."))
    outline = outlines[0].mapped(place).counter_clockwise()
    x0, y0, x1, y1 = outline.box
    if max(x1 - x0, y1 - y0) > 4000:
        raise GeometryError(say("The outline measures {width} x {height}, far more than a headstock: give the "
                                "right unit.",
                                width=mm(x1 - x0), height=mm(y1 - y0)))
    at = crosses_itself(outline)
    if at is not None:
        raise GeometryError(say("The outline crosses itself near {place}: mend the drawing first.",
                                place=place_words(at)))
    return outline
