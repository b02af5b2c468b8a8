"""Tangled lines: T junctions, overshoots, crossings. What do they enclose?

Every segment is cut exactly where another meets it; the pieces that enclose
something are found on their chords, then put back together as exact curves.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.curves import Line, Path, Segment
from geometry.errors import GeometryError
from geometry.joining.chains import SAME, meeting
from geometry.joining.crossings import TooTangled, crossings, inner
from geometry.joining.duplicates import part, without_duplicates
from geometry.joining.ends import same_point
from geometry.saying import say
from geometry.tolerance import FLAT
from geometry.vectors import Vec2

FINE = FLAT / 10
"""Sagitta (mm) of the chords that stand for curves when the exact way fails: FLAT where that would be more than MANY."""
MANY = 20_000

MOST_CHORDS = 100_000
"""Chords of lines that touch or cross beyond which what they enclose is not worked out: it would take more than a second."""


class Enclosed(Struct, frozen=True):
    """The borders of what a tangle encloses."""

    rings: tuple[Path, ...]
    exact: bool
    """False when the rings are chords of the curves (sagitta FINE, at most FLAT) because the exact way failed"""


def enclosed(segments: Sequence[Segment], reach: float, without: Sequence[Polygon] = ()) -> Enclosed:
    """The outer borders, and the borders of holes, of everything that the segments enclose.

    Lines that enclose nothing are dropped; lines between two enclosed areas are
    dropped too, so that a line across an outline does not cut it in two.
    A loose end stops at a segment at most `reach` mm away. Areas inside the
    polygons `without` count as enclosed already and are left out. GeometryError for a
    tangle of too many crossings or too many chords.
    """
    pool = [s for _, s in without_duplicates(segments, SAME)]
    met, bridges = _stops(pool, reach)
    lines = [*pool, *bridges]
    try:
        crossed = crossings(lines)
    except TooTangled:
        crossed = None
    rough = _without_slivers(_chords(lines, reach, without), reach)
    if crossed is None:
        return rough
    try:
        found = _exact(lines, [a | b for a, b in zip([*met, *(set() for _ in bridges)], crossed, strict=True)], without)
    except shapely.errors.GEOSException:
        return rough
    if found is None:
        return rough
    found = _without_slivers(found, reach)
    border = sum(ring.length for ring in rough.rings)
    if abs(_area(found) - _area(rough)) > reach * border:
        return rough  # some crossing was missed: chords on a grid miss none
    return found


def _area(found: Enclosed) -> float:
    return sum(abs(ring.area) for ring in found.rings)


def _without_slivers(found: Enclosed, reach: float) -> Enclosed:
    """The same without rings narrower than about 2 `reach`: they are the doubt about where lines meet."""
    rings = tuple(ring for ring in found.rings if abs(ring.area) > reach * ring.length)
    return Enclosed(rings, found.exact)


def _exact(pool: Sequence[Segment], cuts: Sequence[set[float]], without: Sequence[Polygon]) -> Enclosed | None:
    """By the segments cut at the parameters `cuts`; None when the pieces do not tile the plane cleanly."""
    pieces = []
    for segment, cut in zip(pool, cuts, strict=True):
        marks = [0.0, *inner(segment, cut, SAME), 1.0]
        pieces.extend(part(segment, lo, hi) for lo, hi in zip(marks, marks[1:], strict=False))
    pieces = [s for _, s in without_duplicates(pieces, SAME)]
    chords, edge = _pieces_as_chords(pieces)
    faces = [f for f in shapely.get_parts(shapely.polygonize(chords)) if _counts(f, without)]
    if not faces:
        return Enclosed((), True)
    whole = shapely.coverage_union_all(faces)
    if not whole.is_valid or abs(whole.area - sum(f.area for f in faces)) > 1e-6 * whole.area:
        return None
    rings = []
    for ring in _rings(whole):
        path = _as_curves(ring, pieces, edge)
        if path is None:
            return None
        rings.append(path)
    return Enclosed(tuple(rings), True)


def _stops(pool: Sequence[Segment], reach: float) -> tuple[list[set[float]], list[Line]]:
    """Where ends lie on other segments: the parameters there, and the bridges that loose ends need.

    A loose end reaches over a gap of up to `reach` mm; an end where others end
    too only counts when it lies on the segment.
    """
    points = [p for s in pool for p in (s.start, s.end)]
    nodes = np.array(same_point(points, SAME))
    crowd = np.bincount(nodes)
    loose = crowd[nodes] == 1
    within = np.where(loose, reach, SAME)
    chords = np.array([shapely.linestrings(np.array(s.flatten(FLAT))) for s in pool])
    near: list[list[int]] = [[] for _ in points]
    for i, j in shapely.STRtree(chords).query(shapely.points(points), predicate="dwithin", distance=within + 2 * FLAT).T.tolist():
        near[i].append(j)
    met: list[set[float]] = [set() for _ in pool]
    bridges = []
    for i, p in enumerate(points):
        best: tuple[float, int, float] | None = None
        for j in near[i]:
            if nodes[i] in (nodes[2 * j], nodes[2 * j + 1]):
                continue
            t = pool[j].nearest(p)
            apart = v.distance(p, pool[j].point(t))
            if apart <= SAME:
                met[j].add(t)
            elif apart <= within[i] and (best is None or apart < best[0]):
                best = (apart, j, t)
        if best is not None:
            _, j, t = best
            met[j].add(t)
            bridges.append(Line(p, pool[j].point(t)))
    return met, bridges


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
    sagitta = FINE if sum(s.chords(FINE) for s in segments) <= MANY else FLAT
    if sum(s.chords(sagitta) for s in segments) > MOST_CHORDS:
        raise GeometryError(say("Lines that cross one another are too long to be worked out: check the unit of the drawing, or draw "
                                "the outline as one closed line."))
    lines = [shapely.linestrings(np.array(s.flatten(sagitta))) for s in segments]
    noded = shapely.union_all(lines, grid_size=reach / 2)
    faces = [f for f in shapely.get_parts(shapely.polygonize(shapely.get_parts(noded))) if _counts(f, without)]
    if not faces:
        return Enclosed((), False)
    whole = shapely.union_all(faces)
    rings = []
    for ring in _rings(whole):
        points = [(float(x), float(y)) for x, y in ring]
        rings.append(Path(tuple(Line(p, q) for p, q in zip(points, points[1:], strict=False)), closed=True))
    return Enclosed(tuple(rings), False)
