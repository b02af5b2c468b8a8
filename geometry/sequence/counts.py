"""Counts for the maker: how much there is to do."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from geometry.sequence.changes import count_changes, runs
from geometry.sequence.glue_ops import waits
from geometry.sequence.operation import Operation, trips
from geometry.sequence.rates import Changes, Hours, Rates, hours


class Counts(Struct, frozen=True):
    """Of a running order; waste holes in slots and locating pins are counted apart from the other holes of the layout."""

    operations: int
    holes: int
    pins: int
    """locating pins, each in a hole of its own or in a bore"""
    drillings: int
    """trips of a drill, those for the pins too: one for a pin hole that is a bore as well"""
    counterbores: int
    waste_holes: int
    set_ups: int
    """stretches of work at a machine without a change; bench work left out"""
    tilts: int
    """different table settings for bores from the side, level ones counted too"""
    changes: Changes
    hours: Hours
    waits: int = 0
    """how often glue has to dry before the work goes on"""
    drying: float = 0.0
    """hours that this takes together, beside those of the work"""


def counts(steps: Sequence[str], ops: Sequence[Operation], rates: Rates | None = None) -> Counts:
    """Counts of an order. KeyError for a step that no operation has."""
    by_id = {op.id: op for op in ops}
    done = [by_id[id] for id in steps]
    drilling = trips(done)
    drilled = {d.id: d for op in drilling for d in op.drillings}
    holes = {d.hole for d in drilled.values() if d.role != "locating"}
    pins = {d.hole for d in drilled.values()} - holes
    rates = rates or Rates()
    dry = waits(done)
    made = [run for run in runs(done) if run[0].setup.machine != "bench"]
    changes = count_changes(op.setup for op in done)
    return Counts(
        len(done), len(holes), len(pins), len(drilling),
        sum(d.role == "counterbore" for d in drilled.values()),
        sum(len(op.waste_holes.centres) for op in done if op.waste_holes), len(made),
        len({op.setup.table for op in done if op.setup.table is not None and op.setup.table.fence is not None}),
        changes, hours(done, changes, rates), dry, dry * rates.glue_dry / 60.0)
