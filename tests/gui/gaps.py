"""How long the window's thread is away from its event loop, and what it was doing meanwhile."""

from __future__ import annotations

import signal
import time
from dataclasses import dataclass
from pathlib import Path
from types import FrameType

from PySide6.QtCore import QObject, QTimer

from tests.spent import slowness

BEAT_MS = 4
LOOK = 0.02
"""Seconds away after which it is written down what runs."""
LONG_MS = 50.0
"""Work after which it is asked how slow the machine is just then."""


@dataclass(frozen=True)
class Gap:
    """One absence: by the clock on the wall, in processor time of the window's thread, during which act, and where."""

    wall: float
    busy: float
    act: str
    where: tuple[str, ...]
    slow: float = 1.0
    """how many times slower than meant the machine was right after it, where it was long"""

    def meant(self, slow: dict[str, float]) -> float:
        """The work in ms on the machine that the limits are meant for, which was so many times quicker during that act."""
        return self.busy / max(self.slow, slow[self.act])

    def __str__(self) -> str:
        return f"{self.busy:6.1f} ms of work, {self.wall:6.1f} ms on the wall, {self.act}: {' < '.join(self.where) or 'not seen'}"


class Watchdog(QObject):
    """Beats with the event loop; an alarm looks at what runs while a beat is overdue.

    The alarm is heard in the window's own thread: to look at its frames from another thread ended Python now and then.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.gaps: list[Gap] = []
        self.act = "nothing"
        self.slow: dict[str, float] = {}
        """by act, how many times slower than meant the machine was before and after it"""
        self._frames: list[tuple[str, ...]] = []
        self._last, self._busy = time.perf_counter(), time.thread_time()
        self._timer = QTimer(self)
        self._timer.setInterval(BEAT_MS)
        self._timer.timeout.connect(self._beat)
        self._timer.start()
        self._before = signal.signal(signal.SIGALRM, self._look)
        signal.setitimer(signal.ITIMER_REAL, LOOK / 2, LOOK / 2)

    def stop(self) -> None:
        """End the alarm and the timer."""
        self._timer.stop()
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, self._before)

    def now(self, act: str) -> None:
        """Say what is done from now on, so that a gap can be told by it."""
        self._beat()
        slow = slowness(3)
        for name in (self.act, act):
            self.slow[name] = max(slow, self.slow.get(name, 1.0))
        self.act = act
        self._last, self._busy = time.perf_counter(), time.thread_time()

    def worst(self, most: int = 12) -> list[Gap]:
        """The longest absences by processor time."""
        return sorted(self.gaps, key=lambda gap: -gap.busy)[:most]

    def _beat(self) -> None:
        now, busy = time.perf_counter(), time.thread_time()
        if now - self._last > LOOK:
            seen = self._frames[-1] if self._frames else ()
            wall, worked = (now - self._last) * 1000, (busy - self._busy) * 1000
            # The speed of a shared machine changes from one second to the next: it is asked there and then.
            self.gaps.append(Gap(wall, worked, self.act, seen, slowness(3) if worked > LONG_MS else 1.0))
        self._frames.clear()
        self._last, self._busy = time.perf_counter(), time.thread_time()

    def _look(self, _number: int, frame: FrameType | None) -> None:
        if time.perf_counter() - self._last > LOOK:
            names: list[str] = []
            while frame is not None and len(names) < 6:
                place = Path(frame.f_code.co_filename)
                if {"app", "geometry"}.intersection(place.parts):
                    names.append(f"{place.stem}.{frame.f_code.co_name}:{frame.f_lineno}")
                frame = frame.f_back
            if names:
                self._frames.append(tuple(names))
