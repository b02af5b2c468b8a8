"""Why a file cannot be written, in words that a maker can act upon."""

from __future__ import annotations

import errno

_WORDS = {
    "the disk is full": ("ENOSPC",),
    "your share of the disk is used up": ("EDQUOT",),
    "the file would be larger than that disk allows": ("EFBIG",),
    "the disk can only be read": ("EROFS",),
    "you have no right to write there": ("EACCES", "EPERM"),
    "its folder is not there": ("ENOENT", "ENOTDIR"),
    "a folder of that name is there": ("EISDIR", "ENOTEMPTY", "EEXIST"),
    "its name is too long": ("ENAMETOOLONG",),
    "the disk reports a fault": ("EIO",),
    "the drive does not answer": ("ENODEV", "ENXIO", "ESTALE", "ENETDOWN", "ENETUNREACH", "EHOSTDOWN", "EHOSTUNREACH",
                                  "ENOTCONN", "ETIMEDOUT", "EREMOTEIO", "ESHUTDOWN"),
    "another program holds it": ("EBUSY", "ETXTBSY", "EAGAIN"),
    "the name leads round in a circle": ("ELOOP",),
    "the system refuses that name": ("EINVAL", "EILSEQ"),
}
_BY_NUMBER = {getattr(errno, name): words for words, names in _WORDS.items() for name in names if hasattr(errno, name)}

CANNOT_FLUSH = tuple(getattr(errno, name) for name in ("EINVAL", "ENOTSUP", "EOPNOTSUPP", "EBADF", "ENOSYS")
                     if hasattr(errno, name))
"""How a system says that folders are not flushed by hand there."""


def why(error: OSError | ValueError) -> str:
    """The reason without a capital and without a full stop."""
    if not isinstance(error, OSError):
        return "the system refuses that name"
    if error.errno is None:
        return str(error).rstrip(".") or "the disk refuses it"
    return _BY_NUMBER.get(error.errno, (error.strerror or "the disk refuses it").rstrip("."))
