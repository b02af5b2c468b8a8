"""Clearances of two holes: the wood between their drillings in space."""

from __future__ import annotations

from collections import defaultdict

import numpy as np
from msgspec import Struct

from geometry.accuracy.built import Built, Model
from geometry.accuracy.rods import Array, gap
from geometry.accuracy.spec import FAINT, Only, Reach, Spec
from geometry.checks.hole_pairs import meant, wanted
from geometry.checks.kinds import pair_kind
from geometry.checks.words import sort_of
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps


class _Least(Struct, frozen=True):
    """The least gap of some pairs of drillings."""

    pairs: tuple[tuple[int, int], ...]

    def __call__(self, built: Built, enough: float = np.inf) -> Array:
        found = [gap(built.rod(i), built.rod(k), enough) for i, k in self.pairs]
        return found[0] if len(found) == 1 else np.minimum.reduce(found)


def hole_specs(model: Model, reach: Reach, only: Only = None) -> list[Spec]:
    """One clearance for every two holes that come under their margin in some trial.

    Of two holes whose drillings want different margins each margin is a clearance of its own.
    """
    drillings = [recipe.drilling for recipe in model.recipes]
    if len(drillings) < 2:
        return []
    margins = model.scene.layout.margins
    solids = Cylinders.of(drillings)
    left, right = np.triu_indices(len(drillings), 1)
    holes = np.unique([d.hole for d in drillings], return_inverse=True)[1]
    strays = reach.rods[left] + reach.rods[right]
    most = max(margins.bore_bore, margins.screw_any, margins.pin_any)
    low, high = solids.boxes()
    apart = np.maximum(low[left] - high[right], low[right] - high[left]).max(axis=1)
    asked = holes[left] != holes[right]
    if only is not None:
        own = np.array([d.of in only for d in drillings])
        asked &= own[left] | own[right]
    near = np.flatnonzero(asked & (apart <= most + strays + FAINT))
    groups: dict[tuple[str, str, float], list[int]] = defaultdict(list)
    for at in near.tolist():
        a, b = drillings[left[at]], drillings[right[at]]
        if not meant(a, b, drillings):
            groups[a.hole, b.hole, wanted(a, b, margins)].append(at)
    members = np.array([at for group in groups.values() for at in group], dtype=int)
    if not members.size:
        return []
    measured = gaps(solids.pick(left[members]), solids.pick(right[members]))
    nominal = dict(zip(members.tolist(), range(len(members)), strict=True))
    specs = []
    for (one, two, needed), group in groups.items():
        lowest = [float(measured.distance[nominal[at]] - strays[at]) for at in group]
        if min(lowest) > needed + FAINT:
            continue
        highest = min(float(measured.distance[nominal[at]] + strays[at]) for at in group)
        pairs = [at for at, low_ in zip(group, lowest, strict=True) if low_ <= highest + FAINT]
        worst = min(pairs, key=lambda at: measured.distance[nominal[at]])
        a, b = drillings[left[worst]], drillings[right[worst]]
        where = (measured.on_a[nominal[worst]] + measured.on_b[nominal[worst]]) / 2
        rows = {row for at in pairs for i in (left[at], right[at]) for row in model.rows_of(int(i))}
        measure = _Least(tuple((int(left[at]), int(right[at])) for at in pairs))
        specs.append(Spec(pair_kind(sort_of(a), sort_of(b)), (a.of,) if a.of == b.of else (a.of, b.of), (one, two),
                          tuple(float(c) for c in where), needed, tuple(sorted(rows)),
                          measure, rough=measure))
    return specs
