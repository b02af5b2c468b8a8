"""The search for the order with the least set-up cost.

A beam that follows habit gives a good order; best-first search with a lower
bound (A*) proves it or betters it. Both work on closed states: everything that
is free in the set-up at hand is done. Costs: see geometry.sequence.task.
"""

from __future__ import annotations

import heapq
from functools import partial

from msgspec import Struct

from geometry.cancellation import Ask
from geometry.saying import say
from geometry.sequence.bound import Bound
from geometry.sequence.task import Held, Task

NARROW, WIDE = 24, 160
"""Orders kept side by side by the beam, at first and where the first is not soon proven; fewer where there are
many set-ups to choose from."""
SOON = 60_000
"""Effort of the proof before the beam is widened."""


class Found(Struct, frozen=True):
    """The set-ups in turn, their cost, and a cost that no order can undercut."""

    setups: tuple[int, ...]
    cost: int
    bound: int


class _Node(Struct, frozen=True):
    done: int
    held: Held
    cost: int
    against_habit: int
    setup: int
    parent: _Node | None

    def path(self) -> tuple[int, ...]:
        node, found = self, []
        while node.parent is not None:
            found.append(node.setup)
            node = node.parent
        return tuple(reversed(found))


def least_cost(task: Task, effort: int, ask: Ask) -> Found:
    """The best order found; `effort` limits the proof: changes tried, times the set-ups there are.

    The bound equals the cost when the order is proven best. `ask` is asked at each state of the work.
    """
    least = Bound(task)
    good = _beam(task, least, NARROW, None, ask)
    bound, better = _best_first(task, least, good.cost, min(SOON, effort), ask)
    if better is None and bound < good.cost and effort > SOON:
        good = min(good, _beam(task, least, WIDE, good.cost, ask) or good, key=_worth)
        bound, better = _best_first(task, least, good.cost, effort, ask)
    if better is not None:
        good = min(better, _beam(task, least, WIDE, better.cost, ask) or better, key=_worth)
    return Found(good.path(), good.cost, bound)


def _worth(node: _Node) -> tuple[int, int]:
    return node.cost, node.against_habit


def _beam(task: Task, least: Bound, width: int, most: int | None, ask: Ask) -> _Node | None:
    """The best of `width` orders grown side by side; None when all of them would cost more than `most`."""
    level = [_Node(0, task.start, 0, 0, -1, None)]
    width = max(4, min(width, 20 * width // len(task.groups)))
    best: _Node | None = None
    everything = task.all
    while level:
        found: dict[tuple[int, Held], tuple[tuple[int, int], _Node]] = {}
        at = partial(_at_beam, max(node.done.bit_count() for node in level), everything.bit_count())
        for node in level:
            ask(at)
            for setup in task.free(node.done):
                cost, held = task.step(node.held, setup)
                done, against = task.work(node.done, setup)
                cost, against = node.cost + cost, node.against_habit + against
                worth = (cost + least(done, held), against)
                if most is not None and worth[0] > most or best is not None and worth >= (best.cost, best.against_habit):
                    continue
                if done == everything:
                    best = _Node(done, held, cost, against, setup, node)
                    continue
                key = (done, held)
                if key not in found or worth < found[key][0]:
                    found[key] = (worth, _Node(done, held, cost, against, setup, node))
        level = [node for _, node in sorted(found.values(), key=lambda entry: entry[0])[:width]]
    return best


def _at_beam(done: int, steps: int) -> str:
    return say("The order with the fewest changes: {done} of {steps} steps placed", done=done, steps=steps)


def _at_proof(states: int) -> str:
    return say("Whether another order does with fewer changes: {states} states of the work looked at", states=states)


def _best_first(task: Task, least: Bound, known: int, effort: int, ask: Ask) -> tuple[int, _Node | None]:
    """(proven lower bound, an order that costs less than `known` if there is one)."""
    root = _Node(0, task.start, 0, 0, -1, None)
    heap: list[tuple[int, int, int, _Node]] = [(least(0, task.start), 0, 0, root)]
    best_cost: dict[tuple[int, Held], int] = {(0, task.start): 0}
    counter = tried = 0
    everything = task.all
    while heap:
        ask(partial(_at_proof, len(best_cost)))
        estimate, _, _, node = heap[0]
        if estimate >= known:
            return known, None
        if tried >= effort:
            return estimate, None
        heapq.heappop(heap)
        if node.done == everything:
            return node.cost, node
        if best_cost[node.done, node.held] < node.cost:
            continue
        free = task.free(node.done)
        tried += len(free) * len(task.groups)
        for setup in free:
            cost, held = task.step(node.held, setup)
            done, against = task.work(node.done, setup)
            cost += node.cost
            key = (done, held)
            if cost >= best_cost.get(key, known + 1):
                continue
            total = cost + least(done, held)
            if total < known:
                best_cost[key] = cost
                counter += 1
                made = _Node(done, held, cost, node.against_habit + against, setup, node)
                heapq.heappush(heap, (total, -done.bit_count(), counter, made))
    return known, None
