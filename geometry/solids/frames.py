"""Where each tuner sits: its own frame in the frame of the head."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry import vectors as v
from geometry.layout.blank import Side
from geometry.layout.edges import Seat, edge, edges
from geometry.layout.headstock import Headstock
from geometry.layout.tuners import EdgePlace, EdgeRun, FreePlace, Row, Tuner
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
    pattern = layout.pattern(tuner.pattern)
    place = tuner.place
    row: Row | None = None
    index = 0
    if not isinstance(place, FreePlace | EdgePlace):
        row, index = layout.row(place.row), place.index
    if pattern.mount == "side":
        if isinstance(place, EdgePlace):
            side, along, depth = place.side, place.along, place.depth
        else:
            run = row.run
            side, along, depth = run.side, run.first + index * row.spacing, None
        return _on_edge(layout, tuner.id, side, along, depth, 0.0 if tuner.flat is None else tuner.flat.depth)
    turn: float | None = None
    if isinstance(place, FreePlace):
        point = place.at
        turn = None if place.turn is None else math.radians(place.turn)
    else:
        point, turn = row_point(layout, row, index)
    return _on_face(layout, tuner.id, point, turn)


def row_point(layout: Headstock, row: Row, index: int) -> tuple[Vec2, float | None]:
    """Place in mm of member `index` of a row, and the direction of its button (rad) where the row sets it."""
    run = row.run
    if isinstance(run, EdgeRun):
        seat = edge(layout.outline, run.side).seat(run.first + index * row.spacing)
        return v.along(seat.point, seat.normal, -run.inset), math.atan2(seat.normal[1], seat.normal[0])
    heading = math.radians(run.heading)
    return v.along(run.start, (math.cos(heading), math.sin(heading)), index * row.spacing), None


def _on_face(layout: Headstock, id: str, point: Vec2, turn: float | None) -> Frame:
    side: Side = "treble" if point[0] >= 0 else "bass"
    if turn is None:
        near = min((one.nearest(point) for one in edges(layout.outline)), key=lambda s: v.distance(s.point, point))
        out = near.normal
    else:
        out = (math.cos(turn), math.sin(turn))
    aside = v.left(out)
    return Frame(id, "face", (point[0], point[1], 0.0), (*out, 0.0), (*aside, 0.0), (0.0, 0.0, 1.0), side, None)


def _on_edge(layout: Headstock, id: str, side: Side, along: float, depth: float | None, sunk: float) -> Frame:
    seat = edge(layout.outline, side).seat(along)
    z = layout.blank.thickness / 2 if depth is None else depth
    into = v.scale(seat.normal, -1.0)
    return Frame(id, "side", (*v.along(seat.point, into, sunk), z), (*seat.tangent, 0.0), (0.0, 0.0, 1.0), (*into, 0.0), side, seat)
