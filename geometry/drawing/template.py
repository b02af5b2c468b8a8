"""The template: outline, slots and every bore at full size, with the lines that the follower rubs on."""

from __future__ import annotations

import math

from shapely.geometry import LineString

from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.drawing.glue_lines import joint_line
from geometry.drawing.heights import LEAST
from geometry.drawing.hole_words import bores_words
from geometry.drawing.margin_labels import LINE, Named, margin_labels
from geometry.drawing.marks import Drawing, Label, Mark, Stroke
from geometry.drawing.nut_names import line_names
from geometry.drawing.offset_path import offset_path
from geometry.drawing.outside_template import outside_lines
from geometry.drawing.pocket_words import named_pockets
from geometry.drawing.room import Room, beside
from geometry.drawing.shapes import DATUM, chain, nut_lines, straight
from geometry.drawing.slot_marks import ramp_marks, slot_style
from geometry.drawing.tuner_plan import OVERRUN, upright_marks
from geometry.errors import GeometryError
from geometry.layout import Headstock, loop_path, slot_path
from geometry.lengths import told
from geometry.saying import say
from geometry.solids import Drilling, Hole, frames, once_plugged
from geometry.solids.pins_along import SAME, in_bores
from geometry.vectors import Box

LETTER = 2.0
"""Capital height of hole names, mm."""
BESIDE = 5.0
"""From the outline to the column of names, mm."""
GRAIN = 24.0
"""Length of the grain arrow, mm."""


def template_drawing(layout: Headstock, offset: float | None) -> Drawing:
    """Everything that is marked or followed on the face, in the layout's own coordinates.

    `offset` is half the difference of follower and cutter in mm (geometry.routing): openings
    are grown by it, the outside template shrunk by it, ending at the nut line; None leaves the template lines out.
    Style "template" is what is cut in the template, "outline" and "slot" are the work; a pocket that is there is only shown.
    GeometryError when outline or a slot has no inside.
    """
    outline = loop_path(layout.outline)
    around = outline.box
    marks: list[Mark] = [Stroke(outline, "outline", "outline")]
    walls = [(slot, slot_path(slot)) for slot in layout.slots]
    marks += [mark for slot in layout.slots for mark in ramp_marks(slot)]
    marks += [Stroke(wall, slot_style(slot), slot.id) for slot, wall in walls]
    if offset is not None:
        marks += [Stroke(path, "template", "outline") for path in outside_lines(layout.outline, layout.nut, offset)]
        marks += [Stroke(path, "template", slot.id) for slot, wall in walls if not slot.there for path in offset_path(wall, offset).paths]
    marks += _datum(layout, around)
    marks += joint_line(layout.blank, layout.nut, False, around[0], around[2])
    drilled = once_plugged(layout)
    named: list[Named] = []
    for hole in drilled:
        marks += _hole(hole)
        if hole.drillings[0].upright and hole.drillings[0].role != "locating":
            named.append(_named(hole))
    named += named_pockets(layout)
    marks += _side_seats(layout, named)
    marks += margin_labels(named, around[0] - BESIDE, around[2] + BESIDE, LETTER, around[1], around[3], marks)
    room, bored = Room(marks), in_bores(layout)
    for hole in drilled:
        if hole.drillings[0].role == "locating":
            marks += room.put(pin_labels(hole, bored.get(hole.of)))
    return (*marks, *room.put(_grains(outline, around)))


def _hole(hole: Hole) -> list[Mark]:
    """Circles and one cross for a bore square to the face, the axis for a post bore from the side."""
    if hole.drillings[0].upright:
        return upright_marks(hole.drillings, hole.of)
    return [Stroke(straight(d.start[:2], d.end[:2]), "axis", hole.of) for d in hole.drillings if d.role == "post"]


def pin_labels(hole: Hole, bore: Drilling | None) -> list[list[Label]]:
    """Where name and diameter of a locating pin may stand: in one line, and in two where there is little room. Of one as wide as the
    bore that it stands in the name is enough: the bore tells its diameter."""
    pin = hole.drillings[0]
    size = told(pin.diameter)
    told_there = bore is not None and abs(bore.diameter - pin.diameter) <= SAME
    return [choice for lines in (([hole.of], hole.of.split()) if told_there else ([f"{hole.id}: {size}"], [f"{hole.id}:", size]))
            for choice in beside(lines, pin.start[:2], pin.radius + OVERRUN, LEAST, LINE * LEAST, "dimension", hole.of)]


def _named(hole: Hole) -> Named:
    widest = hole.drillings[0]
    return Named(widest.start[:2], widest.radius + OVERRUN / 2, tuple(bores_words(hole.id, hole.drillings)), hole.of)


def _side_seats(layout: Headstock, named: list[Named]) -> list[Mark]:
    """A short mark across the outline at each seat; names them too."""
    marks: list[Mark] = []
    for id, frame in frames(layout).items():
        if frame.mount != "side":
            continue
        x, y, _ = frame.origin
        out = (-frame.w[0], -frame.w[1])
        marks.append(Stroke(straight((x, y), (x + 3 * out[0], y + 3 * out[1])), "axis", id))
        named.append(Named((x + 3 * out[0], y + 3 * out[1]), 0.0, (id, say("from the side")), id))
    return marks


def _datum(layout: Headstock, box: Box) -> list[Mark]:
    return [*nut_lines(layout.nut, DATUM), *line_names(layout.nut),
            Stroke(straight((0.0, min(box[1], 0.0) - 4.0), (0.0, box[3] + 4.0)), "centreline", "blank")]


def _grains(outline: Path, around: Box) -> list[list[Mark]]:
    """Where the double arrow along the grain may stand at the nut end: in a corner that the outline leaves free, or beside the head."""
    x0, y0, x1, _ = around
    low = y0 + 2.0
    try:
        area = polygon(outline)
    except GeometryError:
        area = None
    corners = [x for x in (x0 + 5.0, x1 - 5.0) if area is not None and area.distance(LineString([(x, low), (x, low + GRAIN)])) >= 3.0]
    return [_grain(x, low) for x in (*corners, x0 - 3.0, x1 + 3.0 + 2 * LETTER)]


def _grain(x: float, low: float) -> list[Mark]:
    high = low + GRAIN
    heads = [chain(((x - 1.0, y - turn * 2.4), (x, y), (x + 1.0, y - turn * 2.4))) for y, turn in ((high, 1), (low, -1))]
    marks: list[Mark] = [Stroke(path, "note") for path in (straight((x, low), (x, high)), *heads)]
    return [*marks, Label(say("grain"), (x - 1.2, (low + high) / 2), LETTER, "note", angle=math.pi / 2, anchor="middle")]
