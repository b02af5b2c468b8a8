"""Work beside the window stands aside while the hand is at work.

Python runs one thread at a time: a thread that works in the midst of a drag, a
zoom or a pan makes each step wait for it some times, which is seen as a
stutter. So whoever moves the paper or what lies on it says so here, and long
work asks before each of its parts whether it should wait for the hand to rest.
"""

from __future__ import annotations

import time
from collections.abc import Callable

REST = 0.25
"""Seconds after the last step of the hand until work beside the window goes on."""
NAP = 0.02
"""Seconds between two looks at the hand."""

_last = -REST


def hand_works() -> None:
    """The hand has just made a step; call it from the thread of the window."""
    global _last
    _last = time.monotonic()


def at_rest() -> bool:
    """Whether the hand has rested for a while."""
    return time.monotonic() - _last >= REST


def stand_aside(stopped: Callable[[], bool] = lambda: False) -> bool:
    """Wait, in the thread of the work, until the hand rests or the work is stopped; whether it is stopped."""
    while not (over := stopped()) and not at_rest():
        time.sleep(NAP)
    return over
