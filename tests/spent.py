"""How long work takes, in processor time of the machine that the limits of the tests are meant for.

The clock on the wall says more about what else a machine does than about the
work, and processor time still differs from machine to machine: so it is told
in times of a loop of plain work, run beside it.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager

TURNS = 8
"""How often what is too much is measured before it counts: over some seconds, or as long as the work itself takes."""
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


def least(measured: Callable[[], float], wanted: float) -> float:
    """What is measured, again and again while it is more than is wanted, and the least of it.

    What others do to a shared machine passes; work that takes too long takes too long each time.
    """
    found = measured()
    for turn in range(TURNS - 1):
        if found <= wanted:
            break
        time.sleep(0.2 * turn)
        found = min(found, measured())
    return found


def spent(work: Callable[[], object], wanted: float, rounds: int = 1) -> float:
    """Seconds that the quickest of some rounds of `work` takes in this thread, in as many windows as `least` needs."""
    def quickest() -> float:
        before, found = slowness(), float("inf")
        for _ in range(rounds):
            began = time.thread_time()
            work()
            found = min(found, time.thread_time() - began)
        return found / max(before, slowness())
    return least(quickest, wanted)


def times_as_long(work: Callable[[], object], other: Callable[[], object], wanted: float, rounds: int = 3) -> float:
    """How many times as long as `other` the work takes: both in turn, and the least of some rounds and windows.

    The speed of a shared machine may change by half from one second to the next, in between the two as well.
    """
    def once() -> float:
        began = time.thread_time()
        other()
        middle = time.thread_time()
        work()
        return (time.thread_time() - middle) / (middle - began)
    return least(lambda: min(once() for _ in range(rounds)), wanted)


@contextmanager
def within(seconds: float) -> Iterator[None]:
    """AssertionError when what is done in here takes longer in this thread."""
    began = time.thread_time()
    yield
    took = time.thread_time() - began
    if took > seconds:  # only then does it matter how slow the machine is
        took /= slowness()
    assert took <= seconds, f"it takes {took:.2f} s of the processor, and {seconds} are allowed"
