"""What programs that died left behind: found, claimed by one running copy at a time, forgotten when dealt with.

What was left and cannot be read is never passed over in silence and never removed: it is told as `Unreadable`.
"""

from __future__ import annotations

import json
import os
import re
import time
from contextlib import suppress
from datetime import datetime
from pathlib import Path

from msgspec import Struct
from PySide6.QtCore import QLockFile

from app.formats import headstock
from app.formats.disk_words import why_unread
from app.formats.errors import FormatError
from app.formats.reading import Known, is_file, known, read_bytes
from app.formats.saving import fingerprint, fingerprint_of, sweep
from geometry.layout import Headstock
from geometry.saying import say

ENDING = ".journal.json"
YOUNG_SECONDS = 10
"""A lock younger than this may be in the making."""
LARGEST = 2 * headstock.LARGEST_BYTES
"""A journal is a layout as a string in JSON."""


class Look(Struct, frozen=True):
    """What is there under the name that unsaved work came from."""

    saved: bool
    """the file holds the very work: the program died just after saving it"""
    there: bool
    known: Known | None


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

    def look(self) -> Look:
        """What is there now under the name it came from. A drive that has gone lets whoever asks wait for long."""
        if self.path is None:
            return Look(False, False, None)
        now = fingerprint_of(self.path)
        return Look(now is not None and now == fingerprint(headstock.encode(self.layout)), is_file(self.path), known(self.path))

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


class Unreadable(Struct):
    """A file or a folder of unsaved work that cannot be read. It stays as it is."""

    file: Path
    why: str
    """a sentence"""
    path: str = ""
    """where its layout had been opened from or saved to, as far as that can be read"""
    when: datetime = datetime.min
    """local time at which it was written down"""

    @property
    def folder(self) -> Path:
        """Where to look for it."""
        return self.file if self.file.is_dir() else self.file.parent


class Found(Struct):
    """What lies in a folder of journals that no running program holds."""

    left: list[Leftover] = []
    """newest first"""
    unreadable: list[Unreadable] = []


def leftovers(folder: Path) -> list[Leftover]:
    """What programs that died left behind, newest first. See `found_in` for what of it cannot be read."""
    return found_in(folder).left


def found_in(folder: Path) -> Found:
    """What programs that died left behind, with what of it cannot be read; that is left where it is. The files that it came from
    are not looked at, see `Leftover.look`."""
    found = Found()
    sweep(folder)
    try:
        files = [Path(folder, name) for name in os.listdir(folder) if name.endswith(ENDING)]
    except (FileNotFoundError, NotADirectoryError):
        return found  # no program has left anything: who cannot make the folder hears of it from the journal
    except OSError as error:
        found.unreadable.append(Unreadable(folder, say("The folder cannot be opened: {why}.", why=why_unread(error))))
        return found
    for file in sorted(files, key=_written, reverse=True):
        lock = lock_of(file)
        if not taken(lock):
            continue
        try:
            one = _read(file)
            if isinstance(one, Unreadable):
                found.unreadable.append(one)
            else:
                found.left.append(one)
        except FileNotFoundError:
            pass  # another running copy has just dealt with it
        finally:
            lock.unlock()
    return found


def _read(file: Path) -> Leftover | Unreadable:
    """What a journal holds. FileNotFoundError when it is gone."""
    data, when = b"", _moment(_written(file))
    try:
        data = read_bytes(file, LARGEST)
        record = json.loads(data)
        if not isinstance(record, dict) or not isinstance(record.get("layout"), str):
            raise FormatError(say("It holds no layout."))
        layout = headstock.decode(record["layout"].encode(), say("What was written down"))
    except FileNotFoundError:
        if not os.path.lexists(file):
            raise
        return Unreadable(file, say("The name leads to no file."), "", when)
    except FormatError as error:
        return Unreadable(file, str(error), _opened_from(data), when)
    except OSError as error:
        return Unreadable(file, say("It cannot be opened: {why}.", why=why_unread(error)), "", when)
    except (ValueError, RecursionError):  # no JSON, or text that is none
        return Unreadable(file, say("It breaks off or is damaged, as after a fault of the disk."), _opened_from(data), when)
    path, seen = record.get("path"), record.get("seen")
    path = Path(path) if isinstance(path, str) and path and "\0" not in path else None
    return Leftover(file, layout, path, seen if isinstance(seen, str) else None, when)


def _opened_from(data: bytes) -> str:
    """The path with which a journal begins, even of one that breaks off; "" when it cannot be read."""
    start = re.match(rb'\{"path": ?("(?:[^"\\]|\\.){1,4096}")', data)
    with suppress(ValueError):
        return json.loads(start[1]) if start else ""
    return ""


def _moment(seconds: float) -> datetime:
    """A moment as local time; the least there is for one that no calendar has, as after a clock without sense."""
    try:
        return datetime.fromtimestamp(seconds)
    except (ArithmeticError, OSError, ValueError):
        return datetime.min


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
    were on the disk, and the number of the program that died may belong to another one by now. On a disk that is full
    or can only be read no lock can be made: True there too unless the program that made the one there still runs.
    """
    if _free(lock):
        return True
    file = Path(lock.fileName())
    if not os.access(file.parent, os.W_OK):
        return not _holder_runs(lock)
    old = abs(time.time() - _written(file)) > YOUNG_SECONDS
    return old and lock.removeStaleLockFile() and _free(lock)


def _free(lock: QLockFile) -> bool:
    """Take a lock that is not there, or see that it is not there and cannot be made."""
    return lock.tryLock(0) or (lock.error() != QLockFile.LockError.LockFailedError and not os.path.lexists(lock.fileName())
                               and os.access(os.path.dirname(lock.fileName()), os.W_OK))


def _holder_runs(lock: QLockFile) -> bool:
    """Whether a program runs that has the number in the lock; where the system cannot be asked (Windows), no."""
    number = lock.getLockInfo()[0]
    if os.name == "nt" or number <= 0:
        return False
    try:
        os.kill(number, 0)
    except PermissionError:
        return True  # another user's
    except (OSError, OverflowError):
        return False
    return True
