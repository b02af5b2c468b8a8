"""Clearances of a side tuner's post in its slot: its end, the drill's point, the string hole, the slot's ends.

The post stands on the seat, that is on the outline as it was cut, and follows
the bore as it was drilled; the slot is where the template put it. Depths are
along the axis from where the seat was meant to be.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import shapely

from geometry import vectors as v
from geometry.accuracy.built import Built, Model
from geometry.accuracy.chords import Chords, hits
from geometry.accuracy.lie import (
    MOUTH,
    SIGHT,
    EndToWall,
    InBore,
    PointToWall,
    Reaches,
    Shallow,
    SlotEnds,
    StringHole,
    Way,
)
from geometry.accuracy.rods import Array
from geometry.accuracy.slot_room import DrawnRoom, StraightRoom, room_about
from geometry.accuracy.spec import FAINT, Only, Reach, Spec
from geometry.checks.drill_points import before_inner_wall
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening
from geometry.checks.side_walls import first_on_the_way
from geometry.solids.drilling import Drilling
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


def post_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every side tuner that lies across a slot."""
    specs: list[Spec] = []
    for i, (recipe, item) in enumerate(zip(model.recipes, model.owners, strict=True)):
        if item.mount == "side" and recipe.drilling is item.post and (only is None or item.id in only):
            own = first_on_the_way(recipe.drilling, SIGHT, model.scene.openings)
            if own is not None:
                specs += _in_slot(model, reach, i, item, own)
    return specs


def _in_slot(model: Model, reach: Reach, i: int, item: Item, own: Opening) -> list[Spec]:
    bore, post, margins = model.recipes[i].drilling, item.pattern.post, model.scene.layout.margins
    enters, leaves = own.wall.stretches(plan(bore.start), plan(bore.direction))[0]
    half = post.diameter / 2
    way = _way(model, reach, i, own, item)
    template = model.template
    lies = (*model.rows_of(i), *template.paper, *template.place, template.slots[own.id])
    stands = (*lies, template.outline)
    hole = post.string_hole
    on_air = bore.depth < leaves - TOUCH

    def spec(kind: str, depth: float, needed: float, rows: tuple[int, ...], measure: Callable[[Built], Array],
             spoils: bool = True) -> Spec:
        where = tuple(s + d * depth for s, d in zip(bore.start, bore.direction, strict=True))
        return Spec(kind, (item.id,) if kind == "post-too-long" else (item.id, own.id), (bore.hole,), where, needed,
                    tuple(sorted(set(rows))), measure, spoils)

    specs = [spec("slot-not-reached", bore.depth, 0.0, lies, Reaches(way))]
    if bore.depth < enters - TOUCH:
        return specs
    if on_air:
        # As far ahead of the axis as what of the drill's end meets the wall first; by how much that is more, is as drawn.
        point = leaves - bore.depth - before_inner_wall(bore, model.scene.drills.point(bore), own, enters, leaves)
        specs.append(spec("point-to-wall", leaves, 0.0, lies, PointToWall(way, point), spoils=False))
        if post.length > enters:
            specs.append(spec("post-to-wall", leaves, margins.post_wall, stands,
                              EndToWall(way, post.length, post.length - hole, _about(
                                  model, reach, i, own, margins.post_wall, *(_on(bore, post.length, aside) for aside in (half, -half))))))
    else:
        specs.append(spec("post-too-long", bore.depth, 0.0, stands, InBore(way, post.length)))
    specs.append(spec("string-hole", hole, margins.string_hole, stands,
                      StringHole(way, hole, _about(model, reach, i, own, margins.string_hole, _on(bore, hole)))))
    if enters < hole < leaves:
        ends = [_end(model, reach, i, own, hole, sign, half, margins.post_wall) for sign in (1.0, -1.0)]
        ends = [end for end in ends if end is not None]
        if ends:
            specs.append(spec("post-to-slot-end", hole, margins.post_wall, stands,
                              SlotEnds(way, hole, half, tuple(ends))))
    floor = template.floors.get(own.id)
    if floor is not None:
        specs.append(spec("slot-too-shallow", hole, margins.post_wall, (*model.rows_of(i), floor),
                          Shallow(i, hole, half, own.depth, floor)))
    return specs


def _way(model: Model, reach: Reach, i: int, own: Opening, item: Item) -> Way:
    bore, half = model.recipes[i].drilling, item.pattern.post.diameter / 2
    start, way = plan(bore.start), plan(bore.direction)
    slot, outline = Chords.of(own.wall), Chords.of(model.scene.outline)
    strays = float(reach.rods[i]) + reach.template
    ahead = slot.ahead(start, way, strays + half, float(reach.slopes[i]))
    back = (start[0] - way[0] * MOUTH, start[1] - way[1] * MOUTH)
    mouth = outline.ahead(back, way, strays, float(reach.slopes[i]), 2 * MOUTH)
    return Way(i, mouth, ahead, half, _squareness(ahead, start, way), model.template.outline,
                model.template.slots[own.id], 0.0 if item.tuner.flat is None else item.tuner.flat.depth)


def _on(bore: Drilling, depth: float, aside: float = 0.0) -> Vec2:
    """The point of a bore's axis at a depth, or beside it, in plan."""
    x, y = v.along(plan(bore.start), plan(bore.direction), depth)
    return x - bore.direction[1] * aside, y + bore.direction[0] * aside


def _strays(model: Model, reach: Reach, i: int, depth: float) -> float:
    """How far a post's point at a depth and the wall of its slot stray from each other at most, mm."""
    beyond = max(0.0, depth - model.recipes[i].drilling.depth)
    return float(reach.rods[i] + reach.slopes[i] * beyond) + 2 * reach.template + reach.follow


def _about(model: Model, reach: Reach, i: int, own: Opening, needed: float, *spots: Vec2) -> StraightRoom | DrawnRoom | None:
    """The walls of a slot that may be nearest to a point of a post, or to its end; None where none comes within `needed` mm."""
    post = model.owners[i].pattern.post
    strays = _strays(model, reach, i, post.length) + post.diameter * float(reach.slopes[i])
    if shapely.distance(own.wall.line, shapely.LineString((*spots, spots[-1]))) - strays > needed + FAINT:
        return None
    return room_about(own, list(spots), strays)


def _end(model: Model, reach: Reach, i: int, own: Opening, hole: float, sign: float, half: float,
         needed: float) -> tuple[Chords, float, float, StraightRoom | DrawnRoom | None] | None:
    """The slot's wall along the edge from the string hole, or None when it never comes within `needed` mm of the post."""
    bore = model.recipes[i].drilling
    spot = _on(bore, hole)
    way = (-bore.direction[1] * sign, bore.direction[0] * sign)
    strays = _strays(model, reach, i, hole)
    ahead = Chords.of(own.wall).ahead(spot, way, strays, float(reach.slopes[i]))
    square = _squareness(ahead, spot, way)[0]
    along = np.minimum((ahead.a - spot) @ np.array(way), (ahead.b - spot) @ np.array(way))
    flank = v.along(spot, way, half)
    room = _about(model, reach, i, own, needed, flank)
    if room is None and along.min(initial=np.inf) - strays - reach.follow / square > half + needed + FAINT:
        return None
    return ahead, sign, square, room


def _squareness(chords: Chords, start: Vec2, way: Vec2) -> tuple[float, float]:
    """Cosines between a ray and the normals of the first two walls that it meets; 1 where it meets none."""
    found = hits(chords, *(np.array([c]) for c in (*start, *way)))[:, 0]
    found[found <= 0] = np.inf
    out = []
    for at in np.argsort(found)[:2].tolist():
        dx, dy = chords.b[at] - chords.a[at]
        cosine = abs(dx * way[1] - dy * way[0]) / float(np.hypot(dx, dy))
        out.append(max(cosine, 0.2) if np.isfinite(found[at]) else 1.0)
    return tuple((out + [1.0, 1.0])[:2])
