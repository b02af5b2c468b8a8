"""What keeps the job book safe beside the history of steps."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from msgspec.structs import replace

from geometry.layout import Book, Headstock
from geometry.layout.book import Time, timed_once

MOST_TAKEN_BACK = 200


class BookRecord:
    """Books as they were before each entry, so that an entry can be taken back and an old book is known as old.

    A step that was worked out from a layout of a moment ago (a long import, say)
    carries the book of that moment: it is known by identity and replaced, so that
    nothing written down meanwhile is lost.
    """

    def __init__(self) -> None:
        self._past: list[tuple[str, Book, Book]] = []
        self._gone: dict[int, Book] = {}

    def note(self, name: str, before: Book, after: Book) -> None:
        """An entry called `name` led from one book to the other."""
        self._past.append((name, before, after))
        del self._past[:-MOST_TAKEN_BACK]

    def last(self) -> tuple[str, Callable[[Book], Book]] | None:
        """The name of the last entry and what takes it out of a book; the entry is then forgotten. None without any."""
        if not self._past:
            return None
        name, before, after = self._past.pop()
        return name, partial(_without_entry, before, after)

    def gone(self, book: Book) -> None:
        """This book is no longer the one of record."""
        self._gone[id(book)] = book

    def kept(self, layout: Headstock, current: Book) -> Headstock:
        """The layout with the book of record in place of one that is out of date."""
        self._gone.pop(id(current), None)
        return replace(layout, book=current) if id(layout.book) in self._gone else layout


def _without_entry(before: Book, after: Book, book: Book) -> Book:
    """A book that has grown from `after` by renamings alone, as it was before the entry that led there.

    Only what the entry changed is put back: all else keeps the names that features have by now.
    """
    changes = {}
    for field in Book.__struct_fields__:
        old, new = getattr(before, field), getattr(after, field)
        if old == new:
            continue
        back = _times_back if field == "times" else _with_back
        changes[field] = back(old, new, getattr(book, field)) if isinstance(old, tuple) else old
    return replace(book, **changes)


def _times_back(old: tuple[Time, ...], new: tuple[Time, ...], now: tuple[Time, ...]) -> tuple[Time, ...]:
    """The times `now`, grown from `new` by renamings, with what differs between `old` and `new` as it was in `old`.

    Where two were put together since, under one name, they stay as they are: which part is whose is known no more.
    """
    if len(new) != len(now):
        return now
    tasks = {_timed(was): one.task for was, one in zip(new, now, strict=True)}
    return timed_once(tuple(replace(one, task=tasks.get(_timed(one), one.task)) for one in old))


def _timed(time: Time) -> tuple[str, str]:
    """What a time is of."""
    return time.piece, time.task.operation


def _with_back(old: tuple, new: tuple, now: tuple) -> tuple:
    """The list `now` with what differs between `old` and `new` as it was in `old`."""
    least = min(len(old), len(new))
    head = next((i for i in range(least) if old[i] != new[i]), least)
    tail = next((i for i in range(least - head) if old[-1 - i] != new[-1 - i]), least - head)
    return (*now[:head], *old[head:len(old) - tail], *now[len(new) - tail:])
