"""Pockets that the blank has already: what the outline leaves beside one, and how a sentence speaks of one.

Nothing of a pocket is cut, so neither its floor nor the nut line before it is judged, and it may lie in the waste as well
as in the head. Along the nut line the outline is no edge: there the neck goes on. What it may not be is cut open by the
outline, or left behind a rail that breaks.
"""

from __future__ import annotations

import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.checks.scene import Opening
from geometry.checks.snags import SPOILS, TIGHT, Snag, short
from geometry.checks.words import both, into
from geometry.layout.names import OUTLINE
from geometry.layout.strings import Nut
from geometry.saying import say
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT
from geometry.vectors import Vec2

_CLOSE, _MOST = 0.1, 4000
"""mm between points along what sticks out, but no more points than these"""


def wall_of(opening: Opening) -> str:
    """How a sentence calls the wall of a slot, or of a pocket that is there."""
    return (say("wall of {slot}, which is there already", slot=opening.id) if opening.there else
            say("wall of {slot}", slot=opening.id))


def clear_of(pocket: str) -> str:
    """What to do about a drilling that comes too near to a pocket that is there."""
    return say("Move it away from {pocket}, which is in the blank already.", pocket=pocket)


def pocket_advice(pocket: str) -> str:
    """What to do about a slot that comes too near to a pocket that is there."""
    return say("Keep the slot away from {pocket}, which is in the blank already, or fill that with wood first.", pocket=pocket)


class Beside(Struct, frozen=True):
    """Where a pocket comes nearest to the outline, or reaches out of it the farthest."""

    wood: float
    """mm; less than nothing where the outline cuts the pocket"""
    edge: Vec2
    """the place on the outline"""
    pocket: Vec2
    """and of the pocket"""


def beside_outline(opening: Opening, outline: Wall, edges: Wall | None, nut: Nut, within: float) -> Beside | None:
    """The wood between a pocket and the outline before the nut line where it is less than `within` mm, else None.

    `edges` is the outline without its straight end along the nut line, None where it has none. A pocket that lies in the
    waste or in the neck with all it has takes no wood from the head.
    """
    pocket = opening.wall.area
    if outline.path.box[3] <= -1.0 or not shapely.intersects(outline.area, pocket):  # an outline wholly behind the nut line leaves nothing to clip
        return None
    ahead = _before(nut, (outline if edges is None else edges).line, outline)
    if shapely.intersects(ahead, pocket):
        out, where = _sticks_out(opening, outline, nut)
        return Beside(-out, outline.foot(where).point, where)
    if not shapely.dwithin(ahead, pocket, within + 2 * FLAT):
        return None
    if edges is not None:
        return Beside(*edges.to(opening.wall))
    ends = shapely.get_coordinates(shapely.shortest_line(ahead, pocket)).tolist()
    return Beside(v.distance(*ends) - 2 * FLAT, tuple(ends[0]), tuple(ends[1]))


def snags_beside(opening: Opening, outline: Wall, edges: Wall | None, nut: Nut, needed: float) -> tuple[Snag, ...]:
    """The snag of a pocket that the outline cuts, or leaves less than a rail of `needed` mm; `edges` as for beside_outline."""
    found = beside_outline(opening, outline, edges, nut, needed)
    if found is None or not short(found.wood, needed):
        return ()
    if found.wood < 0:
        return (Snag("slot-outside", SPOILS, (opening.id, OUTLINE), (*found.pocket, 0.0), found.wood, needed,
                     say("The outline cuts {opening}, which is there already and reaches {out} mm beyond it.",
                         opening=opening.id, out=into(found.wood)),
                     say("Draw the outline past {opening}, or fill that with wood first.", opening=opening.id)),)
    a, b = both(found.wood, needed)
    return (Snag("rail", TIGHT, (opening.id, OUTLINE), (*v.middle(found.edge, found.pocket), 0.0), found.wood, needed,
                 say("The rail beside {opening}, which is there already, is {a} mm; {b} mm wanted.", opening=opening.id, a=a, b=b),
                 say("Widen the outline there, or fill {opening} with wood first.", opening=opening.id)),)


def _before(nut: Nut, shape: BaseGeometry, of: Wall) -> BaseGeometry:
    """What of a shape within the box of a wall lies before the nut line."""
    x0, _, x1, y1 = of.path.box
    if not nut.slant:
        return shapely.clip_by_rect(shape, x0 - 1.0, 0.0, x1 + 1.0, y1 + 1.0)
    (a, low), (b, high) = nut.at(x0 - 1.0), nut.at(x1 + 1.0)
    top = max(y1, low, high) + 1.0
    return shape & shapely.Polygon(((a, low), (b, high), (b, top), (a, top)))


def _sticks_out(opening: Opening, outline: Wall, nut: Nut) -> tuple[float, Vec2]:
    """How far a pocket reaches out of the head before the nut line, mm, told from points close to each other and never as less; and where."""
    beyond = _before(nut, opening.wall.area, opening.wall) - outline.area
    close = max(_CLOSE, beyond.length / _MOST)
    points = shapely.get_coordinates(shapely.segmentize(beyond, close))
    if not len(points):
        points = opening.wall.points
    depth, i = outline.outermost(points)
    return max(0.0, -depth) + close / 2, (float(points[i, 0]), float(points[i, 1]))
