"""Names for what is new in a layout, in the one place that knows which are given: to features, and in the job book."""

from __future__ import annotations

import re
from collections.abc import Iterable

from geometry.layout.book import Book
from geometry.layout.headstock import Headstock
from geometry.layout.validate import feature_ids

OUTLINE = "outline"
"""What the outline goes by wherever features, plans and operations go by their names."""
RESERVED = (OUTLINE, "blank", "nut")
"""Names that drawings use for themselves; no feature gets one."""

LONGEST_STEM = 54
"""Letters before a number, so that a name with its number is within the 60 of `Id`."""


class Names:
    """Gives names that are neither taken nor mistaken for one that is; each is taken as soon as it is given."""

    def __init__(self, taken: Iterable[str]) -> None:
        self.taken = set(taken)

    def alike(self, base: str) -> str:
        """`base` when it is free, else the base with the lowest free number from 2 in place of its own."""
        return self._take(base) if self._free(base) else self._counted(re.sub(r" \d+$", "", base), 2)

    def numbered(self, stem: str) -> str:
        """The stem with the lowest free number from 1 behind it."""
        return self._counted(stem, 1)

    def _counted(self, stem: str, number: int) -> str:
        stem = stem[:LONGEST_STEM]
        while not self._free(f"{stem} {number}"):
            number += 1
        return self._take(f"{stem} {number}")

    def _free(self, name: str) -> bool:
        return name not in self.taken and mistaken_for(name, self.taken) is None

    def _take(self, name: str) -> str:
        self.taken.add(name)
        return name


def feature_names(layout: Headstock) -> Names:
    """Names for new features: none that a feature has, that drawings keep for themselves, or of which the job book tells.

    What is gone may still stand there as done, timed, measured or noted: what is set anew has none of that.
    """
    return Names({*feature_ids(layout), *RESERVED, *told_of(layout.book)})


def mistaken_for(name: str, others: Iterable[str]) -> str | None:
    """The first of some features whose holes would have the ids of those of one with that name: `peg.1` has the hole `peg.1.1`, and
    so has `peg`."""
    own = _holders(name)
    return next((other for other in others if other in own or "." in other and name in _holders(other)), None)


def told_of(book: Book) -> frozenset[str]:
    """Every feature that the book tells of, whether the layout has it or not."""
    tasks = [one.task for one in (*book.done, *book.times, *((book.clock,) if book.clock else ()),
                                  *(remark for remark in book.remarks if remark.task))]
    measured = [id for one in book.readings for id in (one.drilling, one.other) if id is not None]
    return frozenset((*(id for task in tasks for id in task.features), *(one.on for one in book.remarks if one.on),
                      *(name for id in measured for name in _holders(id))))


def _holders(drilling: str) -> list[str]:
    """Whose drilling that may be: its id is the feature's name with one or two numbers after points, which a name may end with too."""
    if "." not in drilling:
        return []
    found = []
    for _ in range(2):
        drilling, _, number = drilling.rpartition(".")
        if not number.isdecimal() or not drilling:
            break
        found.append(drilling)
    return found
