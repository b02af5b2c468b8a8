"""Which steps are done on the piece on the bench, so that a list made later still says so."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.layout import Book, Done, Task


def done_steps(book: Book) -> dict[str, int]:
    """Operations that are ticked off on the piece on the bench, each with the number that its step had then."""
    return {one.task.operation: one.number for one in book.done if one.piece == book.piece}


def begun_steps(book: Book) -> frozenset[str]:
    """Operations that took time on the piece on the bench and are not ticked off."""
    timed = {time.task.operation for time in book.times if time.piece == book.piece and time.minutes > 0}
    if book.clock is not None and book.clock.piece == book.piece:
        timed.add(book.clock.task.operation)
    return frozenset(timed - set(done_steps(book)))


def tick_off(book: Book, task: Task, number: int) -> Book:
    """The step done on the piece on the bench; it keeps the number that it was ticked off with first."""
    if task.operation in done_steps(book):
        return book
    return replace(book, done=(*book.done, Done(piece=book.piece, task=task, number=number)))


def open_again(book: Book, operation: str) -> Book:
    """The step not done on the piece on the bench."""
    return replace(book, done=tuple(one for one in book.done if (one.piece, one.task.operation) != (book.piece, operation)))
