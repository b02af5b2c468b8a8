"""How long things take, for an estimate of hours."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from geometry.sequence.operation import Operation


@dataclass(frozen=True, slots=True)
class Rates:
    """Minutes; all common practice, no source, and all for the maker to change.

    Cuts are for 100 mm of wall in one pass. `factor` multiplies everything: the
    job book sets it from hours really spent.
    """

    glue_ear: float = 20.0
    template: float = 60.0
    mark: float = 30.0
    hole: float = 1.5
    side_bore: float = 4.0
    hand_pilot: float = 2.0
    waste_hole: float = 0.75
    saw_100: float = 3.0
    rout_100: float = 1.5
    band_saw_100: float = 1.5
    rout_outline_100: float = 2.0
    hand_100: float = 12.0
    clean_up: float = 90.0
    finish: float = 120.0
    final_diameter: float = 2.0
    machine_change: float = 2.0
    bit_change: float = 2.0
    table_change: float = 6.0
    side_change: float = 1.5
    factor: float = 1.0

    def minutes(self, op: Operation) -> float:
        """Minutes for the work itself, set-up left out; `factor` counted in."""
        fixed = {"glue ear": self.glue_ear, "template": self.template, "mark": self.mark, "clean up": self.clean_up,
                 "finish": self.finish, "final diameter": self.final_diameter, "waste holes": self.waste_hole,
                 "side bore": self.side_bore, "side counterbore": self.side_bore, "pin hole": self.hole,
                 "counterbore": self.hole, "bore": self.hole, "pilot": self.hole}
        by_length = {"saw": self.saw_100, "rout": self.rout_100, "cut outline": self.band_saw_100,
                     "rout outline": self.rout_outline_100}
        if op.kind == "rout outline" and op.setup.machine == "bench":
            return self.hand_100 * op.amount / 100.0 * self.factor
        if op.kind in by_length:
            return by_length[op.kind] * op.amount / 100.0 * self.factor
        if op.kind == "edge pilot":
            return (self.hand_pilot if op.setup.machine == "hand drill" else self.side_bore) * op.amount * self.factor
        return fixed[op.kind] * op.amount * self.factor


@dataclass(frozen=True, slots=True)
class Changes:
    """How often something is changed from one operation to the next, the first set-up of all counted in."""

    machine: int = 0
    bit: int = 0
    table: int = 0
    side: int = 0

    @property
    def total(self) -> int:
        """All changes."""
        return self.machine + self.bit + self.table + self.side

    def minutes(self, rates: Rates) -> float:
        """What they take; `factor` counted in."""
        return rates.factor * (self.machine * rates.machine_change + self.bit * rates.bit_change
                               + self.table * rates.table_change + self.side * rates.side_change)


@dataclass(frozen=True, slots=True)
class Hours:
    """An estimate in hours."""

    work: float
    changes: float

    @property
    def total(self) -> float:
        return self.work + self.changes


def hours(ops: Iterable[Operation], changes: Changes, rates: Rates) -> Hours:
    """Work and set-up changes of some operations."""
    return Hours(sum(rates.minutes(op) for op in ops) / 60.0, changes.minutes(rates) / 60.0)
