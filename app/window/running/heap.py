"""How the system's heap gives memory back, where that can be said (the C library of most Linux systems)."""

from __future__ import annotations

import ctypes
import sys

LARGE = 512 * 1024
"""Bytes from which a block has pages of its own, which go back to the system as soon as it is freed."""
POOLS = 2
"""Parts of the heap that all threads share."""
_MMAP_THRESHOLD, _ARENA_MAX = -3, -8
"""their numbers in malloc.h"""


def give_back() -> None:
    """Let what is freed go back to the system; call it before rooms and threads need memory.

    Left to itself the library raises the bound of large blocks with each that is freed, up to 32 MB, and gives every
    thread a pool of its own: pictures and arrays of a moment then leave holes, and a day at the window held on to
    half as much again of memory that nobody used (343 MB for 219). Elsewhere nothing is done.
    """
    if sys.platform != "linux":
        return
    options = getattr(ctypes.CDLL(None), "mallopt", None)
    if options is not None:
        options(_MMAP_THRESHOLD, LARGE)
        options(_ARENA_MAX, POOLS)
