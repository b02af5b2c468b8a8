"""Plates and bodies where they land: wood under all of them, and room beside each other."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.items import Item, plan
from geometry.checks.said import length
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import BACK, FACE, NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import clearance, into, mm, tenths, up
from geometry.curves import Line, Path
from geometry.layout.edges import Edge, Seat, edge
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.flats import reaches, strays_within, under_plate
from geometry.solids.nearby import NOTHING, Box, Rows
from geometry.solids.walls import Wall
from geometry.terms import term
from geometry.vectors import Vec2

ROCK = 0.3
"""mm by which a plate may rock before it is worth a note (common practice, no source)"""
LOOSE = 1.0
"""mm by which a plate may rock before no screw draws it down (common practice, no source)"""

_SHARES = (1.0, 1.05, 1.1, 1.2, 1.4, 1.7, 2.2)
"""What sliding along a bent edge may take, in times of what lacks"""
_FAR = 1e6
"""mm between what is on different surfaces: plates there never meet"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every plate with its neighbours."""
    margins = scene.layout.margins
    pairs = scene.memo.pairs(_rooms, scene.items, margins.seat_gap, margins).of_two()
    pairs.keep([_beside_each_other(scene.items[i], scene.items[k], margins) for i, k in pairs.new])
    return pairs.flat


def _rooms(items: Sequence[Item]) -> Rows:
    """Boxes about the circle that each plate lies in, one surface far from the other; boxes that hold nothing for what has none."""
    return [_room(item) if item.plate else NOTHING for item in items]


def _room(item: Item) -> Box:
    reach, (x, y) = _radius(item), plan(item.frame.origin)
    level = _FAR * ("face", "bass", "treble").index(_surface(item))
    return (x - reach, y - reach, level), (x + reach, y + reach, level)


def _surface(item: Item) -> str:
    return "face" if item.mount == "face" else item.frame.side


def _beside_each_other(one: Item, two: Item, margins: Margins) -> tuple[Snag, ...]:
    if v.distance(plan(one.frame.origin), plan(two.frame.origin)) > _radius(one) + _radius(two) + margins.seat_gap:
        return ()
    return (_backs if one.mount == "face" else _edges)(one, two, margins)


def _radius(item: Item) -> float:
    seat = item.pattern.seat
    return math.hypot(max(seat.before, seat.behind), seat.across / 2)


def _shape(item: Item) -> Wall:
    corners = [plan(c) for c in item.plate]
    return Wall(Path(tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)), closed=True))


# ---- face mount: on the back ------------------------------------------------
def on_back(item: Item, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    """Snags of a plate on the back with the outline."""
    needed = margins.seat_overhang
    shape = _shape(item)
    measured, where, push = _inside(shape, outline, needed)
    if not short(measured, needed):
        return ()
    text = clearance(measured, needed, "The plate of {item} overhangs the outline by {measured} mm.",
                     "The plate of {item} lies {a} mm from the outline; {b} mm wanted.", item=item.id)
    return (Snag("seat-overhang", TIGHT, (item.id, OUTLINE), (*where, item.plate[0][2]), measured, needed, text,
                 say("Choose a smaller plate, or widen the outline there."), push=push),)


def _inside(shape: Wall, outline: Wall, needed: float) -> tuple[float, Vec2, Vec2]:
    """(how far the outline lies outside a plate, negative by the overhang; where; the move that it lacks)."""
    if shapely.covers(outline.area, shape.area):
        measured, p, q = outline.to(shape)
        return measured, v.middle(p, q), v.scale(v.unit(v.sub(q, p)), max(0.0, needed - measured))
    corners = [tuple(c) for c in shape.points[:-1].tolist()]
    depths = [outline.inside(c) for c in corners]
    i = min(range(len(corners)), key=depths.__getitem__)
    into, k = shape.deepest(outline.points)
    if k is not None and into > -depths[i]:
        # A hollow of the outline runs under the plate between its corners.
        notch = (float(outline.points[k, 0]), float(outline.points[k, 1]))
        away = v.sub(v.middle(shape.points[0].tolist(), shape.points[2].tolist()), notch)
        return -into, notch, v.scale(v.unit(away), needed + into)
    foot = outline.foot(corners[i])
    back = v.sub(foot.point, corners[i])
    if v.norm(back) < 1e-9:
        back = v.left(foot.tangent)
    return depths[i], corners[i], v.scale(v.unit(back), needed - depths[i])


def over_slot(item: Item, area: shapely.Geometry, opening: Opening) -> tuple[Snag, ...]:
    """Snags of a plate on the back, of which the area in plan is given, with a slot cut through."""
    shared = shapely.intersection(area, opening.wall.area)
    if shared.area <= 1e-6:
        return ()
    corners = np.array([plan(corner) for corner in item.plate])
    depth = max(opening.wall.deepest(corners)[0], _into(corners, opening.wall.points), 2e-6)
    place = shared.representative_point()
    return (Snag("seat-over-slot", TIGHT, (item.id, opening.id), (place.x, place.y, item.plate[0][2]), -depth, 0.0,
                 say("The plate of {item} reaches {depth} mm over {opening}.",
                     item=item.id, depth=into(-depth), opening=opening.id),
                 say("Choose a smaller plate, or another place for the slot."),
                 push=_out_of(area, shared, depth)),)


def _into(corners: np.ndarray, points: np.ndarray) -> float:
    """How deep the deepest of some points (n, 2) lies inside a rectangle by its corners (4, 2), mm; 0 or less where none does."""
    first, second, _, last = corners.tolist()
    x, y = points[:, 0] - first[0], points[:, 1] - first[1]
    found = []
    for other in (second, last):
        along = v.sub(other, first)
        size, (ux, uy) = v.norm(along), v.unit(along)
        across = x * ux + y * uy
        found += [across, size - across]
    return float(np.minimum.reduce(found).max())


def _out_of(area: shapely.Geometry, shared: shapely.Geometry, depth: float) -> Vec2:
    """The shift of a plate of `depth` mm away from the middle of what it shares with a slot."""
    (x, y), (sx, sy) = shapely.get_coordinates([area.centroid, shared.centroid]).tolist()
    return v.scale(v.unit((x - sx, y - sy)), depth)


def _backs(one: Item, two: Item, margins: Margins) -> tuple[Snag, ...]:
    a, b = _shape(one), _shape(two)
    needed = margins.seat_gap
    measured, way = _apart(a.points[:-1], b.points[:-1])
    if not short(measured, needed):
        return ()
    joint = shapely.shortest_line(a.area, b.area)
    where = joint.interpolate(0.5, normalized=True)
    return (Snag("seats-overlap", grade(measured), (one.id, two.id), (where.x, where.y, one.plate[0][2]), measured,
                 needed, _beside(one, two, measured, needed), say("Choose smaller plates, or move both tuners."),
                 push=v.scale(way, needed - measured)),)


def _apart(a: np.ndarray, b: np.ndarray) -> tuple[float, Vec2]:
    """(gap of two convex polygons, negative by the least overlap; unit direction from b to a).

    Overlap by separating axes; the gap itself between the nearest points.
    """
    sides = [v.unit(v.left(v.sub(q, p))) for corners in (a.tolist(), b.tolist())
             for p, q in zip(corners, corners[1:] + corners[:1], strict=True)]
    normals = np.array([way for side in sides for way in (side, v.scale(side, -1.0))]).T
    gaps = (a @ normals).min(axis=0) - (b @ normals).max(axis=0)
    k = int(gaps.argmax())
    best, way = float(gaps[k]), (float(normals[0, k]), float(normals[1, k]))
    if best > 0:
        joint = shapely.shortest_line(shapely.Polygon(b), shapely.Polygon(a))
        p, q = joint.coords[:]
        return joint.length, v.unit(v.sub(q, p))
    return best, way


def _beside(one: Item, two: Item, measured: float, needed: float) -> str:
    return clearance(measured, needed, "The plates of {one} and {two} overlap by {measured} mm.",
                     "The plates of {one} and {two} lie {a} mm apart; {b} mm wanted.", one=one.id, two=two.id)


# ---- side mount: on the edge ------------------------------------------------
def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """A plate on the edge: within the thickness, within the edge's length, and lying flat."""
    if not item.plate or item.mount != "side":
        return ()
    along = edge(item.ground[0], item.frame.side)
    seat, foot, z = item.pattern.seat, item.frame.seat, item.frame.origin[2]
    needed, thickness = around.margins.seat_overhang, around.blank.thickness
    found = []
    for side, measured, level in ((FACE, z - seat.across / 2, 0.0),
                                  (BACK, thickness - z - seat.across / 2, thickness)):
        if short(measured, needed):
            text = clearance(measured, needed, "The plate of {item} stands {measured} mm over the {side}.",
                             "The plate of {item} lies {a} mm from the {side}; {b} mm wanted.", item=item.id, side=term(side))
            found.append(Snag("seat-overhang", TIGHT, (item.id, side), (*foot.point, level), measured, needed, text,
                              say("The wood is too thin: it takes {least} mm for this plate.", least=tenths(seat.across + 2 * needed))
                              if short(thickness - seat.across, 2 * needed) else
                              say("Set the axis {by} mm deeper, or choose a narrower plate.", by=tenths(needed - measured))
                              if side == FACE else
                              say("Set the axis {by} mm higher, or choose a narrower plate.", by=tenths(needed - measured))))
    for end, way, reach, last in (("nut", -1, seat.behind, along.path.start), ("tip", 1, seat.before, along.path.end)):
        if way * v.dot(v.sub(last, foot.point), foot.tangent) >= reach:
            continue
        measured = reaches(along, foot, way) - reach
        if short(measured, 0.0):
            found.append(Snag("seat-overhang", TIGHT, (item.id, OUTLINE), item.frame.origin, measured, 0.0,
                              say("The plate of {item} runs {measured} mm past the {end} end of the edge.",
                                  item=item.id, measured=into(measured), end=term(end)),
                              say("Slide {item} by {by} mm to the {end}.",
                                  item=item.id, by=tenths(_slide(along, foot, way, reach, -measured)),
                                  end=term("tip" if end == "nut" else "nut"))))
    rocks = _rocks(item, along)
    if rocks is not None:
        found.append(rocks)
    return tuple(found)


def _slide(along: Edge, foot: Seat, way: int, reach: float, lacking: float) -> float:
    """How far a plate has to be slid away from an end of its edge until that reaches on past it, mm in tenths: where the edge bends, more
    than lacks."""
    tried = (up(lacking * share) for share in _SHARES)
    return next((by for by in tried if not short(reaches(along, along.seat(foot.along - way * by), way), reach)), up(lacking))


def _rocks(item: Item, side: Edge) -> Snag | None:
    """A plate that does not lie flat: on the curved edge itself, or on a flat that is not deep enough."""
    seat, foot, flat = item.pattern.seat, item.frame.seat, item.tuner.flat
    if strays_within(side, foot, seat.before, seat.behind, ROCK):
        return None
    fall, rise = under_plate(side, foot, seat.before, seat.behind)
    rock = max(fall, rise) if flat is None else max(0.0, fall - flat.depth)
    if rock <= ROCK:
        return None
    deep = length(math.ceil(rock * 100 - 1e-6) / 100, 2, exact=True)
    text = (say("The plate of {item} rocks on the curved edge by {rock} mm.", item=item.id, rock=mm(rock))
            if fall >= rise or flat is not None else
            say("The plate of {item} bridges the curved edge by {rock} mm.", item=item.id, rock=mm(rock)))
    cure = (say("Cut its flat {deep} mm deeper.", deep=deep) if flat is not None else
            say("Cut a flat {deep} mm deep for it, or slide it to where the edge is straighter.", deep=deep) if fall >= rise else
            say("Cut a flat for it, level with the middle of its seat, or slide it to where the edge is straighter."))
    return Snag("plate-rocks", TIGHT if rock > LOOSE else NOTE, (item.id,), item.frame.origin, rock, ROCK, text, cure)


def _edges(one: Item, two: Item, margins: Margins) -> tuple[Snag, ...]:
    """Two plates on one edge: the gap along it, or above each other."""
    needed = margins.seat_gap
    first_, second = sorted((one, two), key=lambda i: i.frame.seat.along)
    over = abs(one.frame.origin[2] - two.frame.origin[2]) - (one.pattern.seat.across + two.pattern.seat.across) / 2
    a, b = _stretch(first_), _stretch(second)
    along = float(shapely.distance(a, b))
    if along < 1e-9:
        gap = (second.frame.seat.along - second.pattern.seat.behind
               - first_.frame.seat.along - first_.pattern.seat.before)
        along = min(gap, 0.0)
    measured = float(np.hypot(max(0.0, over), max(0.0, along))) if over > 0 or along > 0 else max(over, along)
    if not short(measured, needed):
        return ()
    where = shapely.shortest_line(a, b).interpolate(0.5, normalized=True)
    return (Snag("seats-overlap", grade(measured), (one.id, two.id), (where.x, where.y, one.frame.origin[2]), measured,
                 needed, _beside(one, two, measured, needed), say("Choose smaller plates, or move both tuners.")),)


def _stretch(item: Item) -> shapely.LineString:
    return shapely.LineString([plan(item.plate[0]), plan(item.plate[2])])
