"""The least cost of giving each row a column of its own, in one of several ways, where choices cost more beside some others.

The cost without what choices cost beside each other is solved first (shortest augmenting paths with
potentials); its reduced costs bound every other assignment from below, so a search in their order ends with a proof.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np

MOST_STEPS = 200_000
NEVER = 1e9
"""Cost of a choice that cannot be."""
_SAME = 1e-6
"""Costs that differ by less are the same."""

Choice = tuple[int, int]
"""(column, way)"""
Beside = Callable[[int, int, int], np.ndarray]


def assign(cost: np.ndarray, beside: Beside, step: Callable[[int], None],
           known: tuple[Choice, ...] | None = None) -> tuple[tuple[Choice, ...] | None, bool]:
    """(choice of each row, whether it is proven best); None when none was found without something that cannot be.

    `cost[row, column, way]`, at least as many columns as rows. `beside(row, column, way)`: what every other choice costs more,
    in the same shape, beside this one (not less than 0). `step` is told how many steps were taken. `known` is an assignment to better.
    """
    rows, columns, _ = cost.shape
    least = cost.min(axis=2)
    base, reduced = _reduced(least.tolist())
    best, best_cost, steps = known, NEVER if known is None else whole_cost(cost, beside, known), 0
    chosen: list[Choice | None] = [None] * rows

    fresh = np.array(reduced)[:, :, None] + cost - least[:, :, None]
    fresh[cost >= NEVER] = math.inf

    def search(left: list[int], beyond: np.ndarray, bound: float, spent: float) -> bool:
        """`beyond`: what each choice costs more than the bound, `spent`: what the chosen ones cost."""
        nonlocal best, best_cost, steps
        step(steps)
        steps += 1
        if steps > MOST_STEPS:
            return False
        if not left:
            # Spare columns cost nothing, but their potentials count in the bound: compare what it really costs.
            if spent < best_cost:
                best, best_cost = tuple(chosen), spent
            return True
        room = best_cost - bound - _SAME
        own = beyond[left].reshape(len(left), -1)
        lowest = own.min(axis=1)
        if lowest.sum() >= room:
            return True
        # The row with the fewest choices left comes next; the others cost at least their lowest.
        row = (own < (room - lowest.sum() + lowest)[:, None]).sum(axis=1).argmin()
        i, others = left[row], lowest.sum() - lowest[row]
        rest, whole = left[:row] + left[row + 1:], True
        for n in np.argsort(own[row], kind="stable").tolist():
            if own[row, n] + others >= best_cost - bound - _SAME:
                break
            k, way = divmod(n, cost.shape[2])
            chosen[i] = k, way
            more = beyond + beside(i, k, way)
            more[:, k] = math.inf
            paid = beyond[i, k, way]
            whole = search(rest, more, bound + paid, spent + cost[i, k, way] + paid - fresh[i, k, way]) and whole
        chosen[i] = None
        return whole

    whole = search(list(range(rows)), fresh, base, 0.0)
    return best, whole


def whole_cost(cost: np.ndarray, beside: Beside, chosen: Sequence[Choice]) -> float:
    """What an assignment costs."""
    alone = sum(cost[i, k, way] for i, (k, way) in enumerate(chosen))
    return alone + sum(beside(i, *chosen[i])[n, *chosen[n]] for i in range(len(chosen)) for n in range(i))


def _reduced(cost: Sequence[Sequence[float]]) -> tuple[float, list[list[float]]]:
    """(least cost without clashes, what each pair costs beyond its potentials, never negative).

    Shortest augmenting paths; rows that are missing to a square cost nothing anywhere.
    """
    n = len(cost[0])
    square = [list(row) for row in cost] + [[0.0] * n for _ in range(n - len(cost))]
    u, w, match, way = [0.0] * (n + 1), [0.0] * (n + 1), [0] * (n + 1), [0] * (n + 1)
    for i in range(1, n + 1):
        match[0], j0 = i, 0
        least, used = [math.inf] * (n + 1), [False] * (n + 1)
        while True:
            used[j0] = True
            row, delta, j1 = match[j0], math.inf, 0
            for j in range(1, n + 1):
                if not used[j]:
                    now = square[row - 1][j - 1] - u[row] - w[j]
                    if now < least[j]:
                        least[j], way[j] = now, j0
                    if least[j] < delta:
                        delta, j1 = least[j], j
            for j in range(n + 1):
                if used[j]:
                    u[match[j]] += delta
                    w[j] -= delta
                else:
                    least[j] -= delta
            j0 = j1
            if match[j0] == 0:
                break
        while j0:
            match[j0], j0 = match[way[j0]], way[j0]
    base = sum(u[1:]) + sum(w[1:])
    return base, [[max(0.0, square[i][k] - u[i + 1] - w[k + 1]) for k in range(n)] for i in range(len(cost))]
