"""A proposal held over the layout until it is taken or put back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec.structs import replace

from app.tools.pointer import Done, Gesture, Shown
from geometry.curves.polygons import parts
from geometry.drawing import Cross, Disc, Drawing, Mark
from geometry.drawing.shapes import polygon_area
from geometry.edits.adding import unpinned
from geometry.layout import Headstock
from geometry.saying import say

if TYPE_CHECKING:
    from geometry.sequence.pin_plan import PinPlan

REACH = 4.0
"""How far the cross of a proposed pin stands over its hole, mm."""


def propose(layout: Headstock, plan: PinPlan) -> Gesture:
    """Show two pins in the place of the layout's own, and where others would be legal. Enter or a press takes them, Esc does not."""
    gone = {pin.id for pin in layout.pins} - {pin.id for pin in plan.pins}
    made = unpinned(replace(layout, pins=plan.pins), gone)
    shown = Shown(made, ghost(plan), say("A press or Enter takes these pins, Esc does not: {words}.", words=plan.words), held=(), takes=None)
    pointer = yield shown
    while True:
        if pointer.kind in ("press", "double") or (pointer.kind == "key" and pointer.key == "enter"):
            return Done(made, say("Propose pins"), tuple(pin.id for pin in plan.pins))
        pointer = yield shown


def ghost(plan: PinPlan) -> Drawing:
    """Legal places as areas, the pins as circles with a cross."""
    marks: list[Mark] = [polygon_area(part, "template board")
                         for area in plan.free for part in parts(area)]
    for pin in plan.pins:
        marks += [Disc(pin.at, pin.diameter / 2, "locating pin hole"), Cross(pin.at, pin.diameter / 2 + REACH, "template")]
    return tuple(marks)
