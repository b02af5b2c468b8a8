"""A new layout begins with the maker's own rack, once there is one, and in inches with hardware in fractional sizes."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.formats import rack as racks
from app.formats.errors import FormatError
from app.threads.waiting import Progress, done_beside
from geometry.beginning.in_unit import hardware_in_unit
from geometry.cancellation import Ask, go_on
from geometry.edits.rack import set_rack, set_template_tool
from geometry.errors import GeometryError
from geometry.layout import Headstock, Rack
from geometry.routing import plan_routing
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def equipped(layout: Headstock, rack: Rack, ask: Ask = go_on) -> Headstock:
    """The layout with another rack; where that lacks the template's bit, the first plan's takes its place.

    To plan takes seconds round an outline of thousands of nodes; `ask` is asked between its parts. GeometryError when an
    outline or a slot has no inside.
    """
    changed = set_rack(layout, rack)
    if changed.template.bit is not None:
        return changed
    best = next((plan.best for plan in plan_routing(changed, ask).all if plan.best is not None), None)
    return changed if best is None else set_template_tool(changed, best.passes[0].bit, best.passes[0].bush)


def with_own_rack(window: Frame, layout: Headstock,
                  equip: Callable[[Headstock, Rack], Headstock | None] = equipped) -> Headstock | None:
    """The layout with a copy of the maker's own rack, its template made for the first plan, as `equip` does it; None where that
    gives None.

    While the maker has kept no rack it is the starting one in his unit; so it is when the file cannot be used, and that
    is said. In inches the generic hardware is that in fractional sizes.
    """
    layout = hardware_in_unit(layout, window.unit)
    try:
        rack = racks.kept_rack(racks.rack_path())
        if rack is not None:
            return equip(layout, rack)
    except (FormatError, GeometryError) as error:
        window.say(say("The layout begins with the starting rack: {error}", error=error))
    return layout


def with_own_rack_beside(dialog: QWidget, window: Frame, layout: Headstock) -> Headstock | None:
    """The same for a layout of any size, while a dialog before the window waits; None when the maker cancelled, or it is gone."""
    def equip(layout: Headstock, rack: Rack) -> Headstock | None:
        progress = Progress()
        return done_beside(dialog, say("A bit of your rack is being looked for to make the template with."),
                           partial(equipped, layout, rack, progress.ask), progress)
    return with_own_rack(window, layout, equip=equip)
