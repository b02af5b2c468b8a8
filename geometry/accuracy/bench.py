"""A layout made ready for trials: its errors, its trials in blocks, and the clearances that can matter in them."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property

import numpy as np
from msgspec import Struct

from geometry.accuracy.built import Built, Model, model_of
from geometry.accuracy.engine import stream
from geometry.accuracy.holes import hole_specs
from geometry.accuracy.openings import opening_specs
from geometry.accuracy.posts import post_specs
from geometry.accuracy.ramps import drilling_ramp_specs, ramp_edge_specs
from geometry.accuracy.sides import side_specs
from geometry.accuracy.spec import Only, Reach, Spec, reach_of, widest
from geometry.accuracy.uprights import upright_specs
from geometry.cancellation import Ask, go_on
from geometry.checks.memo import Memo
from geometry.checks.scene import scene_of
from geometry.layout import Headstock

_MOST_DRAWS = 750_000
"""draws a block of trials of one random stream"""
_LONGEST, _SHORTEST = 2500, 250
_AT_ONCE = 4_000_000
"""draws that are measured at once, 32 MB: a few hundred trials cost each clearance about as much as thousands"""
_KEPT_DRAWS = 4_000_000
"""draws kept from the first look to the second, 32 MB, and as much again in cylinders; more are drawn again"""
WHOLE = (hole_specs, opening_specs, ramp_edge_specs)
FEATURE_BY_FEATURE = (upright_specs, side_specs, post_specs, drilling_ramp_specs)


class Bench(Struct, frozen=True, eq=False, dict=True):
    """A model and the standard deviation of each of its errors (m,)."""

    model: Model
    deviations: np.ndarray

    @cached_property
    def size(self) -> float:
        """Largest distance of anything from the origin in plan, mm."""
        points = [self.model.scene.outline.points, *(o.wall.points for o in self.model.scene.openings)]
        far = max(float(np.hypot(p[:, 0], p[:, 1]).max()) for p in points)
        ends = [np.hypot(*p[:2]) for r in self.model.recipes for p in (r.drilling.start, r.drilling.end)]
        return max([far, *map(float, ends)])

    @cached_property
    def nominal(self) -> Built:
        """The headstock without any error, as one trial."""
        return Built(self.model, np.zeros((len(self.deviations), 1)))

    @property
    def block(self) -> int:
        """Trials a block; it depends on the layout alone, so that more trials begin with the same ones."""
        return min(_LONGEST, max(_SHORTEST, _MOST_DRAWS // max(1, len(self.deviations))))

    @property
    def lot(self) -> int:
        """Trials that are measured at once: whole blocks."""
        return self.block * max(1, min(_LONGEST, _AT_ONCE // max(1, len(self.deviations))) // self.block)

    def specs(self, reach: Reach, only: Only = None, ask: Ask = go_on) -> list[Spec]:
        """The clearances that can come under their margin within a reach, in a stable order; `ask` may stop it."""
        found: list[Spec] = []
        for family in WHOLE:
            ask()
            found += family(self.model, reach, only)
        for item in self.model.scene.items:
            if only is None or item.id in only:
                for family in FEATURE_BY_FEATURE:
                    ask()
                    found += family(self.model, reach, frozenset((item.id,)))
        return found

    def scaled(self, scales: np.ndarray) -> Bench:
        """The same bench with each error's standard deviation multiplied by its scale (m,)."""
        return Bench(self.model, self.deviations * scales)


def bench_of(layout: Headstock) -> Bench:
    """The bench of a layout. GeometryError when the outline has no length at all."""
    model = model_of(scene_of(layout, Memo()))
    return Bench(model, model.errors.deviations(layout.accuracy))


class Trials:
    """Seeded trials of a bench, lot by lot, for two looks: how far anything strays, and what is left of the wood.

    Where memory allows the second look finds what the first one has made.
    """

    def __init__(self, bench: Bench, count: int, seed: int, ask: Ask = go_on) -> None:
        """`ask` is asked every few milliseconds, and raises Stopped when nobody wants them any more."""
        self._bench, self._count, self._seed = bench, count, seed
        self.ask = ask
        self._kept: dict[int, Built] = {}
        self._keep = count * len(bench.deviations) <= _KEPT_DRAWS

    @property
    def lots(self) -> int:
        return -(-self._count // self._bench.lot)

    def reach(self) -> Reach:
        """How far anything strays in any of the trials."""
        found = []
        for number in range(self.lots):
            built = Built(self._bench.model, self._draws(number))
            found.append(reach_of(built, self._bench.nominal, self._bench.size, self.ask))
            if self._keep:
                self._kept[number] = built
        return widest(found)

    def built(self) -> Iterator[Built]:
        """The headstocks of each lot."""
        for number in range(self.lots):
            yield self._kept.pop(number, None) or Built(self._bench.model, self._draws(number))

    def _draws(self, number: int) -> np.ndarray:
        """Errors (m, n) of a lot, block after block; of the last block the first columns."""
        size, lot = self._bench.block, self._bench.lot
        first, last = number * lot, min(self._count, (number + 1) * lot)
        draws = [self._block(at)[:, :last - at * size] for at in range(first // size, -(-last // size))]
        return draws[0] if len(draws) == 1 else np.concatenate(draws, axis=1)

    def _block(self, number: int) -> np.ndarray:
        """Errors of a whole block: normal draws, row by row."""
        size = self._bench.block
        whole = np.empty((len(self._bench.deviations), size))
        source = stream(self._seed, number)
        step = max(1, 100_000 // size)
        for first in range(0, len(whole), step):
            self.ask()
            rows = whole[first:first + step]
            source.standard_normal(out=rows)
            rows *= self._bench.deviations[first:first + step, None]
        return whole
