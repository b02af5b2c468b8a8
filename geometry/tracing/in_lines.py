"""A head that is drawn in lines on paper, by pencil or pen: the middle of its line is its edge."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry.tracing.colours import GRAIN, GREY
from geometry.tracing.edges_of import dark_inside, loops, softened, threshold
from geometry.tracing.plane_map import PlaneMap
from geometry.vectors import Vec2

WIDEST = 3.0
"""mm: of the line of a pencil or a pen (common practice, no source)."""
STEP = 0.05
"""mm from one place beside the edge to the next, as the width of the line is sought"""
ROUND = 0.9
"""Part of the edge at the least beyond which there is paper again, once the line is passed"""
ABOUT = (0.0, 4.0, 8.0, 12.0)
"""mm about the place that was pressed: what lies there within the lines belongs to the head, on either side of its centreline"""
LEAST = (26.0, 60.0)
"""mm across and along: no head is smaller, and squares of paper about the place are (common practice, no source)."""
OFF_NUT = 3.0
"""mm before the nut line from which on the line is looked at"""
ON_WAY = 4.0
"""mm from one place to the next on the way from the nut line to that which was pressed: what lies there belongs to the head too"""
FULL = 0.97
"""Part of the box about it that a box drawn round a head fills at the least"""
BEYOND = 0.6
"""mm beyond the middle of the line's far side where there is paper"""
MITRE = {"join_style": "mitre", "mitre_limit": 2.0}
ALIKE = 2.0 * GRAIN
"""Levels by which the paper on both sides of a line differs at the most"""
PALE = 0.08
"""Part of the light of the paper that any line takes away (common practice, no source)"""


class Drawn(Struct, frozen=True):
    """The middle of a line that goes round, and how wide that is."""

    edge: np.ndarray
    """(n, 2) mm, closed"""
    width: float
    """mm"""
    level: float
    """of the light of the paper, 0..255, that parted line and paper"""


def on_paper(grey: np.ndarray, reach: int) -> np.ndarray:
    """(height, width) of the light of the paper that is left of it at each point, 255 where all is: what is darker and no
    wider than twice `reach` points is a line, and no shadow and no lamp to one side counts."""
    soft = softened(grey)
    return np.clip(255.0 * soft / np.maximum(closed(soft, reach), 1.0), 0.0, 255.0)


def closed(grey: np.ndarray, reach: int) -> np.ndarray:
    """The picture without what is darker than what is about it and no wider than twice `reach` points."""
    return -_widened(-_widened(grey, reach), reach)


def _widened(grey: np.ndarray, reach: int) -> np.ndarray:
    """The most of each point and its neighbours up to so many points away, along rows and columns."""
    out = grey
    for axis in (0, 1):
        out = np.pad(out, [(reach, reach) if a == axis else (0, 0) for a in (0, 1)], mode="edge")
        wide = 1
        while wide < 2 * reach + 1:  # twice as wide each time
            step = min(wide, 2 * reach + 1 - wide)
            out = np.maximum(*(np.take(out, range(*ends), axis) for ends in ((0, out.shape[axis] - step), (step, out.shape[axis]))))
            wide += step
    return out


def drawn_about(colours: np.ndarray, place: PlaneMap, at: Vec2, ahead: Vec2, widest: float, cut: Callable[[np.ndarray, float], np.ndarray]) -> Drawn | None:
    """The edge of the head that is drawn in lines about a point of a (height, width, 3) picture; None where no line of even width goes
    round it, or one has something else on its other side, as the edge of wood has.

    `widest`: mm across beyond which it is no head; `ahead`: the unit vector square to the nut line, which goes through (0, 0), to the
    tip; `cut` closes the drawing at the nut line in such levels and at such a level. Lines across the head, as its centreline, do not part it.
    """
    ratio = on_paper(colours.astype(np.float32) @ GREY.astype(np.float32), math.ceil(WIDEST / place.size_at(at) / 2))
    first = min(threshold(ratio), 255.0 * (1.0 - PALE))
    dark = ratio[ratio < first]
    for level in (first, threshold(dark) if dark.size else 0.0):  # the second is that between a pen and the squares of the paper
        head = _within(cut(ratio, level), level, place, at, ahead, widest)
        if head is None:
            continue
        width = _line(ratio, level, place, head, ahead)
        if width and _is_alike(colours, place, head, width, ahead):
            edge = head.buffer(width / 2, **MITRE)
            return Drawn(shapely.get_coordinates(edge.exterior), width, level)
    return None


def _within(ratio: np.ndarray, level: float, place: PlaneMap, at: Vec2, ahead: Vec2, widest: float) -> Polygon | None:
    """What lies within the lines about a place, mm, and no square of paper on the way to it from the nut line; without the lines across it."""
    x, y = place(at)
    near = [(x + far * math.cos(k), y + far * math.sin(k)) for far in ABOUT for k in range(12)]
    way = np.linspace(np.array(ahead) * OFF_NUT, (x, y), 2 + int(math.hypot(x, y) / ON_WAY))
    about = place.inverse().many(np.array([*near, *way]))
    found = []
    for line in loops(ratio, level):
        inside = ((about > line.min(axis=0)) & (about < line.max(axis=0))).all(axis=1)
        if dark_inside(line) or not inside.any():
            continue
        held = np.flatnonzero(inside)[shapely.contains_xy(Polygon(line), *about[inside].T)]
        if len(held) and (held[0] < len(near) or np.ptp(place.many(line), axis=0).max() >= LEAST[0]):
            face = shapely.make_valid(Polygon(place.many(line)), method="structure")
            corners = shapely.get_coordinates(shapely.oriented_envelope(face))
            if len(corners) > 2 and np.hypot(*np.diff(corners[:3], axis=0).T).min() < widest:
                found.append(face)
    shaped = [face for face in found if not _is_box(face) and _is_large(face)]
    found = [face for face in found if not _is_box(face) or not any(face.covers(one) for one in shaped)]
    parts = [face.buffer(WIDEST / 2, **MITRE) for face in found] if len(found) > 1 else found
    whole = shapely.union_all(parts)
    head = max(shapely.get_parts(whole.buffer(-WIDEST / 2, **MITRE) if len(found) > 1 else whole), key=shapely.area, default=None)
    return Polygon(head.exterior) if isinstance(head, Polygon) and _is_large(head) else None


def _is_box(face: BaseGeometry) -> bool:
    return bool(face.area >= FULL * shapely.oriented_envelope(face).area)


def _is_large(face: BaseGeometry) -> bool:
    """Whether a head may be as small (mm)."""
    return bool((np.sort(np.ptp(shapely.get_coordinates(face), axis=0)) >= LEAST).all())


def _line(ratio: np.ndarray, level: float, place: PlaneMap, head: Polygon, ahead: Vec2) -> float:
    """How wide (mm) the line is that goes round a head within it; 0 where there is none of even width."""
    far, paper, smooth = np.arange(STEP, WIDEST + BEYOND, STEP), [], head.simplify(STEP)
    for d in far:
        u, v = _beside(ratio, place, smooth, d, ahead)
        paper.append(float((ratio[v, u] >= level).mean()) if len(u) else 0.0)
    last = int(np.argmax(np.array(paper) >= 0.5))
    beyond = last + round(BEYOND / STEP)
    return float(far[last]) if beyond < len(far) and paper[last // 2] <= 1.0 - ROUND and paper[beyond] >= ROUND else 0.0


def _is_alike(colours: np.ndarray, place: PlaneMap, head: Polygon, width: float, ahead: Vec2) -> bool:
    """Whether the same paper is on both sides of a line about a head."""
    sides = [_beside(colours[:, :, 0], place, head, d, ahead) for d in (-2 * BEYOND, width + 2 * BEYOND)]
    if not all(side.size for side in sides):
        return False
    inner, outer = (np.median(colours[v, u], axis=0).astype(float) for u, v in sides)
    return bool(np.abs(inner - outer).max() <= ALIKE)


def _beside(grey: np.ndarray, place: PlaneMap, head: Polygon, far: float, ahead: Vec2) -> np.ndarray:
    """Columns and rows of the points of a picture, a mm apart, on the line `far` mm outside a head and before its nut line."""
    ring = shapely.get_coordinates(shapely.segmentize(shapely.boundary(head.buffer(far, **MITRE)), 1.0))
    there = place.inverse().many(ring[ring @ np.array(ahead) > OFF_NUT])
    return there[((there >= 0) & (there < grey.shape[1::-1])).all(axis=1)].astype(int).T
