"""How near a post in its slot comes to the slot's wall in any direction, not only along its own axis.

In plan a level post is a rectangle and the wall stands upright at its height,
so a distance in plan is the true one. A ray along the axis tells more than
there is wherever the wall is not square to it, as in the round end of a slot.
"""

from __future__ import annotations

import math

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.scene import Opening
from geometry.curves import Line, Path
from geometry.layout import StraightSlot
from geometry.solids.walls import Wall, ring
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

FACING = 0.1
"""Cosine to the edge of the way to a wall from which that wall is the slot's end rather than one of its sides"""
_FAR = 1000.0
"""mm: wider and longer than any slot"""


def wall_beside(opening: Opening, p: Vec2, within: float) -> tuple[float, Vec2]:
    """(exact distance in mm from p to a slot's wall, positive inside the slot; unit way out of the slot there).

    A wall farther off than `within` mm need not be measured: the distance may then be infinite.
    """
    shape = opening.slot.shape
    if isinstance(shape, StraightSlot):
        x, y = v.nearest_between(shape.nut_end, shape.tip_end, p)
        dx, dy = p[0] - x, p[1] - y
        far = math.hypot(dx, dy)
        return shape.width / 2 - far, (dx / far, dy / far) if far > 0 else (1.0, 0.0)
    if not shapely.dwithin(opening.wall.line, shapely.Point(p), within + FLAT):
        return math.inf, (1.0, 0.0)
    depth, foot = opening.wall.inside(p), opening.wall.foot(p)
    way = v.sub(foot.point, p) if depth >= 0 else v.sub(p, foot.point)
    return depth, v.unit(way if v.norm(way) > TOUCH else v.right(foot.tangent))


def before_end(opening: Opening, corners: tuple[Vec2, Vec2], way: Vec2, slack: float, within: float) -> float:
    """mm between the flat end of a post and what of a slot's wall lies before it; negative by how far it runs in.

    `corners` bound the end seen on the face, the unit `way` leads out of it, and `slack` is how much of the post
    before its end lies in the slot (mm). Never more than there is, and infinite where nothing is within `within` mm.
    The rail that a post has come through lies behind its end. Of a straight slot a round end counts to which a corner
    is nearest, and any wall on the far side of the slot's middle.
    """
    shape = opening.slot.shape
    ahead = math.inf
    for corner in corners:
        depth, out = wall_beside(opening, corner, within)
        # The wall of a round end runs on past a corner to what lies before it, the rail behind a post does not.
        if v.dot(out, way) > 0 or isinstance(shape, StraightSlot) and _in_round_end(shape, corner):
            ahead = min(ahead, depth)
    if isinstance(shape, StraightSlot):
        # Inside a convex slot the wall is nowhere nearer to a straight line than to one of its ends.
        return ahead
    wall, end = opening.wall, Wall(Path((Line(*corners),)))
    if not shapely.dwithin(wall.line, end.line, within + FLAT):
        return ahead
    distance, here, there = end.to(wall)
    if distance <= TOUCH:
        return min(ahead, _run_in(wall, corners, way, slack))
    if v.dot(v.sub(there, here), way) > 0:
        return min(ahead, distance)
    # The nearest wall lies behind: what lies before is told from its chords, on the safe side.
    aside = v.scale(v.unit(v.sub(corners[1], corners[0])), _FAR)
    a, b = v.sub(corners[0], aside), v.add(corners[1], aside)
    front = shapely.Polygon([p.start for p in ring((a, b, v.along(b, way, _FAR), v.along(a, way, _FAR))).segments])
    return min(ahead, float(shapely.distance(end.line, shapely.intersection(wall.line, front))) - FLAT
               if shapely.intersects(wall.line, front) else math.inf)


def _in_round_end(shape: StraightSlot, p: Vec2) -> bool:
    """Whether what of a slot's wall is nearest to a point belongs to a round end."""
    along = v.sub(shape.tip_end, shape.nut_end)
    return not 0 <= v.dot(v.sub(p, shape.nut_end), along) <= v.dot(along, along)


def _run_in(wall: Wall, corners: tuple[Vec2, Vec2], way: Vec2, slack: float) -> float:
    """How far the end of a post runs into what of a wall bulges in between its flanks, 0 or less."""
    beside = wall.points - np.array(v.middle(*corners))
    along = beside @ np.array(way)
    across = np.abs(beside @ np.array(v.left(way)))
    met = along[(across <= v.distance(*corners) / 2) & (along < 0) & (along > -slack)]
    return float(met.min()) - FLAT if met.size else 0.0
