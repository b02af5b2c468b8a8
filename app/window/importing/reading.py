"""Reading a drawing beside the window, with Cancel; small gaps of an outline are closed without being asked, and told."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEventLoop, QObject, Qt, QTimer
from PySide6.QtWidgets import QProgressBar, QProgressDialog, QWidget
from shiboken6 import isValid

from app.formats.drawing_in import DrawingRead, ImportJob
from app.formats.errors import FormatError
from app.look.plain import plain
from app.window import ask
from app.window.background.collector import rest, resume
from app.window.background.waiting import Cancelled, shown_soon
from geometry.curves import Path as GeometryPath
from geometry.saying import say

JOINS = (0.01, 0.1, 0.5, 1.0)
"""mm: gaps that may be closed; the first is no gap to the eye"""
UNASKED = 0.5
"""mm: a wider gap is closed only when the maker says so, for it may be meant (common practice, no source)."""


def read_closing(read: Callable[[float], DrawingRead | None]) -> tuple[DrawingRead | None, float]:
    """(drawing, gaps closed up to so many mm): closed farther where a line that stays open is larger than any loop.

    `read` reads the drawing with gaps closed up to that many mm, and gives None where nothing comes of it.
    What is tried in vain is not taken. Cancelled at any of these readings ends them all.
    """
    found = read(JOINS[0])
    if found is None or not _open_is_larger(found):
        return found, JOINS[0]
    least = found.gaps[0].size if found.gaps else 0.0
    for join in JOINS[1:]:
        if not least <= join <= UNASKED:
            continue
        again = read(join)
        if again is None:
            break
        if again.loops and not _open_is_larger(again):
            return again, join
    return found, JOINS[0]


def _open_is_larger(read: DrawingRead) -> bool:
    return bool(read.open_chains) and max(map(_size, read.open_chains)) > max((_size(loop.path) for loop in read.loops), default=0.0)


def _size(path: GeometryPath) -> float:
    """mm across and along the box about a path, together."""
    x0, y0, x1, y1 = path.box
    return x1 - x0 + y1 - y0


def read_with_progress(parent: QWidget, path: Path, unit: str | None, join: float) -> DrawingRead | None:
    """Read a drawing in another process while the window stays alive. None when nothing came of it, which the maker was told.

    Cancelled when the maker has pressed Cancel, or when the parent is gone.
    """
    job = ImportJob(path, unit=unit, join=join)
    wait = _Waiting(job, parent, path.name)
    rest(job)
    try:
        job.start()
        if not wait.until_done():
            job.cancel()
            raise Cancelled
        return job.result()
    except FormatError as error:
        ask.warn(parent, say("This drawing was not imported"), str(error))
        return None
    finally:
        resume(job)


class _Waiting(QObject):
    """Waits for an import job behind a small window with Cancel."""

    def __init__(self, job: ImportJob, parent: QWidget, name: str) -> None:
        super().__init__(parent)
        self._job = job
        self._loop = QEventLoop()  # nobody's child: whoever is destroyed while it runs must not take it along
        parent.destroyed.connect(self._loop.quit)
        self._box = QProgressDialog(plain(say("Reading {name}…", name=name)), say("Cancel"), 0, 0, parent)
        bar = QProgressBar(self._box)
        bar.setTextVisible(False)  # letters over both halves of a bar can be read on neither
        bar.setRange(0, 0)  # to and fro until the job tells how far it is
        self._box.setBar(bar)
        self._box.setWindowModality(Qt.WindowModality.WindowModal)
        self._shows = shown_soon(self._box)
        self._box.canceled.connect(self._loop.quit)
        self._timer = QTimer(self)
        self._timer.setInterval(20)
        self._timer.timeout.connect(self._look)

    def until_done(self) -> bool:
        """True when the job has ended by itself, False when the maker cancelled or whoever asked is gone."""
        self._timer.start()
        self._loop.exec()
        if not isValid(self):
            return False
        self._timer.stop()
        self._shows.stop()
        cancelled = self._box.wasCanceled()
        self._box.canceled.disconnect(self._loop.quit)
        self._box.close()
        self._box.deleteLater()
        self.deleteLater()
        return not cancelled

    def _look(self) -> None:
        if self._job.poll():
            self._loop.quit()
        elif self._job.progress > 0:
            self._box.setMaximum(100)
            self._box.setValue(min(99, round(100 * self._job.progress)))
