"""Moving several features at once, and bringing them into line."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from geometry import vectors as v
from geometry.edits.edge_places import along_at_level
from geometry.edits.parts import checked, feature, group_of, point, put, settled
from geometry.edits.slots import moved_slot
from geometry.edits.tuners import along_edge, move_tuner, slide_tuner
from geometry.edits.whole import move_loop
from geometry.errors import GeometryError
from geometry.layout import (
    Ear,
    EdgeRun,
    FreePlace,
    Headstock,
    Pin,
    RowPlace,
    SingleHole,
    Slot,
    StraightSlot,
    Tuner,
    slot_path,
)
from geometry.layout.edges import edge
from geometry.layout.names import OUTLINE
from geometry.lengths import mm
from geometry.saying import say
from geometry.solids.frames import frame, row_point
from geometry.vectors import Vec2


def move_features(layout: Headstock, ids: Iterable[str], by: Vec2) -> Headstock:
    """Features moved by a vector in mm.

    A side tuner slides along its edge by the part of the vector that lies
    along it; an ear moves along its side only; a row moves once, however many
    of its members are named; "outline" moves the whole outline, first of all.
    """
    by = point(by)
    rows: set[str] = set()
    ids = list(dict.fromkeys(ids))
    if OUTLINE in ids:
        ids.remove(OUTLINE)
        layout = move_loop(layout, OUTLINE, by)
    for id in ids:
        part = feature(layout, id)
        if isinstance(part, Tuner) and isinstance(part.place, RowPlace):
            if part.place.row not in rows:
                rows.add(part.place.row)
                layout = _row_moved(layout, part, by)
        elif isinstance(part, Tuner) and not isinstance(part.place, FreePlace):
            layout = _slid(layout, part, by)
        else:
            layout = put(layout, group_of(layout, id), checked(_moved(part, by), id))
    return settled(layout)


def align(layout: Headstock, ids: Iterable[str], axis: str) -> Headstock:
    """Face tuners, side tuners, pins and holes brought to one x or one y: that of the first.

    A side tuner can only be brought to a y, by sliding along its edge.
    GeometryError when its edge does not reach that level, and for rows and slots.
    """
    ids = list(dict.fromkeys(ids))
    k = {"x": 0, "y": 1}.get(axis)
    if k is None:
        raise GeometryError(say("Features are aligned along x or y, not {axis}.", axis=axis))
    if not ids:
        return layout
    value = plan_point(layout, ids[0])[k]
    for id in ids:
        part = feature(layout, id)
        if isinstance(part, Tuner) and isinstance(part.place, RowPlace):
            raise GeometryError(say("Tuner {id} is placed by its row: free it first.", id=id))
        if isinstance(part, Tuner) and not isinstance(part.place, FreePlace):
            along = None if k == 0 else along_at_level(layout.outline, part.place.side, value, part.place.along)
            if along is None:
                raise GeometryError(
                    say("Side tuner {id} sits on its edge: it cannot be moved across.", id=id) if k == 0 else
                    say("The edge of side tuner {id} does not come to {height} along.", id=id, height=mm(value)))
            layout = slide_tuner(layout, id, along)
        elif isinstance(part, Tuner | Pin | SingleHole):
            at = plan_point(layout, id)
            layout = move_features(layout, [id], (value - at[0], 0.0) if k == 0 else (0.0, value - at[1]))
        else:
            raise GeometryError(say("{id} has no single point to align.", id=id))
    return layout


def plan_point(layout: Headstock, id: str) -> Vec2:
    """The point on the face that a feature is placed by (mm): post axis, seat, hole centre.

    For a straight slot the middle between its ends, for others the middle of the box.
    """
    part = feature(layout, id)
    if isinstance(part, Tuner):
        if layout.pattern(part.pattern).mount != "face":
            return frame(layout, part).origin[:2]
        # As in its frame, without the way that its button points, which takes long.
        place = part.place
        return place.at if isinstance(place, FreePlace) else row_point(layout, layout.row(place.row), place.index)[0]
    if isinstance(part, Pin | SingleHole):
        return part.at
    if isinstance(part, Slot):
        if isinstance(part.shape, StraightSlot):
            return v.middle(part.shape.nut_end, part.shape.tip_end)
        x0, y0, x1, y1 = slot_path(part).box
        return ((x0 + x1) / 2, (y0 + y1) / 2)
    x = layout.blank.edge_x(part.side)
    return (x - part.width / 2 if part.side == "treble" else x + part.width / 2, (part.start + part.end) / 2)


def _moved(part: Tuner | Slot | Pin | SingleHole | Ear, by: Vec2) -> Tuner | Slot | Pin | SingleHole | Ear:
    if isinstance(part, Slot):
        return moved_slot(part, by)
    if isinstance(part, Tuner):
        return replace(part, place=replace(part.place, at=v.add(part.place.at, by)))
    if isinstance(part, Ear):
        return replace(part, start=part.start + by[1], end=part.end + by[1])
    return replace(part, at=v.add(part.at, by))


def _slid(layout: Headstock, tuner: Tuner, by: Vec2) -> Headstock:
    side, along = along_edge(layout, tuner.id)
    tangent = edge(layout.outline, side).seat(along).tangent
    return slide_tuner(layout, tuner.id, along + v.dot(by, tangent))


def _row_moved(layout: Headstock, tuner: Tuner, by: Vec2) -> Headstock:
    row = layout.row(tuner.place.row)
    if isinstance(row.run, EdgeRun) and layout.pattern(tuner.pattern).mount == "side":
        return _slid(layout, tuner, by)
    at, _ = row_point(layout, row, tuner.place.index)
    return move_tuner(layout, tuner.id, v.add(at, by))
