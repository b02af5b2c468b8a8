"""Work beside the window that is waited for: the one box with progress and Cancel, and what the hand does meanwhile."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from PySide6.QtCore import QEventLoop, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from app.look.plain import plain
from app.threads.background import Background
from geometry.cancellation import At
from geometry.saying import say

if TYPE_CHECKING:
    from PySide6.QtWidgets import QProgressDialog

SHOWS_MS = 400
"""How long work goes on before it is told of."""
ENDS_MS = 2000
"""How long work that was called off is waited for: what does not end within that is in the hands of a drive or a printer."""

_waits: list[Waiting] = []


class Cancelled(Exception):
    """The maker pressed Cancel."""


class Progress(QObject):
    """Carries the part done from the thread to the window, and the wish to stop the other way.

    Nobody's child: the thread may speak through it when whoever asked is destroyed.
    """

    told = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._stop = False
        self._told = -1

    def tell(self, part: float) -> None:
        """Called in the thread: the part done, 0..1. Raises Cancelled once the maker has had enough."""
        if self._stop:
            raise Cancelled
        if round(100 * part) != self._told:
            self._told = round(100 * part)
            self.told.emit(self._told)

    def ask(self, _: At | None = None) -> None:
        """Called in the thread by work that cannot tell how much of it is done, as an Ask of geometry/cancellation.py.
        Raises Cancelled once the maker has had enough."""
        if self._stop:
            raise Cancelled

    def stop(self) -> None:
        """Called in the window."""
        self._stop = True


class Waiting(QObject):
    """Waits until `over` is called, in an event loop of its own.

    At first nothing is shown, and what the hand does stays in the system's queue: what is waited for is mostly over in a
    moment, and the hand then goes on where it was. After SHOWS_MS a box takes the hand's place, with a bar that moves to and
    fro until `show_part` is called, and with a button where `stops` is its word.
    """

    stopped = Signal()
    """the button, or Esc"""

    def __init__(self, parent: QWidget | None, words: str = "", stops: str = "") -> None:
        super().__init__()
        self.asker, self._words, self._stops = parent, words, stops
        self._loop = QEventLoop()  # nobody's child: whoever is destroyed while it runs must not take it along
        self._over = False
        self.given_up = False
        """whether the maker has had enough"""
        self._box: QProgressDialog | None = None
        if parent is not None:
            parent.destroyed.connect(self._gone)

    def over(self) -> None:
        """The slot: nothing is waited for any more."""
        self._over = True
        self._loop.quit()

    def show_part(self, percent: int) -> None:
        """The slot: so much is done, 0..100."""
        if self._box is not None and isValid(self._box):
            self._box.setMaximum(100)
            self._box.setValue(min(99, percent))

    def wait(self, ms: int | None = None) -> bool:
        """Whether whoever asked is still there. With `ms` no box comes: after so long it is given up."""
        shows = ms is None
        _waits.append(self)
        try:
            if not self._over:
                self._hold(SHOWS_MS if ms is None else ms)
            if shows and not self._over:
                self._show()
                self._loop.exec()
            if shows and not self._over:  # the maker has had enough, and the box is gone
                self._hold(ENDS_MS)
        finally:
            _waits.remove(self)
            self._put_away()
        return self._there()

    # ---- inside ---------------------------------------------------------
    def _hold(self, ms: int) -> None:
        """Wait so long at most, while what the hand does stays in the system's queue."""
        timer = QTimer(singleShot=True, timeout=self._loop.quit)
        timer.start(ms)
        self._loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
        timer.stop()

    def _there(self) -> bool:
        return self.asker is None or isValid(self.asker)

    def _gone(self) -> None:
        self._box = None  # it went along
        self.over()

    def _show(self) -> None:
        from PySide6.QtWidgets import QProgressBar, QProgressDialog, QPushButton  # here: no start waits

        self._box = box = QProgressDialog(plain(self._words), "", 0, 0, self.asker)
        bar = QProgressBar(box, minimum=0, maximum=0, textVisible=False)  # letters over both halves of a bar can be read on neither
        box.setBar(bar)
        button = QPushButton(self._stops, box) if self._stops else None
        if button is not None:
            button.setAutoDefault(False)
        box.setCancelButton(button)
        box.setFocus()  # Enter and Space meant for what the hand was at as the box came press nothing; Tab leads to the button
        box.setWindowModality(Qt.WindowModality.WindowModal)
        box.setAutoReset(False)
        box.canceled.connect(self._stop)
        box.show()

    def _stop(self) -> None:
        self.given_up = True
        self.stopped.emit()
        self._loop.quit()

    def _put_away(self) -> None:
        box, self._box = self._box, None
        if box is not None and isValid(box):
            box.canceled.disconnect(self._stop)
            box.close()
            box.deleteLater()
        if self.asker is not None and isValid(self.asker):
            self.asker.destroyed.disconnect(self._gone)


def waited_for(window: QWidget) -> bool:
    """Whether something that a window, or a dialog before it, asked for is waited for: it cannot go in the midst of that."""
    return any(window in _wholes(wait.asker) for wait in _waits)


def _wholes(part: QWidget | None) -> Iterator[QWidget]:
    while part is not None and isValid(part):
        yield part
        part = part.parentWidget()


def done_beside(parent: QWidget | None, words: str, work: Callable[[], object], progress: Progress | None = None,
                gives_up: str = "") -> object:
    """The answer of `work`, done in a thread while the window stays alive; what it raises is raised here.

    With a `progress` that the work tells or asks, Cancel has it end, which is waited for ENDS_MS: the answer is then None. With
    `gives_up`, a word for the button, the work is left to itself, as for a drive that does not answer; the answer is None at
    once. Without either it is short and cannot be stopped. None too when the parent was destroyed meanwhile: there is nobody
    left to tell.
    """
    wait = Waiting(parent, words, say("Cancel") if progress is not None else gives_up)
    thread, kept = _thread(wait, work)
    if progress is not None:
        progress.told.connect(wait.show_part)
        wait.stopped.connect(progress.stop)
    elif gives_up:
        wait.stopped.connect(wait.over)
    thread.start()
    if not wait.wait():
        if progress is not None:
            progress.stop()
        thread.leave()
        return None
    return _outcome(thread, kept)


def answer_soon(parent: QWidget | None, work: Callable[[], object], otherwise: object, ms: int = SHOWS_MS) -> object:
    """The answer of `work`, done in a thread, or `otherwise` when it does not come within so many ms: work that only looks, of
    which it does not matter much. What it raises is raised here."""
    wait = Waiting(parent)
    thread, kept = _thread(wait, work)
    thread.start()
    wait.wait(ms)
    answer = _outcome(thread, kept)
    return answer if kept.told else otherwise


def _thread(wait: Waiting, work: Callable[[], object]) -> tuple[Background, _Kept]:
    """A thread whose end is waited for, and what keeps what it tells."""
    thread, kept = Background(work, wait.asker), _Kept()
    thread.answered.connect(kept.answer)
    thread.failed.connect(kept.fail)
    thread.finished.connect(wait.over)
    return thread, kept


def _outcome(thread: Background, kept: _Kept) -> object:
    """What came of a thread; one that still runs is left."""
    if thread.isFinished():
        thread.wait()
    else:
        thread.leave()
    if kept.error is not None and not isinstance(kept.error, Cancelled):
        raise kept.error
    return kept.what


class _Kept(QObject):
    """Keeps what a thread tells, in the thread of the window."""

    def __init__(self) -> None:
        super().__init__()
        self.what: object = None
        self.told = False
        self.error: Exception | None = None

    def answer(self, what: object) -> None:
        """The slot of `answered`."""
        self.what, self.told = what, True

    def fail(self, error: Exception) -> None:
        """The slot of `failed`."""
        self.error = error
