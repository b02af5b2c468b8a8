"""Small pictures for the drilling cards: where the mark is and where it is not, and how blocks set a tilt."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry import vectors as v
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.marks import Area, Cross, Drawing, Label, Mark, Stroke
from geometry.drawing.shapes import chain, rectangle, straight
from geometry.drawing.tuner_plan import strip, waste_strip
from geometry.errors import GeometryError
from geometry.layout import Blank, Headstock, loop_path
from geometry.saying import say
from geometry.solids import holes
from geometry.solids.side import SideBore, side_bore
from geometry.units import format_length
from geometry.vectors import Box, Vec2

INSIDE = 3.0
"""Wood shown inside the seat at least, mm."""
SAME = 0.05
"""Marks nearer than this are the same to a pencil, mm."""
WORDS = 12.0
"""Room beside the edge for words, in capital heights."""


class Picture(Struct, frozen=True):
    """A drawing in mm of the layout and what of it is shown."""

    drawing: Drawing
    box: Box
    scale: float
    """the size on paper that its words are made for"""


def mark_picture(layout: Headstock, tuner_id: str, room: tuple[float, float], letter: float = LEAST) -> Picture | None:
    """A side bore seen from the face at its square edge: the mark, and the place that squaring across would give.

    As large as it fits into `room` (width, height in mm on paper) in one of the usual scales;
    `letter` is the capital height on paper. None for a tuner without a side bore that meets its square edge.
    GeometryError when the outline gives the tuner no place.
    """
    bore = side_bore(layout, tuner_id)
    if bore is None or bore.mark is None:
        return None
    post = next(d for hole in holes(layout) if hole.of == tuner_id for d in hole.drillings if d.role == "post")
    width = max(bore.waste * math.cos(bore.tilt), 0.0) + INSIDE
    high = max(abs(bore.squared_miss) + 8.0, 12.0)
    scale = next((s for s in (5.0, 2.0, 1.0, 0.5, 0.2) if width * s + WORDS * letter <= room[0] and high * s <= room[1]),
                 0.1)
    out = 1.0 if bore.side == "treble" else -1.0
    edge = layout.blank.edge_x(bore.side)
    beside = WORDS * letter / scale
    middle = bore.mark[1] - bore.squared_miss / 2
    half = room[1] / scale / 2
    far = edge - out * max(room[0] / scale - beside, width)
    box = (min(far, edge + out * beside), middle - half, max(far, edge + out * beside), middle + half)
    marks = _wood(layout, box, layout.blank)
    marks += [Area(waste_strip(layout.blank, bore.side, post), "side bore", tuner_id), Area(strip(post), "side bore", tuner_id),
              Stroke(straight(bore.mark[:2], post.end[:2]), "axis", tuner_id),
              Stroke(straight((edge, box[1]), (edge, box[3])), "outline", "blank")]
    marks += _here(bore, edge, out, letter / scale)
    return Picture(tuple(marks), box, scale)


def _wood(layout: Headstock, box: Box, blank: Blank) -> list[Mark]:
    x0, x1 = max(box[0], -blank.bass), min(box[2], blank.treble)
    marks: list[Mark] = [Area(rectangle(x0, box[1] - 1.0, x1, box[3] + 1.0), "waste", "blank")]
    try:
        marks.append(Area(loop_path(layout.outline), "wood", "outline"))
    except GeometryError:
        return marks
    return marks


def _here(bore: SideBore, edge: float, out: float, letter: float) -> list[Mark]:
    """Arrow and words at the mark; the squared line with its crossed out end where that differs."""
    anchor = "left" if out > 0 else "right"
    mark = bore.mark[:2]
    marks: list[Mark] = [Cross(mark, 1.2 * letter, "cross", bore.tuner)]
    level, false = mark[1], mark[1] - bore.squared_miss
    differ = abs(bore.squared_miss) > SAME
    if differ and abs(bore.squared_miss) < 2.4 * letter:
        push = (2.4 * letter - abs(bore.squared_miss)) / 2
        away = 1.0 if bore.squared_miss > 0 else -1.0
        level, false = level + away * push, false - away * push
    foot = (edge + out * 3.0 * letter, level)
    marks += _arrow(foot, mark, letter)
    marks.append(Label(say("mark here"), (foot[0] + out * 0.6 * letter, level - letter / 2), letter, "note", bore.tuner, anchor=anchor))
    if differ:
        wrong = (edge, mark[1] - bore.squared_miss)
        beside = (edge + out * 3.0 * letter, false)
        marks += [Stroke(straight(bore.seat[:2], wrong), "side bore", bore.tuner),
                  Cross(wrong, 0.8 * letter, "slot", bore.tuner, angle=math.pi / 4),
                  Stroke(straight((wrong[0] + out * 0.9 * letter, wrong[1]), beside), "dimension", bore.tuner),
                  Label(say("not there"), (beside[0] + out * 0.6 * letter, false - letter / 2), letter, "note", bore.tuner,
                        anchor=anchor)]
    return marks


def _arrow(tail: Vec2, tip: Vec2, letter: float) -> list[Mark]:
    along = v.unit(v.sub(tip, tail))
    end = v.along(tip, along, -0.5 * letter)
    back = v.along(end, along, -1.1 * letter)
    side = v.left(along)
    head = chain((v.along(back, side, 0.45 * letter), end, v.along(back, side, -0.45 * letter)), closed=True)
    return [Stroke(straight(tail, back), "note"), Area(head, "left standing")]


def block_picture() -> Drawing:
    """How blocks tilt the table: L along the board, H upright under its raised end, angle between. A sketch, mm."""
    tilt, length = math.radians(12.0), 60.0
    touch = (length * math.cos(tilt), length * math.sin(tilt))
    along = v.unit(touch)
    thick, letter = 2.2, READ
    over = v.along(touch, along, 12.0)
    board = chain(((0.0, 0.0), over, v.along(over, v.left(along), thick), v.along((0.0, 0.0), v.left(along), thick)),
                  closed=True)
    blocks = rectangle(touch[0], 0.0, touch[0] + 9.0, touch[1])
    above = v.along((0.0, 0.0), v.left(along), thick + 2.4)
    ends = [v.add(above, p) for p in ((0.0, 0.0), touch)]
    marks: list[Mark] = [
        Stroke(straight((-8.0, 0.0), (length + 22.0, 0.0)), "outline"), Area(board, "wood"),
        Area(blocks, "router base")]
    marks += [Stroke(straight(*ends), "dimension")]
    marks += [Stroke(straight(v.along(end, v.left(along), -1.6), v.along(end, v.left(along), 1.0)), "dimension") for end in ends]
    marks.append(Label("L", v.along(v.middle(*ends), v.left(along), 0.9), letter, "note", anchor="middle", angle=tilt))
    x, high = touch[0] + 13.0, touch[1]
    marks += [Stroke(straight((touch[0] + 9.5, high), (x + 1.0, high)), "dimension"),
              Stroke(straight((x, 0.0), (x, high)), "dimension"), Label("H", (x + 1.4, high / 2 - letter / 2), letter, "note")]
    marks.append(Label(say("tilt"), (length * 0.34, length * 0.34 * math.tan(tilt) / 2 - letter * 0.6), letter, "note"))
    return tuple(marks)


def scale_words(scale: float) -> str:
    """What is said beside a picture at a scale: "full size", "half size", "twice full size"."""
    known = {1.0: say("full size"), 0.5: say("half size"), 2.0: say("twice full size"), 5.0: say("five times full size"),
             0.2: say("a fifth of full size")}
    return known.get(scale, say("{scale} of full size", scale=format_length(scale)))
