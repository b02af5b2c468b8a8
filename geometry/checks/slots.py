"""Slots: their own shape, the rail to the outline, the web between them, the wood to the nut."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import combinations

import shapely

from geometry import vectors as v
from geometry.checks.moves import rounded_out
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import NUT, OUTLINE, SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import both, first, mm, toward, up
from geometry.curves import shift
from geometry.layout.shop import Margins
from geometry.layout.slots import StraightSlot, straight_path
from geometry.solids.walls import Wall
from geometry.tolerance import FLAT
from geometry.vectors import Vec2

_ROUNDS = 6


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every slot, alone, with the outline, and with every other."""
    margins = scene.layout.margins
    whole = [o for o in scene.openings if scene.memo.of(_crosses, o) is None]
    for opening in scene.openings:
        crossing = scene.memo.of(_crosses, opening)
        if crossing is not None:
            yield crossing
        yield from scene.memo.of(_nut, opening, margins)
    for opening in whole:
        yield from scene.memo.of(_rail, opening, scene.outline, margins)
    for one, two in combinations(whole, 2):
        yield from scene.memo.of(_web, one, two, margins)


def _crosses(opening: Opening) -> Snag | None:
    if isinstance(opening.slot.shape, StraightSlot) or opening.wall.crossing is None:
        return None
    x, y = opening.wall.crossing
    return Snag("slot-crosses", SPOILS, (opening.id,), (x, y, 0.0), None, None,
                f"The wall of {opening.id} crosses itself at {mm(x)}, {mm(y)}.",
                "Move the nodes beside that place apart.")


def _nut(opening: Opening, margins: Margins) -> tuple[Snag, ...]:
    measured = opening.wall.path.box[1]
    needed = margins.slot_nut
    if not short(measured, needed):
        return ()
    a, b = both(measured, needed)
    text = (f"{first(opening.id)} runs {mm(-measured)} mm past the nut line." if measured < 0 else
            f"{first(opening.id)} ends {a} mm before the nut line; {b} mm wanted.")
    low = min(opening.wall.points.tolist(), key=lambda p: p[1])
    lacking = up(needed - measured)
    return (Snag("slot-to-nut", grade(measured), (opening.id, NUT), (low[0], low[1], 0.0), measured, needed, text,
                 f"Start {opening.id} {lacking:.1f} mm nearer the tip.", move=(opening.id, (0.0, lacking))),)


def _rail(opening: Opening, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    needed = margins.rail
    inside = shapely.covers(outline.area, opening.wall.area)
    if inside and shapely.distance(outline.line, opening.wall.line) - 2 * FLAT >= needed:
        return ()
    measured, where = _rail_of(opening.wall, outline, inside)
    if not short(measured, needed):
        return ()
    if measured < 0:
        return (Snag("slot-outside", SPOILS, (opening.id, OUTLINE), (*where, 0.0), measured, needed,
                     f"{first(opening.id)} leaves the head by {mm(-measured)} mm.",
                     f"Move {opening.id} inwards, or make it shorter or narrower."),)
    a, b = both(measured, needed)
    cure, move = _rail_cure(opening, outline, needed)
    return (Snag("rail", TIGHT, (opening.id, OUTLINE), (*where, 0.0), measured, needed,
                 f"The rail beside {opening.id} is {a} mm; {b} mm wanted.", cure, move=move),)


def _rail_of(wall: Wall, outline: Wall, inside: bool) -> tuple[float, Vec2]:
    """(rail in mm, place); negative by how far the slot sticks out."""
    if inside:
        distance, p, q = outline.to(wall)
        return distance, v.middle(p, q)
    depths = outline.about(wall.points)
    i = int(depths.argmin())
    return min(float(depths[i]), -2e-6), (float(wall.points[i, 0]), float(wall.points[i, 1]))


def _rail_cure(opening: Opening, outline: Wall, needed: float) -> tuple[str, tuple[str, Vec2] | None]:
    """Shorten a straight slot whose round end is too near; else move the slot away, tried on the exact curves."""
    _, p, q = outline.to(opening.wall)
    shape = opening.slot.shape
    if isinstance(shape, StraightSlot):
        axis = v.unit(v.sub(shape.tip_end, shape.nut_end))
        for end, sign, called in ((shape.tip_end, 1.0, "tip"), (shape.nut_end, -1.0, "nut")):
            along = v.dot(v.unit(v.sub(p, q)), axis) * sign
            if v.dot(v.sub(q, end), axis) * sign > 1e-6 and along > 0.3:
                amount = _shorter(shape, outline, needed, called)
                if amount is not None:
                    return f"Shorten {opening.id} by {amount:.1f} mm at its {called} end.", None
    by = _moved(opening, needed, lambda wall: outline.to(wall) if shapely.covers(outline.area, wall.area) else None)
    if by is None:
        return f"Make {opening.id} narrower: no single move gives it rails on all sides.", None
    return f"Move {opening.id} {toward(by)}.", (opening.id, by)


def _shorter(shape: StraightSlot, outline: Wall, needed: float, end: str) -> float | None:
    """Least length in tenths of a mm to take off one end of a slot, or None when that does not help."""
    axis = v.unit(v.sub(shape.tip_end, shape.nut_end))
    length = v.distance(shape.tip_end, shape.nut_end)
    amount = 0.0
    for _ in range(_ROUNDS * 2):
        a = v.along(shape.nut_end, axis, amount) if end == "nut" else shape.nut_end
        b = v.along(shape.tip_end, axis, -amount) if end == "tip" else shape.tip_end
        measured = outline.to(Wall(straight_path(a, b, shape.width)))[0]
        if not short(measured, needed):
            return amount
        amount = up(amount + max(0.1, needed - measured))
        if amount > length / 2:
            return None
    return None


def _moved(opening: Opening, needed: float,
           gap: Callable[[Wall], tuple[float, Vec2, Vec2] | None]) -> Vec2 | None:
    """The shift in mm that brings a slot `needed` mm away from something, step by step away from its nearest point."""
    by = (0.0, 0.0)
    for _ in range(_ROUNDS):
        found = gap(Wall(opening.wall.path.mapped(shift(*by))))
        if found is None:
            return None
        measured, there, here = found
        if not short(measured, needed):
            return by
        by = rounded_out(v.add(by, v.scale(v.unit(v.sub(here, there)), needed - measured)))
    return None


def _web(one: Opening, two: Opening, margins: Margins) -> tuple[Snag, ...]:
    needed = margins.web
    if shapely.intersects(one.wall.area, two.wall.area):
        depth = max(float(two.wall.about(one.wall.points).max()), float(one.wall.about(two.wall.points).max()), 2e-6)
        shared = shapely.intersection(one.wall.area, two.wall.area).representative_point()
        return (Snag("slots-overlap", SPOILS, (one.id, two.id), (shared.x, shared.y, 0.0), -depth, needed,
                     f"{first(one.id)} and {two.id} overlap.", "Move them apart, or join them into one drawn slot."),)
    if shapely.distance(one.wall.line, two.wall.line) - 2 * FLAT >= needed:
        return ()
    measured, p, q = one.wall.to(two.wall)
    if not short(measured, needed):
        return ()
    a, b = both(measured, needed)
    by = _moved(two, needed, lambda wall: one.wall.to(wall))
    cure = (f"Move {two.id} {toward(by)}, or make one of them narrower." if by is not None else
            "Make one of them narrower.")
    return (Snag("web", grade(measured), (one.id, two.id), (*v.middle(p, q), 0.0), measured, needed,
                 f"The web between {one.id} and {two.id} is {a} mm; {b} mm wanted.", cure,
                 move=None if by is None else (two.id, by)),)
