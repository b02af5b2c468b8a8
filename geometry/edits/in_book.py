"""Names in the job book that follow the features when they are renamed."""

from __future__ import annotations

import re
from collections.abc import Callable

from msgspec.structs import replace

from geometry.layout import Book, Task
from geometry.layout.names import told_of

Called = Callable[[str], str]
"""What each name is called after an edit. Done twice it gives the name itself, so that no two become one, gone or not."""


def exchanged(one: str, other: str) -> Called:
    """Two names for one another: what a renaming does, as it takes only a name that nothing has."""
    turned = {one: other, other: one}
    return lambda name: turned.get(name, name)


def renamed_in_book(book: Book, called: Called) -> Book:
    """The book with features under their new names, wherever one stands: notes, readings, operations.

    The very same book when nothing in it has another name now. What a title says in words is left as it was written down.
    """
    if all(called(name) == name for name in told_of(book)):
        return book
    return replace(
        book,
        clock=None if book.clock is None else replace(book.clock, task=_task(book.clock.task, called)),
        done=tuple(replace(one, task=_task(one.task, called)) for one in book.done),
        times=tuple(replace(time, task=_task(time.task, called)) for time in book.times),
        remarks=tuple(replace(one, on=one.on and called(one.on), task=one.task and _task(one.task, called)) for one in book.remarks),
        readings=tuple(replace(one, drilling=_drilling(one.drilling, called), other=one.other and _drilling(one.other, called))
                       for one in book.readings))


def _task(task: Task, called: Called) -> Task:
    return replace(task, operation=_operation(task, called), features=tuple(called(id) for id in task.features))


def _operation(task: Task, called: Called) -> str:
    """An operation's id is its kind, then the feature's name, then a number after a point or a space."""
    for id in task.features:
        found = re.search(rf"(?<= ){re.escape(id)}(?=[. ]|$)", task.operation) if called(id) != id else None
        if found:
            return task.operation[:found.start()] + called(id) + task.operation[found.end():]
    return task.operation


def _drilling(id: str, called: Called) -> str:
    """A drilling's id is the feature's name, then one or two numbers after points."""
    head = re.match(r"(.+?)((?:\.\d+){1,2})$", id)
    for name, end in ([(id, "")] if head is None else [(head[1], head[2]), (id.rsplit(".", 1)[0], "." + id.rsplit(".", 1)[1])]):
        if called(name) != name:
            return called(name) + end
    return id
