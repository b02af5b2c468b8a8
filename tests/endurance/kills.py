"""Kills an editing program at random moments and looks at what is left: at most the last two seconds may be lost.

Several copies run at once and share one journal folder, as two windows of a maker do.
"""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

from app.document.leftovers import Leftover, leftovers
from app.formats import headstock
from app.formats.saving import before
from geometry.layout import Headstock
from tests.endurance.load import layout_at, step_of

ROOT = Path(__file__).parents[2]
MOST_LOST = 2.0
"""Seconds of work."""
LATEST = 3.2
"""Seconds of work after the first change at which the latest kill comes."""
STEP = 0.25
"""Seconds that a step of the program takes at most; when it is silent for longer, the machine ran others or waited for its disk,
and nothing was worked that could be lost."""
GIVEN = 600.0
"""Seconds by the clock after which a program is killed however little it worked."""


@dataclass(frozen=True)
class Kill:
    """One program killed: what it had said, and when it died."""

    seed: int
    at: float
    said: tuple[tuple[float, int], ...]

    @property
    def worked(self) -> list[tuple[float, int]]:
        """(seconds of work until the kill, step) of all that it said."""
        return worked(self.said, self.at)

    @property
    def allowed(self) -> set[int]:
        """Steps that may be found: the one on show MOST_LOST before the kill, and all after it."""
        early = [step for left, step in self.worked if left >= MOST_LOST]
        return {early[-1] if early else 0} | {step for left, step in self.worked if left < MOST_LOST}


def worked(said: Sequence[tuple[float, int]], at: float) -> list[tuple[float, int]]:
    """(seconds of work from then to a moment, step) of all that a program said until that moment."""
    found, left, later = [], 0.0, at
    for when, step in reversed(said):
        left, later = left + min(later - when, STEP), when
        found.append((left, step))
    return found[::-1]


def kill_one(folder: Path, seed: int, window: bool = False) -> Kill:
    """Start a program, let it edit for a random while of work, kill it."""
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)}
    process = subprocess.Popen(
        [sys.executable, "-m", "tests.endurance.load", str(folder), str(seed), *(["window"] if window else [])],
        cwd=ROOT, env=environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    first = process.stdout.readline()
    if not first:
        raise AssertionError(f"the program did not start: {process.stderr.read()}")
    lines = [first]

    def listen() -> None:
        for line in process.stdout:
            lines.append(line)

    with ThreadPoolExecutor(1) as drain:
        rest = drain.submit(listen)
        moment, ends = random.Random(seed).uniform(0.0, LATEST), time.monotonic() + GIVEN
        while time.monotonic() < ends:
            left = moment - worked(heard(lines[:]), time.monotonic())[0][0]
            if left <= 0:
                break
            time.sleep(max(left, 0.02))
        at = time.monotonic()
        process.send_signal(signal.SIGKILL)
        rest.result()
    process.wait()
    process.stdout.close()
    process.stderr.close()
    return Kill(seed, at, tuple(heard(lines)))


def heard(lines: list[str]) -> list[tuple[float, int]]:
    """(when, step) of each line that a program said; the last may have been cut off in the middle."""
    return [(float(parts[0]), int(parts[1])) for parts in (line.split() for line in lines if line.endswith("\n")) if len(parts) == 2]


def loss(folder: Path, kill: Kill, left: list[Leftover]) -> float:
    """Seconds of work that were lost; AssertionError when it is more than allowed or what is found is no whole layout."""
    mine = [one for one in left if one.layout.name.startswith(f"{kill.seed} step ")]
    assert len(mine) <= 1, f"{kill.seed}: two journals of one window"
    path = folder / f"{kill.seed}.headstock.json"
    saved = headstock.read(path) if path.exists() else None
    if before(path).exists():
        headstock.read(before(path))
    found: Headstock = mine[0].layout if mine else saved if saved is not None else layout_at(kill.seed, 0)
    step = step_of(found)
    assert found == layout_at(kill.seed, step), f"{kill.seed}: not the layout of step {step}"
    assert step in kill.allowed, f"{kill.seed}: found step {step}, allowed {sorted(kill.allowed)[:3]}…"
    newer = [left for (_, here), (left, _) in zip(kill.worked, kill.worked[1:]) if here == step]
    return max(0.0, newer[-1]) if newer else 0.0


def run(folder: Path, seeds: list[int], windows: frozenset[int] = frozenset(), at_once: int = 4,
        say=lambda text: None) -> list[float]:
    """Kill one program for each seed; the seconds lost in each. AssertionError at the first that lost too much."""
    with ThreadPoolExecutor(at_once) as pool:
        kills = []
        for kill in pool.map(lambda seed: kill_one(folder, seed, seed in windows), seeds):
            kills.append(kill)
            if len(kills) % 20 == 0:
                say(f"{len(kills)} killed")
    left = leftovers(folder / "journal")
    return [loss(folder, kill, left) for kill in kills]
