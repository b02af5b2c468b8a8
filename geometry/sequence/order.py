"""The running order: legal, with the fewest set-up changes, and honest about what cannot be had."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from graphlib import CycleError, TopologicalSorter

from msgspec import Struct

from geometry.cancellation import Ask, go_on
from geometry.saying import say
from geometry.sequence.before import Before
from geometry.sequence.changes import count_changes
from geometry.sequence.operation import Operation
from geometry.sequence.rates import Changes, Rates
from geometry.sequence.search import least_cost
from geometry.sequence.task import CHANGE, Task, make_task

EFFORT = 1_000_000
"""How far the proof may go (geometry.sequence.search): a few seconds on a plain machine."""


class Order(Struct, frozen=True):
    """A running order.

    `bound` is a number of changes that no legal order can undercut; `proven`
    says that this order meets it. `given_up` are the unwise-only edges that a
    legal order cannot respect. `blocked` says in sentences what cannot be done
    and why; `stuck` are the operations left out because they wait for each
    other or for such operations.
    """

    steps: tuple[str, ...]
    changes: Changes
    proven: bool
    bound: int
    given_up: tuple[Before, ...] = ()
    blocked: tuple[str, ...] = ()
    stuck: tuple[str, ...] = ()


def best_order(ops: Sequence[Operation], precedence: Iterable[Before], rates: Rates | None = None,
               effort: int = EFFORT, ask: Ask = go_on) -> Order:
    """Among all legal orders one with the fewest changes of machine, bit, table and side.

    Time (rates) settles ties, then habit (the order of `ops`). Proven by
    exhaustion with a lower bound; past `effort` the best order found is returned
    with the bound reached. `ask` is asked again and again on the way.
    """
    rates = rates or Rates()
    edges, given_up, circles, stuck = _untangled(ops, list(precedence))
    blocked = tuple(op.cannot for op in ops if op.blocked) + tuple(circles)
    doable = [op for op in ops if op.id not in stuck]
    stuck_in_turn = tuple(op.id for op in ops if op.id in stuck)
    if not doable:
        return Order((), Changes(), True, 0, given_up, blocked, stuck_in_turn)
    task = make_task(doable, _waits(doable, edges), rates)
    found = least_cost(task, effort, ask)
    steps = _written_out(task, found.setups)
    by_id = {op.id: op for op in doable}
    changes = count_changes(by_id[id].setup for id in steps)
    bound = found.bound // CHANGE
    return Order(steps, changes, changes.total <= bound, bound, given_up, blocked, stuck_in_turn)


def _waits(ops: Sequence[Operation], edges: Iterable[Before]) -> dict[str, set[str]]:
    known = {op.id for op in ops}
    waits: dict[str, set[str]] = {op.id: set() for op in ops}
    for edge in edges:
        if edge.first in known and edge.then in known:
            waits[edge.then].add(edge.first)
    return waits


def _untangled(ops: Sequence[Operation],
               edges: list[Before]) -> tuple[list[Before], tuple[Before, ...], list[str], set[str]]:
    """(edges without a circle, soft edges given up, sentences about hard circles, ids stuck in or behind them)."""
    given_up: list[Before] = []
    circles: list[str] = []
    stuck: set[str] = set()
    called = {op.id: op.called for op in ops}
    while True:
        doable = [op for op in ops if op.id not in stuck]
        waits = _waits(doable, edges)
        circle = _circle(waits)
        if circle is None:
            return edges, tuple(given_up), circles, stuck
        pairs = list(zip(circle, circle[1:], strict=False))
        between = {pair: [e for e in edges if (e.first, e.then) == pair] for pair in pairs}
        soft = next((pair for pair in pairs if not any(e.hard for e in between[pair])), None)
        if soft is not None:
            given_up += between[soft]
            edges = [e for e in edges if (e.first, e.then) != soft]
            continue
        parts = []
        for pair in pairs:
            edge = next(e for e in between[pair] if e.hard)
            parts.append(say("{one} must come before {two} ({reason})",
                             one=called[pair[0]], two=called[pair[1]], reason=edge.reason))
        circles.append(say("No order works: {parts}", parts='; '.join(parts)))
        stuck |= _behind(waits, set(circle))


def _circle(waits: dict[str, set[str]]) -> list[str] | None:
    """Ids that wait for each other in a circle, first repeated at the end and each before the next; None without."""
    sorter = TopologicalSorter({id: sorted(own) for id, own in waits.items()})
    try:
        sorter.prepare()
    except CycleError as error:
        return list(error.args[1])
    return None


def _behind(waits: dict[str, set[str]], start: set[str]) -> set[str]:
    """The start and everything that waits for it, directly or not."""
    found = set(start)
    while True:
        more = {id for id, own in waits.items() if id not in found and own & found}
        if not more:
            return found
        found |= more


def _written_out(task: Task, setups: Sequence[int]) -> tuple[str, ...]:
    """Operation by operation: within a set-up in the order of habit as far as it is legal."""
    steps: list[str] = []
    done = 0
    for setup in setups:
        own = [i for c in range(len(task.members)) if task.setup_of[c] == setup for i in task.members[c]]
        waiting = sorted(i for i in own if not done >> i & 1)
        while (i := next((i for i in waiting if not task.op_waits[i] & ~done), None)) is not None:
            waiting.remove(i)
            done |= 1 << i
            steps.append(task.ops[i].id)
    return tuple(steps)
