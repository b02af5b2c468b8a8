"""Every entry into the job book as a pure function from book to book.

GeometryError with one sentence when an entry makes no sense; the book is then
as it was. The time of day comes from the caller as a number.
"""

from __future__ import annotations

import math
import re
from decimal import Decimal

from msgspec.structs import replace

from geometry.errors import GeometryError, quoted
from geometry.layout import NOTHING, Book, Clock, Made, Piece, Price, Reading, Remark, Task, Time
from geometry.layout.book import LONGEST
from geometry.layout.validate import validate_book
from geometry.lengths import mm
from geometry.saying import say

LONGEST_PART, MOST_PARTS = 200, 100_000
LONGEST_NOTE = 4000
FARTHEST = 5000.0
"""What the layout's file takes of names, numbers, notes (letters) and readings (mm): more could not be opened again."""


def minutes_of(book: Book, piece: Piece, operation: str) -> float | None:
    """Minutes written down for an operation of a piece; None without any."""
    return next((t.minutes for t in book.times if (t.piece, t.task.operation) == (piece, operation)), None)


def set_minutes(book: Book, piece: Piece, task: Task, minutes: float | None, made: Made = NOTHING) -> Book:
    """The minutes of an operation as typed, with what it made, which the first entry keeps; None strikes the entry out."""
    if minutes is not None and not 0 <= minutes <= LONGEST:
        raise GeometryError(say("An operation takes between 0 and {longest:,.0f} minutes: {minutes:g} cannot be.",
                                longest=LONGEST, minutes=minutes))
    at = next((i for i, t in enumerate(book.times) if (t.piece, t.task.operation) == (piece, task.operation)), None)
    known = made if at is None or not (book.times[at].hole or book.times[at].cut) else book.times[at]
    entry = [] if minutes is None else [Time(piece=piece, task=task, minutes=minutes, hole=known.hole, cut=known.cut)]
    if at is None:
        return replace(book, times=(*book.times, *entry)) if entry else book
    return replace(book, times=(*book.times[:at], *entry, *book.times[at + 1:]))


def start(book: Book, piece: Piece, task: Task, now: float, made: Made = NOTHING) -> Book:
    """Let the timer run for an operation from now (s). Only one runs: another is stopped by the maker, never by itself."""
    if book.clock is not None:
        raise GeometryError(say("The timer runs for “{title}”: stop it first.", title=book.clock.task.title))
    return replace(book, clock=Clock(piece=piece, task=task, since=now, hole=made.hole, cut=made.cut))


def running(book: Book, now: float) -> float:
    """Minutes that the timer has run, 0 when none runs or when the time of day was set back."""
    return 0.0 if book.clock is None else max(0.0, (now - book.clock.since) / 60)


def stop(book: Book, now: float) -> Book:
    """Stop the timer and add its minutes to those of its operation. Of one that has not run nothing is written down: no minutes would
    stand there as what the work took. GeometryError when none runs."""
    clock = book.clock
    if clock is None:
        raise GeometryError(say("No timer runs."))
    ran = round(running(book, now), 2)
    if not ran:
        return drop_timer(book)
    before = minutes_of(book, clock.piece, clock.task.operation) or 0.0
    return set_minutes(drop_timer(book), clock.piece, clock.task, round(min(LONGEST, before + ran), 2), Made(hole=clock.hole, cut=clock.cut))


def drop_timer(book: Book) -> Book:
    """Stop the timer without counting it."""
    return replace(book, clock=None)


def begin_anew(book: Book) -> Book:
    """The piece on the bench begun anew: its ticks, times, readings and costs are struck out. Notes stay, for they are what the next
    one is done better by. GeometryError while the timer runs for it."""
    if book.clock is not None and book.clock.piece == book.piece:
        raise GeometryError(say("The timer runs for “{title}”: stop it first.", title=book.clock.task.title))
    kept = {field: tuple(one for one in getattr(book, field) if one.piece != book.piece) for field in ("done", "times", "prices", "readings")}
    return replace(book, **kept)


def read_amount(text: str) -> Decimal:
    """Money as typed, with a point or a comma before the decimals and none to part thousands: `12.50`, `12,5`.

    GeometryError for what is no plain number, and for `1,234`, which may be meant either way.
    """
    match = re.fullmatch(r"([+-]?)(\d*)(?:[.,](\d*))?", re.sub(r"\s", "", text).replace("−", "-"))
    if match is None or not (match[2] or match[3]):
        raise GeometryError(say('{text} is not an amount of money: write for example 12.50 or 12,50.',
                                text=quoted(text)))
    _refuse_thousands(text, match[2], match[3] or "")
    return Decimal(f"{match[1]}{match[2] or '0'}.{match[3] or '0'}") if match[3] else Decimal(f"{match[1]}{match[2]}")


def _refuse_thousands(text: str, whole: str, part: str) -> None:
    """GeometryError where the sign between two groups of digits may as well set thousands apart: `1,234`, `12.500`."""
    if len(part) == 3 and whole.strip("0") and len(whole) <= 3:
        raise GeometryError(say('{text} may be read two ways: write {whole}{part} or {whole}.{part}0.',
                                text=quoted(text), whole=whole, part=part))


def read_minutes(text: str) -> float | None:
    """Minutes as typed: `25`, `12,5`, `1:30` (hours and minutes), `1.5 h`, `40 min`, `90 s`, units in full too; None for nothing.

    GeometryError with a sentence for anything else, and for less than nothing.
    """
    cleaned = text.strip().lower().replace(",", ".")
    if not cleaned:
        return None
    factor = 1.0
    try:
        if ":" in cleaned:
            hours, rest = cleaned.split(":")
            if not (hours.isdecimal() and rest.isdecimal() and int(rest) < 60):
                raise ValueError
            return float(60 * int(hours) + int(rest))
        for ending, size in (("minutes", 1.0), ("minute", 1.0), ("min", 1.0), ("hours", 60.0), ("hour", 60.0), ("h", 60.0), ("s", 1 / 60)):
            if cleaned.endswith(ending):
                cleaned, factor = cleaned.removesuffix(ending), size
                break
        value = float(cleaned) * factor
        if not 0.0 <= value < math.inf:
            raise ValueError
    except ValueError:
        raise GeometryError(say('{text} is not a time: write minutes, for example 25, or 1:30, or 1.5 h.',
                                text=quoted(text))) from None
    if factor == 1.0:
        _refuse_thousands(text, *cleaned.strip().partition(".")[::2])
    return value


def put_price(book: Book, at: int | None, price: Price) -> Book:
    """A price in place of the one at that index; behind the others with None."""
    if not price.part.strip():
        raise GeometryError(say("A cost needs a word for what was paid for."))
    if len(price.part) > LONGEST_PART:
        raise GeometryError(say("What was paid for has a name of at most {most} letters: this one has {n}.",
                                most=LONGEST_PART, n=len(price.part)))
    if not 0 <= price.count <= MOST_PARTS:
        raise GeometryError(say("The number of parts is between 0 and {most:,}.", most=MOST_PARTS))
    prices = list(book.prices)
    prices[len(prices) if at is None else at:len(prices) if at is None else at + 1] = [price]
    return validate_book(replace(book, prices=tuple(prices)))


def remove_price(book: Book, at: int) -> Book:
    """The book without the price at that index."""
    return replace(book, prices=_without(book.prices, at))


def add_remark(book: Book, remark: Remark) -> Book:
    """One more note, last."""
    return replace(book, remarks=(*book.remarks, _worded(remark)))


def put_remark(book: Book, at: int, remark: Remark) -> Book:
    """A note in place of the one at that index."""
    return replace(book, remarks=(*book.remarks[:at], _worded(remark), *book.remarks[at + 1:]))


def remove_remark(book: Book, at: int) -> Book:
    """The book without the note at that index."""
    return replace(book, remarks=_without(book.remarks, at))


def put_reading(book: Book, reading: Reading) -> Book:
    """A reading in place of the one of the same kind on the same hole of the same piece; else behind the others."""
    if not abs(reading.value) <= FARTHEST:
        raise GeometryError(say("A reading of {reading} cannot be: no headstock is longer than {farthest}.",
                                reading=mm(reading.value), farthest=mm(FARTHEST)))
    same = [i for i, one in enumerate(book.readings) if _key(one) == _key(reading)]
    if not same:
        return replace(book, readings=(*book.readings, reading))
    return replace(book, readings=(*book.readings[:same[0]], reading, *book.readings[same[0] + 1:]))


def remove_reading(book: Book, reading: Reading) -> Book:
    """The book without that reading's kind on that hole of that piece."""
    return replace(book, readings=tuple(one for one in book.readings if _key(one) != _key(reading)))


def _worded(remark: Remark) -> Remark:
    if not remark.text.strip():
        raise GeometryError(say("A note needs some words; strike it out instead when there is nothing to say."))
    if len(remark.text) > LONGEST_NOTE:
        raise GeometryError(say("A note has at most {most:,} letters: this one has {n:,}. Write it in "
                                "two.",
                                most=LONGEST_NOTE, n=len(remark.text)))
    return remark


def _key(reading: Reading) -> tuple:
    return reading.piece, reading.drilling, reading.what, reading.other


def _without(items: tuple, at: int) -> tuple:
    return (*items[:at], *items[at + 1:])
