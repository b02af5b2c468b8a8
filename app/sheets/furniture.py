"""What every page carries round its drawing: check bars both ways, its name, the print warning, the cautions in short."""

from __future__ import annotations

import math

from app.formats.letters import printable, text_width
from app.sheets.words import IN_SHORT, PRINT_AT, block, short
from geometry.drawing import Drawing, Label, Mark, Stroke
from geometry.drawing.heights import LEAST, READ
from geometry.drawing.shapes import chain, straight
from geometry.lengths import spoken
from geometry.saying import say
from geometry.vectors import Box

PRINTER_MARGIN = 10.0
"""What printers leave white, mm."""
LEFT_STRIP = 8.0
"""Room for the upright check bar, mm."""
BOTTOM_STRIP = 24.0
"""Room for the lying check bar, the print warning and the cautions, mm."""
TOP_STRIP = 7.0
"""Room for the page's name, mm."""
BAR = 100.0
"""Length of a check bar, mm."""

NOTE = 9.0
"""Of BOTTOM_STRIP for a note under the lying bar, mm."""

FRAME = (PRINTER_MARGIN + LEFT_STRIP, PRINTER_MARGIN + BOTTOM_STRIP, PRINTER_MARGIN, PRINTER_MARGIN + TOP_STRIP)
"""Left, bottom, right and top of a page with a note that are not window, mm."""


def frame_of(note: str) -> Box:
    """The same of a page with that note or, where it is empty, without one."""
    return FRAME if note else (FRAME[0], FRAME[1] - NOTE, *FRAME[2:])


def window_of(width: float, height: float, note: str = "") -> Box:
    """The part of a page (mm) that is left for drawing."""
    left, bottom, right, top = frame_of(note)
    return (left, bottom, width - right, height - top)


def furniture(width: float, height: float, name: str, title: str, number: int, count: int,
              note: str = "", plan: str = "") -> Drawing:
    """All that surrounds the window of a page of that size, in page coordinates; `note` stands under the bar, `plan` says of
    which plan the page is."""
    left = PRINTER_MARGIN
    x0, foot, x1, y1 = window_of(width, height, note)
    marks: list[Mark] = []
    top = y1 + 2.6
    page_words = ", ".join(filter(None, (plan, say("page {number} of {all}", number=number, all=count))))
    room = x1 - left - text_width(page_words, READ) - 4.0
    marks.append(Label(short(f"{title} - {printable(name)}", READ, room), (left, top), READ, "note"))
    marks.append(Label(page_words, (x1, top), READ, "note", anchor="right"))
    marks += check_bar(x0, foot - 5.8, upright=False)
    marks += check_bar(left + 2.8, foot + 2.0, upright=True)
    marks += block(PRINT_AT, (x0 + BAR + 4.0, foot - 3.6), READ, x1 - x0 - BAR - 4.0)[0]
    marks += block(note, (x0, foot - 9.1), LEAST, x1 - x0)[0]
    marks += block(IN_SHORT, (left, PRINTER_MARGIN + 0.3 + LEAST), LEAST, x1 - left)[0]
    return tuple(marks)


def correction_words(width: float, height: float, words: str, foot: float) -> Drawing:
    """What is said beside the lying bar of a page that is corrected for a printer; its window begins `foot` mm up."""
    x0, _, x1, _ = window_of(width, height)
    text = words[0].upper() + words[1:] + "."
    return tuple(block(text, (x0 + BAR + 4.0, foot - 6.6), LEAST, x1 - x0 - BAR - 4.0)[0])


def bar_words() -> str:
    """How long a check bar is: a rule in inches has to show it too (3 15/16 is 0.01 mm more)."""
    return "100 mm" if spoken() == "mm" else '100 mm, 3 15/16"'


def check_bar(x: float, y: float, upright: bool) -> list[Mark]:
    """A 100 mm bar from (x, y) with a tick every 10 mm, the end ticks exactly 100 mm apart."""
    def at(along: float, across: float) -> tuple[float, float]:
        return (x + across, y + along) if upright else (x + along, y + across)
    marks: list[Mark] = [Stroke(straight(at(0.0, 0.0), at(BAR, 0.0)), "check bar")]
    for i in range(11):
        size = 2.6 if i in (0, 10) else 1.8 if i == 5 else 1.0
        marks.append(Stroke(straight(at(10.0 * i, -size), at(10.0 * i, 0.0)), "check bar"))
    # The letters' tops point to -x beside the upright bar, so the words stand right of it.
    place, angle = ((x + 3.1, y + BAR / 2), math.pi / 2) if upright else (at(BAR / 2, 0.9), 0.0)
    return [*marks, Label(bar_words(), place, READ, "note", angle=angle, anchor="middle")]


def window_corners(box: Box) -> list[Mark]:
    """Small brackets at the corners of a window."""
    x0, y0, x1, y1 = box
    size = 3.0
    return [Stroke(chain(((x + dx * size, y), (x, y), (x, y + dy * size))), "tile")
            for x, dx in ((x0, 1), (x1, -1)) for y, dy in ((y0, 1), (y1, -1))]
