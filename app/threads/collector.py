"""When the collector of cyclic garbage rests.

It runs in whichever thread happens to allocate. Widgets that it finds must not
be destroyed outside the thread of the window (the heap is corrupted then), so
it rests while any other thread of the program runs.
"""

from __future__ import annotations

import gc

_resting: set[int] = set()


def rest(who: object) -> None:
    """No collecting until `who` has resumed it; call from the thread of the window."""
    _resting.add(id(who))
    gc.disable()


def resume(who: object) -> None:
    """`who` needs no more rest; collecting goes on when nobody does. Harmless when called again."""
    _resting.discard(id(who))
    if not _resting:
        gc.enable()
