"""Set-up changes along an order.

Each machine keeps its bit and its table setting while work goes on elsewhere;
the piece lies as the last operation left it. An operation that does not care
for bit, table or side changes nothing of it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from geometry.sequence.operation import Operation, Setup
from geometry.sequence.rates import Changes


def demands(setup: Setup) -> Iterator[tuple[tuple[str, str], object]]:
    """((what, on which machine), value) for everything that a set-up asks for."""
    yield ("machine", ""), setup.machine
    if setup.side is not None:
        yield ("side", ""), setup.side
    if setup.bit is not None:
        yield ("bit", setup.machine), setup.bit
    if setup.table is not None:
        yield ("table", setup.machine), setup.table


def count_changes(setups: Iterable[Setup]) -> Changes:
    """Changes along a sequence of set-ups."""
    held: dict[tuple[str, str], object] = {}
    count = dict.fromkeys(Changes.__struct_fields__, 0)
    for setup in setups:
        for key, value in demands(setup):
            if held.get(key) != value:
                count[key[0]] += 1
                held[key] = value
    return Changes(**count)


def runs(ops: Iterable[Operation]) -> list[list[Operation]]:
    """The order cut into stretches that are done in one set-up."""
    made: list[list[Operation]] = []
    for op in ops:
        if made and made[-1][-1].setup == op.setup:
            made[-1].append(op)
        else:
            made.append([op])
    return made
