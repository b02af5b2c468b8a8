"""How deep a drilling overlaps a slot or what lies outside the outline: the least shift that parts the two, and its direction.

Which shifts count is settled by what the wood is: a slot is open at the face
(a through slot at the back too), so nothing gets clear of it that way, and only
below the floor of a blind slot is there another way out than in plan. A
drilling comes from its own surface: one from the face is open upwards. The
outline stands full height. Turning a drilling is not looked at.

A straight slot is measured in closed form (a line of centres with a radius);
drawn shapes and outlines by chords within SAGITTA.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.by_size import remembered_by_size
from geometry.curves import Line, Path
from geometry.curves.blunted import blunted
from geometry.layout.slots import Slot, StraightSlot
from geometry.solids.drilling import Drilling
from geometry.solids.golden import lowest
from geometry.solids.sums import (
    about_no_shift,
    area_parts,
    beyond_parts,
    convex_sum,
    drawn_out,
    united,
    way_out,
    way_out_among,
    way_out_looking,
)
from geometry.solids.walls import Wall
from geometry.tolerance import QUAD_SEGS, TOUCH
from geometry.vectors import Vec2, Vec3

SAGITTA = 0.0005
"""mm: how far a curve is flattened for a depth"""
_LOOKS, _ROUNDS = 33, 20
_MANY = 500
"""corners of a slot above which no more of a sum with it is united than the way out takes"""


@remembered_by_size(64, lambda wall: len(wall.points))
def fine_wall(wall: Wall) -> Wall:
    """A wall in chords within SAGITTA of it."""
    return Wall(wall.path, SAGITTA)


MOST_SEGMENTS, MOST_CHORDS = 1000, 4000
"""of an outline (the chords of what counts of it, for drillings from the side) above which the way back inside is sought along a
plainer line"""


@remembered_by_size(64, lambda wall, *_: len(wall.points))
def plain_wall(outline: Wall, sagitta: float = SAGITTA) -> tuple[Wall, float]:
    """(an outline in chords, how far in mm it strays from them beyond that sagitta at most).

    Of an outline of very many pieces no more corners are kept than it can have pieces, so that it strays: whoever keeps
    so much farther inside keeps inside the outline too, and a way is rather too long than too short.
    """
    fine = Wall(outline.path, sagitta)
    if len(outline.path.segments) <= MOST_SEGMENTS and len(fine.points) <= MOST_CHORDS:
        return fine, 0.0
    corners, by = _plainer(fine.points)
    if len(corners) < 4:
        return fine, 0.0
    return Wall(Path(tuple(Line(p, q) for p, q in pairwise(map(tuple, corners.tolist())) if p != q), closed=True)), by


def _plainer(chain: np.ndarray) -> tuple[np.ndarray, float]:
    """(at most MOST_SEGMENTS of a chain's corners, how far in mm the others lie from the line through these).

    Of each few corners in a row the first is kept, and all of them where they stray the most.
    """
    most = MOST_SEGMENTS // 2
    few = math.ceil(len(chain) / most)
    first = np.arange(0, len(chain) - 1, few)
    last = np.minimum(first + few, len(chain) - 1)
    row = np.arange(len(chain) - 1) // few
    start, way = chain[first][row], (chain[last] - chain[first])[row]
    off = chain[:-1] - start
    size = np.sum(way * way, axis=1)
    share = np.clip(np.divide(np.sum(off * way, axis=1), size, out=np.zeros(len(size)), where=size > 0), 0.0, 1.0)
    stray = np.maximum.reduceat(np.hypot(*(off - share[:, None] * way).T), first)
    worst = np.argsort(-stray, kind="stable")[:most // few]
    keep = np.isin(row, worst)
    keep[first] = True
    stray[worst] = 0.0
    return chain[np.append(keep, True)], float(stray.max())


class WayOut(Struct, frozen=True):
    """`depth` in mm: the least shift that parts the two, below zero where they are apart; `way`: its unit direction."""

    depth: float
    way: Vec3

    @property
    def plan(self) -> Vec2:
        """The direction seen on the face; not of length 1 where it leads downwards too."""
        return self.way[0], self.way[1]


def strip(drilling: Drilling, half: float | None = None) -> np.ndarray:
    """(4, 2) corners in plan of a level drilling, or of the part of it that is `half` mm wide to either side."""
    half = drilling.radius if half is None else half
    start, along = np.array(drilling.start[:2]), np.array(drilling.direction[:2])
    out = half * np.array([-along[1], along[0]])
    end = start + drilling.depth * along
    return np.array([start - out, end - out, end + out, start + out])


def from_slot(drilling: Drilling, slot: Slot, wall: Wall) -> WayOut:
    """The way of a drilling, level or upright, out of a slot whose exact wall is given."""
    deep = math.inf if slot.depth is None else slot.depth
    if drilling.upright:
        depth, way = (_from_centres(drilling, slot.shape) if isinstance(slot.shape, StraightSlot) else None) or _shifts(slot, wall)(
            np.array([drilling.start[:2]]), drilling.radius)
        found = WayOut(depth, (*way, 0.0))
        down = deep - drilling.end[2]
        return WayOut(down, (0.0, 0.0, 1.0)) if drilling.direction[2] < 0 and down < depth else found
    return _level_from_slot(drilling, deep, _shifts(slot, wall))


def _from_centres(drilling: Drilling, shape: StraightSlot) -> tuple[float, Vec2] | None:
    """(depth, way) of an upright drilling out of a straight slot: away from its line of centres; None where it stands upon that."""
    centre = drilling.start[:2]
    away = v.sub(centre, v.nearest_between(shape.nut_end, shape.tip_end, centre))
    size = v.norm(away)
    return (shape.width / 2 + drilling.radius - size, v.scale(away, 1 / size)) if size > TOUCH else None


_Shifts = Callable[..., tuple[float, Vec2]]
"""(corners of a convex shape, how much it is grown) -> (least shift out of the slot in plan, direction).

A third number says how far in mm the middle line of a strip, and half of its width besides, surely goes: all strips of a drilling
that are told the same share what lies within it.
"""


def _shifts(slot: Slot, wall: Wall) -> _Shifts:
    shape = slot.shape
    if isinstance(shape, StraightSlot):
        core = np.array([shape.nut_end, shape.tip_end])
        return lambda corners, grown, look=None: way_out(convex_sum(core, -corners), shape.width / 2 + grown)
    fine = fine_wall(wall)

    parts: dict[bytes, list[BaseGeometry]] = {}
    sums: dict[tuple[bytes, float], BaseGeometry] = {}

    def summed(corners: np.ndarray, look: float) -> BaseGeometry:
        """The sum with the hull of some corners, as it is within `look` mm of no shift at all; the strips of one drilling share it."""
        key, look = np.round(corners, 9).tobytes(), round(look, 6)
        if (key, look) not in sums:
            if key not in parts:
                parts[key] = area_parts(fine.area, fine.points, -corners)
            some = parts[key] if look == math.inf else about_no_shift(parts[key], look)
            sums[key, look] = some[0] if len(some) == 1 else united(some)
        return sums[key, look]

    def drawn(corners: np.ndarray, grown: float, look: float | None = None) -> tuple[float, Vec2]:
        if len(corners) == 4:
            # A strip: its middle line first, which the strips of one drilling share, then its width.
            middle, half = (corners[:2] + corners[3:1:-1]) / 2, (corners[3] - corners[0]) / 2
            wide = math.hypot(*half)

            def about(look: float) -> BaseGeometry:
                return drawn_out(summed(middle, look + wide), half)
        else:
            wide = grown

            def about(look: float) -> BaseGeometry:
                one = summed(corners, look + wide)
                return shapely.buffer(blunted(one, grown), grown, quad_segs=4 * QUAD_SEGS) if grown else one
        if look is not None:
            return way_out(about(look - wide))
        return way_out_looking(2 * wide + 1.0, about) if len(fine.points) > _MANY else way_out(about(math.inf))
    return drawn


def _level_from_slot(drilling: Drilling, deep: float, shifts: _Shifts) -> WayOut:
    """In plan, straight down below the floor, or aslant between the two: as it sinks, less of its width meets the slot."""
    radius, under = drilling.radius, deep - drilling.start[2]
    if under <= -radius:
        return WayOut(under + radius, (0.0, 0.0, 1.0))
    look: float | None = None

    def at(turn: float) -> tuple[float, float, float, Vec2]:
        """(shift, of it down, of it in plan, direction in plan) with the floor `radius * sin(turn)` above the axis."""
        aside, way = shifts(strip(drilling, radius * math.cos(turn)), 0.0, look)
        down = max(0.0, under + radius * math.sin(turn))
        return math.hypot(down, max(0.0, aside)), down, aside, way

    first = math.asin(max(0.0, -under / radius))
    _, _, aside, way = at(first if under < 0 else 0.0)
    best = WayOut(aside, (*way, 0.0))
    if aside <= 0 or under >= aside:
        return best
    if under + radius < aside:
        best = WayOut(under + radius, (0.0, 0.0, 1.0))
    # The narrower the strip, the less it has to go in plan: none needs more than the first, and no turn less than the last.
    look = aside + radius + TOUCH
    turns = np.linspace(first, math.pi / 2, _LOOKS)
    narrowest = at(float(turns[-1]))
    at_least = max(0.0, narrowest[2])
    if math.hypot(max(0.0, under), at_least) > best.depth + TOUCH:
        return best
    seen: list[float] = []
    for turn in turns[:-1].tolist():
        told = math.hypot(max(0.0, under + radius * math.sin(turn)), at_least)
        seen.append(math.inf if told > min(seen, default=math.inf) + TOUCH else at(turn)[0])
    seen.append(narrowest[0])
    k = int(np.argmin(seen))
    low, high = turns[max(0, k - 1)], turns[min(_LOOKS - 1, k + 1)]
    if math.hypot(max(0.0, under + radius * math.sin(low)), max(0.0, at(high)[2])) > best.depth:
        return best
    for turn in (lowest(lambda turn: at(turn)[0], float(low), float(high), _ROUNDS), float(turns[k])):
        size, down, aside, way = at(turn)
        if TOUCH < size < best.depth:
            aside = max(0.0, aside)
            best = WayOut(size, (way[0] * aside / size, way[1] * aside / size, down / size))
    return best


def upright_from_outside(centre: Vec2, radius: float, outline: Wall, either_side: bool = False) -> WayOut | None:
    """The way back inside the outline of an upright drilling; None where the head is nowhere wide enough for it.

    `either_side`: the way outwards will do as well, as for a locating pin.
    """
    foot = outline.foot(centre)
    inside = outline.inside(centre)
    inwards = v.left(foot.tangent)
    if foot.distance > TOUCH:
        inwards = v.scale(v.unit(v.sub(foot.point, centre)), -1.0 if inside > 0 else 1.0)
    found = []
    for keep, way in ((1.0, inwards), (-1.0, v.scale(inwards, -1.0))):
        if keep < 0 and not either_side:
            continue
        depth = radius - keep * inside
        there = v.along(centre, way, depth)
        if abs(keep * outline.inside(there) - radius) <= TOUCH:
            found.append(WayOut(depth, (*way, 0.0)))
            continue
        # In a corner or a neck the nearest wall's way leads against another wall.
        plain, by = plain_wall(outline)
        near = _nearest_room(centre, radius + by, plain.area, keep)
        if near is not None:
            found.append(WayOut(v.distance(centre, near), (*v.unit(v.sub(near, centre)), 0.0)))
    return min(found, key=lambda one: one.depth, default=None)


def _nearest_room(centre: Vec2, radius: float, area: BaseGeometry, keep: float) -> Vec2 | None:
    """The place nearest to `centre` at which a disc just keeps inside an area (`keep` 1) or outside of it (-1)."""
    room = _room(area, radius, keep)
    return None if room.is_empty else shapely.shortest_line(shapely.Point(centre), room).coords[1]


@remembered_by_size(32, lambda area, *_: shapely.get_num_coordinates(area))
def _room(area: BaseGeometry, radius: float, keep: float) -> BaseGeometry:
    """Where the middle of a disc may be that keeps inside an area (`keep` 1), or just keeps outside of it (-1)."""
    room = shapely.buffer(blunted(area, -keep * radius), -keep * radius, quad_segs=4 * QUAD_SEGS)
    return room if keep > 0 else room.boundary


def level_from_outside(drilling: Drilling, chain: np.ndarray) -> WayOut | None:
    """The way of a level drilling back inside an outline, of which a chain of (n, 2) points counts; wood on its left.

    None where it meets nothing outside.
    """
    chain = shapely.get_coordinates(shapely.simplify(shapely.LineString(chain), TOUCH, preserve_topology=False))
    if len(chain) > MOST_CHORDS:
        chain, by = _plainer(chain)
        drilling = replace(drilling, diameter=drilling.diameter + 2 * by, depth=drilling.depth + by)
    corners = strip(drilling)
    far = _some_way(drilling, chain)
    near = shapely.linestrings(np.stack([chain[:-1], chain[1:]], axis=1))
    reach = shapely.distance(near, shapely.Polygon(corners)) <= far
    runs = np.split(np.arange(len(reach)), np.flatnonzero(~reach))
    parts = [chain[run[0]:run[-1] + 2] for run in ([k for k in run.tolist() if reach[k]] for run in runs) if run]
    found = way_out_among([piece for part in parts for piece in beyond_parts(part, far + 2 * drilling.radius, -corners)])
    return None if found is None else WayOut(found[0], (*found[1], 0.0))


def _some_way(drilling: Drilling, chain: np.ndarray) -> float:
    """A shift in mm that is known to be enough, so that nothing farther away need be looked at: back along the
    drilling, or aside, whichever of the two is found to do."""
    along = np.array(drilling.direction[:2])
    across = np.array([along[1], -along[0]])
    line, body = shapely.LineString(chain), shapely.Polygon(strip(drilling))
    cut = shapely.get_coordinates(shapely.intersection(line, body))
    ways = [2 * (drilling.depth + 2 * drilling.radius)]
    if len(cut):
        beside = (cut - np.array(drilling.start[:2])) @ across
        back = drilling.depth - float(((cut - np.array(drilling.start[:2])) @ along).min())
        for size, way in ((back, -along), (drilling.radius - float(beside.min()), -across),
                          (drilling.radius + float(beside.max()), across)):
            there = shapely.transform(body, lambda xy, by=(size + 1e-3) * way: xy + by)
            if size < ways[0] and not shapely.intersects(line, there) and _on_the_left(chain, there):
                ways.append(size + 1e-3)
    return min(ways)


def _on_the_left(chain: np.ndarray, body: shapely.Polygon) -> bool:
    """Whether a body that does not meet a chain lies to the left of what is nearest to it."""
    chords = shapely.linestrings(np.stack([chain[:-1], chain[1:]], axis=1))
    k = int(np.argmin(shapely.distance(chords, body)))
    (ax, ay), (bx, by) = chain[k], chain[k + 1]
    # The body's own nearest point lies on the same side of both chords that meet at a corner; its middle may not.
    x, y = shapely.shortest_line(chords[k], body).coords[1]
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0
