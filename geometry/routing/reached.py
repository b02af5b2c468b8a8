"""Where a round cutter gets in plan: the wood that it leaves in corners, and the wood that a template costs.

A cutter of radius r leaves what no disc of radius r inside the slot (outside the
outline) can sweep. A template whose offset o is above zero loses what a disc of
radius o cannot keep: growing an opening, or shrinking an outside template, and
following it again rounds every corner of wood that points at the cutter.
"""

from __future__ import annotations

import math

import shapely
from msgspec import Struct
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry import vectors as v
from geometry.by_size import of_loop, of_shape, remembered_by_size
from geometry.curves.polygons import grown, opened, parts, polygon, widest_circle
from geometry.errors import GeometryError
from geometry.layout import Headstock, Loop, Slot, StraightSlot, loop_path, slot_path
from geometry.layout.edges import edges, end_line
from geometry.routing.fit import pieces
from geometry.routing.nut_end import FAR, SHOULDER
from geometry.saying import say
from geometry.tolerance import FLAT, SLIVER_AREA, TOUCH
from geometry.vectors import Vec2

SLACK = 2 * FLAT
"""Chords lie up to FLAT inside a curve on either side: a cutter exactly as wide as a slot still passes."""
LEAST_PATCH = 0.02
"""Depth in mm under which wood left or lost is no more than chords and not worth a word."""
APART = 0.001
"""Shaved off where the cutter gets (mm), so that pieces do not hang together along the walls it follows."""
NECK = 30.0
"""Length of the neck that is put behind the nut line, mm, so that the outline does not end there."""

LADDER = (26.0, 13.0, 6.5, 3.0)
"""Sizes in mm that are tried first: what a wide cutter does not leave, no slimmer one leaves either."""

MOST_PATCHES = 200
"""Pieces of wood in corners that are looked at for one line: a saw has thousands, and nobody pares them."""


End = tuple[Vec2, Vec2]
"""A point of a line, and the unit direction square to it"""


class Patch(Struct, frozen=True):
    """A piece of wood in plan."""

    area: Polygon
    size: float
    """mm2"""
    depth: float
    """mm from where the cutter gets to its deepest point; for lost wood, from what stays to where the corner was"""
    at: Vec2
    """that deepest point"""


class Reached(Struct, frozen=True):
    """What a cutter makes of a slot or an outline (deepest patch first)."""

    whole: bool
    """whether the cutter gets in, and everywhere without a break"""
    left: tuple[Patch, ...]
    """wood left standing, to be pared by hand"""
    lost: tuple[Patch, ...]
    """wood cut away that should stay"""

    @property
    def left_area(self) -> float:
        """mm2 left standing."""
        return sum(patch.size for patch in self.left)

    @property
    def left_depth(self) -> float:
        """Greatest depth of the wood left standing, mm."""
        return self.left[0].depth if self.left else 0.0

    @property
    def lost_depth(self) -> float:
        """Greatest depth of the wood lost, mm."""
        return self.lost[0].depth if self.lost else 0.0


def slot_reached(slot: Slot, cutter: float, offset: float = 0.0) -> Reached:
    """What a cutter (diameter, mm) reaches of a slot behind a template with this offset (mm).

    Straight slots are judged by their width alone. GeometryError when the slot crosses itself.
    """
    return _in_slot(slot.shape, cutter, max(0.0, offset))


def outline_reached(layout: Headstock, cutter: float, offset: float = 0.0) -> Reached:
    """What a cutter (diameter, mm) outside the outline reaches, from the nut line round the tip and back.

    Corners at the nut line itself are left out: the neck goes on there. GeometryError when
    the outline crosses itself or has no edges.
    """
    return _outside(layout.outline, cutter, max(0.0, offset))


def routed_area(loop: Loop) -> Polygon:
    """The head with both edges going straight on behind the nut line, where the neck is: no corner stands there.

    Edges that leave the nut line as a shoulder (nearly along it) meet a square neck instead.
    """
    bass, treble = (edge.path for edge in edges(loop))
    closing = treble.tangent_at(0.0)[0] - bass.tangent_at(0.0)[0]
    room = (treble.start[0] - bass.start[0]) / closing if closing > 0 else math.inf
    length = min(NECK, 0.8 * room)
    ends = [v.along(path.start, path.tangent_at(0.0), -length) for path in (treble, bass)]
    if min(path.tangent_at(0.0)[1] for path in (bass, treble)) < SHOULDER:
        ends = [(path.start[0], path.start[1] - NECK) for path in (treble, bass)]
    neck = Polygon([bass.start, treble.start, *ends])
    head = max(shapely.get_parts(shapely.union(polygon(loop_path(loop)), neck)), key=lambda part: part.area)
    return Polygon(head.exterior) if len(head.interiors) else head  # what lies between the neck and a nut end that is not straight is neck


@remembered_by_size(512, of_shape)
def _in_slot(shape, cutter: float, offset: float) -> Reached:
    if isinstance(shape, StraightSlot):
        if cutter <= shape.width + TOUCH:
            return Reached(True, (), ())
        return Reached(False, (_patch(_area(shape), Polygon()),), ())
    whole, left = _left_inside(shape, cutter)
    spared = not whole or offset <= 0 or offset <= _clean(_lost_inside, shape)
    return Reached(whole, left, () if spared else _lost_inside(shape, offset))


@remembered_by_size(64, of_shape)
def _area(shape) -> Polygon:
    return polygon(slot_path(Slot(id="slot", shape=shape)))


@remembered_by_size(512, of_shape)
def _left_inside(shape, cutter: float) -> tuple[bool, tuple[Patch, ...]]:
    """Whether a cutter passes everywhere in a drawn slot, and what it leaves."""
    area = _area(shape)
    radius = cutter / 2
    path = grown(area, -radius)
    if len(parts(path, TOUCH)) != 1:
        radius = max(radius - SLACK, TOUCH)
        path = grown(area, -radius)
    if path.is_empty:
        return False, (_patch(area, Polygon()),)
    swept = grown(path, radius)
    left = () if _same(area, swept) else _patches(area.difference(grown(swept, APART)), swept, area)
    return pieces(area, cutter) == 1, left


@remembered_by_size(128, of_shape)
def _lost_inside(shape, offset: float) -> tuple[Patch, ...]:
    area = _area(shape)
    kept = grown(grown(area, offset), -offset)
    return () if _same(area, kept) else _patches(grown(kept, -APART).difference(area), kept.boundary, area)


def _outside(loop: Loop, cutter: float, offset: float) -> Reached:
    left = () if cutter <= _clean(_left_outside, loop) else _left_outside(loop, cutter)
    lost = () if offset <= 0 or offset <= _clean(_lost_outside, loop) else _lost_outside(loop, offset)
    return Reached(True, left, lost)


@remembered_by_size(64, lambda pieces_of, border: of_loop(border) if hasattr(border, "nodes") else of_shape(border))
def _clean(pieces_of, loop: Loop) -> float:
    """The largest size of the ladder that leaves, or costs, nothing; 0 when none does."""
    return next((size for size in LADDER if not pieces_of(loop, size)), 0.0)


@remembered_by_size(256, of_loop)
def _left_outside(loop: Loop, cutter: float) -> tuple[Patch, ...]:
    area, end = _head(loop)
    standing = grown(grown(area, cutter / 2), -cutter / 2)
    return () if _same(area, standing, end) else _patches(
        grown(standing, -APART).difference(area), standing.boundary, area, end)


@remembered_by_size(256, of_loop)
def _lost_outside(loop: Loop, offset: float) -> tuple[Patch, ...]:
    area, end = _head(loop)
    kept = opened(area, offset)
    return () if _same(area, kept, end) else _patches(area.difference(grown(kept, APART)), kept, area, end)


@remembered_by_size(16, of_loop)
def _head(loop: Loop) -> tuple[Polygon, End]:
    return routed_area(loop), end_line(loop)


def _same(area: Polygon, other: BaseGeometry, end: End | None = None) -> bool:
    """Whether no piece between an area and its sweep is worth a word: less wood than a sliver, or every corner reached. As _patches."""
    if other.geom_type != "Polygon":
        return False
    between = abs(area.area - other.area)
    if between < SLIVER_AREA:
        return True
    if between > LEAST_PATCH / 2 * area.exterior.length:
        return False  # more than such a strip along all of it: asking each corner would find one, and the pieces tell anyway
    ring, points = other.exterior, shapely.get_coordinates(area.exterior)
    shapely.prepare(ring)
    if end is not None:
        points = points[(points - end[0]) @ end[1] > TOUCH]
    return bool(shapely.dwithin(ring, shapely.points(points), LEAST_PATCH / 2).all())


def _patches(area: BaseGeometry, beside: BaseGeometry, line: Polygon, end: End | None = None) -> tuple[Patch, ...]:
    """Pieces worth a word, deepest first; `line` is the finished slot or outline, an outline with the `end` before which it is looked at."""
    if end is not None:
        area = area.intersection(_before(*end))
    corners = frozenset(map(tuple, shapely.get_coordinates(line.exterior).tolist())) if end is None else frozenset()
    pieces_left = parts(area)
    if len(pieces_left) > MOST_PATCHES:
        raise GeometryError(say("The line has more than {most} corners that a bit does not get into: draw it with fewer.", most=MOST_PATCHES))
    found = [_patch(part, beside, corners) for part in pieces_left]
    return tuple(sorted((p for p in found if p.depth >= LEAST_PATCH), key=lambda p: -p.depth))


def _before(at: Vec2, ahead: Vec2) -> Polygon:
    """All that lies before a line."""
    ends = [v.along(at, v.right(ahead), FAR), v.along(at, v.left(ahead), FAR)]
    return Polygon([*ends, *(v.along(end, ahead, 2 * FAR) for end in reversed(ends))])


def _patch(part: Polygon, beside: BaseGeometry, corners: frozenset[Vec2] = frozenset()) -> Patch:
    """A piece and its deepest point: a corner of it, because the distance from a convex sweep has no summit inside.

    `corners` are the vertices of the finished line: where a piece has some of them, its deepest point is one.
    Where nothing is swept at all, the middle of the piece and its distance from the piece's own edge.
    """
    if beside.is_empty:
        inside = widest_circle(part, 0.01)
        return Patch(part, part.area, inside.length, inside.coords[0])
    ring = [tuple(p) for p in shapely.get_coordinates(part.exterior).tolist()]
    points = [p for p in ring if p in corners] or ring
    far = shapely.distance(shapely.points(points), _near(part, beside))
    deepest = int(far.argmax())
    return Patch(part, part.area, float(far[deepest]), points[deepest])


def _near(part: Polygon, beside: BaseGeometry) -> BaseGeometry:
    """The edge of `beside` as far as it can be nearest to a point of a piece that touches it: a tenth of the work."""
    edge = beside.boundary if beside.geom_type in ("Polygon", "MultiPolygon") else beside
    x0, y0, x1, y1 = part.bounds
    room = math.hypot(x1 - x0, y1 - y0) + 1.0
    near = shapely.clip_by_rect(edge, x0 - room, y0 - room, x1 + room, y1 + room)
    return edge if near.is_empty else near
