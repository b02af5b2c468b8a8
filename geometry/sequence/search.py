"""The search for the order with the least set-up cost.

A beam that follows habit gives a good order; best-first search with a lower
bound (A*) proves it or betters it. Both work on closed states: everything that
is free in the set-up at hand is done. Costs: see geometry.sequence.task.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass

from geometry.sequence.task import Held, Task

BEAM = 24
"""Orders kept side by side by the beam."""


@dataclass(frozen=True, slots=True)
class Found:
    """The set-ups in turn, their cost, and a cost that no order can undercut."""

    setups: tuple[int, ...]
    cost: int
    bound: int


@dataclass(frozen=True, slots=True)
class _Node:
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


def least_cost(task: Task, effort: int) -> Found:
    """The best order found; `effort` is how many states the proof may look at.

    The bound equals the cost when the order is proven best.
    """
    good = _beam(task, None)
    bound, better = _best_first(task, good.cost, effort)
    if better is not None:
        by_habit = _beam(task, better.cost)
        good = by_habit if by_habit is not None and by_habit.cost <= better.cost else better
    return Found(good.path(), good.cost, bound)


def _next(task: Task, node: _Node, setup: int) -> _Node:
    cost, held = task.step(node.held, setup)
    done = task.closed(node.done, setup)
    against, fresh = node.against_habit, done & ~node.done
    while fresh:
        low = fresh & -fresh
        against += (task.earlier[low.bit_length() - 1] & ~done).bit_count()
        fresh ^= low
    return _Node(done, held, node.cost + cost, against, setup, node)


def _beam(task: Task, most: int | None) -> _Node | None:
    """The best of a few orders grown side by side; None when all of them would cost more than `most`."""
    level = [_Node(0, task.start, 0, 0, -1, None)]
    best: _Node | None = None
    while level:
        found: dict[tuple[int, Held], tuple[tuple[int, int], _Node]] = {}
        for node in level:
            for setup in task.free(node.done):
                made = _next(task, node, setup)
                worth = (made.cost + task.least(made.done, made.held), made.against_habit)
                if most is not None and worth[0] > most or best is not None and worth >= (best.cost, best.against_habit):
                    continue
                if made.done == task.all:
                    best = made
                    continue
                key = (made.done, made.held)
                if key not in found or worth < found[key][0]:
                    found[key] = (worth, made)
        level = [node for _, node in sorted(found.values(), key=lambda entry: entry[0])[:BEAM]]
    return best


def _best_first(task: Task, known: int, effort: int) -> tuple[int, _Node | None]:
    """(proven lower bound, an order that costs less than `known` if there is one)."""
    root = _Node(0, task.start, 0, 0, -1, None)
    heap: list[tuple[int, int, int, _Node]] = [(task.least(0, task.start), 0, 0, root)]
    best_cost: dict[tuple[int, Held], int] = {(0, task.start): 0}
    counter = looked = 0
    while heap:
        estimate, _, _, node = heap[0]
        if estimate >= known:
            return known, None
        if looked >= effort:
            return estimate, None
        heapq.heappop(heap)
        if node.done == task.all:
            return node.cost, node
        if best_cost[node.done, node.held] < node.cost:
            continue
        looked += 1
        for setup in task.free(node.done):
            made = _next(task, node, setup)
            key = (made.done, made.held)
            total = made.cost + task.least(made.done, made.held)
            if total < known and made.cost < best_cost.get(key, known + 1):
                best_cost[key] = made.cost
                counter += 1
                heapq.heappush(heap, (total, -made.done.bit_count(), counter, made))
    return known, None
