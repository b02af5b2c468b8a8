"""What the maker's rates make of operations and set-up changes."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct

from geometry.layout import Rates
from geometry.sequence.operation import Kind, Operation

_BY_KIND: dict[Kind, str] = {
    "glue scarf": "glue_scarf", "plug": "plug", "glue ear": "glue_ear", "glue face veneer": "glue_veneer", "glue back veneer": "glue_veneer",
    "template": "template", "mark": "mark", "pin hole": "hole", "counterbore": "hole", "bore": "hole", "pilot": "hole",
    "side counterbore": "side_bore", "side bore": "side_bore", "edge pilot": "hand_pilot", "waste holes": "waste_hole", "saw": "saw_100",
    "rout": "rout_100", "ramp": "ramp", "cut outline": "band_saw_100", "rout outline": "rout_outline_100", "flat": "flat",
    "clean up": "clean_up", "finish": "finish", "final diameter": "final_diameter",
}


def rate_of(op: Operation) -> str:
    """The field of Rates behind an operation's estimate; one that ends in 100 is for 100 mm."""
    return "hand_100" if (op.kind, op.setup.machine) == ("rout outline", "bench") else _BY_KIND[op.kind]


def minutes(op: Operation, rates: Rates) -> float:
    """Minutes for the work itself, set-up left out; `factor` counted in."""
    name = rate_of(op)
    return getattr(rates, name) * op.amount / (100.0 if name.endswith("_100") else 1.0) * rates.factor


def change_minutes(rates: Rates) -> dict[str, float]:
    """Minutes of one change of machine, bit, table or side; `factor` left out."""
    return {what: getattr(rates, f"{what}_change") for what in Changes.__struct_fields__}


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
        return rates.factor * sum(getattr(self, what) * each for what, each in change_minutes(rates).items())


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
