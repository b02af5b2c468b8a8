"""Reading a file of the maker: whole, of a sensible size, and only what is a file."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from geometry.saying import say

NO_FILE = say("it is a folder, a device or a pipe and no file")


def read_bytes(path: str | os.PathLike[str], most: int) -> bytes:
    """The bytes of a file, at most `most` + 1 of them, so that who asks can tell that there are more.

    A pipe or a device, which might never end or never begin, is not read. OSError or ValueError otherwise.
    """
    handle = os.open(path, os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_NONBLOCK", 0)
                     | getattr(os, "O_CLOEXEC", 0))
    if not stat.S_ISREG(os.fstat(handle).st_mode):
        os.close(handle)
        raise OSError(NO_FILE)
    with os.fdopen(handle, "rb") as file:
        return file.read(most + 1)


def real(path: str | os.PathLike[str]) -> str:
    """The name with links followed; as it stands where the system takes no such name. Never raises."""
    try:
        return os.path.realpath(path)
    except (OSError, ValueError):
        return os.fspath(path)


def is_file(path: str | os.PathLike[str]) -> bool:
    """Whether there is a file of that name: no folder, no device, no pipe. Never raises."""
    try:
        return Path(path).is_file()
    except (OSError, ValueError):
        return False
