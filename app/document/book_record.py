"""What keeps the job book safe beside the history of steps."""

from __future__ import annotations

from msgspec.structs import replace

from geometry.layout import Book, Headstock

MOST_TAKEN_BACK = 200


class BookRecord:
    """Books as they were before each entry, so that an entry can be taken back and an old book is known as old.

    A step that was worked out from a layout of a moment ago (a long import, say)
    carries the book of that moment: it is known by identity and replaced, so that
    nothing written down meanwhile is lost.
    """

    def __init__(self) -> None:
        self._past: list[tuple[str, Book]] = []
        self._gone: dict[int, Book] = {}

    def note(self, name: str, before: Book) -> None:
        """An entry called `name` was made after this book."""
        self._past.append((name, before))
        del self._past[:-MOST_TAKEN_BACK]

    def last(self) -> tuple[str, Book] | None:
        """The last entry and the book before it, which is then forgotten; None without any."""
        return self._past.pop() if self._past else None

    def gone(self, book: Book) -> None:
        """This book is no longer the one of record."""
        self._gone[id(book)] = book

    def kept(self, layout: Headstock, current: Book) -> Headstock:
        """The layout with the book of record in place of one that is out of date."""
        self._gone.pop(id(current), None)
        return replace(layout, book=current) if id(layout.book) in self._gone else layout
