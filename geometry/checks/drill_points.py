"""What a drill's point takes beyond the full diameter: whether it comes out somewhere, or leaves too little wood.

A screw, a moulded pin or a lone hole counts to its drill's point, as below it (depths.py), and wants as much wood
there as beside it. Of any other drilling the point may come near, but not out. Told is only what the flat-ended
cylinder does not tell by itself: what is thin or broken through by that has a snag of its own.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import shapely
from msgspec.structs import replace

from geometry import vectors as v
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening
from geometry.checks.slot_room import wall_beside
from geometry.checks.snags import TIGHT, Snag, grade, short
from geometry.checks.words import clearance, first, is_small, name, tenths, up
from geometry.curves import Line
from geometry.layout import StraightSlot
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.pointed import level_tip, too_long
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2, Vec3

_INNER = 0.7
"""Cosine to a bore's axis of the way out of its slot up to which a wall is the inner wall, not an end of the slot"""
_LEANS = math.tan(math.acos(_INNER))
"""mm by which such a wall comes nearer for each mm beside the axis, at most"""
_SHARES = (1.0, 1.1, 1.25, 1.5, 2.0, 3.0, 4.0)
"""What drawing a point back may take, in times of what lacks"""


def counts(drilling: Drilling) -> bool:
    """Whether a drilling is told to its drill's point."""
    return is_small(drilling) or drilling.role == "hole" and not drilling.there


def wanted(drilling: Drilling, wood: float, bare: float) -> float:
    """Wood wanted between the point and something, mm: `wood` is wanted beside the drilling, `bare` is what its full diameter leaves."""
    return wood if counts(drilling) and not short(bare, wood) else 0.0


def wanted_then(drilling: Drilling, needed: float, wood: float) -> float:
    """What its point wants (mm) once the drilling is less deep, `needed` mm as it is: where it counts, all the `wood` that is wanted
    beside the full diameter."""
    return wood if counts(drilling) else needed


def at_point(drilling: Drilling, ahead: float) -> Vec3:
    """Where a drill's point ends."""
    (x, y, z), (dx, dy, dz) = drilling.end, drilling.direction
    return x + dx * ahead, y + dy * ahead, z + dz * ahead


def snag(item: Item, drilling: Drilling, ahead: float, other: str, between: tuple[str, ...], measured: float, needed: float,
         wood: float, gap: Callable[[Drilling], float]) -> Snag:
    """The snag of a point that comes `measured` mm near `other`, or as far into it (negative: how much too deep the drilling is).

    `gap` measures the same of the drilling drawn back; once its full diameter has the `wood` that it wants, its point may want it too. Only a point that is seen outside spoils the work: in a slot or another hole it leaves a small hole, as it scars an inner wall.
    """
    text = clearance(measured, needed, "{name} comes {measured} mm into the {other} with the drill's point.",
                     "{name} leaves {a} mm of wood to the {other}, to the drill's point; {b} mm wanted.",
                     name=first(name(drilling)), other=other)
    less = _less_deep(drilling, needed - measured, lambda one: not short(gap(one), wanted_then(drilling, needed, wood)))
    cure = (say("Drill {item} less deep by {by} mm there, or use a drill with a shorter point.", item=item.id, by=tenths(less))
            if less is not None else
            say("Use a drill with a shorter point, or move {item} farther away.", item=item.id))
    return Snag("drill-point", grade(measured) if OUTLINE in between else TIGHT, between, at_point(drilling, ahead), measured, needed, text,
                cure)


def _less_deep(drilling: Drilling, lacking: float, enough: Callable[[Drilling], bool]) -> float | None:
    """How much less deep is enough, mm in tenths: more than lacks where the point passes aslant; None where no depth is left."""
    for share in _SHARES:
        less = up(lacking * share)
        if less >= drilling.depth:
            return None
        if enough(replace(drilling, depth=drilling.depth - less)):
            return less
    return None


def beside(drilling: Drilling, ahead: float, wall: Wall, shape: shapely.Geometry) -> float:
    """Gap in mm in plan between the cone of a level drilling and what of an upright wall is within a shape (the slot, or a part
    of the outline); negative by how far the drilling would have to be drawn back. Never overstated.

    Level with the axis the cone is widest, so that the distance in plan is the true one.
    """
    lacks, place = too_long(drilling, ahead, shape)
    if lacks > 0:
        return -lacks - _strayed(wall, place, ahead / drilling.radius)
    tip = shapely.Polygon(level_tip(drilling, ahead))
    near, there = shapely.shortest_line(tip, shape).coords[:]
    far = v.distance(near, there)
    return max(0.0, far - _strayed(wall, there, 0.0))


def _strayed(wall: Wall, place: Vec2, slope: float) -> float:
    """By how much the chords of a wall may tell too little at a place of them: nothing where it is straight, mm along an axis
    that it meets with a slope."""
    straight = isinstance(wall.path.segments[wall.foot(place).segment], Line)
    return 0.0 if straight else FLAT * math.hypot(1.0, slope)


def before_inner_wall(bore: Drilling, ahead: float, own: Opening, enters: float, leaves: float) -> float:
    """Air in mm between a bore's end, to the drill's point, and the inner wall of the slot in which it ends, along the axis.

    Negative by how far it would have to be drawn back. The axis runs in the slot from `enters` to `leaves` (mm from the
    seat). The whole end counts: rim, cone and point. A wall beside which the bore runs out at an end of the slot does not.
    """
    on_axis = leaves - bore.depth - ahead
    end, along = np.array(bore.end[:2]), np.array(plan(bore.direction))
    points, radius = own.wall.points, bore.radius
    away = points - end
    u, w = away @ along, away @ (-along[1], along[0])
    found = [(on_axis, v.along(plan(bore.start), plan(bore.direction), leaves))]
    chord = np.diff(points, axis=0)
    size = np.maximum(np.hypot(chord[:, 0], chord[:, 1]), 1e-300)
    turned = 1.0 if own.wall.path.area >= 0 else -1.0
    facing = turned * (chord[:, 1] * along[0] - chord[:, 0] * along[1]) / size
    # Each chord of the inner wall, cut to the bore's width.
    for k in np.flatnonzero((facing > _INNER) & (np.minimum(u[:-1], u[1:]) < leaves - bore.depth) & (np.minimum(w[:-1], w[1:]) < radius)
                            & (np.maximum(w[:-1], w[1:]) > -radius)).tolist():
        for share in _shares(float(w[k]), float(w[k + 1]), radius):
            aside, before = w[k] + share * (w[k + 1] - w[k]), u[k] + share * (u[k + 1] - u[k])
            if before > -radius and bore.depth + before > enters:
                x, y = points[k] + share * chord[k]
                found.append((float(before + ahead * (abs(aside) / radius - 1)), (float(x), float(y))))
    least, place = min(found)
    if least != on_axis:
        least -= _strayed(own.wall, place, ahead / radius)
    if least < 0 <= on_axis and _in_the_clear(own, level_tip(bore, ahead), plan(bore.direction)):
        return 0.0
    return least


def far_before_inner_wall(bore: Drilling, ahead: float, own: Opening, leaves: float) -> bool:
    """Whether a bore ends so far before the inner wall that nothing of its end can meet it, looked at quickly.

    The inner wall of a straight slot comes nearer beside the axis by no more than it leans.
    """
    return isinstance(own.slot.shape, StraightSlot) and leaves - bore.depth >= max(ahead, _LEANS * bore.radius)


def _shares(first_: float, last: float, radius: float) -> list[float]:
    """Where on a chord, whose ends lie so far beside an axis, the air before a cone of a radius may be least: its ends and the axis."""
    if first_ == last:
        return [0.0, 1.0]
    cuts = sorted(min(1.0, max(0.0, (level - first_) / (last - first_))) for level in (-radius, radius))
    middle = first_ / (first_ - last)
    return [*cuts, *([middle] if cuts[0] < middle < cuts[1] else [])]


def _in_the_clear(own: Opening, tip: tuple[Vec2, Vec2, Vec2], way: Vec2) -> bool:
    """Whether the end of a bore lies in its slot, but for what the rail behind it covers."""
    if isinstance(own.slot.shape, StraightSlot):
        # A slot like that is convex: it holds what it holds the corners of.
        return all(depth >= -TOUCH or v.dot(out, way) <= 0 for depth, out in (wall_beside(own, p, math.inf) for p in tip))
    return bool(shapely.covers(own.wall.area, shapely.Polygon(tip)))
