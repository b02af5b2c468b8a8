"""The units in which a drawing may be taken, each with the size that it makes."""

from __future__ import annotations

import math

from app.formats.drawing_in import DrawingRead, units
from geometry.saying import say
from geometry.units import LengthUnit, format_size


def unit_choices(read: DrawingRead, says: DrawingRead, unit: LengthUnit) -> tuple[list[tuple[str, str | None]], int]:
    """(words, name) of each unit, sizes in the maker's, and which of them the drawing was read with.

    `says` is the drawing as it was read first: what the file itself says comes first, without a name where it is a scale of its own.
    A scale that stands in the drawing is offered last.
    """
    width, height = read.size_mm[0] / read.unit_mm, read.size_mm[1] / read.unit_mm
    offered = [(name, name, units.MM.get(name, says.unit_mm)) for name in dict.fromkeys((says.unit, *units.offered(says.unit)))]
    if says.unit_source == "file" and not math.isclose(says.unit_mm, units.MM.get(says.unit, says.unit_mm), rel_tol=1e-9):
        offered.insert(0, (say("as stated"), None, says.unit_mm))
    if says.scale is not None:
        drawn = says.unit_mm * says.scale.factor
        offered.append((say("drawn {scale}", scale=says.scale.words), repr(drawn), drawn))
    if read.unit_source == "option" and read.unit not in [name for _, name, _ in offered]:
        offered.append((say("as typed"), read.unit, read.unit_mm))
    names = [name for _, name, _ in offered]
    chosen = read.unit if read.unit_source == "option" else names[0]
    return [(f"{word}: {format_size(width * mm, height * mm, unit)}", name) for word, name, mm in offered], names.index(chosen)
