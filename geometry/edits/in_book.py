"""Names in the job book that follow the features when they are renamed."""

from __future__ import annotations

import re
from collections.abc import Mapping

from msgspec.structs import replace

from geometry.edits.parts import FEATURE_GROUPS
from geometry.edits.slots import swapped_sides
from geometry.layout import Book, Headstock, Task
from geometry.layout.book import timed_once


def renamed_in_book(book: Book, names: Mapping[str, str]) -> Book:
    """The book with features under their new names, wherever one stands: notes, readings, operations.

    The very same book when nothing in it has one of the old names. What a
    title says in words is left as it was written down. A feature may take the
    name of one that is gone and was worked at: their minutes are put together.
    """
    made = with_names(book, names)
    return book if made == book else replace(made, times=timed_once(made.times))


def with_names(book: Book, names: Mapping[str, str]) -> Book:
    """The same, but every entry stays one by itself and where it stands: what has the same name now may be timed twice."""
    names = {old: new for old, new in names.items() if old != new}
    if not names:
        return book
    return replace(
        book,
        clock=None if book.clock is None else replace(book.clock, task=_task(book.clock.task, names)),
        done=tuple(replace(one, task=_task(one.task, names)) for one in book.done),
        times=tuple(replace(time, task=_task(time.task, names)) for time in book.times),
        remarks=tuple(replace(one, on=names.get(one.on, one.on),
                              task=None if one.task is None else _task(one.task, names))
                      for one in book.remarks),
        readings=tuple(replace(one, drilling=_drilling(one.drilling, names),
                               other=None if one.other is None else _drilling(one.other, names))
                       for one in book.readings))


def names_given(before: Headstock, after: Headstock) -> dict[str, str]:
    """Old name to new of the features that one edit renamed: `rename`, which renames one, or `mirror_layout`, which
    exchanges bass and treble. Empty when the edit did something else."""
    names: dict[str, str] = {}
    for group in FEATURE_GROUPS:
        was, now = getattr(before, group), getattr(after, group)
        if was is now:
            continue
        if len(was) != len(now):
            return {}
        changed = [(one, other) for one, other in zip(was, now, strict=True) if one.id != other.id]
        if len(changed) == 1 and replace(changed[0][0], id=changed[0][1].id) == changed[0][1]:
            names[changed[0][0].id] = changed[0][1].id
        elif all(swapped_sides(one.id) == other.id for one, other in changed):
            names |= {one.id: other.id for one, other in changed}
        else:
            return {}
    return names


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
