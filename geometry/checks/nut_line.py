"""Strings that start beside the wood: where an outline is narrower at the nut line than the strings lie apart."""

from __future__ import annotations

from collections.abc import Iterable

import shapely

from geometry.checks.scene import Scene
from geometry.checks.snags import NUT, Snag, grade, short
from geometry.checks.string_runs import places_of
from geometry.checks.words import into, tenths
from geometry.layout.names import OUTLINE
from geometry.layout.strings import Nut, String
from geometry.saying import say
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.vectors import Vec2

_ROUNDED = 3.0
"""mm towards the tip within which wood still counts as wood at the nut line: corners there may be rounded, and an outline may begin
with a curve or a little beyond the line, as behind it the neck goes on."""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of the first string beyond the bass edge and the last beyond the treble edge."""
    layout, memo = scene.layout, scene.memo
    return memo.of(_beside, scene.outline, memo.of(places_of, layout.nut, layout.strings), layout.nut.slant)


def wood_at_nut(outline: Wall, slant: float = 0.0) -> tuple[float, float] | None:
    """x in mm of the bass edge and the treble edge at the nut line: the farthest out within _ROUNDED mm of it.

    An outline may go on behind the nut line, and narrow beyond it. Where a slanted line lies behind y = 0 the wood there counts:
    an outline may end square, as the neck goes on. None where it begins farther up, or ends before it.
    """
    x0, y0, x1, y1 = outline.path.box
    if y0 > _ROUNDED or y1 < 0:
        return None
    if slant:
        line = [(x, max(0.0, y)) for x, y in map(Nut(slant=slant).at, (x0 - 1.0, 0.0, x1 + 1.0))]
        near = outline.area & shapely.Polygon([*line, *((x, y + _ROUNDED) for x, y in reversed(line))])
    else:
        near = shapely.clip_by_rect(outline.area, x0 - 1.0, 0.0, x1 + 1.0, _ROUNDED)
    return None if near.is_empty else (near.bounds[0], near.bounds[2])


def _beside(outline: Wall, places: dict[str, tuple[String, Vec2]], slant: float) -> tuple[Snag, ...]:
    wood = wood_at_nut(outline, slant) if places else None
    if wood is None:
        return ()
    found = []
    for side, sign, edge in (("bass edge", -1.0, wood[0]), ("treble edge", 1.0, wood[1])):
        out, at, string = max((sign * at[0] + string.diameter / 2, at, string.id) for string, at in places.values())
        measured = sign * edge - out
        if short(measured, 0.0):
            found.append(Snag(
                "string-off-wood", grade(measured), (OUTLINE, NUT), (*at, 0.0), measured, 0.0,
                say("String {string} starts {measured} mm beyond the {side} at the nut line.",
                    string=string, measured=into(measured), side=term(side)),
                say("Draw the outline {by} mm wider to that side at the nut line, or set the strings closer together in the nut.",
                    by=tenths(-measured))))
    return tuple(found)
