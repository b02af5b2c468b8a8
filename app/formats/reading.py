"""Reading a file of the maker: whole, of a sensible size, and only what is a file."""

from __future__ import annotations

import os
import stat
import unicodedata
from pathlib import Path

from msgspec import Struct

from geometry.saying import say


class Known(Struct, frozen=True):
    """What is known of a file by its name: by it two names of one file are told to be the same without asking the disk again,
    which takes a minute where a network drive has gone."""

    name: str
    """as it was given, absolute"""
    real: str
    """with links followed; the name itself where that was not asked"""
    number: tuple[int, int, float] | None = None
    """disk, file and its beginning, where there was one and that was asked: on a disk that ignores capitals one file has several
    names. Of a file that is gone the next that is made may have the number, but not the beginning."""

    def same(self, other: Known) -> bool:
        """Whether the two names are known to be those of one file."""
        return self.real == other.real or self.name == other.name or self.number is not None and self.number == other.number

    def may_become(self, other: Known) -> bool:
        """Whether two names without a file may come to be those of one: on disks that ignore capitals, or how an accent is written."""
        return self.number is None and other.number is None and _plain(self.real) == _plain(other.real)


def _plain(name: str) -> str:
    return unicodedata.normalize("NFC", name).casefold()


def unasked(path: str | os.PathLike[str]) -> Known:
    """What the name alone says; the disk is not asked."""
    name = os.path.abspath(path)
    return Known(name, name)


def known(path: str | os.PathLike[str]) -> Known:
    """What the disk knows of a name. Never raises."""
    try:
        there = os.stat(path)
        # Where no system tells when a file began, its last change does: then one file may be taken for two, but never two for one.
        begun = getattr(there, "st_birthtime", there.st_ctime)
        number = (there.st_dev, there.st_ino, begun) if there.st_ino else None
    except (OSError, ValueError):
        number = None
    return Known(os.path.abspath(path), real(path), number)


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
