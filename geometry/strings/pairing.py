"""Which post serves which string: no two strings cross on the face, they keep clear of other posts, and bend aside as little as they can.

The least cost over all assignments whose runs do not cross: the sum of squared
side angles, and more than all of it for each string that passes another post
without its air, again more for one that runs into it. The assignment without that rule is solved first (shortest augmenting
paths with potentials); its reduced costs bound every other one from below, so a search
in their order ends with a proof.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import partial

from msgspec import Struct

from geometry.cancellation import Ask, go_on
from geometry.errors import GeometryError
from geometry.layout.hardware import Post
from geometry.layout.headstock import Headstock
from geometry.saying import say
from geometry.solids.frames import Frame, frames
from geometry.strings.nut import nut_places
from geometry.strings.past_posts import too_near
from geometry.strings.runs import Run, carriers, cross, run_to, runs

_NEVER = 1e6
"""Cost of a pair that cannot be; larger than any sum of squared angles."""
_NEAR, _INTO = 100.0, 10_000.0
"""Cost (rad2) of a string that passes another post without its air, and of one that runs into it: 24 squared angles are less."""
_MOST_STEPS = 200_000


class Pairing(Struct, frozen=True):
    """An assignment: the run of each string in the order of the strings, and how it compares (rad)."""

    runs: tuple[Run, ...]
    proven: bool
    """whether nothing better exists; False when the search was cut short"""
    rubbing: int = 0
    """how many of the strings have less than their air to the post of another tuner"""

    @property
    def worst(self) -> float:
        """The largest side angle."""
        return max((abs(run.side_angle) for run in self.runs), default=0.0)

    @property
    def total(self) -> float:
        """The sum of squared side angles."""
        return sum(run.side_angle ** 2 for run in self.runs)

    @property
    def crossings(self) -> int:
        """How many pairs of strings cross on the face."""
        return sum(cross(a, b) for i, a in enumerate(self.runs) for b in self.runs[i + 1:])


def present(layout: Headstock) -> Pairing:
    """The assignment as the layout has it."""
    placed, found = frames(layout), runs(layout)
    return Pairing(found, False, sum(near for near, _ in too_near(found, _posts(layout, placed), layout.margins.string_air)))


def propose_pairing(layout: Headstock, ask: Ask = go_on) -> Pairing:
    """The best assignment; held tuners keep their strings, every tuner its winding side. `ask` is asked at each step.

    GeometryError when there are fewer posts than strings, or no assignment without crossings.
    """
    strings, tuners = layout.strings, layout.tuners
    if not strings:
        raise GeometryError(say("The layout has no strings yet."))
    if len(tuners) < len(strings):
        raise GeometryError(say("There are {strings} strings and only {tuners} posts: add tuners first.",
                                strings=len(strings), tuners=len(tuners)))
    placed, retainers = frames(layout), carriers(layout)
    places = nut_places(layout.nut, strings)
    fixed = {tuner.string: tuner.id for tuner in tuners if tuner.held and tuner.string is not None}
    taken = {tuner.id for tuner in tuners if tuner.held and tuner.string is not None}
    table: list[list[Run | None]] = []
    for string, x in zip(strings, places, strict=True):
        ask(partial(_at, 0))
        row: list[Run | None] = []
        for tuner in tuners:
            may = fixed[string.id] == tuner.id if string.id in fixed else tuner.id not in taken
            row.append(run_to(tuner, placed[tuner.id], layout.pattern(tuner.pattern).post, string, layout.nut.at(x), layout.nut.height,
                              retainers)
                       if may else None)
        table.append(row)
    able = [run for row in table for run in row if run is not None]
    rubs = dict(zip(map(id, able), too_near(able, _posts(layout, placed), layout.margins.string_air), strict=True))
    cost = [[_NEVER if run is None else run.side_angle ** 2 + _rubbing(*rubs[id(run)]) for run in row] for row in table]
    found, proven = assign(cost, _clashes(table), ask)
    if found is None:
        raise GeometryError(say("No way to serve these posts keeps the strings from crossing: let a held post go, or "
                                "move one."))
    chosen = tuple(table[i][k] for i, k in enumerate(found))
    return Pairing(chosen, proven, sum(rubs[id(run)][0] for run in chosen))


def _posts(layout: Headstock, placed: dict[str, Frame]) -> dict[str, tuple[Frame, Post]]:
    return {tuner.id: (placed[tuner.id], layout.pattern(tuner.pattern).post) for tuner in layout.tuners if tuner.id in placed}


def _rubbing(near: bool, into: bool) -> float:
    return _INTO if into else _NEAR if near else 0.0


def _at(steps: int) -> str:
    return say("{steps} of at most {most} ways of serving the posts tried", steps=steps, most=_MOST_STEPS)


def assign(cost: Sequence[Sequence[float]], clashes: Sequence[Sequence[int]],
           ask: Ask = go_on) -> tuple[tuple[int, ...] | None, bool]:
    """(column of each row, whether it is proven best); None when no assignment avoids all clashes.

    At least as many columns as rows. `clashes[i][k]` is a mask of the pairs (bit j * columns + l) that
    row i in column k rules out.
    """
    rows, columns = len(cost), len(cost[0])
    base, reduced = _reduced(cost)
    best, best_cost, steps = None, math.inf, 0
    chosen = [-1] * rows

    def search(done: int, used: int, banned: int, bound: float) -> bool:
        nonlocal best, best_cost, steps
        ask(partial(_at, steps))
        steps += 1
        if steps > _MOST_STEPS:
            return False
        if done == rows:
            # Spare columns cost nothing, but their potentials count in the bound: compare what it really costs.
            whole = sum(cost[i][k] for i, k in enumerate(chosen))
            if whole < best_cost:
                best, best_cost = tuple(chosen), whole
            return True
        # The row with the fewest columns left comes next.
        options = None
        for i in range(rows):
            if chosen[i] >= 0:
                continue
            free = [k for k in range(columns) if not used >> k & 1 and not banned >> (i * columns + k) & 1
                    and cost[i][k] < _NEVER and bound + reduced[i][k] < best_cost - 1e-12]
            if not free:
                return True
            if options is None or len(free) < len(options[1]):
                options = (i, free)
        i, free = options
        whole = True
        for k in sorted(free, key=lambda k: reduced[i][k]):
            chosen[i] = k
            whole = search(done + 1, used | 1 << k, banned | clashes[i][k], bound + reduced[i][k]) and whole
            chosen[i] = -1
        return whole

    whole = search(0, 0, 0, base)
    return best, whole


def _clashes(table: list[list[Run | None]]) -> list[list[int]]:
    columns = len(table[0])
    pairs = [(i, k, run) for i, row in enumerate(table) for k, run in enumerate(row) if run is not None]
    masks = [[0] * columns for _ in table]
    for n, (i, k, one) in enumerate(pairs):
        for j, l, two in pairs[n + 1:]:
            if i != j and k != l and cross(one, two):
                masks[i][k] |= 1 << (j * columns + l)
                masks[j][l] |= 1 << (i * columns + k)
    return masks


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
