"""Work away from the window: one function in one thread, its answer or its error as a signal."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterable

from PySide6.QtCore import QDeadlineTimer, QObject, QThread, QTimer, Signal
from shiboken6 import isValid

SHARE = 0.001
"""Seconds for which one thread may keep the interpreter while another waits for it. Python's own 5 ms are a stutter:
the window waits as long again and again in one step, until the work beside it comes to where it can stand aside."""
END_SECONDS = 2.0
"""How long a thread that nobody wants any more is waited for. What works ends within a part of that; what does not is in the
hands of a drive that has gone, which may take minutes."""

_running: set[Background] = set()
_ended: list[Background] = []
"""those whose end has just been heard of"""
_left: set[Background] = set()
"""those of the running that nobody waits for"""


class Background(QThread):
    """Runs `work` once. `answered` carries its result, `failed` the exception it raised.

    It is nobody's child and is kept here until it has ended: the toolkit ends the program when a thread is destroyed that
    still runs, and whoever asked may be destroyed first; its signals then reach nobody. Nobody destroys it either: it goes
    with the last who holds it, and never before its end was heard of here. Nor does it go while that is told: the toolkit
    still looks at a thread when the slots of its `finished` return, and falls over one that is freed.
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
        _running.add(self)
        sys.setswitchinterval(SHARE)
        super().start()

    def wait(self, seconds: float | None = None) -> bool:
        """Wait for the end, from the thread of the window, for so long at most; whether it has ended."""
        forever = QDeadlineTimer(QDeadlineTimer.ForeverConstant.Forever)
        done = super().wait(forever if seconds is None else QDeadlineTimer(round(1000 * max(0.0, seconds))))
        if done:
            self._ended()
        return done

    def leave(self) -> None:
        """Nobody waits for it any more, neither a window that closes nor the end of the program: it may be in the hands of a
        drive that has gone. It is told of nothing but its end."""
        if self in _running:
            _left.add(self)

    def run(self) -> None:
        try:
            answer = self._work()
        except Exception as error:
            self.failed.emit(error)
        else:
            self.answered.emit(answer)

    def _ended(self) -> None:
        super().wait(QDeadlineTimer(QDeadlineTimer.ForeverConstant.Forever))  # what tells of its end may not have told all yet
        _running.discard(self)
        _left.discard(self)
        _ended.append(self)
        QTimer.singleShot(0, _let_go)


def raised(error: Exception, but: type[Exception] | tuple[type[Exception], ...] = ()) -> None:
    """The slot of `failed` where no error is to be expected; or what such a slot begins with, where all `but` these are raised."""
    if not isinstance(error, but):
        raise error


def _let_go() -> None:
    """A turn of the event loop after all were told of their end."""
    _ended.clear()


def end_all(threads: Iterable[Background]) -> None:
    """Wait for threads that nobody wants any more, and leave those that do not end."""
    ends = time.monotonic() + END_SECONDS
    for thread in list(threads):
        if not thread.wait(ends - time.monotonic()):
            thread.leave()


def running(whole: QObject | None = None) -> list[Background]:
    """The threads that run for an object or for a part of it, but for those that were left; all that run without one."""
    return [thread for thread in _running - _left if whole is None or whole in _wholes(thread.asker)]


def left() -> bool:
    """Whether a thread that was left runs yet: the process can then end only without the interpreter's own end, which would
    destroy a thread that runs."""
    return bool(_left)


def _wholes(part: QObject) -> list[QObject]:
    """An object and all that it is a part of; none when it is destroyed."""
    found: list[QObject] = []
    while part is not None and isValid(part):
        found.append(part)
        part = part.parent()
    return found
