"""The line along which a held slot, pin or hole is cut to be looked at."""

from __future__ import annotations

from geometry import vectors as v
from geometry.layout import Headstock, StraightSlot, slot_path
from geometry.vectors import Vec2

BEYOND = 14.0
"""mm of the head shown past both ends."""


def held_line(layout: Headstock, id: str) -> tuple[Vec2, Vec2] | None:
    """Ends (mm, plan) of the section line of a slot (lengthwise), a pin or a single hole (straight across); None for others."""
    for slot in layout.slots:
        if slot.id != id:
            continue
        if isinstance(slot.shape, StraightSlot):
            a, b, half = slot.shape.nut_end, slot.shape.tip_end, slot.shape.width / 2
            if v.distance(a, b) < 1e-9:
                a, b = (a[0], a[1] - 1e-3), (b[0], b[1] + 1e-3)
            way = v.unit(v.sub(b, a))
            return v.along(a, way, -half - BEYOND), v.along(b, way, half + BEYOND)
        x0, y0, x1, y1 = slot_path(slot).box
        middle = (x0 + x1) / 2
        return (middle, y0 - BEYOND), (middle, y1 + BEYOND)
    for one in (*layout.pins, *layout.holes):
        if one.id == id:
            reach = one.diameter / 2 + 2 * BEYOND
            return (one.at[0] - reach, one.at[1]), (one.at[0] + reach, one.at[1])
    return None
