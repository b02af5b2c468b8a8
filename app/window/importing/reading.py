"""Reading a drawing beside the window, with Cancel."""

from __future__ import annotations

from functools import partial
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from app.formats.drawing_in import DrawingRead, ImportJob
from app.formats.drawing_in.job import allowed
from app.formats.errors import FormatError
from app.threads.waiting import Cancelled, Waiting, done_beside
from app.window import ask
from geometry.saying import say

LOOK_MS = 20
"""Between two looks at how far a reading is."""


def read_with_progress(parent: QWidget, path: Path, unit: str | None, join: float) -> DrawingRead | None:
    """Read a drawing in another process while the window stays alive. None when nothing came of it, which the maker was told.

    Cancelled when the maker has pressed Cancel, or when the parent is gone.
    """
    words = say("Reading {name}…", name=path.name)
    seconds = done_beside(parent, words, partial(allowed, str(path)), gives_up=say("Cancel"))
    if seconds is None:
        raise Cancelled
    job = ImportJob(path, unit=unit, join=join, seconds=seconds)
    try:
        job.start()
        if not _done(job, parent, words):
            job.cancel()
            raise Cancelled
        return job.result()
    except FormatError as error:
        ask.warn(parent, say("This drawing was not imported"), str(error))
        return None


def _done(job: ImportJob, parent: QWidget, words: str) -> bool:
    """Wait for the end of a job; False when the maker has had enough before, or whoever asked is gone."""
    wait = Waiting(parent, words, say("Cancel"))

    def look() -> None:
        if job.poll():
            wait.over()
        elif job.progress > 0:
            wait.show_part(round(100 * job.progress))
    timer = QTimer(timeout=look)
    timer.start(LOOK_MS)
    wait.stopped.connect(wait.over)
    wait.wait()
    timer.stop()
    return isValid(parent) and not wait.given_up
