"""First-order propagation of the shop's errors, to hold the simulation to: without chance, right where a clearance is nearly linear."""

from __future__ import annotations

import math

from msgspec import Struct

from geometry.accuracy.bench import Bench, Trials, bench_of
from geometry.accuracy.engine import linear
from geometry.accuracy.parts import straight_line
from geometry.accuracy.sources import Share, grouped
from geometry.accuracy.spec import Spec
from geometry.layout import Headstock

_SAMPLE_SEED = 1


class Propagated(Struct, frozen=True):
    """One clearance by first order, mm; kind, between, of, needed and spoils as in Clearance.

    `spoiled` and `short` are the chances of a normal spread about the nominal value.
    """

    kind: str
    between: tuple[str, ...]
    of: tuple[str, ...]
    nominal: float
    needed: float
    spoils: bool
    sd: float
    shares: tuple[Share, ...]

    @property
    def spoiled(self) -> float:
        """Chance of falling under zero."""
        return chance_below(self.nominal, self.sd)

    @property
    def short(self) -> float:
        """Chance of falling under the margin."""
        return chance_below(self.nominal - self.needed, self.sd)


def propagate(layout: Headstock) -> tuple[Propagated, ...]:
    """Every clearance that comes near its margin, worst first. GeometryError as simulate()."""
    bench = bench_of(layout)
    reach = Trials(bench, bench.block, _SAMPLE_SEED).reach()
    found = [first_order(bench, spec) for spec in bench.specs(reach)]
    return tuple(sorted(found, key=lambda p: (not p.spoils, -p.spoiled, -p.short, p.kind, p.between, p.of)))


def first_order(bench: Bench, spec: Spec) -> Propagated:
    """One clearance by central differences in each of its errors."""
    value, steps = straight_line(bench, spec)
    found = linear(value, steps)
    errors = [bench.model.errors.errors[row] for row in spec.rows]
    return Propagated(spec.kind, spec.between, spec.of, found.value, spec.needed, spec.spoils, found.sd,
                      grouped(errors, found.shares))


def chance_below(value: float, sd: float) -> float:
    """Chance that a normal number with this mean and standard deviation falls under zero; no spread: 0 or 1."""
    if sd <= 0:
        return 1.0 if value < 0 else 0.0
    return 0.5 * math.erfc(value / sd / math.sqrt(2.0))
