"""One piece of work beside the window at a time, for a room or a dialog that asks for it again and again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal, SignalInstance

from app.window.background import Background


class Errand(QObject):
    """Runs one piece of work after the other, each in a thread of its own.

    `answered` or `failed` brings what came of one, and then `ended` says that
    the next may be given. It is free from that moment on, also while the
    thread itself is still on its way out.
    """

    answered = Signal(object)
    failed = Signal(object)
    """the exception: who listens raises it again unless it is one that was to be expected"""
    ended = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._running: Background | None = None
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

    def start(self, work: Callable[[], object]) -> None:
        """Begin. RuntimeError unless it is free."""
        if not self.free:
            raise RuntimeError("one piece of work at a time")
        thread = self._running = Background(work, self)
        self._threads.append(thread)
        thread.answered.connect(self._answered)
        thread.failed.connect(self._failed)
        thread.finished.connect(self._gone)
        thread.start()

    def end(self) -> None:
        """Wait for what runs, tell nothing of it and take no more work. Who can stop the work does so before."""
        self._over, self._running = True, None
        for thread in self._threads:
            thread.wait()

    # ---- inside ---------------------------------------------------------
    def _answered(self, answer: object) -> None:
        self._tell(self.answered, answer)

    def _failed(self, error: Exception) -> None:
        self._tell(self.failed, error)

    def _tell(self, signal: SignalInstance, what: object) -> None:
        if self._running is None:  # ended while this was on its way
            return
        try:
            signal.emit(what)
        finally:
            self._running = None
            self.ended.emit()

    def _gone(self) -> None:
        self._threads = [one for one in self._threads if not one.isFinished()]


def raised(error: Exception) -> None:
    """The slot of `failed` where no error is to be expected."""
    raise error
