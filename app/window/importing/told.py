"""What an import dialog tells of a drawing: its size and unit first, then what was noticed as it was read."""

from __future__ import annotations

from app.formats.drawing_in import DrawingRead
from app.formats.drawing_in.closing import JOINS
from app.formats.drawing_in.command import not_closed
from app.formats.drawing_in.roles import heads_told
from app.formats.drawing_in.scale_text import scale_told
from app.formats.drawing_in.units import plausible, sized, unit_question
from geometry.checks.words import told_first
from geometry.saying import count, say

MOST = 12
"""Sentences of what was noticed; of more the number is told."""


def size_told(read: DrawingRead) -> tuple[str, bool]:
    """How large what is imported is, and whether the maker should look at it twice."""
    if read.outline is None:
        told = not_closed(read)
        return (say("{told} Or close wider gaps here.", told=told) if read.gaps and read.gaps[0].size <= JOINS[-1] else told), True
    question = unit_question(read)
    size = sized(*read.size_mm)
    if question is not None:
        return question.text, True
    if read.scale is not None and read.unit_source != "option":
        return say("{told} Choose that as its unit if it was drawn so.", told=_scale(read)), True
    if read.neck is not None:
        return say("The outline measures {sized}: that is the whole neck, with its headstock.", sized=size), True
    if plausible(read.size_mm):
        return say("The outline measures {sized}.", sized=size), False
    return say("The outline measures {sized}: no headstock is that size. Look at the unit.", sized=size), True


def noticed(read: DrawingRead, drawn: DrawingRead) -> list[str]:
    """What was noticed of the drawing `drawn`, of which `read` is imported."""
    question = unit_question(read)
    several = heads_told(drawn.loops)
    told = [] if several is None else [several]
    if question is not None and read.scale is not None:
        told.append(_scale(read))
    told += [text for text in read.warnings if question is None or not question.text.startswith(text[:34])]
    return told_first(told, MOST, lambda n: count(n, "{n} more thing was noticed in the drawing.", "{n} more things were noticed in the drawing."))


def _scale(read: DrawingRead) -> str:
    assert read.scale is not None
    return scale_told(read.scale, sized(*(side * read.scale.factor for side in read.size_mm)))
