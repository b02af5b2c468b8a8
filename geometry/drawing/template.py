"""The template: outline, slots and every bore at full size, with the lines that the follower rubs on."""

from __future__ import annotations

import math
from collections.abc import Sequence

from shapely.geometry import LineString, Polygon, box

from geometry.curves import Path
from geometry.curves.polygons import polygon
from geometry.drawing.base_line import base_line, line_names
from geometry.drawing.hole_words import bores_words
from geometry.drawing.margin_labels import Named, margin_labels
from geometry.drawing.marks import Drawing, Label, Mark, Stroke
from geometry.drawing.offset_path import offset_path
from geometry.drawing.outside_template import outside_lines
from geometry.drawing.pocket_words import named_pockets
from geometry.drawing.ramp_marks import ramp_marks
from geometry.drawing.shapes import DATUM, chain, nut_line, straight
from geometry.drawing.slot_style import slot_style
from geometry.drawing.tuner_plan import OVERRUN, upright_marks
from geometry.errors import GeometryError
from geometry.layout import Headstock, loop_path, slot_path
from geometry.lengths import told
from geometry.saying import say
from geometry.solids import Hole, frames, holes

LETTER = 1.6
"""Capital height of hole names, mm."""
PIN_LETTER = 1.4
"""Capital height of pin names, which stand on the web, mm."""
BESIDE = 5.0
"""From the outline to the column of names, mm."""
GRAIN = 24.0
"""Length of the grain arrow, mm."""
CLEAR, COARSE = 0.6, 0.05
"""mm: from the words at a pin to a line, and how far a flattened line may stray for that."""


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
    drilled = holes(layout)
    named: list[Named] = []
    for hole in drilled:
        marks += _hole(hole)
        if hole.drillings[0].role == "locating":
            marks.append(pin_label(hole, layout))
        elif hole.drillings[0].upright:
            named.append(_named(hole))
    named += named_pockets(layout)
    marks += _side_seats(layout, named)
    marks += margin_labels(named, around[0] - BESIDE, around[2] + BESIDE, LETTER)
    marks += _grain(outline, around)
    return tuple(marks)


def _hole(hole: Hole) -> list[Mark]:
    """Circles and one cross for a bore square to the face, the axis for a post bore from the side."""
    if hole.drillings[0].upright:
        return upright_marks(hole.drillings, hole.of)
    return [Stroke(straight(d.start[:2], d.end[:2]), "axis", hole.of) for d in hole.drillings if d.role == "post"]


def pin_label(hole: Hole, layout: Headstock, lower: float = 0.0, words_of_others: Sequence[Polygon] = ()) -> Label:
    """Name and diameter of a locating pin, under it and beside the centreline, `lower` mm below where it stands else.

    Where the words would cross a slot, the outline or what is said of others they run up to the pin instead, in the web; with no room there, up from it.
    """
    pin = hole.drillings[0]
    words, (x, y, _) = f"{hole.id}: {told(pin.diameter)}", pin.start
    x, y = x + 0.8, y - pin.radius - OVERRUN - lower
    width = words_width(words, PIN_LETTER)
    walls = [LineString(wall.flatten(COARSE)) for wall in (loop_path(layout.outline), *(slot_path(slot) for slot in layout.slots))]
    walls += words_of_others

    def free(*corners: float) -> bool:
        return all(wall.distance(box(*corners)) >= CLEAR for wall in walls)

    if not free(x, y - PIN_LETTER, x + width, y):
        above = pin.start[1] + pin.radius + OVERRUN
        if not free(x, y - width, x + PIN_LETTER, y) and free(x, above, x + PIN_LETTER, above + width):
            return Label(words, (x + PIN_LETTER, above), PIN_LETTER, "dimension", hole.of, angle=math.pi / 2)
        return Label(words, (x + PIN_LETTER, y), PIN_LETTER, "dimension", hole.of, angle=math.pi / 2, anchor="right")
    return Label(words, (x, y - PIN_LETTER), PIN_LETTER, "dimension", hole.of)


def words_width(words: str, letter: float) -> float:
    """About how wide words are in letters of that capital height, mm: rather too much than too little."""
    return 0.75 * letter * len(words)


def _named(hole: Hole) -> Named:
    widest = hole.drillings[0]
    return Named(widest.start[:2], widest.radius + OVERRUN / 2, (hole.id, bores_words(hole.drillings)), hole.of)


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


def _datum(layout: Headstock, box: tuple[float, float, float, float]) -> list[Mark]:
    return [Stroke(nut_line(layout.nut, DATUM), "nut line", "nut"), *base_line(layout.nut), *line_names(layout.nut),
            Stroke(straight((0.0, min(box[1], 0.0) - 4.0), (0.0, box[3] + 4.0)), "centreline", "blank")]


def _grain(outline: Path, box: tuple[float, float, float, float]) -> list[Mark]:
    """A double arrow along the grain in the free corner at the nut, clear of the outline."""
    low = box[1] + 2.0
    x = box[0] + 5.0
    try:
        area = polygon(outline)
    except GeometryError:
        area = None
    if area is None or area.distance(LineString([(x, low), (x, low + GRAIN)])) < 3.0:
        x = box[0] - 3.0
    high = low + GRAIN
    heads = [chain(((x - 1.0, y - turn * 2.4), (x, y), (x + 1.0, y - turn * 2.4))) for y, turn in ((high, 1), (low, -1))]
    marks: list[Mark] = [Stroke(path, "note") for path in (straight((x, low), (x, high)), *heads)]
    marks.append(Label(say("grain"), (x - 1.2, (low + high) / 2), LETTER, "note", angle=math.pi / 2, anchor="middle"))
    return marks
