"""A drawn slot that a side bore meets a second time: what of it lies beyond the inner wall of the arm that the bore runs into first.

The bore may enter that first arm, and go on into its inner wall to bear the post's tip. The wood between its end and another
arm of the same slot, as of a U, has to hold no less than that before another slot.
"""

from __future__ import annotations

import shapely
from msgspec.structs import replace
from shapely.geometry import Polygon

from geometry import vectors as v
from geometry.checks.items import plan
from geometry.checks.scene import Opening
from geometry.curves import Line
from geometry.layout.slots import StraightSlot
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall, oblong_corners, ring
from geometry.solids.ways_out import SAGITTA, fine_wall
from geometry.tolerance import FLAT, TOUCH

_WIDE = 1e4
"""mm: more than any slot reaches"""
_ALONG = 3.0
"""Radii of a bore for which the slot may go on close to one flank after the axis has left it: a wall aslant to the bore is no other arm."""


def far_arm(bore: Drilling, reach: float, beside: float, own: Opening) -> Opening | None:
    """The part of its own slot that a side bore comes near beyond the inner wall, as an opening with a wall of chords; or None.

    `reach`: how far along the axis from the seat is looked for it, mm; `beside`: how far beside the bore. The part begins half
    way through the wood between the two arms. None for a bore that ends in the slot: what is beyond the air before it is no
    concern of its end. The chords stray from the slot's wall by strays_by() at most.
    """
    if isinstance(own.slot.shape, StraightSlot) or own.crosses:
        return None
    stretches = own.wall.stretches(plan(bore.start), plan(bore.direction))
    if not stretches or bore.depth < stretches[0][1] - TOUCH:
        return None
    area = fine_wall(own.wall).area
    level, foot = _half_way(bore, reach, beside, area, stretches)
    if level is None:
        return None
    near = [part for part in _within(area, bore, level, reach, bore.radius + beside) if foot or not _begins_at(level, bore, part)
            or shapely.intersects(part, _strip(bore, level, reach, bore.radius))]
    if not near:
        return None
    body = _strip(bore, 0.0, bore.depth, bore.radius)
    nearest = min(near, key=lambda part: (shapely.distance(body, part), _begins(bore, part)))
    # All of it, so that the least way out of it is no way out of a piece of it.
    whole = max(_within(area, bore, level, _WIDE, _WIDE), key=lambda part: shapely.intersection(part, nearest).area)
    return replace(own, wall=Wall(ring(tuple(whole.exterior.coords[:-1])).counter_clockwise()))


def strays_by(own: Opening) -> float:
    """How far the chords of a slot's far arm may stray from the wall, mm."""
    return 0.0 if all(isinstance(piece, Line) for piece in own.wall.path.segments) else SAGITTA


def far_arm_of(own: Opening) -> str:
    """How a sentence calls the far arm of a slot."""
    return say("far arm of {slot}", slot=own.id)


def _half_way(bore: Drilling, reach: float, beside: float, area: Polygon, stretches: list[tuple[float, float]]) -> tuple[float | None, bool]:
    """(how far along the axis the other arm is taken to begin, mm; whether that is but the foot of the slot, which goes on beside the bore).

    Half way between the arm that the bore runs into and the next; None where none is near.
    """
    enters, leaves = stretches[0]
    again = stretches[1][0] if len(stretches) > 1 and stretches[1][0] < reach else None
    middle = shapely.Point(v.along(plan(bore.start), plan(bore.direction), (enters + leaves) / 2))
    ahead = _within(area, bore, 0.0, reach, bore.radius)
    first = min(ahead, key=lambda part: shapely.distance(part, middle), default=None)
    if first is None:
        return None, False
    if again is None and _goes_on(bore, area, first, leaves + _ALONG * bore.radius, bore.radius + beside):
        # The slot goes on in or close to one flank: an arm there is shorter than the axis, or too far away to be met.
        return leaves + bore.radius, True
    ends = _ends(bore, first)
    if again is not None and ends > again:
        # The bore's flank runs from one arm to the other in what joins them.
        return (leaves + again) / 2, False
    starts = [_begins(bore, part) for part in ahead if part is not first and _begins(bore, part) > enters]
    starts += [_begins(bore, part) for part in _within(area, bore, ends, reach, bore.radius + beside) if not _begins_at(ends, bore, part)]
    return (ends + min(starts)) / 2 if starts else None, False


def _goes_on(bore: Drilling, area: Polygon, first: Polygon, level: float, half: float) -> bool:
    """Whether the part that a bore runs into reaches as far as that level along its axis, within `half` mm to either side."""
    if not shapely.intersects(area, _strip(bore, level, level + FLAT, half)):
        return False  # so with most slots, and asked sooner than what is joined to what
    return _ends(bore, max(_within(area, bore, 0.0, level + FLAT, half), key=lambda part: shapely.intersection(part, first).area)) > level


def _strip(bore: Drilling, first: float, last: float, half: float) -> Polygon:
    """What lies from `first` to `last` mm along a bore's axis and up to `half` mm to either side of it."""
    way = plan(bore.direction)
    return Polygon(oblong_corners(v.along(plan(bore.start), way, first), way, last - first, half))


def _within(area: Polygon, bore: Drilling, first: float, last: float, half: float) -> list[Polygon]:
    """The parts of an area in such a strip."""
    if last <= first:
        return []
    return [part for part in shapely.get_parts(shapely.intersection(area, _strip(bore, first, last, half))).tolist()
            if part.geom_type == "Polygon" and not part.is_empty]


def _levels(bore: Drilling, part: Polygon) -> list[float]:
    """How far along the bore's axis the corners of a part lie, mm."""
    return [v.dot(v.sub(p, plan(bore.start)), plan(bore.direction)) for p in part.exterior.coords]


def _begins(bore: Drilling, part: Polygon) -> float:
    return min(_levels(bore, part))


def _ends(bore: Drilling, part: Polygon) -> float:
    return max(_levels(bore, part))


def _begins_at(level: float, bore: Drilling, part: Polygon) -> bool:
    """Whether a part goes on before the level at which it was cut off."""
    return _begins(bore, part) <= level + TOUCH
