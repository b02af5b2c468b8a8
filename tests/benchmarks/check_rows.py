"""The checks: a whole layout, and again after one tuner moved."""

from __future__ import annotations

from collections.abc import Iterator

from app.window.demo import demo
from geometry.checks import LiveCheck, check
from geometry.edits import free_from_row, move_tuner, plan_point
from tests.benchmarks.lines import Line, interleaved

TUNER = "treble face 2"


def lines(rounds: int) -> Iterator[Line]:
    """Every family of checks counts."""
    layout = free_from_row(demo(), TUNER)
    x, y = plan_point(layout, TUNER)
    live = LiveCheck()
    live.check(layout)
    step = iter(range(1_000_000))

    def moved() -> None:
        live.check(move_tuner(layout, TUNER, (x, y + 0.01 * (next(step) % 200))))

    whole, one = interleaved(max(1, rounds), lambda: check(layout), moved)
    yield Line("full check of the demo", whole, 3.0)
    yield Line("edit and check, one tuner moved", one, 1.0, "the full check", whole)
