"""What is set in the process before the window is made: how it imports, how it paints, how it gives memory back."""

from __future__ import annotations

import builtins
import os
import sys

IMPORT = builtins.__import__
"""As it was when this was loaded: before the toolkit."""
SWITCH = "QT_NO_GUI_THREADPOOL"
"""The toolkit's own switch; a maker or packager who sets it to something else is not overruled."""
LARGE = 512 * 1024
"""Bytes from which a block has pages of its own, which go back to the system as soon as it is freed."""
POOLS = 2
"""Parts of the heap that all threads share."""
_MMAP_THRESHOLD, _ARENA_MAX = -3, -8
"""their numbers in malloc.h"""


def keep_own_import() -> None:
    """Go on importing as before the toolkit was loaded; call it as soon as that is.

    The toolkit puts a function in place of Python's that serves modules which
    ask for other names of its methods (`from __feature__ import ...`). To find
    out who does, it reads the source of whatever is loaded from then on, half
    a thousand files in a start, and holds on to it. Nothing here asks for that.
    """
    builtins.__import__ = IMPORT


def paint_alone() -> None:
    """Fill shapes in the window's thread; call it before the first thing is painted.

    The toolkit hands every fill of more than about a hundred runs of pixels to other threads, a card of 100 x 20
    pixels too: waking them takes ten times as long as filling it, and all wait for each other when the machine is busy.
    """
    os.environ.setdefault(SWITCH, "1")


def give_back() -> None:
    """Let what is freed go back to the system, where that can be said; call it before rooms and threads need memory.

    Left to itself the C library of most Linux systems raises the bound of large blocks with each that is freed, up to 32 MB, and gives
    every thread a pool of its own: pictures and arrays of a moment then leave holes, and a day at the window held on to
    half as much again of memory that nobody used (343 MB for 219). Elsewhere nothing is done.
    """
    if sys.platform != "linux":
        return
    import ctypes
    options = getattr(ctypes.CDLL(None), "mallopt", None)
    if options is not None:
        options(_MMAP_THRESHOLD, LARGE)
        options(_ARENA_MAX, POOLS)
