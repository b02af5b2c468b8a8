"""The numbers of a side bore: mark, tilt, stop depth and the window that its depth must hit.

Formulas: with the outward unit normal n at the seat P and the square edge at
x = W, the axis meets the square edge lambda = (W - P_x) / n_x farther out, at
y = P_y + lambda n_y; the table tilts by atan2(n_y, n_x), mirrored on the bass side.
"""

from __future__ import annotations

import math

import shapely
from msgspec import Struct
from shapely.geometry import LineString

from geometry.layout.blank import Side
from geometry.layout.headstock import Headstock
from geometry.layout.shop import DrillPress
from geometry.solids.drilling import Drilling, drill_for, holes, point_ahead
from geometry.solids.frames import Frame, frame
from geometry.solids.slot_area import slot_area
from geometry.units import MM_PER_INCH, LengthUnit
from geometry.vectors import Vec3

SAME_TILT = math.radians(0.05)
"""Tilts that differ by no more are set at the table as one (common practice, no source)."""


class Crossing(Struct, frozen=True):
    """Where an axis runs through a slot: from the rail side to the inner wall, mm from the seat."""

    slot: str
    enters: float
    leaves: float


class SideBore(Struct, frozen=True):
    """What the maker sets for one side tuner (mm, rad)."""

    tuner: str
    side: Side
    along: float
    seat: Vec3
    tilt: float
    """positive when the bore climbs towards the tip on its way out"""
    mark: Vec3 | None
    """where the axis meets the square edge"""
    squared_miss: float
    """how far a line squared across from the seat would miss the mark along y"""
    waste: float
    """length of the bore through the waste outside the outline"""
    stop_full: float
    """from the square edge to the full diameter's end"""
    stop_point: float
    """from the square edge to the drill's point"""
    point: float
    """length of the drill's point"""
    depth: float
    """from the seat to the full diameter's end"""
    crossing: Crossing | None
    """the first slot to rout on the way"""
    string_hole: float
    """from the seat to the string hole in the post"""
    turns_with: tuple[str, ...]
    """side tuners drilled at the same table setting with the blank turned over"""


def side_bore(layout: Headstock, tuner_id: str) -> SideBore | None:
    """The numbers of a tuner's post bore, or None when it is not a side tuner with a post bore."""
    tuner = layout.tuner(tuner_id)
    pattern = layout.pattern(tuner.pattern)
    if pattern.mount != "side":
        return None
    placed = frame(layout, tuner)
    bore = next((d for hole in holes(layout) if hole.of == tuner_id
                 for d in hole.drillings if d.role == "post"), None)
    if bore is None:
        return None
    tilt = tilt_of(placed)
    waste = bore.stop - bore.depth
    point = point_ahead(drill_for(layout, bore), bore)
    seat = placed.seat
    return SideBore(
        tuner_id, placed.side, seat.along, placed.origin, tilt, bore.mark, waste * seat.normal[1], waste,
        bore.stop, bore.stop + point, point, bore.depth, crossing(layout, bore), pattern.post.string_hole,
        shared_tilts(layout, tuner_id))


def tilt_of(frame: Frame) -> float:
    """Tilt of the bore from the square edge's normal, rad: positive when the outward axis leans to the tip."""
    return math.atan2(-frame.w[1], abs(frame.w[0]))


def crossing(layout: Headstock, bore: Drilling) -> Crossing | None:
    """The first slot to rout that the bore's axis runs into, looked at in plan; None when it meets none within 400 mm.

    A slot that crosses itself has no inside to run into, and no post lies across a pocket that is there.
    """
    start, d = bore.start, bore.direction
    axis = LineString([start[:2], (start[0] + d[0] * 400, start[1] + d[1] * 400)])
    found: list[Crossing] = []
    for slot in layout.to_rout:
        if slot.depth is not None and slot.depth <= start[2]:
            continue
        area = slot_area(slot)
        if area is None:
            continue
        inside = shapely.intersection(axis, area)
        for piece in shapely.get_parts(inside):
            if piece.length > 0:
                ends = sorted(math.dist(start[:2], c) for c in (piece.coords[0], piece.coords[-1]))
                found.append(Crossing(slot.id, ends[0], ends[1]))
    return min(found, key=lambda c: c.enters, default=None)


def shared_tilts(layout: Headstock, tuner_id: str) -> tuple[str, ...]:
    """Side tuners that need the same table setting when the blank is turned over about the centreline.

    Opposite bores with the same tilt share it exactly when both axes lie at
    half the thickness; others are left out.
    """
    own = frame(layout, layout.tuner(tuner_id))
    if abs(own.origin[2] - layout.blank.thickness / 2) > 1e-6:
        return ()
    found = []
    for tuner in layout.tuners:
        if layout.pattern(tuner.pattern).mount != "side":
            continue
        other = frame(layout, tuner)
        if (other.side != own.side and abs(other.origin[2] - own.origin[2]) <= 1e-6
                and abs(tilt_of(other) - tilt_of(own)) <= SAME_TILT):
            found.append(tuner.id)
    return tuple(found)


def board_for(base: float, unit: LengthUnit) -> float:
    """The board (mm) under which blocks set a tilt: that of the rack. For a maker in inches whose rack still has the board of
    100 mm that it began with, one of 4 inches."""
    return 4 * MM_PER_INCH if unit != "mm" and base == DrillPress().base else base


def block_height(tilt: float, base: float = 100.0) -> float:
    """Height in mm under the raised side that tilts a base of `base` mm by `tilt` rad: base * sin(tilt)."""
    return base * math.sin(abs(tilt))
