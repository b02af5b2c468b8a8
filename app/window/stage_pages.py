"""Which page a stage shows while nothing is held."""

from __future__ import annotations

from app.panels import pages
from app.panels.describe import Page
from app.window.tool_bar import ToolBar
from geometry.layout import Headstock
from geometry.units import LengthUnit


def stage_page(stage: str, layout: Headstock, unit: LengthUnit, tools: ToolBar) -> Page:
    """The page of a stage."""
    if stage == "blank":
        return Page("Blank", [], pages.blank_page(layout, unit))
    if stage == "outline":
        return Page("Outline", pages.outline_page(layout, unit), [])
    if stage == "slots":
        return Page("Slots", pages.slots_page(layout, unit), [])
    if stage == "tuners":
        return Page("Hardware", [], pages.tuners_page(layout, unit, tools.hardware.currentText()))
    if stage == "strings":
        return Page("Nut and strings", [], pages.strings_page(layout, unit))
    return Page("Sheets", [], pages.sheets_page(layout, unit, tools.paper.currentText()))
