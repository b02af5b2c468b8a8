"""What a benchmark measured, and how to measure interleaved."""

from __future__ import annotations

import gc
import json
import math
import time
from collections.abc import Callable, Iterator
from dataclasses import asdict, dataclass, field


@dataclass(frozen=True)
class Line:
    """One row of the table: times in ms, and those of a reference measured in between them."""

    name: str
    times: list[float]
    most: float | None = None
    """what the p95 is wanted to be at most, ms"""
    against: str = ""
    """what the reference is"""
    reference: list[float] = field(default_factory=list)
    ratio: float | None = None
    """what the median is wanted to be at most, in medians of the reference"""
    note: str = ""

    @property
    def quotient(self) -> float | None:
        """Median over the median of the reference; None without one."""
        return part(self.times, 0.5) / part(self.reference, 0.5) if self.reference else None


def part(times: list[float], share: float) -> float:
    """The value below which this share of the times lies: the nearest measured one, never one in between."""
    ranked = sorted(times)
    return ranked[max(0, math.ceil(share * len(ranked) - 1e-9) - 1)]


def interleaved(rounds: int, *works: Callable[[], object], clock: Callable[[], float] = time.perf_counter) -> list[list[float]]:
    """Times in ms of each work, done in turn `rounds` times after one round that does not count; 0 only tries each once.

    The collector of garbage goes on as in the program; it is only run before
    the first round, so that nobody pays for what came before.
    """
    for work in works if rounds else ():
        work()
    gc.collect()
    times: list[list[float]] = [[] for _ in works]
    for _ in range(max(1, rounds)):
        for work, spent in zip(works, times, strict=True):
            began = clock()
            work()
            spent.append((clock() - began) * 1000)
    return times


def dumped(lines: Iterator[Line]) -> Iterator[str]:
    """Each line as one line of JSON, for the process that prints the table."""
    for line in lines:
        yield json.dumps(asdict(line))


def loaded(text: str) -> Line:
    """The other way."""
    return Line(**json.loads(text))
