"""An entry into the job book, carried over to the book of another step of the history, in which features have other names."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec.structs import replace

from geometry.edits.in_book import names_given, with_names
from geometry.layout import Book, Headstock, feature_ids
from geometry.layout.book import LONGEST, Time, timed_once


def names_now(layouts: Sequence[Headstock], at: int) -> list[dict[str, str]]:
    """For each layout of a history, what its features are called in layout number `at`: only those that differ."""
    found: list[dict[str, str]] = [{} for _ in layouts]
    for i in range(at - 1, -1, -1):
        found[i] = _through(names_given(layouts[i], layouts[i + 1]), found[i + 1], layouts[i])
    for i in range(at + 1, len(layouts)):
        found[i] = _through({new: old for old, new in names_given(layouts[i - 1], layouts[i]).items()}, found[i - 1], layouts[i])
    return found


def _through(step: dict[str, str], names: dict[str, str], layout: Headstock) -> dict[str, str]:
    """The names after a step and those after it, of the features that the layout has."""
    if not step and not names:
        return {}
    here = ((id, step.get(id, id)) for id in feature_ids(layout))
    led = {id: names.get(there, there) for id, there in here}
    return {id: there for id, there in led.items() if id != there}


def carried(book: Book, names: Mapping[str, str], before: Book, after: Book) -> Book:
    """`book` with the entry that led from `before` to `after`; `names` says what its features are called there.

    Everything that the entry left alone stays as it is in `book`, in which what `before` has put together under one name
    may be apart. A book from another file, which never held what the entry changed, gets what it added.
    """
    seen = with_names(book, names)
    written = with_names(after, {new: old for old, new in names.items()})
    changes: dict[str, object] = {}
    for field in Book.__struct_fields__:
        old, new, put = getattr(before, field), getattr(after, field), getattr(written, field)
        if old == new:
            continue
        if not isinstance(old, tuple):
            changes[field] = put
        elif getattr(seen, field) == old:
            changes[field] = _spliced(old, new, put, getattr(book, field))
        elif field == "times":
            changes[field] = _times(book.times, seen.times, before.times, after.times, written.times)
        else:
            changes[field] = _exchanged(old, new, put, getattr(seen, field), getattr(book, field))
    if "times" in changes:
        changes["times"] = timed_once(changes["times"])
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


def _times(now: tuple[Time, ...], seen: tuple[Time, ...], old: tuple[Time, ...], new: tuple[Time, ...],
           put: tuple[Time, ...]) -> tuple[Time, ...]:
    """Times by what they are of. Where two of `now` are one of `old`, the minutes gained or lost are those of the one
    that has another name there: that of the feature which is still there. The other gives only what that one lacks."""
    was, will = {_task_of(time): time for time in old}, {_task_of(time): time for time in new}
    as_put = {_task_of(time): one for time, one in zip(new, put, strict=True)}
    made: list[Time | None] = list(now)
    for key in {**was, **will}:
        before, after = was.get(key), as_put.get(key)
        mine = [i for i, time in enumerate(seen) if _task_of(time) == key]
        if before == will.get(key):
            continue
        if after is None:
            made = [None if i in mine else one for i, one in enumerate(made)]
        elif not mine:
            made.append(after)
        else:
            mine.sort(key=lambda i: _task_of(now[i]) == key)  # the renamed one first
            first, *others = mine
            rest = after.minutes - sum(now[i].minutes for i in others)
            made[first] = replace(after, minutes=min(LONGEST, max(0.0, rest)))
            for i in others:
                made[i] = replace(now[i], minutes=max(0.0, now[i].minutes + min(0.0, rest)))
                rest = min(0.0, rest + now[i].minutes)
    return tuple(one for one in made if one is not None)


def _task_of(time: Time) -> tuple[str, str]:
    """What a time is of."""
    return time.piece, time.task.operation
