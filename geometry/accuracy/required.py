"""What must I hold? Which accuracy is needed, and where, for a wanted chance that the headstock comes out."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from geometry.accuracy.bench import Trials, bench_of
from geometry.accuracy.built import Built
from geometry.accuracy.needs import FINEST, ROUGHEST, Need, Requirements, rounded_down
from geometry.accuracy.parts import Parts
from geometry.accuracy.simulation import Progress, chance_of, simulated
from geometry.accuracy.sources import SOURCES, UNITS, Source, half_width
from geometry.accuracy.spec import Spec
from geometry.accuracy.targets import Aim, any_fails, fails, limit
from geometry.cancellation import Ask, go_on
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.saying import say

_STEP = 0.85
_CHECK_SEED = 1_000_003
"""added to the seed, so that an answer is proven on headstocks that it was not fitted to"""
_ROUNDS = 6
_BISECTIONS = 7
_HALVINGS = 3
_FINER_STILL = 0.95
"""By how much a guess is made finer that measuring does not bear out"""
_TRIES = 4
_SPARE_TRIALS = 4_000
_RARE = 0.1
"""Part of the failures allowed in all under which a clearance asks for nothing finer"""
_TELLS = 0.02
"""Share of a clearance's variance above which a feature is named"""


def requirements(layout: Headstock, chance: float = 0.99, aim: Aim = "sound", trials: int = 10_000, seed: int = 1,
                 progress: Progress | None = None, ask: Ask = go_on) -> Requirements:
    """The accuracy that gives the wanted chance.

    `aim` is what has to come out: "sound", no clearance under zero, or "within",
    every clearance keeps its margin. Sources are made finer step by step, each
    time the one that gains most, at the features that matter, judged by the
    clearances' parts (parts.py); then the answer is simulated afresh and made
    finer still where that falls short. `ask` may stop it. GeometryError for a
    chance that is not above 0 and under 1, and as simulate().
    """
    if not 0 < chance < 1:
        raise GeometryError(say("A wanted chance lies between 0 and 1: it cannot be {chance:g}.", chance=chance))
    return _Search(layout, chance, aim, trials, seed, progress, ask).answer()


class _Search:
    """The search, with the headstocks of one simulation at hand."""

    def __init__(self, layout: Headstock, chance: float, aim: Aim, trials: int, seed: int,
                 progress: Progress | None, ask: Ask) -> None:
        self._accuracy, self._chance, self._aim = layout.accuracy, chance, aim
        self._trials, self._seed, self._ask = trials, seed, ask
        self._report = progress or (lambda _: None)
        self._bench = bench_of(layout)
        self._lot = Trials(self._bench, trials, seed, ask)
        self._specs: list[Spec] = []
        self._values = np.empty((0, trials), dtype=np.float32)
        """what these clearances, which fail in some trial, measure"""
        self._often = np.zeros(0)
        """chance of failing of each of them"""
        self._draws = np.empty((len(self._bench.deviations), trials))

    def answer(self) -> Requirements:
        self._report(0.0)
        all_specs = self._bench.specs(self._lot.reach(), ask=self._ask)
        now = self._prepare(all_specs)
        self._report(0.3)
        if now >= self._chance:
            spare = self._spare()
            self._report(1.0)
            return Requirements(self._aim, self._chance, now, now, (), (), spare, True)
        for at_least in (_RARE * (1 - self._chance), 0.0):
            matters = self._matters(at_least)
            found = self._answer(now, matters)
            if found is not None:
                self._report(1.0)
                return found
        return self._impossible(now, matters)

    def _answer(self, now: float, matters: dict[Source, tuple[str, ...]]) -> Requirements | None:
        """The answer that holds sources finer at these features only; None when that does not do."""
        finest: dict[Source, float] = dict.fromkeys(SOURCES, FINEST)
        if self._proven(finest, matters) < self._chance:
            return None
        self._report(0.4)
        parts = Parts(self._bench, self._specs, self._values, self._draws, self._aim, matters,
                      self._ask)
        alone = self._alone(parts, matters)
        self._report(0.5)
        scales: dict[Source, float] = dict.fromkeys(SOURCES, 1.0)
        goal = self._chance
        for turn in range(_ROUNDS):
            scales = self._finer(parts, scales, matters, goal) or finest
            reached = self._proven(scales, matters)
            self._report(0.5 + 0.5 * (turn + 1) / _ROUNDS)
            if reached >= self._chance:
                break
            goal = min(goal + 1.5 * (self._chance - reached), (1 + goal) / 2)
        else:
            scales, reached = finest, self._proven(finest, matters)
        needs = tuple(self._need(source, scale, matters[source])
                      for source, scale in scales.items() if scale < 1 and matters[source])
        return Requirements(self._aim, self._chance, now, reached, needs, alone, 1.0, True)

    def _prepare(self, specs: list[Spec]) -> float:
        """Keep the clearances that fail in some trial, and the trials; the chance as things are."""
        values = np.empty((len(specs), self._trials), dtype=np.float32)
        failing = np.zeros(len(specs), dtype=int)
        good = first = 0
        for built in self._lot.built():
            block = slice(first, first + built.trials)
            first += built.trials
            bad = np.zeros(built.trials, dtype=bool)
            for i, spec in enumerate(specs):
                self._ask()
                values[i, block] = measured = spec.measure(built)
                gone = fails(spec, measured, self._aim)
                failing[i] += np.count_nonzero(gone)
                bad |= gone
            good += int(np.count_nonzero(~bad))
            self._draws[:, block] = built.draws
        self._specs = [specs[i] for i in np.flatnonzero(failing).tolist()]
        self._values = values[failing > 0]
        self._often = failing[failing > 0] / self._trials
        return good / self._trials

    def _chance_at(self, scales: np.ndarray) -> float:
        """The chance when each error is scaled, measured on the same trials."""
        good = 0
        for first in range(0, self._trials, self._bench.lot):
            built = Built(self._bench.model, self._draws[:, first:first + self._bench.lot] * scales[:, None])
            good += int(np.count_nonzero(~any_fails(self._specs, built, self._aim, self._ask)))
        return good / self._trials

    def _matters(self, at_least: float) -> dict[Source, tuple[str, ...]]:
        """For each source the features at which it moves a clearance that fails with at least this chance."""
        errors = self._bench.model.errors.errors
        found: dict[Source, dict[str, None]] = {source: {} for source in SOURCES}
        sample = self._draws[:, :self._bench.block]
        for spec, whole, often in zip(self._specs, self._values, self._often.tolist(), strict=True):
            self._ask()
            if often < at_least:
                continue
            values = whole[:sample.shape[1]].astype(float)
            values = values - values.mean()
            variance = float(values @ values)
            for row in spec.rows:
                draws = sample[row]
                own = float(draws @ draws)
                if own > 0 and variance > 0 and float(draws @ values) ** 2 / (own * variance) > _TELLS:
                    found[errors[row].source][errors[row].where] = None
        return {source: tuple(sorted(where)) for source, where in found.items()}

    def _rows(self, scales: dict[Source, float], matters: dict[Source, tuple[str, ...]]) -> np.ndarray:
        return np.array([scales[e.source] if e.where in matters[e.source] else 1.0
                         for e in self._bench.model.errors.errors])

    def _finer(self, parts: Parts, start: dict[Source, float], matters: dict[Source, tuple[str, ...]],
               goal: float) -> dict[Source, float] | None:
        """Step by step the source that gains most is made finer until the goal is met; None when that never is."""
        scales, values = dict(start), parts.at(start)
        reached = parts.chance(values)
        while reached < goal:
            options: dict[Source, tuple[float, float]] = {}
            for source in SOURCES:
                if matters[source] and scales[source] > FINEST:
                    self._ask()
                    finer = max(FINEST, scales[source] * _STEP)
                    options[source] = parts.chance(parts.moved(values, source, finer - scales[source])), finer
            if not options:
                return None
            best = max(options, key=lambda source: (options[source][0], scales[source]))
            before, (reached, finer) = scales[best], options[best]
            values = parts.moved(values, best, finer - before)
            scales[best] = finer
            if reached >= goal:
                scales[best] = _least_fine(lambda scale, best=best, finer=finer, values=values: parts.chance(
                    parts.moved(values, best, scale - finer)) >= goal, finer, before, _HALVINGS)
        return scales

    def _alone(self, parts: Parts, matters: dict[Source, tuple[str, ...]]) -> tuple[Need, ...]:
        """Sources that by themselves bring the chance when held finer, and how fine: measured on the same trials."""
        one: dict[Source, float] = dict.fromkeys(SOURCES, 1.0)
        values, found = parts.at(one), []
        for source in SOURCES:
            self._ask()
            if not matters[source] or half_width(self._accuracy, source) <= 0:
                continue

            def good(scale: float, source: Source = source) -> bool:
                return parts.chance(parts.moved(values, source, scale - 1.0)) >= self._chance

            if not good(FINEST):
                continue
            scale = _least_fine(good, FINEST, 1.0, _BISECTIONS)
            for _ in range(_TRIES):
                need = self._need(source, scale, matters[source])
                if self._chance_at(self._rows(one | {source: need.wanted / need.now}, matters)) >= self._chance:
                    found.append(need)
                    break
                scale = max(FINEST, scale * _FINER_STILL)
        return tuple(found)

    def _proven(self, scales: dict[Source, float], matters: dict[Source, tuple[str, ...]]) -> float:
        """The chance of the rounded answer on other trials, with every clearance measured."""
        rounded = {source: self._round(source, scale) / half_width(self._accuracy, source)
                   if scale < 1 and matters[source] else 1.0 for source, scale in scales.items()}
        return chance_of(self._bench.scaled(self._rows(rounded, matters)), self._trials, self._seed + _CHECK_SEED, self._aim, self._ask)

    def _spare(self) -> float:
        """How many times rougher everything could be, in steps of 0.1.

        Rough trials that fail too often tell how much less rough would do, and that is tried next.
        """
        tenths = round(10 * ROUGHEST)
        while tenths > 10:
            rough = self._bench.scaled(np.full(len(self._bench.deviations), tenths / 10))
            lot = Trials(rough, min(self._trials, _SPARE_TRIALS), self._seed + _CHECK_SEED, self._ask)
            specs = [s for s in rough.specs(lot.reach(), ask=self._ask) if s.spoils or self._aim == "within"]
            bare: list[float] = []
            for spec in specs:
                self._ask()
                bare.append(float(spec.measure(rough.nominal)[0]))
            strays: list[list[np.ndarray]] = [[] for _ in specs]
            for built in lot.built():
                for spec, nominal, stray in zip(specs, bare, strays, strict=True):
                    self._ask()
                    # What is enough now is enough with smaller errors too, if it is so without any.
                    enough = limit(spec, self._aim)
                    values = spec.least(built, enough) if nominal >= enough else spec.measure(built)
                    stray.append((values - nominal).astype(np.float32))
            least = _most_tenths(specs, bare, [np.concatenate(s) for s in strays], self._aim, self._chance, tenths,
                                  self._ask)
            if least == tenths:
                break
            tenths = least
            self._report(min(0.9, 0.3 + 0.7 * (10 * ROUGHEST - tenths) / (10 * ROUGHEST - 10)))
        return tenths / 10

    def _impossible(self, now: float, matters: dict[Source, tuple[str, ...]]) -> Requirements:
        """What stays in the way when everything is ten times finer."""
        finest = self._rows(dict.fromkeys(SOURCES, FINEST), matters)
        found = simulated(self._bench.scaled(finest), self._trials, self._seed + _CHECK_SEED, ask=self._ask)
        sound = self._aim == "sound"
        bad = [c.between for c in found.clearances if (c.spoils and c.spoiled > 0 if sound else c.short > 0)]
        self._report(1.0)
        return Requirements(self._aim, self._chance, now, found.sound if sound else found.within, (), (), 1.0, False,
                            tuple(dict.fromkeys(bad)))

    def _need(self, source: Source, scale: float, where: tuple[str, ...]) -> Need:
        return Need(source, half_width(self._accuracy, source), self._round(source, scale), UNITS[source], where)

    def _round(self, source: Source, scale: float) -> float:
        """A half-width rounded down to hundredths, so that holding what is told is enough."""
        return rounded_down(self._accuracy, source, scale)


def _least_fine(good: Callable[[float], bool], fine: float, rough: float, halvings: int) -> float:
    """The roughest scale that is good, between one that is and one that need not be."""
    for _ in range(halvings):
        middle = (fine + rough) / 2
        fine, rough = (middle, rough) if good(middle) else (fine, middle)
    return fine


def _most_tenths(specs: list[Spec], bare: list[float], strays: list[np.ndarray], aim: Aim, chance: float,
                 now: int, ask: Callable[[], None]) -> int:
    """How many tenths of the present errors all could have; `strays` are those of `now` tenths, and in proportion."""
    low, high = 10, now + 1
    while low < high - 1:
        middle = (low + high) // 2
        bad = np.zeros(len(strays[0]) if strays else 1, dtype=bool)
        for spec, nominal, stray in zip(specs, bare, strays, strict=True):
            ask()
            bad |= fails(spec, nominal + stray * (middle / now), aim)
        low, high = (middle, high) if 1 - bad.mean() >= chance else (low, middle)
    return low
