"""Reading a drawing beside the window, with Cancel; small gaps of an outline are closed without being asked, and told."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from app.formats.drawing_in import DrawingRead, ImportJob
from app.formats.drawing_in.job import allowed
from app.formats.errors import FormatError
from app.threads.collector import rest, resume
from app.window import ask
from app.window.background.waiting import Cancelled, Waiting, done_beside
from geometry.curves import Path as GeometryPath
from geometry.saying import say

JOINS = (0.01, 0.1, 0.5, 1.0)
"""mm: gaps that may be closed; the first is no gap to the eye"""
LOOK_MS = 20
"""Between two looks at how far a reading is."""
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
    words = say("Reading {name}…", name=path.name)
    seconds = done_beside(parent, words, partial(allowed, str(path)), gives_up=say("Cancel"))
    if seconds is None:
        raise Cancelled
    job = ImportJob(path, unit=unit, join=join, seconds=seconds)
    rest(job)
    try:
        job.start()
        if not _done(job, parent, words):
            job.cancel()
            raise Cancelled
        return job.result()
    except FormatError as error:
        ask.warn(parent, say("This drawing was not imported"), str(error))
        return None
    finally:
        resume(job)


def _done(job: ImportJob, parent: QWidget, words: str) -> bool:
    """Wait for the end of a job; False when the maker has had enough before, or whoever asked is gone."""
    wait = Waiting(parent, words, say("Cancel"))

    def look() -> None:
        if job.poll():
            wait.over()
        elif job.progress > 0:
            wait.show_part(round(100 * job.progress))
    timer = QTimer()
    timer.timeout.connect(look)
    timer.start(LOOK_MS)
    wait.stopped.connect(wait.over)
    wait.wait()
    timer.stop()
    return isValid(parent) and not wait.given_up
