"""Which page a stage shows while nothing is held, unless it has a room with a panel of its own."""

from __future__ import annotations

from msgspec.structs import replace

from app.panels import pages
from app.panels.describe import SHAPING, Page, outline_size
from app.panels.forms.rows import FieldRow
from app.panels.pocket_rows import new_pocket_row
from app.window.tool_bar import ONCE, ToolBar
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

NODES = say("A press sets a node; on the first one, or with Enter, the line closes.")
HALF = say("Press where the outline leaves the nut line, then for each node up to the centreline: the other side follows.")
NO_TUNER = say("No tuner yet: choose its hardware over the drawing, then Place, and press where its post goes.")
DRAWING = say("Numbers can be typed, Tab leads from one to the next. The keys S, A, T and C choose a straight edge, an arc, one that goes "
              "on without a corner, and a curve: pull before letting go to bend it. Backspace takes the last node back.")


def stage_page(stage: str, layout: Headstock, unit: LengthUnit, tools: ToolBar) -> Page:
    """The page of a stage, and before it what the tool in hand wants, for as long as it is in hand."""
    page, how = _page(stage, layout, unit, tools), _how(stage, tools)
    return replace(page, facts=[FieldRow(how, "note"), *page.facts]) if how else page


def _how(stage: str, tools: ToolBar) -> str:
    if tools.tool in ONCE:
        return f"{HALF if tools.tool == 'draw outline' and tools.mirrored.isChecked() else NODES} {DRAWING}"
    if tools.tool == "hold":
        return SHAPING if stage == "outline" else ""
    return tools.about


def _page(stage: str, layout: Headstock, unit: LengthUnit, tools: ToolBar) -> Page:
    if stage == "blank":
        return Page(say("Blank"), [], pages.blank_page(layout, unit))
    if stage == "outline":
        return Page(say("Outline"), outline_size(layout, unit), [])
    if stage == "slots":
        return Page(say("Slots"), pages.slots_page(layout, unit), [new_pocket_row(layout, unit)])
    if stage == "tuners":
        chosen = tools.hardware.currentText()
        return Page(say("Hardware"), [] if layout.tuners else [FieldRow(NO_TUNER, "heading")], pages.tuners_page(layout, chosen), chosen)
    return Page(say("Sheets"), [], pages.sheets_page(layout, unit, tools.paper.currentText()))
