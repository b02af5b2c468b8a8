"""The journal: unsaved work is written down every second, so that no crash takes more than that.

One file for each window, beside a lock that the running program holds. A file
whose lock nobody holds is what a program that died left behind.
"""

from __future__ import annotations

import json
import uuid
from contextlib import suppress
from pathlib import Path

import msgspec
from PySide6.QtCore import QLockFile, QObject, QTimer, Signal

from app.document.document import Document
from app.document.leftovers import ENDING, lock_of
from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.saving import save_bytes
from geometry.layout import Headstock
from geometry.saying import say

DELAY_MS = 1000
"""From the first change to the writing of it."""


class Journal(QObject):
    """Writes down one document's unsaved layout. Call `keep` at each step and each saving."""

    troubled = Signal(str)
    """a sentence: unsaved work can, for a new reason, not be written down; "" when it can again, or need not be"""

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._stem = uuid.uuid4().hex[:12]
        self._lock: QLockFile | None = None
        self._waiting: tuple[Headstock, Path | None, str | None] | None = None
        self.trouble = ""
        """why the last writing failed, "" when it went well"""
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(DELAY_MS)
        self._timer.timeout.connect(self.write)

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
        """There is no unsaved work: nothing is kept."""
        self._timer.stop()
        self._waiting = None
        self._well()
        if self._lock is not None:
            with suppress(OSError):
                self.file.unlink(missing_ok=True)
            self._lock.unlock()
            self._lock = None

    def write(self) -> None:
        """Write down what waits, now. A full disk is remembered in `trouble`, never raised: the work goes on.

        What could not be written waits on and is tried again after the same delay.
        """
        if self._waiting is None:
            return
        layout, path, seen = self._waiting
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
            if self._lock is None:
                self._lock = lock_of(self.file)
            if not self._lock.isLocked():
                self._lock.tryLock(0)
            record = {"path": str(path) if path else None, "seen": seen, "layout": headstock.compact(layout).decode()}
            save_bytes(self.file, _json(record))
            self._waiting = None
            self._timer.stop()
            self._well()
        except (OSError, FormatError) as error:
            self._timer.start()
            if self.trouble != str(error):
                self.trouble = str(error)
                self.troubled.emit(say("Unsaved work cannot be kept safe: {trouble}", trouble=self.trouble))

    def _well(self) -> None:
        if self.trouble:
            self.trouble = ""
            self.troubled.emit("")


def _json(record: dict[str, str | None]) -> bytes:
    """A record as JSON, forty times as quick as by Python's own writer: of a layout with a photo that one took twice as long
    as all the rest."""
    try:
        return msgspec.json.encode(record)
    except UnicodeEncodeError:  # a path whose bytes are no letters
        return json.dumps(record).encode()
