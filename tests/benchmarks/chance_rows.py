"""Many built headstocks: how long, whether in step with their number, how soon given up."""

from __future__ import annotations

import time
from collections.abc import Iterator

from app.window.demo import demo
from geometry.accuracy import simulate
from tests.benchmarks.lines import Line, interleaved

TRIALS = 10_000


def lines(rounds: int) -> Iterator[Line]:
    """Ten thousand, half of them, and the longest that a stop has to wait for."""
    layout, trials = demo(), TRIALS if rounds else 100
    many, half = interleaved(rounds, lambda: simulate(layout, trials, 1), lambda: simulate(layout, trials // 2, 1))
    yield Line(f"{trials:,} simulated headstocks of the demo", many, 500.0, "half of them", half, 2.2)
    asked = [time.perf_counter()]

    simulate(layout, trials, 1, ask=lambda at=None: asked.append(time.perf_counter()))
    asked.append(time.perf_counter())
    gaps = [(b - a) * 1000 for a, b in zip(asked, asked[1:], strict=False)]
    yield Line("between two looks whether it was given up", [max(gaps)], 50.0, note=f"longest of {len(gaps)}")
