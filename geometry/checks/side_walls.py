"""Drillings from the side: wood above and below them, and slots that they should not meet.

Seen from the face a level cylinder is a rectangle, and against an upright wall
that stands at the height of its axis the distance in plan is the true one.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks import drill_points
from geometry.checks.around import Around
from geometry.checks.far_arms import far_arm, far_arm_of, strays_by
from geometry.checks.hole_walls import wanted_to_slot
from geometry.checks.items import Item, plan
from geometry.checks.kinds import slot_kind
from geometry.checks.pockets import clear_of, wall_of
from geometry.checks.scene import Opening, Scene, slots_tree
from geometry.checks.snags import BACK, FACE, Snag, grade, short
from geometry.checks.words import aslant, clearance, first, gap_text, is_small, name, sort_of, tenths
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.drilling import Drilling
from geometry.solids.floor import floor_gap
from geometry.solids.walls import Wall, oblong
from geometry.solids.ways_out import from_slot
from geometry.terms import term
from geometry.tolerance import FLAT, TOUCH
from geometry.vectors import Vec2, Vec3

MOSTLY = 0.8
"""Cosine of the angle to the edge within which a way out leads along it"""
_FEW = 8
"""slots above which it pays to ask a tree which of them lie ahead: of many heads in a row the check else grows with their square"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every drilling from the side with the slots."""
    return scene.memo.snags_together(_slots, scene.items, scene.openings, scene.layout.margins)


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Wood between each drilling of a feature from the side and the face and the back."""
    if item.mount != "side":
        return ()
    thickness, margins = around.blank.thickness, around.margins
    found = []
    for drilling in item.drillings:
        needed = margins.screw_any if is_small(drilling) else margins.side_cover
        z = drilling.start[2]
        for side, measured, level in ((FACE, z - drilling.radius, 0.0),
                                      (BACK, thickness - z - drilling.radius, thickness)):
            if not short(measured, needed):
                continue
            text = (say("{name} meets no wood: it lies wholly past the {side}.", name=first(name(drilling)), side=term(side))
                    if measured <= -2 * drilling.radius else
                    clearance(measured, needed, "{name} breaks through the {side} by {measured} mm.",
                              "{name} leaves {a} mm of wood to the {side}; {b} mm wanted.", name=first(name(drilling)), side=term(side)))
            if thickness - 2 * drilling.radius >= 2 * needed - TOUCH:
                by = tenths(needed - measured)
                cure = (say("Set the axis of {item} deeper by {by} mm.", item=item.id, by=by) if side == FACE else
                        say("Set the axis of {item} higher by {by} mm.", item=item.id, by=by))
            else:
                cure = say("The wood is too thin: it takes {least} mm for this bore.",
                           least=tenths(2 * (drilling.radius + needed)))
            middle = v.along(plan(drilling.start), plan(drilling.direction), drilling.depth / 2)
            found.append(Snag("cover", grade(measured), (item.id, side), (*middle, level), measured, needed, text,
                              cure))
    return tuple(found)


def _slots(items: Sequence[Item], openings: tuple[Opening, ...], margins: Margins) -> list[tuple[Snag, ...]]:
    """Drillings that come near a slot."""
    sides = [(i, item) for i, item in enumerate(items) if item.mount == "side"]
    drillings = [(i, drilling, ahead) for i, item in sides for drilling, ahead in zip(item.drillings, item.ahead, strict=True)]
    found: list[list[Snag]] = [[] for _ in items]
    if drillings and openings:
        solids = Cylinders.joined([item.solids for _, item in sides])
        # As far as the drills' points go.
        ends = solids.start + solids.axis * (solids.length + np.concatenate([item.ahead for _, item in sides]))[:, None]
        axes = shapely.linestrings(np.stack((solids.start[:, :2], ends[:, :2]), axis=1))
        most = solids.radius + FLAT + max(margins.bore_slot, margins.screw_any, margins.pin_any)
        close: dict[int, list[int]] = {}
        for at, k in sorted(zip(*slots_tree(openings).query(axes, predicate="dwithin", distance=most).tolist(), strict=True)):
            close.setdefault(at, []).append(k)
        for at, near in close.items():
            i, drilling, ahead = drillings[at]
            found[i] += _near_slots(items[i], drilling, ahead, axes[at], [openings[k] for k in near], openings, margins)
    return [tuple(some) for some in found]


def _near_slots(item: Item, drilling: Drilling, ahead: float, axis: shapely.LineString, near: list[Opening],
                openings: tuple[Opening, ...], margins: Margins) -> Iterable[Snag]:
    """Snags of one drilling with slots near it; `axis` goes on to the drill's point. The side bore itself may enter the slot that it runs into
    first, up to its inner wall."""
    own = first_on_the_way(drilling, drilling.depth, openings) if sort_of(drilling) == "side bore" else None
    needed = wanted_to_slot(drilling, margins)
    for opening in near:
        if opening is own:
            yield from _far_arm(item, drilling, ahead, opening, needed)
            continue
        below = max(0.0, drilling.start[2] - opening.depth)
        far = shapely.distance(axis, opening.wall.area)
        if math.hypot(max(0.0, far - FLAT), below) - drilling.radius >= needed:
            continue
        measured, where, way = slot_gap(drilling, opening, below)
        if ahead and measured >= 0:
            yield from _by_point(item, drilling, ahead, opening, below, measured, needed, wall_of(opening))
        if not short(measured, needed):
            continue
        cure = _advice(item, drilling, opening, way, needed - measured)
        yield Snag(slot_kind(sort_of(drilling)), grade(measured), (item.id, opening.id), where, measured,
                   needed, gap_text(name(drilling), wall_of(opening), measured, needed), cure,
                   push=None if way is None else v.scale(way, needed - measured))


def _far_arm(item: Item, bore: Drilling, ahead: float, own: Opening, needed: float) -> Iterable[Snag]:
    """Snags of a side bore with what of its own slot lies beyond the inner wall."""
    arm = far_arm(bore, bore.depth + ahead + needed, needed, own)
    if arm is None:
        return
    measured, where, way = slot_gap(bore, arm, 0.0)
    measured -= strays_by(own)
    if ahead and measured >= 0:
        yield from _by_point(item, bore, ahead, arm, 0.0, measured, needed, far_arm_of(own))
    if short(measured, needed):
        lacking = needed - measured
        backwards = 0.0 if way is None else -v.dot(way, plan(bore.direction))
        back = backwards > MOSTLY and bore.depth > aslant(lacking, backwards)
        yield Snag(slot_kind(sort_of(bore)), grade(measured), (item.id, own.id), where, measured, needed,
                   gap_text(name(bore), far_arm_of(own), measured, needed),
                   say("Drill it {amount} mm less deep, or draw the arms of {opening} that much farther apart.",
                       amount=tenths(aslant(lacking, backwards)), opening=own.id) if back else
                   say("Drill it less deep, or draw the arms of {opening} farther apart.", opening=own.id),
                   push=None if way is None else v.scale(way, lacking))


def _by_point(item: Item, drilling: Drilling, ahead: float, opening: Opening, below: float, bare: float,
              wood: float, wall: str) -> Iterable[Snag]:
    """The snag of a drill's point too near to a slot, of which the drilling itself leaves `bare` mm; `wall`: how that is called."""
    needed = drill_points.wanted(drilling, wood, bare)
    called = say("floor of {slot}", slot=opening.id) if below > 0 else wall

    def gap(one: Drilling) -> float:
        if below > 0:
            return floor_gap(one, opening.wall, below, ahead)[0]
        return drill_points.beside(one, ahead, opening.wall, opening.wall.area)
    measured = gap(drilling)
    if short(measured, needed):
        yield drill_points.snag(item, drilling, ahead, called, (item.id, opening.id), measured, needed, wood, gap)


def _advice(item: Item, drilling: Drilling, opening: Opening, way: Vec2 | None, lacking: float) -> str:
    """What would give a drilling its wood, by the way out that is the nearest."""
    if opening.there:
        return clear_of(opening.id)
    if way is None and math.isfinite(opening.depth):
        return say("Set the axis of {item} deeper by {amount} mm, or rout {opening} that much less deep.",
                   item=item.id, amount=tenths(lacking), opening=opening.id)
    to_tip, back = (0.0, 1.0) if way is None else (v.dot(way, plan(item.frame.u)), -v.dot(way, plan(drilling.direction)))
    amount = tenths(aslant(lacking, abs(to_tip)))
    if to_tip > MOSTLY:
        return say("Slide {item} by {amount} mm to the tip, or move {opening} that much to the nut.",
                   item=item.id, amount=amount, opening=opening.id)
    if to_tip < -MOSTLY:
        return say("Slide {item} by {amount} mm to the nut, or move {opening} that much to the tip.",
                   item=item.id, amount=amount, opening=opening.id)
    if back > 0 and drilling.depth > aslant(lacking, back):
        return say("Drill it {amount} mm less deep, or move {opening} away by {amount} mm.", amount=tenths(aslant(lacking, back)),
                   opening=opening.id)
    return say("Move {opening} away from {item} by {amount} mm.", opening=opening.id, amount=tenths(lacking), item=item.id)


def first_on_the_way(drilling: Drilling, reach: float, openings: tuple[Opening, ...]) -> Opening | None:
    """The slot to rout that a level axis runs into first within `reach` mm, among those that stand at its height; or None."""
    ahead = openings
    if len(openings) > _FEW:
        ray = shapely.LineString([plan(drilling.start), v.along(plan(drilling.start), plan(drilling.direction), reach)])
        ahead = [openings[k] for k in sorted(slots_tree(openings).query(ray, predicate="dwithin", distance=2 * FLAT).tolist())]
    found = []
    for opening in ahead:
        if not opening.there and opening.depth > drilling.start[2]:
            stretches = opening.wall.stretches(plan(drilling.start), plan(drilling.direction))
            if stretches and stretches[0][0] < reach:
                found.append((stretches[0][0], opening))
    return min(found, key=lambda pair: pair[0])[1] if found else None


def slot_gap(drilling: Drilling, opening: Opening, below: float) -> tuple[float, Vec3, Vec2 | None]:
    """(gap in mm, place, the way in plan on which the drilling leaves the slot or its neighbourhood if there is one).

    In plan beside a wall that stands at the axis, in space below the floor of a blind slot; negative by the
    least shift that parts the two.
    """
    z = drilling.start[2]
    if below > 0:
        gap, place = floor_gap(drilling, opening.wall, below)
        spot = (*place, (z + opening.depth) / 2)
        if gap >= 0:
            return gap, spot, None
    else:
        shape = Wall(oblong(plan(drilling.start), plan(drilling.direction), drilling.depth, drilling.radius))
        if not shapely.intersects(shape.area, opening.wall.area):
            distance, p, q = shape.to(opening.wall)
            return distance, (*v.middle(p, q), z), v.unit(v.sub(p, q)) if distance > 0 else None
        spot = (*_deepest(shape, opening.wall), z)
    out = from_slot(drilling, opening.slot, opening.wall)
    return -max(0.0, out.depth), spot, out.plan if v.norm(out.plan) > 1e-9 else None


def _deepest(one: Wall, two: Wall) -> Vec2:
    """A place to look at where two areas overlap: the corner of either that lies deepest in the other."""
    best, place = -math.inf, one.path.start
    for a, b in ((one, two), (two, one)):
        depth = b.about(a.points)
        i = int(np.argmax(depth))
        if depth[i] > best:
            best, place = float(depth[i]), (float(a.points[i, 0]), float(a.points[i, 1]))
    return place
