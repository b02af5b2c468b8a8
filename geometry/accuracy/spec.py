"""What a clearance is to the simulation: its facts, the errors that touch it, and a function that measures it."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from geometry.accuracy.built import Built
from geometry.accuracy.ramp_built import ramp_of
from geometry.cancellation import Ask, go_on
from geometry.vectors import Vec3

Only = frozenset[str] | None
"""Features whose clearances are asked for; None for all."""


class Spec(Struct, frozen=True, eq=False):
    """One clearance. `kind`, `between`, `where` and `needed` read as in geometry.checks.Snag.

    `of` names the holes concerned. `spoils` is False where less than nothing
    is a blemish and does not cost the piece. `rows` are the errors that can
    change it. `measure` gives (n,) mm for n built headstocks. `corner`: below
    zero it is how deep the deepest corner lies, which the least way out need not be.
    `rough` is a quicker `measure` where there is one, see `least`.
    """

    kind: str
    between: tuple[str, ...]
    of: tuple[str, ...]
    where: Vec3
    needed: float
    rows: tuple[int, ...]
    measure: Callable[[Built], np.ndarray]
    spoils: bool = True
    corner: bool = False
    rough: Callable[[Built, float], np.ndarray] | None = None

    def least(self, built: Built, enough: float) -> np.ndarray:
        """As measure; what is `enough` mm or more need not be exact, only never more than it is nor less than that."""
        return self.measure(built) if self.rough is None else self.rough(built, enough)


class InBlank(Struct, frozen=True):
    """What `measure` tells of a slot, told of a pocket that is in the blank already: nothing of the shop's moves that."""

    measure: Callable[[Built], np.ndarray]

    def __call__(self, built: Built) -> np.ndarray:
        return self.measure(built.in_blank)


class Reach(Struct, frozen=True, eq=False):
    """How far anything strays at most in the trials at hand, mm: what pruning is derived from.

    `rods` (r,): no point of a built drilling is farther from its place than this.
    `slopes` (r,): how far an axis turns, as a length a mm. `template` is the
    shift of any point of the template by its place and its paper, `follow` how
    far any wall is grown or shrunk, and the stops of blind slots. `ramps`: no
    point of a filed ramp is farther from its place than this.
    """

    rods: np.ndarray
    slopes: np.ndarray
    template: float
    follow: float
    ramps: float = 0.0

    @property
    def wall(self) -> float:
        """How far any point of any wall strays."""
        return self.template + self.follow


FAINT = 0.01
"""mm added wherever something is left out: flattened curves, and the rounding of nominal distances."""


def reach_of(built: Built, nominal: Built, size: float, ask: Ask = go_on) -> Reach:
    """The reach of some trials; `size` is the largest distance of anything from the origin in plan, mm. `ask` may stop it."""
    count = len(built.model.recipes)
    rods, slopes = np.zeros(count), np.zeros(count)
    for i in range(count):
        ask()
        made, meant = built.rod(i), nominal.rod(i)
        rods[i] = made.strayed(meant).max()
        slopes[i] = np.sqrt(sum((a - b) ** 2 for a, b in zip(made.axis, meant.axis, strict=True))).max()
    rows = built.model.template
    stretch = np.maximum(np.abs(built.row(rows.paper[0])), np.abs(built.row(rows.paper[1])))
    shift = np.hypot(built.row(rows.place[0]), built.row(rows.place[1])) / np.maximum(1.0 - stretch, 0.5)
    walls = [np.abs(built.row(row)).max() for row in (rows.outline, *rows.slots.values(), *rows.floors.values())]
    ramps = max((ramp_of(built, id).strayed(ramp_of(nominal, id)) for id in built.model.ramps), default=0.0)
    return Reach(rods, slopes, float((shift + 1.1 * stretch * size).max()), float(max(walls)), ramps)


def widest(reaches: list[Reach]) -> Reach:
    """The reach of several lots of trials together."""
    return Reach(np.maximum.reduce([r.rods for r in reaches]), np.maximum.reduce([r.slopes for r in reaches]),
                 max(r.template for r in reaches), max(r.follow for r in reaches),
                 max(r.ramps for r in reaches))
