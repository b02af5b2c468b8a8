"""An outline that is made to end along the nut line, slanted or not: its sides stay where they are."""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry import vectors as v
from geometry.by_size import of_loop, remembered_by_size
from geometry.curves import Line, Path, Segment
from geometry.curves.matrix import turn
from geometry.edits.imported_openings import tidy
from geometry.edits.parts import settled
from geometry.edits.whole import replace_outline
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, EdgeRun, Headstock, Loop, Nut, Side
from geometry.layout.edges import edge, end_line
from geometry.routing.nut_end import SHOULDER, NutEnd, nut_end
from geometry.saying import say
from geometry.vectors import Vec2

_INSIDE = 5.0
"""mm from its new end at which a side is looked up in both outlines, to tell how much of it went"""


def ends_off_nut(layout: Headstock) -> bool:
    """Whether the outline ends in one straight edge that is not along the nut line, so that end_along_nut has something to do."""
    return _off(layout.outline, layout.nut.slant)


@remembered_by_size(8, of_loop)
def _off(outline: Loop, slant: float) -> bool:
    try:
        return nut_end(outline, Nut(slant=slant)) is None and _present(outline) is not None
    except GeometryError:
        return False


def end_along_nut(layout: Headstock) -> Headstock:
    """The layout with an outline that ends along the nut line: its sides are cut off there, or go straight on to it.

    What sits on an edge stays where it is; the lengths along it, which are from its new end, follow. GeometryError when the outline
    does not end in one straight edge through the middle of the nut, or its sides do not come to the nut line.
    """
    now = _present(layout.outline)
    if now is None:
        raise GeometryError(say("The outline does not end in one straight edge through the middle of the nut: draw such an end first."))
    nut, sides = layout.nut, Path(now.sides)
    first, last = _crossings(sides, nut)
    treble = _reach(now.treble, now.down_treble, nut)
    bass = _reach(now.bass, now.down_bass, nut)
    if treble is None and first is None or bass is None and last is None:
        raise GeometryError(say("A side of the outline lies behind the nut line and never comes before it: move it, or slant the nut less."))
    begin, end = (0.0 if treble is not None else first), (sides.length if bass is not None else last)
    if not begin < end:
        raise GeometryError(say("Nothing of the outline would lie before the nut line."))
    pieces: list[Segment] = list(sides.part(begin, end).segments)
    if treble is not None and v.distance(treble, now.treble) > 0:
        pieces = _led(pieces, treble)
    if bass is not None and v.distance(bass, now.bass) > 0:
        pieces = [piece.reversed() for piece in reversed(_led([piece.reversed() for piece in reversed(pieces)], bass))]
    pieces = [Line(pieces[-1].end, pieces[0].start), *pieces]
    made = replace_outline(layout, Path(tuple(pieces), closed=True))
    made = replace(made, outline=tidy(made.outline))
    inside = min(_INSIDE, (end - begin) / 4)
    off = {side: edge(layout.outline, side).nearest(at).along - edge(made.outline, side).nearest(at).along
           for side, at in (("treble", sides.point_at(begin + inside)), ("bass", sides.point_at(end - inside)))}
    return settled(_kept(made, off))


def _present(outline: Loop) -> NutEnd | None:
    """The straight end that the outline has."""
    _, (x, y) = end_line(outline)
    slant = math.degrees(math.atan2(x, y))
    return nut_end(outline, Nut(slant=slant if abs(slant) > 1e-9 else 0.0))


def _crossings(sides: Path, nut: Nut) -> tuple[float | None, float | None]:
    """Where the sides first and last cross the nut line, mm along them."""
    found = [before + segment.length_to(t) for segment, before in zip(sides.mapped(turn(math.radians(nut.slant))).segments, (0.0, *sides.ends), strict=False)
             for t in segment.level(1, 0.0)]
    return min(found, default=None), max(found, default=None)


def _reach(foot: Vec2, way: Vec2, nut: Nut) -> Vec2 | None:
    """Where a side that ends at `foot`, before the nut line, comes to it as it goes on; None where it ends behind that line."""
    far, down = nut.before(foot), -v.dot(way, nut.ahead)
    if far < 0:
        return None
    return v.along(foot, way, far / down) if down >= SHOULDER else (foot[0], nut.at(foot[0])[1])


def _led(pieces: list[Segment], start: Vec2) -> list[Segment]:
    """Pieces that begin farther off, straight on from the first."""
    one = pieces[0]
    if isinstance(one, Line) and abs(v.cross(v.unit(v.sub(one.end, one.start)), v.sub(one.start, start))) < 1e-9:
        return [Line(start, one.end), *pieces[1:]]
    return [Line(start, one.start), *pieces]


def _kept(layout: Headstock, off: dict[Side, float]) -> Headstock:
    """The layout with what sits on its edges so much (mm) nearer to the ends of these, none before them."""
    tuners = tuple(replace(one, place=replace(one.place, along=max(0.0, one.place.along - off[one.place.side])))
                   if isinstance(one.place, EdgePlace) else one for one in layout.tuners)
    rows = tuple(replace(row, run=replace(row.run, first=row.run.first - off[row.run.side])) if isinstance(row.run, EdgeRun) else row
                 for row in layout.rows)
    return replace(layout, tuners=tuners, rows=rows)
