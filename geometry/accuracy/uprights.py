"""Clearances of drillings square to the face: to the slots, to the outline, and the wood under blind ones."""

from __future__ import annotations

from collections import defaultdict

import numpy as np
from msgspec import Struct

from geometry.accuracy.built import Built, Model
from geometry.accuracy.chords import Chords, inside
from geometry.accuracy.rods import Array
from geometry.accuracy.spec import FAINT, InBlank, Only, Reach, Spec
from geometry.checks.hole_walls import wanted_to_outline, wanted_to_slot
from geometry.checks.items import plan
from geometry.checks.kinds import outline_kind, slot_kind
from geometry.checks.scene import Opening
from geometry.checks.words import is_small, sort_of
from geometry.layout.names import OUTLINE
from geometry.vectors import Vec2, Vec3


class _ToSlot(Struct, frozen=True):
    """Drillings of one hole to one slot: the least of them, at the nearer end of a leaning axis."""

    parts: tuple[tuple[int, Chords], ...]
    follow: int
    depth: float
    floor: int | None

    def __call__(self, built: Built) -> Array:
        return np.minimum.reduce([self._one(built, index, chords) for index, chords in self.parts])

    def _one(self, built: Built, index: int, chords: Chords) -> Array:
        rod = built.rod(index)
        aside = -_deepest(built, index, chords) - rod.radius - built.row(self.follow)
        if not np.isfinite(self.depth) or built.model.recipes[index].drilling.direction[2] > 0:
            # Through the slot, or open at the face as the slot is: no way out leads below its floor.
            return aside
        floor = self.depth + (0.0 if self.floor is None else built.row(self.floor))
        above = np.minimum(rod.start[2], rod.start[2] + rod.axis[2] * rod.length) - floor
        round_the_corner = np.hypot(np.maximum(aside, 0.0), np.maximum(above, 0.0))
        return round_the_corner + np.minimum(np.maximum(aside, above), 0.0)


class _ToOutline(Struct, frozen=True):
    """Drillings of one hole to the outline. A pin may stand in the waste: it keeps clear on its own side."""

    parts: tuple[tuple[int, Chords], ...]
    follow: int
    side: float
    """1 in the wood, -1 in the waste"""

    def __call__(self, built: Built) -> Array:
        grown = built.row(self.follow)
        found = []
        for index, chords in self.parts:
            rod = built.rod(index)
            ends = _ends(built, index)
            found.append(np.minimum(*(self.side * (inside(chords, *end) + grown) for end in ends)) - rod.radius)
        return np.minimum.reduce(found)


class _Under(Struct, frozen=True):
    """Wood between the bottom of a blind drilling (with its point, mm) and the other face."""

    index: int
    thickness: float
    point: float

    def __call__(self, built: Built) -> Array:
        rod = built.rod(self.index)
        return self.thickness - rod.length * np.abs(rod.axis[2]) - self.point


def upright_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Clearances of every upright drilling that can come under a margin."""
    groups: dict[str, list[int]] = defaultdict(list)
    for i, recipe in enumerate(model.recipes):
        if recipe.drilling.upright and (only is None or recipe.drilling.of in only):
            groups[recipe.drilling.hole].append(i)
    specs: list[Spec] = []
    for group in groups.values():
        specs += _outline(model, reach, group)
        for opening in model.scene.openings:
            specs += _slot(model, reach, group, opening)
        specs += _under(model, reach, group)
    return specs


def _slot(model: Model, reach: Reach, group: list[int], opening: Opening) -> list[Spec]:
    margins = model.scene.layout.margins
    specs = []
    if opening.there and all(model.recipes[i].drilling.there for i in group):
        return specs
    for needed, own in _by_margin(model, group, lambda d: wanted_to_slot(d, margins)):
        parts, nominal = [], []
        for i in own:
            d = model.recipes[i].drilling
            aside = -float(opening.wall.about(np.array([plan(d.start)]))[0]) - d.radius
            above = max(0.0, min(d.start[2], d.end[2]) - opening.depth)
            least = aside if not above else float(np.hypot(max(aside, 0.0), above))
            if least - reach.rods[i] - reach.wall <= needed + FAINT:
                parts.append((i, _beside(opening.wall, plan(d.start), reach, i)))
                nominal.append((least, i))
        if parts:
            d = model.recipes[min(nominal)[1]].drilling
            foot = opening.wall.foot(plan(d.start)).point
            template = model.template
            floor = template.floors.get(opening.id)
            rows = {*_rows(model, parts), *template.paper, *template.place, template.slots[opening.id]}
            rows |= set() if floor is None else {floor}
            measure = _ToSlot(tuple(parts), template.slots[opening.id], opening.depth, floor)
            if opening.there:
                rows, measure = _rows(model, parts), InBlank(measure)
            specs.append(Spec(slot_kind(sort_of(d)), (d.of, opening.id), (d.hole,),
                              (*foot, (d.start[2] + d.end[2]) / 2), needed, tuple(sorted(rows)), measure))
    return specs


def _outline(model: Model, reach: Reach, group: list[int]) -> list[Spec]:
    margins = model.scene.layout.margins
    wall = model.scene.outline
    template = model.template
    specs = []
    for needed, own in _by_margin(model, group, lambda d: wanted_to_outline(d, margins)):
        parts, nominal = [], []
        for i in own:
            d = model.recipes[i].drilling
            depth = float(wall.about(np.array([plan(d.start)]))[0])
            side = -1.0 if d.waste_too and depth < 0 else 1.0
            least = side * depth - d.radius
            if least - reach.rods[i] - reach.wall <= needed + FAINT:
                parts.append((i, _beside(wall, plan(d.start), reach, i)))
                nominal.append((least, i, side))
        if parts:
            _, i, side = min(nominal)
            d = model.recipes[i].drilling
            rows = {*_rows(model, parts), *template.paper, *template.place, template.outline}
            specs.append(Spec(outline_kind(sort_of(d)), (d.of, OUTLINE), (d.hole,),
                              (*wall.foot(plan(d.start)).point, d.start[2]), needed, tuple(sorted(rows)),
                              _ToOutline(tuple(parts), template.outline, side)))
    return specs


def _under(model: Model, reach: Reach, group: list[int]) -> list[Spec]:
    """Blind counterbores, clearance bores, screws, pins and single holes; a post bore has to come through anyway."""
    margins, thickness = model.scene.layout.margins, model.scene.layout.blank.thickness
    specs = []
    for i in group:
        d = model.recipes[i].drilling
        if d.through or d.role in ("post", "locating"):
            continue
        small = is_small(d)
        needed = margins.screw_any if small else margins.side_cover
        point = model.scene.drills.point(d) if small or d.role == "hole" and not d.there else 0.0
        if thickness - d.depth - point - reach.rods[i] > needed + FAINT:
            continue
        far = "back" if d.surface == "face" else "face"
        where: Vec3 = (*plan(d.start), thickness if far == "back" else 0.0)
        specs.append(Spec("too-deep", (d.of, far), (d.hole,), where, needed, model.rows_of(i),
                          _Under(i, thickness, point)))
    return specs


def _by_margin(model: Model, group: list[int], wanted) -> list[tuple[float, list[int]]]:
    """The drillings of a hole by the margin that they want."""
    found: dict[float, list[int]] = defaultdict(list)
    for i in group:
        found[wanted(model.recipes[i].drilling)].append(i)
    return list(found.items())


def _beside(wall, centre: Vec2, reach: Reach, index: int) -> Chords:
    return Chords.of(wall).beside(centre, float(reach.rods[index]) + reach.template)


def _rows(model: Model, parts: list[tuple[int, Chords]]) -> set[int]:
    return {row for i, _ in parts for row in model.rows_of(i)}


def _ends(built: Built, index: int) -> tuple[tuple[Array, Array], ...]:
    """Both ends of an axis in plan, as the template sees them; what several walls ask for is made once."""
    key = ("ends", index)
    if key not in built.known:
        rod = built.rod(index)
        far = rod.at(rod.length)
        built.known[key] = (built.on_template(rod.start[0], rod.start[1]), built.on_template(far[0], far[1]))
    return built.known[key]


def _deepest(built: Built, index: int, chords: Chords) -> Array:
    """How deep an axis comes inside a wall, at the end that comes deeper."""
    return np.maximum(*(inside(chords, *end) for end in _ends(built, index)))
