"""What keeps the job book safe beside the history of steps."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec import Struct
from msgspec.structs import replace

from geometry.layout import Book, Headstock
from geometry.layout.names import told_of

if TYPE_CHECKING:
    from geometry.edits.in_book import Called

MOST_TAKEN_BACK = 200
MOST_RENAMED = 500
"""Books under other names that are remembered: as many as there are steps in a history."""


class Entry(Struct):
    """What was written down at one time, as it came into the book of every layout of the history."""

    name: str
    before: Book
    after: Book
    """the book of record, without the entry and with it"""
    books: dict[int, tuple[Book, Book]]
    """by the identity of each book with the entry: that book and the one without"""


class BookRecord:
    """Books as they were before each entry, so that an entry can be taken back and an old book is known as old.

    A step that was worked out from a layout of a moment ago (a long import, say)
    carries the book of that moment: it is known by identity and replaced, so that
    nothing written down meanwhile is lost.

    A step may rename features, and their names in the book with them. So what an
    entry is in each book of the history is remembered, and from which book a
    renamed one came: what is taken back is gone under any names, and nothing
    else is.
    """

    def __init__(self) -> None:
        self._entries: list[Entry] = []
        self._gone: dict[int, Book] = {}
        self._renamed: dict[int, tuple[Book, Book, Called]] = {}

    # ---- steps --------------------------------------------------------------
    def kept(self, layout: Headstock, current: Headstock) -> Headstock:
        """The layout, as the step after `current`, with the book of record in place of one that is out of date."""
        self._gone.pop(id(current.book), None)
        if id(layout.book) in self._gone:
            layout = replace(layout, book=current.book)
        from geometry.edits.called_after import called_after  # here: a start renames nothing
        from geometry.edits.in_book import renamed_in_book
        called = called_after(current, layout)
        if called and layout.book is current.book:
            # It has none of the old names; but what an entry has struck out of it, and would be put back, may have them.
            layout = replace(layout, book=replace(current.book))
        if called and renamed_in_book(current.book, called) == layout.book:
            self._came(layout.book, current.book, called)
        return layout

    def _came(self, book: Book, of: Book, called: Called) -> None:
        """This book is that one under other names."""
        self._renamed[id(book)] = book, of, called
        while len(self._renamed) > MOST_RENAMED:
            del self._renamed[next(iter(self._renamed))]

    # ---- entries ------------------------------------------------------------
    def written(self, name: str, before: Book, after: Book, layouts: list[Headstock], at: int) -> list[Headstock]:
        """The layouts of a history, whose number `at` is the present one, with the entry that led `before` to `after`."""
        from app.document.carried import carried, names_now  # here: a start writes nothing down
        entry, made = Entry(name, before, after, {}), []
        known: dict[tuple[int, tuple], Book] = {}
        for layout, names in zip(layouts, names_now(layouts, at, told_of(before) | told_of(after)), strict=True):
            key = id(layout.book), tuple(names.items())
            if key not in known:
                known[key] = after if layout.book is before and not names else carried(layout.book, names, before, after)
                entry.books[id(known[key])] = known[key], layout.book
            made.append(_with_book(layout, known[key]))
        self._entries.append(entry)
        del self._entries[:-MOST_TAKEN_BACK]
        for layout, one in zip(layouts, made, strict=True):
            if one.book is not layout.book:
                self._gone[id(layout.book)] = layout.book
        return made

    def taken_back(self, layouts: list[Headstock], current: Book) -> tuple[str, list[Headstock]] | None:
        """The name of the last entry, which is then forgotten, and the layouts of the history without it. None without any."""
        if not self._entries:
            return None
        entry = self._entries.pop()
        known: dict[int, Book] = {}
        made = [_with_book(layout, self._without(entry, layout.book, known)) for layout in layouts]
        self._gone[id(current)] = current
        return entry.name, made

    def _without(self, entry: Entry, book: Book, known: dict[int, Book]) -> Book:
        """A book without an entry; `known` keeps what was found, so that what is one book stays one."""
        if id(book) in known:
            return known[id(book)]
        if id(book) in entry.books:
            found = entry.books[id(book)][1]
        elif id(book) in self._renamed:
            from geometry.edits.in_book import renamed_in_book
            _, of, called = self._renamed[id(book)]
            was = self._without(entry, of, known)
            found = renamed_in_book(was, called)
            if found is was:
                found = replace(was)  # see `kept`
            self._came(found, was, called)
        else:  # a book from another file
            from app.document.carried import carried
            found = carried(book, {}, entry.after, entry.before)
        known[id(book)] = found
        return found


def _with_book(layout: Headstock, book: Book) -> Headstock:
    return layout if layout.book is book else replace(layout, book=book)
