"""The journal: unsaved work is written down every second, so that no crash takes more than that.

One file for each window, beside a lock that the running program holds. A file
whose lock nobody holds is what a program that died left behind.

What it asks of the disk is done in a thread, one thing after the other: a disk
that is slow, or gone, keeps nobody from work.
"""

from __future__ import annotations

import json
import time
import uuid
from collections.abc import Callable
from functools import partial
from pathlib import Path

import msgspec
from PySide6.QtCore import QLockFile, QObject, QTimer, Signal

from app.document.document import Document
from app.document.leftovers import ENDING, lock_of
from app.formats import headstock
from app.formats.disk_words import why_no_folder
from app.formats.errors import FormatError, Unconfirmed
from app.formats.saving import save_bytes
from app.threads.background import Background, raised
from geometry.layout import Headstock
from geometry.saying import say

DELAY_MS = 1000
"""From the first change to the writing of it."""
LATE_MS = 3000
"""How long a writing may take until it is told that the work is not safe."""
PATIENCE = 5.0
"""Seconds for which `write` waits for the disk."""
END_SECONDS = 2.0
"""Seconds for which a window that goes waits for the disk."""

Waits = tuple[Headstock, Path | None, str | None]


class Journal(QObject):
    """Writes down one document's unsaved layout. Call `keep` at each step and each saving."""

    troubled = Signal(str)
    """a sentence: unsaved work can, for a new reason, not be written down; "" when it can again, or need not be"""

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._stem = uuid.uuid4().hex[:12]
        self._lock: QLockFile | None = None
        """touched by the thread that writes, and there is one at a time"""
        self._waiting: Waits | None = None
        self._kept = self._cleared = False
        """whether the disk may hold something, and whether that is to be removed"""
        self._work: _Work | None = None
        """what the disk is asked now"""
        self.trouble = ""
        """why the last writing failed, "" when it went well"""
        self._timer = self._after(DELAY_MS, self._go_on)
        self._late = self._after(LATE_MS, self._tell_late)

    @property
    def file(self) -> Path:
        """Where this journal writes."""
        return self._folder / f"{self._stem}{ENDING}"

    def keep(self, document: Document) -> None:
        """Note the document's work if any of it is unsaved, clear the journal if none is."""
        if document.unsaved:
            self.note(document.layout, document.path, document.seen)
        else:
            self.clear()

    def note(self, layout: Headstock, path: Path | None, seen: str | None = None) -> None:
        """There is unsaved work: write it down within DELAY_MS. `path` and `seen` are the file it came from."""
        self._waiting = (layout, path, seen)
        if not self._timer.isActive():
            self._timer.start()

    def clear(self) -> None:
        """There is no unsaved work: nothing is kept, as soon as the disk has done so."""
        self._timer.stop()
        self._waiting = None
        self._well()
        self._cleared = self._kept
        self._go_on()

    def write(self) -> bool:
        """Write down what waits, now; whether it is written down. A full disk is remembered in `trouble`, never raised: the work
        goes on. So is a disk that does not answer within PATIENCE.

        What could not be written waits on and is tried again after the same delay.
        """
        self._timer.stop()
        if not self._done_within(PATIENCE):
            self._tell_late()
        return self._waiting is None

    def end(self) -> None:
        """The window goes, and its work is saved or given up: nothing is kept. A disk that does not answer is left to itself; what
        it keeps is then offered at the next start, unless the file holds it."""
        self.clear()
        if not self._done_within(END_SECONDS) and self._work is not None:
            self._work.thread.leave()
        self._late.stop()

    # ---- inside ---------------------------------------------------------
    def _after(self, ms: int, slot: Callable[[], None]) -> QTimer:
        return QTimer(self, singleShot=True, interval=ms, timeout=slot)

    def _go_on(self) -> None:
        """Ask the next thing of the disk, if it is free and the time for it has come."""
        if self._work is not None:
            return
        if self._cleared:
            self._kept = self._cleared = False
            self._begin(self._remove, None)
        elif self._waiting is not None and not self._timer.isActive():
            self._lock, self._kept = self._lock or lock_of(self.file), True
            self._begin(partial(self._put, self._waiting), self._waiting)

    def _begin(self, work: Callable[[], None], what: Waits | None) -> None:
        self._work = _Work(work, what, self)
        self._work.thread.finished.connect(self._over)
        self._late.start()
        self._work.thread.start()

    def _over(self) -> None:
        """The disk has answered."""
        work = self._work
        if work is None or not work.thread.isFinished():
            return  # it was waited for, and heard of then
        self._work = None
        self._late.stop()
        if work.what is not None and work.error is not None:
            self._timer.start()
            self._tell(_trouble(work.error, self._folder))
        elif work.what is not None:
            if self._waiting is work.what:
                self._waiting = None
                self._timer.stop()
            self._well()
        self._go_on()

    def _done_within(self, seconds: float) -> bool:
        """Whether all that there is to do comes to be done, but for what fails."""
        ends = time.monotonic() + seconds
        self._go_on()
        while self._work is not None:
            if not self._work.thread.wait(ends - time.monotonic()):
                return False
            self._over()
        return True

    def _put(self, what: Waits) -> None:
        """In the thread."""
        layout, path, seen = what
        self._folder.mkdir(parents=True, exist_ok=True)
        if not self._lock.isLocked():
            self._lock.tryLock(0)
        record = {"path": str(path) if path else None, "seen": seen, "layout": headstock.compact(layout).decode()}
        save_bytes(self.file, _json(record))

    def _remove(self) -> None:
        """In the thread. What cannot be removed stays; it is offered at the next start unless its file holds it."""
        try:
            self.file.unlink(missing_ok=True)
        finally:
            self._lock.unlock()

    def _tell_late(self) -> None:
        if self._waiting is not None:
            self._tell(say("The disk does not answer."))

    def _tell(self, trouble: str) -> None:
        if self.trouble != trouble:
            self.trouble = trouble
            self.troubled.emit(say("Unsaved work cannot be kept safe: {trouble}", trouble=trouble))

    def _well(self) -> None:
        if self.trouble:
            self.trouble = ""
            self.troubled.emit("")


class _Work:
    """One thing asked of the disk, and how it ended."""

    def __init__(self, work: Callable[[], None], what: Waits | None, asker: Journal) -> None:
        self._do = work
        self.what = what
        """what is written down; None where it is removed"""
        self.error: Exception | None = None
        self.thread = Background(self._done, asker)
        self.thread.failed.connect(raised)  # what no disk is to blame for is a fault of the program

    def _done(self) -> None:
        """In the thread."""
        try:
            self._do()
        except Exception as error:
            self.error = error
            if not isinstance(error, OSError | FormatError):
                raise


def _trouble(error: Exception, folder: Path) -> str:
    """Why nothing is kept safe in a folder that the maker did not choose: a sentence without what he might do about a file of his."""
    cause = error.__cause__ if isinstance(error, FormatError) else error
    if not isinstance(cause, OSError | ValueError):
        return str(error)
    if isinstance(error, Unconfirmed):
        return say("The disk does not confirm that it keeps what is written in {folder}: {why}.", folder=folder, why=why_no_folder(cause))
    return say("Nothing can be written in {folder}: {why}.", folder=folder, why=why_no_folder(cause))


def _json(record: dict[str, str | None]) -> bytes:
    """A record as JSON, forty times as quick as by Python's own writer: of a layout with a photo that one took twice as long
    as all the rest."""
    try:
        return msgspec.json.encode(record)
    except UnicodeEncodeError:  # a path whose bytes are no letters
        return json.dumps(record).encode()
