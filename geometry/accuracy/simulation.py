"""Many built headstocks: for each clearance the chance that it is spoiled or falls under its margin, and why."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from geometry.accuracy.bench import Bench, Trials, bench_of
from geometry.accuracy.engine import Spread, spread_of
from geometry.accuracy.sources import Share, grouped
from geometry.accuracy.spec import Spec
from geometry.accuracy.targets import Aim, any_fails
from geometry.cancellation import Ask, go_on
from geometry.checks.snags import Snag
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say
from geometry.tolerance import TOUCH
from geometry.vectors import Vec3, distance3

MOST_TRIALS = 1_000_000
Progress = Callable[[float], None]
_FIRST_LOOK = 0.15
"""Part of the work that the first look at the draws takes, for the progress"""


class Clearance(Struct, frozen=True):
    """One clearance over all trials, mm.

    `kind`, `between`, `where` and `needed` read as in geometry.checks.Snag; `of`
    names the holes concerned. `nominal` is what it is without any error.
    `spoiled` is the chance that it falls under zero, `short` that it falls under
    its margin (spoiled ones counted in). `spoils` is False where under zero is a
    blemish that does not cost the piece. `shares` tells where its variance comes
    from, by a straight line through the trials: largest first, together at most 1.
    `corner` as in geometry.accuracy.spec.Spec.
    """

    kind: str
    between: tuple[str, ...]
    of: tuple[str, ...]
    where: Vec3
    nominal: float
    needed: float
    spoils: bool
    spoiled: float
    short: float
    spread: Spread
    shares: tuple[Share, ...]
    corner: bool = False


class Simulation(Struct, frozen=True):
    """What became of all trials.

    `sound` is the chance that the whole headstock comes out with no clearance
    under zero, `within` that every clearance keeps its margin; what no error can
    mend (a side bore that meets no slot) is the checker's to say. `clearances`
    holds those that came under their margin in at least one trial, the most
    often spoiled first.
    """

    trials: int
    sound: float
    within: float
    clearances: tuple[Clearance, ...]

    def of(self, snag: Snag) -> Clearance | None:
        """The clearance that a snag is about: same kind and features, nearest place; None when it is not about one."""
        same = [c for c in self.clearances if c.kind == snag.kind and set(c.between) == set(snag.between)]
        return min(same, default=None, key=lambda c: distance3(c.where, snag.where))


def simulate(layout: Headstock, trials: int = 10_000, seed: int = 1, progress: Progress | None = None,
             ask: Ask = go_on) -> Simulation:
    """Build the headstock `trials` times with errors as large as layout.accuracy says, and measure every clearance.

    The same layout, trials and seed give the same answer, and more trials begin
    with the same ones. `progress` hears a part from 0 to 1, `ask` is asked
    every few milliseconds and may stop the simulation.
    GeometryError for fewer than 2 or more than a million trials, and for an
    outline without length.
    """
    return simulated(bench_of(layout), trials, seed, progress, ask)


def simulated(bench: Bench, trials: int, seed: int, progress: Progress | None = None, ask: Ask = go_on) -> Simulation:
    """As simulate(), of a bench."""
    if not 2 <= trials <= MOST_TRIALS:
        raise GeometryError(say("A simulation takes 2 to {most:,} trials, not {trials:,}.",
                                most=MOST_TRIALS, trials=trials))
    lot = Trials(bench, trials, seed, ask)
    report = progress if progress is not None else _silent
    report(0.0)
    specs = bench.specs(lot.reach(), ask=ask)
    report(_FIRST_LOOK)
    tally = Tally(specs, bench, trials)
    for number, built in enumerate(lot.built()):
        for done, spec in enumerate(specs):
            ask()
            tally.add(done, spec.measure(built), built.draws)
            if done % 16 == 15:
                report(_FIRST_LOOK + (1 - _FIRST_LOOK) * (number + (done + 1) / len(specs)) / lot.lots)
        tally.next_lot(built.trials)
    found = tally.result(ask)
    report(1.0)
    return found


def chance_of(bench: Bench, trials: int, seed: int, aim: Aim, ask: Ask = go_on) -> float:
    """The chance of an aim: `sound` or `within` of simulated(), and nothing else of it."""
    lot = Trials(bench, trials, seed, ask)
    specs = bench.specs(lot.reach(), ask=ask)
    return sum(int(np.count_nonzero(~any_fails(specs, built, aim, ask))) for built in lot.built()) / trials


FAR = 1e6
"""mm that a clearance counts as where nothing is in the way at all, so that sums stay finite."""


class Tally:
    """Collects the measures of a simulation, lot by lot and clearance by clearance."""

    def __init__(self, specs: list[Spec], bench: Bench, trials: int) -> None:
        self._specs, self._bench = specs, bench
        self._nominal: dict[int, float] = {}
        self._values = np.empty((len(specs), trials), dtype=np.float32)
        self._sums = [np.zeros(len(spec.rows)) for spec in specs]
        self._totals = np.zeros(len(specs))
        self._spoiled = np.zeros(len(specs), dtype=int)
        self._short = np.zeros(len(specs), dtype=int)
        self._sound = np.ones(trials, dtype=bool)
        self._within = np.ones(trials, dtype=bool)
        self._at = 0

    def add(self, index: int, values: np.ndarray, draws: np.ndarray) -> None:
        """The values (n,) of one clearance in the present lot."""
        spec = self._specs[index]
        if index not in self._nominal:
            self._nominal[index] = min(float(spec.measure(self._bench.nominal)[0]), FAR)
        values = np.minimum(values, FAR)
        lot = slice(self._at, self._at + len(values))
        gone, short = values < -TOUCH, values < spec.needed - TOUCH
        self._values[index, lot] = values
        self._spoiled[index] += np.count_nonzero(gone)
        self._short[index] += np.count_nonzero(short)
        if spec.spoils:
            self._sound[lot] &= ~gone
        self._within[lot] &= ~short
        # Relative to the nominal value the sums stay small and lose no digits.
        relative = values - self._nominal[index]
        self._totals[index] += float(relative.sum())
        sums = self._sums[index]
        for i, row in enumerate(spec.rows):
            sums[i] += float(draws[row] @ relative)

    def next_lot(self, trials: int) -> None:
        """All clearances of the present lot are in."""
        self._at += trials

    def result(self, ask: Callable[[], None]) -> Simulation:
        """The finished simulation; `ask` may stop it."""
        trials = self._values.shape[1]
        found = []
        for i in np.flatnonzero(self._short).tolist():
            ask()
            found.append(self._clearance(i))
        found.sort(key=lambda c: (not c.spoils, -c.spoiled, -c.short, c.kind, c.between, c.where))
        return Simulation(trials, float(self._sound.mean()), float(self._within.mean()), tuple(found))

    def _clearance(self, index: int) -> Clearance:
        spec, values = self._specs[index], self._values[index].astype(float)
        trials, spread = len(values), spread_of(values)
        deviations = self._bench.deviations[list(spec.rows)]
        certain = (deviations <= 0) | (spread.sd <= 0)
        # Share of a straight line in one independent error: its covariance squared over both variances.
        slope = np.where(certain, 0.0, self._sums[index] / trials / np.where(certain, 1.0, deviations * spread.sd))
        errors = [self._bench.model.errors.errors[row] for row in spec.rows]
        return Clearance(spec.kind, spec.between, spec.of, spec.where, self._nominal[index], spec.needed, spec.spoils,
                         int(self._spoiled[index]) / trials, int(self._short[index]) / trials, spread,
                         grouped(errors, (slope * slope).tolist()), spec.corner)


def _silent(_: float) -> None:
    """Nobody listens."""
