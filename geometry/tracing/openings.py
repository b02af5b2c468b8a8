"""Holes and slots in the picture of a head: what is darker, or lighter, than the wood about it, and goes round."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace
from shapely.geometry import Polygon

from geometry.curves import Path
from geometry.errors import GeometryError
from geometry.tracing.edges_of import LEAST_POINTS, loops, softened
from geometry.tracing.fit import fit
from geometry.tracing.in_lines import closed, on_paper
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.round_shapes import Round, through_circle, through_slot

HOLE = (1.5, 30.0)
"""mm: diameters of holes (common practice, no source)"""
SLOT = 5.0
"""mm: no slot is narrower (common practice, no source)"""
LENGTH = 15.0
"""mm: nor is any shorter (common practice, no source)"""
WIDEST = 26.0
"""mm: no slot is wider (common practice, no source)"""
LARGEST = 0.35
"""Part of a head that one opening takes at the most"""
FAINT = 16.0
"""Levels of grey, of 255, by which an opening differs from the wood about it at the least"""
DARK = (0.55, 0.7, 0.83)
"""Parts of the light of the wood, below which openings are looked for: the darkest first, which no streak of the wood runs into"""
ROUNDNESS = 0.03, 0.12
"""Part of its radius, and mm, by which the edge of a hole strays from a circle"""
STRAIGHTNESS = 0.2
"""mm by which the wall of a straight slot strays from one"""
OUTLIER = 4.0
"""Times as far any point of either may stray"""
ABOUT = 0.8, 2.5
"""mm beside the edge of an opening from where to where the wood is looked at"""
IN_WOOD = 0.75
"""Part of that which is wood at the least: a notch of the edge is no opening"""
COARSE = 0.25
"""mm of a point as fine as openings are looked for with; where their edges lie is told by all points"""
FINE = 0.2
"""Points of the picture by which the edge of what is looked at is made simpler before"""
WALL = 2.0
"""Points of the picture that the wall of an opening, seen between its edge at the face and what lies behind, is wide at the least: a
picture that is not sharp has the same shades nearer to any edge"""
RAGGED = 1.15
"""Times the way round about its hull that the edge of an opening is long at the most, but for what is as fine as the points"""
MOST = 120
"""Dark or light places of one kind, the largest, that are looked at"""
SAME_SIZE = 0.4
"""mm by which the next larger hole of one drill comes out larger at the most"""


class Opening(Struct, frozen=True):
    """A hole or a slot as it is seen (mm)."""

    path: Path
    role: str
    """hole or slot"""
    size: tuple[float, float]
    """width, and length, which is the width of a hole too"""


def openings_in(grey: np.ndarray, wood: np.ndarray, place: PlaneMap, point: float, drawn: bool = False) -> list[Opening]:
    """The holes and slots in (height, width) levels of grey, slots first; none within another.

    `wood`: (height, width) of True where the head is, holes and all; `place`: from the picture to mm; `point`: mm of one point;
    `drawn`: of a drawing only what is filled in dark, and round or straight.
    """
    if not wood.any():
        return []
    filled = np.where(wood, grey, np.median(grey[wood])).astype(np.float32)
    seen = [lines for flipped in ((False,) if drawn else (False, True)) for lines in _places(255.0 - filled if flipped else filled, wood, point)]
    found: list[tuple[Polygon, Opening]] = []
    for lines in sorted(seen, key=lambda one: -Polygon(one[0]).area):
        for line, plain in zip(lines, (*(True for _ in lines[1:]), drawn), strict=True):
            edge = place.many(line)
            shape = Polygon(edge)
            if any(other.contains(shape.representative_point()) or shape.contains(other.representative_point()) for other, _ in found):
                continue
            opening = shaped(edge, point, plain)
            if opening is not None:
                found.append((shape, opening))
                break
    return of_one_drill([opening for _, opening in found])


def _places(grey: np.ndarray, wood: np.ndarray, point: float) -> Iterator[list[np.ndarray]]:
    """The edges, (n, 2) in picture coordinates, of what is darker than what is about it and no wider than WIDEST: of each place that at the
    face first, where a wall is seen beside it, then its own."""
    n = max(1, int(COARSE / point))
    high, wide = (side // n * n for side in grey.shape)
    ratio = on_paper(grey[:high, :wide].reshape(high // n, n, wide // n, n).mean(axis=(1, 3)), math.ceil(WIDEST / 2 / point / n))
    bare = ratio[wood[n // 2:high:n, n // 2:wide:n]]
    if not bare.size:
        return
    least, most = math.pi * (HOLE[0] / point)**2 / 4, LARGEST * wood.sum()
    found: list[Polygon] = []
    for part in DARK:
        lines = [line * n for line in loops(ratio, part * float(np.median(bare)))]
        rough = [shape for shape in map(Polygon, lines) if shape.is_valid and least <= shape.area <= most]
        for shape in sorted(rough, key=lambda one: -one.area)[:MOST]:
            if any(shape.intersects(other) for other in found):
                continue
            edges = _sharp(grey, wood, shape.simplify(FINE), point)
            if edges:
                found.append(Polygon(edges[0]))
                yield edges


def _sharp(grey: np.ndarray, wood: np.ndarray, rough: Polygon, point: float) -> list[np.ndarray]:
    """The edge of a dark place half way between its own grey and that of the wood about it, before it that at the face where a wall is seen
    beside it; none where it is no place in the wood."""
    height, width = grey.shape
    x0, y0, x1, y1 = (int(c) for c in rough.buffer((ABOUT[1] + 0.5) / point).bounds)
    if x0 < 1 or y0 < 1 or x1 > width - 2 or y1 > height - 2:
        return []
    part = grey[y0:y1 + 2, x0:x1 + 2]
    x, y = (axis + 0.5 for axis in np.meshgrid(np.arange(x0, x1 + 2), np.arange(y0, y1 + 2)))
    within = rough.buffer(-min(0.5 / point, 0.4 * math.sqrt(rough.area / math.pi)))
    about = rough.buffer(ABOUT[1] / point).difference(rough.buffer(ABOUT[0] / point))
    inner, outer = shapely.contains_xy(within, x, y), shapely.contains_xy(about, x, y)
    there = outer & wood[y0:y1 + 2, x0:x1 + 2]
    if not inner.any() or not there.any() or there.sum() < IN_WOOD * outer.sum():
        return []  # it lies at the edge of the head
    dark, light = float(np.median(part[inner])), float(np.median(part[there]))
    if light - dark < FAINT:
        return []
    half = (dark + light) / 2
    own = _round(part, half, 0.6 * rough.area, 1.6 * rough.area)
    if own is None:
        return []
    face = _to_face(np.abs(part - light), light - half, own, 3.0 * rough.area)
    return [edge + (x0, y0) for edge in (face, own) if edge is not None]


def _to_face(unlike: np.ndarray, half: float, own: np.ndarray, most: float) -> np.ndarray | None:
    """The edge of an opening at the face, whose wall is seen beside what lies behind it, which has the edge `own`; None where no wall is seen.

    `unlike`: levels by which each place differs from the wood, darker or lighter; `half` of those by which what lies behind does; `most`:
    square points that it takes.
    """
    unlike, shape = closed(softened(unlike), 1), Polygon(own)
    if _ragged(shape, 1.0):
        return _round(unlike, half / 2, shape.area, most)  # such an edge runs in the wall, which is as dark as that
    rough = _round(unlike, half / 3, shape.area, most)
    if rough is None:
        return None
    y, x = np.indices(unlike.shape) + 0.5
    strip = Polygon(rough).buffer(-WALL).difference(shape.buffer(1.0))
    wall = shapely.contains_xy(strip, x, y)
    face = _round(unlike, float(np.median(unlike[wall])) / 2, shape.area, most) if wall.any() else None
    if face is None:
        return None
    beside = Polygon(face).difference(shape).buffer(-WALL / 2).buffer(WALL / 2)
    whole = max(shapely.get_parts(shape.union(beside).buffer(1.0).buffer(-1.0)), key=shapely.area)
    return shapely.get_coordinates(whole.exterior) if beside.area > 0 else None


def _ragged(shape: Polygon, point: float) -> bool:
    """Whether an edge strays to and fro by more than a point."""
    return shape.simplify(point).length > RAGGED * shape.convex_hull.length


def _round(grey: np.ndarray, level: float, least: float, most: float) -> np.ndarray | None:
    """The largest loop at a level, where it is of such a size (square points) and does not cross itself."""
    line = max(loops(grey, level), key=lambda one: Polygon(one).area, default=None)
    if line is None or not least <= Polygon(line).area <= most or not Polygon(line).is_valid:
        return None
    return line


def shaped(edge: np.ndarray, point: float, plain: bool = False) -> Opening | None:
    """What a closed edge, (n, 2) mm, is: a hole where it is round, a straight slot, or a slot of the shape that it has; None where it is
    too small or too thin for a slot, or it has to be `plain`, which is round or straight, and is not."""
    shape = Polygon(edge)
    wide = shapely.minimum_rotated_rectangle(shape)
    corners = shapely.get_coordinates(wide)
    if len(corners) < 4:
        return None
    short, long = sorted(np.hypot(*np.diff(corners[:3], axis=0).T).tolist())
    if HOLE[0] <= short and long <= HOLE[1] and long <= 1.3 * short:
        one = through_circle(edge)
        if _is(one, max(ROUNDNESS[0] * one.radius, ROUNDNESS[1], 0.6 * point)):
            return Opening(one.path(), "hole", (2 * one.radius, 2 * one.radius))
    if short < SLOT or long < LENGTH:
        return None
    slot = straight(edge, max(STRAIGHTNESS, 0.8 * point))
    if slot is not None:
        return slot
    if plain or 2 * shape.area / shape.length < SLOT / 2 or _ragged(shape, point):
        return None
    try:
        path = fit(edge, max(0.15, point), point).path
    except GeometryError:
        return None
    return Opening(path, "slot", (short, long))


def straight(points: np.ndarray, off: float) -> Opening | None:
    """The straight slot from whose edge (n, 2) points stray by `off` mm, in tenths of a mm, since finer is no picture; None where there is none."""
    one = through_slot(points) if len(points) >= LEAST_POINTS else None
    if one is None or not _is(one, off):
        return None
    one = replace(one, radius=max(round(one.radius * 20) / 20, 0.05), ends=tuple((round(x, 1) + 0.0, round(y, 1) + 0.0) for x, y in one.ends))
    return Opening(one.path(), "slot", (2 * one.radius, 2 * one.radius + math.dist(*one.ends)))


def _is(one: Round, most: float) -> bool:
    return one.off <= most and one.farthest <= OUTLIER * most and one.radius > 0


def of_one_drill(found: Sequence[Opening]) -> list[Opening]:
    """The openings, holes of about one size as wide as the middle one of them, in tenths of a mm, their middles in hundredths."""
    holes = sorted((one for one in found if one.role == "hole"), key=lambda one: one.size[0])
    groups: list[list[Opening]] = []
    for hole in holes:
        if groups and hole.size[0] - groups[-1][-1].size[0] <= SAME_SIZE:
            groups[-1].append(hole)
        else:
            groups.append([hole])
    even = []
    for group in groups:
        wide = round(float(np.median([hole.size[0] for hole in group])), 1)
        for hole in group:
            x0, y0, x1, y1 = hole.path.box
            at = (round((x0 + x1) / 2, 2) + 0.0, round((y0 + y1) / 2, 2) + 0.0)
            even.append(Opening(Round((at, at), wide / 2, 0.0, 0.0).path(), "hole", (wide, wide)))
    return [*(one for one in found if one.role != "hole"), *reversed(even)]
