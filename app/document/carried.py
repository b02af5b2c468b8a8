"""An entry into the job book, carried over to the book of another step of the history, in which features have other names."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from operator import attrgetter

from msgspec.structs import replace

from geometry.edits.called_after import called_after
from geometry.edits.in_book import renamed_in_book
from geometry.layout import Book, Headstock
from geometry.layout.parts import Part

ONE_OF_A_KIND: dict[str, Callable[[Part], object]] = {
    "done": attrgetter("piece", "task.operation"), "times": attrgetter("piece", "task.operation"),
    "readings": attrgetter("piece", "drilling", "what", "other")}
"""By what an entry of these lists is known: no list has two that are the same."""


def names_now(layouts: Sequence[Headstock], at: int, told: Iterable[str]) -> list[dict[str, str]]:
    """For each layout of a history, what its features are called in layout number `at`: of those that `told` tells by the names
    there, gone or not, and only those that differ."""
    found: list[dict[str, str]] = [{} for _ in layouts]
    # A way from `at` to either end, along which each layout but the first has a neighbour that is nearer.
    for way in (range(at, -1, -1), range(at, len(layouts))):
        here = {name: name for name in told}
        for near, i in zip(way, way[1:], strict=False):
            called = called_after(*((layouts[i], layouts[near]) if i < near else (layouts[near], layouts[i])))
            if called is not None:  # done twice it gives the name itself: it leads both ways
                here = {there: called(name) for there, name in here.items()}
            found[i] = {name: there for there, name in here.items() if name != there}
    return found


def carried(book: Book, names: Mapping[str, str], before: Book, after: Book) -> Book:
    """`book` with the entry that led from `before` to `after`; `names` says what its features are called there.

    Everything that the entry left alone stays as it is in `book`. A book from another file, which never held what the entry
    changed, gets what it added.
    """
    back = {new: old for old, new in names.items()}
    seen = renamed_in_book(book, lambda name: names.get(name, name))
    written = renamed_in_book(after, lambda name: back.get(name, name))
    changes: dict[str, object] = {}
    for field in Book.__struct_fields__:
        old, new, put = getattr(before, field), getattr(after, field), getattr(written, field)
        if old == new:
            continue
        if not isinstance(old, tuple):
            changes[field] = put
        elif getattr(seen, field) == old:
            changes[field] = _spliced(old, new, put, getattr(book, field))
        elif field in ONE_OF_A_KIND:
            changes[field] = _put_in(old, new, put, getattr(seen, field), getattr(book, field), ONE_OF_A_KIND[field])
        else:
            changes[field] = _exchanged(old, new, put, getattr(seen, field), getattr(book, field))
    made = replace(book, **changes)
    return book if made == book else made


def _between(old: tuple, new: tuple) -> tuple[int, int]:
    """How many items two lists have alike at their beginning, and at their end."""
    least = min(len(old), len(new))
    head = next((i for i in range(least) if old[i] != new[i]), least)
    return head, next((i for i in range(least - head) if old[-1 - i] != new[-1 - i]), least - head)


def _spliced(old: tuple, new: tuple, put: tuple, now: tuple) -> tuple:
    """The list `now`, item for item the same as `old`, with what differs between `old` and `new`, as `put` has it."""
    head, tail = _between(old, new)
    return (*now[:head], *put[head:len(put) - tail], *now[len(now) - tail:])


def _exchanged(old: tuple, new: tuple, put: tuple, seen: tuple, now: tuple) -> tuple:
    """The list `now` (`seen` has its items under other names) without what `old` alone has and with what `new` alone has."""
    head, tail = _between(old, new)
    left, at = list(zip(seen, now, strict=True)), None
    for gone in old[head:len(old) - tail]:
        place = next((i for i, (one, _) in enumerate(left) if one == gone), None)
        if place is not None:
            del left[place]
            at = place if at is None else min(at, place)
    items = [one for _, one in left]
    at = len(items) if at is None else at
    items[at:at] = put[head:len(put) - tail]
    return tuple(items)


def _put_in(old: tuple, new: tuple, put: tuple, seen: tuple, now: tuple, known_by: Callable[[Part], object]) -> tuple:
    """The list `now` (`seen` has its items under other names) with what differs between `old` and `new`, as `put` has it, in the place
    of what is known by the same."""
    was, will = ({known_by(one): one for one in items} for items in (old, new))
    as_put = {known_by(one): other for one, other in zip(new, put, strict=True)}
    changed = [key for key in {**was, **will} if was.get(key) != will.get(key)]
    there = {known_by(one) for one in seen}
    kept = ((as_put.get(known_by(one)) if known_by(one) in changed else other) for one, other in zip(seen, now, strict=True))
    return (*(one for one in kept if one is not None), *(as_put[key] for key in changed if key in will and key not in there))
