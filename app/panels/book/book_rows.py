"""The words in the tables of the job book."""

from __future__ import annotations

from collections.abc import Container, Mapping, Sequence

from app.panels.order.order_rows import minutes_words
from geometry.book import Line, cost, money_words, pinned_words, spent_on, ticked, total, total_cost
from geometry.layout import PIECES, Book, Piece, Price, Remark, drilling_of
from geometry.saying import number, say
from geometry.solids.spots import SET_DOWN
from geometry.terms import term


def cell_minutes(value: float | None) -> str:
    """Minutes to a tenth for a cell, nothing for None."""
    return "" if value is None else number(value, ".0f" if f"{value:.1f}".endswith(".0") else ".1f")


def signed(value: float | None) -> str:
    """A difference in minutes with its sign; `0` for none."""
    if value is None:
        return ""
    text = cell_minutes(abs(value))
    return text if text == "0" else ("+" if value > 0 else "−") + text


def hour_cells(rows: Sequence[Line], numbers: Mapping[str, int], book: Book, done: Container[str] = (),
               otherwise: Container[str] = ()) -> list[tuple[str, ...]]:
    """Step (with a tick where it is `done`, or was and has left the drawing), work (and that it is drilled or cut `otherwise` than drawn), planned, practice piece, real
    piece, difference, timer; the last row is their sum. Without numbers there is no plan yet, and nothing is known to have left it."""
    running = None if book.clock is None else book.clock.task.operation
    made, ticks = [], ticked(book)
    for row in rows:
        id = row.task.operation
        word = say("stop", about="the clock") if id == running else say("start") if row.current and running is None else ""
        number = str(numbers[id]) if id in numbers else "" if row.current or not numbers else say("old")
        there = id in done or id in ticks and not row.current and id not in otherwise
        number = f"✓ {number}".rstrip() if there else number
        title = row.task.title or id
        if id in otherwise:
            title = (say("{title} (drilled otherwise)", title=title) if drilling_of(row.task) is not None else
                     say("{title} (drawn otherwise now)", title=title) if id.startswith(SET_DOWN) else say("{title} (cut otherwise)", title=title))
        made.append((number, title, cell_minutes(row.planned), cell_minutes(row.practice), cell_minutes(row.real), signed(row.difference), word))
    both = [row for row in rows if row.difference is not None]
    sums = {piece: total(rows, piece) for piece in PIECES}
    made.append(("", say("together"), cell_minutes(sums["real"].planned), cell_minutes(sums["practice"].spent),
                 cell_minutes(sums["real"].spent), signed(sum(row.difference for row in both)) if both else "", ""))
    return made


def price_cells(book: Book, piece: Piece) -> list[tuple[str, ...]]:
    """Part, number, each, together of one piece; then an empty row for the next one, then the sum."""
    made = [(p.part, str(p.count), money_words(p.each), money_words(cost(p))) for _, p in prices_of(book, piece)]
    return [*made, ("", "", "", ""), (say("together"), "", book.currency, money_words(spent_on(book, piece)))]


def prices_of(book: Book, piece: Piece) -> list[tuple[int, Price]]:
    """Prices of a piece with their places in the book."""
    return [(i, price) for i, price in enumerate(book.prices) if price.piece == piece]


def note_cells(book: Book, piece: Piece) -> list[tuple[str, ...]]:
    """Note, where it is pinned, piece, whether it was seen to; then an empty row for the next one. Notes of both pieces
    are shown, those of the piece on the bench first."""
    pieces = {key: term(key) for key in PIECES}  # once: there may be thousands of notes
    done, still = say("done"), say("open")
    made = [(note.text, pinned_words(note), pieces[note.piece], done if note.done else still) for _, note in notes_of(book, piece)]
    return [*made, ("", "", "", "")]


def notes_of(book: Book, piece: Piece) -> list[tuple[int, Remark]]:
    """Notes with their places in the book, those of one piece first."""
    return sorted(enumerate(book.remarks), key=lambda item: (item[1].piece != piece, item[0]))


def keys_of(records: Sequence[tuple[int, Price | Remark]]) -> list[tuple[int, Price | Remark]]:
    """What rows of prices or notes are of: the very record, for two may be alike."""
    return [(id(record), record) for _, record in records]


def sum_facts(rows: Sequence[Line], book: Book, done: Container[str] = (), otherwise: Container[str] = ()) -> list[tuple[str, str]]:
    """Sums of the piece on the bench, then one piece against the other; what is made `otherwise` than drawn is left to do."""
    s = total(rows, book.piece, done, otherwise)
    facts = [(say("Planned"), minutes_words(s.planned)),
             (say("Spent, {timed} of {of} entries", timed=s.timed, of=s.of), minutes_words(s.spent)),
             (say("Plan for those entries"), minutes_words(s.planned_of_timed)), (say("Left, by the plan"), minutes_words(s.left)),
             (say("Money"), money_words(spent_on(book, book.piece), book.currency))]
    both = [row for row in rows if row.difference is not None]
    if both:
        facts.append((say("Real against practice, {n} timed on both", n=len(both)), f"{signed(sum(row.difference for row in both))} min"))
    facts.append((say("Money, both pieces"), money_words(total_cost(book.prices), book.currency)))
    return facts
