"""The checks: a whole layout, again after one tuner moved, through everything, on long heads, and beside other programs' distances."""

from __future__ import annotations

import math
import random
import time
from collections.abc import Iterator
from contextlib import suppress

from msgspec.structs import replace

from app.window.demo import demo
from geometry.checks import LiveCheck, check
from geometry.edits import free_from_row, move_features, move_tuner, plan_point, slide_tuner
from geometry.errors import GeometryError
from geometry.layout import FreePlace, Headstock
from tests.benchmarks import rivals
from tests.benchmarks.lines import Line, interleaved, part
from tests.geometry.checks.many import many, many_flats

TUNER = "treble face 2"
DOZENS = (4, 16, 64)
STEPS = 12
"""of a drag"""
LINEAR = 1.1
"""What the exponent of the full check's growth may be."""


def lines(rounds: int) -> Iterator[Line]:
    """Every family of checks counts."""
    layout = free_from_row(demo(), TUNER)
    x, y = plan_point(layout, TUNER)
    live = LiveCheck()
    live.check(layout)
    step = iter(range(1_000_000))

    def moved() -> None:
        live.check(move_tuner(layout, TUNER, (x, y + 0.01 * (next(step) % 200))))

    whole, one = interleaved(rounds, lambda: check(layout), moved)
    yield Line("full check of the demo", whole, 3.0)
    yield Line("edit and check, one tuner moved", one, 1.0, "the full check", whole)
    yield _through_everything(max(1, rounds))
    yield from _grown(max(1, rounds // 20))
    yield from rivals.lines(max(1, rounds // 10))


def _through_everything(rounds: int) -> Line:
    """Drags of anything anywhere, straight through whatever is in the way: the processor's time for the check of each step."""
    layout, chance = demo(), random.Random(1)
    ids = [one.id for group in (layout.tuners, layout.slots, layout.pins) for one in group]
    times: list[float] = []
    check(layout)
    for _ in range(rounds):
        live = LiveCheck()
        live.check(layout)
        for step in _drag(layout, chance.choice(ids), chance):
            began = time.process_time()
            live.check(step)
            times.append((time.process_time() - began) * 1000)
    return Line("a step of a drag through everything, processor", times, 16.7,
                note=f"p99 {part(times, 0.99):.1f}, most {max(times):.1f}")


def _drag(layout: Headstock, id: str, chance: random.Random) -> Iterator[Headstock]:
    with suppress(GeometryError):  # not in a row
        layout = free_from_row(layout, id)
    if " side " in id:
        a, b = chance.uniform(5, 190), chance.uniform(5, 190)
        for k in range(STEPS):
            yield slide_tuner(layout, id, a + (b - a) * k / (STEPS - 1))
        return
    x, y = chance.uniform(-45, 45), chance.uniform(-90, 120)
    for k in range(STEPS):
        yield move_features(layout, [id], (x * k / (STEPS - 1), y * k / (STEPS - 1)))


def _grown(rounds: int) -> Iterator[Line]:
    """Long heads at the demo's density, by the processor's time, against a dozen."""
    for dozens in DOZENS:
        for made, words in ((many, ""), (many_flats, ", side tuners in flats")):
            heads = (made(1), made(dozens))
            small, large = interleaved(rounds, *(lambda head=head: check(head) for head in heads), clock=time.process_time)
            grown = math.log(part(large, 0.5) / part(small, 0.5)) / math.log(dozens)
            yield Line(f"full check, {12 * dozens} tuners{words}", large, None, "12 tuners", small, round(dozens ** LINEAR, 1),
                       f"exponent {grown:.2f}, {LINEAR:g} wanted")
            few, some = interleaved(5 * rounds, *(_mover(head) for head in heads), clock=time.process_time)
            yield Line(f"check, one of {12 * dozens} tuners moved{words}", some, None, "one of 12", few)


def _mover(head: Headstock):
    """Moves a face tuner in the middle of a head a little further on each call, and checks again."""
    live = LiveCheck()
    live.check(head)
    free = [i for i, tuner in enumerate(head.tuners) if isinstance(tuner.place, FreePlace)]
    at = free[len(free) // 2]
    step = iter(range(1_000_000))

    def moved() -> None:
        tuner = head.tuners[at]
        x, y = tuner.place.at
        place = FreePlace(at=(x, y + 0.01 * (next(step) % 200)))
        live.check(replace(head, tuners=(*head.tuners[:at], replace(tuner, place=place), *head.tuners[at + 1:])))

    return moved
