"""The section along a line that is being laid, in the panel on the right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.tools import Shown
from geometry.drawing.line_section import line_section
from geometry.drawing.section_snags import snags_on_line
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def show_line(window: Frame, shown: Shown) -> None:
    """Show what the line of the running gesture cuts; it has one."""
    inside = window.side.inside
    inside.show_room(None)
    inside.show_section(say("Section along the line"), line_section(shown.layout, *shown.line, window.unit),
                        snags_on_line(*shown.line, window.document.result.snags))
