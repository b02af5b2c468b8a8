"""The running order as rows of a list: set-up after set-up, and under each its steps."""

from __future__ import annotations

from collections.abc import Callable, Container, Iterable, Mapping, Sequence
from operator import attrgetter

from msgspec import Struct

from geometry.checks.words import first
from geometry.saying import number, say
from geometry.sequence import Operation, Problem, Setup, Taken, runs
from geometry.terms import term
from geometry.tilt_words import tilt_words
from geometry.units import LengthUnit


class SetUpRow(Struct, frozen=True):
    """What must be in place for the steps below."""

    machine: str
    rest: str
    """bit, tilt and side up, short"""
    words: str
    """everything to set"""


class StepRow(Struct, frozen=True):
    """One step."""

    id: str
    number: int
    title: str
    minutes: str
    grade: str = ""
    """"loud", "unwise" or "": see Problem"""
    text: str = ""
    """what is wrong"""
    mark: str = ""
    """"done", "begun" or "": on the piece on the bench, by the job book"""


Row = SetUpRow | StepRow


def order_rows(steps: Sequence[Operation], numbers: Mapping[str, int], problems: Iterable[Problem], taken: Mapping[str, Taken],
               unit: LengthUnit, done: Container[str] = (), begun: Container[str] = (),
               blocked: Callable[[Operation], str] = attrgetter("blocked"), goes_on: Callable[[Operation], bool] = lambda _: False) -> list[Row]:
    """The rows of an order; `done` and `begun` by the job book, `blocked` says why a step cannot be done, nothing where it can, or what
    there is of one that only `goes_on`."""
    wrong = worst(problems)
    rows: list[Row] = []
    for run in runs(steps):
        rows.append(SetUpRow(*_short(run[0].setup), run[0].setup.words(unit)))
        for op in run:
            why = blocked(op)
            grade, text = ("unwise" if goes_on(op) else "loud", why) if why else wrong.get(op.id, ("", ""))
            rows.append(StepRow(op.id, numbers[op.id], op.title, minutes_words(taken[op.id].total), grade, text,
                                "done" if op.id in done else "begun" if op.id in begun else ""))
    return rows


def worst(problems: Iterable[Problem]) -> dict[str, tuple[str, str]]:
    """By operation: ("loud" or "unwise", sentence) of its worst problem."""
    found: dict[str, tuple[str, str]] = {}
    for problem in problems:
        found.setdefault(problem.op, ("loud" if problem.loud else "unwise", problem.text))
    return found


def minutes_words(minutes: float) -> str:
    """"4 min", "1.5 min", "1 h 20"."""
    if round(minutes) >= 60:
        hours, rest = divmod(round(minutes), 60)
        return f"{hours} h {rest:02d}" if rest else f"{hours} h"
    return f"{number(minutes, '.0f' if minutes >= 10 or abs(minutes - round(minutes)) < 0.05 else '.1f')} min"


def _short(setup: Setup) -> tuple[str, str]:
    machine = first(term(setup.machine))
    parts = [setup.bit]
    if setup.table is not None and setup.table.fence is not None:
        parts.append(tilt_words(setup.table.tilt))
    if setup.side is not None:
        up = {"bass edge": say("bass edge up"), "treble edge": say("treble edge up")}
        parts.append(up.get(setup.side) or say("{side} up", side=term(setup.side)))
    return machine, " · ".join(part for part in parts if part)
