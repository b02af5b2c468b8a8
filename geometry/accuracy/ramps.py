"""Clearances of ramps: drillings below and beside them, the outline beside them, the nut before them and the back or floor below."""

from __future__ import annotations

from collections import defaultdict

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace

from geometry import vectors as v
from geometry.accuracy.built import Built, Model, RampErrors
from geometry.accuracy.chords import Chords, inside
from geometry.accuracy.ramp_built import LEAST, FiledRamp, ramp_of
from geometry.accuracy.rods import Array, Rod
from geometry.accuracy.spec import FAINT, Only, Reach, Spec
from geometry.accuracy.wedges import from_the_face, wedge_gap
from geometry.checks.hole_walls import wanted_to_slot
from geometry.checks.items import plan
from geometry.checks.ramp_edges import BESIDE
from geometry.checks.ramp_walls import in_the_rail, look_at
from geometry.checks.side_walls import first_on_the_way
from geometry.checks.snags import BACK, NUT, short
from geometry.checks.words import sort_of
from geometry.layout.names import OUTLINE
from geometry.layout.slots import StraightSlot
from geometry.solids.drilling import Drilling
from geometry.solids.ramp_gap import from_ramp
from geometry.solids.ramps import RampCut, below, last_wood
from geometry.solids.walls import Wall
from geometry.strings.ramps import NUT_AIR
from geometry.tolerance import ALONG_NUT
from geometry.vectors import Vec2, Vec3


class _InRail(Struct, frozen=True):
    """What a side bore is measured with of the ramp of its own slot: what is wider than the slot on one side, by a drilling up to the slot."""

    side: float
    """1 to the left of the ramp's axis, -1 to its right"""
    wider: float
    """mm there, as meant; the ramp's mark takes more of one rail and less of the other"""
    enters: float
    """mm from the seat to the slot, as meant: the drilling is too level there for what the wall strays by to count"""
    mark: int

    def of(self, built: Built, rod: Rod, ramp: FiledRamp) -> tuple[Rod, FiledRamp]:
        """The drilling up to its slot, and what of the ramp lies over that rail."""
        wide = np.maximum(self.wider + self.side * built.row(self.mark), LEAST)
        start = ramp.place(0.0, self.side * (ramp.half - wide / 2))
        return replace(rod, length=np.minimum(rod.length, self.enters)), replace(ramp, start=start, half=wide / 2)


class _Part(Struct, frozen=True):
    """A drilling beside a ramp; `way` is the nominal way apart in the ramp's frame."""

    index: int
    from_face: bool
    way: Vec3
    rail: _InRail | None = None

    def gap(self, built: Built, ramp: FiledRamp) -> Array:
        """(n,) mm."""
        rod = built.rod(self.index)
        if self.rail is not None:
            rod, ramp = self.rail.of(built, rod, ramp)
        return (from_the_face if self.from_face else wedge_gap)(ramp.rod(rod), ramp, self.way)


class _FromRamp(Struct, frozen=True):
    """Drillings of one hole to a ramp."""

    ramp: str
    parts: tuple[_Part, ...]

    def __call__(self, built: Built) -> Array:
        ramp = ramp_of(built, self.ramp)
        return np.minimum.reduce([part.gap(built, ramp) for part in self.parts])


class _Beside(Struct, frozen=True):
    """Wood between a ramp and the outline: corners of the ramp to chords, corners of the outline to the ramp's sides."""

    ramp: str
    corners: tuple[tuple[int, Chords], ...]
    points: tuple[Vec2, ...]
    follow: int

    def __call__(self, built: Built) -> Array:
        ramp = ramp_of(built, self.ramp)
        corners = ramp.corners
        found = [inside(chords, *built.on_template(*corners[k])) for k, chords in self.corners]
        found += [ramp.aside(*ramp.seen(*built.off_template(*point))) for point in self.points]
        return np.minimum.reduce(found) + built.row(self.follow)


class _Before(Struct, frozen=True):
    """Flat face between the nut line, which is marked on the wood, and a ramp."""

    ramp: str
    n: Vec2
    """the way square to the nut line"""

    def __call__(self, built: Built) -> Array:
        return np.minimum(*(self.n[0] * x + self.n[1] * y for x, y in ramp_of(built, self.ramp).corners[:2]))


class _Below(Struct, frozen=True):
    """Wood between a ramp and the back where it is least: beside the round end of a straight slot, at a fixed place of a drawn one.

    `radius` of that round end, 0 where there is none; `before` its lower end (mm) the last wood of a drawn slot lies.
    """

    ramp: str
    thickness: float
    radius: float
    before: float
    follow: int

    def __call__(self, built: Built) -> Array:
        ramp, before = ramp_of(built, self.ramp), self.before
        if self.radius:
            radius = self.radius + built.row(self.follow)
            before = np.sqrt(np.maximum(0.0, radius ** 2 - np.minimum(ramp.half, radius) ** 2))
        return self.thickness - (ramp.reach - before) * ramp.slope


class _OverFloor(Struct, frozen=True):
    """How much deeper the floor of a blind slot lies than the lower end of its ramp; each is measured from the face."""

    nominal: float
    floor: int
    stop: int

    def __call__(self, built: Built) -> Array:
        return self.nominal + built.row(self.floor) - built.row(self.stop)


def ramp_edge_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every ramp to the outline, the nut line and the back that can come under what is wanted, and to its slot's floor."""
    return [spec for id, ramp in model.ramps.items() if only is None or id in only
            for spec in _outline(model, reach, ramp) + _nut(model, reach, ramp) + _depth(model, reach, ramp)]


def drilling_ramp_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every hole to every ramp that can come under a margin; of a hole the worst drilling."""
    return [spec for ramp in model.ramps.values() for spec in _drillings(model, reach, ramp, only)]


def _outline(model: Model, reach: Reach, ramp: RampErrors) -> list[Spec]:
    shape, outline = Wall(ramp.cut.path()), model.scene.outline
    whole = Chords.of(outline)
    # What lies at the nut line is the other clearance's.
    ahead = np.array(model.scene.layout.nut.ahead)
    chords = whole.picked(np.maximum(whole.a @ ahead, whole.b @ ahead) > ALONG_NUT)
    if not len(chords) or not shapely.intersects(shape.area, outline.area):
        return []
    far, strays = shapely.distance(chords.lines, shape.area), reach.ramps + reach.wall
    least = float(far.min())
    if least - strays > BESIDE + FAINT:
        return []
    corners = []
    for k, corner in enumerate(_corners(ramp.cut)):
        mine = chords.beside(corner, strays)
        if mine.far[0] <= least + 2 * strays + FAINT or least <= 0:
            corners.append((k, mine))
    points = np.unique(np.concatenate([chords.a, chords.b]), axis=0)
    points = points[points @ ahead > ALONG_NUT]
    near = points[shapely.distance(shapely.points(points), shape.area) <= least + 2 * strays + FAINT]
    (x, y), (u, w) = shapely.shortest_line(chords.lines[int(np.argmin(far))], shape.area).coords
    template = model.template
    rows = {*_rows(model, ramp), template.outline}
    return [Spec("ramp-to-outline", (ramp.opening.id, OUTLINE), (), ((x + u) / 2, (y + w) / 2, 0.0), BESIDE,
                 tuple(sorted(rows)),
                 _Beside(ramp.opening.id, tuple(corners), tuple(map(tuple, near.tolist())), template.outline), corner=True)]


def _nut(model: Model, reach: Reach, ramp: RampErrors) -> list[Spec]:
    nut = model.scene.layout.nut
    low = min(_corners(ramp.cut)[:2], key=nut.before)
    if nut.before(low) - reach.ramps > NUT_AIR + FAINT:
        return []
    return [Spec("ramp-to-nut", (ramp.opening.id, NUT), (), (*low, 0.0), NUT_AIR, tuple(sorted(_rows(model, ramp))),
                 _Before(ramp.opening.id, nut.ahead))]


def _depth(model: Model, reach: Reach, ramp: RampErrors) -> list[Spec]:
    """The wood to the back; of a blind slot also what is left to its floor, where the back has its wood: so the checks tell it."""
    opening, cut, thickness, cover = ramp.opening, ramp.cut, model.scene.layout.blank.thickness, model.scene.layout.margins.side_cover
    at = (*v.along(cut.start, cut.axis, cut.length), cut.depth)
    specs = []
    if thickness - cut.reach * cut.slope - reach.ramps <= cover + FAINT:
        shape, last = opening.slot.shape, last_wood(opening.slot, cut, opening.wall)
        radius = shape.width / 2 if isinstance(shape, StraightSlot) else 0.0
        specs.append(Spec("ramp-too-deep", (opening.id, BACK), (), at, cover, tuple(sorted(_rows(model, ramp))),
                          _Below(opening.id, thickness, radius, cut.reach - last, ramp.follow)))
    floor = model.template.floors.get(opening.id)
    if (floor is not None and not opening.slot.through(thickness)
            and not short(below(opening.slot, cut, opening.wall, thickness), cover)):
        specs.append(Spec("ramp-too-deep", (opening.id,), (), at, 0.0, tuple(sorted((floor, ramp.stop))),
                          _OverFloor(opening.depth - cut.depth, floor, ramp.stop), spoils=False))
    return specs


def _drillings(model: Model, reach: Reach, ramp: RampErrors, only: Only) -> list[Spec]:
    cut, opening, margins = ramp.cut, ramp.opening, model.scene.layout.margins
    taken = shapely.Polygon(_corners(cut))
    groups: dict[tuple[str, float], list[tuple[float, _Part]]] = defaultdict(list)
    for i, recipe in enumerate(model.recipes):
        d, owner = recipe.drilling, model.owners[i]
        if owner.what == "pin" or (only is not None and d.of not in only):
            continue
        needed, strays = wanted_to_slot(d, margins), float(reach.rods[i]) + reach.ramps
        if shapely.LineString([plan(d.start), plan(d.end)]).distance(taken) - d.radius - strays > needed + FAINT:
            continue
        if sort_of(d) == "side bore" and first_on_the_way(d, d.depth, model.scene.openings) is opening:
            found = [(rail, strip, _InRail(side, 2 * strip.half, rail.depth, ramp.mark[1]))
                     for side, (rail, strip) in zip((1.0, -1.0), in_the_rail(d, opening, cut), strict=False)]
            strays += reach.wall
        else:
            found = [(d, cut, None)]
        for one, wedge, rail in found:
            out = from_ramp(one, wedge)
            if -out.depth - strays <= needed + FAINT:
                groups[d.hole, needed].append((-out.depth, _Part(i, _open(d), _seen(cut, out.way), rail)))
    specs = []
    for (hole, needed), own in groups.items():
        d = model.recipes[min(own, key=lambda one: one[0])[1].index].drilling
        parts = tuple(part for _, part in own)
        rows = _rows(model, ramp) | {row for part in parts for row in model.rows_of(part.index)}
        specs.append(Spec("hole-to-ramp", (d.of, opening.id), (hole,), look_at(d, cut), needed, tuple(sorted(rows)),
                          _FromRamp(opening.id, parts)))
    return specs


def _open(d: Drilling) -> bool:
    """Whether a drilling begins at the face, as a ramp does."""
    return d.upright and d.direction[2] > 0


def _seen(cut: RampCut, way: Vec3) -> Vec3:
    """A direction in the ramp's frame."""
    return v.dot(way[:2], cut.axis), v.cross(cut.axis, way[:2]), way[2]


def _corners(cut: RampCut) -> list[Vec2]:
    """As FiledRamp.corners."""
    return [cut.corner(0.0, -1.0), cut.corner(0.0, 1.0), cut.corner(cut.reach, 1.0), cut.corner(cut.reach, -1.0)]


def _rows(model: Model, ramp: RampErrors) -> set[int]:
    """Rows of all errors that move a ramp."""
    return {*ramp.paper, *ramp.mark, ramp.stop, ramp.follow, *model.template.paper, *model.template.place}
