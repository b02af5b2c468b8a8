"""The search for two pins beside the window; what it finds is held over the layout until the maker takes it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.tools.propose import propose
from app.window.errand import Errand
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say

if TYPE_CHECKING:
    from app.window.main import MainWindow
    from geometry.sequence.pin_plan import PinPlan
    from geometry.sequence.pins import NoPins


class PinProposal(QObject):
    """Runs one search at a time."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._for: Headstock | None = None
        self._again = False
        self.errand = Errand(self)
        self.errand.answered.connect(self._answered)
        self.errand.failed.connect(self._failed)
        self.errand.ended.connect(self._ended)

    def start(self) -> None:
        """Search; the answer comes as a ghost on the canvas, or as a sentence why there is none.

        Asked for while a search for an older layout runs, it begins after that.
        """
        if not self.errand.free:
            self._again = self._window.document.layout is not self._for
            return
        from geometry.sequence.pin_plan import plan_pins  # here, so that a start does not wait for it
        window = self._window
        window.set_tool("hold")
        self._for = window.document.layout
        window.say(say("Looking for places…"))
        self.errand.start_in_parts(partial(plan_pins, self._for, None, window.unit))

    def end(self) -> None:
        """The window goes: wait for a search that runs."""
        self.errand.end()

    def _answered(self, plan: PinPlan | NoPins) -> None:
        from geometry.sequence.pins import NoPins
        window = self._window
        if self._again:
            return
        if window.document.layout is not self._for or window.hand.busy:
            window.say(say("The layout changed while places for pins were looked for: ask again."))
        elif isinstance(plan, NoPins):
            window.say(plan.reason)
        else:
            window.document.hold(())
            window.hand.begin(propose(self._for, plan))
            window.canvas.view.setFocus()

    def _failed(self, error: Exception) -> None:
        if not isinstance(error, GeometryError):
            raise error
        self._window.say(str(error))

    def _ended(self) -> None:
        """Asked for anew while the answer for an older layout was on its way: it is sought now."""
        again, self._again = self._again, False
        if again:
            self.start()
