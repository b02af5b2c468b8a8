"""Which bits fit a slot: how wide it is where it is narrowest, and what a cutter leaves in its corners.

A disc fits where the slot shrunk by its radius is not empty, and passes where
that stays in one piece. Straight slots are answered in closed form; drawn ones
by polygon offsets of the wall flattened to FLAT mm.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

import shapely
from msgspec import Struct
from shapely.geometry import Polygon
from shapely.geometry.base import BaseGeometry

from geometry.by_size import of_slot, remembered_by_size
from geometry.curves import Arc, Cubic
from geometry.curves.blunted import blunted
from geometry.curves.polygons import grown, opened, parts, polygon
from geometry.layout.slots import Slot, StraightSlot, at_home, slot_path
from geometry.routing.follower import Follower
from geometry.routing.narrow_places import neck_width, necks_about, room_width
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT, QUAD_SEGS, TOUCH

WITHIN = 0.02
"""mm: how near a size of disc that is tried comes to one that is sought."""
HARDLY = 0.1
"""mm: a room that is wider than its neck by less may be taken for a corner, which keeps its wood."""

_CHORDS = 1.5 * FLAT
"""mm: how much nearer than the wall its chords may be to the middle of a disc"""
_SPECK = 1e-4
"""mm2: pieces smaller than this are rounding"""
_STEPS, _GRID = 8, 24
"""sizes of a disc that are tried first, up to the width of the slot: where it is known which may find a neck, and where not"""
_ANEW = 1.25
"""times wider than the last: a disc for which a saw's notches are filled anew"""


class Left(Struct, frozen=True):
    """Wood that a round cutter leaves in a slot's corners."""

    area: float
    """mm2"""
    depth: float
    """mm, the farthest that any of it reaches from where the cutter comes"""
    places: tuple[tuple[float, float], ...]
    """a point of each piece, largest first"""

    def no_corner(self, diameter: float) -> bool:
        """Whether some of it is more than a corner to a cutter (mm), as plans judge it: deeper than the cutter is wide."""
        return self.depth > diameter


def narrowest(slot: Slot) -> float:
    """Diameter in mm of the largest disc that passes everywhere in a slot: the largest bit that fits. Never too large.

    Measured on the exact wall; a room behind a neck counts where it is wider than that by HARDLY mm.
    GeometryError when the wall crosses itself.
    """
    return slot.shape.width if isinstance(slot.shape, StraightSlot) else _narrowest(at_home(slot)[0])


@remembered_by_size(64, of_slot)
def _narrowest(slot: Slot) -> float:
    return _exact(slot, *_about_narrowest(polygon(slot_path(slot))))


def passes_below(slot: Slot, diameter: float) -> float:
    """Diameter in mm of the largest disc that passes in a drawn slot and is slimmer than one that does not; never too large.

    It may be far below narrowest(): a disc that is too wide for a small room behind a neck passes again, without that room.
    """
    area = polygon(slot_path(slot))
    low, high = _between(partial(passes, area), 0.0, diameter)
    return _exact(slot, low, high, blunted(area, -_radius(low)))


def _exact(slot: Slot, low: float, high: float, area: BaseGeometry) -> float:
    """The diameter in mm at which a disc just passes, on the exact wall; by chords one of `low` does and one of `high` does not."""
    wall, rooms = Wall(slot_path(slot)), _rooms_of(area, high)
    if len(rooms) > 1:
        width = neck_width(wall, rooms)
    else:
        place = max(_rooms_of(area, low), key=lambda room: room.area, default=area).representative_point()
        width = room_width(wall, (place.x, place.y))
    # By chords it may seem so much too wide; where the two disagree by more, what is sure by chords alone.
    sure = low - 2 * _CHORDS - 2 * FLAT - low / 2000
    return width if sure <= width <= high + WITHIN else max(0.0, sure)


def _about_narrowest(area: Polygon) -> tuple[float, float, BaseGeometry]:
    """(a diameter at which a disc passes everywhere, one hardly larger at which none does, an area in which both do as in the given one)."""
    whole, before, done, ready = area, area, 0.0, 0.0
    x0, y0, x1, y1 = area.bounds
    widest = min(x1 - x0, y1 - y0)
    low, high = 0.0, widest
    necks = necks_about(whole, WITHIN / 5)
    tries, seem, steps = ([], [], _GRID) if necks is None else (*necks, _STEPS)
    for step in range(1, steps + 1):
        trial = widest * step / steps
        if trial >= _ANEW * ready:
            before, done = area, ready
            area, ready = blunted(area, -_radius(trial), _radius(ready)), trial
        if _rooms(area, trial) != 1:
            high = trial
            break
        low = trial
    if ready > low:
        area, ready = before, done
    for trial in tries:
        if trial < low and pieces(whole, trial) != 1:
            # What passes below it is not known but by trying: halving ends at a size that does, just below one that does not.
            low, high, area, ready = 0.0, trial, whole, 0.0
            break
    area = blunted(area, -_radius(low), _radius(ready))
    for width in seem:
        for trial in (width + WITHIN, width - WITHIN):
            if low < trial < high:
                low, high = (trial, high) if _rooms(area, trial) == 1 else (low, trial)
        if width > low:
            break
    low, high = _between(lambda diameter: _rooms(area, diameter) == 1, low, high)
    return low, high, area


def _between(passes_at: Callable[[float], bool], low: float, high: float) -> tuple[float, float]:
    """A diameter at which a disc passes, and one hardly larger at which none does."""
    while high - low > WITHIN / 4:
        middle = (low + high) / 2
        low, high = (middle, high) if passes_at(middle) else (low, middle)
    return low, high


def passes(area: BaseGeometry, diameter: float) -> bool:
    """Whether a disc (mm) enters an area and passes everywhere in one piece, flattening allowed for."""
    return pieces(area, diameter) == 1


def pieces(area: BaseGeometry, diameter: float) -> int:
    """In how many separate places a disc's middle can be: 0, it does not enter; 2 or more, a neck keeps it out."""
    return _rooms(blunted(area, -_radius(diameter)), diameter)


def _rooms(area: BaseGeometry, diameter: float) -> int:
    return len(_rooms_of(area, diameter))


def _rooms_of(area: BaseGeometry, diameter: float) -> list[Polygon]:
    """The separate places in which a disc's middle can be."""
    room = shapely.buffer(area, -_radius(diameter), quad_segs=QUAD_SEGS)
    return [piece for piece in shapely.get_parts(room) if isinstance(piece, Polygon) and piece.area > _SPECK]


def _radius(diameter: float) -> float:
    """Of a disc that may be as wide as a place between two chords, mm."""
    return max(0.0, diameter / 2 - _CHORDS)


def enters(slot: Slot, area: BaseGeometry, diameter: float) -> int:
    """As pieces(), in closed form for a straight slot; a bit as wide as the slot fits (1e-6 mm)."""
    if isinstance(slot.shape, StraightSlot):
        return int(slot.shape.width >= diameter - TOUCH)
    found = pieces(area, diameter)
    if found != 1:
        return found
    # Chords allow for a little more than the wall does: where only a little more would pass, the wall itself is asked.
    wider = pieces(area, diameter + WITHIN)
    return found if wider == 1 or not narrowest(slot) + TOUCH < diameter < narrowest(slot) + WITHIN else wider


def tightest(slot: Slot) -> float:
    """Diameter in mm of the largest cutter that leaves nothing in any corner of a slot's wall.

    Twice the smallest radius of the wall where it curves round the slot; 0 at
    a sharp inner corner, infinite when the wall never curves inwards. GeometryError when it has no inside.
    """
    return _tightest(at_home(slot)[0])


@remembered_by_size(64, of_slot)
def _tightest(slot: Slot) -> float:
    path = slot_path(slot)
    if any(turn > 0 for _, turn in path.corners()):
        return 0.0
    sharpest = 0.0
    for segment in path:
        if isinstance(segment, Arc):
            sharpest = max(sharpest, segment.curvature(0.5))
        elif isinstance(segment, Cubic):
            sharpest = max(sharpest, _sharpest(segment))
    return 2 / sharpest if sharpest > 0 else math.inf


def wood_left(slot: Slot, area: BaseGeometry, diameter: float) -> Left | None:
    """What a cutter (mm) leaves standing in a slot's corners, None when that is nothing.

    Chords lie up to FLAT inside a curve on either side: a cutter exactly as wide as a slot still passes.
    """
    if isinstance(slot.shape, StraightSlot):
        return None
    reached, slim = opened(area, diameter / 2), opened(area, max(diameter / 2 - 2 * FLAT, TOUCH))
    if reached.is_empty:
        reached = slim
    found: list[tuple[Polygon, float]] = []
    for piece in parts(shapely.difference(area, reached)):
        rim = shapely.points(shapely.get_coordinates(piece))
        depth = math.inf if reached.is_empty else float(shapely.distance(rim, reached).max())
        # What a cutter slimmer by a hair does not leave is no corner, but the wall that the cutter just touches.
        if depth > 4 * FLAT and (slim.is_empty or shapely.distance(rim, slim).max() > 4 * FLAT):
            found.append((piece, depth))
    if not found:
        return None
    places = [piece.representative_point() for piece, _ in found]
    return Left(sum(piece.area for piece, _ in found), max(depth for _, depth in found),
                tuple((p.x, p.y) for p in places))


def template_spill(area: BaseGeometry, follower: Follower) -> tuple[float, tuple[float, float]] | None:
    """(mm2, place) of wood cut outside the slot because the follower rides over it; None when there is none.

    It happens where a tongue of wood between two parts of the slot is thinner
    than the growth of the template opening on both its sides.
    """
    if follower.offset <= 0:
        return None
    middle = grown(grown(area, follower.offset), -follower.diameter / 2)
    cut = grown(middle, follower.bit.cutter / 2)
    found = [piece for piece in parts(shapely.difference(cut, area))
             if shapely.distance(shapely.points(shapely.get_coordinates(piece)), area).max() > WITHIN]
    if not found:
        return None
    place = found[0].representative_point()
    return sum(piece.area for piece in found), (place.x, place.y)


def _sharpest(curve: Cubic) -> float:
    """Greatest left-hand curvature of a cubic in 1/mm: dense look, then a search about the best."""
    count = 64
    best = max(range(count + 1), key=lambda i: curve.curvature(i / count))
    low, high = max(0.0, (best - 1) / count), min(1.0, (best + 1) / count)
    for _ in range(60):
        a, b = low + (high - low) / 3, high - (high - low) / 3
        low, high = (a, high) if curve.curvature(a) < curve.curvature(b) else (low, b)
    return max(curve.curvature((low + high) / 2), curve.curvature(best / count), 0.0)
