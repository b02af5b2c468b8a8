"""The hole table on paper, as many pages as it takes, with a box to tick for each drilling."""

from __future__ import annotations

from collections.abc import Sequence

from app.sheets.hole_table import LEFT_COLUMNS, PAPER_HEAD, paper_rows
from app.sheets.lay import TICKED, Block, Column, heading, natural, paragraph, table
from app.sheets.lengths import unit_words
from app.sheets.work import Work
from geometry.drawing.heights import LEAST, READ
from geometry.layout import Headstock
from geometry.saying import say
from geometry.sequence.drill_ops import SMALL
from geometry.solids import holes
from geometry.strings.square_line import base_words

GAP = 2.2
"""Least white between two columns, mm."""


def hole_blocks(layout: Headstock, work: Work, width: float) -> list[Block]:
    """What the columns mean, then a row for each time that is drilled; none for a layout without holes. Wide tables are set in the least letters."""
    rows = _drilled_once(paper_rows(layout), work)
    if not rows:
        return []
    about = say("{unit_words} and degrees. x, y, z: the mark on the square blank. stop: drill "
                "depth from the mark to full diameter.", unit_words=unit_words())
    said = []
    if any(not d.upright and d.role in SMALL for hole in holes(layout) for d in hole.drillings):
        said.append(say("Screw pilots in the edges: the running order drills them by hand through the plate, once "
                        "the outline is finished, as deep as depth says. Mark and stop hold only while the edges "
                        "are square."))
    if slanted := base_words(layout.nut):
        said.append(slanted)
    cells = list(rows.values())
    lines, room = [PAPER_HEAD, *cells], width - TICKED
    height = next((one for one in (READ, LEAST) if sum(natural(lines, one, None, GAP)) + GAP * (len(PAPER_HEAD) - 1) <= room), LEAST)
    widths = natural(lines, height, room, GAP)
    gap = (room - sum(widths)) / (len(widths) - 1)
    columns = [Column(title, wide, i not in LEFT_COLUMNS) for i, (title, wide) in enumerate(zip(PAPER_HEAD, widths, strict=True))]
    steps: dict[str, list[str]] = {}
    for op in work.ops:
        for d in op.drillings:
            steps.setdefault(d.id, []).append(op.id)
    ticked = [work.mark(*steps.get(id, ())) for id in rows]
    return [heading(say("Hole table"), width, about), *(paragraph(text, width, keep=True) for text in said),
            *table(columns, cells, height, gap, ticks=True, marks_of=ticked)]


def _drilled_once(rows: Sequence[tuple[str, ...]], work: Work) -> dict[str, tuple[str, ...]]:
    """The rows by the ids of their drillings; a pin hole that is a bore too stands in the row of the bore, which has both names."""
    cells = {row[0]: row for row in rows}
    for op in work.ops:
        if op.kind == "pin hole" and len(op.drillings) == 2:
            pin, bore = (one.id for one in op.drillings)
            both = zip(cells[bore][:2], cells.pop(pin)[:2], strict=True)
            cells[bore] = (*(", ".join(names) for names in both), *cells[bore][2:])
    return cells
