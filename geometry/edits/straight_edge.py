"""An edge that is made straight where side tuners sit on it, so that their bores are parallel and one plate lies flat under all."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec.structs import replace

from geometry import vectors as v
from geometry.curves import Line, Path
from geometry.edits.imported_openings import tidy
from geometry.edits.parts import settled
from geometry.edits.tuners import along_edge, tuner_of
from geometry.edits.twin_features import twin_feature
from geometry.edits.whole import replace_outline
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, EdgeRun, Headstock, Side, loop_path
from geometry.layout.edges import Edge, edge
from geometry.saying import say
from geometry.solids.frames import frame
from geometry.tolerance import ONE_WAY, TOUCH


def splayed(layout: Headstock, ids: Sequence[str]) -> bool:
    """Whether these are two or more side tuners on one edge whose bores are not parallel."""
    if len(ids) < 2 or any(layout.pattern(layout.tuner(id).pattern).mount != "side" for id in ids):
        return False
    first, *rest = [frame(layout, layout.tuner(id)) for id in ids]
    return (len({along_edge(layout, id)[0] for id in ids}) == 1
            and any(v.distance(first.w[:2], one.w[:2]) > ONE_WAY for one in rest))


def straighten_edge(layout: Headstock, ids: Sequence[str]) -> Headstock:
    """The layout with one straight edge from before the plate of the first of these side tuners to behind that of the last.

    Where each has a mirror image on the other edge that is made straight too. What sits on these edges keeps its place, moved squarely
    on to the new one. GeometryError unless all sit on one edge.
    """
    twins = [twin_feature(layout, id) for id in ids]
    made = _straightened(layout, ids)
    if all(twin is not None and twin not in ids for twin in twins):
        made = _straightened(made, [twin for twin in twins if twin is not None])
    return settled(made)


def _straightened(layout: Headstock, ids: Sequence[str]) -> Headstock:
    seats = [along_edge(layout, id) for id in ids]
    sides = {seat[0] for seat in seats if seat is not None}
    if None in seats or len(sides) != 1 or len(ids) < 2:
        raise GeometryError(say("Two or more tuners on one edge of the outline say where it is to be straight."))
    side, = sides
    plates = [layout.pattern(tuner_of(layout, id).pattern).seat for id in ids]
    now = edge(layout.outline, side)
    low = max(0.0, min(along - max(plate.before, plate.behind) for (_, along), plate in zip(seats, plates, strict=True)))
    high = max(along + max(plate.before, plate.behind) for (_, along), plate in zip(seats, plates, strict=True))
    # A chord is shorter than its curve, and plates and the spacing of a row keep their size along it.
    more = high - low - v.distance(now.seat(low).point, now.seat(high).point)
    low, high = max(0.0, low - more), min(now.length, high + more)
    made = replace_outline(layout, _cut_short(loop_path(layout.outline).counter_clockwise(), now, low, high))
    made = replace(made, outline=tidy(made.outline))
    return _kept(made, now, edge(made.outline, side))


def _cut_short(outline: Path, of: Edge, low: float, high: float) -> Path:
    """A counter-clockwise outline whose edge goes straight from one length along it (mm) to another."""
    ends = of.seat(low).point, of.seat(high).point
    if of.side == "bass":
        ends = ends[1], ends[0]
    if v.distance(*ends) <= TOUCH:
        raise GeometryError(say("Two or more tuners on one edge of the outline say where it is to be straight."))
    start, end = (outline.nearest(at).along for at in ends)
    return Path((Line(*ends), *outline.part(end, start).segments), closed=True)


def _kept(layout: Headstock, was: Edge, now: Edge) -> Headstock:
    """The layout with what sat on an edge at the nearest places of the new one."""
    def moved(along: float, side: Side) -> float:
        return now.nearest(was.seat(along).point).along if side == was.side else along
    tuners = tuple(replace(one, place=replace(one.place, along=moved(one.place.along, one.place.side))) if isinstance(one.place, EdgePlace) else one
                   for one in layout.tuners)
    rows = tuple(replace(row, run=replace(row.run, first=moved(row.run.first, row.run.side))) if isinstance(row.run, EdgeRun) else row
                 for row in layout.rows)
    return replace(layout, tuners=tuners, rows=rows)
