"""Where moving a tuner helps more than working finer: positions that improve the worst chance.

A pattern search: each knob is turned a step either way, the step is halved when
nothing helps any more. Its measure is how many standard deviations every
clearance keeps, by first order, softly the least of them, because chances
themselves are flat where nothing ever goes wrong. The answer is simulated
before it is given.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.accuracy.bench import Bench, Trials, bench_of
from geometry.accuracy.built import model_of
from geometry.accuracy.engine import linear
from geometry.accuracy.knobs import Knob, knobs
from geometry.accuracy.parts import straight_line
from geometry.accuracy.simulation import Progress, Simulation, simulated
from geometry.accuracy.spec import Reach, Spec
from geometry.accuracy.targets import Aim
from geometry.cancellation import Ask, go_on
from geometry.checks import CheckResult, LiveCheck
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.checks.snags import NOTE
from geometry.errors import GeometryError
from geometry.layout import Headstock
from geometry.solids.frames import frames
from geometry.solids.pins_along import pins_along
from geometry.vectors import Vec2

STEPS = (2.0, 1.0, 0.5, 0.2, 0.1)
_SOFT = 3.0
"""How sharply the least clearance outweighs the others, per standard deviation"""
_WORTH = 0.01
"""Standard deviations that a step has to gain"""
_IDLE = 0.1
"""Part of all that is gained which may be given back so that fewer tuners move"""
_LEAST_SD = 1e-3
_SURE = 1e-4
"""Chance of being spoiled under which margins are looked after instead"""
_SLIP = 0.05
"""mm by which a snag that no simulation measures may get worse"""

Key = tuple[str, tuple[str, ...], tuple[str, ...], float]


class Outlook(Struct, frozen=True):
    """What a simulation says: the chance of the aim, the worst single chance, and between which features that is."""

    chance: float
    worst: float
    between: tuple[str, ...]


class Proposal(Struct, frozen=True):
    """A changed layout and what it gains.

    `moves` are the plan shifts (mm) of the tuners that move; empty, with the
    layout as it was, when no move helps. `before` and `after` tell the chance
    of the aim and the worst single chance.
    """

    layout: Headstock
    moves: tuple[tuple[str, Vec2], ...]
    aim: Aim
    before: Outlook
    after: Outlook


def propose_moves(layout: Headstock, aim: Aim | None = None, trials: int = 10_000, seed: int = 1,
                  progress: Progress | None = None, ask: Ask = go_on, farthest: float = 10.0) -> Proposal:
    """Move tuners that are not held so that the worst chance improves.

    Side tuners slide along their edge, face tuners move in plan, rows by their
    start and inset, none by more than `farthest` mm; mirrored ones together, and pins with the bores in which they stand. `aim` None
    looks after soundness, or after margins where hardly anything is ever
    spoiled. A move that brings a new snag which is more than a note is not
    made, nor one that worsens what is not simulated (plates, buttons). The
    seed decides the order of trying. `ask` may stop it. GeometryError as simulate().
    """
    return _Search(layout, aim, farthest, trials, seed, progress, ask).answer()


class _Search:
    """The search and what it remembers of the best layout so far."""

    def __init__(self, layout: Headstock, aim: Aim | None, farthest: float, trials: int, seed: int,
                 progress: Progress | None, ask: Ask) -> None:
        self._start, self._farthest, self._trials, self._seed = layout, farthest, trials, seed
        self._report, self._ask = progress or (lambda _: None), ask
        self._memo, self._checker = Memo(), LiveCheck()
        self._report(0.0)
        self._before = self._simulated(layout)
        self._aim: Aim = aim or ("sound" if 1 - self._before.sound > _SURE else "within")

    def answer(self) -> Proposal:
        self._report(0.1)
        outlook = self._outlook(self._before)
        turning = knobs(self._start)
        best = self._search(turning) if turning else self._start
        moves = _moves(self._start, best)
        if not moves:
            return Proposal(self._start, (), self._aim, outlook, outlook)
        after = self._outlook(self._simulated(best))
        self._report(1.0)
        if after.worst > outlook.worst or after.chance < outlook.chance:
            return Proposal(self._start, (), self._aim, outlook, outlook)
        return Proposal(best, moves, self._aim, outlook, after)

    def _search(self, turning: list[Knob]) -> Headstock:
        bench = self._bench(self._start)
        self._order = [r.drilling.id for r in bench.model.recipes]
        self._reach: Reach = Trials(bench, bench.block, self._seed, self._ask).reach()
        self._sds: dict[Key, float] = {}
        state = self._measured(bench, bench.specs(self._reach, ask=self._ask))
        snags = _graded(self._checker.check(self._start))
        layout, first = self._start, _soft_least(state.values())
        score = first
        offsets = [0.0] * len(turning)
        random = np.random.Generator(np.random.PCG64(self._seed))
        for turn, step in enumerate(STEPS):
            gaining = True
            while gaining:
                gaining = False
                for index in random.permutation(len(turning)).tolist():
                    for sign in (1.0, -1.0):
                        while abs(offsets[index] + sign * step) <= self._farthest + 1e-9:
                            found = self._tried(layout, turning[index], sign * step, state, score + _WORTH,
                                                snags)
                            if found is None:
                                break
                            layout, state, score = found
                            offsets[index] += sign * step
                            gaining = True
            self._report(0.1 + 0.7 * (turn + 1) / len(STEPS))
        # What hardly helps goes back where the maker put it, the smallest moves first.
        spare = _IDLE * (score - first)
        for index in sorted(np.flatnonzero(offsets).tolist(), key=lambda i: (abs(offsets[i]), i)):
            found = self._tried(layout, turning[index], -offsets[index], state, score - spare, snags)
            if found is not None:
                spare -= score - found[2]
                layout, state, score = found
        return layout

    def _tried(self, layout: Headstock, knob: Knob, by: float, state: dict[Key, float], floor: float,
               snags: dict) -> tuple[Headstock, dict[Key, float], float] | None:
        """The layout with a knob turned, if its score is above the floor and it harms nothing."""
        self._ask()
        there = pins_along(layout, knob.turned(layout, by))
        moved = knob.features | {pin.id for pin, was in zip(there.pins, layout.pins, strict=True) if pin != was}
        try:
            bench = self._bench(there)
        except GeometryError:
            return None
        if [r.drilling.id for r in bench.model.recipes] != self._order:
            return None
        kept = {key: value for key, value in state.items() if not moved.intersection(key[1])}
        new = kept | self._measured(bench, bench.specs(self._reach, moved, self._ask))
        gained = _soft_least(new.values())
        if not gained > floor or not _harmless(snags, _graded(self._checker.check(there)), new):
            return None
        return there, new, gained

    def _bench(self, layout: Headstock) -> Bench:
        self._memo.new_round()
        model = model_of(scene_of(layout, self._memo))
        return Bench(model, model.errors.deviations(layout.accuracy))

    def _measured(self, bench: Bench, specs: list[Spec]) -> dict[Key, float]:
        """Standard deviations that each clearance keeps above its limit; a spread is measured once a clearance."""
        found: dict[Key, float] = {}
        for spec in specs:
            if self._aim == "sound" and not spec.spoils:
                continue
            self._ask()
            key = (spec.kind, spec.between, spec.of, spec.needed)
            if key not in self._sds:
                self._sds[key] = max(linear(*straight_line(bench, spec)).sd, _LEAST_SD)
            value = float(spec.measure(bench.nominal)[0]) - (spec.needed if self._aim == "within" else 0.0)
            found[key] = min(found.get(key, np.inf), value / self._sds[key])
        return found

    def _simulated(self, layout: Headstock) -> Simulation:
        return simulated(bench_of(layout), self._trials, self._seed, ask=self._ask)

    def _outlook(self, found: Simulation) -> Outlook:
        sound = self._aim == "sound"
        chances = [(c.spoiled if sound else c.short, c.between) for c in found.clearances if c.spoils or not sound]
        worst, between = max(chances, default=(0.0, ()))
        return Outlook(found.sound if sound else found.within, worst, between)


def _soft_least(values: Iterable[float]) -> float:
    """A smooth least of some numbers, a little under it; what is far above it hardly counts. Infinite for none."""
    keeps = np.array(list(values))
    if not keeps.size:
        return float("inf")
    least = keeps.min()
    return float(least - np.log(np.exp(-_SOFT * (keeps - least)).sum()) / _SOFT)


def _graded(result: CheckResult) -> dict[tuple[str, frozenset[str]], float]:
    """Every snag that is more than a note, with the least measure of its kind between these features."""
    found: dict[tuple[str, frozenset[str]], float] = {}
    for snag in result.snags:
        if snag.grade != NOTE:
            key = (snag.kind, frozenset(snag.between))
            measured = -np.inf if snag.measured is None else snag.measured
            found[key] = min(found.get(key, np.inf), measured)
    return found


def _harmless(before: dict, after: dict, simulated: dict[Key, float]) -> bool:
    """No new snag, and none worse that the simulation does not weigh itself."""
    weighed = {(kind, frozenset(between)) for kind, between, _, _ in simulated}
    return all(key in before and (key in weighed or measured >= before[key] - _SLIP)
               for key, measured in after.items())


def _moves(before: Headstock, after: Headstock) -> tuple[tuple[str, Vec2], ...]:
    """Plan shifts of the tuners that lie elsewhere."""
    if before is after:
        return ()
    old, new = frames(before), frames(after)
    shifts = [(id, v.sub(new[id].origin[:2], old[id].origin[:2])) for id in old]
    return tuple((id, (float(by[0]), float(by[1]))) for id, by in shifts if v.norm(by) > 1e-6)
