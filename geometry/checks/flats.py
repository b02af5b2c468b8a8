"""Flats cut for plates: large enough for the plate, under no neighbour's, and with rail enough left behind them and wood beside bores.

A round spot takes no more wood than a flat of its size, as which it counts.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.hole_walls import wanted_to_outline
from geometry.checks.items import Item, plan
from geometry.checks.memo import together
from geometry.checks.scene import Opening, Scene, slots_tree
from geometry.checks.seats import LOOSE, ROCK
from geometry.checks.snags import NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, clearance, first, into, name, tenths
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.flats import least_size
from geometry.solids.frames import Frame
from geometry.solids.nearby import Box
from geometry.solids.walls import Wall, ring
from geometry.solids.ways_out import strip
from geometry.tolerance import FLAT, SLIVER_AREA, TOUCH
from geometry.vectors import Vec2


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every flat with the drillings of other features, and with the plates beside it."""
    cut = [item for item in scene.sides if item.tuner.flat is not None]
    if not cut:
        return ()
    memo, margins = scene.memo, scene.layout.margins
    flats = memo.of(together, *cut)
    return memo.snags_together(_beside_flats, scene.items, flats, memo.of(_tree, flats, margins), scene.outline, margins)


def alone(item: Item, openings: tuple[Opening, ...], around: Around) -> tuple[Snag, ...]:
    """Snags of a feature's flat alone and with every slot."""
    if item.mount != "side" or item.tuner.flat is None:
        return ()
    near = slots_tree(openings).query(shapely.Polygon(_gone(item)), predicate="dwithin", distance=around.margins.rail + 2 * FLAT).tolist()
    return (*_alone(item), *(snag for k in sorted(near) for snag in _rail(item, openings[k], around.margins)))


def _alone(item: Item) -> tuple[Snag, ...]:
    flat, needed = item.tuner.flat, least_size(item.tuner.flat, item.pattern.seat)
    if not short(flat.size, needed):
        return ()
    a, b = both(flat.size, needed)
    return (Snag("flat-too-small", TIGHT, (item.id,), item.frame.origin, flat.size, needed,
                 say("The flat for {item} is {a} mm, too small for its plate, which takes {b} mm.",
                     item=item.id, a=a, b=b),
                 say("Cut it {needed} mm larger.", needed=tenths(needed - flat.size))),)


def _bottom(item: Item) -> tuple[Vec2, Vec2]:
    """The ends of a flat's bottom in plan."""
    frame, half = item.frame, item.tuner.flat.size / 2
    return v.along(plan(frame.origin), plan(frame.u), -half), v.along(plan(frame.origin), plan(frame.u), half)


def _gone(item: Item) -> tuple[Vec2, ...]:
    """The corners in plan of the wood that a flat takes, from its bottom out to the edge."""
    (a, b), out = _bottom(item), v.scale(plan(item.frame.w), -item.tuner.flat.depth)
    return a, b, v.add(b, out), v.add(a, out)


def _rail(item: Item, opening: Opening, margins: Margins) -> tuple[Snag, ...]:
    frame = item.frame
    cut = _cuts_into(item, opening)
    squarely = 1.0
    if cut is None:
        measured, p, q = Wall(ring(_gone(item))).to(opening.wall)
        where, squarely = v.middle(p, q), v.dot(v.unit(v.sub(q, p)), plan(frame.w)) if measured > 0 else 1.0
    else:
        measured, where = -cut[0], cut[1]
    needed = margins.rail
    if not short(measured, needed):
        return ()
    there, wanted = both(measured, needed)
    less = tenths(min(aslant(needed - measured, squarely), item.tuner.flat.depth))
    text = (say("The flat for {item} cuts into {opening}.", item=item.id, opening=opening.id) if measured <= 0 else
            say("The rail between the flat for {item} and {opening} is {a} mm; {b} mm wanted.",
                item=item.id, opening=opening.id, a=there, b=wanted))
    return (Snag("flat-rail", grade(measured - 1e-5), (item.id, opening.id), (*where, frame.origin[2]), measured,
                 needed, text, say("Cut the flat {needed} mm shallower.", needed=less) if opening.there else
                 say("Cut the flat {needed} mm shallower, or make {opening} narrower.", needed=less, opening=opening.id)),)


def _cuts_into(item: Item, opening: Opening) -> tuple[float, Vec2] | None:
    """(mm by which a flat goes too deep, place) where its wood holds some of a slot; None where it does not.

    Even where the flat's bottom meets no wall a flat that deep has taken the rail away.
    """
    shared = shapely.intersection(shapely.Polygon(_gone(item)), opening.wall.area)
    if shared.area <= SLIVER_AREA:
        return None
    corners = shapely.get_coordinates(shared)
    outwards = (np.array(_bottom(item)[0]) - corners) @ np.array(plan(item.frame.w))
    k = int(outwards.argmax())
    return float(outwards[k]), (float(corners[k, 0]), float(corners[k, 1]))


def _wanted(margins: Margins) -> float:
    """The most wood wanted between any drilling and a flat, mm."""
    return max(margins.bore_outline, margins.screw_outline)


def _tree(flats: tuple[Item, ...], margins: Margins) -> shapely.STRtree:
    """Where a drilling of which the end counts may be too near to flats, by their numbers."""
    needed = _wanted(margins) + TOUCH
    return shapely.STRtree([_strip(flat.frame, flat.tuner.flat.size / 2 + needed, -_out(flat), needed) for flat in flats])


def _strip(frame: Frame, half: float, out: float, deep: float) -> shapely.Polygon:
    """The rectangle in plan that goes `half` mm to either side of a frame's origin, and from `out` to `deep` mm inwards."""
    at, u, w = plan(frame.origin), plan(frame.u), plan(frame.w)
    return shapely.Polygon([v.along(v.along(at, u, side), w, far) for side, far in ((-half, out), (half, out), (half, deep), (-half, deep))])


def _out(flat: Item) -> float:
    """Farther out from a flat's bottom than a hollow edge rises beside it, mm: there lies another part of the head."""
    return flat.tuner.flat.depth + flat.tuner.flat.size / 2


def _beside_flats(items: Sequence[Item], flats: tuple[Item, ...], tree: shapely.STRtree, outline: Wall,
                  margins: Margins) -> list[tuple[Snag, ...]]:
    """Of each item its snags with the flats."""
    drilled = [i for i, item in enumerate(items) if item.drillings]
    found: list[list[Snag]] = [[] for _ in items]
    near = tree.query(shapely.box(*np.array([_about(items[i]) for i in drilled]).reshape(-1, 4).T), predicate="intersects")
    for at, k in zip(*near.tolist(), strict=True):
        found[drilled[at]] += _beside(items[drilled[at]], flats[k], outline, margins)
    return [tuple(own) for own in found]


def _about(item: Item) -> v.Box:
    """The box in plan about all of an item that a flat may come near, and about the plate that may reach over one."""
    low, high = map(plan, item.box)
    # What comes near a flat farther out than its end lies is no farther from there than its drilling is long.
    more = v.distance(low, high)
    plate = map(plan, item.plate) if item.mount == "side" else ()
    return v.box_about([v.add(low, (-more, -more)), v.add(high, (more, more)), *plate])


def _beside(item: Item, flat: Item, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    """The drilling of each hole that a flat leaves least of its wood, or the plate on the same edge that a flat takes wood from; nothing where the bare edge is nearer to it, or outside the head.

    A drilling from the flat's own edge goes in through what the flat takes away; a locating pin has done its work when a flat is cut.
    """
    if item is flat or item.what == "pin":
        return ()
    if item.mount == "side" and item.frame.side == flat.frame.side:
        return _under_plate(item, flat)
    frame, half = flat.frame, flat.tuner.flat.size / 2
    if _clear(item.box, frame, half, _wanted(margins)):
        return ()
    worst: dict[int, Snag] = {}
    for hole, drilling in zip(item.hole_of, item.drillings, strict=True):
        if v.dot(v.sub(plan(drilling.end), plan(frame.origin)), plan(frame.w)) < -_out(flat):
            continue
        needed = wanted_to_outline(drilling, margins)
        measured, way = _to_flat(drilling, frame, half)
        if not short(measured, needed) or hole in worst and worst[hole].lacks >= needed - measured:
            continue
        # Outside the head there is no wood for a flat to take.
        if drilling.upright and outline.inside(plan(drilling.start)) <= max(0.0, measured + drilling.radius + TOUCH):
            continue
        worst[hole] = _too_near(item, drilling, flat, measured, needed, way)
    return tuple(worst.values())


def _under_plate(item: Item, flat: Item) -> tuple[Snag, ...]:
    """A plate that reaches over a neighbour's flat where that lies deeper than it sits itself: nothing carries it there."""
    (ux, uy), (wx, wy) = item.frame.u[:2], plan(item.frame.w)
    middle, half = v.sub(flat.frame.origin[:2], item.frame.origin[:2]), flat.tuner.flat.size / 2
    ends = [v.along(middle, flat.frame.u[:2], way * half) for way in (-1.0, 1.0)]
    (a, deep_a), (b, deep_b) = sorted((x * ux + y * uy, x * wx + y * wy) for x, y in ends)
    low, high = max(a, -item.pattern.seat.behind), min(b, item.pattern.seat.before)
    if high - low <= TOUCH:
        return ()
    slope = (deep_b - deep_a) / (b - a)
    deepest = max(deep_a + slope * (at - a) for at in (low, high))
    if deepest <= ROCK:
        return ()
    at = (low + high) / 2
    return (Snag("plate-over-flat", TIGHT if deepest > LOOSE else NOTE, (item.id, flat.id),
                 (*v.along(item.frame.origin[:2], item.frame.u[:2], at), item.frame.origin[2]), low - high, 0.0,
                 say("The plate of {item} reaches {measured} mm over the flat for {other}, which lies {deep} mm deeper: nothing carries it there.",
                     item=item.id, measured=into(low - high), other=flat.id, deep=into(-deepest)),
                 say("Make the flat for {other} shorter, or move one of the two.", other=flat.id)),)


def _clear(box: Box, frame: Frame, half: float, needed: float) -> bool:
    """Whether all in a box lies farther (mm) than that inwards of a flat's bottom, or beside it; False says nothing."""
    (x0, y0, _), (x1, y1, _) = box
    (x, y, _), (ux, uy, _), (wx, wy, _) = frame.origin, frame.u, frame.w
    needed += TOUCH
    least, most = ((ux * ((x0 if (ux > 0) is low else x1) - x) + uy * ((y0 if (uy > 0) is low else y1) - y)) for low in (True, False))
    return (least > half + needed or most < -half - needed
            or wx * ((x0 if wx > 0 else x1) - x) + wy * ((y0 if wy > 0 else y1) - y) > needed)


def _to_flat(drilling: Drilling, frame: Frame, half: float) -> tuple[float, Vec2]:
    """(gap in mm from a drilling to all that is out of a flat's bottom, `half` mm to either side of its middle; the way in plan away
    from that); negative by how far the drilling reaches into it."""
    if drilling.upright:
        outside, way = _away(plan(drilling.start), frame, half)
        return outside - drilling.radius, way
    corners = [tuple(corner) for corner in strip(drilling).tolist()]
    measured, way = min((_away(corner, frame, half) for corner in corners), key=lambda one: one[0])
    middle, along = frame.origin[:2], frame.u[:2]
    bottom = shapely.LineString([v.along(middle, along, -half), v.along(middle, along, half)])
    gap = shapely.distance(bottom, shapely.Polygon(corners))
    return (float(min(measured, gap)) if gap > 0 else min(measured, -2 * TOUCH)), way


def _away(p: Vec2, frame: Frame, half: float) -> tuple[float, Vec2]:
    """(how far a point in plan lies from what is out of a flat's bottom, negative within; the unit way on which that grows)."""
    off = v.sub(p, frame.origin[:2])
    u, deep = v.dot(off, frame.u[:2]), v.dot(off, plan(frame.w))
    to_side, beside = v.scale(frame.u[:2], math.copysign(1.0, u)), abs(u) - half
    if beside > 0 and deep > 0:
        far = math.hypot(beside, deep)
        return far, v.add(v.scale(to_side, beside / far), v.scale(plan(frame.w), deep / far))
    return (beside, to_side) if beside > deep else (deep, plan(frame.w))


def _too_near(item: Item, drilling: Drilling, flat: Item, measured: float, needed: float, way: Vec2) -> Snag:
    text = clearance(measured, needed, "{name} comes {measured} mm into the flat for {item}.",
                     "{name} leaves {a} mm of wood to the flat for {item}; {b} mm wanted.", name=first(name(drilling)), item=flat.id)
    lacking, squarely = needed - measured, v.dot(way, plan(flat.frame.w))
    return Snag("hole-to-flat", grade(measured), (item.id, flat.id), (*plan(drilling.start), flat.frame.origin[2]), measured, needed, text,
                say("Cut the flat {by} mm shallower, or move one of the two.", by=tenths(aslant(lacking, squarely)))
                if 0 < squarely and aslant(lacking, squarely) < flat.tuner.flat.depth else
                say("Make the flat shorter or shallower there, or move one of the two."), push=v.scale(way, lacking))
