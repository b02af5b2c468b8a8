"""Work of the window's own thread in turns of the event loop, so that the window answers between two of them."""

from __future__ import annotations

import time
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from itertools import islice

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QLayout

TURN = 0.012
"""Seconds of work that one turn may take, but for the length of its last step: of work, for on a busy machine by the clock each
turn would do less, and the window be laid out anew after each."""

Steps = Generator[None, None, None]


class Turns(QObject):
    """Goes through a generator's steps, for some milliseconds at a time."""

    done = Signal()
    """all steps were gone through"""

    def __init__(self, parent: QObject, layout: QLayout | None = None) -> None:
        """With the layout to which the steps add widgets these are laid together, once in each turn."""
        super().__init__(parent)
        self._layout = layout
        self._steps: Steps | None = None
        self._next = QTimer(self, singleShot=True, timeout=self._go)

    @property
    def busy(self) -> bool:
        """Whether steps are left."""
        return self._steps is not None

    def begin(self, steps: Steps, wait_ms: int = 0, at_once: int = 0) -> None:
        """Go through these steps, the first `at_once` of them now, the others from so many milliseconds on; those of before are given up."""
        self.stop()
        for _ in islice(steps, at_once):
            pass
        self._steps = steps
        self._next.start(wait_ms)

    def finish(self) -> None:
        """Go through the steps that are left now."""
        steps, self._steps = self._steps, None
        self._next.stop()
        if steps is not None:
            with _laid_together(self._layout):
                for _ in steps:
                    pass
            self.done.emit()

    def stop(self) -> None:
        """Give up the steps that are left. One of them may ask for it itself: then they are closed when it is over."""
        self._next.stop()
        steps, self._steps = self._steps, None
        if steps is not None and not steps.gi_running:
            steps.close()

    def _go(self) -> None:
        steps, ends = self._steps, time.thread_time() + TURN
        try:
            with _laid_together(self._layout):
                for _ in steps:
                    if self._steps is not steps:  # given up by what the step did
                        steps.close()
                        return
                    if time.thread_time() >= ends:
                        self._next.start(0)
                        return
        except BaseException:
            if self._steps is steps:
                self._steps = None
            raise
        if self._steps is steps:
            self._steps = None
            self.done.emit()


@contextmanager
def _laid_together(layout: QLayout | None) -> Iterator[None]:
    """Widgets that are added in here are shown and laid at the end of it.

    Of itself the toolkit lays all that is around a widget anew as soon as it is shown: a page on show that gets forty rows more
    would be laid eighty times. Here only the last one that is shown finds the layout at work.
    """
    if layout is None:
        yield
        return
    before = layout.count()
    layout.setEnabled(False)
    try:
        yield
    finally:
        added = [layout.itemAt(i).widget() for i in range(before, layout.count())]
        for widget in added[:-1]:
            widget.show()
        layout.setEnabled(True)
        for widget in added[-1:]:
            widget.show()
