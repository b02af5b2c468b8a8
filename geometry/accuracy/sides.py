"""Clearances of drillings from the side: wood to face and back, slots beside them, the outline beyond their mouth."""

from __future__ import annotations

import math

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace

from geometry.accuracy.built import Built, Model
from geometry.accuracy.chords import Chords, Strip, aside_of, stretch, strip_gap
from geometry.accuracy.rods import Array
from geometry.accuracy.slot_out import StraightOut
from geometry.accuracy.sources import deviation
from geometry.accuracy.spec import FAINT, InBlank, Only, Reach, Spec
from geometry.by_size import of_wall, remembered_by_size
from geometry.checks.far_arms import far_arm
from geometry.checks.hole_walls import wanted_to_outline, wanted_to_slot
from geometry.checks.items import plan
from geometry.checks.kinds import outline_kind, slot_kind
from geometry.checks.scene import Opening
from geometry.checks.side_walls import first_on_the_way
from geometry.checks.words import is_small, sort_of
from geometry.layout import StraightSlot
from geometry.layout.names import OUTLINE
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall, oblong
from geometry.vectors import Vec2

_CHORD = 1.0
"""mm: the outline is looked at in pieces no longer than this where a mouth is cut out of it"""
_DOT = 0.3
"""mm between the points of a blind slot's rim that are measured from below"""
_MOUTH_TURN = math.cos(math.radians(60))
"""A mouth ends where the outline has turned by 60 degrees, as in the checks."""
_FAR = 12.0
"""Standard deviations beyond which a mouth cannot be mistaken for a wall beside the bore"""


class _Cover(Struct, frozen=True):
    """Wood between a drilling and the face (level 0) or the back (level = thickness)."""

    index: int
    thickness: float
    face: bool

    def __call__(self, built: Built) -> Array:
        rod = built.rod(self.index)
        flank = rod.radius * np.sqrt(np.maximum(1.0 - rod.axis[2] ** 2, 0.0))
        first, last = rod.start[2], rod.start[2] + rod.axis[2] * rod.length
        return (np.minimum(first, last) if self.face else self.thickness - np.maximum(first, last)) - flank


class _ToWall(Struct, frozen=True):
    """A drilling seen from the face against a wall at its height. side: -1 for a slot, 1 for the outline.

    `across` is of the wall of a drawn slot that the drilling's axis runs into what it may meet, and what may lie farthest to either
    side of it: however near its end is to a wall then, what is too much is the least way out, back or on along the axis or aside.
    `slot` is a straight slot: what is too much is the least way out of it, as the checks have it, below its floor (its
    depth and the row of its error) too.
    """

    index: int
    corners: tuple[tuple[int, Chords, Chords | None], ...]
    points: tuple[Vec2, ...]
    follow: int
    side: float
    across: tuple[Chords, Chords] | None = None
    slot: StraightOut | None = None
    floor: tuple[float, int] | None = None

    def __call__(self, built: Built) -> Array:
        strip = strip_of(built, self.index)
        gap = strip_gap(strip, self.corners, self.points, self.side)
        if self.slot is not None:
            return self._out_of_slot(built, strip, gap + self.side * built.row(self.follow))
        if self.across is not None:
            met, beside = self.across
            enters, leaves = stretch(met, strip.x, strip.y, strip.dx, strip.dy)
            out = np.minimum.reduce([strip.length - enters, leaves, aside_of(beside, strip)])
            gap = np.where(enters < strip.length, np.minimum(gap, -out), gap)
        return gap + self.side * built.row(self.follow)

    def _out_of_slot(self, built: Built, strip: Strip, gap: Array) -> Array:
        """`gap` with the least way out of a straight slot in the trials in which the drilling lies in it."""
        grown = built.row(self.follow)
        into = np.flatnonzero(self.slot.shift(strip, grown) > 0)
        if into.size:
            under = None
            if self.floor is not None:
                rod = built.rod(self.index)
                top = np.minimum(rod.start[2], rod.start[2] + rod.axis[2] * rod.length)
                under = (self.floor[0] + built.row(self.floor[1]) - top)[into]
            gap = gap.copy()
            gap[into] = -self.slot.out(strip.picked(into), grown[into], under)
        return gap


class _UnderSlot(Struct, frozen=True):
    """A drilling below the floor of a blind slot, measured from points of the floor's rim."""

    index: int
    points: tuple[Vec2, ...]
    follow: int
    depth: float
    floor: int
    slot: StraightOut | None = None
    """a straight slot, of which the least way out is known where a drilling lies in it"""

    def __call__(self, built: Built) -> Array:
        rod, strip = built.rod(self.index), strip_of(built, self.index)
        height = (np.minimum(rod.start[2], rod.start[2] + rod.axis[2] * rod.length)
                  - self.depth - built.row(self.floor))
        grown = built.row(self.follow)
        best = np.full(built.trials, np.inf)
        seen = []
        for px, py in self.points:
            wx, wy = px - strip.x, py - strip.y
            along = wx * strip.dx + wy * strip.dy
            seen.append((np.abs(wx * strip.dy - wy * strip.dx), np.maximum(-along, along - strip.length)))
        # A slot that came out smaller is farther away, but not from an axis that runs below its rim.
        over = np.logical_or.reduce([(across <= _DOT) & (beyond <= _DOT) for across, beyond in seen])
        nearer = np.where(over, np.maximum(grown, 0.0), grown)
        for across, beyond in seen:
            across, beyond = np.maximum(across - nearer, 0.0), np.maximum(beyond - nearer, 0.0)
            # An axis that strays above the floor has to sink by that much too.
            deep = np.hypot(across, np.maximum(height, 0.0)) - rod.radius
            deep = np.where(deep < 0, deep + np.minimum(height, 0.0), deep)
            best = np.minimum(best, np.hypot(beyond, np.maximum(deep, 0.0)) + np.minimum(deep, 0.0) * (beyond <= 0))
        if self.slot is not None:
            into = np.flatnonzero((height < rod.radius) & (self.slot.shift(strip, grown) > 0))
            best[into] = np.minimum(-self.slot.out(strip.picked(into), grown[into], -height[into]), 0.0)
        return best


def strip_of(built: Built, index: int) -> Strip:
    """A level drilling seen from the face, as the template sees it."""
    key = ("strip", index)
    if key not in built.known:
        rod = built.rod(index)
        far = rod.at(rod.length)
        x, y = built.on_template(rod.start[0], rod.start[1])
        to_x, to_y = built.on_template(far[0], far[1])
        dx, dy = to_x - x, to_y - y
        length = np.hypot(dx, dy)
        built.known[key] = Strip(x, y, dx / length, dy / length, length, rod.radius)
    return built.known[key]


def side_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every drilling from the side that can come under a margin."""
    specs: list[Spec] = []
    for i, recipe in enumerate(model.recipes):
        if not recipe.drilling.upright and (only is None or recipe.drilling.of in only):
            specs += _covers(model, reach, i) + _outline(model, reach, i)
            for opening in model.scene.openings:
                specs += _slot(model, reach, i, opening)
    return specs


def _covers(model: Model, reach: Reach, i: int) -> list[Spec]:
    layout, d = model.scene.layout, model.recipes[i].drilling
    needed = layout.margins.screw_any if is_small(d) else layout.margins.side_cover
    thickness, specs = layout.blank.thickness, []
    for side, level, wood in (("face", 0.0, d.start[2]), ("back", thickness, thickness - d.start[2])):
        if wood - d.radius - reach.rods[i] <= needed + FAINT:
            middle = tuple((a + b) / 2 for a, b in zip(plan(d.start), plan(d.end), strict=True))
            specs.append(Spec("cover", (d.of, side), (d.hole,), (*middle, level), needed, model.rows_of(i),
                              _Cover(i, thickness, side == "face")))
    return specs


def _slot(model: Model, reach: Reach, i: int, opening: Opening) -> list[Spec]:
    """A slot that the drilling should keep clear of; a side bore may enter the one that it runs into first, up to its inner wall."""
    d, template = model.recipes[i].drilling, model.template
    needed = wanted_to_slot(d, model.scene.layout.margins)
    strays = float(reach.rods[i]) + reach.wall
    if sort_of(d) == "side bore" and first_on_the_way(d, d.depth, model.scene.openings) is opening:
        opening = far_arm(d, d.depth + needed + strays, needed + strays, opening)
        if opening is None:
            return []
    shape = _seen(d)
    below = d.start[2] - opening.depth
    aside = shapely.distance(shape, opening.wall.area)
    if (aside if below <= 0 else max(math.hypot(aside, below) - d.radius, 0.0)) - strays > needed + FAINT:
        return []
    row, floor = template.slots[opening.id], template.floors.get(opening.id)
    rows = {*model.rows_of(i), *template.paper, *template.place, row}
    straight = opening.slot.shape
    straight_out = (StraightOut(straight.nut_end, straight.tip_end, straight.width / 2)
                    if isinstance(straight, StraightSlot) else None)
    if below > 0:
        rim = shapely.get_coordinates(shapely.segmentize(opening.wall.line, _DOT))[:-1]
        measure = _UnderSlot(i, _points_near(rim, shape, aside + d.radius + below + strays), row, opening.depth, floor,
                             straight_out)
        rows.add(floor)
    else:
        measure = _wall(i, Chords.of(opening.wall), shape, float(reach.rods[i]) + reach.template, row, -1.0)
        if straight_out is not None:
            measure = replace(measure, slot=straight_out, floor=None if floor is None else (opening.depth, floor))
            rows |= set() if floor is None else {floor}
        elif shapely.intersects(opening.wall.area, shapely.LineString([plan(d.start), plan(d.end)])):
            chords, off = Chords.of(opening.wall), float(reach.rods[i]) + reach.template
            measure = replace(measure, across=(chords.ahead(plan(d.start), plan(d.direction), off, 4 * off / d.depth),
                                               chords.flanking(plan(d.start), plan(d.direction), d.depth, d.radius, off)))
    where, corner = shapely.shortest_line(shape, opening.wall.area).coords[-1], measure.slot is None
    if opening.there:
        rows, measure = set(model.rows_of(i)), InBlank(measure)
    return [Spec(slot_kind(sort_of(d)), (d.of, opening.id), (d.hole,), (*where, d.start[2]), needed,
                 tuple(sorted(rows)), measure, corner=corner)]


def _outline(model: Model, reach: Reach, i: int) -> list[Spec]:
    d, template = model.recipes[i].drilling, model.template
    needed = wanted_to_outline(d, model.scene.layout.margins)
    rest = _beyond_mouth(model, d, needed)
    if not len(rest):
        return []
    shape = _seen(d)
    beside = rest.a - np.array(plan(d.start))
    if np.hypot(beside[:, 0], beside[:, 1]).min() - _CHORD - d.depth - d.radius - reach.rods[i] - reach.wall > needed:
        return []
    lines = rest.lines
    far = shapely.distance(lines, shape)
    if far.min() - reach.rods[i] - reach.wall > needed + FAINT:
        return []
    nearest = shapely.shortest_line(shape, lines[int(np.argmin(far))]).coords[-1]
    rows = {*model.rows_of(i), *template.paper, *template.place, template.outline}
    return [Spec(outline_kind(sort_of(d)), (d.of, OUTLINE), (d.hole,), (*nearest, d.start[2]), needed,
                 tuple(sorted(rows)), _wall(i, rest, shape, float(reach.rods[i]) + reach.template,
                                            template.outline, 1.0, Chords.of(model.scene.outline)), corner=True)]


def _wall(i: int, chords: Chords, shape: shapely.Geometry, strays: float, row: int,
          side: float, whole: Chords | None = None) -> _ToWall:
    """The parts of a wall that may be nearest: chords beside the far corners (a slot: beside all), and points."""
    corners = shapely.get_coordinates(shape)[:4]
    most = float(shapely.distance(chords.lines, shape).min())
    # oblong() runs start right, end right, end left, start left of the way in; Strip.corners() begin far left.
    order = (2, 1, 3, 0) if side < 0 else (2, 1)
    near = []
    for corner, at in enumerate(order):
        spot = tuple(corners[at].tolist())
        mine = chords.beside(spot, strays)
        if mine.far[0] <= most + 2 * strays + FAINT:
            near.append((corner, mine, None if whole is None else whole.beside(spot, strays)))
    return _ToWall(i, tuple(near), _points_near(np.concatenate([chords.a, chords.b]), shape,
                                                most + 2 * strays + FAINT), row, side)


def _points_near(points: np.ndarray, shape: shapely.Geometry, within: float) -> tuple[Vec2, ...]:
    unique = np.unique(points, axis=0)
    return tuple(map(tuple, unique[shapely.distance(shapely.points(unique), shape) <= within].tolist()))


def _seen(d: Drilling) -> shapely.Geometry:
    corners = oblong(plan(d.start), plan(d.direction), d.depth, d.radius)
    return shapely.Polygon([segment.start for segment in corners])


@remembered_by_size(16, of_wall)
def _dense(wall: Wall) -> np.ndarray:
    """(n, 2) points of a closed wall, no farther apart than _CHORD."""
    return shapely.get_coordinates(shapely.segmentize(wall.line, _CHORD))[:-1]


def _beyond_mouth(model: Model, d: Drilling, needed: float) -> Chords:
    """The outline without the drilling's own mouth, in pieces of at most _CHORD."""
    layout = model.scene.layout
    size = {source: deviation(layout.accuracy, source) for source in ("mark", "tilt", "wander", "template", "paper")}
    spare = _FAR * (size["mark"] + d.stop * (size["tilt"] + size["wander"]) + size["template"]
                    + size["paper"] * layout.blank.tip)
    half = d.radius + needed + spare + FAINT
    points = _dense(model.scene.outline)
    after = np.roll(points, -1, axis=0)
    steps = after - points
    across = np.array([d.direction[1], -d.direction[0]])
    aside = (points - np.array(plan(d.start))) @ across
    heading = (steps @ across) / np.maximum(np.hypot(steps[:, 0], steps[:, 1]), 1e-300)
    mouth = int(np.argmin(np.hypot(*(points - np.array(plan(d.start))).T)))
    lead = max(heading[mouth - 1], heading[mouth], key=abs)
    own = (heading * (1.0 if lead >= 0 else -1.0) > _MOUTH_TURN)
    count = len(points)
    last = first = steps_gone = 0
    while steps_gone < count and own[(mouth + last) % count] and abs(aside[(mouth + last) % count]) < half:
        last, steps_gone = last + 1, steps_gone + 1
    while steps_gone < count and own[(mouth - first - 1) % count] and abs(aside[(mouth - first) % count]) < half:
        first, steps_gone = first + 1, steps_gone + 1
    rest = (mouth + last + np.arange(max(0, count - last - first))) % count
    return Chords(points[rest], after[rest])
