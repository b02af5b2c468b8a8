"""Live distances from what is dragged to the neighbours that matter: next posts, the edge, the nearest slot."""

from __future__ import annotations

import math
from collections.abc import Collection

from app.tools import guides, words
from app.tools.snap import standing
from geometry import vectors as v
from geometry.drawing import Drawing
from geometry.edits.moving import plan_point
from geometry.edits.tuners import along_edge
from geometry.errors import GeometryError
from geometry.layout import Headstock, Loop, Slot, Tuner, loop_path, slot_path
from geometry.layout.edges import edge
from geometry.solids.walls import Wall
from geometry.units import LengthUnit
from geometry.vectors import Box, Vec2

FAR = 25.0
"""mm: a wall farther away than this is no neighbour."""

ASIDE = 34.0
"""Pixels that the distances along an edge stand outside it."""


class PointNeighbours:
    """Of a face tuner, a pin or a hole: centre to centre to the posts before and behind it on its side, and the wood between
    its rim and the outline and the nearest slot.

    What stays while it is dragged is gathered once: the walls, and every post but those that are `moving` with it.
    """

    def __init__(self, layout: Headstock, id: str, moving: Collection[str] = ()) -> None:
        self._id, self._radius = id, _radius(layout, id)
        self._outline = loop_path(layout.outline)
        self._slots = [slot_path(slot) for slot in layout.slots]
        self._posts: list[tuple[str, Vec2 | None]] = []
        """other face tuners, each with its place unless that has to be asked of each layout"""
        if any(tuner.id == id for tuner in layout.tuners):
            face = {pattern.id for pattern in layout.patterns if pattern.mount == "face"}
            self._posts = [(tuner.id, None if tuner.id in moving else standing(layout, tuner.id))
                           for tuner in layout.tuners if tuner.id != id and tuner.pattern in face]

    def marks(self, layout: Headstock, unit: LengthUnit, mm_per_pixel: float) -> Drawing:
        """The distances in a layout in which nothing else has moved."""
        at = plan_point(layout, self._id)
        posts = [plan_point(layout, id) if post is None else post for id, post in self._posts]
        marks: Drawing = ()
        for other in _beside(at, [post for post in posts if (post[0] >= 0) == (at[0] >= 0)]):
            marks += guides.dimension(at, other, words.length(v.distance(at, other), unit), mm_per_pixel)
        for near in (self._outline.nearest_point(at), self._nearest_slot(at)):
            if near is not None:
                marks += _wood(at, self._radius, *near, unit, mm_per_pixel)
        return marks

    def _nearest_slot(self, at: Vec2) -> tuple[Vec2, float] | None:
        """The nearest point of all slots, of equally near ones that of the first; None where none can be a neighbour."""
        near, distance = None, math.inf
        for path in self._slots:
            least = path.beside_box(at)
            if least < distance and least - self._radius <= FAR:
                found = path.nearest_point(at)
                if found[1] < distance:
                    near, distance = found, found[1]
        return near


def of_point(layout: Headstock, id: str, unit: LengthUnit, mm_per_pixel: float) -> Drawing:
    """What PointNeighbours tells of one layout."""
    return PointNeighbours(layout, id).marks(layout, unit, mm_per_pixel)


def of_seat(layout: Headstock, id: str, unit: LengthUnit, mm_per_pixel: float) -> Drawing:
    """From a side tuner: arc length along its edge to the side tuners before and behind it, drawn outside the edge."""
    found = along_edge(layout, id)
    if found is None:
        return ()
    side, here = found
    run = edge(layout.outline, side)
    others = [along for tuner in layout.tuners
              if tuner.id != id and layout.pattern(tuner.pattern).mount == "side"
              for where, along in [_along(layout, tuner)] if where == side]
    before = max((along for along in others if along < here), default=None)
    behind = min((along for along in others if along > here), default=None)
    marks: Drawing = ()
    for other in (before, behind):
        if other is not None:
            seats = [run.seat(along) for along in (here, other)]
            a, b = (v.along(seat.point, seat.normal, ASIDE * mm_per_pixel) for seat in seats)
            marks += guides.dimension(a, b, words.length(abs(other - here), unit), mm_per_pixel)
    return marks


class SlotNeighbours:
    """Of a slot: the rail to the outline and the web to the nearest other slot. Walls of what stays while it is dragged are made once."""

    def __init__(self, id: str) -> None:
        self._id = id
        self._walls: dict[str, tuple[Slot | Loop, Wall]] = {}

    def marks(self, layout: Headstock, unit: LengthUnit, mm_per_pixel: float) -> Drawing:
        """The distances in a layout."""
        own = self._wall(next(slot for slot in layout.slots if slot.id == self._id))
        nearest = [own.to(self._wall(layout.outline)), *self._web(own, layout)]
        return tuple(mark for distance, a, b in nearest if 0 < distance <= FAR
                     for mark in guides.dimension(a, b, words.clearance(distance, unit), mm_per_pixel))

    def _web(self, own: Wall, layout: Headstock) -> list[tuple[float, Vec2, Vec2]]:
        """(mm, place on the slot, place on the other) of the nearest other slot that can be a neighbour, if there is one."""
        others = [self._wall(slot) for slot in layout.slots if slot.id != self._id]
        apart = [_between(own.path.box, other.path.box) for other in others]
        found: list[tuple[float, Vec2, Vec2]] = []
        for k in sorted(range(len(others)), key=apart.__getitem__):
            if apart[k] > (found[0][0] if found else FAR):
                break
            found = sorted([*found, own.to(others[k])], key=lambda one: one[0])[:1]
        return found

    def _wall(self, of: Slot | Loop) -> Wall:
        key = of.id if isinstance(of, Slot) else ""
        known = self._walls.get(key)
        if known is None or known[0] is not of:
            known = self._walls[key] = of, Wall(slot_path(of) if isinstance(of, Slot) else loop_path(of))
        return known[1]


def _between(one: Box, two: Box) -> float:
    """How far two boxes lie apart, mm; 0 where they meet."""
    return math.hypot(max(one[0] - two[2], two[0] - one[2], 0.0), max(one[1] - two[3], two[1] - one[3], 0.0))


def _wood(at: Vec2, radius: float, wall: Vec2, distance: float, unit: LengthUnit, mm_per_pixel: float) -> Drawing:
    """The wood to the nearest point of a wall, so far (mm) from the middle."""
    wood = distance - radius
    if not 0 < wood <= FAR:
        return ()
    rim = v.along(at, v.unit(v.sub(wall, at)), radius)
    return guides.dimension(rim, wall, words.clearance(wood, unit), mm_per_pixel)


def _beside(at: Vec2, others: list[Vec2]) -> list[Vec2]:
    """The nearest point towards the nut and the nearest towards the tip."""
    found = [min((p for p in others if (p[1] - at[1]) * way > 0), key=lambda p: math.dist(at, p), default=None)
             for way in (-1, 1)]
    return [p for p in found if p is not None]


def _radius(layout: Headstock, id: str) -> float:
    """Radius of the widest bore about the point itself, mm."""
    for tuner in layout.tuners:
        if tuner.id == id:
            pattern = layout.pattern(tuner.pattern)
            return max((bore.diameter / 2 for bore in pattern.bores if bore.at == (0.0, 0.0)), default=0.0)
    return next(one.diameter for one in (*layout.pins, *layout.holes) if one.id == id) / 2


def _along(layout: Headstock, tuner: Tuner) -> tuple[str, float]:
    try:
        return along_edge(layout, tuner.id) or ("", 0.0)
    except GeometryError:
        return ("", 0.0)
