"""What a few numbers make: built, drawn and checked."""

from __future__ import annotations

from msgspec import Struct

from app.look.face_picture import face_picture
from geometry.beginning import FIELDS, Numbers, Refused, begin, mended
from geometry.beginning.in_unit import cure_in_unit, fitting, hardware_in_unit
from geometry.checks import KINDS, check
from geometry.drawing import Drawing
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.lengths import speaking
from geometry.units import LengthUnit
from geometry.vectors import Box


class Tried(Struct, frozen=True):
    """What came of some numbers: those that fit what the maker typed, and their layout with its picture and counts, or why there is
    none and what would do."""

    numbers: Numbers
    layout: Headstock | None
    refusal: str = ""
    cure: Numbers | None = None
    marks: Drawing = ()
    frame: Box = (0.0, 0.0, 0.0, 0.0)
    grades: tuple[int, int, int] = (0, 0, 0)
    left: tuple[tuple[str, str], ...] = ()
    """what the maker still has to look at: (title of the kind, first sentence and advice), the worst first"""


def tried(asked: Numbers, unit: LengthUnit = "mm", typed: frozenset[str] = frozenset(FIELDS)) -> Tried:
    """Build, draw and check, with refusals in that unit; pure, so that it runs beside the window.

    What was not `typed` is taken as the rest of the numbers asks for.
    """
    numbers = fitting(asked, typed, unit)
    refusal, cure = "", None
    try:
        with speaking(unit):
            layout = hardware_in_unit(begin(numbers), unit)
    except Refused as refused:
        refusal = str(refused)
        try:
            cure, layout, _ = mended(numbers)
            cure, layout = cure_in_unit(numbers, cure, unit), hardware_in_unit(layout, unit)
        except GeometryError:
            return Tried(numbers, None, refusal)
    except GeometryError as error:
        return Tried(numbers, None, str(error))
    snags = check(layout).snags
    grades = [snag.grade for snag in snags]
    first = {snag.kind: snag for snag in reversed(snags)}
    left = tuple((KINDS[kind].title, f"{first[kind].text_in(unit)} {first[kind].cure_in(unit)}") for kind in dict.fromkeys(s.kind for s in snags))
    marks, frame = face_picture(layout)
    return Tried(numbers, None if refusal else layout, refusal, cure, marks, frame,
                 tuple(grades.count(grade) for grade in ("spoils the work", "tight", "note")), left)
