"""Proposing an outline from the picture: pure, so that it is found and fitted beside the window."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

import numpy as np
import shapely
from msgspec import Struct

from app.formats.drawing_in.likeliest import WIDEST
from app.formats.picture_in import colours_of, covered, grey_of
from app.threads.waiting import Progress
from app.window.tracing.openings import seen_in
from geometry.curves import Path
from geometry.errors import GeometryError
from geometry.layout import Nut
from geometry.layout.picture import Picture
from geometry.tracing.colours import alike, mixed, parted
from geometry.tracing.edges_of import edge_about
from geometry.tracing.edges_of import threshold as threshold_of
from geometry.tracing.fit import fit
from geometry.tracing.in_lines import drawn_about
from geometry.tracing.openings import Opening
from geometry.tracing.plane_map import PlaneMap
from geometry.tracing.rim import rim_about, seen_at
from geometry.tracing.shadow import shadow_beside
from geometry.tracing.to_nut import to_nut
from geometry.vectors import Vec2

BESIDE = 3.0
"""mm beyond the ends of the nut up to which what lies behind its line is the neck: shoulders that hang lower stand farther out."""
AHEAD = (2.0, 8.0)
"""mm before the nut line where the wood of the head is looked at"""
RINGS = (2.0, 4.0, 6.0, 8.0, 10.0, 12.0)
"""mm about the place that was pressed at which the colour of the wood is taken: most lie beside a bore that is pressed on"""
BESIDE_HEAD = (2.0, 4.0, 6.0, 8.0)
"""mm beside the widest head where the colour of what lies behind it is taken"""
ALONG = (0, 160, 4)
"""mm before the nut line: from, to and step of these places"""
WITHIN, HALF, WITHOUT = 192.0, 128.0, 64.0
"""Levels of a rim, of its outer edge and of what is behind it, as `mixed` has them"""
BAND = 0.8
"""mm to either side of where a rim ends in which its outer edge is followed"""
MOST_SHADOW = 0.75
"""Part of what was followed that is left without its shadow, at the least"""
SPIKE = 1.0
"""mm: half of what is too thin to be a part of a head"""
ROWS = 64
"""Rows of a picture that are looked at at a time."""


class Proposal(Struct, frozen=True, eq=False):
    """A smooth outline, how far it strays from the edge in the picture (mm), and the level of grey that parted it."""

    path: Path
    deviation: float
    level: float
    rim: bool
    """whether a thin rim in another colour was taken along"""
    line: float = 0.0
    """width in mm of the line in which the head is drawn, its middle taken; 0 where it is no drawing"""
    openings: tuple[Opening, ...] = ()
    """holes and slots that are seen in it"""
    shadow: bool = False
    """whether a hard shadow beside the head was left out"""


def propose(picture: Picture, nut: Nut, at: Vec2, level: float | None, tolerance: float, progress: Progress | None) -> Proposal:
    """The outline about a point of the picture; a neck that goes on behind the nut, and perhaps out of the picture, is cut there.

    Grey level None takes the one that parts the picture best, or what is near the point, and a thin rim in another colour along; where the
    colours part it and give no outline, its greys are taken. GeometryError or
    FormatError with a sentence when there is no such edge.
    """
    place = PlaneMap(picture.place)
    colours = colours_of(picture.jpeg)
    levels = _levels(colours, place, nut, at)
    if progress is not None:
        progress.tell(0.02)
    told = None if progress is None else lambda part: progress.tell(0.05 + 0.85 * part)
    if levels is None and level is None:
        drawn = drawn_about(colours, place, at, nut.ahead, WIDEST, partial(_cut, place=place, nut=nut))
        if drawn is not None:
            path, far = _fitted(drawn.edge, tolerance, place.size_at(at), told)
            return Proposal(path, far, drawn.level, False, drawn.width, seen_in(path, colours, place, at, drawn))
    if levels is not None:
        try:
            return _followed(levels, colours, place, nut, at, level, tolerance, told)
        except GeometryError:
            pass  # its greys may have an edge
    return _followed(grey_of(picture.jpeg), colours, place, nut, at, level, tolerance, told)


def _followed(grey: np.ndarray, colours: np.ndarray, place: PlaneMap, nut: Nut, at: Vec2, level: float | None, tolerance: float,
              told: Callable[[float], None] | None) -> Proposal:
    """The outline in such levels of grey, its arguments as those of `propose`; `told` is told the part done of its fit, 0..1."""
    edge, wanted = _edge(grey, place, nut, at, level)
    if told is not None:
        told(0.0)
    edge, shadow = (edge, False) if level is not None else _without_shadow(edge, colours, place, nut, at)
    edge, rim = (edge, False) if level is not None else _with_rim(edge, colours, place, nut, at)
    path, far = _fitted(place.many(edge), tolerance, place.size_at(at), told)
    return Proposal(path, far, wanted, rim, openings=seen_in(path, colours, place, at), shadow=shadow)


def _fitted(edge: np.ndarray, tolerance: float, point: float, told: Callable[[float], None] | None) -> tuple[Path, float]:
    """The smooth outline through an edge (mm), its straight end on the nut line, and how far (mm) both stray from one another."""
    made = fit(edge, tolerance, point, told)
    path, moved = to_nut(made.path)
    return path, made.deviation + moved


def _edge(grey: np.ndarray, place: PlaneMap, nut: Nut, at: Vec2, level: float | None) -> tuple[np.ndarray, float]:
    """The edge about a point in such levels of grey, in picture coordinates, and the level that parted it. GeometryError as of `propose`."""
    widest = WIDEST / place.size_at(at)
    wanted = threshold_of(grey) if level is None else level
    try:
        return edge_about(_cut(grey, wanted, place, nut), wanted, at, widest), wanted
    except GeometryError:
        if level is not None:
            raise
        # What parts a sheet from a dark table is no level for pale wood on that sheet.
        wanted = threshold_of(_near(grey, at, widest / 2))
        return edge_about(_cut(grey, wanted, place, nut), wanted, at, widest), wanted


def _without_shadow(edge: np.ndarray, colours: np.ndarray, place: PlaneMap, nut: Nut, at: Vec2) -> tuple[np.ndarray, bool]:
    """The edge without a hard shadow that lies beside the head, and True; as it is, and False, where there is none."""
    def shape(line: np.ndarray) -> shapely.Geometry:
        return shapely.make_valid(shapely.Polygon(place.many(line)), method="structure")
    head, wood = shape(edge), _wood(colours, place, at)
    shadow = shadow_beside(colours, place, head, nut.ahead, wood) if isinstance(head, shapely.Polygon) else None
    if shadow is None:
        return edge, False
    try:
        found = edge_about(_cut(mixed(colours, wood, shadow), HALF, place, nut), HALF, at)
    except GeometryError:
        return edge, False
    rest = shape(found)
    less = MOST_SHADOW * head.area <= rest.area < head.area
    return (found, True) if less and isinstance(rest, shapely.Polygon) and shadow_beside(colours, place, rest, nut.ahead, wood) is None else (edge, False)


def _with_rim(edge: np.ndarray, colours: np.ndarray, place: PlaneMap, nut: Nut, at: Vec2) -> tuple[np.ndarray, bool]:
    """The edge with a thin rim in another colour taken along, and True; as it is, and False, where there is none."""
    head = shapely.make_valid(shapely.Polygon(place.many(edge)), method="structure")
    rim = rim_about(colours, place, head, nut.ahead) if isinstance(head, shapely.Polygon) else None
    if rim is None:
        return edge, False
    grey, rows, columns = mixed(colours, rim.own, rim.behind), *colours.shape[:2]
    core = max(shapely.get_parts(head.buffer(-SPIKE)), key=shapely.area)
    inner, outer = core.buffer(SPIKE + rim.width - BAND), head.buffer(rim.width + BAND, join_style="mitre")
    for shape, inside, value in ((inner, True, WITHIN), (outer, False, WITHOUT)):
        border = place.inverse().many(shapely.get_coordinates(shape.exterior))
        grey[covered(columns, rows, border) == inside] = value
    try:
        return edge_about(_cut(grey, HALF, place, nut), HALF, at), True
    except GeometryError:
        return edge, False


def _levels(colours: np.ndarray, place: PlaneMap, nut: Nut, at: Vec2) -> np.ndarray | None:
    """The levels by which the colours of a picture part the head from what lies beside it, None where its greys do as well."""
    beside = [(side * (WIDEST / 2 + far), nut.at(0.0)[1] + up) for side in (-1, 1) for far in BESIDE_HEAD for up in range(*ALONG)]
    return parted(colours, _wood(colours, place, at), seen_at(colours, place, np.array(beside))[1])


def _wood(colours: np.ndarray, place: PlaneMap, at: Vec2) -> np.ndarray:
    """(n, 3) colours of the wood about a point of the picture."""
    x, y = place(at)
    rings = [(x + ring * math.cos(k), y + ring * math.sin(k)) for ring in RINGS for k in range(12)]
    return alike(seen_at(colours, place, np.array(rings))[1])


def _cut(grey: np.ndarray, level: float, place: PlaneMap, nut: Nut) -> np.ndarray:
    """The picture with the neck behind the nut line as bright as what is not the head, or as it is where the picture does not reach the nut."""
    ahead = [place.inverse()((x, nut.at(x)[1] + y)) for x in np.linspace(-0.4, 0.4, 9) * nut.width for y in AHEAD]
    wood = [grey[int(y), int(x)] for x, y in ahead if 0 <= x < grey.shape[1] and 0 <= y < grey.shape[0]]
    if len(wood) < len(ahead):
        return grey
    other, point = (255.0 if np.median(wood) < level else 0.0), place.size_at(ahead[len(ahead) // 2])
    out = grey.astype(np.float32)
    m, x = place.matrix, np.arange(grey.shape[1], dtype=np.float32) + 0.5
    lines = np.array((m[0], nut.ahead @ m[:2], m[2]), dtype=np.float32)
    for top in range(0, grey.shape[0], ROWS):
        rows = out[top:top + ROWS]
        y = np.arange(top, top + len(rows), dtype=np.float32)[:, None] + 0.5
        across, before, far = (a * x + (b * y + c) for a, b, c in lines)
        share = np.where(np.abs(across / far) <= nut.width / 2 + BESIDE, np.clip(0.5 - before / far / point, 0.0, 1.0), 0.0)
        rows += share * (other - rows)
    return out


def _near(grey: np.ndarray, at: Vec2, far: float) -> np.ndarray:
    """What of a picture lies up to so many points from a point of it, to each side."""
    x, y = at
    return grey[max(0, int(y - far)):max(1, int(y + far)), max(0, int(x - far)):max(1, int(x + far))]


def over_picture(path: Path, picture: Picture) -> np.ndarray:
    """Points of a path (mm) in the picture."""
    return PlaneMap(picture.place).inverse().many(path.flatten(0.01))
