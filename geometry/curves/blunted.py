"""Areas with many teeth, made ready for an offset that is large beside them.

To shift a wall by many times the width of its teeth, the polygon library lays an
arc about every tip and crosses it with those of all tips within reach: with two
thousand teeth that takes minutes. Nearly all of it is where no disc of the
offset's radius comes, so two things are taken off first, and what the offset
gives is the same without them: whatever lies where no such disc has room, and the
bottom of a notch beyond the two lines in which a disc would touch both its lips.
"""

from __future__ import annotations

import math

import numpy as np
import shapely
from shapely.geometry import MultiPolygon, Polygon
from shapely.geometry.base import BaseGeometry

FEW = 200
"""Corners with which a wall is no saw."""
TURNS = 3.0
"""Whole turns that the corners of a wall make towards the offset, above which it is a saw: chords of a curve make one or two."""
_STILL = 25.0
"""Turns that are left when notches are filled, above which it is worth looking where discs have room at all."""
_AHEAD = 12
"""Corners that are looked ahead from one lip to the other."""
_LIPS = 1.0
"""Farthest distance of two lips in radii: fewer corners are left if it is larger, but with sharper turns."""
_SIZES = 10
"""Times that the size of notches is doubled at most"""
_CELLS = 400
"""Cells with room for a disc above which they are not cut smaller."""


def blunted(area: BaseGeometry, by: float, done: float = 0.0) -> BaseGeometry:
    """What gives the same as an area when it is grown by `by` mm or more (shrunk by as much or more, when negative).

    `done`: the radius for which the area is blunted already, so that no smaller notches are looked for.
    The very same area unless its wall is a saw on the side to which it is offset. Parts with holes are left as they are.
    """
    if shapely.get_num_coordinates(area) <= FEW or by == 0.0 or not isinstance(area, Polygon | MultiPolygon):
        return area
    whole = shapely.get_parts(area).tolist()
    made = [_blunted(part, abs(by), by > 0, done) for part in whole]
    if all(one is other for one, other in zip(whole, made, strict=True)):
        return area
    return made[0] if len(made) == 1 else shapely.multipolygons(shapely.get_parts(made))


def _blunted(area: Polygon, radius: float, out: bool, done: float) -> BaseGeometry:
    if shapely.get_num_coordinates(area) <= FEW or area.interiors or _turns(area, out) <= TURNS:
        return area
    area = _filled(area, radius, out, done)
    return area if out or _turns(area, out) <= _STILL else _roomy(area, radius)


def _turns(area: Polygon, out: bool) -> float:
    """Whole turns that all corners make that point to the side of the offset: an arc is laid about each."""
    ring = area.exterior
    x, y = np.diff(shapely.get_coordinates(ring), axis=0).T
    next_x, next_y = np.append(x[1:], x[:1]), np.append(y[1:], y[:1])
    cross = x * next_y - y * next_x
    towards = np.flatnonzero(cross > 0 if ring.is_ccw == out else cross < 0)
    along = x[towards] * next_x[towards] + y[towards] * next_y[towards]
    return float(np.arctan2(np.abs(cross[towards]), along).sum()) / (2 * math.pi)


def _ring(area: Polygon, out: bool) -> np.ndarray:
    """Corners with the side to which it is offset on their left, the first not repeated."""
    points = shapely.get_coordinates(area.exterior)[:-1]
    return points if area.exterior.is_ccw != out else points[::-1]


def _roomy(area: Polygon, radius: float) -> BaseGeometry:
    """The part of an area that discs of this radius inside it can cover, and some more.

    By squares cut in four: the middle of a disc is nowhere in a square whose own middle is
    nearer to the wall than the radius less half its diagonal.
    """
    x0, y0, x1, y1 = area.bounds
    side = max(x1 - x0, y1 - y0)
    middles = np.array([[(x0 + x1) / 2, (y0 + y1) / 2]])
    wall = area.exterior
    shapely.prepare(wall)
    shapely.prepare(area)
    while True:
        far = shapely.distance(wall, shapely.points(middles))
        far[~shapely.contains_xy(area, middles)] *= -1
        middles = middles[far + side * math.sqrt(0.5) >= radius]
        if not len(middles):
            return Polygon()
        if side < radius or len(middles) > _CELLS:
            break
        side /= 2
        middles = (middles[:, None] + np.array([[-1, -1], [-1, 1], [1, -1], [1, 1]]) * side / 2).reshape(-1, 2)
    reach = side / 2 + 1.01 * radius
    room = shapely.union_all(shapely.box(*(middles - reach).T, *(middles + reach).T))
    return shapely.intersection(area, room)


def _filled(area: Polygon, radius: float, out: bool, done: float) -> Polygon:
    """An area with every notch filled as far as no disc of this radius or more, on the offset's side, gets into it.

    From small notches to large ones, so that there are never many corners between two lips.
    """
    ring = _ring(area, out)
    size = done or float(np.sort(_far(ring, 2))[len(ring) // 10]) / _LIPS
    size = radius if size <= 0 or size >= radius else radius * 0.5 ** min(_SIZES, math.floor(math.log2(radius / size)))
    while len(ring) > FEW:
        notches = _notches(area, ring, size, out)
        if notches:
            ring = _without(ring, notches)
            area = Polygon(ring)
        if size >= radius:
            break
        size = min(radius, 2 * size)
    return area


def _far(ring: np.ndarray, ahead: int) -> np.ndarray:
    return np.hypot(*(np.roll(ring, -ahead, axis=0) - ring).T)


def _notches(area: Polygon, ring: np.ndarray, radius: float, out: bool) -> dict[int, tuple[int, np.ndarray]]:
    """Of each corner that is the lip of a notch: how many corners on the other lip is, and the point to which it is filled.

    Where a corner is the lip of several, the longest.
    """
    found: dict[int, tuple[int, np.ndarray]] = {}
    cross = ring[:, 0] * np.roll(ring[:, 1], -1) - ring[:, 1] * np.roll(ring[:, 0], -1)
    swept = np.concatenate([[0.0], np.cumsum(np.concatenate([cross, cross[:_AHEAD]]))])
    shapely.prepare(area)
    begins = np.arange(len(ring))
    for ahead in range(2, _AHEAD + 1):
        far, other = _far(ring, ahead), np.roll(ring, -ahead, axis=0)
        between = (swept[begins + ahead] - swept[begins] + other[:, 0] * ring[:, 1] - other[:, 1] * ring[:, 0]) / 2
        at = np.flatnonzero((far > 0) & (far <= _LIPS * radius) & (between > 0))
        # The middle of a disc in a notch would put half the disc into it: there is not so much room, or not so wide.
        large = between[at] > 1.5 * radius * radius
        if large.any():
            at = np.delete(at, np.flatnonzero(large)[_wide(ring, at[large], ahead) >= radius])
        if not len(at):
            continue
        along = (other[at] - ring[at]) / far[at, None]
        steep = far[at] / 2 / np.sqrt(radius * radius - far[at] ** 2 / 4)
        keeps = np.ones(len(at), dtype=bool)
        for k in range(1, ahead):
            to = np.roll(ring, -k, axis=0)[at] - ring[at]
            run, deep = (to * along).sum(axis=1), along[:, 1] * to[:, 0] - along[:, 0] * to[:, 1]
            keeps &= deep >= steep * np.minimum(run, far[at] - run)
        at, along, steep = at[keeps], along[keeps], steep[keeps]
        foot = (ring[at] + other[at]) / 2 + np.stack([along[:, 1], -along[:, 0]], axis=1) * (steep * far[at] / 2)[:, None]
        # Just short of the lips, which lie on the wall themselves.
        ends = [foot + (lip - foot) * (1 - 1e-6) for lip in (ring[at], other[at])]
        lines = shapely.linestrings(np.stack([ends[0], foot, ends[1]], axis=1))
        clear = shapely.disjoint(area, lines) if out else shapely.contains_properly(area, lines)
        found |= {int(i): (ahead, point) for i, point in zip(at[clear], foot[clear], strict=True)}
    return found


def _wide(ring: np.ndarray, at: np.ndarray, ahead: int) -> np.ndarray:
    """How wide notches are across their length, from the middle of their mouth to the corner farthest from it."""
    corners = ring[(at[:, None] + np.arange(ahead + 1)) % len(ring)]
    to = corners - (corners[:, :1] + corners[:, -1:]) / 2
    length = np.hypot(to[..., 0], to[..., 1])
    deepest = length.argmax(axis=1)[:, None]
    axis = np.take_along_axis(to, deepest[..., None], 1) / np.take_along_axis(length, deepest, 1)[..., None]
    return np.ptp(to[..., 0] * axis[..., 1] - to[..., 1] * axis[..., 0], axis=1)


def _without(ring: np.ndarray, notches: dict[int, tuple[int, np.ndarray]]) -> np.ndarray:
    """The corners with notches filled, none of which lies within another."""
    kept: list[np.ndarray] = []
    i = 0
    while i < len(ring):
        ahead, foot = notches.get(i, (1, None))
        kept.append(ring[i])
        if foot is not None and i + ahead <= len(ring):
            kept.append(foot)
        else:
            ahead = 1
        i += ahead
    return np.array(kept)
