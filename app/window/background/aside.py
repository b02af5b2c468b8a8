"""Work beside the window stands aside while the hand is at work.

Python runs one thread at a time: a thread that works in the midst of a drag, a
zoom or a pan makes each step wait for it some times, which is seen as a
stutter. So whoever moves the paper or what lies on it says so here, and long
work asks before each of its parts whether it should wait for the hand to rest.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable

REST = 0.25
"""Seconds after the last step of the hand until work beside the window goes on."""
NAP = 0.02
"""Seconds between two looks at the hand."""
SHARE = 0.001
"""Seconds for which one thread may keep the interpreter while another waits for it. Python's own 5 ms are a stutter:
the window waits as long again and again in one step, until the work beside it comes to where it can stand aside."""

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


def share_finely() -> None:
    """Let the window's thread have the interpreter back soon after it asked for it."""
    sys.setswitchinterval(SHARE)
