"""Pages of the job book: hours a set-up, money a part, what to do differently; what is not written down yet is to fill in."""

from __future__ import annotations

from collections import Counter

from msgspec.structs import replace

from app.sheets.lay import Block, Column, fitting, heading, moved, of_marks, paragraph, space, table
from app.sheets.needs import wares
from app.sheets.words import numbers
from app.sheets.work import Work
from geometry.book import CHANGING, cost, lines, money_words, pinned_words, spent_on, tasks
from geometry.checks.in_wood import called_now
from geometry.drawing import Stroke
from geometry.drawing.shapes import straight
from geometry.layout import PIECES, Book, Headstock
from geometry.saying import say
from geometry.sequence import Operation, minutes
from geometry.terms import term

LINE = 7.0
"""Distance of lines to write on, mm."""


def book_blocks(layout: Headstock, work: Work, width: float, tall: float = LINE - 1.0) -> list[Block]:
    """Hours planned with room for those of a practice piece and of the real one, costs, notes; rows no less than `tall` (mm)."""
    blocks = [heading(say("Job book"), width, say("{name}. Hours are planned from common rates (common practice, no "
                                             "source); write down what it took, and the next plan is better.",
                                             name=layout.name or say("Unnamed layout")))]
    w = fitting((20, 78, 22, 26, 26), width)
    columns = [Column(say("steps"), w[0]), Column(say("work"), w[1]), Column(say("planned, min"), w[2], True), Column(say("practice piece"), w[3], True),
               Column(say("real piece"), w[4], True)]
    book, c = called_now(layout, layout.book.piece), work.counts
    rows = [(_steps(run, work), _what(run), f"{sum(minutes(op, work.rates) for op in run):.0f}",
             *_spent(book, [op.id for op in run])) for run in _stretches(work)]
    gone = [line.task.operation for line in lines(book, tasks(work.steps, c.changes))
            if not line.current and (line.practice, line.real) != (None, None)]
    rows.append(("", say("setting up and changing over"), f"{c.changes.minutes(work.rates):.0f}", *_spent(book, [CHANGING])))
    if gone:
        rows.append(("", say("timed, and no longer in the order"), "", *_spent(book, gone)))
    rows.append(("", say("together"), f"{60 * c.hours.total:.0f}", *_spent(book, [time.task.operation for time in book.times])))
    blocks += [taller(row, tall) for row in table(columns, rows)]
    blocks += [space(4.0), heading(say("Money"), width)]
    blocks += [taller(row, tall) for row in _money(layout, width)]
    blocks += [space(4.0), heading(say("Notes: do this differently"), width)]
    noted = bool(layout.notes or book.remarks)
    for note in layout.notes:
        blocks.append(paragraph(f"{note.on}: {note.text}" if note.on else note.text, width))
    for remark in book.remarks:
        about = pinned_words(remark)
        piece = f"{PIECES_IN_WORDS[remark.piece]}, {about}" if about else PIECES_IN_WORDS[remark.piece]
        text = say("{text} (seen to)", text=remark.text) if remark.done else remark.text
        blocks.append(paragraph(f"{piece}: {text}", width))
    return blocks + [of_marks([Stroke(straight((0.0, -LINE), (width, -LINE)), "dimension")], LINE, keep=n == 0 and not noted, spare=noted or n > 1) for n in range(6)]


PIECES_IN_WORDS = {"practice": say("practice piece"), "real": say("real piece")}


def _spent(book: Book, operations: list[str]) -> tuple[str, str]:
    """Minutes written down for some operations, practice piece and real piece; room to write where nothing was."""
    made = []
    for piece in PIECES:
        found = [time.minutes for time in book.times if time.piece == piece and time.task.operation in operations]
        made.append(f"{sum(found):.0f}" if found else "")
    return made[0], made[1]


def _money(layout: Headstock, width: float) -> list[Block]:
    """What was paid, a sum a piece; with nothing written down yet, a form with the parts of the layout."""
    book = layout.book
    w = fitting((96, 12, 32, 32), width)
    columns = [Column(say("part"), w[0]), Column(say("no."), w[1], True), Column(say("each"), w[2], True), Column(say("together"), w[3], True)]
    rows: list[tuple[str, str, str, str]] = []
    for piece in PIECES:
        own = [price for price in book.prices if price.piece == piece]
        rows += [(f"{price.part} ({term(piece)})", str(price.count), money_words(price.each), money_words(cost(price))) for price in own]
        if own:
            rows.append((say("together, {piece}", piece=PIECES_IN_WORDS[piece]), "", "", money_words(spent_on(book, piece), book.currency)))
    if not rows:
        needed = list(wares(layout))
        names = Counter(ware.name for ware in needed)
        rows = [*((ware.name if names[ware.name] == 1 else f"{ware.name}: {ware.sizes}", str(ware.count), "", "") for ware in needed), (say("wood"), "", "", ""), (say("template"), "", "", "")]
        rows.append((say("together"), "", "", ""))
    return table(columns, rows)


def taller(row: Block, tall: float) -> Block:
    """A row with room to write in (mm): white above its words."""
    more = tall - row.height
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
    return numbers([work.number[op.id] for op in run])


def _what(run: list[Operation]) -> str:
    """One step by its title, several by their kind."""
    return run[0].title if len(run) == 1 else f"{len(run)} x {term(run[0].kind)}"
