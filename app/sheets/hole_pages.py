"""The hole table on paper, as many pages as it takes, with a box to tick for each drilling."""

from __future__ import annotations

from app.formats.letters import text_width
from app.formats.paper import Box
from app.sheets.hole_table import LEFT_COLUMNS, PAPER_HEAD, paper_rows
from app.sheets.lay import TICKED, tick
from app.sheets.lengths import unit_words
from app.sheets.words import block
from app.sheets.work import Work
from geometry.drawing import Drawing, Label, Mark, Stroke
from geometry.drawing.heights import READ
from geometry.drawing.shapes import straight
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.drill_ops import SMALL
from geometry.solids import holes
from geometry.strings.square_line import slant_words

PITCH = 4.8
"""Distance of rows, mm."""
GAP = 4.0
"""Least white between two columns, mm."""


def hole_tables(layout: Headstock, work: Work, window: Box) -> list[Drawing]:
    """One drawing a page in page coordinates; none for a layout without holes."""
    rows = paper_rows(layout)
    slanted = slant_words(layout.nut)
    by_hand = any(not d.upright and d.role in SMALL for hole in holes(layout) for d in hole.drillings)
    fit = int((window[3] - window[1] - (27.0 if by_hand else 15.0) - (12.0 if slanted else 0.0)) / PITCH)
    return [_table(rows[i:i + fit], work, window, rows, by_hand, slanted) for i in range(0, len(rows), fit)]


def _table(rows: list[tuple[str, ...]], work: Work, window: Box, all_rows: list[tuple[str, ...]], by_hand: bool, slanted: str) -> Drawing:
    x0, _, x1, top = window
    places = _columns(all_rows, x0 + TICKED + 0.4, x1)
    marks: list[Mark] = [Label(say("{unit_words} and degrees. x, y, z: the mark on the square blank. stop: drill "
                                   "depth from the mark to full diameter.",
                                   unit_words=unit_words()), (x0, top - READ), READ, "note")]
    y = top - 8.0
    if by_hand:
        lines, low = block(say("Screw pilots in the edges: the running order drills them by hand through the plate, once "
                             "the outline is finished, as deep as depth says. Mark and stop hold only while the edges "
                             "are square."), (x0, top - 2 * READ), READ, x1 - x0)
        marks += lines
        y = low - 4.0
    if slanted:
        lines, low = block(slanted, (x0, y + 4.0), READ, x1 - x0)
        marks += lines
        y = low - 4.0
    marks += _row(PAPER_HEAD, places, y)
    marks.append(Stroke(straight((x0, y - 1.3), (x1, y - 1.3)), "tile"))
    before = rows[0][0].rsplit(".", 2)[0] if rows else ""
    steps: dict[str, list[str]] = {}
    for op in work.ops:
        for d in op.drillings:
            steps.setdefault(d.id, []).append(op.id)
    for row in rows:
        y -= PITCH
        owner = row[0].rsplit(".", 2)[0]
        if owner != before:
            marks.append(Stroke(straight((x0, y + PITCH - 1.3), (x1, y + PITCH - 1.3)), "dimension"))
            before = owner
        marks += tick(x0, y, mark=work.mark(*steps.get(row[0], ())))
        marks += _row(row, places, y)
    return tuple(marks)


def _columns(rows: list[tuple[str, ...]], x0: float, x1: float) -> list[tuple[float, str, float]]:
    """(x, anchor, capital height) of each column: as wide as its longest cell, the rest of the room shared out.

    When the words are wider than the page all columns use smaller letters.
    """
    widths = [max(text_width(line[i], READ) for line in (PAPER_HEAD, *rows)) for i in range(len(PAPER_HEAD))]
    room = x1 - x0
    height = READ * min(1.0, room / (sum(widths) + GAP * 0.5 * (len(widths) - 1)))
    widths = [width * height / READ for width in widths]
    gap = (room - sum(widths)) / (len(widths) - 1)
    places, x = [], x0
    for i, width in enumerate(widths):
        left = i in LEFT_COLUMNS
        places.append((x if left else x + width, "left" if left else "right", height))
        x += width + gap
    return places


def _row(cells: tuple[str, ...], places: list[tuple[float, str, float]], y: float) -> list[Mark]:
    return [Label(cell, (x, y), height, "note", anchor=anchor)
            for cell, (x, anchor, height) in zip(cells, places, strict=True)]
