"""The search for two pins beside the window; what it finds is held over the layout until the maker takes it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.tools.propose import propose
from app.window.rooms.seeking import Seeking
from geometry.cancellation import Ask
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame
    from geometry.sequence.pin_plan import PinPlan
    from geometry.sequence.pins import NoPins


class PinProposal(QObject):
    """Runs one search at a time."""

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self._window, self._stage = window, window.stage
        self.seeking = Seeking(self, window, say("Looking for places…"),
                               say("The layout changed while places for pins were looked for: ask again."), _plan)
        self.errand = self.seeking.errand
        self.seeking.found.connect(self._found)

    def start(self) -> None:
        """Search; the answer comes as a ghost on the canvas, or as a sentence why there is none."""
        if self.errand.free:
            self._window.set_tool("hold")
        self._stage = self._window.stage
        self.seeking.start()

    def end(self) -> None:
        """The window goes: wait for a search that runs."""
        self.seeking.end()

    def _found(self, plan: PinPlan | NoPins) -> None:
        from geometry.sequence.pins import NoPins
        window = self._window
        if isinstance(plan, NoPins):
            window.say(plan.reason)
        elif window.hand.begun or window.stage != self._stage:
            window.say(say("Places for pins are found, but you went on to something else: ask again."))
        else:
            window.document.hold(())
            window.hand.begin(propose(self.seeking.of, plan))
            window.canvas.view.setFocus()


def _plan(layout: Headstock, unit: LengthUnit, ask: Ask) -> PinPlan | NoPins:
    from geometry.sequence.pin_plan import plan_pins  # here, so that a start does not wait for it
    return plan_pins(layout, unit, ask)
