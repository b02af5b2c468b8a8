"""A new layout begins with the maker's own rack, once there is one, and in inches with hardware in fractional sizes."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from app.formats import rack as racks
from app.formats.errors import FormatError
from geometry.beginning.in_unit import hardware_in_unit
from geometry.edits.rack import set_rack, set_template_tool
from geometry.errors import GeometryError
from geometry.layout import Headstock, Rack
from geometry.routing import plan_routing
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.main import MainWindow


def with_own_rack(window: MainWindow, layout: Headstock, path: Path | None = None) -> Headstock:
    """The layout with a copy of the maker's own rack, its template made for the first plan.

    While the maker has kept no rack it is the starting one in his unit; so it is when the file cannot be used, and that
    is said. In inches the generic hardware is that in fractional sizes.
    """
    path = racks.rack_path() if path is None else path
    layout = hardware_in_unit(layout, window.unit)
    try:
        rack = racks.kept_rack(path)
        if rack is not None:
            return equipped(layout, rack)
    except (FormatError, GeometryError) as error:
        window.say(say("The layout begins with the starting rack: {error}", error=error))
    return layout


def equipped(layout: Headstock, rack: Rack) -> Headstock:
    """The layout with another rack; where that lacks the template's bit, the first plan's takes its place."""
    changed = set_rack(layout, rack)
    if changed.template.bit is not None:
        return changed
    best = next((plan.best for plan in plan_routing(changed).all if plan.best is not None), None)
    return changed if best is None else set_template_tool(changed, best.passes[0].bit, best.passes[0].bush)
