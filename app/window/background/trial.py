"""Work on one layout on its way beside the window: it can be asked to stop, and tells its progress."""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import partial

from app.window.background.aside import stand_aside
from geometry.layout import Headstock

Work = Callable[[Headstock, Callable[[float], None], Callable[[], bool]], object]
"""(layout, progress, cancelled) to an answer"""


class Trial:
    """Calls `work` when it is called itself, in a thread of its own; `heard` gets its progress there.

    It stands aside while the hand is at work, where it asks whether it is cancelled.
    """

    def __init__(self, layout: Headstock, work: Work, heard: Callable[[float], None]) -> None:
        self.layout = layout
        self._work = work
        self._stop = threading.Event()
        self._heard = heard
        self._told = 0.0

    def stop(self) -> None:
        """Ask it to stop; it does within some milliseconds."""
        self._stop.set()

    @property
    def stopped(self) -> bool:
        """Whether it has been asked to stop."""
        return self._stop.is_set()

    def __call__(self) -> object:
        return self._work(self.layout, self._progress, partial(stand_aside, self._stop.is_set))

    def _progress(self, part: float) -> None:
        if part - self._told >= 0.04 and not self._stop.is_set():
            self._told = part
            self._heard(part)
