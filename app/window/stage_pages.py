"""Which page a stage shows while nothing is held, unless it has a room with a panel of its own."""

from __future__ import annotations

from app.panels import pages
from app.panels.describe import Page
from app.panels.pocket_rows import new_pocket_row
from app.window.tool_bar import ToolBar
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit


def stage_page(stage: str, layout: Headstock, unit: LengthUnit, tools: ToolBar) -> Page:
    """The page of a stage."""
    if stage == "blank":
        return Page(say("Blank"), [], pages.blank_page(layout, unit))
    if stage == "outline":
        return Page(say("Outline"), pages.outline_page(layout, unit), [])
    if stage == "slots":
        return Page(say("Slots"), pages.slots_page(layout, unit), [new_pocket_row(layout, unit)])
    if stage == "tuners":
        chosen = tools.hardware.currentText()
        return Page(say("Hardware"), [], pages.tuners_page(layout, chosen), chosen)
    return Page(say("Sheets"), [], pages.sheets_page(layout, unit, tools.paper.currentText()))
