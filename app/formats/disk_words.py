"""Why a file cannot be written or read, in words that a maker can act upon: the system has its own in its own language."""

from __future__ import annotations

import errno
from collections.abc import Mapping, Sequence

from geometry.saying import say

_WORDS = {
    say("the disk is full"): ("ENOSPC",),
    say("your share of the disk is used up"): ("EDQUOT",),
    say("the file would be larger than that disk allows"): ("EFBIG",),
    say("the disk can only be read"): ("EROFS",),
    say("you have no right to write there"): ("EACCES", "EPERM"),
    say("its folder is not there"): ("ENOENT", "ENOTDIR"),
    say("a folder of that name is there"): ("EISDIR", "ENOTEMPTY", "EEXIST"),
    say("its name is too long"): ("ENAMETOOLONG",),
    say("the disk reports a fault"): ("EIO",),
    say("the drive does not answer"): ("ENODEV", "ENXIO", "ESTALE", "ENETDOWN", "ENETUNREACH", "EHOSTDOWN", "EHOSTUNREACH",
                                  "ENOTCONN", "ETIMEDOUT", "EREMOTEIO", "ESHUTDOWN"),
    say("another program holds it"): ("EBUSY", "ETXTBSY", "EAGAIN"),
    say("the name leads round in a circle"): ("ELOOP",),
    say("the system refuses that name"): ("EINVAL", "EILSEQ"),
}
_UNREAD = {
    say("you have no right to read it"): ("EACCES", "EPERM"),
    say("it is not there"): ("ENOENT", "ENOTDIR"),
    say("it is a folder"): ("EISDIR",),
}
_NO_FOLDER = {say("a file of that name is there"): ("EEXIST",)}


def _by_number(words: Mapping[str, Sequence[str]]) -> dict[int, str]:
    return {getattr(errno, name): text for text, names in words.items() for name in names if hasattr(errno, name)}


_BY_NUMBER = _by_number(_WORDS)

CANNOT_FLUSH = tuple(getattr(errno, name) for name in ("EINVAL", "ENOTSUP", "EOPNOTSUPP", "EBADF", "ENOSYS")
                     if hasattr(errno, name))
"""How a system says that folders are not flushed by hand there."""

_HELD = (32, 33)
"""How Windows says that another program has a file open; its number among all systems is that of a missing right."""


def why(error: OSError | ValueError) -> str:
    """Why something cannot be written, without a capital and without a full stop."""
    return _said(error, _BY_NUMBER)


def why_unread(error: OSError | ValueError) -> str:
    """The same of what cannot be read."""
    return _said(error, _BY_NUMBER | _by_number(_UNREAD))


def why_no_folder(error: OSError | ValueError) -> str:
    """The same of a folder that cannot be made, or written in."""
    return _said(error, _BY_NUMBER | _by_number(_NO_FOLDER))


def _said(error: OSError | ValueError, by_number: Mapping[int, str]) -> str:
    if not isinstance(error, OSError):
        return say("the system refuses that name")
    if getattr(error, "winerror", None) in _HELD:
        return say("another program holds it")
    if error.errno is None:
        return str(error).rstrip(".") or say("the disk refuses it")
    return by_number.get(error.errno, (error.strerror or say("the disk refuses it")).rstrip("."))
