"""A proposal for the layout of record, sought beside the window when the maker asks for it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.panels.forms.work_note import WorkNote
from app.threads.background import raised
from app.window.background.errand import Errand
from geometry.cancellation import Ask
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.units import LengthUnit

if TYPE_CHECKING:
    from app.window.frame import Frame


class Seeking(QObject):
    """One search at a time. Asked for anew while that for an older layout runs, it begins again after it.

    A search that takes long is told of over the drawing, where it can be stopped.
    """

    found = Signal(object)
    """what was found for the layout as it is now"""

    def __init__(self, parent: QObject, window: Frame, words: str, changed: str, work: Callable[[Headstock, LengthUnit, Ask], object]) -> None:
        """`words` say that it is looked for, `changed` that the layout was another when it was found."""
        super().__init__(parent)
        self._window, self._words, self._changed, self._work = window, words, changed, work
        self.of: Headstock | None = None
        """the layout that it was last sought for"""
        self._again = self._stopped = False
        self.errand = Errand(self, answered=self._answered, failed=self._failed, ended=self._ended)
        self.note = WorkNote(window.canvas)
        self.note.stopped.connect(self.stop)
        self.note.put_away.connect(window.drawing_wanted)

    def start(self) -> None:
        """Seek; `found` brings the answer, or the foot a sentence why there is none."""
        layout = self._window.document.layout
        if not self.errand.free:
            self._again = self._stopped or layout is not self.of
            return
        self.of, self._stopped = layout, False
        self._window.say(self._words)
        self.note.working(self._words, self.errand.at)
        self.errand.start_in_parts(partial(self._work, layout, self._window.unit))

    def stop(self) -> None:
        """The maker wants no answer any more."""
        self._stopped, self._again = True, False
        self.errand.stop()
        self.note.none()
        self._window.say(say("Stopped: nothing was changed."))

    def give_up(self) -> None:
        """The answer of what runs, if anything does, would come where nobody looks for it: it was never asked for."""
        if self.errand.busy:
            self.stop()
            self.of = None

    def end(self) -> None:
        """The window goes: stop what runs, wait for its end, and begin nothing more."""
        self.errand.end()

    # ---- inside -------------------------------------------------------------
    def _answered(self, answer: object) -> None:
        if self._again:
            return
        if self._window.document.layout is not self.of:
            self._window.say(self._changed)
        else:
            self.found.emit(answer)

    def _failed(self, error: Exception) -> None:
        raised(error, but=GeometryError)
        self._window.say(str(error))

    def _ended(self) -> None:
        again, self._again = self._again, False
        if again:
            self.start()
        else:
            self.note.none()
