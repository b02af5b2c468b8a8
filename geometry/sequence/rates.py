"""What the maker's rates make of operations and set-up changes."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct

from geometry.layout import Rates
from geometry.sequence.operation import Operation


def minutes(op: Operation, rates: Rates) -> float:
    """Minutes for the work itself, set-up left out; `factor` counted in."""
    fixed = {"glue scarf": rates.glue_scarf, "glue ear": rates.glue_ear, "glue face veneer": rates.glue_veneer,
             "glue back veneer": rates.glue_veneer, "template": rates.template, "mark": rates.mark, "clean up": rates.clean_up,
             "finish": rates.finish, "final diameter": rates.final_diameter, "waste holes": rates.waste_hole,
             "side bore": rates.side_bore, "side counterbore": rates.side_bore, "pin hole": rates.hole,
             "counterbore": rates.hole, "bore": rates.hole, "pilot": rates.hole}
    by_length = {"saw": rates.saw_100, "rout": rates.rout_100, "cut outline": rates.band_saw_100,
                 "rout outline": rates.rout_outline_100}
    if op.kind in ("ramp", "flat"):
        return (rates.ramp if op.kind == "ramp" else rates.flat) * rates.factor
    if op.kind == "rout outline" and op.setup.machine == "bench":
        return rates.hand_100 * op.amount / 100.0 * rates.factor
    if op.kind in by_length:
        return by_length[op.kind] * op.amount / 100.0 * rates.factor
    if op.kind == "edge pilot":
        return (rates.hand_pilot if op.setup.machine == "hand drill" else rates.side_bore) * op.amount * rates.factor
    return fixed[op.kind] * op.amount * rates.factor


class Changes(Struct, frozen=True):
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


class Hours(Struct, frozen=True):
    """An estimate in hours."""

    work: float
    changes: float

    @property
    def total(self) -> float:
        return self.work + self.changes


def hours(ops: Iterable[Operation], changes: Changes, rates: Rates) -> Hours:
    """Work and set-up changes of some operations."""
    return Hours(sum(minutes(op, rates) for op in ops) / 60.0, changes.minutes(rates) / 60.0)
