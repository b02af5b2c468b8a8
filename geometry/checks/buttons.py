"""Buttons as they turn: the gap between two of them, and the wood behind which they stand."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
import shapely

from geometry import vectors as v
from geometry.checks.items import Item
from geometry.checks.moves import middle, way_clear
from geometry.checks.scene import Scene
from geometry.checks.snags import NOTE, OUTLINE, TIGHT, Snag, grade, short
from geometry.checks.words import both, mm, up
from geometry.layout.shop import Margins
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.solids.walls import Wall, oblong
from geometry.tolerance import FLAT


def snags(scene: Scene) -> Iterable[Snag]:
    """Snags of every two buttons that come near, and of buttons behind the head."""
    items = [item for item in scene.items if item.button is not None]
    if not items:
        return
    margins = scene.layout.margins
    low, high = Cylinders.joined([item.button for item in items]).boxes()
    apart = np.maximum(low[:, None] - high[None], low[None] - high[:, None]).max(axis=2)
    near = np.argwhere(np.triu(apart <= margins.button_gap, 1))
    for found in scene.memo.many(_measure, [(items[i], items[k], margins) for i, k in near.tolist()]):
        yield from found
    for item in items:
        if item.mount == "face":
            yield from scene.memo.of(_behind, item, scene.outline, margins)


def _measure(rows: Sequence[tuple[Item, Item, Margins]]) -> list[tuple[Snag, ...]]:
    a = Cylinders.joined([one.button for one, _, _ in rows])
    b = Cylinders.joined([two.button for _, two, _ in rows])
    measured = gaps(a, b, np.array([margins.button_gap for *_, margins in rows]))
    return [(_snag(*row, float(measured.distance[i]), measured.on_a[i], measured.on_b[i]),)
            if measured.exact[i] and short(float(measured.distance[i]), row[2].button_gap) else ()
            for i, row in enumerate(rows)]


def _snag(one: Item, two: Item, margins: Margins, measured: float, on_a: np.ndarray, on_b: np.ndarray) -> Snag:
    needed = margins.button_gap
    a, b = both(measured, needed)
    text = (f"The buttons of {one.id} and {two.id} strike each other by {mm(-measured)} mm as they turn." if measured < 0
            else f"The buttons of {one.id} and {two.id} pass {a} mm apart; {b} mm wanted for the fingers.")
    push = on_a - on_b
    cure, move = "Choose smaller buttons, or move both tuners.", None
    for mover, other, sign in sorted(((one, two, 1.0), (two, one, -1.0)), key=lambda c: c[0].mount == "face"):
        way = (float(push[0]) * sign, float(push[1]) * sign)
        if v.norm(way) < 1e-6:
            way = v.sub(middle(mover), middle(other))
        found = way_clear(mover, mover.button, other.button, np.array([[needed]]), way)
        if found is not None:
            cure, move = found[0], (mover.id, found[1])
            break
    return Snag("buttons", grade(measured), (one.id, two.id), tuple(float(c) for c in (on_a + on_b) / 2), measured,
                needed, text, cure, move=move)


def _behind(item: Item, outline: Wall, margins: Margins) -> tuple[Snag, ...]:
    """A face tuner's button beyond the edge of the head: room for the fingers, and room to turn."""
    button = item.button
    start, axis = button.start[0], button.axis[0]
    shape = Wall(oblong((float(start[0]), float(start[1])), (float(axis[0]), float(axis[1])), float(button.length[0]),
                        float(button.radius[0])))
    needed = margins.button_gap
    if not shapely.intersects(outline.area, shape.area):
        if shapely.distance(outline.line, shape.area) - FLAT >= needed:
            return ()
        measured, p, q = outline.to(shape)
        where = v.middle(p, q)
    else:
        depths = outline.about(shape.points)
        i = int(depths.argmax())
        measured, where = -max(float(depths[i]), 2e-6), tuple(float(c) for c in shape.points[i])
    if not short(measured, needed):
        return ()
    stands_clear = item.pattern.button.stand >= float(button.radius[0])
    a, b = both(measured, needed)
    lacking = up(needed - measured)
    cure = f"Move {item.id} {lacking:.1f} mm nearer the edge, or choose a longer shaft."
    if measured < 0 and not stands_clear:
        return (Snag("button-to-wood", TIGHT, (item.id, OUTLINE), (*where, float(start[2])), measured, needed,
                     f"The button of {item.id} reaches {mm(-measured)} mm behind the wood and cannot turn there.", cure),)
    text = (f"The button of {item.id} lies {mm(-measured)} mm behind the head." if measured < 0 else
            f"The button of {item.id} clears the edge by {a} mm; {b} mm is wanted for the fingers.")
    return (Snag("button-to-wood", NOTE, (item.id, OUTLINE), (*where, float(start[2])), measured, needed, text, cure),)
