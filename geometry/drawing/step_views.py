"""Everything that is drawn of one step: the piece from the side that is up, what the step takes off, and a section."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from geometry.drawing.marks import Drawing
from geometry.drawing.opened_out import blank_box
from geometry.drawing.wood_back import wood_back_drawing
from geometry.drawing.wood_removed import removed, removed_from_behind, removed_in_section, section_mark
from geometry.drawing.wood_section import section_for, wood_section
from geometry.drawing.wood_state import wood_drawing
from geometry.layout import Headstock
from geometry.sequence.operation import Operation
from geometry.sequence.state import WoodState, state_of
from geometry.units import LengthUnit
from geometry.vectors import Box


class StepViews(Struct, frozen=True):
    """`plan` is the opened-out view, or the back while that is up; `box` (mm) is the same for all steps of a layout."""

    state: WoodState
    """when the step is done"""
    plan: Drawing
    section: Drawing
    box: Box


def step_views(layout: Headstock, steps: Sequence[Operation], at: int, ops: Sequence[Operation],
               unit: LengthUnit = "mm") -> StepViews:
    """The views of step number `at`, 0 first. IndexError for a step that there is not; GeometryError when the outline has no inside."""
    op = steps[at]
    before, after = state_of(layout, steps[:at], ops), state_of(layout, steps[:at + 1], ops)
    line = section_for(layout, op)
    if op.setup.side == "back":
        plan = (*wood_back_drawing(layout, after), *removed_from_behind(layout, op, before, after))
    else:
        shown = section_mark(layout, line) if before.outline == "square" else ()
        plan = (*wood_drawing(layout, after), *removed(layout, op, before, after), *shown)
    section = wood_section(layout, after, line, unit)
    cut = removed_in_section(layout, op, before, after, line)
    return StepViews(after, plan, (*section, *cut), blank_box(layout.blank))
