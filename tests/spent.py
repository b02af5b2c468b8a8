"""How long work takes, in processor time of the machine that the limits of the tests are meant for.

The clock on the wall says more about what else a machine does than about the
work, and processor time still differs from machine to machine: so it is told
in times of a loop of plain work, run beside it.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager

REFERENCE_MS = 10.0
"""What the loop takes on the machine on which limits are meant as they stand."""


def slowness(loops: int = 7) -> float:
    """How many times slower than meant this machine is right now, at least 1: the least of some loops of plain work."""
    spent = []
    for _ in range(loops):
        began = time.thread_time()
        total = 0
        for k in range(170_000):
            total += k * k % 7
        spent.append((time.thread_time() - began) * 1000)
    return max(1.0, min(spent) / REFERENCE_MS)


def spent(work: Callable[[], object], rounds: int = 1) -> float:
    """Seconds that the quickest of some rounds of `work` takes in this thread."""
    before, least = slowness(), float("inf")
    for _ in range(rounds):
        began = time.thread_time()
        work()
        least = min(least, time.thread_time() - began)
    return least / max(before, slowness())


def times_as_long(work: Callable[[], object], other: Callable[[], object], rounds: int = 3) -> float:
    """How many times as long as `other` the work takes: both in turn, and the least of some rounds.

    The speed of a shared machine may change by half from one second to the next, in between the two as well.
    """
    found = []
    for _ in range(rounds):
        began = time.thread_time()
        other()
        middle = time.thread_time()
        work()
        found.append((time.thread_time() - middle) / (middle - began))
    return min(found)


@contextmanager
def within(seconds: float) -> Iterator[None]:
    """AssertionError when what is done in here takes longer in this thread."""
    began = time.thread_time()
    yield
    took = time.thread_time() - began
    if took > seconds:  # only then does it matter how slow the machine is
        took /= slowness()
    assert took <= seconds, f"it takes {took:.2f} s of the processor, and {seconds} are allowed"
