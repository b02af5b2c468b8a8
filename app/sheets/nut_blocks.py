"""The nut as it is slotted: where each string crosses it, at full size and as a table."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from app.formats.letters import text_width
from app.sheets.lay import Block, Column, fitting, heading, of_marks, table
from app.sheets.lengths import deep, length, thousandths, unit_words
from geometry.drawing import Label, Mark, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import rectangle, straight
from geometry.layout import Headstock
from geometry.saying import say
from geometry.strings.nut import nut_places

BODY = 6.0
"""How broad the nut is drawn along the strings, mm."""
LINE, BESIDE = 3.4, 0.8
"""From one line of names to the next, and the least between two names of one line, mm."""
LINES = 6
"""Lines of names, in turn above the nut and below it: strings of a course lie closer than their names are wide."""


def nut_blocks(layout: Headstock, width: float) -> list[Block]:
    """Heading, the nut at full size, and a row for each string; nothing without strings.

    Places are from the bass end along the nut: along the slanted one where it is slanted.
    """
    strings, nut = layout.strings, layout.nut
    if not strings:
        return []
    across = nut_places(nut, strings)
    slope = math.cos(math.radians(nut.slant))
    along = [(x + nut.width / 2) / slope for x in across]
    about = say("At full size, seen from above, the head away from you: lay it on the nut, end on end, and mark each string, or step every place "
                "off from the bass end, so that no error adds up. In {unit}.", unit=unit_words())
    if nut.slant:
        about = f"{about} {say('Places are along the slanted nut, the air is square to the strings.')}"
    blocks = [heading(say("Strings in the nut"), width, about, own_page=True),
              _strip([string.id for string in strings], along, nut.width / slope, [a.course == b.course for a, b in pairwise(strings)], width)]
    paired = len({string.course for string in strings}) < len(strings)
    w = fitting((22, 22, *((18,) if paired else ()), 24, 30, 30, 26), width)
    columns = [Column(say("string"), w[0]), Column(say("tuned to"), w[1]), *([Column(say("course"), w[2], True)] if paired else []),
               *(Column(title, wide, True) for title, wide in zip(
                   (say("diameter"), say("from the bass end"), say("to the one before"), say("air between")), w[-4:], strict=True))]
    rows = []
    for i, string in enumerate(strings):
        air = across[i] - across[i - 1] - (string.diameter + strings[i - 1].diameter) / 2
        rows.append((string.id, string.note, *((str(string.course),) if paired else ()), length(string.diameter, 3), thousandths(along[i], 2),
                     *((thousandths(along[i] - along[i - 1], 2), deep(air, 2)) if i else ("", ""))))
    return blocks + table(columns, rows)


def _strip(names: Sequence[str], along: Sequence[float], long: float, joined: Sequence[bool], width: float) -> Block:
    """The nut in the middle of a block: a line across it for each string, a bar between the strings of a course."""
    x0 = (width - long) / 2
    lines = _lines(names, along)
    above = LINE * (max((i // 2 for i in lines if i % 2 == 0), default=0) + 1) + 2.0
    below = LINE * (max((i // 2 for i in lines if i % 2), default=-1) + 1) + 2.0
    top, low = -above, -above - BODY
    marks: list[Mark] = [Stroke(rectangle(x0, low, x0 + long, top), "outline")]
    for name, x, i in zip(names, along, lines, strict=True):
        out = 1.2 + LINE * (i // 2)
        a, b = (low, top + out) if i % 2 == 0 else (low - out, top)
        marks.append(Stroke(straight((x0 + x, a), (x0 + x, b)), "check bar"))
        marks.append(Label(name, (x0 + x, b + 0.5 if i % 2 == 0 else a - 0.5 - READ), READ, "note", anchor="middle"))
    middle = (top + low) / 2
    marks += [Stroke(straight((x0 + a, middle), (x0 + b, middle)), "outline") for (a, b), one in zip(pairwise(along), joined, strict=True) if one]
    for text, x, anchor in ((say("bass end"), x0 - 3.0, "right"), (say("treble end"), x0 + long + 3.0, "left")):
        marks.append(Label(text, (x, middle - READ / 2), READ, "note", anchor=anchor))
    return of_marks(marks, -low + below + 1.0, keep=True)


def _lines(names: Sequence[str], along: Sequence[float]) -> list[int]:
    """In which of LINES each name stands: 0 next to the nut above it, 1 below it, 2 above the first, and so on; where none has room, in
    the last."""
    ends = [-math.inf] * LINES
    made = []
    for name, x in zip(names, along, strict=True):
        half = text_width(name, READ) / 2
        at = next((i for i, end in enumerate(ends) if x - half >= end + BESIDE), LINES - 1)
        ends[at] = x + half
        made.append(at)
    return made
