"""The radius of a rounding, with the largest that fits."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from app.window.dialogs.ghost_dialog import GhostDialog
from geometry.drawing import Drawing, Stroke
from geometry.edits import fillet, largest_fillet, loop_at
from geometry.layout import Headstock, loop_path
from geometry.saying import say
from geometry.units import format_close

if TYPE_CHECKING:
    from app.window.frame import Frame

BEGIN_WITH = 6.0
"""mm"""
HAIR = 0.5
"""mm: a shorter edge is none that was meant to be seen (common practice, no source)."""


class RoundDialog(GhostDialog):
    """Rounds the corner at a node of a loop; `value` is the radius in mm. GeometryError where there is no corner."""

    def __init__(self, window: Frame, ref: str, node: int) -> None:
        self._ref, self._node = ref, node
        self._mirrored = window.chooser.options.mirrored
        self._most = largest_fillet(window.document.layout, ref, node)
        begin = BEGIN_WITH if self._most > BEGIN_WITH else max(0.01, int(self._most * 50) / 100)
        super().__init__(window, say("Round the corner"), say("Radius"), begin)

    def work(self) -> Callable[[], Headstock]:
        """The corner rounded."""
        return partial(fillet, self.layout_, self._ref, self._node, self.value, self._mirrored)

    def ghost(self, made: Headstock) -> Drawing:
        """The line with the corner rounded."""
        return (Stroke(loop_path(loop_at(made, self._ref)), "template"),)

    def told(self) -> str:
        """The largest radius that fits, and what to do where a hair of an edge beside the corner is what leaves no room."""
        unit = self.window_.unit
        segments = loop_path(loop_at(self.layout_, self._ref)).segments
        beside = min(segments[self._node - 1].length(), segments[self._node].length())
        if beside < HAIR and self._most < BEGIN_WITH:
            return say("Only {most} fits, because an edge beside this corner is no more than {length} long, as a gap that was closed "
                       "leaves it: remove the node at its other end, then round the corner.",
                       most=format_close(int(self._most * 100) / 100, unit, mark=True), length=format_close(beside, unit, 2, mark=True))
        return say("The largest radius that fits here is {most}.",
                   most=format_close(int(self._most * 100) / 100, unit, mark=True))
