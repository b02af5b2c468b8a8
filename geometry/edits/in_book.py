"""Names in the job book that follow the features when they are renamed."""

from __future__ import annotations

import re
from collections.abc import Mapping

from msgspec.structs import replace

from geometry.layout import Book, Task
from geometry.layout.book import timed_once


def renamed_in_book(book: Book, names: Mapping[str, str]) -> Book:
    """The book with features under their new names, wherever one stands: notes, readings, operations.

    The very same book when nothing in it has one of the old names. What a
    title says in words is left as it was written down. A feature may take the
    name of one that is gone and was worked at: their minutes are put together.
    """
    names = {old: new for old, new in names.items() if old != new}
    if not names:
        return book
    made = replace(
        book,
        clock=None if book.clock is None else replace(book.clock, task=_task(book.clock.task, names)),
        times=timed_once(tuple(replace(time, task=_task(time.task, names)) for time in book.times)),
        remarks=tuple(replace(one, on=names.get(one.on, one.on),
                              task=None if one.task is None else _task(one.task, names))
                      for one in book.remarks),
        readings=tuple(replace(one, drilling=_drilling(one.drilling, names),
                               other=None if one.other is None else _drilling(one.other, names))
                       for one in book.readings))
    return book if made == book else made


def _task(task: Task, names: Mapping[str, str]) -> Task:
    return replace(task, operation=_operation(task, names), features=tuple(names.get(id, id) for id in task.features))


def _operation(task: Task, names: Mapping[str, str]) -> str:
    """An operation's id is its kind, then the feature's name, then a number after a point or a space."""
    for id in task.features:
        if id in names:
            found = re.search(rf"(?<= ){re.escape(id)}(?=[. ]|$)", task.operation)
            if found:
                return task.operation[:found.start()] + names[id] + task.operation[found.end():]
    return task.operation


def _drilling(id: str, names: Mapping[str, str]) -> str:
    """A drilling's id is the feature's name, then one or two numbers after points."""
    head = re.match(r"(.+?)((?:\.\d+){1,2})$", id)
    for end in ([(id, "")] if head is None else [(head[1], head[2]), (id.rsplit(".", 1)[0], "." + id.rsplit(".", 1)[1])]):
        if end[0] in names:
            return names[end[0]] + end[1]
    return id
