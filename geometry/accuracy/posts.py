"""Clearances of a side tuner's post in its slot: its end, the drill's point, the string hole, the slot's ends.

The post stands on the seat, that is on the outline as it was cut, and follows
the bore as it was drilled; the slot is where the template put it. Depths are
along the axis from where the seat was meant to be.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from geometry.accuracy.built import Built, Model
from geometry.accuracy.chords import Chords, hits, stretch
from geometry.accuracy.rods import Array
from geometry.accuracy.spec import FAINT, Only, Reach, Spec
from geometry.checks.items import Item, plan
from geometry.checks.scene import Opening
from geometry.checks.side_walls import first_on_the_way
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

_SIGHT = 400.0
"""mm: how far a side bore could possibly reach, as in the checks"""
_MOUTH = 5.0
"""mm to either side of the seat in which the built edge is looked for"""


@dataclass(frozen=True, slots=True, eq=False)
class _Way:
    """A post bore's way through its slot: the walls that it may meet, and how squarely it meets them."""

    index: int
    outline: Chords
    slot: Chords
    flank: float
    square: tuple[float, float]
    """cosines between the axis and the two walls of the slot"""
    grows: int
    """follower error of the outline"""
    widens: int
    """follower error of the slot"""

    def seat(self, built: Built) -> Array:
        """Where the axis comes out of the built outline, mm from where it was meant to."""
        return _once(built, ("seat", self.index), self._seat)

    def span(self, built: Built, aside: float = 0.0) -> tuple[Array, Array]:
        """(enters, leaves) of the axis, or of a line beside it, in the built slot."""
        return _once(built, ("span", self.index, aside), lambda made: self._span(made, aside))

    def _seat(self, built: Built) -> Array:
        if not len(self.outline):
            return -built.row(self.grows)
        x, y, way_x, way_y = _ray(built, self.index, -_MOUTH, 0.0)
        found = hits(self.outline, x, y, way_x, way_y) - _MOUTH
        nearest = np.argmin(np.abs(found), axis=0)
        at = np.take_along_axis(found, nearest[None], axis=0)[0]
        return np.where(np.abs(at) <= _MOUTH, at, 0.0) - built.row(self.grows)

    def _span(self, built: Built, aside: float) -> tuple[Array, Array]:
        enters, leaves = (np.minimum(t, _SIGHT) for t in stretch(self.slot, *_ray(built, self.index, 0.0, aside)))
        wide = built.row(self.widens)
        return enters - wide / self.square[0], leaves + wide / self.square[1]


def post_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every side tuner that lies across a slot."""
    specs: list[Spec] = []
    for i, (recipe, item) in enumerate(zip(model.recipes, model.owners, strict=True)):
        if item.mount == "side" and recipe.drilling is item.post() and (only is None or item.id in only):
            own = first_on_the_way(recipe.drilling, _SIGHT, model.scene.openings)
            if own is not None:
                specs += _in_slot(model, reach, i, item, own)
    return specs


def _in_slot(model: Model, reach: Reach, i: int, item: Item, own: Opening) -> list[Spec]:
    bore, post, margins = model.recipes[i].drilling, item.pattern.post, model.scene.layout.margins
    enters, leaves = own.wall.stretches(plan(bore.start), plan(bore.direction))[0]
    half = post.diameter / 2
    way = _way(model, reach, i, own, half)
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

    specs = [spec("slot-not-reached", bore.depth, 0.0, lies, _Reaches(way))]
    if bore.depth < enters - TOUCH:
        return specs
    if on_air:
        point = model.scene.drills.point(bore)
        specs += [spec("post-to-wall", leaves, margins.post_wall, stands, _EndToWall(way, post.length)),
                  spec("point-to-wall", leaves, 0.0, lies, _PointToWall(way, point), spoils=False)]
    else:
        specs.append(spec("post-too-long", bore.depth, 0.0, stands, _InBore(way, post.length)))
    specs.append(spec("string-hole", hole, margins.string_hole, stands, _StringHole(way, hole)))
    if enters < hole < leaves:
        ends = [_end(model, reach, i, own, hole, sign, half + margins.post_wall) for sign in (1.0, -1.0)]
        ends = [end for end in ends if end is not None]
        if ends:
            specs.append(spec("post-to-slot-end", hole, margins.post_wall, stands,
                              _SlotEnds(way, hole, half, tuple(ends))))
    floor = template.floors.get(own.id)
    if floor is not None:
        specs.append(spec("slot-too-shallow", hole, margins.post_wall, (*model.rows_of(i), floor),
                          _Shallow(i, hole, half, own.depth, floor)))
    return specs


@dataclass(frozen=True, slots=True)
class _Reaches:
    """How far the full diameter comes through the rail."""

    way: _Way

    def __call__(self, built: Built) -> Array:
        return built.rod(self.way.index).length - self.way.span(built)[0]


@dataclass(frozen=True, slots=True)
class _EndToWall:
    """Air between the post's end and the inner wall, on the axis and on both flanks."""

    way: _Way
    length: float

    def __call__(self, built: Built) -> Array:
        leaves = np.minimum.reduce([self.way.span(built, aside)[1] for aside in (0.0, self.way.flank, -self.way.flank)])
        return leaves - self.way.seat(built) - self.length


@dataclass(frozen=True, slots=True)
class _PointToWall:
    """Air between the drill's point and the inner wall."""

    way: _Way
    point: float

    def __call__(self, built: Built) -> Array:
        return self.way.span(built)[1] - built.rod(self.way.index).length - self.point


@dataclass(frozen=True, slots=True)
class _InBore:
    """Room beyond the post's end where the bore goes on into the inner wall: to its bottom, or to the wall."""

    way: _Way
    length: float

    def __call__(self, built: Built) -> Array:
        return np.maximum(built.rod(self.way.index).length, self.way.span(built)[1]) - self.way.seat(built) - self.length


@dataclass(frozen=True, slots=True)
class _StringHole:
    """Room between the string hole and the nearer wall."""

    way: _Way
    depth: float

    def __call__(self, built: Built) -> Array:
        enters, leaves = self.way.span(built)
        at = self.way.seat(built) + self.depth
        return np.minimum(at - enters, leaves - at)


@dataclass(frozen=True, slots=True)
class _SlotEnds:
    """Room between the post at its string hole and the slot's ends, to the tip and to the nut."""

    way: _Way
    depth: float
    half: float
    ends: tuple[tuple[Chords, float, float], ...]
    """chords ahead, which way along the edge, cosine to the wall met"""

    def __call__(self, built: Built) -> Array:
        rod = built.rod(self.way.index)
        at = rod.at(self.way.seat(built) + self.depth)
        x, y = built.on_template(at[0], at[1])
        best = np.full(built.trials, _SIGHT)
        for chords, sign, square in self.ends:
            found = hits(chords, x, y, -rod.axis[1] * sign, rod.axis[0] * sign)
            found[found <= 0] = np.inf
            best = np.minimum(best, found.min(axis=0, initial=np.inf) + built.row(self.way.widens) / square)
        return best - self.half


@dataclass(frozen=True, slots=True)
class _Shallow:
    """Room below the post in a blind slot."""

    index: int
    depth: float
    half: float
    floor: float
    row: int

    def __call__(self, built: Built) -> Array:
        return self.floor + built.row(self.row) - built.rod(self.index).at(self.depth)[2] - self.half


def _way(model: Model, reach: Reach, i: int, own: Opening, half: float) -> _Way:
    bore = model.recipes[i].drilling
    start, way = plan(bore.start), plan(bore.direction)
    slot, outline = Chords.of(own.wall), Chords.of(model.scene.outline)
    strays = float(reach.rods[i]) + reach.template
    ahead = slot.ahead(start, way, strays + half, float(reach.slopes[i]))
    back = (start[0] - way[0] * _MOUTH, start[1] - way[1] * _MOUTH)
    mouth = outline.ahead(back, way, strays, float(reach.slopes[i]), 2 * _MOUTH)
    return _Way(i, mouth, ahead, half, _squareness(ahead, start, way), model.template.outline,
                model.template.slots[own.id])


def _end(model: Model, reach: Reach, i: int, own: Opening, hole: float, sign: float,
         wanted: float) -> tuple[Chords, float, float] | None:
    """The slot's wall along the edge from the string hole, or None when it never comes within `wanted` mm of it."""
    bore = model.recipes[i].drilling
    spot = tuple(s + d * hole for s, d in zip(plan(bore.start), plan(bore.direction), strict=True))
    way = (-bore.direction[1] * sign, bore.direction[0] * sign)
    strays = float(reach.rods[i] + reach.slopes[i] * max(0.0, hole - bore.depth)) + 2 * reach.template + reach.follow
    ahead = Chords.of(own.wall).ahead(spot, way, strays, float(reach.slopes[i]))
    square = _squareness(ahead, spot, way)[0]
    along = np.minimum((ahead.a - spot) @ np.array(way), (ahead.b - spot) @ np.array(way))
    if along.min(initial=np.inf) - strays - reach.follow / square > wanted + FAINT:
        return None
    return ahead, sign, square


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


def _ray(built: Built, index: int, depth: float, aside: float) -> tuple[Array, Array, Array, Array]:
    """Start and way in plan of a line beside a bore's axis, as the template sees them; the way is 1 mm of the axis."""
    rod = built.rod(index)
    first, second = rod.at(depth), rod.at(depth + 1.0)
    by = (-rod.axis[1] * aside, rod.axis[0] * aside)
    x, y = built.on_template(first[0] + by[0], first[1] + by[1])
    to_x, to_y = built.on_template(second[0] + by[0], second[1] + by[1])
    return x, y, to_x - x, to_y - y


def _once(built: Built, key: object, made: Callable[[Built], object]):
    if key not in built.known:
        built.known[key] = made(built)
    return built.known[key]
