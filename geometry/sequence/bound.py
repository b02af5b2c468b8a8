"""A cost that no legal order can undercut, from what is left to do and what is held.

Precedence is left out. Each machine has to come through all its set-ups that
are left: the changes of its bit and table on the way are no fewer than in a
shortest tree that joins those set-ups and what it holds (a path is a tree).
The changes of the side are counted in the same way along with one machine, or
on their own: the larger sum holds. Machine changes: each machine that is left
must be walked to.
"""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from geometry.sequence.task import Held, Task

Point = tuple[int, int, int]
"""(bit, table, side) as numbers, -1 where the set-up does not care."""


class _Left(Struct, frozen=True):
    """Everything that does not depend on what is held: values left, and each machine's points and trees."""

    machines: int
    """mask"""
    sides: int
    """mask"""
    own: tuple[tuple[int, int, tuple[Point, ...], int, int, int, int], ...]
    """(machine, mask of its set-ups, points, tree over bit and table, tree with side, mask of sides, mask of the sides left to others)"""


class Bound:
    """The bound of one task; remembers what it has worked out."""

    def __init__(self, task: Task) -> None:
        self._task = task
        self._machine_slot = task.slots.index(("machine", ""))
        self._side_slot = task.slots.index(("side", "")) if ("side", "") in task.slots else None
        self._machine_weight = task.weights[self._machine_slot]
        self._side_weight = 0 if self._side_slot is None else task.weights[self._side_slot]
        self._kit: list[tuple[int | None, int | None]] = []
        """for each machine the slots of its bit and its table"""
        self._points: list[Point] = []
        self._machine: list[int] = []
        self._read()
        self._on = [1 << next(value for slot, value in pairs if slot == self._machine_slot) for pairs in task.demands]
        """for each set-up the mask of its machine's value"""
        every = range(len(self._points))
        self._flat = [[self._apart(i, j, 0) for j in every] for i in every]
        self._full = [[self._apart(i, j, self._side_weight) for j in every] for i in every]
        self._known: dict[tuple[int, Held], int] = {}
        self._left: dict[int, _Left] = {}
        self._nears: dict[tuple[int, int, int, int], tuple[int, int]] = {}
        self._trees: dict[tuple[int, int], tuple[tuple[Point, ...], int, int, int]] = {}

    def __call__(self, done: int, held: Held) -> int:
        """The bound in the units of Task.weights; the same state is asked about by every way that leads to it."""
        known = self._known.get((done, held))
        if known is None:
            known = self._known[done, held] = self._bound(done, held)
        return known

    def _bound(self, done: int, held: Held) -> int:
        left = self._left.get(done)
        if left is None:
            left = self._left[done] = self._work_out(done)
        total = self._values(left.machines, held[self._machine_slot], self._machine_weight)
        side = -1 if self._side_slot is None else held[self._side_slot]
        best = self._values(left.sides, side, self._side_weight)
        weight, nears = self._side_weight, self._nears
        for machine, setups, points, flat, full, _sides, others in left.own:
            bit_slot, table_slot = self._kit[machine]
            bit = -1 if bit_slot is None else held[bit_slot]
            table = -1 if table_slot is None else held[table_slot]
            state = (setups, bit, table, side)
            near = nears.get(state)
            if near is None:
                near = nears[state] = self._near(machine, points, bit, table, side)
            alone = flat + near[0]
            total += alone
            with_side = full + near[1] - alone + weight * (others.bit_count() - (side >= 0 and others >> side & 1))
            if with_side > best:
                best = with_side
        return total + best

    def _near(self, machine: int, points: tuple[Point, ...], bit: int, table: int, side: int) -> tuple[int, int]:
        """Least cost of coming to one of a machine's points: of bit and table, and of these and the side."""
        bit_weight, table_weight = (0 if slot is None else self._task.weights[slot] for slot in self._kit[machine])
        flat = [(bit_weight if b >= 0 and b != bit else 0) + (table_weight if t >= 0 and t != table else 0)
                for b, t, _ in points]
        return min(flat), min(cost + (self._side_weight if s >= 0 and s != side else 0)
                              for cost, (_, _, s) in zip(flat, points, strict=True))

    @staticmethod
    def _values(mask: int, held: int, weight: int) -> int:
        """Each value left must come up once, the one held already need not."""
        return weight * (mask.bit_count() - (held >= 0 and mask >> held & 1))

    def _read(self) -> None:
        """The machines with their slots, and every set-up as a point."""
        task = self._task
        names: list[str] = []
        for pairs in task.demands:
            given = {task.slots[slot][0]: (slot, value) for slot, value in pairs}
            name = next((task.slots[slot][1] for slot, _ in pairs if task.slots[slot][1]), f"plain {given['machine'][1]}")
            if name not in names:
                names.append(name)
                self._kit.append((None, None))
            machine = names.index(name)
            bit, table = self._kit[machine]
            self._kit[machine] = (given["bit"][0] if "bit" in given else bit,
                                  given["table"][0] if "table" in given else table)
            self._machine.append(machine)
            self._points.append((given["bit"][1] if "bit" in given else -1,
                                 given["table"][1] if "table" in given else -1,
                                 given["side"][1] if "side" in given else -1))

    def _work_out(self, done: int) -> _Left:
        task = self._task
        machines = sides = 0
        own: dict[int, int] = {}
        for i, group in enumerate(task.groups):
            if group & ~done:
                own[self._machine[i]] = own.get(self._machine[i], 0) | 1 << i
                machines |= self._on[i]
                if self._points[i][2] >= 0:
                    sides |= 1 << self._points[i][2]
        return _Left(machines, sides, tuple((m, mask, *(tree := self._tree(m, mask)), sides & ~tree[3]) for m, mask in own.items()))

    def _tree(self, machine: int, setups: int) -> tuple[tuple[Point, ...], int, int, int]:
        known = self._trees.get((machine, setups))
        if known is None:
            own = [i for i in range(len(self._points)) if setups >> i & 1]
            sides = 0
            for i in own:
                if self._points[i][2] >= 0:
                    sides |= 1 << self._points[i][2]
            known = (tuple(self._points[i] for i in own), _shortest_tree(own, self._flat), _shortest_tree(own, self._full),
                     sides)
            self._trees[machine, setups] = known
        return known

    def _apart(self, i: int, j: int, side_weight: int) -> int:
        """Cost of the values in which two set-ups of one machine differ; 0 between machines, where it is never asked."""
        if self._machine[i] != self._machine[j]:
            return 0
        bit, table = self._kit[self._machine[i]]
        weights = (0 if bit is None else self._task.weights[bit], 0 if table is None else self._task.weights[table],
                   side_weight)
        return sum(w for x, y, w in zip(self._points[i], self._points[j], weights, strict=True)
                   if x >= 0 and y >= 0 and x != y)


def _shortest_tree(nodes: Sequence[int], distance: Sequence[Sequence[int]]) -> int:
    """Length of the shortest tree that joins nodes, given all distances between them (Prim)."""
    if not nodes:
        return 0
    rest = list(nodes[1:])
    row = distance[nodes[0]]
    near = [row[i] for i in rest]
    total = 0
    while rest:
        k = near.index(min(near))
        total += near.pop(k)
        row = distance[rest.pop(k)]
        near = [min(a, row[i]) for a, i in zip(near, rest, strict=True)]
    return total
