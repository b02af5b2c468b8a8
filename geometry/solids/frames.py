"""Where each tuner sits: its own frame in the frame of the head."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry import vectors as v
from geometry.layout.blank import Blank, Side
from geometry.layout.edges import Edge, Seat, edge, edges
from geometry.layout.hardware import Pattern
from geometry.layout.headstock import Headstock
from geometry.layout.outline import Loop
from geometry.layout.tuners import EdgePlace, EdgeRun, FreePlace, Row, RowPlace, Tuner
from geometry.vectors import Vec2, Vec3


class Frame(Struct, frozen=True):
    """Origin (mm) and unit axes u, v, w of a tuner in space; see geometry.layout.hardware.Bore.

    Face mount: the origin lies on the face, w = (0, 0, 1).
    Side mount: the origin is the seat point at the axis depth, on the bottom of its flat where
    it has one; w points into the wood.
    """

    tuner: str
    mount: str
    origin: Vec3
    u: Vec3
    v: Vec3
    w: Vec3
    side: Side
    """side mount: its edge; face mount: the nearer side of the centreline"""
    seat: Seat | None
    """side mount only"""
    wood: float = 0.0
    """face mount: from the face to its plate, mm"""

    def at(self, u: float, v_: float, w: float = 0.0) -> Vec3:
        """The point of space at local coordinates in mm."""
        o, a, b, c = self.origin, self.u, self.v, self.w
        return (o[0] + a[0] * u + b[0] * v_ + c[0] * w,
                o[1] + a[1] * u + b[1] * v_ + c[1] * w,
                o[2] + a[2] * u + b[2] * v_ + c[2] * w)


def frames(layout: Headstock) -> dict[str, Frame]:
    """The frame of every tuner by its id. GeometryError when the outline has no edges."""
    return {tuner.id: frame(layout, tuner) for tuner in layout.tuners}


def frame(layout: Headstock, tuner: Tuner) -> Frame:
    """The frame of one tuner."""
    row = layout.row(tuner.place.row) if isinstance(tuner.place, RowPlace) else None
    return frame_of(tuner, layout.pattern(tuner.pattern), row, layout.outline, layout.blank)


def frame_of(tuner: Tuner, pattern: Pattern, row: Row | None, outline: Loop, blank: Blank) -> Frame:
    """The same, from the parts of the layout that it depends on; `row` for a tuner in a row."""
    place = tuner.place
    index = place.index if isinstance(place, RowPlace) else 0
    if pattern.mount == "side":
        if isinstance(place, EdgePlace):
            side, along, depth = place.side, place.along, place.depth
        else:
            side, along, depth = row.run.side, row.run.first + index * row.spacing, None
        z = blank.thickness / 2 if depth is None else depth
        return _on_edge(edge(outline, side), tuner.id, along, z, 0.0 if tuner.flat is None else tuner.flat.depth)
    if isinstance(place, FreePlace):
        point, turn = place.at, None if place.turn is None else math.radians(place.turn)
    else:
        point, turn = _row_point(outline, row, index)
    return _on_face(outline, tuner.id, point, turn, blank.thickness)


def row_point(layout: Headstock, row: Row, index: int) -> tuple[Vec2, float | None]:
    """Place in mm of member `index` of a row, and the direction of its button (rad) where the row sets it."""
    return _row_point(layout.outline, row, index)


def _row_point(outline: Loop, row: Row, index: int) -> tuple[Vec2, float | None]:
    run = row.run
    if isinstance(run, EdgeRun):
        seat = edge(outline, run.side).seat(run.first + index * row.spacing)
        return v.along(seat.point, seat.normal, -run.inset), math.atan2(seat.normal[1], seat.normal[0])
    heading = math.radians(run.heading)
    at = v.along(run.start, (math.cos(heading), math.sin(heading)), index * row.spacing)
    return at, None if run.turn is None else math.radians(run.turn)


def _on_face(outline: Loop, id: str, point: Vec2, turn: float | None, wood: float) -> Frame:
    side: Side = "treble" if point[0] >= 0 else "bass"
    if turn is None:
        near = min((one.nearest(point) for one in edges(outline)), key=lambda s: v.distance(s.point, point))
        out = near.normal
    else:
        out = (math.cos(turn), math.sin(turn))
    aside = v.left(out)
    return Frame(id, "face", (point[0], point[1], 0.0), (*out, 0.0), (*aside, 0.0), (0.0, 0.0, 1.0), side, None, wood)


def _on_edge(on: Edge, id: str, along: float, z: float, sunk: float) -> Frame:
    seat = on.seat(along)
    into = v.scale(seat.normal, -1.0)
    return Frame(id, "side", (*v.along(seat.point, into, sunk), z), (*seat.tangent, 0.0), (0.0, 0.0, 1.0), (*into, 0.0), on.side, seat)
