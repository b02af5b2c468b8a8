"""One piece of work beside the window at a time, for a room or a dialog that asks for it again and again."""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal, SignalInstance

from app.threads.background import Background, end_all
from app.window.background.aside import stand_aside
from geometry.cancellation import Ask, At, Stopped, asking
from geometry.errors import GeometryError

SEEN = 0.04
"""Least part of the work that is worth telling of"""


class Errand(QObject):
    """Runs one piece of work after the other, each in a thread of its own.

    `answered` or `failed` brings what came of one, and then `ended` says that
    the next may be given; of one that was stopped `ended` alone. It is free from
    that moment on, also while the thread itself is still on its way out.
    """

    answered = Signal(object)
    failed = Signal(object)
    """the exception: who listens has it `raised` again, but for those that were to be expected"""
    ended = Signal()

    def __init__(self, parent: QObject, **more) -> None:
        super().__init__(parent, **more)
        self._running: Background | None = None
        self._stop = threading.Event()
        """whether nobody wants the answer of the one that works"""
        self._place = _Place()
        self._threads: list[Background] = []
        """the one that works and those that have told their answer but have not ended yet"""
        self._over = False

    @property
    def busy(self) -> bool:
        """Whether an answer is on its way."""
        return self._running is not None

    @property
    def free(self) -> bool:
        """Whether work may be given."""
        return self._running is None and not self._over

    def at(self) -> str:
        """What the work that runs is at, in words; "" where it does not tell, or nobody wants its answer."""
        return "" if self._place.at is None or self._stop.is_set() else self._place.at()

    def start(self, work: Callable[[], object]) -> None:
        """Begin. RuntimeError unless it is free."""
        self.start_in_parts(lambda _: work())

    def start_in_parts(self, work: Callable[[Ask], object]) -> None:
        """Begin work that asks between its parts (geometry/cancellation.py): there it stands aside while the hand is at work, and
        ends when it is stopped. RuntimeError unless it is free."""
        if not self.free:
            raise RuntimeError("one piece of work at a time")
        self._stop, self._place = threading.Event(), _Place()
        thread = self._running = Background(partial(work, asking(partial(stand_aside, self._stop.is_set), self._place.hear)), self)
        self._threads.append(thread)
        thread.answered.connect(self._answered)
        thread.failed.connect(self._failed)
        thread.finished.connect(self._gone)
        thread.start()

    def stop(self) -> None:
        """Nobody wants the answer any more: it is not told. Work in parts ends at its next part, other work goes on to its
        end; then `ended` says that it has."""
        self._stop.set()

    def end(self) -> None:
        """Stop what runs, tell nothing of it and take no more work. It is waited for, but left when it does not end soon."""
        self._end()
        end_all(self._threads)

    def leave(self) -> None:
        """As `end`, of work that changes nothing: it is not waited for at all."""
        self._end()
        for thread in self._threads:
            thread.leave()

    # ---- inside ---------------------------------------------------------
    def _end(self) -> None:
        self._over, self._running = True, None
        self._stop.set()

    def _answered(self, answer: object) -> None:
        self._tell(self.answered, answer, not self._stop.is_set())

    def _failed(self, error: Exception) -> None:
        expected = isinstance(error, Stopped | GeometryError)
        self._tell(self.failed, error, not (expected and self._stop.is_set()))

    def _tell(self, signal: SignalInstance, what: object, wanted: bool) -> None:
        if self._running is None:  # ended while this was on its way
            return
        try:
            if wanted:
                signal.emit(what)
        finally:
            self._running = None
            self.ended.emit()

    def _gone(self) -> None:
        self._threads = [one for one in self._threads if not one.isFinished()]


def in_steps(heard: Callable[[float], None]) -> Callable[[float], None]:
    """Tells `heard` how much of some work is done (0 to 1), in steps that can be seen: what is told of takes a turn of the window."""
    told = 0.0

    def tell(part: float) -> None:
        nonlocal told
        if part - told >= SEEN:
            told = part
            heard(part)
    return tell


class _Place:
    """What one piece of work is at: told in its thread, read in that of the window."""

    def __init__(self) -> None:
        self.at: At | None = None

    def hear(self, at: At) -> None:
        """Called in the thread of the work."""
        self.at = at
