"""One piece of work beside the window, behind a small box with progress and Cancel."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEventLoop, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QProgressBar, QProgressDialog, QWidget
from shiboken6 import isValid

from app.look.plain import plain
from app.window.background.background import Background
from geometry.cancellation import At
from geometry.saying import say

SHOWS_MS = 400
"""How long work goes on before it is told of."""


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


def shown_soon(box: QProgressDialog) -> QTimer:
    """Show it unless this is stopped before: it comes only when work takes long. Left to the toolkit, a box that is told of no
    progress comes after four seconds, whatever its least duration is."""
    timer = QTimer(box)
    timer.setSingleShot(True)
    timer.timeout.connect(box.show)
    timer.start(SHOWS_MS)
    return timer


def done_beside(parent: QWidget, words: str, work: Callable[[], object], progress: Progress | None = None, fills: bool = True) -> object:
    """The answer of `work`, done in a thread while the window stays alive; what it raises is raised here.

    With a `progress` that the work tells, a bar fills and Cancel ends it: the
    answer is then None. Without `fills` the work only asks it, and the bar moves
    to and fro. Without a `progress` the work is short and cannot be stopped.
    None too when the parent was destroyed meanwhile: there is nobody left to tell.
    """
    loop = QEventLoop()  # nobody's child: whoever is destroyed while it runs must not take it along
    parent.destroyed.connect(loop.quit)
    kept: dict[str, object] = {}
    box = QProgressDialog(plain(words), say("Cancel") if progress else "", 0, 0, parent)
    bar = QProgressBar(box)
    bar.setTextVisible(False)  # letters over both halves of a bar can be read on neither
    bar.setRange(0, 100 if progress and fills else 0)  # with 0 it moves to and fro
    box.setBar(bar)
    if progress is None:
        box.setCancelButton(None)
    box.setWindowModality(Qt.WindowModality.WindowModal)
    box.setAutoReset(False)
    shows = shown_soon(box)
    thread = Background(work, parent)
    thread.answered.connect(_Keep(kept, "answer", parent).take)
    thread.failed.connect(_Keep(kept, "error", parent).take)
    thread.finished.connect(loop.quit)
    if progress is not None:
        progress.told.connect(box.setValue)
        box.canceled.connect(progress.stop)
    thread.start()
    loop.exec()
    if not isValid(parent):
        if progress is not None:
            progress.stop()
        return None
    thread.wait()
    if progress is not None:
        box.canceled.disconnect(progress.stop)
    shows.stop()
    box.close()
    box.deleteLater()
    error = kept.get("error")
    if isinstance(error, Cancelled):
        return None
    if isinstance(error, Exception):
        raise error
    return kept.get("answer")


class _Keep(QObject):
    """Keeps what a signal brings, in the thread of the window."""

    def __init__(self, kept: dict[str, object], name: str, parent: QObject) -> None:
        super().__init__(parent)
        self._kept = kept
        self._name = name

    def take(self, what: object) -> None:
        """The slot."""
        self._kept[self._name] = what
        self.deleteLater()
