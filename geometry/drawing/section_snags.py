"""Snags that lie in a section: where they stand in its picture."""

from __future__ import annotations

from collections.abc import Iterable

from geometry import vectors as v
from geometry.checks import Snag
from geometry.drawing.section_cut import SectionLine, line_along_bore
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.solids import Hole, holes
from geometry.solids.frames import frame
from geometry.vectors import Vec2

BESIDE = 3.0
"""mm beside the plane at which a snag still counts as lying in it."""
OF_OWNER = 12.0
"""mm beside the plane for a snag that is about the very thing that the section goes through."""

Signs = tuple[tuple[Vec2, str], ...]
"""(place in the section, mm, grade) of each snag."""


def _snags_along(line: SectionLine, snags: Iterable[Snag], owner: str = "") -> Signs:
    """Snags near an upright plane: x along its line, y up with the face at 0. Notes are left out."""
    found = []
    for snag in snags:
        if snag.grade == "note":
            continue
        reach = OF_OWNER if owner and owner in snag.between else BESIDE
        if line.off(snag.where[:2]) <= reach:
            depth = snag.where[2] if len(snag.where) == 3 else 0.0
            found.append(((line.along(snag.where[:2]), -depth), snag.grade))
    return tuple(found)


def snags_on_line(a: Vec2, b: Vec2, snags: Iterable[Snag]) -> Signs:
    """Those in the section that is laid from a to b by hand, none beyond its ends."""
    size = v.distance(a, b)
    if size < 1e-6:
        return ()
    line = SectionLine(a, v.unit(v.sub(b, a)))
    return tuple((at, grade) for at, grade in _snags_along(line, snags) if -BESIDE <= at[0] <= size + BESIDE)


def snags_along_bore(layout: Headstock, tuner_id: str, snags: Iterable[Snag],
                     drilled: tuple[Hole, ...] | None = None) -> Signs:
    """Those in the section along a tuner's bore (sections.section_along_bore); none where there is no section."""
    try:
        placed = frame(layout, layout.tuner(tuner_id))
    except GeometryError:
        return ()
    drilled = holes(layout) if drilled is None else drilled
    post = next((d for hole in drilled if hole.of == tuner_id for d in hole.drillings if d.role == "post"), None)
    if post is None:
        return ()
    return _snags_along(line_along_bore(layout.blank, placed, post), snags, tuner_id)
