"""Clearances of many trials split by source, so that a search need not measure them anew for each accuracy it tries.

A clearance is taken as its nominal value, a straight line in each of its errors
(central differences, see straight_line), and what is left over. A source
held finer shrinks its straight part in proportion, and the rest by its part of
the variance: exact when all sources shrink alike and the clearance is made of
straight pieces (the nearer of two ends), a close guess else. What comes of the
search is proven by a simulation.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

import numpy as np

from geometry.accuracy.bench import Bench
from geometry.accuracy.built import Built
from geometry.accuracy.engine import slopes
from geometry.accuracy.sources import SOURCES, Source
from geometry.accuracy.spec import Spec
from geometry.accuracy.targets import Aim
from geometry.tolerance import TOUCH

Scales = Mapping[Source, float]


class Parts:
    """k clearances in n trials by source. `where` names the features at which a source may be held finer."""

    def __init__(self, bench: Bench, specs: Sequence[Spec], values: np.ndarray, draws: np.ndarray, aim: Aim,
                 where: Mapping[Source, tuple[str, ...]], ask: Callable[[], None]) -> None:
        shape = values.shape
        self._parts = {source: np.zeros(shape, dtype=np.float32) for source in SOURCES if where[source]}
        self._base = np.zeros(shape, dtype=np.float32)
        self._limits = np.array([[-TOUCH if aim == "sound" else spec.needed - TOUCH] for spec in specs])
        errors = bench.model.errors.errors
        for i, spec in enumerate(specs):
            ask()
            nominal, steps = straight_line(bench, spec)
            variance = float(steps @ steps)
            rest = values[i] - nominal
            weight: dict[Source | None, float] = {}
            lines: dict[Source | None, np.ndarray] = {}
            for row, step in zip(spec.rows, steps.tolist(), strict=True):
                if step == 0.0:
                    continue
                source = errors[row].source if errors[row].where in where[errors[row].source] else None
                line = draws[row] * (step / bench.deviations[row])
                rest = rest - line
                lines[source] = lines[source] + line if source in lines else line
                weight[source] = weight.get(source, 0.0) + step * step / variance
            self._base[i] = nominal + lines.pop(None, 0.0) + (weight.pop(None, 0.0) if weight else 1.0) * rest
            for source, line in lines.items():
                self._parts[source][i] = line + weight[source] * rest

    def at(self, scales: Scales) -> np.ndarray:
        """(k, n) the clearances when each source strays `scales` times as much."""
        values = self._base.copy()
        for source, part in self._parts.items():
            values += np.float32(scales[source]) * part
        return values

    def moved(self, values: np.ndarray, source: Source, by: float) -> np.ndarray:
        """The clearances of at() when one scale is changed by `by`."""
        return values + np.float32(by) * self._parts[source]

    def chance(self, values: np.ndarray) -> float:
        """Part of the trials in which none of these clearances fails."""
        return float((values >= self._limits).all(axis=0).mean())


def straight_line(bench: Bench, spec: Spec) -> tuple[float, np.ndarray]:
    """(nominal value, change (r,) for one standard deviation of each of its errors), mm."""
    rows = list(spec.rows)

    def measured(columns: np.ndarray) -> np.ndarray:
        draws = np.zeros((len(bench.deviations), columns.shape[1]))
        draws[rows] = columns
        return spec.measure(Built(bench.model, draws))

    values, steps = slopes(measured, np.zeros(len(rows)), bench.deviations[rows])
    return float(values[0]), steps[0]
