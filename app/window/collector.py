"""When the collector of cyclic garbage rests, and how threads take turns meanwhile.

It runs in whichever thread happens to allocate. Widgets that it finds must not
be destroyed outside the thread of the window (the heap is corrupted then), so
it rests while any other thread of the program runs.

Meanwhile Python's threads take turns more often. The thread of the window lets
go of the interpreter in almost every call of the toolkit; with Python's own
turns of 5 ms it waited so long for each of them, and a page that takes 50 ms of
work took 200.
"""

from __future__ import annotations

import gc
import sys

_resting: set[int] = set()
_TURN = 0.0005
"""Seconds that one thread works while another waits."""
_usual = sys.getswitchinterval()


def rest(who: object) -> None:
    """No collecting until `who` has resumed it; call from the thread of the window."""
    _resting.add(id(who))
    gc.disable()
    sys.setswitchinterval(_TURN)


def resume(who: object) -> None:
    """`who` needs no more rest; collecting goes on when nobody does. Harmless when called again."""
    _resting.discard(id(who))
    if not _resting:
        gc.enable()
        sys.setswitchinterval(_usual)
