"""Two locating pins, proposed by search over the legal places."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import combinations

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.layout import Headstock, Pin
from geometry.lengths import mm
from geometry.saying import say
from geometry.sequence.pin_places import AXIS, head_face, later_holes, places
from geometry.terms import given
from geometry.vectors import Vec2

LEAST_APART = 25.0
"""Pins nearer than this hold no template in line, mm (common practice, no source)."""
GRID = 0.5
"""Proposed places are moved to even numbers of this where the wood allows, mm."""


class NoPins(Struct, frozen=True):
    """Why there is no legal pair."""

    reason: str


class _Spot(Struct, frozen=True):
    at: Vec2
    diameter: float
    rank: int
    """0 waste, 1 later hole, 2 wood that stays"""


def propose_pins(layout: Headstock, flip: bool = False, diameter: float = 6.0) -> tuple[Pin, Pin] | NoPins:
    """Two pins as far apart as the wood allows, the one nearer the nut first; pins of the layout are left out of count.

    Where they serve the outline alone, a pair in bores to come that is at least half as far apart as the farthest comes
    before it: a hole in wood that stays is plugged, and the plug is seen. In a later through bore (the pin then has that bore's diameter), on the
    centreline between nut and tip, or in the waste where the template for the
    slots is a board as large as the blank. `flip`: the template turns over, so the pair is its own mirror image: both on the centreline, or
    one to either side of it. Equal distances: waste before later hole before
    wood that stays, then the lower y, then the lower x. GeometryError when the
    outline has no inside.
    """
    radius = diameter / 2
    waste, wood = places(layout, radius)
    if layout.template.board != "blank" or not layout.to_rout:
        waste = Polygon()
    on_axis = LineString([(0.0, 0.0), (0.0, layout.blank.tip)])
    holes = later_holes(layout)
    middle = [_Spot(p, diameter, rank) for rank, area in ((0, waste), (2, wood)) for p in _ends(area & on_axis)]
    middle += [_Spot((0.0, hole.at[1]), hole.diameter, 1) for hole in holes if abs(hole.at[0]) <= AXIS]
    pairs = list(combinations(middle, 2))
    if flip:
        pairs += _mirrored(waste, holes, diameter)
    else:
        free = [_Spot(p, diameter, 0) for p in _corners(waste)]
        free += [_Spot(hole.at, hole.diameter, 1) for hole in holes]
        pairs += list(combinations([*free, *middle], 2))
    return _best(layout, pairs, waste, wood, flip)


def _mirrored(waste: BaseGeometry, holes: Iterable, diameter: float) -> Iterator[tuple[_Spot, _Spot]]:
    """Pairs to either side of the centreline, at one level."""
    both = waste & shapely.transform(waste, lambda xy: xy * np.array((-1.0, 1.0)))
    for x, y in _corners(both):
        if x > AXIS:
            yield _Spot((-x, y), diameter, 0), _Spot((x, y), diameter, 0)
    ordered = sorted(holes, key=lambda hole: (hole.at[1], hole.at[0]))
    for one, two in combinations(ordered, 2):
        level = v.distance(one.at, v.mirrored(two.at)) <= AXIS and abs(one.at[0]) > AXIS
        if level and abs(one.diameter - two.diameter) <= AXIS:
            yield _Spot(one.at, one.diameter, 1), _Spot(two.at, two.diameter, 1)


def _ends(area: BaseGeometry) -> list[Vec2]:
    """Ends of pieces of the centreline."""
    return sorted({tuple(c) for c in shapely.get_coordinates(area).tolist()})


def _corners(area: BaseGeometry) -> list[Vec2]:
    """Points of an area between which its farthest pair is found: the corners of its hull."""
    return sorted({(x, y) for x, y in shapely.get_coordinates(shapely.convex_hull(area)).tolist()})


def _best(layout: Headstock, pairs: Iterable[tuple[_Spot, _Spot]], waste: BaseGeometry, wood: BaseGeometry,
          flip: bool) -> tuple[Pin, Pin] | NoPins:
    def worth(pair: tuple[_Spot, _Spot]) -> tuple:
        low, high = sorted(pair, key=lambda spot: (spot.at[1], spot.at[0]))
        return (-round(v.distance(low.at, high.at), 3), low.rank + high.rank, low.at[1], low.at[0])

    ranked = sorted(pairs, key=worth)
    if ranked and not layout.to_rout:
        enough = max(LEAST_APART, v.distance(ranked[0][0].at, ranked[0][1].at) / 2)
        ranked = [(one, two) for one, two in ranked if one.rank == two.rank == 1 and v.distance(one.at, two.at) >= enough] or ranked
    if not ranked or v.distance(ranked[0][0].at, ranked[0][1].at) < LEAST_APART:
        where = say("on the centreline or mirrored about it") if flip else say("in later holes or on the centreline")
        cure = say("use thinner pins") if layout.template.board == "blank" else (
            say("use thinner pins, or cut the template from a board as large as the blank and let them stand in the waste"))
        return NoPins(say("No two pins find room {where} with {clear} clear of everything and {apart} "
                          "between them: {cure}.",
                          where=where, clear=mm(layout.margins.pin_any), apart=mm(LEAST_APART), cure=cure))
    low, high = sorted(ranked[0], key=lambda spot: (spot.at[1], spot.at[0]))
    level = flip and abs(low.at[0]) > AXIS
    first = _even(low, waste, wood, layout)
    second = v.mirrored(first) if level else _even(high, waste, wood, layout)
    return (Pin(id=given("nut pin"), at=first, diameter=low.diameter), Pin(id=given("tip pin"), at=second, diameter=high.diameter))


def _even(spot: _Spot, waste: BaseGeometry, wood: BaseGeometry, layout: Headstock) -> Vec2:
    """The spot on even numbers nearby if that is legal and loses little; later holes stay where they are."""
    if spot.rank == 1:
        return spot.at
    area = waste if spot.rank == 0 else wood
    centre = head_face(layout).centroid.coords[0]
    base = (round(spot.at[0] / GRID), round(spot.at[1] / GRID))
    on_axis = abs(spot.at[0]) <= AXIS
    near = [((base[0] + i) * GRID, (base[1] + k) * GRID) for i in ((0,) if on_axis else (-1, 0, 1)) for k in (-1, 0, 1)]
    legal = [p for p in near if area.intersects(shapely.Point(p)) and v.distance(p, spot.at) <= GRID * 1.5]
    return max(legal, key=lambda p: (v.distance(p, centre), p), default=spot.at)
