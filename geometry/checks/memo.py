"""Remembered results of pure functions, by the identity of what went in.

A layout is immutable and an edit keeps every part that it does not touch, so
"the same object as last time" is both the cheapest and a safe test of "unchanged".
A function given to a memo reads nothing but its arguments; that is why a check
that remembers gives the same result as one that does not.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any


class Memo:
    """Results of the last two rounds. A new round drops what the round before the last one used."""

    def __init__(self) -> None:
        self._now: dict[tuple, tuple[tuple, Any]] = {}
        self._before: dict[tuple, tuple[tuple, Any]] = {}

    def new_round(self) -> None:
        """Begin another check."""
        self._before, self._now = self._now, {}

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
