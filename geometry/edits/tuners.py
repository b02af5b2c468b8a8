"""Edits of single tuners: move, slide, turn, free from a row, change the pattern.

A tuner in a row takes its whole row along. Points and lengths in mm.
"""

from __future__ import annotations

import math

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.edge_places import near_edge, nearest_on_edges
from geometry.edits.parts import checked, feature, point, put, settled, with_feature
from geometry.errors import GeometryError
from geometry.layout import (
    EdgePlace,
    EdgeRun,
    FreePlace,
    Headstock,
    Pattern,
    Place,
    Row,
    RowPlace,
    Side,
    StraightRun,
    Tuner,
)
from geometry.layout.edges import edge
from geometry.saying import say
from geometry.solids.frames import frame, row_point
from geometry.vectors import Vec2


def move_tuner(layout: Headstock, id: str, to: Vec2) -> Headstock:
    """A tuner brought to a point in mm as near as its mount lets it.

    Face mount: to the point itself. Side mount: to the nearest point of its
    edge, square to it, or of the other edge when that is nearer. In a row: the whole row moves so that this member
    gets there; on a straight row the start is shifted, on a row along an edge
    the first place, and for a face mount the inset, too. Such a row stays on
    its side and its members stay between nut line and tip.
    """
    tuner, to = tuner_of(layout, id), point(to)
    place = tuner.place
    if isinstance(place, FreePlace):
        return _placed(layout, tuner, replace(place, at=to))
    if isinstance(place, EdgePlace):
        side, along = nearest_on_edges(layout.outline, to, place.side)
        return _placed(layout, tuner, replace(place, side=side, along=along))
    row = layout.row(place.row)
    if isinstance(row.run, StraightRun):
        heading = math.radians(row.run.heading)
        start = v.along(to, (math.cos(heading), math.sin(heading)), -place.index * row.spacing)
        return _with_row(layout, replace(row, run=replace(row.run, start=start)))
    near = near_edge(layout.outline, row.run.side, to)
    run = replace(row.run, first=_first(layout, row, near.along - place.index * row.spacing))
    if layout.pattern(tuner.pattern).mount == "face":
        seat = edge(layout.outline, row.run.side).seat(near.along)
        inside = v.dot(v.sub(to, seat.point), seat.normal) < 0
        run = replace(run, inset=near.distance if inside else 0.0)
    return _with_row(layout, replace(row, run=run))


def slide_tuner(layout: Headstock, id: str, along: float, side: Side | None = None) -> Headstock:
    """A tuner on an edge, alone or in a row along it, put `along` mm from the nut line, kept between the ends.

    `side` takes it to the other edge; a row stays on its own.
    """
    tuner = tuner_of(layout, id)
    place = tuner.place
    if not math.isfinite(along):
        raise GeometryError(say("The way along an edge is a finite number of mm."))
    if isinstance(place, EdgePlace):
        side = side or place.side
        along = min(max(along, 0.0), edge(layout.outline, side).length)
        return _placed(layout, tuner, replace(place, side=side, along=along))
    row = layout.row(place.row) if isinstance(place, RowPlace) else None
    if row is None or not isinstance(row.run, EdgeRun):
        raise GeometryError(say("Tuner {id} does not follow an edge, so it cannot slide along one.", id=id))
    first = _first(layout, row, along - place.index * row.spacing)
    return _with_row(layout, replace(row, run=replace(row.run, first=first)))


def along_edge(layout: Headstock, id: str) -> tuple[Side, float] | None:
    """(side, mm from the nut line) of a tuner that sits on an edge or in a row along one, else None."""
    place = tuner_of(layout, id).place
    if isinstance(place, EdgePlace):
        return place.side, place.along
    if isinstance(place, RowPlace):
        row = layout.row(place.row)
        if isinstance(row.run, EdgeRun):
            return row.run.side, row.run.first + place.index * row.spacing
    return None


def free_from_row(layout: Headstock, id: str) -> Headstock:
    """A row's member put where it is on its own. The others keep their places; an empty row goes."""
    tuner = tuner_of(layout, id)
    if not isinstance(tuner.place, RowPlace):
        raise GeometryError(say("Tuner {id} is in no row.", id=id))
    return _with_tuner(layout, replace(tuner, place=own_place(layout, tuner)))


def own_place(layout: Headstock, tuner: Tuner) -> FreePlace | EdgePlace:
    """The place of a tuner as if it were in no row."""
    if not isinstance(tuner.place, RowPlace):
        return tuner.place
    row = layout.row(tuner.place.row)
    if layout.pattern(tuner.pattern).mount == "side":
        side, along = along_edge(layout, tuner.id)
        return EdgePlace(side=side, along=min(max(along, 0.0), edge(layout.outline, side).length))
    at, turn = row_point(layout, row, tuner.place.index)
    return FreePlace(at=at, turn=row.run.turn if isinstance(row.run, StraightRun) else math.degrees(turn))


def set_place(layout: Headstock, id: str, place: Place) -> Headstock:
    """A tuner given a whole new place; it must suit the mount."""
    return _with_tuner(layout, replace(tuner_of(layout, id), place=checked(place, id)))


def set_turn(layout: Headstock, id: str, turn: float | None) -> Headstock:
    """Where the button of a face tuner points, degrees counter-clockwise from +x; None: the nearest edge. In a straight row
    those of the whole row."""
    tuner = tuner_of(layout, id)
    if layout.pattern(tuner.pattern).mount == "side":
        raise GeometryError(say("Tuner {id} mounts through the side, so it stands square to its edge and has no turn.",
                                id=id))
    if turn is not None and math.isfinite(turn) and abs(turn) > 360:
        turn = math.fmod(turn, 360.0)
    if isinstance(tuner.place, FreePlace):
        return _placed(layout, tuner, replace(tuner.place, turn=turn))
    row = layout.row(tuner.place.row)
    if isinstance(row.run, EdgeRun):
        raise GeometryError(say("Tuner {id} takes its turn from its row: free it first.", id=id))
    return _with_row(layout, replace(row, run=replace(row.run, turn=turn)))


def set_pattern(layout: Headstock, id: str, pattern: str) -> Headstock:
    """Other hardware for a tuner. A change of mount takes it out of its row, to the nearest place that suits."""
    tuner = tuner_of(layout, id)
    old, new = layout.pattern(tuner.pattern), pattern_of(layout, pattern)
    place: Place = tuner.place
    if old.mount != new.mount:
        where = frame(layout, tuner)
        if new.mount == "side":
            side, along = nearest_on_edges(layout.outline, where.origin[:2])
            place = EdgePlace(side=side, along=along)
        else:
            place = FreePlace(at=where.at(0.0, 0.0, _inset_for(layout, new))[:2])
    return _with_tuner(layout, replace(tuner, pattern=pattern, place=place))


def _inset_for(layout: Headstock, pattern: Pattern) -> float:
    """How far inside the edge a face tuner stands well at first: its seat and its widest bore inside the margins."""
    widest = max(bore.diameter for bore in pattern.bores) / 2
    return max(pattern.seat.before + layout.margins.seat_overhang, widest + layout.margins.bore_outline)


def pattern_of(layout: Headstock, id: str) -> Pattern:
    """The pattern of that id; GeometryError when the layout has none."""
    found = next((pattern for pattern in layout.patterns if pattern.id == id), None)
    if found is None:
        raise GeometryError(say("The layout has no hardware pattern named {id}.", id=id))
    return found


def tuner_of(layout: Headstock, id: str) -> Tuner:
    """The tuner of that id; GeometryError when there is none."""
    found = feature(layout, id)
    if not isinstance(found, Tuner):
        raise GeometryError(say("{id} is no tuner.", id=id))
    return found


def members(layout: Headstock, row: str) -> list[Tuner]:
    """The tuners of a row, first index first."""
    found = [tuner for tuner in layout.tuners if isinstance(tuner.place, RowPlace) and tuner.place.row == row]
    return sorted(found, key=lambda tuner: tuner.place.index)


def without_left_rows(before: Headstock, after: Headstock) -> Headstock:
    """`after` without the rows that had members before and have none any more."""
    had, has = ({tuner.place.row for tuner in layout.tuners if isinstance(tuner.place, RowPlace)}
                for layout in (before, after))
    left = had - has
    return replace(after, rows=tuple(row for row in after.rows if row.id not in left)) if left else after


def _with_tuner(layout: Headstock, tuner: Tuner) -> Headstock:
    """The layout with a tuner replaced, and the row gone that it was the last to leave; validated."""
    return settled(without_left_rows(layout, put(layout, "tuners", tuner)))


def _placed(layout: Headstock, tuner: Tuner, place: Place) -> Headstock:
    return with_feature(layout, replace(tuner, place=checked(place, tuner.id)))


def _first(layout: Headstock, row: Row, first: float) -> float:
    """A row's first place, held back so that all its members lie on the edge (the nut end wins)."""
    indices = [tuner.place.index for tuner in members(layout, row.id)]
    length = edge(layout.outline, row.run.side).length
    return max(min(first, length - max(indices) * row.spacing), -min(indices) * row.spacing)


def _with_row(layout: Headstock, row: Row) -> Headstock:
    checked(row.run, row.id)
    return settled(put(layout, "rows", row))
