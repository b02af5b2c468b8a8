"""Work away from the window: one function in one thread, its answer or its error as a signal."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QDeadlineTimer, QObject, QThread, Signal

from app.window.aside import share_finely
from app.window.collector import rest, resume


class Background(QThread):
    """Runs `work` once. `answered` carries its result, `failed` the exception it raised.

    While any such thread runs, cyclic garbage is left alone (see collector.py).
    """

    answered = Signal(object)
    failed = Signal(object)

    def __init__(self, work: Callable[[], object], parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self.finished.connect(self._ended)

    def start(self) -> None:
        """Begin; call it from the thread of the window."""
        rest(self)
        share_finely()
        super().start()

    def wait(self) -> bool:
        """Wait for the end, from the thread of the window."""
        done = super().wait(QDeadlineTimer(QDeadlineTimer.ForeverConstant.Forever))
        self._ended()
        return done

    def run(self) -> None:
        try:
            answer = self._work()
        except Exception as error:
            self.failed.emit(error)
        else:
            self.answered.emit(answer)

    def _ended(self) -> None:
        resume(self)
