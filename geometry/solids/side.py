"""The numbers of a side bore: mark, tilt, stop depth and the window that its depth must hit.

Formulas: with the outward unit normal n at the seat P and the square edge at
x = W, the axis meets the square edge lambda = (W - P_x) / n_x farther out, at
y = P_y + lambda n_y; the table tilts by atan2(n_y, n_x), mirrored on the bass side.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import LineString

from geometry.layout.blank import Side
from geometry.layout.headstock import Headstock
from geometry.layout.shop import DrillPress
from geometry.layout.slots import StraightSlot
from geometry.solids.drilling import Drilling, drill_for, holes, point_ahead
from geometry.solids.frames import Frame, frame
from geometry.solids.slot_area import slot_area
from geometry.tolerance import SAME_TILT, TOUCH
from geometry.units import MM_PER_INCH, LengthUnit
from geometry.vectors import Vec3

_SIGHT = 400.0
"""mm: how far a side bore could possibly reach"""
_BESIDE = tuple(step / 4 for step in range(-4, 5))
"""where across a bore its slot's walls are looked at, in its radii"""
_ROOM = 0.1
"""mm: the least between two stops that are told; nobody sets one more truly (common practice, no source)"""


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
    window: tuple[float, float] | None
    """the least and the most stop (from the square edge, to full diameter) that leaves nothing of the rail and keeps the drill's point
    clear of the inner wall; None for a bore that does not end in its slot, or where no stop does both with _ROOM to set it in"""
    bears: float
    """how deep the post's end lies in the inner wall, in a bore that goes on into it; 0 where it does not"""
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
    own = crossing(layout, bore)
    into_wall = own is not None and bore.depth >= own.leaves - TOUCH
    return SideBore(
        tuner_id, placed.side, seat.along, placed.origin, tilt, bore.mark, waste * seat.normal[1], waste,
        bore.stop, bore.stop + point, point, bore.depth, own, pattern.post.string_hole,
        None if own is None or into_wall else _window(layout, bore, own, point),
        max(0.0, pattern.post.length - own.leaves) if into_wall else 0.0,
        shared_tilts(layout, tuner_id))


def _window(layout: Headstock, bore: Drilling, own: Crossing, point: float) -> tuple[float, float] | None:
    """See SideBore.window. Walls are looked at on the axis and on lines beside it, to both flanks of the bore."""
    slot = next(slot for slot in layout.to_rout if slot.id == own.slot)
    # A straight slot is convex: on axis and flanks its walls come nearest.
    across = _BESIDE[::4] if isinstance(slot.shape, StraightSlot) else _BESIDE
    way = np.array(bore.direction[:2])
    starts = np.array(bore.start[:2]) + np.outer(across, bore.radius * np.array([-way[1], way[0]]))
    lines = shapely.linestrings(np.stack([starts, starts + way * _SIGHT], axis=1))
    inside, of = shapely.get_parts(shapely.intersection(lines, slot_area(slot)), return_index=True)
    inside, of = inside[shapely.length(inside) > 0], of[shapely.length(inside) > 0]
    points, piece = shapely.get_coordinates(inside, return_index=True)
    depths = (points - starts[of[piece]]) @ way
    least, most = 0.0, math.inf
    for line, beside in enumerate(across):
        pieces = (depths[piece == one] for one in np.flatnonzero(of == line))
        ahead = [(ends.min(), ends.max()) for ends in pieces if ends.min() < own.leaves and ends.max() > own.enters]
        if not ahead:
            return None
        enters, leaves = min(ahead)
        least, most = max(least, float(enters)), min(most, float(leaves) - point * (1.0 - abs(beside)))
    waste = bore.stop - bore.depth
    return (waste + least, waste + most) if most - least >= _ROOM else None


def tilt_of(frame: Frame) -> float:
    """Tilt of the bore from the square edge's normal, rad: positive when the outward axis leans to the tip."""
    return math.atan2(-frame.w[1], abs(frame.w[0]))


def crossing(layout: Headstock, bore: Drilling) -> Crossing | None:
    """The first slot to rout that the bore's axis runs into, looked at in plan; None when it meets none in sight.

    A slot that crosses itself has no inside to run into, and no post lies across a pocket that is there.
    """
    start, d = bore.start, bore.direction
    axis = LineString([start[:2], (start[0] + d[0] * _SIGHT, start[1] + d[1] * _SIGHT)])
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
