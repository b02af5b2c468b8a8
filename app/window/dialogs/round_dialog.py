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
    from app.window.main import MainWindow

BEGIN_WITH = 6.0


class RoundDialog(GhostDialog):
    """Rounds the corner at a node of a loop; `value` is the radius in mm. GeometryError where there is no corner."""

    def __init__(self, window: MainWindow, ref: str, node: int) -> None:
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
        """The largest radius that fits."""
        unit = self.window_.unit
        return say("The largest radius that fits here is {most}.",
                   most=format_close(int(self._most * 100) / 100, unit, mark=True))
