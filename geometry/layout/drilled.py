"""What is in the wood already, by the job book: proposals leave it where it is."""

from __future__ import annotations

import re

from geometry.layout.book import Book, Task
from geometry.layout.headstock import Headstock
from geometry.layout.names import OUTLINE
from geometry.layout.tuners import RowPlace


def drilled(layout: Headstock) -> frozenset[str]:
    """Ids of the features of which a hole has been ticked off or timed on the real piece.

    Holes of the practice piece bind nothing. Features that are no longer in the layout are among them.
    """
    return frozenset(feature for task in _worked(layout.book) for feature in task.features if _drilling(task, feature))


def cut(layout: Headstock) -> frozenset[str]:
    """Ids of the slots, and the outline's, of which something has been drilled out, sawn or routed on the real piece, ticked off or
    timed. They can be cut on; no wood comes back."""
    return frozenset(id for task in _worked(layout.book) for id in (task.features or (OUTLINE,))
                     if re.fullmatch(rf"(waste holes|saw|cut|rout) {re.escape(id)}( \d+)?", task.operation))


def glued(layout: Headstock) -> frozenset[str]:
    """Ids of the ears whose gluing on has been ticked off or timed on the real piece: their glue lines lie where they lie."""
    return frozenset(ear.id for ear in layout.ears if any(task.operation == f"glue ear {ear.id}" for task in _worked(layout.book)))


def _worked(book: Book) -> list[Task]:
    """Operations that took place on the real piece."""
    return [*(one.task for one in book.done if one.piece == "real"),
            *(time.task for time in book.times if time.piece == "real" and time.minutes > 0)]


def drilling_of(task: Task) -> str | None:
    """Id of the drilling that an operation makes, None for one that drills none. Operations are called
    `kind feature.hole.drilling`, of pins and single holes `kind feature.drilling`."""
    return next((found for feature in task.features if (found := _drilling(task, feature))), None)


def cut_of(task: Task) -> str:
    """Id of the slot that an operation cuts, or the outline's: what is about no feature of the book's is about the outline."""
    return task.features[0] if task.features else OUTLINE


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
