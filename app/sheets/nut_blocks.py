"""The nut as it is slotted: where each string crosses it, at full size and as a table."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

from msgspec.structs import replace

from app.formats.letters import text_width
from app.sheets.lay import Block, Column, fitting, heading, natural, of_marks, table
from app.sheets.lengths import deep, in_column, thousandths, unit_words
from app.sheets.words import short
from geometry.drawing import Label, Mark, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import chain, straight
from geometry.layout import Headstock
from geometry.lengths import speaking, spoken
from geometry.saying import say
from geometry.strings.hands import counted_from
from geometry.strings.nut import nut_places
from geometry.strings.runs import break_angle, runs
from geometry.terms import term
from geometry.units import format_angle
from geometry.vectors import Vec2

BODY = 6.0
"""How broad the nut is drawn along the strings, mm."""
LINE, BESIDE = 3.4, 0.8
"""From one line of names to the next, and the least between two names of one line, mm."""


def nut_blocks(layout: Headstock, width: float) -> list[Block]:
    """Heading, the nut at full size, and a row for each string; nothing without strings.

    Strings stand from the bass end on, whatever they are named. Places are from that end along the nut line, which is the edge of the nut
    at the neck, slanted where the nut is. Columns that would be empty are left out.
    """
    with speaking("mm" if spoken() == "mm" else "in"):  # slots are filed to thousandths, never to fractions
        return _blocks(layout, width) if layout.strings else []


def _blocks(layout: Headstock, width: float) -> list[Block]:
    strings, nut = layout.strings, layout.nut
    across = nut_places(nut, strings)
    slant = math.radians(nut.slant)
    along = [(x + nut.width / 2) / math.cos(slant) for x in across]
    about = say("At full size, seen from above, the head away from you: lay it on the nut, end on end, and mark each string, or step every place "
                "off from the bass end, so that no error adds up. In {unit}.", unit=unit_words())
    if nut.slant:
        slanted = say("Places are along the edge at the neck. The strings cross the nut {angle} off square, as drawn; the air between them is measured square to them.",
                      angle=format_angle(abs(slant)))
        about = f"{about} {slanted}"
    first = counted_from(strings)
    if first and len(strings) > 1:
        about = f"{about} {say('String 1 lies at the treble end.') if first == 'treble' else say('String 1 lies at the bass end.')}"
    joined = [a.course == b.course for a, b in pairwise(strings)]
    bends = _bends(layout)
    if bends:
        towards = say("Aside and down: by how much each string bends out of the line of the neck on its way to its post. File its slot that way.")
        about = f"{about} {towards}"
    steps = ["", *(thousandths(b - a, 2) for a, b in pairwise(along))]
    air = ["", *(deep(x1 - x0 - (a.diameter + b.diameter) / 2, 2) for (x0, a), (x1, b) in pairwise(zip(across, strings, strict=True)))]
    columns = [(say("string"), False, [string.id for string in strings]), (say("tuned to"), False, [string.note for string in strings]),
               (say("course"), True, [str(string.course) if any(joined) else "" for string in strings]),
               (say("diameter"), True, in_column([string.diameter for string in strings])),
               (say("from the bass end"), True, [thousandths(x, 2) for x in along]), (say("to the one before"), True, steps),
               (say("air between"), True, air), *((title, True, [bends.get(string.id, ("", ""))[i] for string in strings])
                                                  for i, title in enumerate((say("aside"), say("down"))))]
    filled = [column for column in columns if any(column[2])]
    rows = list(zip(*(cells for _, _, cells in filled), strict=True))
    widths = fitting(natural([[title for title, _, _ in filled], *rows], READ, width), width)
    made = table([Column(title, wide, right) for (title, right, _), wide in zip(filled, widths, strict=True)], rows)
    return [heading(say("Strings in the nut"), width, about),
            _strip([string.id for string in strings], along, nut.width / math.cos(slant), joined, math.tan(slant), width),
            *(replace(one, keep=True) for one in made[:-1]), made[-1]]


def _bends(layout: Headstock) -> dict[str, tuple[str, str]]:
    """By the name of each string that goes to a post: its side angle at the nut, and its break angle."""
    return {run.string: (_aside(run.side_angle), format_angle(break_angle(run, layout.nut))) for run in runs(layout)}


def _aside(angle: float) -> str:
    """A side angle (rad, positive towards the treble side) with its side; none where there is nothing to see of it."""
    told = format_angle(abs(angle))
    return told if told == format_angle(0.0) else f"{told} {term('treble' if angle > 0 else 'bass')}"


def _strip(names: Sequence[str], along: Sequence[float], long: float, joined: Sequence[bool], lean: float, width: float) -> Block:
    """The nut in the middle of a block: a line across it for each string, a bar between the strings of a course.

    Lines and ends run so far (mm) to the bass end for each mm towards the tip as `lean` says.
    """
    places = _places(names, along)
    lines = [line for line, _ in places]
    above = LINE * (max((i // 2 for i in lines if i % 2 == 0), default=0) + 1) + 2.0
    below = LINE * (max((i // 2 for i in lines if i % 2), default=-1) + 1) + 2.0
    top, low = -above, -above - BODY

    def at(x: float, y: float) -> Vec2:
        """Where the line from x of the edge at the neck is at a height of the block."""
        return ((width - long) / 2 + x - lean * (y - low), y)

    marks: list[Mark] = [Stroke(chain((at(0.0, low), at(long, low), at(long, top), at(0.0, top)), closed=True), "outline")]
    for name, x, (i, anchor) in zip(names, along, places, strict=True):
        out = 1.2 + LINE * (i // 2)
        a, b = (low, top + out) if i % 2 == 0 else (low - out, top)
        marks.append(Stroke(straight(at(x, a), at(x, b)), "check bar"))
        foot = at(x, b + 0.5 if i % 2 == 0 else a - 0.5 - READ)
        room = {"left": width - foot[0], "middle": width, "right": foot[0]}[anchor]
        marks.append(Label(short(name, READ, room), foot, READ, "note", anchor=anchor))
    middle = (top + low) / 2
    marks += [Stroke(straight(at(a, middle), at(b, middle)), "outline") for (a, b), one in zip(pairwise(along), joined, strict=True) if one]
    for text, x, anchor in ((say("bass end"), -3.0, "right"), (say("treble end"), long + 3.0, "left")):
        marks.append(Label(text, at(x, middle - READ / 2), READ, "note", anchor=anchor))
    return of_marks(marks, -low + below + 1.0, keep=True)


def _places(names: Sequence[str], along: Sequence[float]) -> list[tuple[int, Literal["left", "middle", "right"]]]:
    """In which line each name stands, 0 next to the nut above it, 1 below it, 2 above the first, and so on; and where the line of its
    string ends at it. Names that are too wide for two lines go outwards from their strings, one over the other, so that none lies
    across the line of another."""
    ends = [-math.inf] * 2
    lines = []
    for name, x in zip(names, along, strict=True):
        half = text_width(name, READ) / 2
        line = next((i for i, end in enumerate(ends) if x - half >= end + BESIDE), None)
        if line is None:
            last = len(names) - 1
            return [(i, "right") if 2 * i < last else (last - i, "left") for i in range(len(names))]
        ends[line] = x + half
        lines.append(line)
    return [(line, "middle") for line in lines]
