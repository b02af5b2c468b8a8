"""Remembered results of pure functions, by the identity of what went in.

A layout is immutable and an edit keeps every part that it does not touch, so
"the same object as last time" is both the cheapest and a safe test of "unchanged".
A function given to a memo reads nothing but its arguments; that is why a check
that remembers gives the same result as one that does not.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import chain
from typing import Any


@dataclass(eq=False)
class _Each:
    """What a function gave for each of some items beside the same other arguments."""

    items: Sequence[Any]
    others: tuple
    results: list[Any]

    @cached_property
    def flat(self) -> tuple:
        return tuple(chain.from_iterable(self.results))


class Memo:
    """Results of the last two rounds. A new round drops what the round before the last one used."""

    def __init__(self) -> None:
        self._now: dict[tuple, tuple[tuple, Any]] = {}
        self._before: dict[tuple, tuple[tuple, Any]] = {}
        self._each_now: dict[tuple, _Each] = {}
        self._each_before: dict[tuple, _Each] = {}

    def new_round(self) -> None:
        """Begin another check."""
        self._before, self._now = self._now, {}
        self._each_before, self._each_now = self._each_now, {}

    def of(self, function: Callable[..., Any], *arguments: Any) -> Any:
        """function(*arguments), computed at most once while the arguments stay the same objects."""
        key = _key(function, arguments)
        entry = self._now.get(key)
        if entry is None:
            entry = self._before.get(key)
            if entry is None:
                # The arguments are kept beside the result, so that no other object can take their identity.
                entry = (arguments, function(*arguments))
            self._now[key] = entry
        return entry[1]

    def many(self, function: Callable[[Sequence[tuple]], Sequence[Any]], rows: Sequence[tuple]) -> list[Any]:
        """Results for several argument rows; those not known yet go to `function` together, in their order."""
        missing = self.missing(function, rows)
        if missing:
            self.keep(function, missing, function(missing))
        return [self._now[_key(function, row)][1] for row in rows]

    def each(self, function: Callable[..., Any], items: Sequence[Any], *others: Any) -> list[Any]:
        """function(item, *others) for every item; while `items` stays one object this costs next to nothing."""
        return self._entry(function, items, others, lambda new: [function(item, *others) for item in new]).results

    def snags(self, function: Callable[..., Sequence[Any]], items: Sequence[Any], *others: Any) -> tuple:
        """What each(function, items, *others) gives, one after the other."""
        return self._entry(function, items, others, lambda new: [function(item, *others) for item in new]).flat

    def snags_together(self, function: Callable[..., Sequence[Sequence[Any]]], items: Sequence[Any], *others: Any) -> tuple:
        """As snags, of a function that takes all items that are new at once, and gives a sequence for each."""
        return self._entry(function, items, others, lambda new: function(new, *others)).flat

    def _entry(self, function: Callable[..., Any], items: Sequence[Any], others: tuple,
               made: Callable[[list[Any]], Sequence[Any]]) -> _Each:
        key = _key(function, others)
        known = self._each_now.get(key) or self._each_before.get(key)
        if known is None or known.items is not items:
            of = {} if known is None else dict(zip(map(id, known.items), known.results, strict=True))
            new = [item for item in items if id(item) not in of]
            if new:
                of.update(zip(map(id, new), made(new), strict=True))
            known = _Each(items, others, [of[id(item)] for item in items])
        self._each_now[key] = known
        return known

    def missing(self, function: Callable[..., Any], rows: Sequence[tuple]) -> list[tuple]:
        """The rows, each once, whose results are not known; the others stay known for this round."""
        found: dict[tuple, tuple] = {}
        for row in rows:
            key = _key(function, row)
            if key not in self._now:
                if key in self._before:
                    self._now[key] = self._before[key]
                else:
                    found[key] = row
        return list(found.values())

    def keep(self, function: Callable[..., Any], rows: Sequence[tuple], results: Sequence[Any]) -> None:
        """Remember what `function` gives for some rows."""
        for row, result in zip(rows, results, strict=True):
            self._now[_key(function, row)] = (row, result)


def together(*parts: Any) -> tuple:
    """The parts as a tuple: remembered, it stays one object while its parts do."""
    return parts


def _key(function: Callable, arguments: tuple) -> tuple:
    return (function, *map(id, arguments))
