"""Buttons as they turn: the gap between two of them, and the wood behind which they stand."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import partial

import numpy as np

from geometry import vectors as v
from geometry.checks.around import Around
from geometry.checks.asked import Asked
from geometry.checks.items import Item, apart, plan
from geometry.checks.memo import Pairs
from geometry.checks.scene import Scene, outline_wall
from geometry.checks.snags import NOTE, TIGHT, Snag, grade, short
from geometry.checks.words import clearance, into, tenths
from geometry.layout.names import OUTLINE
from geometry.layout.shop import Margins
from geometry.saying import say
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import Gaps
from geometry.solids.nearby import Rows
from geometry.solids.walls import Wall, oblong_corners, ring
from geometry.tolerance import FLAT
from geometry.vectors import Vec2


def pairs(scene: Scene) -> Pairs:
    """Tuners whose buttons come near each other."""
    margins = scene.layout.margins
    return scene.memo.pairs(_boxes, scene.items, margins.button_gap, margins).of_two()


def _boxes(items: Sequence[Item]) -> Rows:
    """About each button; boxes that hold nothing for what has none."""
    return [item.button_box for item in items]


def asked(rows: Sequence[tuple[Item, Item, Margins]]) -> Asked:
    """The gap between two buttons, wherever they are in their turn."""
    return Asked(Cylinders.made([one.button for one, _, _ in rows]), Cylinders.made([two.button for _, two, _ in rows]),
                 np.array([margins.button_gap for *_, margins in rows]), partial(_told, rows))


def _told(rows: Sequence[tuple[Item, Item, Margins]], measured: Gaps) -> list[tuple[Snag, ...]]:
    return [(_snag(*row, gap, measured.on_a[i], measured.on_b[i]),) if exact and short(gap, row[2].button_gap) else ()
            for i, (row, gap, exact) in enumerate(zip(rows, measured.distance.tolist(), measured.exact.tolist(), strict=True))]


def _snag(one: Item, two: Item, margins: Margins, measured: float, on_a: np.ndarray, on_b: np.ndarray) -> Snag:
    needed = margins.button_gap
    text = clearance(measured, needed, "The buttons of {one} and {two} strike each other by {measured} mm as they turn.",
                     "The buttons of {one} and {two} pass {a} mm apart; {b} mm wanted for the fingers.", one=one.id, two=two.id)
    return Snag("buttons", grade(measured), (one.id, two.id), tuple(float(c) for c in (on_a + on_b) / 2), measured,
                needed, text, say("Choose smaller buttons, or move both tuners."),
                push=apart(one, two, on_a - on_b, needed - measured))


def corners(item: Item) -> tuple[Vec2, ...]:
    """The corners of a button's swept space in plan, in order round it."""
    start, axis, length, radius = item.button
    if item.pattern.button.straight and item.mount == "face":
        return oblong_corners((start[0] - radius, start[1]), (1.0, 0.0), 2 * radius, radius)
    return oblong_corners(plan(start), plan(axis), length, radius)


def alone(item: Item, around: Around) -> tuple[Snag, ...]:
    """Snags of a side tuner's button with the edge beside which it turns, unless it lies below the back: room to turn, and for the fingers."""
    if item.mount != "side" or item.button is None:
        return ()
    (x, y, level), _, _, radius = item.button
    below, needed = level - around.blank.thickness, around.margins.button_gap
    if not short(below, needed):
        return ()
    beside = -outline_wall(item.ground[0]).inside((x, y)) - radius
    measured = beside if below <= 0 else math.hypot(max(0.0, beside), below)
    if not short(measured, needed):
        return ()
    lacking = needed - below + max(0.0, item.pattern.button.length - item.pattern.button.reach)
    text = clearance(measured, needed, "The button of {item} strikes the edge by {measured} mm as it turns.",
                     "The button of {item} clears the edge by {a} mm; {b} mm is wanted for the fingers.", item=item.id)
    return (Snag("button-to-wood", TIGHT if measured < 0 else NOTE, (item.id, OUTLINE), (x, y, level), measured, needed, text,
                 say("Choose a shaft {by} mm longer, or one that stands farther out.", by=tenths(lacking))),)


def _lacks(item: Item, outline: Wall, measured: float, needed: float) -> float:
    """How far a button has to go the way it points until all of the head before it lies `needed` mm behind it, mm; never too little."""
    (x, y, _), axis, _, radius = item.button
    way, far = plan(axis), needed + FLAT
    off, reach = outline.points - (x, y), radius + far
    along, aside = off @ way, off @ v.left(way)
    # Each chord beside or before the button, from the lower to the higher of its ends aside.
    low, high = np.minimum(aside[:-1], aside[1:]), np.maximum(aside[:-1], aside[1:])
    near = np.flatnonzero((low <= reach) & (high >= -reach))
    if not near.size:
        return needed - measured
    rise, across = along[near + 1] - along[near], aside[near + 1] - aside[near]
    slope = np.divide(rise, across, out=np.zeros(len(near)), where=across != 0)
    # What lies before the button counts by `far`, what lies beside it by the rest of that: most at an end, or where a round corner would touch.
    touch = far * slope / np.hypot(1.0, slope)
    spots = np.clip([low[near], high[near], touch + radius, touch - radius],
                    np.maximum(low[near], -reach), np.minimum(high[near], reach))
    beside = np.maximum(np.abs(spots) - radius, 0.0)
    most = (along[near] + (spots - aside[near]) * slope + np.sqrt(np.maximum(far * far - beside * beside, 0.0))).max()
    return float(most) if most >= 0 else needed - measured


def behind(item: Item, meets: bool, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    """Snags of a face tuner's button with the edge of the head, which it reaches behind (`meets`) or comes near: room to turn, and for the fingers.
    One that turns about its post lies behind the head as it is meant to."""
    if item.pattern.button.straight:
        return ()
    shape = Wall(ring(corners(item)))
    if meets:
        depths = outline.about(shape.points)
        i = int(depths.argmax())
        measured, where = -max(float(depths[i]), 2e-6), tuple(shape.points[i].tolist())
    else:
        measured, p, q = outline.to(shape)
        where = v.middle(p, q)
    needed = margins.button_gap
    if not short(measured, needed):
        return ()
    level = item.button[0][2]
    cure = say("Move {item} by {by} mm the way its button points, or choose a shaft that much longer.",
               item=item.id, by=tenths(_lacks(item, outline, measured, needed)))
    if measured < 0 and item.pattern.button.stand < item.button[3]:
        return (Snag("button-to-wood", TIGHT, (item.id, OUTLINE), (*where, level), measured, needed,
                     say("The button of {item} reaches {measured} mm behind the wood and cannot turn there.",
                         item=item.id, measured=into(measured)),
                     cure),)
    text = clearance(measured, needed, "The button of {item} lies {measured} mm behind the head.",
                     "The button of {item} clears the edge by {a} mm; {b} mm is wanted for the fingers.", item=item.id)
    return (Snag("button-to-wood", NOTE, (item.id, OUTLINE), (*where, level), measured, needed, text, cure),)
