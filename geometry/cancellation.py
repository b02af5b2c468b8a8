"""Long work asks between its natural parts whether to go on: whoever wants its answer may let it wait there, or stop it.

So work can stand aside for something more urgent though nothing here knows of threads or of a clock. Where it asks it
may also tell what it is at, for whoever waits.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

At = Callable[[], str]
"""what work is at, in words that are made only when somebody reads them; of values that never change, as it may be called
later and in another thread"""
Cancelled = Callable[[], bool]
"""called between two parts; it may take its time, and is true when the work is to end"""


class Ask(Protocol):
    """Called between two parts; it may take its time, and raises Stopped to end the work. `at` is what comes next."""

    def __call__(self, at: At | None = None, /) -> None: ...


class Stopped(Exception):
    """Nobody wants the answer any more."""


def go_on(_: At | None = None) -> None:
    """The Ask of work that nobody stops."""


def asking(cancelled: Cancelled | None, heard: Callable[[At], None] = lambda _: None) -> Ask:
    """An Ask that raises Stopped once `cancelled` says so, which None never does, and else passes on to `heard` what the work is at."""
    def ask(at: At | None = None) -> None:
        if cancelled is not None and cancelled():
            raise Stopped
        if at is not None:
            heard(at)
    return ask
