"""Why a file cannot be written, in words that a maker can act upon."""

from __future__ import annotations

import errno

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
_BY_NUMBER = {getattr(errno, name): words for words, names in _WORDS.items() for name in names if hasattr(errno, name)}

CANNOT_FLUSH = tuple(getattr(errno, name) for name in ("EINVAL", "ENOTSUP", "EOPNOTSUPP", "EBADF", "ENOSYS")
                     if hasattr(errno, name))
"""How a system says that folders are not flushed by hand there."""

_HELD = (32, 33)
"""How Windows says that another program has a file open; its number among all systems is that of a missing right."""


def why(error: OSError | ValueError) -> str:
    """The reason without a capital and without a full stop."""
    if not isinstance(error, OSError):
        return say("the system refuses that name")
    if getattr(error, "winerror", None) in _HELD:
        return say("another program holds it")
    if error.errno is None:
        return str(error).rstrip(".") or say("the disk refuses it")
    return _BY_NUMBER.get(error.errno, (error.strerror or say("the disk refuses it")).rstrip("."))
