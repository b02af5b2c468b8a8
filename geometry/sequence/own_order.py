"""The maker's own order, kept up with a layout that changes."""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping, Sequence
from itertools import count, islice

from msgspec.structs import replace

from geometry.sequence.before import Before
from geometry.sequence.changes import count_changes
from geometry.sequence.judge import legal_span, moved
from geometry.sequence.operation import Operation
from geometry.sequence.order import Order


def arranged(kept: Sequence[str], best: Sequence[str], precedence: Iterable[Before]) -> tuple[str, ...]:
    """The steps of `best` in the order that was kept, as far as it speaks of them.

    A step that it does not know goes behind the step that it follows in the best
    order, moved on only as far as it must to be legal; where no place is legal it
    stays there. Kept steps that `best` does not have are left out.
    """
    edges = tuple(precedence)
    wanted = set(best)
    steps = tuple(step for step in dict.fromkeys(kept) if step in wanted)
    before: str | None = None
    for step in best:
        if step not in steps:
            first, last = legal_span(steps, step, edges)
            place = 0 if before is None else steps.index(before) + 1
            steps = moved(steps, step, place if first > last else min(max(place, first), last))
        before = step
    return steps


def numbered(steps: Iterable[str], numbers: Mapping[str, int], gone: Container[int] = ()) -> dict[str, int]:
    """The number of each of the steps, 1 first and in that order: each of `numbers` has its own, or the next one where another has that;
    the others fill the places between in their order. None has a number that is `gone`. Numbers of steps that are not there count for
    nothing."""
    steps = tuple(steps)
    free = list(islice((i for i in count(1) if i not in gone), len(steps)))
    taken: dict[int, str] = {}
    for id, number in sorted(((id, numbers[id]) for id in steps if id in numbers), key=lambda item: item[1]):
        place = next((i for i in free if i >= number and i not in taken), None)
        taken[place if place is not None else next(i for i in reversed(free) if i not in taken)] = id
    others = iter([id for id in steps if id not in numbers])
    return {taken[i] if i in taken else next(others): i for i in free}


def in_own_order(kept: Sequence[str], best: Order, ops: Sequence[Operation], precedence: Iterable[Before]) -> Order:
    """The order that the maker keeps, with what is known of the best one; `best` itself when nothing is kept.

    It need not be legal (see judge); only a legal one with the fewest changes counts as proven.
    """
    if not kept:
        return best
    edges = tuple(precedence)
    steps = arranged(kept, best.steps, edges)
    by_id = {op.id: op for op in ops}
    changes = count_changes(by_id[id].setup for id in steps)
    right = all(steps.index(e.first) < steps.index(e.then) for e in edges
                if e not in best.given_up and e.first in steps and e.then in steps)
    return replace(best, steps=steps, changes=changes, proven=right and changes.total <= best.bound)
