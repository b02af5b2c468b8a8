"""A flat cut into the edge so that a plate sits on it: how far the edge falls away under the plate, exactly.

Heights are taken square to the edge at the seat: an edge that bellies out
falls away from the tangent by R - sqrt(R^2 - u^2) at u mm along it, a hollow one rises.
"""

from __future__ import annotations

import math

from geometry import vectors as v
from geometry.curves import Cubic, Segment, shift, stretch, turn
from geometry.layout.edges import Edge, Seat, edge
from geometry.layout.hardware import Footprint
from geometry.layout.headstock import Headstock
from geometry.layout.tuners import Flat
from geometry.solids.frames import frame

_AMPLE = 1.1
"""how many times the parameter's step that would do at full speed is looked at"""


def under_plate(side: Edge, seat: Seat, before: float, behind: float) -> tuple[float, float]:
    """(fall, rise) in mm of an edge under a plate that reaches `before` to the tip and `behind` to the nut.

    Both are measured from the tangent at the seat and are 0 or more. The edge is walked to either side until it first comes out from
    under the plate; past its ends it is not looked at.
    """
    heights = [0.0, *_heights(side, seat, 1, before, behind), *_heights(side, seat, -1, behind, before)]
    return max(0.0, -min(heights)), max(heights)


def strays_within(side: Edge, seat: Seat, before: float, behind: float, most: float) -> bool:
    """Whether the edge surely falls away and rises by no more than `most` mm: told in a moment for the cubic that the seat is on.

    False says nothing.
    """
    own = side.path.segments[seat.segment]
    if not isinstance(own, Cubic):
        return False
    d, dd, c = own.derivative(seat.t), own.second(seat.t), own.third
    speed = v.norm(d)
    bend, more = abs(v.dot(dd, seat.normal)) / 2, v.norm(c) / 6
    # Along the tangent the cubic gets on by its speed less what its other terms can take away from it.
    slow = abs(v.dot(dd, seat.tangent)) / 2
    for reach, room in ((before, 1 - seat.t), (behind, seat.t)):
        step = _AMPLE * reach / speed if speed > 0 else math.inf
        if step > room or step * (speed - step * (slow + step * more)) < reach or step * step * (bend + step * more) > most:
            return False
    return True


def reaches(side: Edge, seat: Seat, way: int) -> float:
    """How far an edge goes on along the tangent at a seat, to the tip (1) or to the nut (-1), mm: to its end or to where it turns back."""
    boxes = [_outwards(piece, seat).box() for piece in _rest(side, seat, way)]
    return max(box[2] if way > 0 else -box[0] for box in boxes)


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


def _heights(side: Edge, seat: Seat, way: int, ahead: float, astern: float) -> list[float]:
    """The heights that count on the way to the tip (1) or to the nut (-1), along which the plate reaches `ahead` mm, and `astern` mm back."""
    found = []
    for one in _rest(side, seat, way):
        piece = _outwards(one if way > 0 else one.reversed(), seat)
        # It sets out to the front: on the seat itself only what lies ahead may end it.
        ends = (*piece.level(0, way * ahead), *(t for t in piece.level(0, -way * astern) if t > 0))
        end = min(ends, default=1.0)
        found += [piece.point(t)[1] for t in (*piece.extremes(1), end) if t <= end]
        if ends:
            break
    return found


def _rest(side: Edge, seat: Seat, way: int) -> tuple[Segment, ...]:
    """The pieces of an edge from a seat on, each in the edge's own direction."""
    segments, (before, after) = side.path.segments, side.path.segments[seat.segment].split(seat.t)
    return (after, *segments[seat.segment + 1:]) if way > 0 else (before, *segments[:seat.segment][::-1])


def _outwards(piece: Segment, seat: Seat) -> Segment:
    """A piece of the edge with the seat at the origin, the tangent along x and out of the wood along y."""
    flat = piece.mapped(turn(-math.atan2(seat.tangent[1], seat.tangent[0])).after(shift(-seat.point[0], -seat.point[1])))
    return flat if v.cross(seat.tangent, seat.normal) > 0 else flat.mapped(stretch(1.0, -1.0))
