"""Drillings from the side against the outline beyond their own mouth: a thin wall beside them, or a breakout.

The outline about the place where the drill goes in is the bore's own mouth. It
reaches to either side until it stands a margin clear of the bore, or until it
has turned by 60 degrees and becomes a wall beside the bore.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import lru_cache

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks import drill_points
from geometry.checks.hole_walls import wanted_to_outline
from geometry.checks.items import Item, plan
from geometry.checks.kinds import outline_kind
from geometry.checks.scene import Scene
from geometry.checks.side_walls import MOSTLY
from geometry.checks.snags import SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, clearance, first, name, sort_of, tenths
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.drilling import Drilling
from geometry.solids.turning import where_it_turns
from geometry.solids.walls import Wall, oblong
from geometry.solids.ways_out import level_from_outside
from geometry.terms import term
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2

_MOUTH_TURN = math.cos(math.radians(60))
_SLACK = 4 * FLAT
_CHORD = 1.0
"""mm: the outline is looked at in pieces no longer than this"""
_FEW, _LONG = 2, 2000
"""items, and corners of the outline, above which it pays to look at all of the outline about an item first"""
_OUTWARDS = np.array((-1.0, -1.0, 1.0, 1.0))


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every drilling from the side with the outline."""
    return scene.memo.snags_together(_all, scene.items, scene.outline, scene.layout.margins)


class _Ring:
    """The outline's chords, none longer than _CHORD, as an open list of corners with the directions in which it runs along each."""

    def __init__(self, outline: Wall) -> None:
        self.points, begins, ends = outline.pieces(_CHORD)
        ahead = np.roll(self.points, -1, axis=0) - self.points
        unit = ahead / np.maximum(np.hypot(ahead[:, 0], ahead[:, 1]), 1e-300)[:, None]
        self.ways = np.stack((unit, begins, ends)).transpose(2, 0, 1)
        """(2, 3, n): x and y of the unit directions of each chord, of the outline itself where that begins, and where it ends"""
        self.chords = unit[:, 0].copy(), unit[:, 1].copy()
        """x and y of the first of these, each in one piece of memory"""
        same = min(np.einsum("nk,nk->n", unit, ways).min() for ways in (begins, ends))
        self.surely = math.cos(max(0.0, math.acos(_MOUTH_TURN) - math.acos(min(max(same, -1.0), 1.0))))
        """along a chord that runs across a bore by more than that the outline itself has nowhere turned out of the mouth"""
        self.tree = shapely.STRtree(shapely.points(self.points))
        self.outline = outline

    def turns(self, at: int, step: int, across: np.ndarray) -> tuple[float, float]:
        """Where the outline, walked by corners in steps of 1 or -1, has turned out of a mouth: about corner `at`, exactly."""
        count = len(self.points)
        corners = tuple([(float(x), float(y)) for x, y in self.points[[(at - step) % count, at, (at + step) % count]]])
        return where_it_turns(self.outline, corners, (float(across[0]), float(across[1])), _MOUTH_TURN)


@lru_cache(maxsize=8)
def _ring(outline: Wall) -> _Ring:
    return _Ring(outline)


def _all(items: Sequence[Item], outline: Wall, margins: Margins) -> list[tuple[Snag, ...]]:
    sides = [item for item in items if item.mount == "side"]
    if not sides:
        return [()] * len(items)
    ring = _ring(outline)
    some = len(sides) > _FEW or len(ring.points) > _LONG
    sure = iter(_nothing_but_mouths(sides, outline, ring, margins) if some else [False] * len(sides))
    return [() if item.mount != "side" or next(sure) else _outline(item, outline, ring, margins) for item in items]


def _nothing_but_mouths(items: Sequence[Item], outline: Wall, ring: _Ring, margins: Margins) -> list[bool]:
    """Whether all of the outline about each item is one run that leads past its drillings, and so their own mouths.

    True only where _near finds nothing: on such a run nothing comes near a drilling twice. Looked at is a
    box about all drillings of an item, wider than any margin.
    """
    least, most = sorted((margins.bore_outline, margins.screw_outline))
    boxes = np.array([(*low[:2], *high[:2]) for low, high in (item.box for item in items)])
    i, k = ring.tree.query(shapely.box(*(boxes + (most + _CHORD + _SLACK) * _OUTWARDS).T))
    order = np.lexsort((k, i))
    i, k = i[order], k[order]
    at, past = (np.searchsorted(i, np.arange(len(items)), side) for side in ("left", "right"))
    if (at == past).any():
        return [False] * len(items)
    to = past - 1
    # The chord that leads to the first corner counts too; by its heading all others go.
    into_x, into_y = np.array([item.frame.w[:2] for item in items]).T
    way_x, way_y = ring.chords
    lead = k[at] - 1
    before = way_x[lead] * into_y - way_y[lead] * into_x
    heading = way_x[k] * into_y[i] - way_y[k] * into_x[i]
    run = np.minimum.reduceat(heading * np.sign(before)[i], at)
    sure = (k[to] - k[at] == to - at) & (run > ring.surely) & (np.abs(before) > ring.surely)
    # Each drilling begins so near the outline that the nearest corner is within the mouth. Along its axis it is no more than
    # twice as far to an edge that has not turned by 60 degrees, so that its middle lies in the wood.
    solids = Cylinders.joined([item.solids for item in items])
    begins = shapely.dwithin(outline.line, shapely.points(solids.start[:, :2]),
                             np.minimum(np.minimum(solids.radius, _CHORD) + least - _CHORD / 2, solids.length / 4))
    own = np.repeat(np.arange(len(items)), [len(item.drillings) for item in items])
    sure[own[~begins]] = False
    return sure.tolist()


def _outline(item: Item, outline: Wall, ring: _Ring, margins: Margins) -> tuple[Snag, ...]:
    found, told = [], set()
    for drilling, ahead, needed, rest in _near(item, ring, margins):
        shape = Wall(oblong(plan(drilling.start), plan(drilling.direction), drilling.depth, drilling.radius))
        quick = float(shapely.distance(shape.area, rest))
        if quick - FLAT - ahead >= needed:
            continue
        measured, where, way = _gap(drilling, shape, outline, rest, quick)
        if ahead and measured >= 0:
            found += _by_point(item, drilling, ahead, outline, rest, measured, needed)
        if not short(measured, needed):
            continue
        if measured < 0:
            told.add(drilling.id)
        called = first(name(drilling))
        text = clearance(measured, needed, "{called} breaks out of the outline by {measured} mm.",
                         "{called} comes within {a} mm of the outline beyond its own mouth; {b} mm wanted.", called=called)
        found.append(Snag(outline_kind(sort_of(drilling)), grade(measured), (item.id, OUTLINE),
                          (*where, drilling.start[2]), measured, needed, text,
                          _advice(item, way, needed - measured)))
    return (*found, *_without_wood(item, outline, told))


def _without_wood(item: Item, outline: Wall, told: set[str]) -> Iterable[Snag]:
    """Snags of drillings beside the post bore whose middle lies in the air, and that have wood along less than half of their axis.

    `told` are the ids of those that are known to break out.
    """
    middles = (item.solids.start + item.solids.axis * item.solids.length[:, None] / 2)[:, :2]
    for drilling, held in zip(item.drillings, shapely.intersects_xy(outline.area, middles).tolist(), strict=True):
        if held or drilling.role == "post" or drilling.id in told:
            continue
        axis = shapely.LineString([plan(drilling.start), plan(drilling.end)])
        measured, needed = float(shapely.intersection(axis, outline.area).length), drilling.depth / 2
        if not short(measured, needed):
            continue
        a, b = both(measured, needed)
        text = (say("{name} meets no wood: where it would go in, the head has ended.", name=first(name(drilling)))
                if measured <= TOUCH else
                say("{name} has {a} mm of wood along its axis; {b} mm wanted, half of its depth.", name=first(name(drilling)), a=a, b=b))
        yield Snag("misses-wood", SPOILS if measured <= TOUCH else TIGHT, (item.id, OUTLINE), drilling.end, measured, needed, text,
                   say("Slide {item} to where the edge runs on past all of its plate, or choose hardware with its screws nearer to the post.",
                       item=item.id))


def _by_point(item: Item, drilling: Drilling, ahead: float, outline: Wall, rest: shapely.LineString, bare: float,
              wood: float) -> list[Snag]:
    """The snag of a drill's point too near to the outline, to which the drilling itself leaves `bare` mm."""
    def gap(one: Drilling) -> float:
        return drill_points.beside(one, ahead, outline, rest)
    needed, measured = drill_points.wanted(drilling, wood, bare), gap(drilling)
    if not short(measured, needed):
        return []
    return [drill_points.snag(item, drilling, ahead, term(OUTLINE), (item.id, OUTLINE), measured, needed, wood, gap)]


def _advice(item: Item, way: Vec2 | None, lacking: float) -> str:
    """What would bring a drilling back into the wood, by the way that is the nearest."""
    to_tip, back = (0.0, 1.0) if way is None else (v.dot(way, plan(item.frame.u)), -v.dot(way, plan(item.frame.w)))
    amount = tenths(aslant(lacking, abs(to_tip)))
    if to_tip > MOSTLY:
        return say("Slide {item} by {amount} mm to the tip, or reshape the outline.", item=item.id, amount=amount)
    if to_tip < -MOSTLY:
        return say("Slide {item} by {amount} mm to the nut, or reshape the outline.", item=item.id, amount=amount)
    return say("Drill it {needed} mm less deep, choose shorter hardware, or reshape the outline.",
               needed=tenths(aslant(lacking, back) if back > 0 else lacking))


def _near(item: Item, ring: _Ring, margins: Margins) -> list[tuple[Drilling, float, float, shapely.LineString]]:
    """(drilling, how far its point runs ahead, wood wanted, the outline without its mouth) of each that may come too near to that."""
    into = np.array(plan(item.frame.w))
    across = np.array([into[1], -into[0]])
    starts = item.solids.start[:, :2]
    # Each corner of the ring beside and ahead of each drilling's start, and how far each chord runs across.
    u = (ring.points @ across)[None] - (starts @ across)[:, None]
    w = (ring.points @ into)[None] - (starts @ into)[:, None]
    headings = np.tensordot(across, ring.ways, axes=1)
    heading, least, most = headings[0], headings.min(axis=0), headings.max(axis=0)
    wish = [wanted_to_outline(drilling, margins) for drilling in item.drillings]
    solids = item.solids
    near = _in_strip(solids.radius, solids.length + item.ahead, u, w, np.array(wish))
    mouths = np.argmin(u * u + w * w, axis=1).tolist()
    found = []
    for i, (drilling, ahead, needed, mouth) in enumerate(zip(item.drillings, item.ahead, wish, mouths, strict=True)):
        # Of the two chords at a corner the one that leads past the bore more squarely tells which way the mouth runs.
        lead = max(heading[mouth - 1], heading[mouth], key=abs)
        way = 1.0 if lead >= 0 else -1.0
        own_chord = least > _MOUTH_TURN if way > 0 else most < -_MOUTH_TURN
        if _only_mouth(near[i], own_chord, mouth):
            continue
        rest = _beyond_mouth(ring, u[i], near[i], own_chord, mouth, drilling.radius + needed + _SLACK, way * across)
        if rest is not None:
            found.append((drilling, ahead, needed, rest))
    return found


def _in_strip(radius: np.ndarray, length: np.ndarray, u: np.ndarray, w: np.ndarray, needed: np.ndarray) -> np.ndarray:
    """Which corners come near each drilling: beside the strip that is a margin wider than the drilling all is clear."""
    beside = np.abs(u)
    near = beside < radius[:, None] + needed[:, None] + _SLACK
    i, k = np.nonzero(near)
    aside = np.maximum(beside[i, k] - radius[i], 0.0)
    ahead = w[i, k]
    ahead = np.maximum(np.maximum(-ahead, ahead - length[i]), 0.0)
    near[i, k] = aside * aside + ahead * ahead < (needed[i] + _CHORD) ** 2
    return near


def _only_mouth(near: np.ndarray, own_chord: np.ndarray, mouth: int) -> bool:
    """Whether the corners near a drilling are one unbroken piece of outline about its mouth.

    The chords that lead away from both of its ends count too: they begin near the drilling.
    """
    seen = np.flatnonzero(near)
    return bool(seen.size and seen[-1] - seen[0] + 1 == seen.size and seen[0] <= mouth <= seen[-1]
                and own_chord[seen].all() and own_chord[seen[0] - 1])


def _beyond_mouth(ring: _Ring, u: np.ndarray, near: np.ndarray, own_chord: np.ndarray, mouth: int,
                  half: float, across: np.ndarray) -> shapely.LineString | None:
    """The outline's chords without the bore's mouth, or None when nothing else comes near the bore.

    `across` is the way in which the chords of the mouth lead past the bore, the ring's own way round.
    """
    count = len(u)
    own_point = np.abs(u) < half
    first_corner = last_corner = mouth
    steps = 0
    while steps < count and own_chord[last_corner] and own_point[last_corner]:
        last_corner, steps = (last_corner + 1) % count, steps + 1
    while steps < count and own_chord[first_corner - 1] and own_point[first_corner]:
        first_corner, steps = (first_corner - 1) % count, steps + 1
    if steps >= count:
        return None
    if not steps:  # it goes in where there is no edge to drill into: all that comes near it is a wall beside it
        return shapely.LineString(np.append(ring.points, ring.points[:1], axis=0)) if near.any() else None
    # Corners from last_corner round to first_corner are the rest.
    rest = (last_corner + np.arange((first_corner - last_corner) % count + 1)) % count
    if not near[rest].any():
        return None
    chain = ring.points[rest]
    for end, inside, outside, step in ((0, last_corner - 1, last_corner, 1), (-1, (first_corner + 1) % count, first_corner, -1)):
        cut = _cut(ring.points[inside], ring.points[outside], u[inside], u[outside], half)
        if cut is not None:
            chain[end] = cut
        elif len(chain) > 1 and own_point[outside] and not own_chord[outside if step > 0 else outside - 1]:
            chain = _from(chain, end, ring.points[outside], ring.turns(outside, step, step * across))
    return shapely.LineString(chain) if len(chain) > 1 and np.ptp(chain, axis=0).any() else None


def _from(chain: np.ndarray, end: int, corner: np.ndarray, turn: Vec2) -> np.ndarray:
    """A chain of which one end (0 or -1), a corner, gives way to the place next to it from which it counts: before it or after it."""
    ahead, by = chain[1 if end == 0 else -2] - corner, np.array(turn) - corner
    if math.hypot(*by) <= TOUCH:
        return chain
    if by @ ahead > 0:
        chain[end] = turn
        return chain
    return np.insert(chain, 0 if end == 0 else len(chain), turn, axis=0)


def _cut(inner: np.ndarray, outer: np.ndarray, a: float, b: float, half: float) -> np.ndarray | None:
    """Where the chord that leaves the mouth is `half` mm aside; None when it does not get so far."""
    level = math.copysign(half, b)
    return inner + (outer - inner) * ((level - a) / (b - a)) if abs(a) < half <= abs(b) else None


def _gap(drilling: Drilling, shape: Wall, outline: Wall, rest: shapely.LineString,
         quick: float) -> tuple[float, Vec2, Vec2 | None]:
    """(gap in mm, place, way back); negative by the least shift that brings the bore back into the wood."""
    ends = shape.points[1:3]
    out = -outline.about(ends)
    if quick > 0 and out.max() < 0:
        p, q = shapely.shortest_line(shape.line, rest).coords[:]
        exact = min(_settled(shape, outline, place) for place in _nearest_places(shape, rest, quick + 2 * FLAT))
        # On the exact outline the gap differs from that to its chords by no more than their sagitta.
        sure = abs(exact - quick) <= 2 * FLAT
        return (exact if sure else quick - FLAT), v.middle(p, q), v.unit(v.sub(p, q))
    inner = shapely.get_coordinates(rest)
    i = int(np.argmax(out))
    deep, k = shape.deepest(inner)
    if k is None:  # no corner in it: the nearest
        outside = shape.about(inner)
        k = int(np.argmax(outside))
        deep = outside[k]
    place, depth = (ends[i], out[i]) if out[i] >= deep else (inner[k], deep)
    back = level_from_outside(drilling, inner)
    depth = max(float(depth), 2 * TOUCH) if back is None else max(back.depth, 2 * TOUCH)
    return -depth, (float(place[0]), float(place[1])), None if back is None else back.plan


def _nearest_places(shape: Wall, rest: shapely.LineString, within: float) -> list[Vec2]:
    """Of each stretch of chords that comes within so many mm of a bore the point that does so most."""
    ends = shapely.get_coordinates(rest)
    # The polygon library ends the program when it is asked for the nearest point of a line without length.
    ends = ends[np.append(np.hypot(*np.diff(ends, axis=0).T) > 0, True)]
    chords = shapely.linestrings(np.stack((ends[:-1], ends[1:]), axis=1))
    far = shapely.distance(shape.area, chords)
    near = np.flatnonzero(far <= within)
    stretches = np.split(near, np.flatnonzero(np.diff(near) > 1) + 1)
    return [shapely.shortest_line(shape.line, chords[stretch[np.argmin(far[stretch])]]).coords[1] for stretch in stretches]


def _settled(shape: Wall, outline: Wall, place: Vec2) -> float:
    """Gap in mm between a bore and the exact outline about a place of the outline's chords."""
    foot = outline.foot(place)
    exact = shape.foot(foot.point)
    for _ in range(6):
        foot = outline.foot(exact.point)
        exact = shape.foot(foot.point)
    return exact.distance
