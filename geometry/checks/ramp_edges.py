"""Ramps of slots against the outline beside them and the nut before them."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from geometry import vectors as v
from geometry.checks.scene import Opening, Scene
from geometry.checks.snags import NUT, OUTLINE, Snag, grade, short
from geometry.checks.words import both, mm, tenths
from geometry.saying import say
from geometry.solids.ramps import RampCut, ramp_cut
from geometry.solids.slot_ways import back_inside
from geometry.solids.walls import Wall
from geometry.strings.ramps import NUT_AIR
from geometry.tolerance import TOUCH

BESIDE = 2.0
"""mm of wood wanted between a ramp and the outline (common practice, no source)"""


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every ramp with the outline and the nut."""
    for opening in scene.openings:
        if opening.slot.ramp is not None:
            yield from scene.memo.of(_outline, opening, scene.outline)
            yield from scene.memo.of(_nut, opening)


def _outline(opening: Opening, outline: Wall) -> tuple[Snag, ...]:
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
    if not short(measured, BESIDE) or where[1] <= (BESIDE if gap > 0 else 0.0) / 2 + TOUCH:
        return ()
    a, b = both(measured, BESIDE)
    text = (say("The ramp of {slot} runs out at the edge by {measured} mm.", slot=opening.id, measured=mm(-measured))
            if measured < 0 else
            say("The ramp of {slot} leaves {a} mm to the outline; {b} mm wanted.", slot=opening.id, a=a, b=b))
    return (Snag("ramp-to-outline", grade(measured), (opening.id, OUTLINE), (*where, 0.0), measured, BESIDE, text,
                 say("Make the ramp {amount} mm narrower on that side, that is {twice} mm in all, or move {slot}.",
                     amount=tenths(BESIDE - measured), twice=tenths(2 * (BESIDE - measured)), slot=opening.id),
                 push=None if push is None else v.scale(push, BESIDE - measured)),)


def _nut(opening: Opening) -> tuple[Snag, ...]:
    cut: RampCut = ramp_cut(opening.slot)
    low = min((cut.corner(0.0, side) for side in (1.0, -1.0)), key=lambda p: p[1])
    measured = low[1]
    if not short(measured, NUT_AIR):
        return ()
    a, b = both(measured, NUT_AIR)
    text = (say("The ramp of {slot} runs {measured} mm past the nut line.", slot=opening.id, measured=mm(-measured))
            if measured < 0 else
            say("The ramp of {slot} begins {a} mm from the nut; {b} mm wanted.", slot=opening.id, a=a, b=b))
    return (Snag("ramp-to-nut", grade(measured), (opening.id, NUT), (*low, 0.0), measured, NUT_AIR, text,
                 say("Make the ramp {amount} mm shorter.", amount=tenths(NUT_AIR - measured)),
                 push=(0.0, NUT_AIR - measured)),)
