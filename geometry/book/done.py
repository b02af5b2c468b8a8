"""Which steps are done on the piece on the bench, so that a list made later still says so."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry.checks.in_wood import told
from geometry.checks.words import name
from geometry.layout import Book, Bored, Done, Task
from geometry.sequence import Operation
from geometry.solids.in_wood import bored, same_hole


def done_steps(book: Book) -> dict[str, int]:
    """Operations that are ticked off on the piece on the bench, each with the number that its step had then."""
    return {one.task.operation: one.number for one in book.done if one.piece == book.piece}


def otherwise(book: Book, ops: Iterable[Operation]) -> dict[str, str]:
    """Operations that are ticked off on the piece on the bench and drill another hole now than was drilled, each with a sentence
    that tells both and keeps its lengths (geometry.checks.said). A tick of which no hole is known counts as it stands."""
    ticks = {one.task.operation: one.hole for one in book.done if one.piece == book.piece and one.hole is not None}
    found = {}
    for op in ops if ticks else ():
        was, now = ticks.get(op.id), hole_of(op)
        if was is not None and now is not None and not same_hole(was, now):
            found[op.id] = told(name(op.drillings[0]), was, now)
    return found


def hole_of(op: Operation) -> Bored | None:
    """The hole that an operation leaves in the wood; None when it drills none by itself: what it opens a bore to is no hole."""
    if op.kind == "final diameter" or not op.drillings or not op.id.endswith(f" {op.drillings[0].id}"):
        return None
    return bored(op.drillings[0])


def begun_steps(book: Book) -> frozenset[str]:
    """Operations that took time on the piece on the bench and are not ticked off."""
    timed = {time.task.operation for time in book.times if time.piece == book.piece and time.minutes > 0}
    if book.clock is not None and book.clock.piece == book.piece:
        timed.add(book.clock.task.operation)
    return frozenset(timed - set(done_steps(book)))


def tick_off(book: Book, task: Task, number: int, hole: Bored | None = None) -> Book:
    """The step done on the piece on the bench, with what it drilled (see `hole_of`). It keeps the number that it was ticked off
    with first; ticked again it has the hole that is drilled now."""
    one = Done(piece=book.piece, task=task, number=number, hole=hole)
    at = next((i for i, old in enumerate(book.done) if (old.piece, old.task.operation) == (book.piece, task.operation)), None)
    if at is None:
        return replace(book, done=(*book.done, one))
    if hole is None or book.done[at].hole == hole:
        return book
    return replace(book, done=(*book.done[:at], replace(one, number=book.done[at].number), *book.done[at + 1:]))


def open_again(book: Book, operation: str) -> Book:
    """The step not done on the piece on the bench."""
    return replace(book, done=tuple(one for one in book.done if (one.piece, one.task.operation) != (book.piece, operation)))
