"""Planned against actual: what each operation was to take, and what it took on each piece."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence

from msgspec import Struct

from geometry.layout import Book, Piece, Rates, Task
from geometry.saying import say
from geometry.sequence import Changes, Operation
from geometry.sequence import minutes as estimated
from geometry.sequence.rates import rate_of

CHANGING = "changes"
"""Stands for all set-ups and changes among the operations, and for their four fields among the rates."""
CHANGE_FIELDS = ("machine_change", "bit_change", "table_change", "side_change")
NO_WORK = ("factor", "glue_dry")
"""Fields that are no minutes of work: nothing spent corrects how long glue dries."""
WORK_FIELDS = tuple(name for name in Rates.__struct_fields__ if name not in (*CHANGE_FIELDS, *NO_WORK))


def tasks(steps: Iterable[Operation], changes: Changes) -> tuple[Task, ...]:
    """The operations in the order of the work, then setting up; planned in minutes at the default rates."""
    rates = Rates()
    return (*(task_of(op, rates) for op in steps), Task(operation=CHANGING, title=say("Setting up and changing over"), planned=changes.minutes(rates)))


def task_of(op: Operation, rates: Rates | None = None) -> Task:
    """What the book remembers of an operation; planned in minutes at these rates, else at the default ones."""
    return Task(operation=op.id, title=op.title, rate=rate_of(op), features=tuple(f for f in op.features if f != "outline"),
                planned=estimated(op, rates or Rates()))


def factors_of(rates: Rates, changes: Changes) -> dict[str, float]:
    """How much longer each field of some rates makes its work than the default does; all changes under one name."""
    default = Rates()
    found = {name: getattr(rates, name) / getattr(default, name) * rates.factor for name in WORK_FIELDS}
    plain = changes.minutes(default)
    return found | {CHANGING: changes.minutes(rates) / plain if plain else rates.factor}


class Line(Struct, frozen=True):
    """One operation: planned minutes at given rates, minutes of each piece (None: nothing written down)."""

    task: Task
    planned: float
    practice: float | None
    real: float | None
    current: bool
    """whether the running order still has it"""

    @property
    def difference(self) -> float | None:
        """Minutes that the real piece took longer than the practice piece; None unless both are known."""
        return None if self.practice is None or self.real is None else self.real - self.practice

    def of(self, piece: Piece) -> float | None:
        """Minutes of one piece."""
        return self.practice if piece == "practice" else self.real


def lines(book: Book, planned: Sequence[Task], factors: dict[str, float] | None = None) -> tuple[Line, ...]:
    """A line for each task planned, then one for each that was timed, or is done on the piece on the bench, and is planned no more.

    `factors` multiply the plan, one a field of Rates (see factors_of); None plans at the default rates.
    """
    spent: dict[str, dict[str, float]] = {}
    old: dict[str, Task] = {}
    for time in book.times:
        spent.setdefault(time.task.operation, {})[time.piece] = time.minutes
        old.setdefault(time.task.operation, time.task)
    for one in book.done:
        if one.piece == book.piece:
            old.setdefault(one.task.operation, one.task)
    known = {task.operation for task in planned}
    rows = [(task, True) for task in planned] + [(task, False) for id, task in old.items() if id not in known]
    factors = factors or {}
    return tuple(Line(task, task.planned * factors.get(task.rate, 1.0), spent.get(task.operation, {}).get("practice"),
                      spent.get(task.operation, {}).get("real"), current) for task, current in rows)


class Sum(Struct, frozen=True):
    """Minutes of one piece: all that was planned and is still in the running order, all that was spent, the plan of the
    operations that were timed (what the time spent is fairly held against), and of those that are neither timed nor done, or are to be
    done anew."""

    planned: float
    spent: float
    planned_of_timed: float
    left: float
    timed: int
    of: int


def total(rows: Iterable[Line], piece: Piece, done: Container[str] = (), anew: Container[str] = ()) -> Sum:
    """The sum over some lines for one piece, on which these operations are done, and those are to be done `anew` although they are or
    were timed; lines that are planned no more count as spent alone."""
    rows = list(rows)
    current = [row for row in rows if row.current]
    timed = [row for row in current if row.of(piece) is not None]
    return Sum(sum(row.planned for row in current), sum(row.of(piece) or 0.0 for row in rows),
               sum(row.planned for row in timed),
               sum(row.planned for row in current if row.task.operation in anew or row.of(piece) is None and row.task.operation not in done),
               len(timed), len(current))
