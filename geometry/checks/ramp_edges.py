"""Ramps of slots against the outline and other slots and ramps beside them, the nut before them and the wood below them."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.scene import Opening, Scene, nut_line, slots_tree
from geometry.checks.snags import BACK, NUT, SPOILS, TIGHT, Snag, grade, short
from geometry.checks.words import aslant, both, clearance, into, tenths
from geometry.layout import DrawnSlot, Nut, Slot, loop_of
from geometry.layout.names import OUTLINE
from geometry.saying import say
from geometry.solids.ramps import RampCut, below, ramp_cut
from geometry.solids.slot_ways import back_inside, out_of_slot
from geometry.solids.walls import Wall
from geometry.strings.ramps import NUT_AIR
from geometry.tolerance import ALONG_NUT, FLAT, TOUCH

_SIDE = 0.5
"""Cosine between the way away from an edge and that of a ramp's side from which a narrower ramp is what helps"""
BESIDE = 2.0
"""mm of wood wanted between a ramp and the outline (common practice, no source)"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every ramp with the outline, the nut, the back, the floor of its slot, and slots, pockets and ramps beside it."""
    thickness, cover = scene.layout.blank.thickness, scene.layout.margins.side_cover
    nut = scene.memo.of(nut_line, scene.layout.nut.slant)
    for opening in scene.openings:
        if opening.slot.ramp is not None:
            yield from scene.memo.of(_outline, opening, scene.outline, nut)
            yield from scene.memo.of(_nut, opening, nut)
            yield from scene.memo.of(_below, opening, thickness, cover)
    for i, k, ramp in scene.memo.of(_neighbours, scene.openings):
        yield from scene.memo.of(_beside, scene.openings[i], scene.openings[k], ramp)


def _outline(opening: Opening, outline: Wall, nut: Nut) -> tuple[Snag, ...]:
    cut = ramp_cut(opening.slot)
    shape = Wall(cut.path())
    gap, p, q = outline.to(shape)
    corners = shape.points[:-1]
    inside = outline.about(corners)
    if gap > 0 and inside.min() > 0:
        measured, where, push = gap, v.middle(p, q), v.unit(v.sub(q, p))
    elif gap > 0:
        return ()
    else:
        back = back_inside(corners, 0.0, shape.area, outline)
        worst = corners[int(np.argmin(inside))]
        measured, push = (float(min(inside.min(), 0.0)), None) if back is None else (-back[0], back[1])
        where = (float(worst[0]), float(worst[1]))
    # What lies at the nut line is the other check's.
    if not short(measured, BESIDE) or nut.before(where) <= (BESIDE if gap > 0 else 0.0) / 2 + ALONG_NUT:
        return ()
    text = clearance(measured, BESIDE, "The ramp of {slot} runs out at the edge by {measured} mm.",
                     "The ramp of {slot} leaves {a} mm to the outline; {b} mm wanted.", slot=opening.id)
    return (Snag("ramp-to-outline", grade(measured), (opening.id, OUTLINE), (*where, 0.0), measured, BESIDE, text,
                 _narrower(opening, BESIDE - measured, 1.0 if push is None else abs(v.cross(cut.axis, push))),
                 push=None if push is None else v.scale(push, BESIDE - measured)),)


def _narrower(opening: Opening, lacking: float, squarely: float) -> str:
    """What gives a ramp its wood: its side drawn in, which leads away from the edge at an angle of that cosine."""
    if squarely < _SIDE:
        return say("Make the ramp of {slot} narrower or shorter there.", slot=opening.id)
    by = aslant(lacking, squarely)
    return say("Make the ramp {amount} mm narrower on that side, that is {twice} mm in all, or move {slot}.",
               amount=tenths(by), twice=tenths(2 * by), slot=opening.id)


def _neighbours(openings: tuple[Opening, ...]) -> list[tuple[int, int, bool]]:
    """(slot with a ramp, another one near that, whether it is the other one's ramp that is near) by their numbers."""
    own = [i for i, one in enumerate(openings) if one.slot.ramp is not None]
    if not own:
        return []
    shapes = [_shape(openings[i]).area for i in own]
    whole = [not one.crosses for one in openings]
    near = []
    for tree, numbers in ((slots_tree(openings), range(len(openings))), (shapely.STRtree(shapes), own)):
        found = tree.query(shapes, predicate="dwithin", distance=BESIDE + 2 * FLAT)
        near.append(sorted((own[i], numbers[k]) for i, k in zip(*found.tolist(), strict=True)))
    return [*((i, k, False) for i, k in near[0] if i != k and whole[k]), *((i, k, True) for i, k in near[1] if i < k)]


def _shape(opening: Opening) -> Wall:
    """What a slot's ramp takes of the face."""
    return Wall(ramp_cut(opening.slot).path())


def _beside(opening: Opening, other: Opening, ramp: bool) -> tuple[Snag, ...]:
    """The wood between a ramp and another slot, a pocket that is there, or the ramp of another slot: all are open at the face."""
    shape, wall = _shape(opening), _shape(other) if ramp else other.wall
    if shapely.intersects(shape.area, wall.area):
        mine, its = (Slot(id=one.id, shape=DrawnSlot(loop=loop_of(_shape(one).path))) for one in (opening, other)) if ramp else (
            Slot(id=opening.id, shape=DrawnSlot(loop=loop_of(shape.path))), other.slot)
        out = out_of_slot(mine, shape, its, wall)  # a ramp is a rectangle: there is one
        spot = shapely.intersection(shape.area, wall.area).representative_point()
        measured, where, push = -max(out[0], 2e-6), (spot.x, spot.y), out[1]
    else:
        measured, p, q = shape.to(wall)
        where, push = v.middle(p, q), v.unit(v.sub(p, q)) if measured > 0 else (0.0, 1.0)
    if not short(measured, BESIDE):
        return ()
    if other.there:
        text = clearance(measured, BESIDE, "The ramp of {slot} cuts {measured} mm into {pocket}, which is there already.",
                         "The ramp of {slot} leaves {a} mm to {pocket}, which is there already; {b} mm wanted.",
                         slot=opening.id, pocket=other.id)
    else:
        called = say("the ramp of {opening}", opening=other.id) if ramp else other.id
        text = clearance(measured, BESIDE, "The ramp of {slot} cuts {measured} mm into {other}.",
                         "The ramp of {slot} leaves {a} mm to {other}; {b} mm wanted.", slot=opening.id, other=called)
    return (Snag("ramp-to-pocket" if other.there else "ramp-to-slot", TIGHT, (opening.id, other.id), (*where, 0.0), measured, BESIDE, text,
                 say("Make the ramp of {slot} narrower or shorter there.", slot=opening.id), push=v.scale(push, BESIDE - measured)),)


def _nut(opening: Opening, nut: Nut) -> tuple[Snag, ...]:
    cut: RampCut = ramp_cut(opening.slot)
    low = min((cut.corner(0.0, side) for side in (1.0, -1.0)), key=nut.before)
    measured = nut.before(low)
    if not short(measured, NUT_AIR):
        return ()
    lacks = (NUT_AIR - measured) / nut.ahead[1]
    text = clearance(measured, NUT_AIR, "The ramp of {slot} runs {measured} mm past the nut line.",
                     "The ramp of {slot} begins {a} mm from the nut; {b} mm wanted.", slot=opening.id)
    return (Snag("ramp-to-nut", grade(measured), (opening.id, NUT), (*low, 0.0), measured, NUT_AIR, text,
                 say("Make the ramp {amount} mm shorter.", amount=tenths(lacks)), push=(0.0, lacks)),)


def _below(opening: Opening, thickness: float, cover: float) -> tuple[Snag, ...]:
    """The wood between a ramp and the back; else, of a blind slot, a ramp that goes below the slot's floor."""
    cut: RampCut = ramp_cut(opening.slot)
    measured = below(opening.slot, cut, opening.wall, thickness)
    at = (*v.along(cut.start, cut.axis, cut.length), cut.depth)
    if short(measured, cover):
        a, b = both(measured, cover)
        text = (say("The ramp of {slot} comes out of the back by {measured} mm.", slot=opening.id, measured=into(-max(0.0, -measured)))
                if measured <= TOUCH else
                say("The ramp of {slot} leaves {a} mm of wood to the back where it is deepest; {b} mm wanted.",
                    slot=opening.id, a=a, b=b))
        less = (cover - measured) * cut.depth / (thickness - measured)
        return (Snag("ramp-too-deep", SPOILS if measured <= TOUCH else TIGHT, (opening.id, BACK), at, measured, cover, text,
                     _shallower(less)),)
    if opening.slot.through(thickness) or not short(opening.depth, cut.depth):
        return ()
    a, b = both(cut.depth, opening.depth)
    return (Snag("ramp-too-deep", TIGHT, (opening.id,), at, opening.depth - cut.depth, 0.0,
                 say("The ramp of {slot} is {a} mm deep where it meets the slot, which is {b} mm deep.", slot=opening.id, a=a, b=b),
                 _shallower(cut.depth - opening.depth)),)


def _shallower(amount: float) -> str:
    return say("Make the ramp {amount} mm less deep.", amount=tenths(amount))
