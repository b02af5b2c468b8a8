"""Work away from the window: one function in one thread, its answer or its error as a signal."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QDeadlineTimer, QObject, QThread, QTimer, Signal
from shiboken6 import isValid

from app.window.background.aside import share_finely
from app.window.background.collector import rest, resume

_running: set[Background] = set()
_ended: list[Background] = []
"""those whose end has just been heard of"""


class Background(QThread):
    """Runs `work` once. `answered` carries its result, `failed` the exception it raised.

    While any such thread runs, cyclic garbage is left alone (see collector.py). It is nobody's child and is kept here
    until it has ended: the toolkit ends the program when a thread is destroyed that still runs, and whoever asked may
    be destroyed first; its signals then reach nobody. Nobody destroys it either: it goes with the last who holds it,
    and never before its end was heard of here, for the collector would rest for good. Nor does it go while that is told:
    the toolkit still looks at a thread when the slots of its `finished` return, and falls over one that is freed.
    """

    answered = Signal(object)
    failed = Signal(object)

    def __init__(self, work: Callable[[], object], asker: QObject) -> None:
        """`asker` is whose work it is: `running` finds it there."""
        super().__init__()
        self._work = work
        self.asker = asker
        self.finished.connect(self._ended)

    def start(self) -> None:
        """Begin; call it from the thread of the window."""
        rest(self)
        _running.add(self)
        share_finely()
        super().start()

    def wait(self) -> bool:
        """Wait for the end, from the thread of the window."""
        done = self._join()
        self._ended()
        return done

    def run(self) -> None:
        try:
            answer = self._work()
        except Exception as error:
            self.failed.emit(error)
        else:
            self.answered.emit(answer)

    def _join(self) -> bool:
        return super().wait(QDeadlineTimer(QDeadlineTimer.ForeverConstant.Forever))

    def _ended(self) -> None:
        self._join()  # what tells of its end is on its way out, and may not have told all yet
        resume(self)
        _running.discard(self)
        _ended.append(self)
        QTimer.singleShot(0, _let_go)


def _let_go() -> None:
    """A turn of the event loop after all were told of their end."""
    _ended.clear()


def running(whole: QObject | None = None) -> list[Background]:
    """The threads that run for an object or for a part of it; all that run without one."""
    return [thread for thread in _running if whole is None or whole in _wholes(thread.asker)]


def _wholes(part: QObject) -> list[QObject]:
    """An object and all that it is a part of; none when it is destroyed."""
    found: list[QObject] = []
    while part is not None and isValid(part):
        found.append(part)
        part = part.parent()
    return found
