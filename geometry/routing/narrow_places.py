"""Narrow places of a drawn slot: where to look for necks, and how wide one is on the exact wall.

Along the middle line of a slot the wall comes nearer and goes away again. A neck is where it is nearest between two
rooms: a disc that is wider stays in its room. Which sizes of disc are worth trying is told by the Voronoi diagram of
points along the wall; how wide a neck is, by two points of the exact wall that face each other.
"""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import Arc
from geometry.solids.closest import settle
from geometry.solids.walls import Wall
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2

SPACING, MOST = 0.7, 400
"""mm between points along the wall, and how many there are at most"""
_BENT = 0.05
"""mm: corners without which the wall strays less are no points of their own"""
_OFF, _GOLDEN = 1e-5, 2.4
"""mm by which points are set aside, and how far from one to the next the direction turns"""
_SEEMS = 0.02
"""mm: how much wider than a neck a disc has to be at least to find it by chords"""
_STARTS = 9
"""places along a neck from which its narrowest is sought"""
_NEAR = 0.02
"""mm: how far from a room's middle the middle of an arc of its wall may lie"""
_STEP, _FINEST = 0.004, 1e-6
"""mm: steps of a search for the place farthest from all walls"""


def necks_about(area: Polygon, least: float) -> tuple[list[float], list[float]] | None:
    """(diameters in mm, smallest first, at which a disc may find two rooms; how wide necks seem to be, narrowest first).

    Of the former one in each span between a neck and the smaller of its rooms, where that seems `least` mm wider or more. None for
    a wall of very many corners, which says nothing.
    """
    spots = _spots(area)
    if spots is None:
        return None
    ring = area.exterior
    shapely.prepare(area)
    shapely.prepare(ring)
    ends = np.array(_spans(area, spots)).reshape(-1, 6)
    # What points make of a wall is a little more than it is: between them a wall that is straight seems to go to and fro.
    exact = 2 * shapely.distance(ring, shapely.points(ends[:, 2:].reshape(-1, 2, 2)))
    chosen: list[float] = []
    spans = sorted((high, low) for low, high in exact.tolist() if high - low >= least)
    for high, low in spans:
        # The fewest that lie in all spans, not too near their beginning: of those left the one that ends first needs one.
        if not chosen or chosen[-1] <= low + min(_SEEMS, (high - low) / 2):
            chosen.append(high - (high - low) / 4)
    return chosen, sorted(low for _, low in spans)


def _spots(area: Polygon) -> np.ndarray | None:
    ring = area.exterior
    bent = shapely.get_coordinates(shapely.simplify(ring, _BENT))[:-1]
    if len(bent) > MOST:
        return None
    wall = shapely.get_coordinates(ring)
    run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(wall, axis=0).T))])
    at = np.linspace(0.0, run[-1], min(MOST, max(48, int(run[-1] / SPACING))), endpoint=False)
    spots = np.concatenate([np.stack([np.interp(at, run, wall[:, 0]), np.interp(at, run, wall[:, 1])], axis=1), bent])
    # A little off: of many points on one circle the library loses its way now and then.
    turn = _GOLDEN * np.arange(len(spots))
    return np.unique(spots + _OFF * np.stack([np.cos(turn), np.sin(turn)], axis=1), axis=0)


def _spans(area: Polygon, spots: np.ndarray) -> list[tuple[float, ...]]:
    """(half the width of a neck, half that of the smaller room beside it, x and y of the neck, x and y of the room) in mm, by points.

    The triangles between points of which no other lies in their circle (Delaunay): the circles' middles are the middle lines'
    corners, and where two triangles meet the wall comes as near as half the side between them.
    """
    corners = shapely.get_coordinates(shapely.get_parts(shapely.delaunay_triangles(shapely.multipoints(spots)))).reshape(-1, 4, 2)[:, :3]
    middle = middles(corners)
    radius = np.hypot(*(middle - corners[:, 0]).T)
    first, second, side = shared_sides(np.searchsorted(spots[:, 0] + 1j * spots[:, 1], corners[..., 0] + 1j * corners[..., 1]))
    inside = shapely.contains_xy(area, middle)
    keep = inside[first] & inside[second]
    first, second, ends = first[keep], second[keep], spots[side[keep]]
    between, along = ends.mean(axis=1), ends[:, 1] - ends[:, 0]
    # The line between two middles passes between the points only where each middle lies on its own side of them.
    aside = [along[:, 0] * (m[:, 1] - between[:, 1]) - along[:, 1] * (m[:, 0] - between[:, 0]) for m in (middle[first], middle[second])]
    smaller = np.where(radius[first] < radius[second], first, second)
    passes = aside[0] * aside[1] < 0
    width = np.where(passes, np.hypot(along[:, 0], along[:, 1]) / 2, radius[smaller])
    place = np.where(passes[:, None], between, middle[smaller])
    return _joined(first.tolist(), second.tolist(), width, place, middle, radius)


def middles(corners: np.ndarray) -> np.ndarray:
    """(n, 2) middles of the circles through the corners of triangles, (n, 3, 2) mm; not finite where these lie in one line."""
    b, c = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    bb, cc, twice = (b * b).sum(axis=1), (c * c).sum(axis=1), 2 * (b[:, 0] * c[:, 1] - b[:, 1] * c[:, 0])
    off = np.stack([c[:, 1] * bb - b[:, 1] * cc, b[:, 0] * cc - c[:, 0] * bb], axis=1)
    with np.errstate(divide="ignore", invalid="ignore"):
        return corners[:, 0] + off / twice[:, None]


def shared_sides(number: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Of triangles, (n, 3) numbers of their corners: two that share a side, by their rows, and (k, 2) numbers of the ends of that side."""
    side = np.sort(np.stack([number, np.roll(number, -1, axis=1)], axis=2).reshape(-1, 2), axis=1)
    order = np.lexsort((side[:, 1], side[:, 0]))
    meet = np.flatnonzero((side[order][1:] == side[order][:-1]).all(axis=1))
    return order[meet] // 3, order[meet + 1] // 3, side[order[meet]]


def _joined(first: list[int], second: list[int], width: np.ndarray, place: np.ndarray, middle: np.ndarray,
            radius: np.ndarray) -> list[tuple[float, ...]]:
    """From wide to narrow: where two rooms that were apart come together, there is the neck between them."""
    top, found = list(range(len(radius))), []

    def root(node: int) -> int:
        while top[node] != node:
            top[node] = node = top[top[node]]
        return node

    for k in np.argsort(-width, kind="stable").tolist():
        one, two = root(first[k]), root(second[k])
        if one == two:
            continue
        if radius[one] < radius[two]:
            one, two = two, one
        top[two] = one
        if radius[two] > width[k]:
            found.append((float(width[k]), float(radius[two]), *place[k].tolist(), *middle[two].tolist()))
    return found


def neck_width(wall: Wall, rooms: list[Polygon]) -> float:
    """Width in mm of the narrowest neck between rooms that the middle of a disc cannot leave, on the exact wall."""
    found = []
    for k, room in enumerate(rooms):
        others: BaseGeometry = shapely.union_all(rooms[:k] + rooms[k + 1:])
        joint = shapely.shortest_line(room, others)
        places = shapely.get_coordinates(shapely.line_interpolate_point(joint, np.linspace(0, 1, _STARTS), normalized=True))
        narrow = np.argsort(wall.about(places), kind="stable")[:3]
        found += [_width_at(wall, tuple(place)) for place in places[narrow].tolist()]
        if len(rooms) == 2:
            break
    return min(found)


def room_width(wall: Wall, about: Vec2) -> float:
    """Diameter in mm of the largest disc inside an exact wall, whose middle lies near a point; rather too small than too large.

    Exact between two walls and where the wall is an arc; to 0.00001 mm where three walls hold it.
    """
    middles = [about] + [piece.centre for piece in wall.path if isinstance(piece, Arc) and v.distance(piece.centre, about) <= _NEAR]
    best = max((wall.inside(middle), middle) for middle in middles)
    faced = _width_at(wall, about)
    if faced >= 2 * best[0]:
        return faced
    far, (x, y) = best
    step = _STEP
    while step > _FINEST:
        tried = max((wall.inside(spot), spot) for spot in ((x + step, y), (x - step, y), (x, y + step), (x, y - step)))
        if tried[0] > far:
            far, (x, y) = tried
        else:
            step /= 2
    return 2 * far


def _width_at(wall: Wall, place: Vec2) -> float:
    """Diameter of a disc in mm between the two points of the exact wall that face each other nearest to a place inside it.

    Of the disc about the place itself, where no two points face each other.
    """
    foot = wall.foot(place)
    own = 2 * foot.distance
    if foot.distance <= TOUCH:
        return 0.0
    way = v.unit(v.sub(place, foot.point))
    ahead = wall.stretches(place, way)
    if not ahead or ahead[0][0] > 0:
        return own
    other = wall.foot(v.along(place, way, ahead[0][1]))
    width, one, two = settle(wall.path, foot.segment, foot.t, wall.path, other.segment, other.t)
    middle = v.middle(one, two)
    fits = 2 * wall.inside(middle)
    return fits if abs(fits - width) <= TOUCH else own
