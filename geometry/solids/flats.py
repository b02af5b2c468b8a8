"""A flat cut into the edge so that a plate sits on it: how far the edge falls away under the plate, exactly.

Heights are taken square to the edge at the seat: an edge that bellies out
falls away from the tangent by R - sqrt(R^2 - u^2) at u mm along it, a hollow one rises.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Path, shift, stretch, turn
from geometry.layout.edges import Edge, Seat, edge
from geometry.layout.hardware import Footprint
from geometry.layout.headstock import Headstock
from geometry.layout.tuners import Flat
from geometry.solids.frames import frame
from geometry.solids.plate_edge import fall_and_rise
from geometry.tolerance import TOUCH


def under_plate(side: Edge, seat: Seat, before: float, behind: float) -> tuple[float, float]:
    """(fall, rise) in mm of an edge under a plate that reaches `before` to the tip and `behind` to the nut.

    Both are measured from the tangent at the seat and are 0 or more. Past its ends the edge is not looked at.
    """
    found = fall_and_rise(side, seat, before, behind)
    return walked(side, seat, before, behind) if found is None else found


def walked(side: Edge, seat: Seat, before: float, behind: float) -> tuple[float, float]:
    """As under_plate, along the edge over any number of segments."""
    low, high = _at(side, seat, -behind), _at(side, seat, before)
    if high - low < 4 * TOUCH:  # a part of a path keeps no piece shorter than that, and nothing strays on so little
        return 0.0, 0.0
    out = _outwards(side.path.part(low, high), seat)
    return max(0.0, -out.box[1]), max(0.0, out.box[3])


def stands_off(layout: Headstock, tuner_id: str) -> float:
    """How far the bare edge falls away or rises under a side tuner's plate, at most, mm."""
    placed = frame(layout, layout.tuner(tuner_id))
    foot = layout.pattern(layout.tuner(tuner_id).pattern).seat
    return max(under_plate(edge(layout.outline, placed.side), placed.seat, foot.before, foot.behind))


def deep_enough(layout: Headstock, tuner_id: str) -> Flat | None:
    """A flat as long as a side tuner's plate and deep enough for it, to hundredths of a mm; None where none is wanted.

    A hollow edge has its ends taken down to the seat; the flat is then 0.01 deep.
    """
    tuner = layout.tuner(tuner_id)
    pattern = layout.pattern(tuner.pattern)
    if pattern.mount != "side":
        return None
    seat = frame(layout, tuner).seat
    foot = pattern.seat
    fall, rise = under_plate(edge(layout.outline, frame(layout, tuner).side), seat, foot.before, foot.behind)
    if max(fall, rise) < 1e-6:
        return None
    return Flat(size=2 * max(foot.before, foot.behind), depth=max(0.01, math.ceil(fall * 100 - 1e-6) / 100))


def least_size(flat: Flat, foot: Footprint) -> float:
    """How long a flat (or how wide a round spot) has to be for a plate, mm: both are centred on the post."""
    half = max(foot.before, foot.behind)
    return 2 * (half if flat.shape == "flat" else math.hypot(half, foot.across / 2))


def _outwards(piece: Path, seat: Seat) -> Path:
    """A piece of the edge with the seat at the origin, the tangent along x and out of the wood along y."""
    flat = piece.mapped(turn(-math.atan2(seat.tangent[1], seat.tangent[0])).after(shift(-seat.point[0], -seat.point[1])))
    if v.cross(seat.tangent, seat.normal) > 0:
        return flat
    return Path(tuple(segment.mapped(stretch(1.0, -1.0)) for segment in flat.segments))


def _at(side: Edge, seat: Seat, u: float) -> float:
    """The arc length at which the edge lies u mm along the tangent; the edge's end when it does not reach that far."""
    far = seat.along + u * 3
    near, far = seat.along, min(max(far, 0.0), side.length)

    def short(along: float) -> float:
        return abs(u) - abs(v.dot(v.sub(side.seat(along).point, seat.point), seat.tangent))

    low, high = abs(u), short(far)
    if high > 0 or low == 0:
        return far if low else seat.along
    kept = 0
    for _ in range(60):
        # False position; an end that stays twice loses half of its weight (the Illinois rule).
        guess = far - high * (far - near) / (high - low)
        miss = short(guess)
        if abs(miss) < 1e-10 or abs(far - near) < 1e-12:
            return guess
        if miss > 0:
            near, low, high = guess, miss, high / 2 if kept > 0 else high
            kept = 1
        else:
            far, high, low = guess, miss, low / 2 if kept < 0 else low
            kept = -1
    return far

