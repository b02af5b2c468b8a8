"""Holes and slots of a head that is drawn in lines: circles, whatever lines run across them, and what a line goes round."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from shapely.geometry import Polygon

from geometry.tracing.edges_of import dark_inside, loops, softened
from geometry.tracing.in_lines import WIDEST, on_paper
from geometry.tracing.openings import HOLE, LARGEST, SLOT, Opening, of_one_drill, openings_in, shaped, straight
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.round_shapes import Round, through_circle

CELL = 0.2
"""mm: side of the cells in which the middles of circles are looked for, and the step of their radii"""
STEEP = 8.0
"""Levels from one point to the next at which a line has a side"""
MOST_INK = 60_000
"""Cells of lines beyond which no circle is looked for: that is no drawing of a head"""
VOTES = 0.45
"""Part of a circle's round that has to point to its middle for it to be looked at"""
MOST = 400
"""Circles that are looked at"""
ROUND = 0.9
"""Part of its round at the least along which a circle is drawn"""
EVEN = 0.2
"""Part of its width by which the middle of its line strays from a circle"""
LEAST = 3.0
"""mm: no smaller circle is a hole, but the eye of a letter (common practice, no source)"""
BESIDE = 0.4
"""Part of the round just within and without it at the least along which there is paper: other lines cross a circle"""
SMALLEST_BORE = 5.0
"""mm: of two circles about one middle the smallest that a post goes through is the hole (common practice, no source)"""
FINE = 0.2
"""Points of the picture by which the edge of a face is made simpler"""
MOST_FACES = 200
"""Faces between lines, the largest, among which slots are looked for"""


def openings_drawn(grey: np.ndarray, wood: np.ndarray, level: float, width: float, place: PlaneMap, point: float) -> list[Opening]:
    """The holes and straight slots that are drawn in a head, slots first; none with its middle in another.

    `level` of `on_paper` parts the paper from lines, `width` mm wide; all else as of `openings_in`.
    """
    ratio = on_paper(grey, math.ceil(WIDEST / point / 2))
    circles = [Opening(one.path(), "hole", (2 * one.radius, 2 * one.radius))
               for one in _circles(np.where(wood, ratio, 255.0), level, width, place, point)]
    slots = [*openings_in(grey, wood, place, point, drawn=True), *_slots(ratio, wood, level, width, place, point)]
    found: list[tuple[Polygon, Opening]] = []
    for one in [*slots, *circles]:
        area = Polygon(one.path.flatten(0.05))
        if not any(other.contains(area.centroid) for other, _ in found):
            found.append((area, one))
    return of_one_drill([one for _, one in found])


# ---- circles --------------------------------------------------------------------------------------------------------
def _circles(ratio: np.ndarray, level: float, width: float, place: PlaneMap, point: float) -> Iterator[Round]:
    """The circles (mm); of those about one middle first the one that is the hole."""
    kept: list[tuple[float, float, float]] = []
    near = max(width, 0.6) / point
    for u, v, r in _likely(ratio, level, point):
        if any(math.hypot(u - a, v - b) <= near and abs(r - c) <= near for a, b, c in kept):
            continue
        one = _held(ratio, level, width / point, u, v, r)
        if one is not None and LEAST <= 2 * one[2] * point <= HOLE[1]:
            kept.append(one)
    kept = _apart(kept, near)
    turns = np.linspace(0.0, math.tau, 72, endpoint=False)
    kept.sort(key=lambda one: (2 * one[2] * point < SMALLEST_BORE, one[2] if 2 * one[2] * point >= SMALLEST_BORE else -one[2]))
    for u, v, r in kept:
        yield through_circle(place.many(np.stack([u + r * np.cos(turns), v + r * np.sin(turns)], axis=1)))


def _apart(circles: Sequence[tuple[float, float, float]], near: float) -> list[tuple[float, float, float]]:
    """The circles, the larger of two that touch or cross, as what lies between the lines of larger ones does; one about another one, too."""
    kept: list[tuple[float, float, float]] = []
    for u, v, r in sorted(circles, key=lambda one: -one[2]):
        if not any(abs(c - r) - near <= math.hypot(u - a, v - b) <= c + r + near and math.hypot(u - a, v - b) > near for a, b, c in kept):
            kept.append((u, v, r))
    return kept


def _likely(ratio: np.ndarray, level: float, point: float) -> list[tuple[float, float, float]]:
    """(column, row, radius) in points where many sides of lines look towards one place from one distance (Hough 1962, by the direction of
    each side, as Ballard 1981)."""
    n = max(1, int(CELL / point))
    high, wide = (side // n * n for side in ratio.shape)
    soft = softened(ratio[:high, :wide].reshape(high // n, n, wide // n, n).mean(axis=(1, 3)))
    down, right = np.gradient(soft)
    slope = np.hypot(down, right)
    rows, columns = np.nonzero((soft < (level + 255.0) / 2) & (slope > STEEP))
    if not 0 < len(rows) <= MOST_INK:
        return []
    y, x = down[rows, columns] / slope[rows, columns], right[rows, columns] / slope[rows, columns]
    step = max(1.0, CELL / point / n)
    radii = np.arange(LEAST / 2 / point / n, HOLE[1] / 2 / point / n, step)
    shape, best = soft.shape, []
    for r in radii:
        votes = np.zeros(shape[0] * shape[1], dtype=np.float32)
        for way in (-r, r):
            u, v = np.rint(columns + way * x).astype(int), np.rint(rows + way * y).astype(int)
            there = (u >= 0) & (v >= 0) & (u < shape[1]) & (v < shape[0])
            votes += np.bincount(v[there] * shape[1] + u[there], minlength=len(votes)).astype(np.float32)
        votes = 16.0 * softened(votes.reshape(shape)) / (2.0 * math.tau * r)
        tops = np.argwhere(votes > VOTES)
        best += [(float(votes[v, u]) * r, int(u), int(v), float(r)) for v, u in tops.tolist()
                 if votes[v, u] >= votes[max(0, v - 2):v + 3, max(0, u - 2):u + 3].max()]
    best.sort(reverse=True)
    return [((u + 0.5) * n, (v + 0.5) * n, r * n) for _, u, v, r in best[:MOST]]


def _held(ratio: np.ndarray, level: float, width: float, u: float, v: float, r: float) -> tuple[float, float, float] | None:
    """(column, row, radius) of the circle near such a one, all in points; None where none is drawn."""
    far = np.linspace(-1.2, 1.2, 13) * max(width, 1.5)

    def crossed(rays: int) -> np.ndarray:
        """(13, rays) of whether there is a line at each place near the circle."""
        at = np.linspace(0.0, math.tau, rays, endpoint=False)
        return np.array([_at(ratio, u + (r + d) * np.cos(at), v + (r + d) * np.sin(at)) < level for d in far])
    if crossed(40).any(axis=0).mean() < ROUND:
        return None
    for _ in range(3):
        ring = _ring(ratio, u, v, r, width)
        dark = ring[2] < level
        if dark.sum() < 12:
            return None
        one = through_circle(np.stack([ring[0][dark], ring[1][dark]], axis=1))
        (u, v), r = one.ends[0], one.radius
    lines, at = crossed(180), np.linspace(0.0, math.tau, 180, endpoint=False)
    drawn = lines[3:-3].any(axis=0)
    off = (lines * far[:, None]).sum(axis=0)[drawn] / lines.sum(axis=0)[drawn]
    beside = [(_at(ratio, u + d * np.cos(at), v + d * np.sin(at)) >= level).mean() for d in (r - width - 1.0, r + width + 1.0) if d > 1.0]
    if drawn.mean() < ROUND or min(beside, default=0.0) < BESIDE or float(np.sqrt((off**2).mean())) > EVEN * max(width, 1.5):
        return None
    return u, v, r


def _ring(ratio: np.ndarray, u: float, v: float, r: float, width: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Column, row and level of the points of the picture near a circle."""
    far = max(1.2 * width, 2.0)
    x0, x1 = max(0, int(u - r - far)), min(ratio.shape[1], int(u + r + far) + 2)
    y0, y1 = max(0, int(v - r - far)), min(ratio.shape[0], int(v + r + far) + 2)
    x, y = np.meshgrid(np.arange(x0, x1) + 0.5, np.arange(y0, y1) + 0.5)
    near = np.abs(np.hypot(x - u, y - v) - r) <= far
    return x[near], y[near], ratio[y0:y1, x0:x1][near]


def _at(ratio: np.ndarray, u: np.ndarray, v: np.ndarray) -> np.ndarray:
    return ratio[np.clip(v.astype(int), 0, ratio.shape[0] - 1), np.clip(u.astype(int), 0, ratio.shape[1] - 1)]


# ---- slots ----------------------------------------------------------------------------------------------------------
def _slots(ratio: np.ndarray, wood: np.ndarray, level: float, width: float, place: PlaneMap, point: float) -> Iterator[Opening]:
    """Straight slots that a line goes round, one more across or along them perhaps."""
    least, most = (SLOT / point)**2, LARGEST * wood.sum()
    faces = [shape for shape in map(Polygon, (line for line in loops(ratio, level) if not dark_inside(line)))
             if shape.is_valid and least / 4 <= shape.area <= most and _at(wood, *np.array([[c] for c in shape.representative_point().coords[0]]))[0]]
    faces = [face.simplify(FINE) for face in sorted(faces, key=lambda shape: -shape.area)[:MOST_FACES]]
    near = (1.6 * width + 0.4) / point
    alone = [_slot([face], near, ratio, level, width, place, point) for face in faces]
    yield from (one for one in alone if one is not None)
    left = [face for face, one in zip(faces, alone, strict=True) if one is None]
    pairs = shapely.STRtree(left).query(left, predicate="dwithin", distance=near).T.tolist() if left else []
    for i, j in pairs:
        if i < j:
            one = _slot([left[i], left[j]], near, ratio, level, width, place, point)
            if one is not None:
                yield one


def _slot(faces: Sequence[Polygon], near: float, ratio: np.ndarray, level: float, width: float, place: PlaneMap, point: float) -> Opening | None:
    """The straight slot of which these faces are all that lies within its line; None where they are of none."""
    whole = shapely.union_all([face.buffer(near / 2) for face in faces]).buffer(-near / 2) if len(faces) > 1 else faces[0]
    if not isinstance(whole, Polygon):
        return None
    seen = Polygon(place.many(shapely.get_coordinates(whole.exterior)))
    edge = seen.buffer(width / 2) if seen.is_valid else None
    found = shaped(shapely.get_coordinates(edge.exterior), point, plain=True) if isinstance(edge, Polygon) else None
    if found is None or found.role != "slot":
        return None
    line = whole.buffer(1.5 * width / point).difference(whole.buffer(-0.5 * width / point))
    x0, y0, x1, y1 = (int(c) for c in line.bounds)
    rows, columns = np.nonzero(ratio[max(0, y0):y1 + 2, max(0, x0):x1 + 2] < level)
    ink = np.stack([columns + max(0, x0), rows + max(0, y0)], axis=1) + 0.5
    ink = ink[shapely.contains_xy(line, *ink.T)]
    return straight(place.many(ink), max(width, point)) or found
