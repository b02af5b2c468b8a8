"""What is said about a step: what to do, what is wrong with its place, and why it stands where it does."""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping, Sequence

from msgspec import Struct

from app.panels.order.order_rows import minutes_words
from geometry.checks.words import few
from geometry.saying import say
from geometry.sequence import BY_NOW, Before, Operation, Taken, WoodState
from geometry.units import LengthUnit

NAMED = 2
"""Steps named in one sentence; the others are counted."""
HARM = {"impossible": say("Cannot be done here"), "unsafe": say("Unsafe here"), "unwise": say("Unwise here")}


class Reason(Struct, frozen=True):
    """Why a step comes after or before others."""

    others: str
    why: str
    protects: str


class StepWords(Struct, frozen=True):
    """Everything that is said about one step; `warnings` are loud, `unwise` less so."""

    title: str
    set_up: str
    do: str
    takes: str
    warnings: tuple[str, ...]
    unwise: tuple[str, ...]
    cautions: tuple[str, ...]
    after: tuple[Reason, ...]
    before: tuple[Reason, ...]
    state: tuple[str, ...]
    """the piece when it is done"""


def step_words(op: Operation, ops: Mapping[str, Operation], edges: Iterable[Before], broken: Iterable[Before],
               done: Container[str], number: Mapping[str, int], taken: Taken, state: WoodState, unit: LengthUnit) -> StepWords:
    """The words for a step; `edges` may be all of the layout's, `broken` are those that the order breaks, `done` are the steps that
    are done: what they spoil no other place mends. `number` gives the place of each step."""
    edges = tuple(edges)
    wrong = _wrong(op, ops, broken, done, number)
    blocked = [say("Cannot be done: {blocked}", blocked=op.blocked)] if op.blocked else []
    set_up = op.setup.words(unit)
    return StepWords(
        op.title, set_up[0].upper() + set_up[1:], op.words, _takes(taken),
        (*blocked, *(text for text, loud in wrong if loud)), tuple(text for text, loud in wrong if not loud),
        op.cautions,
        _reasons([(e.first, e) for e in edges if e.then == op.id], ops, number),
        _reasons([(e.then, e) for e in edges if e.first == op.id], ops, number), state.words(unit))


def _wrong(op: Operation, ops: Mapping[str, Operation], broken: Iterable[Before], done: Container[str],
           number: Mapping[str, int]) -> list[tuple[str, bool]]:
    """(sentence, whether it is loud) for everything that this step's place spoils, or that it is done, of itself first."""
    groups: dict[tuple[bool, bool, str, str], list[str]] = {}
    for edge in broken:
        if op.id not in (edge.first, edge.then):
            continue
        own = edge.harmed == op.id
        spoiler = edge.then if edge.harmed == edge.first else edge.first
        late = edge.hard and spoiler in done
        groups.setdefault((own, late, edge.reason, edge.grade), []).append(_numbered(ops[spoiler if own else edge.harmed], number))
    found = []
    for (own, late, reason, grade), titles in sorted(groups.items(), key=lambda item: (not item[0][0], list(HARM).index(item[0][3]))):
        names = few(list(dict.fromkeys(titles)), NAMED)
        found.append((f"{_harm(own, late, grade, names)}: {reason}", grade != "unwise"))
    return found


def _harm(own: bool, late: bool, grade: str, names: str) -> str:
    """Who is spoiled by whom: by a place in the order, or by what is done."""
    if own:
        return (say("{harm}, after {names}", harm=BY_NOW[grade], names=names) if late else
                say("{harm}, out of turn with {names}", harm=HARM[grade], names=names))
    if late:
        return {"impossible": say("Done this early, it makes {names} impossible", names=names),
                "unsafe": say("Done this early, it makes {names} unsafe", names=names)}[grade]
    return {"impossible": say("Its place makes {names} impossible", names=names),
            "unsafe": say("Its place makes {names} unsafe", names=names),
            "unwise": say("Its place is unwise for {names}", names=names)}[grade]


def _numbered(op: Operation, number: Mapping[str, int]) -> str:
    """A step as another one's sentence names it: its title, and where it stands in the list."""
    return f"{op.called} ({number[op.id]})" if op.id in number else op.called


def _takes(taken: Taken) -> str:
    if taken.set_up:
        return say("About {total}, {set_up} of it to set up.", total=minutes_words(taken.total), set_up=minutes_words(taken.set_up))
    return say("About {total}.", total=minutes_words(taken.total)) if taken.total >= 1 else say("Less than a minute.")


def _reasons(found: Sequence[tuple[str, Before]], ops: Mapping[str, Operation], number: Mapping[str, int]) -> tuple[Reason, ...]:
    """One line for all that share a reason."""
    groups: dict[tuple[str, str], list[str]] = {}
    for other, edge in found:
        titles = groups.setdefault((edge.reason, edge.protects), [])
        if (called := _numbered(ops[other], number)) not in titles:
            titles.append(called)
    return tuple(Reason(few(titles, NAMED), why, protects) for (why, protects), titles in groups.items())
