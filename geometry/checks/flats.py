"""Flats cut for plates: large enough for the plate, and with rail enough left behind them."""

from __future__ import annotations

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening
from geometry.checks.snags import TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, tenths
from geometry.curves import Line, Path
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.flats import least_size
from geometry.solids.walls import Wall
from geometry.tolerance import SLIVER_AREA
from geometry.vectors import Vec2


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
