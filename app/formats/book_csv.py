"""The job book as one table for a spreadsheet."""

from __future__ import annotations

from collections.abc import Sequence

from app.formats.csv_out import Cell, csv_bytes
from geometry.book import cost, lines
from geometry.checks.in_wood_words import made_words
from geometry.checks.said import read
from geometry.layout import Book, Task
from geometry.saying import say
from geometry.terms import term

HEAD = (say("section", about="column"), say("piece", about="column"), say("item", about="column"), say("about", about="column"), say("count", about="column"), say("planned", about="column"), say("value", about="column"), say("unit", about="column"), say("total", about="column"), say("place", about="column"))
"""One table with one meaning a column: `about` is the feature, operation or way of measuring; money has a count,
the price of one as value and a total; what is done has the place of what was drilled or cut, as far as that is known."""


def book_table(book: Book, planned: Sequence[Task]) -> list[tuple[Cell, ...]]:
    """Rows under HEAD: times, steps done, money, notes, readings. Minutes, mm (tilt: degrees); amounts to the last digit."""
    rows: list[tuple[Cell, ...]] = []
    for line in lines(book, planned):
        rows += [(say("time"), term(piece), line.task.title, line.task.operation, None, line.planned, spent, "min", None, None)
                 for piece, spent in (("practice", line.practice), ("real", line.real)) if spent is not None]
    rows += [(say("done"), term(one.piece), one.task.title, one.task.operation, None, None, None, None, None, read(made_words(one)) or None) for one in book.done]
    rows += [(say("money"), term(p.piece), p.part, None, p.count, None, p.each, book.currency, cost(p), None) for p in book.prices]
    for one in book.remarks:
        about = one.on or (None if one.task is None else one.task.operation)
        rows.append((say("note"), term(one.piece), one.text, about, None, None, None, say("done") if one.done else None, None, None))
    for r in book.readings:
        about = " ".join(word for word in (term(r.what), term(r.how), r.other) if word)
        rows.append((say("reading"), term(r.piece), r.drilling, about, None, r.planned, r.value,
                     say("degrees") if r.what == "tilt" else "mm", None, None))
    return rows


def book_bytes(book: Book, planned: Sequence[Task]) -> bytes:
    """The table as it is saved."""
    return csv_bytes(HEAD, book_table(book, planned))
