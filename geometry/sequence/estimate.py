"""What every step is expected to take: the list that recorded hours are compared with."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from geometry.layout import Rates
from geometry.sequence.changes import demands
from geometry.sequence.operation import Operation
from geometry.sequence.rates import change_minutes, minutes


class Taken(Struct, frozen=True):
    """Minutes for one operation: the work, and the set-up changes that it asks for where it stands in the order."""

    work: float
    set_up: float

    @property
    def total(self) -> float:
        return self.work + self.set_up


def estimate(steps: Sequence[str], ops: Sequence[Operation], rates: Rates | None = None) -> dict[str, Taken]:
    """By operation id, in the order of the steps; the sum is what counts() gives in hours.

    Ids name what is done and to what, so they outlive small changes of the
    layout: moving, resizing or turning a feature keeps them. KeyError for a
    step that no operation has.
    """
    rates = rates or Rates()
    cost = change_minutes(rates)
    by_id = {op.id: op for op in ops}
    held: dict[tuple[str, str], object] = {}
    taken: dict[str, Taken] = {}
    for id in steps:
        op = by_id[id]
        changed = [key for key, value in demands(op.setup) if held.get(key) != value]
        held.update(demands(op.setup))
        taken[id] = Taken(minutes(op, rates), rates.factor * sum(cost[what] for what, _ in changed))
    return taken
