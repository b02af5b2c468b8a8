"""Remembered results of pure functions, by the identity of what went in.

A layout is immutable and an edit keeps every part that it does not touch, so
"the same object as last time" is both the cheapest and a safe test of "unchanged".
A function given to a memo reads nothing but its arguments; that is why a check
that remembers gives the same result as one that does not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import chain, compress
from operator import is_not
from typing import Any, Generic, TypeVar

from msgspec import Struct

from geometry.solids.nearby import Rows, boxes_near_some, pairs_near

_Kept = TypeVar("_Kept")


class _Rounds(Generic[_Kept]):
    """Entries of the last two rounds. A new round drops what the round before the last one used."""

    def __init__(self) -> None:
        self.now: dict[Any, _Kept] = {}
        self.before: dict[Any, _Kept] = {}

    def turn(self) -> None:
        self.before, self.now = self.now, {}

    def get(self, key: Any) -> _Kept | None:
        return self.now.get(key) or self.before.get(key)


class _Each(Struct, eq=False):
    """What a function gave for each of some items beside the same other arguments; the tuples are made when asked for."""

    items: Sequence[Any]
    others: tuple
    results: list[Any]
    _flat: tuple | None = None
    _whole: tuple | None = None

    @property
    def flat(self) -> tuple:
        """The results, each a sequence, one after the other."""
        if self._flat is None:
            self._flat = tuple(chain.from_iterable(self.results))
        return self._flat

    @property
    def whole(self) -> tuple:
        """The results."""
        if self._whole is None:
            self._whole = tuple(self.results)
        return self._whole

    def follow(self, items: Sequence[Any], changed: list[int], made: Sequence[Any]) -> None:
        """Take over that the items at some places have changed, for which something else was made."""
        results, self.items, self._whole = self.results, items, None
        for place, result in zip(changed, made, strict=True):
            # Nothing there before and nothing now: what follows from all of them stays the same object.
            if result or results[place]:
                self._flat = None
            results[place] = result


class Pairs(Struct, eq=False):
    """What was found for pairs of some items, by their places: `found` holds what is not empty, `new` what is yet to be told."""

    items: Sequence[Any]
    others: tuple
    boxes: Rows
    found: dict[tuple[int, int], tuple]
    new: list[tuple[int, int]]

    def of_two(self) -> Pairs:
        """The same, an item beside itself not told."""
        self.new = [(i, k) for i, k in self.new if i != k]
        return self

    def keep(self, results: Sequence[tuple]) -> None:
        """What is found for each of the new pairs, in their order."""
        self.found.update((pair, result) for pair, result in zip(self.new, results, strict=True) if result)
        self.new = []

    def follow(self, items: Sequence[Any], changed: list[int], made: Rows, reach: float) -> None:
        """Take over that the items at some places have changed, whose boxes are now those made."""
        self.items = items
        for place, box in zip(changed, made, strict=True):
            self.boxes[place] = box
        for pair in [pair for pair in self.found if pair[0] in changed or pair[1] in changed]:
            del self.found[pair]
        self.new = sorted({(i, k) if i < k else (k, i) for i, k in boxes_near_some(changed, self.boxes, reach)})

    @property
    def flat(self) -> Iterable[Any]:
        """Everything found, one after the other."""
        return chain.from_iterable(self.found.values())


class Memo:
    """Results of the last two rounds."""

    def __init__(self) -> None:
        self._single: _Rounds[tuple[tuple, Any]] = _Rounds()
        self._each: _Rounds[_Each] = _Rounds()
        self._pairs: _Rounds[Pairs] = _Rounds()
        self.seeds: tuple[Any, ...] = ()
        """what the items of the last scene were made of, see scene.py"""
        self._compared: tuple[Sequence[Any], Sequence[Any], list[int] | None] = ((), (), [])

    def new_round(self) -> None:
        """Begin another check."""
        for kept in (self._single, self._each, self._pairs):
            kept.turn()

    def of(self, function: Callable[..., Any], *arguments: Any) -> Any:
        """function(*arguments), computed at most once while the arguments stay the same objects."""
        key = _key(function, arguments)
        entry = self._single.get(key)
        if entry is None:
            # The arguments are kept beside the result, so that no other object can take their identity.
            entry = (arguments, function(*arguments))
        self._single.now[key] = entry
        return entry[1]

    def whole(self, function: Callable[..., Any], *arguments: Any) -> Any:
        """As `of`, of a function that is also given this memo, first, and keeps parts of its result in it."""
        key = _key(function, arguments)
        entry = self._single.get(key)
        if entry is None:
            entry = (arguments, function(self, *arguments))
        self._single.now[key] = entry
        return entry[1]

    def many(self, function: Callable[[Sequence[tuple]], Sequence[Any]], rows: Sequence[tuple]) -> list[Any]:
        """Results for several argument rows; those not known yet go to `function` together, in their order."""
        now, before = self._single.now, self._single.before
        keys = [_key(function, row) for row in rows]
        missing: dict[tuple, tuple] = {}
        for key, row in zip(keys, rows, strict=True):
            if key not in now:
                if key in before:
                    now[key] = before[key]
                else:
                    missing[key] = row
        if missing:
            for (key, row), result in zip(missing.items(), function(list(missing.values())), strict=True):
                now[key] = (row, result)
        return [now[key][1] for key in keys]

    # ---- the same of every item --------------------------------------------
    def each(self, function: Callable[..., Any], items: Sequence[Any], *others: Any) -> list[Any]:
        """function(item, *others) for every item; while `items` stays one object this costs next to nothing."""
        return self._entry(function, items, others, _one_by_one).results

    def snags(self, function: Callable[..., Sequence[Any]], items: Sequence[Any], *others: Any) -> tuple:
        """What each(function, items, *others) gives, one after the other."""
        return self._entry(function, items, others, _one_by_one).flat

    def snags_together(self, function: Callable[..., Sequence[Sequence[Any]]], items: Sequence[Any], *others: Any) -> tuple:
        """As snags, of a function that takes all items that are new at once, and gives a sequence for each."""
        return self._entry(function, items, others, _all_at_once).flat

    def each_together(self, function: Callable[..., Sequence[Any]], items: Sequence[Any], *others: Any) -> tuple:
        """As each, of a function that takes all items that are new at once; one object while `items` is one."""
        return self._entry(function, items, others, _all_at_once).whole

    def _entry(self, function: Callable[..., Any], items: Sequence[Any], others: tuple,
               made: Callable[[Callable[..., Any], list[Any], tuple], Sequence[Any]]) -> _Each:
        key = _key(function, others)
        known = self._each.get(key)
        if known is None or known.items is not items:
            changed = None if known is None else self.changed(items, known.items)
            if known is None:
                known = _Each(items, others, list(made(function, list(items), others)) if items else [])
            elif changed is None:
                of = dict(zip(map(id, known.items), known.results, strict=True))
                new = [item for item in items if id(item) not in of]
                of.update(zip(map(id, new), made(function, new, others) if new else (), strict=True))
                results = [of[id(item)] for item in items]
                known = _Each(items, others, results)
            else:
                known.follow(items, changed, made(function, [items[place] for place in changed], others) if changed else ())
        self._each.now[key] = known
        return known

    # ---- pairs -------------------------------------------------------------
    def pairs(self, boxes: Callable[[Sequence[Any]], Rows], items: Sequence[Any], reach: float, *others: Any) -> Pairs:
        """What was found for pairs of items whose boxes come within `reach` mm of each other; each item with itself too.

        The lower place comes first. What is new the caller tells, and gives to `keep`. `boxes` stands for the family too.
        """
        key = (boxes, reach, *map(id, others))
        known = self._pairs.get(key)
        if known is None or known.items is not items:
            changed = None if known is None else self.changed(items, known.items)
            if changed is None:
                made = boxes(items)
                known = Pairs(items, others, made, {}, pairs_near(made, reach))
            else:
                known.follow(items, changed, boxes([items[place] for place in changed]), reach)
        self._pairs.now[key] = known
        return known

    def changed(self, items: Sequence[Any], before: Sequence[Any]) -> list[int] | None:
        """The places at which two sequences hold different objects; None when there are many, or the lengths differ."""
        one, two, places = self._compared
        if one is not items or two is not before:
            places = None
            if len(items) == len(before):
                places = list(compress(range(len(items)), map(is_not, items, before)))
                places = places if 2 * len(places) <= len(items) else None
            self._compared = items, before, places
        return places


def _one_by_one(function: Callable[..., Any], items: list[Any], others: tuple) -> list[Any]:
    return [function(item, *others) for item in items]


def _all_at_once(function: Callable[..., Any], items: list[Any], others: tuple) -> Sequence[Any]:
    return function(items, *others)


def together(*parts: Any) -> tuple:
    """The parts as a tuple: remembered, it stays one object while its parts do."""
    return parts


def _key(function: Callable, arguments: tuple) -> tuple:
    return (function, *map(id, arguments))
