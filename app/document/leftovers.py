"""What programs that died left behind: found, claimed by one running copy at a time, forgotten when dealt with."""

from __future__ import annotations

import json
import os
import time
from contextlib import suppress
from datetime import datetime
from pathlib import Path

from msgspec import Struct
from PySide6.QtCore import QLockFile

from app.formats import headstock
from app.formats.errors import FormatError
from app.formats.reading import read_bytes
from app.formats.saving import fingerprint, fingerprint_of, sweep
from geometry.layout import Headstock

ENDING = ".journal.json"
YOUNG_SECONDS = 10
"""A lock younger than this may be in the making."""
LARGEST = 2 * headstock.LARGEST_BYTES
"""A journal is a layout as a string in JSON."""


class Leftover(Struct):
    """Work that a program which died had not saved."""

    file: Path
    layout: Headstock
    path: Path | None
    """where the layout had been opened from or saved to"""
    seen: str | None = None
    """fingerprint of the file at `path` when the layout was opened from it or saved to it"""
    when: datetime = datetime.min
    """local time at which it was written down"""
    _lock: QLockFile | None = None

    def claim(self) -> bool:
        """Keep other running copies from asking about it; False when one does so already, or when it is gone."""
        lock = lock_of(self.file)
        if not taken(lock):
            return False
        if not os.path.exists(self.file):
            lock.unlock()
            return False
        self._lock = lock
        return True

    def release(self) -> None:
        """Let others ask about it again."""
        if self._lock is not None:
            self._lock.unlock()
            self._lock = None

    def forget(self) -> None:
        """Remove it, once it is open again or given up."""
        with suppress(OSError):
            self.file.unlink(missing_ok=True)


def leftovers(folder: Path) -> list[Leftover]:
    """What programs that died left behind, newest first.

    Files that cannot be read are left where they are. Work that its own file already holds, because the program
    died just after saving it, is forgotten.
    """
    sweep(folder)
    found = []
    for file in sorted(folder.glob(f"*{ENDING}"), key=_written, reverse=True) if os.path.isdir(folder) else []:
        lock = lock_of(file)
        if not taken(lock):
            continue
        try:
            one = _read(file)
            if one is not None and _saved(one):
                one.forget()
            elif one is not None:
                found.append(one)
        finally:
            lock.unlock()
    return found


def _read(file: Path) -> Leftover | None:
    try:
        record = json.loads(read_bytes(file, LARGEST))
        layout = headstock.decode(record["layout"].encode(), file.name)
        path = Path(record["path"]) if record.get("path") else None
        if path is not None and "\0" in str(path):
            path = None
        return Leftover(file, layout, path, record.get("seen"), datetime.fromtimestamp(_written(file)))
    except (ArithmeticError, OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError, FormatError):
        return None


def _saved(one: Leftover) -> bool:
    return one.path is not None and fingerprint_of(one.path) == fingerprint(headstock.encode(one.layout))


def _written(file: Path) -> float:
    try:
        return file.stat().st_mtime
    except OSError:
        return 0.0


def lock_of(file: Path) -> QLockFile:
    """The lock of a journal file: it never grows old, and the system tells whether its holder still runs."""
    lock = QLockFile(str(file.with_suffix(".lock")))
    lock.setStaleLockTime(0)
    return lock


def taken(lock: QLockFile) -> bool:
    """Take a lock that nobody holds; False when somebody does.

    A lock that the system says nobody holds is taken whatever stands in it: the power may have gone before its words
    were on the disk, and the number of the program that died may belong to another one by now.
    """
    if lock.tryLock(0):
        return True
    old = abs(time.time() - _written(Path(lock.fileName()))) > YOUNG_SECONDS
    return old and lock.removeStaleLockFile() and lock.tryLock(0)
