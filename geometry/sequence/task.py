"""The ordering task in whole numbers: operations merged into classes, set-ups into demands.

Operations with one set-up that wait for the same classes are always free at
the same moment. As it never costs anything to do what is free in the set-up
at hand, they are always done together: one class. (Done later, an operation
could only add changes; done now it adds none and frees others.)
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from msgspec import Struct, field

from geometry.sequence.changes import demands
from geometry.sequence.operation import Operation, Setup
from geometry.sequence.rates import Rates, change_minutes

CHANGE = 1_000_000
"""Cost of one change; the seconds it takes are added, so time settles ties and never outweighs a change."""

Held = tuple[int, ...]
"""What each slot holds now, -1 for nothing yet."""


class Task(Struct, frozen=True, eq=False):
    """`slots` are the things that can be changed (machine, side, and bit and table of each machine)."""

    ops: tuple[Operation, ...]
    op_waits: tuple[int, ...]
    """for each operation the mask of operations that it waits for"""
    members: tuple[tuple[int, ...], ...]
    """for each class its operations"""
    waits: tuple[int, ...]
    """for each class the mask of classes that it waits for, without those that follow from others"""
    setup_of: tuple[int, ...]
    demands: tuple[tuple[tuple[int, int], ...], ...]
    """for each set-up its (slot, value) pairs"""
    groups: tuple[int, ...]
    """for each set-up the mask of its classes"""
    slots: tuple[tuple[str, str], ...]
    """(what, on which machine): see changes.demands"""
    weights: tuple[int, ...]
    """cost of a change of each slot"""
    earlier: tuple[int, ...]
    """for each class the mask of classes that come before it by habit"""
    twins: tuple[int, ...]
    """for each set-up the mask of classes of which at least one must be done before a first class of its
    table setting: settings that are alike in everything are begun in one order only"""
    own: tuple[int, ...]
    """for each set-up the mask of classes with its table setting; 0 where it has no twins"""
    _free: dict[int, list[int]] = field(default_factory=dict)
    _worked: dict[tuple[int, int], tuple[int, int]] = field(default_factory=dict)
    _steps: dict[tuple[Held, int], tuple[int, Held]] = field(default_factory=dict)

    @property
    def all(self) -> int:
        return (1 << len(self.members)) - 1

    @property
    def start(self) -> Held:
        return (-1,) * len(self.weights)

    def closed(self, done: int, setup: int) -> int:
        """Everything done after working off what is free in a set-up."""
        group = self.groups[setup]
        waits = self.waits
        while True:
            rest = group & ~done
            before = done
            while rest:
                low = rest & -rest
                if not waits[low.bit_length() - 1] & ~done:
                    done |= low
                rest ^= low
            if done == before:
                return done

    def work(self, done: int, setup: int) -> tuple[int, int]:
        """(everything done after a set-up, how many classes it does before earlier ones of habit); the same state is
        met by many ways, so both are remembered."""
        known = self._worked.get((done, setup))
        if known is None:
            after, against = self.closed(done, setup), 0
            fresh = after & ~done
            while fresh:
                low = fresh & -fresh
                against += (self.earlier[low.bit_length() - 1] & ~after).bit_count()
                fresh ^= low
            known = self._worked[done, setup] = after, against
        return known

    def step(self, held: Held, setup: int) -> tuple[int, Held]:
        """(cost, what is held afterwards) of changing to a set-up."""
        known = self._steps.get((held, setup))
        if known is None:
            cost, now = 0, list(held)
            for slot, value in self.demands[setup]:
                if now[slot] != value:
                    cost += self.weights[slot]
                    now[slot] = value
            known = self._steps[held, setup] = cost, tuple(now)
        return known

    def free(self, done: int) -> list[int]:
        """Set-ups in which something can be done, alike ones in their one order."""
        known = self._free.get(done)
        if known is None:
            known = self._free[done] = self._find_free(done)
        return known

    def _find_free(self, done: int) -> list[int]:
        found = []
        for i, group in enumerate(self.groups):
            rest = group & ~done
            if rest and not (self.twins[i] and not self.own[i] & done and not self.twins[i] & done):
                while rest:
                    low = rest & -rest
                    if not self.waits[low.bit_length() - 1] & ~done:
                        found.append(i)
                        break
                    rest ^= low
        return found


def make_task(ops: Sequence[Operation], before: Mapping[str, set[str]], rates: Rates) -> Task:
    """The task for operations in the order of habit; `before` gives for each id what it waits for, without a cycle."""
    index = {op.id: i for i, op in enumerate(ops)}
    waits_ops = [sum(1 << index[id] for id in before.get(op.id, ())) for op in ops]
    setups = list(dict.fromkeys(op.setup for op in ops))
    number = {setup: i for i, setup in enumerate(setups)}
    class_of: dict[int, int] = {}
    keys: dict[tuple[int, int], int] = {}
    waits: list[int] = []
    above: list[int] = []
    members: list[list[int]] = []
    for i in _sorted(waits_ops):
        direct = 0
        for j in _bits(waits_ops[i]):
            direct |= 1 << class_of[j]
        through = 0
        for c in _bits(direct):
            through |= above[c]
        reduced = direct & ~through
        key = (number[ops[i].setup], reduced)
        if key not in keys:
            keys[key] = len(members)
            members.append([])
            waits.append(reduced)
            above.append(direct | through)
        class_of[i] = keys[key]
        members[keys[key]].append(i)
    setup_of = [number[ops[own[0]].setup] for own in members]
    groups = [sum(1 << c for c, s in enumerate(setup_of) if s == i) for i in range(len(setups))]
    slots, pairs = _slots(setups)
    each = change_minutes(rates)
    first = [min(own) for own in members]
    twins, own = _twins(setups, waits, setup_of, groups)
    return Task(tuple(ops), tuple(waits_ops), tuple(tuple(m) for m in members), tuple(waits), tuple(setup_of), pairs,
                tuple(groups), tuple(slots), tuple(CHANGE + round(60 * each[what]) for what, _ in slots),
                tuple(sum(1 << d for d, other in enumerate(first) if other < mine) for mine in first), twins, own)


def _slots(setups: Sequence[Setup]) -> tuple[list[tuple[str, str]], tuple[tuple[tuple[int, int], ...], ...]]:
    """The slots that occur, and each set-up's demands as numbers."""
    slots: dict[tuple[str, str], dict[object, int]] = {}
    pairs = []
    for setup in setups:
        own = []
        for key, value in demands(setup):
            values = slots.setdefault(key, {})
            own.append((list(slots).index(key), values.setdefault(value, len(values))))
        pairs.append(tuple(own))
    return list(slots), tuple(pairs)


def _sorted(waits: Sequence[int]) -> list[int]:
    """Indices so that each comes after what it waits for, lowest first."""
    order: list[int] = []
    done = 0
    while len(order) < len(waits):
        for i, mask in enumerate(waits):
            if not done >> i & 1 and not mask & ~done:
                order.append(i)
                done |= 1 << i
                break
        else:
            raise ValueError("the operations wait for each other in a circle")
    return order


def _bits(mask: int) -> list[int]:
    found = []
    while mask:
        low = mask & -mask
        found.append(low.bit_length() - 1)
        mask ^= low
    return found


def _twins(setups: Sequence[Setup], waits: Sequence[int], setup_of: Sequence[int],
           groups: Sequence[int]) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """See Task.twins and Task.own: table settings whose operations could trade places in every order."""
    followers = [sum(1 << d for d, mask in enumerate(waits) if mask >> c & 1) for c in range(len(waits))]
    tables = list(dict.fromkeys((s.machine, s.table) for s in setups if s.table is not None))
    classes = {key: sum(groups[i] for i, s in enumerate(setups) if (s.machine, s.table) == key) for key in tables}
    alike: dict[frozenset, list[tuple]] = {}
    for key in tables:
        marks = []
        for c in _bits(classes[key]):
            setup = setups[setup_of[c]]
            inner = frozenset((setups[setup_of[d]].bit, setups[setup_of[d]].side) for d in _bits(waits[c] & classes[key]))
            marks.append((setup.bit, setup.side, waits[c] & ~classes[key], followers[c] & ~classes[key], inner))
        plain = len({mark[:2] for mark in marks}) == len(marks)
        alike.setdefault(frozenset(marks) if plain else frozenset((key,)), []).append(key)
    twins, own = [0] * len(setups), [0] * len(setups)
    for family in alike.values():
        for before, key in zip(family, family[1:], strict=False):
            for i, s in enumerate(setups):
                if (s.machine, s.table) == key:
                    twins[i], own[i] = classes[before], classes[key]
    return tuple(twins), tuple(own)
