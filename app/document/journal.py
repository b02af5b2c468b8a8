"""The journal: unsaved work is written down every second, so that no crash takes more than that.

One file for each window, beside a lock that the running program holds. A file
whose lock nobody holds is what a program that died left behind.
"""

from __future__ import annotations

import json
import uuid
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QLockFile, QObject, QTimer

from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.saving import save_bytes
from geometry.layout import Headstock

DELAY_MS = 1000
"""From the first change to the writing of it."""
ENDING = ".journal.json"


@dataclass(frozen=True)
class Leftover:
    """Work that a program which died had not saved."""

    file: Path
    layout: Headstock
    path: Path | None
    """where the layout had been opened from or saved to"""


class Journal(QObject):
    """Writes down one document's unsaved layout. Call `note` at each step and `clear` when it is safe."""

    def __init__(self, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._folder = folder
        self._stem = uuid.uuid4().hex[:12]
        self._lock: QLockFile | None = None
        self._waiting: tuple[Headstock, Path | None] | None = None
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

    def note(self, layout: Headstock, path: Path | None) -> None:
        """There is unsaved work: write it down within DELAY_MS."""
        self._waiting = (layout, path)
        if not self._timer.isActive():
            self._timer.start()

    def clear(self) -> None:
        """There is no unsaved work: nothing is kept."""
        self._timer.stop()
        self._waiting = None
        if self._lock is not None:
            self.file.unlink(missing_ok=True)
            self._lock.unlock()
            self._lock = None

    def write(self) -> None:
        """Write down what waits, now. A full disk is remembered in `trouble`, never raised: the work goes on."""
        if self._waiting is None:
            return
        layout, path = self._waiting
        self._waiting = None
        try:
            self._folder.mkdir(parents=True, exist_ok=True)
            if self._lock is None:
                self._lock = _lock(self.file)
                self._lock.tryLock(0)
            record = {"path": str(path) if path else None, "layout": headstock.encode(layout).decode()}
            save_bytes(self.file, json.dumps(record).encode())
            self.trouble = ""
        except (OSError, FormatError) as error:
            self.trouble = str(error)


def leftovers(folder: Path) -> list[Leftover]:
    """What programs that died left behind, newest first. Files that cannot be read are left where they are."""
    found = []
    files = sorted(folder.glob(f"*{ENDING}"), key=lambda f: f.stat().st_mtime, reverse=True) if folder.is_dir() else []
    for file in files:
        lock = _lock(file)
        if not lock.tryLock(0):
            continue
        lock.unlock()
        try:
            record = json.loads(file.read_bytes())
            layout = headstock.decode(record["layout"].encode(), file.name)
        except (OSError, ValueError, KeyError, TypeError, AttributeError, FormatError):
            continue
        found.append(Leftover(file, layout, Path(record["path"]) if record.get("path") else None))
    return found


def forget(leftover: Leftover) -> None:
    """Remove what was left behind, once it is open again or given up."""
    leftover.file.unlink(missing_ok=True)


def _lock(file: Path) -> QLockFile:
    lock = QLockFile(str(file.with_suffix(".lock")))
    lock.setStaleLockTime(0)
    return lock
