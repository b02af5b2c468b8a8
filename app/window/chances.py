"""Chances in the window: worked out beside it when the layout rests, told in the panel, marked on the canvas."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer, Signal

from app.panels.snags.chance_words import Chances
from app.threads.background import raised
from app.window.background.errand import Errand, in_steps
from app.window.rooms.room import StageRoom
from geometry.accuracy.told import is_simulated
from geometry.checks.snags import SPOILS, TIGHT
from geometry.errors import GeometryError
from geometry.layout import Headstock

if TYPE_CHECKING:
    from collections.abc import Callable

    from app.window.dialogs.holding import HoldDialog
    from app.window.frame import Frame
    from geometry.accuracy import Clearance, Simulation
    from geometry.cancellation import Ask

REST_MS = 600
"""How long the layout has to rest before its chances are worked out."""
PACE_MS = 100
"""From a change in the midst of a drag to the words on it."""
TRIALS = 10_000
SEED = 1


class ChanceWatch(StageRoom):
    """Belongs to no stage: it watches the layout all the time and keeps what is known of its chances."""

    changed = Signal()
    """what is known has changed"""
    _part = Signal(float)

    def __init__(self, window: Frame) -> None:
        super().__init__(window)
        self.chances = Chances()
        self._of: Headstock | None = None
        self._tried: Headstock | None = None
        """the layout whose chances are being worked out"""
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self._on_canvas = False
        self._rest = QTimer(self, singleShot=True, interval=REST_MS, timeout=self._begin)
        self._pace = QTimer(self, singleShot=True, interval=PACE_MS, timeout=self._tell)
        self._part.connect(self._progress)
        window.document.shown_changed.connect(self._edited)
        window.side.chance_chosen.connect(self._go_to)
        window.side.hold_asked.connect(self.ask)
        self.dialog: HoldDialog | None = None
        self._edited()

    # ---- what others ask ------------------------------------------------
    def show_on_canvas(self, shown: bool) -> None:
        """Mark the worst places on the drawing, or no longer."""
        self._on_canvas = shown
        self._mark()

    def ask(self) -> None:
        """Open what must be held, beside the drawing."""
        if self.dialog is None:
            from app.window.dialogs.holding import HoldDialog
            self.dialog = HoldDialog(self.window)
        self.dialog.open_for(self.chances.simulation.sound if self.chances.simulation is not None else None)

    def end(self) -> None:
        if self.dialog is not None:
            self.dialog.end()
        self._rest.stop()
        self._pace.stop()
        self.errand.end()

    # ---- the watch ------------------------------------------------------
    def _edited(self) -> None:
        """The layout on show is another: what runs is of no use any more."""
        shown = self.window.document.shown
        running = self._tried is not None and self._tried == shown
        if not running:
            self.errand.stop()
        known = self._of == shown
        self._know(fresh=known, progress=self.chances.progress if running else None)
        if known or running:
            self._rest.stop()
        else:
            self._rest.start()

    def _begin(self) -> None:
        """The layout rests: build it many times, unless an older simulation is still on its way to its end."""
        if self.window.opens:
            self._rest.start()
            return
        if not self.errand.free:
            return
        self._tried = self.window.document.shown
        self._know(fresh=False, progress=0.0, trouble="")
        self.errand.start_in_parts(partial(_simulated, self._tried, in_steps(self._part.emit)))

    def _progress(self, part: float) -> None:
        if self._tried is not None and self._tried == self.window.document.shown:
            self._know(progress=part)

    def _answered(self, found: Simulation) -> None:
        self._of = self._tried
        self._know(simulation=found, fresh=self._of == self.window.document.shown, progress=None, trouble="")

    def _failed(self, error: Exception) -> None:
        self._of = self._tried
        raised(error, but=GeometryError)
        self._know(simulation=None, fresh=True, progress=None, trouble=str(error))

    def _ended(self) -> None:
        self._tried = None
        self._know(progress=None)
        if self._of != self.window.document.shown:
            self._rest.start()

    # ---- telling it -----------------------------------------------------
    def _know(self, **news: object) -> None:
        kept = {name: getattr(self.chances, name) for name in ("simulation", "fresh", "progress", "trouble")}
        snags, shown = self.window.document.result.snags, self.window.document.shown
        now = Chances(**(kept | news), spoiled=sum(snag.grade == SPOILS for snag in snags),
                      uncounted=sum(snag.grade == TIGHT and not is_simulated(snag) for snag in snags),
                      bare=not (shown.tuners or shown.holes or shown.slots or shown.pins))
        if now == self.chances:
            return
        self.chances = now
        if not self.window.canvas.moving:
            self._tell()
        elif not self._pace.isActive():
            self._pace.start()
        self._mark()
        self.changed.emit()

    def _tell(self) -> None:
        """Say it in the panel, while a drag goes on at an eye's pace."""
        self._pace.stop()
        self.window.side.show_chances(self.chances)

    def _mark(self) -> None:
        """Marks of an older layout would stand in the wrong places: they are shown for the layout on show alone."""
        known = self.chances.simulation if self.chances.fresh and self._on_canvas else None
        self.window.canvas.show_chances(known)

    def _go_to(self, clearance: Clearance) -> None:
        self.window.canvas.go_to(clearance.where[:2])
        self.window.document.hold(clearance.between[:1])


def _simulated(layout: Headstock, progress: Callable[[float], None], ask: Ask) -> Simulation:
    from geometry.accuracy import simulate  # here, so that a start does not wait for it
    return simulate(layout, TRIALS, SEED, progress, ask)
