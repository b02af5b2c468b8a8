"""To draw a head oneself: a bare blank with nut and strings, the drawing tool in hand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec.structs import replace

from app.window.rooms.own_rack import with_own_rack
from geometry.beginning import Numbers, mended
from geometry.beginning.in_unit import usual_numbers
from geometry.layout import Headstock
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.frame import Frame


def bare(numbers: Numbers | None = None) -> Headstock:
    """The usual blank, nut and strings, an outline that waits to be drawn over, and nothing else."""
    _, layout, _ = mended(numbers or Numbers())
    return replace(layout, name=say("Drawn by hand"), about="", tuners=(), rows=(), slots=(), pins=(), holes=())


def begin_bare(window: Frame) -> None:
    """Open it on the Outline stage."""
    if window.files.may_leave():
        window.document.replace(with_own_rack(window, bare(usual_numbers(window.unit))), None)
        window.set_stage("outline")
        window.tools.mirrored.setChecked(True)
        window.set_tool("draw outline")
