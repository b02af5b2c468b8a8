"""One set-up at a time in one folder, across processes."""

import contextlib
import os
import time
from collections.abc import Callable, Iterator
from pathlib import Path

FILE_NAME = "pegwright.lock"
POLL_S = 0.2


@contextlib.contextmanager
def held(folder: Path, waiting: Callable[[], None]) -> Iterator[int]:
    """Hold the lock of `folder`, waiting for whoever has it; gives the open file's number.

    The system lets go of the lock when its holder ends, however it ends. A
    child that is handed the file's number keeps it, so an installer that
    outlives a killed start still keeps the next start waiting. `waiting` is
    called once if there is someone to wait for. A file system without locks
    (some network drives) is used without one. Raises OSError if the lock file
    cannot be written.
    """
    number = os.open(folder / FILE_NAME, os.O_RDWR | os.O_CREAT, 0o644)
    try:
        told = False
        while not taken(number):
            if not told:
                waiting()
                told = True
            time.sleep(POLL_S)
        yield number
    finally:
        os.close(number)


if os.name == "nt":
    import msvcrt

    def taken(number: int) -> bool:
        """Lock an open file, if nobody else has; whether it is locked now. Closing the file unlocks it."""
        try:
            msvcrt.locking(number, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True
else:
    import fcntl

    def taken(number: int) -> bool:
        """Lock an open file, if nobody else has; whether it is locked now. Closing the file unlocks it."""
        try:
            fcntl.flock(number, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        except OSError:
            return True
        return True
