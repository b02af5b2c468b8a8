"""Long work asks between its natural parts whether to go on: whoever wants its answer may let it wait there, or stop it.

So work can stand aside for something more urgent though nothing here knows of threads or of a clock.
"""

from __future__ import annotations

from collections.abc import Callable

Ask = Callable[[], None]
"""called between two parts; it may take its time, and raises Stopped to end the work"""
Cancelled = Callable[[], bool]
"""called between two parts; it may take its time, and is true when the work is to end"""


class Stopped(Exception):
    """Nobody wants the answer any more."""


def go_on() -> None:
    """The Ask of work that nobody stops."""


def asking(cancelled: Cancelled) -> Ask:
    """An Ask that raises Stopped once `cancelled` says so."""
    def ask() -> None:
        if cancelled():
            raise Stopped
    return ask
