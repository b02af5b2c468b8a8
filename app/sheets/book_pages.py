"""Pages of the job book to fill in by hand: hours a set-up, money a part, and what to do differently."""

from __future__ import annotations

from dataclasses import replace

from app.sheets.lay import Block, Column, fitting, heading, moved, of_marks, space, table
from app.sheets.lay import words as paragraph
from app.sheets.needs import wares
from app.sheets.work import Work
from geometry.drawing import Stroke
from geometry.drawing.shapes import straight
from geometry.layout import Headstock
from geometry.sequence import Operation, minutes

LINE = 7.0
"""Distance of lines to write on, mm."""


def book_blocks(layout: Headstock, work: Work, width: float) -> list[Block]:
    """Hours planned with room for those of a practice piece and of the real one, costs, notes."""
    blocks = [heading("Job book", width, f"{layout.name or 'Unnamed layout'}. Hours are planned from common rates (common "
                      "practice, no source); write down what it took, and the next plan is better.", own_page=True)]
    w = fitting((14, 84, 22, 26, 26), width)
    columns = [Column("steps", w[0]), Column("work", w[1]), Column("planned, min", w[2], True), Column("practice piece", w[3], True),
               Column("real piece", w[4], True)]
    rows = [(_steps(run, work), _what(run), f"{sum(minutes(op, work.rates) for op in run):.0f}", "", "") for run in _stretches(work)]
    c = work.counts
    rows += [("", "setting up and changing over", f"{c.changes.minutes(work.rates):.0f}", "", ""),
             ("", "together", f"{60 * c.hours.total:.0f}", "", "")]
    blocks += [_taller(row) for row in table(columns, rows)]
    blocks += [space(4.0), heading("Money", width)]
    w = fitting((96, 12, 32, 32), width)
    blocks += [_taller(row) for row in table(
        [Column("part", w[0]), Column("no.", w[1], True), Column("each", w[2], True), Column("together", w[3], True)],
        [*((ware.name, str(ware.count), "", "") for ware in wares(layout)), ("wood", "", "", ""), ("template", "", "", ""),
         ("together", "", "", "")])]
    blocks += [space(4.0), heading("Notes: do this differently", width)]
    for note in layout.notes:
        blocks.append(paragraph(f"{note.on}: {note.text}" if note.on else note.text, width))
    return blocks + [of_marks([Stroke(straight((0.0, -LINE), (width, -LINE)), "dimension")], LINE) for _ in range(6)]


def _taller(row: Block) -> Block:
    """A row with room to write in: white above its words."""
    more = LINE - 1.0 - row.height
    return row if row.keep or more <= 0 else replace(row, placed=tuple(moved(row.placed, 0.0, -more)), height=row.height + more)


def _stretches(work: Work) -> list[list[Operation]]:
    """Neighbouring steps at one machine: what a maker does in one go."""
    out: list[list[Operation]] = []
    for op in work.steps:
        if out and out[-1][-1].setup.machine == op.setup.machine and out[-1][-1].kind == op.kind:
            out[-1].append(op)
        else:
            out.append([op])
    return out


def _steps(run: list[Operation], work: Work) -> str:
    first, last = work.number[run[0].id], work.number[run[-1].id]
    return str(first) if first == last else f"{first} to {last}"


def _what(run: list[Operation]) -> str:
    """One step by its title, several by their kind."""
    return run[0].title if len(run) == 1 else f"{len(run)} x {run[0].kind}"
