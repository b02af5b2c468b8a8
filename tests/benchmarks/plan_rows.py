"""Plans: what a bit does in a slot, the best way over a rack of sixty bits, the running order."""

from __future__ import annotations

import time
from collections.abc import Iterator

from app.window.demo import demo
from geometry.routing.fit import narrowest, tightest
from geometry.routing.reached import slot_reached
from geometry.routing.search import plan_slot
from geometry.sequence import best_order, operations, precedence
from tests.benchmarks.heads import sixty_bits, waisted
from tests.benchmarks.lines import Line, interleaved


def lines(rounds: int) -> Iterator[Line]:
    """Of a drawn slot with a waist, new each time; the order without the maker's wishes. Processor time, since nothing here waits."""
    layout, many = demo(), sixty_bits()
    straight = many.slots[0]
    ops = operations(layout)
    edges = precedence(layout, ops)

    def least_tool() -> None:
        slot = waisted()
        narrowest(slot), tightest(slot)

    work = (lambda: slot_reached(waisted(), 9.0), least_tool, lambda: plan_slot(waisted(), many),
            lambda: plan_slot(straight, many), lambda: best_order(ops, edges))
    wanted = (("what one bit leaves of a drawn slot", 15.0), ("which bits pass a drawn slot and its corners", 15.0),
              ("best plan of a drawn slot over sixty bits", 100.0), ("best plan of a straight slot over sixty bits", 100.0),
              ("running order of the demo", 200.0))
    for (name, most), times in zip(wanted, interleaved(rounds, *work, clock=time.process_time), strict=True):
        yield Line(name, times, most)
