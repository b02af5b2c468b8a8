"""Holes of a drawing that tuners and pins of a layout ask for already: its own template has them all, and none is to be drilled twice."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from geometry import vectors as v
from geometry.curves import Matrix
from geometry.edits.imported_openings import SAME, Role, round_of
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.solids.drilling import Drilling, holes

MOST_LOOKED_AT = 300
"""Holes of a drawing among which some are looked for to tell of them while it is being placed."""


def without_hardware(loops: Sequence[Role], place: Matrix, layouts: Iterable[Headstock]) -> list[Role]:
    """The loops without holes that tuners and pins of one of these layouts have in the same place and size."""
    own = [drilling for layout in layouts for drilling in _drillings(layout)]
    return [loop for loop in loops if loop[1] != "hole" or not own or not _among(*round_of(loop[0].mapped(place)), own)]


def hardware_told(loops: Sequence[Role], place: Matrix, layout: Headstock) -> list[str]:
    """One sentence where a drawing has such holes, else none."""
    own = list(_drillings(layout))
    drawn = [path for path, role, *_ in loops if role == "hole"][:MOST_LOOKED_AT]
    if own and any(_among(*round_of(path.mapped(place)), own) for path in drawn):
        return [say("Holes that tuners and pins of the layout have already are not set once more.")]
    return []


def _drillings(layout: Headstock) -> Iterator[Drilling]:
    """What is drilled square to the face for tuners and pins."""
    try:
        found = holes(layout)
    except GeometryError:
        return  # an outline without edges holds no tuner
    single = {one.id for one in layout.holes}
    yield from (drilling for hole in found if hole.of not in single for drilling in hole.drillings if drilling.upright)


def _among(centre: v.Vec2, diameter: float, own: Sequence[Drilling]) -> bool:
    return any(abs(one.diameter - diameter) <= SAME and v.distance(one.start[:2], centre) <= SAME for one in own)
