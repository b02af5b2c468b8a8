"""What is in the wood already, by the job book: proposals leave it where it is."""

from __future__ import annotations

import re

from msgspec import Struct

from geometry.layout.book import Book, Task
from geometry.layout.headstock import Headstock
from geometry.layout.names import OUTLINE
from geometry.layout.tuners import RowPlace

_PIN_HOLE = "pin hole "
"""How operations begin that drill the hole of a pin, and with it the bore that it is of another of their features."""


class Worked(Struct, frozen=True):
    """Ids of what is made of the real piece, ticked off or timed; what is no longer in the layout is among them. The practice piece
    binds nothing."""

    drilled: frozenset[str]
    """features of which a hole is drilled: they stay where they are, and can be drilled on"""
    cut: frozenset[str]
    """slots, and the outline, of which something is drilled out, sawn or routed: they can be cut on, and no wood comes back"""
    glued: frozenset[str]
    """ears that are glued on: their glue lines lie where they lie"""


def worked(book: Book) -> Worked:
    """What is made of the real piece, by the job book."""
    tasks = _tasks(book)
    return Worked(frozenset(feature for task in tasks for feature in task.features
                            if _drilling(task, feature) or task.operation.startswith(_PIN_HOLE) and drilling_of(task)),
                frozenset(id for task in tasks for id in (task.features or (OUTLINE,))
                          if (found := _cutting(task, id)) and found[1] != "ramp"),
                frozenset(id for task in tasks for id in task.features if task.operation == f"glue ear {id}"))


def drilled(layout: Headstock) -> frozenset[str]:
    """See Worked."""
    return worked(layout.book).drilled


def cut(layout: Headstock) -> frozenset[str]:
    """See Worked."""
    return worked(layout.book).cut


def _tasks(book: Book) -> list[Task]:
    """Operations that took place on the real piece."""
    return [*(one.task for one in book.done if one.piece == "real"),
            *(time.task for time in book.times if time.piece == "real" and time.minutes > 0)]


def drilling_of(task: Task) -> str | None:
    """Id of the drilling that an operation makes, None for one that drills none. Operations are called
    `kind feature.hole.drilling`, of pins and single holes `kind feature.drilling`."""
    return next((found for feature in task.features if (found := _drilling(task, feature))), None)


def drilled_as(task: Task, drilling: str, pin: bool) -> str:
    """What an operation that drills a hole is called for a drilling of the same size, a pin's or another."""
    kind = task.operation.removesuffix(drilling_of(task))
    return (_PIN_HOLE if pin else "bore " if kind == _PIN_HOLE else kind) + drilling


def cut_of(task: Task) -> str:
    """Id of the slot that an operation cuts, or the outline's: what is about no feature of the book's is about the outline."""
    return task.features[0] if task.features else OUTLINE


def cut_as(task: Task, other: str) -> str:
    """What an operation that cuts a slot is called for another slot."""
    found = _cutting(task, cut_of(task))
    return f"{found[1]} {other}{found[2]}" if found else task.operation


def _cutting(task: Task, id: str) -> re.Match[str] | None:
    """Of an operation that cuts a slot or the outline its kind, and behind the name the number of the pass, if it has one."""
    return re.fullmatch(rf"(waste holes|saw|cut|rout|ramp) {re.escape(id)}((?: \d+)?)", task.operation)


def _drilling(task: Task, feature: str) -> str | None:
    found = re.search(rf" ({re.escape(feature)}\.\d+(\.\d+)?)$", task.operation)
    return found and found[1]


def staying(layout: Headstock) -> frozenset[str]:
    """Ids of the tuners that no proposal may move: those that are to be left where they are, and those that are drilled."""
    return drilled(layout) | frozenset(tuner.id for tuner in layout.tuners if tuner.held)


def staying_rows(layout: Headstock) -> frozenset[str]:
    """Ids of the rows that no proposal may move or space otherwise: a member of them is staying."""
    stays = staying(layout)
    return frozenset(tuner.place.row for tuner in layout.tuners if isinstance(tuner.place, RowPlace) and tuner.id in stays)
