"""Work away from the window: one function in one thread, its answer or its error as a signal."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QThread, Signal


class Background(QThread):
    """Runs `work` once. `answered` carries its result, `failed` the exception it raised."""

    answered = Signal(object)
    failed = Signal(object)

    def __init__(self, work: Callable[[], object], parent: QObject) -> None:
        super().__init__(parent)
        self._work = work

    def run(self) -> None:
        try:
            answer = self._work()
        except Exception as error:
            self.failed.emit(error)
        else:
            self.answered.emit(answer)
