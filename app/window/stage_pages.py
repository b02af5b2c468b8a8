"""Which page a stage shows while nothing is held."""

from __future__ import annotations

from app.panels import pages
from app.panels.rows import FieldRow
from app.window.tool_bar import ToolBar
from geometry.layout import Headstock
from geometry.units import LengthUnit


def stage_page(stage: str, layout: Headstock, unit: LengthUnit, tools: ToolBar) -> tuple[str, list[FieldRow]]:
    """(title, rows) of a stage."""
    if stage == "blank":
        return "Blank", pages.blank_page(layout, unit)
    if stage == "outline":
        return "Outline", pages.outline_page(layout, unit)
    if stage == "slots":
        return "Slots", pages.slots_page(layout, unit)
    if stage == "tuners":
        return "Hardware", pages.tuners_page(layout, unit, tools.hardware.currentText())
    if stage == "strings":
        return "Nut and strings", pages.strings_page(layout, unit)
    if stage == "router":
        return "Template and router", pages.router_page(layout, unit)
    return "Sheets", pages.sheets_page(layout, unit, tools.paper.currentText())
