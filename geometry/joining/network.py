"""Tangled lines: T junctions, overshoots, crossings. What do they enclose?

Every segment is cut exactly where another meets it; the pieces that enclose
something are found on their chords, then put back together as exact curves.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.joining.chains import SAME, meeting
from geometry.joining.crossings import TooTangled, crossings
from geometry.joining.duplicates import part, without_duplicates
from geometry.joining.ends import same_point
from geometry.tolerance import FLAT
from geometry.vectors import Vec2


@dataclass(frozen=True)
class Enclosed:
    """The borders of what a tangle encloses."""

    rings: tuple[Path, ...]
    exact: bool
    """False when the rings are chords of the curves (sagitta FLAT) because the exact way failed"""
    inner_faces: int
    """How many areas were merged into a larger one that surrounds them: lines inside were dropped"""


def enclosed(segments: Sequence[Segment], reach: float, without: Sequence[Polygon] = ()) -> Enclosed:
    """The outer borders, and the borders of holes, of everything that the segments enclose.

    Lines that enclose nothing are dropped; lines between two enclosed areas are
    dropped too, so that a line across an outline does not cut it in two.
    A loose end stops at a segment at most `reach` mm away. Areas inside the
    polygons `without` count as enclosed already and are left out.
    """
    try:
        found = _exact(segments, reach, without)
    except TooTangled:
        found = None
    return found if found is not None else _chords(segments, reach, without)


def _exact(segments: Sequence[Segment], reach: float, without: Sequence[Polygon]) -> Enclosed | None:
    """None when the pieces do not tile the plane cleanly."""
    pool = [s for _, s in without_duplicates(segments, SAME)]
    pool = pool + _stops(pool, reach)
    pieces = []
    for segment, ts in zip(pool, crossings(pool), strict=True):
        marks = [0.0, *ts, 1.0]
        pieces.extend(part(segment, lo, hi) for lo, hi in zip(marks, marks[1:], strict=False))
    pieces = [s for _, s in without_duplicates(pieces, SAME)]
    chords, edge = _pieces_as_chords(pieces)
    faces = [f for f in shapely.get_parts(shapely.polygonize(chords)) if _counts(f, without)]
    if not faces:
        return Enclosed((), True, 0)
    whole = shapely.coverage_union_all(faces)
    if not whole.is_valid or abs(whole.area - sum(f.area for f in faces)) > 1e-6 * whole.area:
        return None
    rings = []
    for ring in _rings(whole):
        path = _as_curves(ring, pieces, edge)
        if path is None:
            return None
        rings.append(path)
    return Enclosed(tuple(rings), True, len(faces) - len(shapely.get_parts(whole)))


def _stops(pool: Sequence[Segment], reach: float) -> list[Line]:
    """Short bridges from loose ends to the segment that each should have reached.

    An end that lies on the segment (to 1e-6 mm) gets a bridge of no length: none.
    An end that has overshot it crosses it anyway.
    """
    points = [p for s in pool for p in (s.start, s.end)]
    nodes = same_point(points, SAME)
    crowd = np.bincount(nodes)
    boxes = np.array([s.box() for s in pool], dtype=float)
    tree = shapely.STRtree(shapely.box(boxes[:, 0], boxes[:, 1], boxes[:, 2], boxes[:, 3]))
    bridges = []
    for i, p in enumerate(points):
        if crowd[nodes[i]] > 1:
            continue
        best: tuple[float, Vec2] | None = None
        for j in tree.query(shapely.box(p[0] - reach, p[1] - reach, p[0] + reach, p[1] + reach)):
            if j == i >> 1:
                continue
            q = pool[j].point(pool[j].nearest(p))
            apart = v.distance(p, q)
            if apart <= reach and (best is None or apart < best[0]):
                best = (apart, q)
        if best is not None and best[0] > 0:
            # Run on a little so that the crossing is found whatever the rounding; the stub is dropped.
            bridges.append(Line(p, v.along(p, v.unit(v.sub(best[1], p)), best[0] + 2 * SAME)))
    return bridges


def _pieces_as_chords(pieces: Sequence[Segment]) -> tuple[np.ndarray, dict[tuple[Vec2, Vec2], tuple[int, int]]]:
    """Chains of chords whose ends are shared to the last bit, and which piece each chord belongs to.

    The second value maps (from, to) to (piece, +1 along it or -1 against it).
    """
    ends = [p for s in pieces for p in (s.start, s.end)]
    nodes = same_point(ends, 2 * SAME)
    place: dict[int, Vec2] = {}
    for p, node in zip(ends, nodes, strict=True):
        place.setdefault(node, p)
    chords, edge = [], {}
    for number, piece in enumerate(pieces):
        points = piece.flatten(FLAT)
        points[0], points[-1] = place[nodes[2 * number]], place[nodes[2 * number + 1]]
        if len(points) == 2 and points[0] == points[1]:
            continue
        chords.append(shapely.linestrings(np.array(points)))
        for p, q in zip(points, points[1:], strict=False):
            edge[p, q], edge[q, p] = (number, 1), (number, -1)
    return np.array(chords), edge


def _counts(face: Polygon, without: Sequence[Polygon]) -> bool:
    inside = face.representative_point()
    return not any(w.covers(inside) for w in without)


def _rings(area: BaseGeometry) -> list[np.ndarray]:
    """Every border of a polygon or several: (n, 2), first point repeated."""
    found = []
    for polygon in shapely.get_parts(area):
        found.append(shapely.get_coordinates(polygon.exterior))
        found.extend(shapely.get_coordinates(hole) for hole in polygon.interiors)
    return found


def _as_curves(ring: np.ndarray, pieces: Sequence[Segment], edge: dict) -> Path | None:
    """The ring as the pieces it runs along; None when a chord belongs to no piece."""
    points = [(float(x), float(y)) for x, y in ring]
    walk = []
    for p, q in zip(points, points[1:], strict=False):
        belongs = edge.get((p, q))
        if belongs is None:
            return None
        if not walk or walk[-1] != belongs:
            walk.append(belongs)
    if len(walk) > 1 and walk[0] == walk[-1]:
        walk.pop()
    if len({number for number, _ in walk}) != len(walk):
        return None
    return meeting([pieces[i] if way > 0 else pieces[i].reversed() for i, way in walk], closed=True)


def _chords(segments: Sequence[Segment], reach: float, without: Sequence[Polygon]) -> Enclosed:
    """The same by chords alone, every point moved by up to half of `reach` mm onto a common grid."""
    lines = [shapely.linestrings(np.array(s.flatten(FLAT))) for s in segments]
    noded = shapely.union_all(lines, grid_size=reach / 2)
    faces = [f for f in shapely.get_parts(shapely.polygonize(shapely.get_parts(noded))) if _counts(f, without)]
    if not faces:
        return Enclosed((), False, 0)
    whole = shapely.union_all(faces)
    rings = []
    for ring in _rings(whole):
        points = [(float(x), float(y)) for x, y in ring]
        rings.append(Path(tuple(Line(p, q) for p, q in zip(points, points[1:], strict=False)), closed=True))
    return Enclosed(tuple(rings), False, len(faces) - len(shapely.get_parts(whole)))
