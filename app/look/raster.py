"""How the toolkit paints without a graphics processor: alone, in the window's thread."""

from __future__ import annotations

import os

SWITCH = "QT_NO_GUI_THREADPOOL"
"""The toolkit's own switch; a maker or packager who sets it to something else is not overruled."""


def paint_alone() -> None:
    """Fill shapes in the window's thread; call it before the first thing is painted.

    The toolkit hands every fill of more than about a hundred runs of pixels to other threads, a card of 100 x 20
    pixels too: waking them takes ten times as long as filling it, and all wait for each other when the machine is busy.
    """
    os.environ.setdefault(SWITCH, "1")
