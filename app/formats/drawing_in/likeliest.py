"""Which of the closed lines of a drawing is likeliest the outline of a head, and what is none."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from shapely.geometry import LineString, Polygon
from shapely.geometry.base import BaseGeometry

from app.formats.drawing_in.units import INSTRUMENT, is_slim, may_be_cut
from geometry.curves import Path, stretch
from geometry.joining.neck import neck_of
from geometry.tolerance import FLAT, JOIN

WIDEST = 130.0
"""mm: no head is as wide, while the smallest bodies, sheets and their frames are (common practice, no source)."""

SHORTEST_BOARD = 160.0
"""mm: of a fretboard as long as a neck without its head (common practice, no source)."""

BLANK = 0.35
"""Least part of a blank's face that the head cut out of it covers (common practice, no source)."""

IN_BOARD = (0.1, 0.75)
"""Part of a shape that a head in it covers, as in a board that is no rectangle or has round corners: what covers less is an opening of a body,
what covers more goes round beside its edge (common practice, no source)."""

MOST_FRAMES = 50
"""Shapes, the largest, of which one may lie round the head, and as many that may be the head"""

FULL = 0.9
"""Least part of the box about it that a rectangle with rounded corners fills"""

SIDE = 0.7
"""Least part of each side of that box along which it runs"""

ROUND = 0.01
"""How much a round loop's radius may vary, as a part of it."""

COARSE = 0.04
"""How much nearer to the middle of a hole the middles of its chords may lie, as a part of its radius"""


def outline_sides(paths: Sequence[Path], scale: float) -> tuple[float, float]:
    """Width and height (mm) of what would be the outline among closed paths, were they `scale` times as large as they are in mm; of what
    would be longer than any instrument, or too wide for a head without a neck, 0."""
    ordered = sorted(paths, key=lambda path: -abs(path.area))
    around = is_rectangle(ordered[0])
    if not around and max(_scaled(ordered[0], scale)) > INSTRUMENT[1]:
        return 0.0, 0.0
    plain = not around and not is_slim(sides_of(ordered[0])) and min(_scaled(ordered[0], scale)) < WIDEST
    found = (0,) if plain else likeliest(range(len(ordered)), ordered, [area_of(path) for path in ordered], scale)
    outline = ordered[found[0]]
    return (0.0, 0.0) if not plain and _is_body(outline, scale) else _scaled(outline, scale)


def likeliest(candidates: Sequence[int], paths: Sequence[Path], areas: Sequence[BaseGeometry], scale: float = 1.0) -> Sequence[int]:
    """Candidates for the outline, the likeliest first: the largest, unless that is a sheet's frame about something that may be a head,
    a blank that is mostly covered by one, a fretboard beside it, or wider than any head, as the body of the instrument is or a board.

    `candidates` are numbers of paths, the largest first; `scale`: mm for each that the paths measure.
    """
    shaped = [j for j in candidates if not _is_filled(paths[j]) and (may_be_cut(_scaled(paths[j], scale)) or is_wide(paths[j], scale))]
    for i in candidates[:MOST_FRAMES] if shaped else ():
        around = is_rectangle(paths[i])
        wide = not around and _is_body(paths[i], scale)
        board = is_slim(sides_of(paths[i])) and max(_scaled(paths[i], scale)) >= SHORTEST_BOARD and not _has_neck(paths[i], scale)
        if not around and not wide and not board:
            break
        if wide:
            found = _beside_body(i, shaped[:MOST_FRAMES], paths, areas, scale)
        else:
            least = 0.0 if min(_scaled(paths[i], scale)) >= WIDEST else BLANK * areas[i].area
            most = (1.0 if _is_filled(paths[i]) else IN_BOARD[1] if around else 0.0) * areas[i].area
            reach = reach_of(areas[i])
            found = [j for j in shaped if j != i and (least <= areas[j].area <= most if reach.covers(areas[j]) else board and not is_slim(sides_of(paths[j])))]
        if found:
            return likeliest(found, paths, areas, scale)
    return candidates


def reach_of(area: BaseGeometry) -> BaseGeometry:
    """What a loop holds, its edge counted though rounding parts the two: prepared to be asked."""
    reach = area.buffer(JOIN)
    shapely.prepare(reach)
    return reach


def _beside_body(body: int, shaped: Sequence[int], paths: Sequence[Path], areas: Sequence[BaseGeometry], scale: float) -> list[int]:
    """What may be the head, or the neck with it, of a body or in a board; what is not within it first, and a neck before all else."""
    found: list[tuple[bool, bool, int]] = []
    reach = reach_of(areas[body])
    for j in shaped:
        if j == body or is_wide(paths[j], scale) or is_round(paths[j]):
            continue
        within, part = reach.covers(areas[j]), areas[j].area / areas[body].area
        neck = _has_neck(paths[j], scale)
        if neck or not is_slim(sides_of(paths[j])) and (IN_BOARD[0] <= part <= IN_BOARD[1] if within else not areas[body].intersects(areas[j])):
            found.append((not neck, within, j))
    return [j for *_, j in sorted(found)]


def _is_body(path: Path, scale: float) -> bool:
    """Whether a closed path that is no rectangle is wider than any head and is not the instrument with its neck."""
    return not is_rectangle(path) and is_wide(path, scale) and not _has_neck(path, scale)


def _has_neck(path: Path, scale: float) -> bool:
    return max(_scaled(path, scale)) <= INSTRUMENT[1] and neck_of(path.mapped(stretch(scale))) is not None


def sides_of(path: Path) -> tuple[float, float]:
    """Width and height of the box about a path."""
    x0, y0, x1, y1 = path.box
    return x1 - x0, y1 - y0


def _scaled(path: Path, scale: float) -> tuple[float, float]:
    wide, high = sides_of(path)
    return wide * scale, high * scale


def is_wide(path: Path, scale: float = 1.0) -> bool:
    """Whether a closed path is wider than any head, however it lies; `scale` as of `likeliest`."""
    if min(_scaled(path, scale)) < WIDEST:
        return False
    corners = shapely.get_coordinates(shapely.oriented_envelope(area_of(path)))
    return len(corners) > 2 and float(np.hypot(*np.diff(corners[:3], axis=0).T).min()) * scale >= WIDEST


def _is_filled(path: Path) -> bool:
    """Whether a closed path fills the box about it."""
    wide, high = sides_of(path)
    return abs(abs(path.area) - wide * high) <= 1e-3 * wide * high


def is_rectangle(path: Path) -> bool:
    """Whether a closed path is an upright rectangle, its corners rounded or cut off perhaps, as those of sheets and boards are."""
    wide, high = sides_of(path)
    if _is_filled(path) or abs(path.area) < FULL * wide * high:
        return _is_filled(path)
    off = 1e-3 * max(wide, high)
    points, (x0, y0, x1, y1) = path.flatten(off), path.box
    for axis, edge, long in ((0, x0, high), (0, x1, high), (1, y0, wide), (1, y1, wide)):
        along = points[np.abs(points[:, axis] - edge) <= off, 1 - axis]
        if not len(along) or np.ptp(along) < SIDE * long:  # a speck has no point at its own edges
            return False
    return bool(shapely.convex_hull(LineString(points)).area <= (1 + 1e-3) * abs(path.area))


def area_of(path: Path) -> BaseGeometry:
    """What a loop covers; of one that is nowhere wider than its chords stray, the line along it."""
    points = path.flatten(4 * FLAT)
    points = points[:-1] if len(points) > 1 and np.array_equal(points[0], points[-1]) else points
    return Polygon(points) if len(points) > 2 else LineString(points[[0, -1]])


def is_round(path: Path) -> bool:
    """Whether a closed path is a circle but for ROUND of its radius, or twelve chords of one at the least."""
    x0, y0, x1, y1 = path.box
    points = path.flatten(max(1e-6, 1e-3 * max(x1 - x0, y1 - y0)))
    middle = np.array([(x0 + x1) / 2, (y0 + y1) / 2])
    radii = np.hypot(*(points - middle).T)
    chords = np.hypot(*((points[1:] + points[:-1]) / 2 - middle).T)
    mean = float(radii.mean())
    return bool(mean > 0 and np.abs(radii / mean - 1).max() <= ROUND and np.abs(chords / mean - 1).max() <= COARSE)
