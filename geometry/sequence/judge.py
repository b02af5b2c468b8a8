"""What is wrong with an order that the maker made by hand."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Literal

from msgspec import Struct

from geometry.saying import say
from geometry.sequence.before import Before, Grade
from geometry.sequence.operation import Operation

BY_NOW = {"impossible": say("Impossible by now"), "unsafe": say("Unsafe by now")}
"""By its grade: what is said of a step that is spoiled by what is done, for no other place in the order to mend."""


class Problem(Struct, frozen=True):
    """One operation that comes out wrong, and why."""

    op: str
    """id of the operation that is harmed"""
    others: tuple[str, ...]
    """ids of the operations that stand on the wrong side of it"""
    grade: Grade | Literal["left out", "twice"]
    text: str
    protects: str

    @property
    def loud(self) -> bool:
        """Whether it spoils the work; what is unwise does not."""
        return self.grade in ("impossible", "unsafe")


def judge(steps: Sequence[str], ops: Sequence[Operation], precedence: Iterable[Before]) -> tuple[Problem, ...]:
    """Every operation that becomes impossible, unsafe or unwise in this order, worst first, then by place in it.

    `steps` are ids; one that is left out or comes twice is a problem of its own,
    and where it comes twice its first place counts. KeyError for an id that no
    operation has.
    """
    by_id = {op.id: op for op in ops}
    place: dict[str, int] = {}
    for i, id in enumerate(steps):
        place.setdefault(by_id[id].id, i)
    found: dict[tuple[str, str, str], list[Before]] = {}
    for edge in precedence:
        if edge.first in place and edge.then in place and place[edge.first] > place[edge.then]:
            found.setdefault((edge.harmed, edge.reason, edge.grade), []).append(edge)
    problems = [_problem(edges, by_id) for edges in found.values()]
    worst = {"impossible": 0, "unsafe": 1, "unwise": 2}
    problems.sort(key=lambda p: (worst[p.grade], place[p.op]))
    count = Counter(steps)
    problems += [Problem(op.id, (), "left out", say("{title} is left out of the order.", title=op.called), "")
                 for op in ops if op.id not in place]
    problems += [Problem(id, (), "twice", say("{title} comes {n} times in the order.", title=by_id[id].called, n=n), "")
                 for id, n in count.items() if n > 1]
    return tuple(problems)


def moved(steps: Sequence[str], id: str, to: int) -> tuple[str, ...]:
    """The order with one operation taken out and put in at index `to` (of the order without it)."""
    rest = [step for step in steps if step != id]
    to = min(max(to, 0), len(rest))
    return (*rest[:to], id, *rest[to:])


def legal_span(steps: Sequence[str], id: str, precedence: Iterable[Before]) -> tuple[int, int]:
    """(first, last) index for `moved` at which the operation stands right to all others, as they stand now.

    first > last when there is no such place.
    """
    rest = {step: i for i, step in enumerate(step for step in steps if step != id)}
    first, last = 0, len(rest)
    for edge in precedence:
        if edge.then == id and edge.first in rest:
            first = max(first, rest[edge.first] + 1)
        elif edge.first == id and edge.then in rest:
            last = min(last, rest[edge.then])
    return first, last


def _problem(edges: list[Before], by_id: dict[str, Operation]) -> Problem:
    edge = edges[0]
    harmed = edge.harmed
    others = tuple(dict.fromkeys(e.then if e.suffers == "first" else e.first for e in edges))
    named = by_id[others[0]].called
    if len(others) > 1:
        named = say("{name} and {n} more", name=named, n=len(others) - 1)
    said = (say("{one} comes after {two}.", one=by_id[harmed].called, two=named) if edge.suffers == "first" else
            say("{one} comes before {two}.", one=by_id[harmed].called, two=named))
    return Problem(harmed, others, edge.grade, f"{said} {edge.reason}", edge.protects)
