"""Flats cut for plates: large enough for the plate, and with rail enough left behind them and wood beside bores.

A round spot takes no more wood than a flat of its size, as which it counts.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.hole_walls import wanted_to_outline
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, first, into, name, tenths
from geometry.curves import Line, Path
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.drilling import Drilling
from geometry.solids.flats import least_size
from geometry.solids.frames import Frame
from geometry.solids.nearby import Box
from geometry.solids.walls import Wall
from geometry.solids.ways_out import strip
from geometry.tolerance import SLIVER_AREA, TOUCH
from geometry.vectors import Vec2


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every flat with the drillings of other features."""
    for item in scene.items:
        if item.frame is not None and item.mount == "side" and item.tuner.flat is not None:
            yield from scene.memo.snags(_beside, scene.items, item, scene.outline, scene.layout.margins)


def alone(item: Item, openings: tuple[Opening, ...], around: Around) -> tuple[Snag, ...]:
    """Snags of a feature's flat alone and with every slot."""
    if item.mount != "side" or item.tuner.flat is None:
        return ()
    return (*_alone(item), *(snag for opening in openings for snag in _rail(item, opening, around.margins)))


def _alone(item: Item) -> tuple[Snag, ...]:
    flat, needed = item.tuner.flat, least_size(item.tuner.flat, item.pattern.seat)
    if not short(flat.size, needed):
        return ()
    a, b = both(flat.size, needed)
    return (Snag("flat-too-small", TIGHT, (item.id,), item.frame.origin, flat.size, needed,
                 say("The flat for {item} is {a} mm, too small for its plate, which takes {b} mm.",
                     item=item.id, a=a, b=b),
                 say("Cut it {needed} mm larger.", needed=tenths(needed - flat.size))),)


def _rail(item: Item, opening: Opening, margins: Margins) -> tuple[Snag, ...]:
    frame, half = item.frame, item.tuner.flat.size / 2
    middle, along = frame.origin[:2], frame.u[:2]
    a, b = v.along(middle, along, -half), v.along(middle, along, half)
    cut = _cuts_into(a, b, plan(frame.w), item.tuner.flat.depth, opening)
    squarely = 1.0
    if cut is None:
        measured, p, q = Wall(Path((Line(a, b),))).to(opening.wall)
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


def _cuts_into(a: Vec2, b: Vec2, into: Vec2, depth: float, opening: Opening) -> tuple[float, Vec2] | None:
    """(mm by which a flat goes too deep, place) where its wood holds some of a slot; None where it does not.

    The flat's bottom runs from a to b, `depth` mm below the edge along the unit vector `into`. Even where the
    bottom meets no wall a flat that deep has taken the rail away.
    """
    gone = shapely.Polygon([a, b, v.along(b, into, -depth), v.along(a, into, -depth)])
    shared = shapely.intersection(gone, opening.wall.area)
    if shared.area <= SLIVER_AREA:
        return None
    corners = shapely.get_coordinates(shared)
    outwards = (np.array(a) - corners) @ np.array(into)
    k = int(outwards.argmax())
    return float(outwards[k]), (float(corners[k, 0]), float(corners[k, 1]))


def _beside(item: Item, flat: Item, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    """The drilling of each hole that a flat leaves least of its wood; nothing where the bare edge is nearer to it, or outside the head.

    A drilling from the flat's own edge goes in through what the flat takes away; a locating pin has done its work when a flat is cut.
    """
    if item is flat or item.what == "pin" or item.mount == "side" and item.frame.side == flat.frame.side:
        return ()
    frame, half = flat.frame, flat.tuner.flat.size / 2
    if _clear(item.box, frame, half, max(margins.bore_outline, margins.screw_outline)):
        return ()
    worst: dict[int, Snag] = {}
    for hole, drilling in zip(item.hole_of, item.drillings, strict=True):
        # Farther out than a hollow edge rises beside a flat lies another part of the head.
        if v.dot(v.sub(plan(drilling.end), plan(frame.origin)), plan(frame.w)) < -flat.tuner.flat.depth - half:
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
    a, b = both(measured, needed)
    text = (say("{name} comes {measured} mm into the flat for {item}.", name=first(name(drilling)), measured=into(measured), item=flat.id)
            if measured < 0 else
            say("{name} leaves {a} mm of wood to the flat for {item}; {b} mm wanted.", name=first(name(drilling)), a=a, item=flat.id, b=b))
    lacking, squarely = needed - measured, v.dot(way, plan(flat.frame.w))
    return Snag("hole-to-flat", grade(measured), (item.id, flat.id), (*plan(drilling.start), flat.frame.origin[2]), measured, needed, text,
                say("Cut the flat {by} mm shallower, or move one of the two.", by=tenths(aslant(lacking, squarely)))
                if 0 < squarely and aslant(lacking, squarely) < flat.tuner.flat.depth else
                say("Make the flat shorter or shallower there, or move one of the two."), push=v.scale(way, lacking))
