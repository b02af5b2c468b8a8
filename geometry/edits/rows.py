"""Rows: tuners spaced evenly on a straight line or along an edge."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Literal

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.edge_places import nearest_on_edges
from geometry.edits.parts import checked, put, settled
from geometry.edits.tuners import members, own_place, slide_tuner, tuner_of, without_left_rows
from geometry.errors import GeometryError
from geometry.layout import EdgePlace, EdgeRun, FreePlace, Headstock, Row, RowPlace, Side, StraightRun, Tuner
from geometry.layout.edges import edge
from geometry.layout.names import Names
from geometry.saying import say
from geometry.solids.frames import frame
from geometry.terms import given
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


def make_row(layout: Headstock, ids: Iterable[str], run: Literal["straight", "edge"] = "edge") -> Headstock:
    """Tuners of one mount put into a new row; the first and the last stay where they are, the others space evenly.

    Straight: on the line from the first to the last, their buttons the one way
    that all of them pointed of their own, else each to its nearest edge. Along
    the edge: all on one side, face tuners at the mean of their insets.
    """
    tuners = _same_mount(layout, ids)
    mount = layout.pattern(tuners[0].pattern).mount
    if mount == "side" and run == "straight":
        raise GeometryError(say("Side tuners sit on an edge, so their row follows the edge."))
    places = {tuner.id: own_place(layout, tuner) for tuner in tuners}
    if run == "straight":
        ordered = _ordered(tuners, places)
        one, two = places[ordered[0].id].at, places[ordered[-1].id].at
        spacing = v.distance(one, two) / (len(ordered) - 1)
        heading = math.degrees(math.atan2(two[1] - one[1], two[0] - one[0]))
        turns = {_own_turn(layout, tuner) for tuner in ordered}
        made: StraightRun | EdgeRun = StraightRun(start=one, heading=heading, turn=turns.pop() if len(turns) == 1 else None)
    else:
        side, alongs, insets = _on_edge(layout, tuners, places)
        ordered = sorted(tuners, key=lambda tuner: alongs[tuner.id])
        first = alongs[ordered[0].id]
        spacing = (alongs[ordered[-1].id] - first) / (len(ordered) - 1)
        inset = 0.0 if mount == "side" else sum(insets.values()) / len(insets)
        made = EdgeRun(side=side, first=first, inset=inset)
    if spacing <= TOUCH:
        raise GeometryError(say("The first and the last tuner stand on one place: move them apart before making a row."))
    name = Names(row.id for row in layout.rows).alike(given(f"{'treble' if _mean_x(layout, tuners) >= 0 else 'bass'} {mount}"))
    row = checked(Row(id=name, run=made, spacing=spacing), name)
    index = {tuner.id: i for i, tuner in enumerate(ordered)}
    changed = replace(layout, rows=(*layout.rows, row), tuners=tuple(
        replace(tuner, place=RowPlace(row=name, index=index[tuner.id])) if tuner.id in index else tuner
        for tuner in layout.tuners))
    return settled(without_left_rows(layout, changed))


def set_row_spacing(layout: Headstock, row: str, spacing: float) -> Headstock:
    """Another spacing in mm for a row; its first place stays where it is."""
    return settled(put(layout, "rows", checked(replace(_row(layout, row), spacing=spacing), row)))


def set_row_heading(layout: Headstock, row: str, heading: float) -> Headstock:
    """A straight row headed elsewhere (degrees from +x), about its first place; buttons that all point one way turn with it, as on a plate."""
    found = _row(layout, row)
    run = checked(replace(_straight(found), heading=heading), row)
    turn = None if run.turn is None else _within(run.turn + heading - found.run.heading)
    return settled(put(layout, "rows", replace(found, run=replace(run, turn=turn))))


def square_row(layout: Headstock, row: str) -> Headstock:
    """The buttons of a straight row all square to its line, to the side that they point to now, taken together."""
    found = _row(layout, row)
    run = _straight(found)
    heading = math.radians(run.heading)
    left = sum(v.cross((math.cos(heading), math.sin(heading)), frame(layout, tuner).u[:2]) for tuner in members(layout, row))
    return settled(put(layout, "rows", replace(found, run=replace(run, turn=_within(run.heading + (90.0 if left >= 0 else -90.0))))))


def spread(layout: Headstock, ids: Iterable[str], along: Literal["edge", "line"] = "edge") -> Headstock:
    """Three tuners or more that are in no row spread evenly between the first and the last.

    Along the edge: by arc length, every face tuner at its own inset. Along
    the line (face mount): on the straight line from the first to the last.
    """
    tuners = _same_mount(layout, ids)
    if len(tuners) < 3:
        raise GeometryError(say("To spread tuners evenly takes at least three of them."))
    for tuner in tuners:
        if isinstance(tuner.place, RowPlace):
            raise GeometryError(say("Tuner {tuner} is spaced by its row already: free it first.", tuner=tuner.id))
    places = {tuner.id: tuner.place for tuner in tuners}
    if along == "line":
        if layout.pattern(tuners[0].pattern).mount == "side":
            raise GeometryError(say("Side tuners sit on an edge, so they are spread along it."))
        ordered = _ordered(tuners, places)
        one, two = places[ordered[0].id].at, places[ordered[-1].id].at
        for k, tuner in enumerate(ordered):
            share = k / (len(ordered) - 1)
            at = (one[0] + (two[0] - one[0]) * share, one[1] + (two[1] - one[1]) * share)
            layout = _put_place(layout, tuner, replace(tuner.place, at=at))
        return settled(layout)
    side, alongs, insets = _on_edge(layout, tuners, places)
    ordered = sorted(tuners, key=lambda tuner: alongs[tuner.id])
    low, high = alongs[ordered[0].id], alongs[ordered[-1].id]
    for k, tuner in enumerate(ordered):
        target = low + (high - low) * k / (len(ordered) - 1)
        if isinstance(tuner.place, EdgePlace):
            layout = slide_tuner(layout, tuner.id, target)
        elif 0 < k < len(ordered) - 1:
            seat = edge(layout.outline, side).seat(target)
            at = v.along(seat.point, seat.normal, -insets[tuner.id])
            layout = _put_place(layout, tuner, replace(tuner.place, at=at))
    return settled(layout)


def _row(layout: Headstock, row: str) -> Row:
    found = next((one for one in layout.rows if one.id == row), None)
    if found is None:
        raise GeometryError(say("The layout has no row named {row}.", row=row))
    return found


def _straight(row: Row) -> StraightRun:
    if not isinstance(row.run, StraightRun):
        raise GeometryError(say("The row {row} follows its edge, and so do its buttons.", row=row.id))
    return row.run


def _within(turn: float) -> float:
    """A direction to 1e-9 degrees from -90 to 270, where those of a row and of its mirror image both lie."""
    return round((turn + 90.0) % 360.0 - 90.0, 9)


def _own_turn(layout: Headstock, tuner: Tuner) -> float | None:
    """The direction (degrees) that a face tuner's button was given, by itself or with its straight row; None where it follows an edge."""
    place = tuner.place
    if isinstance(place, RowPlace):
        run = layout.row(place.row).run
        return run.turn if isinstance(run, StraightRun) else None
    return place.turn


def _same_mount(layout: Headstock, ids: Iterable[str]) -> list[Tuner]:
    tuners = [tuner_of(layout, id) for id in dict.fromkeys(ids)]
    if len(tuners) < 2:
        raise GeometryError(say("A row takes at least two tuners."))
    if len({layout.pattern(tuner.pattern).mount for tuner in tuners}) > 1:
        raise GeometryError(say("Tuners through the face and through the side cannot share a row."))
    return tuners


def _ordered(tuners: list[Tuner], places: dict[str, FreePlace]) -> list[Tuner]:
    """Face tuners in their order along the line between the two that stand farthest apart, nut end first."""
    points = {tuner.id: places[tuner.id].at for tuner in tuners}
    one, two = max(((a, b) for a in points.values() for b in points.values()), key=lambda ab: v.distance(*ab))
    low, high = sorted((one, two), key=lambda p: (p[1], p[0]))
    way = v.sub(high, low)
    return sorted(tuners, key=lambda tuner: v.dot(v.sub(points[tuner.id], low), way))


def _on_edge(layout: Headstock, tuners: list[Tuner], places: dict) -> tuple[Side, dict[str, float], dict[str, float]]:
    sides: dict[str, Side] = {}
    alongs: dict[str, float] = {}
    insets: dict[str, float] = {}
    for tuner in tuners:
        place = places[tuner.id]
        if isinstance(place, EdgePlace):
            sides[tuner.id], alongs[tuner.id], insets[tuner.id] = place.side, place.along, 0.0
            continue
        at: Vec2 = place.at
        side, along = nearest_on_edges(layout.outline, at)
        seat = edge(layout.outline, side).seat(along)
        sides[tuner.id], alongs[tuner.id] = side, along
        insets[tuner.id] = max(0.0, v.dot(v.sub(seat.point, at), seat.normal))
    if len(set(sides.values())) > 1:
        raise GeometryError(say("These tuners lie along both edges: choose those of one side."))
    return next(iter(sides.values())), alongs, insets


def _mean_x(layout: Headstock, tuners: list[Tuner]) -> float:
    return sum(frame(layout, tuner).origin[0] for tuner in tuners)


def _put_place(layout: Headstock, tuner: Tuner, place: FreePlace) -> Headstock:
    return put(layout, "tuners", replace(tuner, place=checked(place, tuner.id)))
