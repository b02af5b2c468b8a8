"""Clearances of the slots themselves: rails, webs, the wood to the nut and below a blind slot.

Slots and outline come off one template on the same pins, so its place cancels
between them; what is left is how each wall was followed and the paper that the
template was cut from.
"""

from __future__ import annotations

from itertools import combinations

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.accuracy.built import Built, Model
from geometry.accuracy.pockets import overlap, play, pocket_rail, pocket_web
from geometry.accuracy.rods import Array
from geometry.accuracy.spec import FAINT, Only, Reach, Spec
from geometry.checks.scene import Opening, nut_line
from geometry.checks.slots import before_nut, beside_nut
from geometry.checks.snags import BACK, NUT
from geometry.layout.names import OUTLINE
from geometry.solids.slot_ways import into_outline
from geometry.vectors import Vec2


class _Strip(Struct, frozen=True):
    """Wood between two walls of one template, stretched by its paper across the strip (unit `n`)."""

    nominal: float
    n: Vec2
    stretch: tuple[int, int]
    grows: int | None
    """follower error of the wall that leaves more wood as it grows: the outline"""
    shrinks: tuple[int, ...]
    """follower errors of the walls that leave less: slots"""

    def __call__(self, built: Built) -> Array:
        across = self.n[0] ** 2 * built.row(self.stretch[0]) + self.n[1] ** 2 * built.row(self.stretch[1])
        wood = self.nominal * (1.0 + across)
        if self.grows is not None:
            wood = wood + built.row(self.grows)
        for row in self.shrinks:
            wood = wood - built.row(row)
        return wood


class _ToNut(Struct, frozen=True):
    """Wood between a slot and the nut line, which is marked on the wood; `n` is the way square to that line."""

    nominal: float
    n: Vec2
    stretch: tuple[int, int]
    shift: tuple[int, int]
    follow: int

    def __call__(self, built: Built) -> Array:
        stretch = self.n[0] ** 2 * built.row(self.stretch[0]) + self.n[1] ** 2 * built.row(self.stretch[1])
        shift = self.n[0] * built.row(self.shift[0]) + self.n[1] * built.row(self.shift[1])
        return (self.nominal * (1.0 + stretch) + shift) - built.row(self.follow)


class _UnderFloor(Struct, frozen=True):
    """Wood below the floor of a blind slot, whose depth strays with the router's stop."""

    nominal: float
    stop: int

    def __call__(self, built: Built) -> Array:
        return self.nominal - built.row(self.stop)


def opening_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """Rails, webs, nut clearances and floors that can come under their margin; a slot that crosses itself has none."""
    whole = [o for o in model.scene.openings if o.wall.crossing is None]
    asked = [o for o in whole if only is None or o.id in only]
    specs: list[Spec] = []
    for opening in asked:
        specs += pocket_rail(model, reach, opening) if opening.there else [
            *_rail(model, reach, opening), *_nut(model, reach, opening), *_floor(model, reach, opening)]
    for one, two in combinations(whole, 2):
        if (one in asked or two in asked) and not (one.there and two.there):
            specs += pocket_web(model, reach, one, two) if one.there else (
                pocket_web(model, reach, two, one) if two.there else _web(model, reach, one, two))
    return specs


def _rail(model: Model, reach: Reach, opening: Opening) -> list[Spec]:
    margins, outline, template = model.scene.layout.margins, model.scene.outline, model.template
    needed, inside = margins.rail, bool(shapely.covers(outline.area, opening.wall.area))
    beside = beside_nut(opening, outline, inside, margins, nut_line(model.scene.layout.nut.slant))
    if inside or beside is not None:
        nominal, p, q = outline.to(opening.wall) if beside is None else beside
        normal = v.unit(v.sub(p, q)) if nominal > 0 else (1.0, 0.0)
        where = v.middle(p, q)
    else:
        depths = outline.about(opening.wall.points)
        at = int(np.argmin(depths))
        where = (float(opening.wall.points[at, 0]), float(opening.wall.points[at, 1]))
        back = into_outline(opening.slot, opening.wall, outline)
        nominal, normal = min(float(depths[at]), -2e-6, 0.0 if back is None else -back[0]), (1.0, 0.0)
    if nominal - play(reach, nominal) > needed + FAINT:
        return []
    row = template.slots[opening.id]
    return [Spec("rail" if nominal >= 0 else "slot-outside", (opening.id, OUTLINE), (), (*where, 0.0), needed,
                 (*template.paper, template.outline, row),
                 _Strip(nominal, normal, template.paper, template.outline, (row,)))]


def _web(model: Model, reach: Reach, one: Opening, two: Opening) -> list[Spec]:
    needed, template = model.scene.layout.margins.web, model.template
    if shapely.intersects(one.wall.area, two.wall.area):
        nominal, _, where = overlap(one, two)
        normal = (1.0, 0.0)
    else:
        nominal, p, q = one.wall.to(two.wall)
        normal, where = v.unit(v.sub(q, p)), v.middle(p, q)
    if nominal - play(reach, nominal) > needed + FAINT:
        return []
    rows = (template.slots[one.id], template.slots[two.id])
    return [Spec("web" if nominal >= 0 else "slots-overlap", (one.id, two.id), (), (*where, 0.0), needed,
                 (*template.paper, *rows), _Strip(nominal, normal, template.paper, None, rows))]


def _nut(model: Model, reach: Reach, opening: Opening) -> list[Spec]:
    needed, template, nut = model.scene.layout.margins.slot_nut, model.template, model.scene.layout.nut
    nominal, low = before_nut(opening, nut)
    if nominal - play(reach, nominal) - reach.template > needed + FAINT:
        return []
    row = template.slots[opening.id]
    rows = (*template.paper, *template.place) if nut.slant else (template.paper[1], template.place[1])
    return [Spec("slot-to-nut", (opening.id, NUT), (), (*low, 0.0), needed, (*rows, row),
                 _ToNut(nominal, nut.ahead, template.paper, template.place, row))]


def _floor(model: Model, reach: Reach, opening: Opening) -> list[Spec]:
    needed, stop = model.scene.layout.margins.side_cover, model.template.floors.get(opening.id)
    thickness = model.scene.layout.blank.thickness
    if stop is None or thickness - opening.depth - reach.follow > needed + FAINT:
        return []
    place = opening.wall.area.representative_point()
    return [Spec("slot-floor", (opening.id, BACK), (), (place.x, place.y, thickness), needed, (stop,),
                 _UnderFloor(thickness - opening.depth, stop))]
