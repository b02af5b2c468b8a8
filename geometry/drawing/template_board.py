"""The compensated template as a drawing of its own: what is cut out of the board, and nothing else."""

from __future__ import annotations

from geometry.curves.polygons import polygon
from geometry.drawing.marks import Cross, Disc, Drawing, Label, Mark, Stroke
from geometry.drawing.offset_path import offset_path
from geometry.drawing.outside_template import outside_lines
from geometry.drawing.shapes import nut_line, rectangle, straight
from geometry.layout import Headstock, loop_path, slot_path
from geometry.layout.pin_pairs import standing_in
from geometry.lengths import exact, mm, told
from geometry.routing.follower import Follower
from geometry.saying import say

LETTER = 2.4
"""Capital height of the words, mm."""
ARM = 4.0
"""Half arms of the marks at the pins, mm."""


def board_drawing(layout: Headstock, follower: Follower, of: str = "") -> Drawing:
    """The board for one follower in the layout's coordinates: its outside, its openings, its pin holes, its datum lines.

    `of` is what the plan is of. Where the slots' board is as large as the blank, the "outline" has a board of its own:
    of the head's shape, without openings, with the pins that stand inside it. Exact lines and arcs where the layout has them. An opening that a negative offset closes is left out
    (geometry.routing.board says so). GeometryError when the outline or a slot crosses itself.
    """
    offset = follower.offset
    blank = layout.blank
    marks: list[Mark] = []
    own = of == "outline" and layout.template.board == "blank"
    if layout.template.board == "outline" or own:
        marks += [Stroke(path, "template", "outline") for path in outside_lines(layout.outline, layout.nut, offset)]
        low, high = loop_path(layout.outline).box[1], loop_path(layout.outline).box[3]
    else:
        low, high = -blank.behind, blank.tip
        marks.append(Stroke(rectangle(-blank.bass, low, blank.treble, high), "template", "blank"))
    for slot in () if own else layout.to_rout:
        marks += [Stroke(path, "template", slot.id) for path in offset_path(slot_path(slot), offset).paths]
    for pin in standing_in(layout.pins, polygon(loop_path(layout.outline))) if own and layout.pins else layout.pins:
        marks += [Disc(pin.at, pin.diameter / 2, "locating pin hole", pin.id), Cross(pin.at, ARM, "cross", pin.id)]
    marks.append(Stroke(straight((0.0, low - 6.0), (0.0, high + 6.0)), "centreline", "blank"))
    marks.append(Stroke(nut_line(layout.nut), "nut line", "nut"))
    words = (say("Template {thickness} thick for {follower}",
                 thickness=mm(layout.template.thickness), follower=follower.name),
             say("{diameter} follower, {cutter} cutter, offset {offset}",
                 diameter=told(follower.diameter), cutter=told(follower.bit.cutter), offset=exact(offset)))
    marks += [Label(text, (0.0, low - 10.0 - 1.75 * LETTER * row), LETTER, "note", "blank", anchor="middle")
              for row, text in enumerate(words)]
    return tuple(marks)
