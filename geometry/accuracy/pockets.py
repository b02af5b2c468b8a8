"""Clearances of pockets that are there: the rail that the outline leaves beside one, and the web to a slot that is routed.

The pocket stays where it is; outline and slot come off the template, so all of the template's errors act between the two.
"""

from __future__ import annotations

import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.accuracy.built import Built, Model
from geometry.accuracy.rods import Array
from geometry.accuracy.spec import FAINT, Reach, Spec
from geometry.checks.pockets import beside_outline
from geometry.checks.scene import Opening, nut_line
from geometry.checks.slots import without_nut
from geometry.layout.names import OUTLINE
from geometry.solids.slot_ways import out_of_slot
from geometry.tolerance import TOUCH
from geometry.vectors import Vec2


class _ToPocket(Struct, frozen=True):
    """Wood between a pocket and a place of a wall that comes off the template; `n` is the unit way from the pocket to that wall."""

    nominal: float
    n: Vec2
    at: Vec2
    follow: int
    grows: float
    """1 where the followed wall leaves more wood as it grows: the outline; -1 for a slot"""

    def __call__(self, built: Built) -> Array:
        x, y = built.off_template(*self.at)
        return (self.nominal + self.n[0] * (x - self.at[0]) + self.n[1] * (y - self.at[1])) + self.grows * built.row(self.follow)


def pocket_rail(model: Model, reach: Reach, opening: Opening) -> list[Spec]:
    """The wood between a pocket and the outline."""
    needed, template, outline = model.scene.layout.margins.rail, model.template, model.scene.outline
    nut = nut_line(model.scene.layout.nut.slant)
    found = beside_outline(opening, outline, without_nut(outline, nut), nut, needed + play(reach, needed) + FAINT)
    if found is None:
        return []
    inwards = v.left(outline.foot(found.edge).tangent)
    n = v.scale(inwards, -1.0) if found.wood < TOUCH else v.unit(v.sub(found.edge, found.pocket))
    return [Spec("rail" if found.wood >= 0 else "slot-outside", (opening.id, OUTLINE), (), (*v.middle(found.edge, found.pocket), 0.0), needed,
                 (*template.paper, *template.place, template.outline), _ToPocket(found.wood, n, found.edge, template.outline, 1.0))]


def pocket_web(model: Model, reach: Reach, pocket: Opening, slot: Opening) -> list[Spec]:
    """The wood between a pocket and a slot to rout."""
    needed, template = model.scene.layout.margins.web, model.template
    nominal, p, q = pocket.wall.to(slot.wall)
    where, n = v.middle(p, q), v.unit(v.sub(q, p)) if nominal > 0 else (1.0, 0.0)
    if nominal <= 0:
        nominal, n, where = overlap(pocket, slot)
        q = where
    if nominal - play(reach, nominal) - reach.template > needed + FAINT:
        return []
    row = template.slots[slot.id]
    return [Spec("web" if nominal >= 0 else "slots-overlap", (pocket.id, slot.id), (), (*where, 0.0), needed,
                 (*template.paper, *template.place, row), _ToPocket(nominal, n, q, row, -1.0))]


def overlap(one: Opening, two: Opening) -> tuple[float, Vec2, Vec2]:
    """(less than no wood between two openings that share area, mm; the unit way in which `two` would leave `one`; a place of both)."""
    shared = shapely.intersection(one.wall.area, two.wall.area).representative_point()
    out = out_of_slot(one.slot, one.wall, two.slot, two.wall)
    if out is not None:
        return -max(out[0], 2e-6), v.scale(out[1], -1.0), (shared.x, shared.y)
    deepest = max(float(two.wall.about(one.wall.points).max()), float(one.wall.about(two.wall.points).max()), 2e-6)
    return -deepest, (1.0, 0.0), (shared.x, shared.y)


def play(reach: Reach, nominal: float) -> float:
    """How much less wood a strip can have than meant: two followed walls and the paper, which is under 10 %."""
    return 2 * reach.follow + min(0.1 * abs(nominal), reach.template)
