"""Names in the job book that follow the features when they are renamed."""

from __future__ import annotations

import re
from collections.abc import Callable

from msgspec.structs import replace

from geometry.edits.parts import FEATURE_GROUPS
from geometry.edits.slots import swapped_sides
from geometry.layout import Book, Headstock, Task
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


def called_after(before: Headstock, after: Headstock) -> Called | None:
    """What one edit calls features, gone ones of which the book tells among them: `rename` gives one another name, and
    `mirror_layout` exchanges bass and treble. None when the edit did something else."""
    changed = []
    for group in FEATURE_GROUPS:
        was, now = getattr(before, group), getattr(after, group)
        if was is now:
            continue
        if len(was) != len(now):
            return None
        changed += [(one, other) for one, other in zip(was, now, strict=True) if one.id != other.id]
    if len(changed) == 1 and replace(changed[0][0], id=changed[0][1].id) == changed[0][1]:
        old, new = changed[0][0].id, changed[0][1].id
        # What the book tells goes along with a renaming; it stays with what was taken out and set anew in the same place.
        return exchanged(old, new) if (old in told_of(after.book)) == (new in told_of(before.book)) else None
    gone = not changed and after.book is not before.book and renamed_in_book(before.book, swapped_sides) == after.book != before.book
    if not gone and not (changed and all(swapped_sides(one.id) == other.id for one, other in changed)):
        return None
    from geometry.edits.copying import mirror_layout  # which looks for this file

    # One side copied to the other may change the same names, and what has them then is something else.
    return swapped_sides if replace(mirror_layout(before), book=after.book) == after else None


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
