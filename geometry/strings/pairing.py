"""Which post serves which string, and round which side of it: what counts first, first.

No two strings cross above the face. They run into nothing, and have their air to posts, walls and screws. They have it between each other,
and do not bend aside by more than is tolerable. Where air lacks over a slot's nut end it lacks little. Posts stay wound as they are, and
strings that go down into slots do not cross there either, though they may. Strings bend aside as little as they can.

The best of all assignments, with a proof (`assignment`) unless the search is cut short.
"""

from __future__ import annotations

import math
from functools import partial

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from geometry.cancellation import Ask, go_on
from geometry.errors import GeometryError
from geometry.layout.blank import Side
from geometry.layout.headstock import Headstock
from geometry.saying import say
from geometry.solids.frames import Frame, frames
from geometry.strings.assignment import MOST_STEPS, NEVER, assign, whole_cost
from geometry.strings.nut import nut_places
from geometry.strings.rubs import Rub, rubbing, rubs_alone, rubs_between
from geometry.strings.runs import Run, carriers, cross, cross_on_the_face, run_to, runs

_ODD, _NOTE, _NEAR, _INTO = 100.0, 1e4, 5e5, 2e7
"""Cost (rad2) of what is odd but does no harm; of what is no more than a note, strings with little air between them or bent wide; of
a string without its air, and of one that runs into something. 40 squared angles are less than one odd thing, 99 of these less than a note."""
_LACKS = 1e3
"""Cost (rad2) of each mm of air that lacks over a slot's nut end: a tenth is one odd thing."""
_SIDES: tuple[Side, ...] = ("bass", "treble")


class Pairing(Struct, frozen=True):
    """An assignment: the run of each string in the order of the strings, and how it compares (rad)."""

    runs: tuple[Run, ...]
    proven: bool
    """whether nothing better exists; False when the search was cut short"""
    rubbing: int = 0
    """how many of the strings have less than their air to a post, to wood, to a screw or to each other"""
    winds: tuple[Side, ...] = ()
    """on which side of its post each string runs, of a proposal"""

    @property
    def worst(self) -> float:
        """The largest side angle."""
        return max((abs(run.side_angle) for run in self.runs), default=0.0)

    @property
    def total(self) -> float:
        """The sum of squared side angles."""
        return sum(run.side_angle ** 2 for run in self.runs)

    @property
    def crossings(self) -> int:
        """How many pairs of strings cross on the face."""
        return sum(cross(a, b) for i, a in enumerate(self.runs) for b in self.runs[i + 1:])


def present(layout: Headstock) -> Pairing:
    """The assignment as the layout has it."""
    placed = frames(layout)
    found = runs(layout, placed)
    return Pairing(found, False, rubbing(layout, placed, found))


def propose_pairing(layout: Headstock, ask: Ask = go_on) -> Pairing:
    """The best assignment; held tuners keep their strings and their winding side. `ask` is asked at each step.

    GeometryError when there are fewer posts than strings, or no assignment without crossings.
    """
    strings, tuners = layout.strings, layout.tuners
    if not strings:
        raise GeometryError(say("The layout has no strings yet."))
    if len(tuners) < len(strings):
        raise GeometryError(say("There are {strings} strings and only {tuners} posts: add tuners first.",
                                strings=len(strings), tuners=len(tuners)))
    placed = frames(layout)
    table = _Table(layout, placed, ask)

    def step(steps: int) -> None:
        ask(partial(_at, steps))
    # Strings that keep their order at all levels are sought quickly, and what crosses nowhere bounds what may.
    found, proven = assign(table.cost, table.in_order, step)
    if found is None or whole_cost(table.cost, table.beside, found) >= _ODD:
        found, proven = assign(table.cost, table.beside, step, found)
    if found is None:
        raise GeometryError(say("The search for posts was cut short before it found a way: hold some posts that are right, and ask again.")
                            if not proven else say("No way to serve these posts keeps the strings from crossing: let a held post go, or "
                                "move one."))
    chosen = tuple(table.runs[i, k, way] for i, (k, way) in enumerate(found))
    return Pairing(chosen, proven, rubbing(layout, placed, chosen), tuple(_SIDES[way] for _, way in found))


def _at(steps: int) -> str:
    return say("{steps} of at most {most} ways of serving the posts tried", steps=steps, most=MOST_STEPS)


class _Table:
    """The run of each string to each post on each side, and what it costs; by (string, tuner, side), in the order of the layout."""

    def __init__(self, layout: Headstock, placed: dict[str, Frame], ask: Ask) -> None:
        strings, tuners, retainers = layout.strings, layout.tuners, carriers(layout)
        self._air = layout.margins.string_air
        self.runs: dict[tuple[int, int, int], Run] = {}
        fixed = {tuner.string: tuner.id for tuner in tuners if tuner.held and tuner.string is not None}
        taken = set(fixed.values())
        for i, (string, x) in enumerate(zip(strings, nut_places(layout.nut, strings), strict=True)):
            ask(partial(_at, 0))
            for k, tuner in enumerate(tuners):
                if tuner.id not in placed or (fixed[string.id] != tuner.id if string.id in fixed else tuner.id in taken):
                    continue
                for way, side in enumerate(_SIDES):
                    run = None if tuner.held and side != tuner.winds else run_to(
                        replace(tuner, winds=side), placed[tuner.id], layout.pattern(tuner.pattern).post, string, layout.nut.at(x),
                        layout.nut.height, retainers)
                    if run is not None:
                        self.runs[i, k, way] = run
        self.cost = np.full((len(strings), len(tuners), len(_SIDES)), NEVER)
        alone = rubs_alone(layout, placed, list(self.runs.values()))
        for ((i, k, way), run), (rub, lacks) in zip(self.runs.items(), alone, strict=True):
            turned = _ODD if _SIDES[way] != tuners[k].winds else 0.0
            self.cost[i, k, way] = run.side_angle ** 2 + turned + _rubbing(rub, _NEAR) + _LACKS * lacks + (_NOTE if run.wide else 0.0)
        self._beside: dict[tuple[int, int, int], tuple[np.ndarray, np.ndarray]] = {}

    def beside(self, i: int, k: int, way: int) -> np.ndarray:
        """What every run of another string to another post costs more beside this one."""
        return self._found(i, k, way)[0]

    def in_order(self, i: int, k: int, way: int) -> np.ndarray:
        """The same where none may cross, not even down in a slot."""
        return self._found(i, k, way)[1]

    def _found(self, i: int, k: int, way: int) -> tuple[np.ndarray, np.ndarray]:
        known = self._beside.get((i, k, way))
        if known is None:
            one, beside, crossing = self.runs[i, k, way], np.zeros(self.cost.shape), np.zeros(self.cost.shape, dtype=bool)
            near: list[tuple[int, int, int]] = []
            for other, two in self.runs.items():
                if other[0] != i and other[1] != k:
                    crossing[other] = cross(one, two)
                    if crossing[other] and cross_on_the_face(one, two):
                        beside[other] = math.inf
                    else:
                        near.append(other)
            for other, rub in zip(near, rubs_between([(one, self.runs[other]) for other in near], self._air), strict=True):
                beside[other] = _rubbing(rub, _NOTE) + (_ODD if crossing[other] else 0.0)
            known = self._beside[i, k, way] = beside, np.where(crossing, math.inf, beside)
        return known


def _rubbing(rub: Rub, near: float) -> float:
    """What a rub costs that costs `near` where nothing touches."""
    less, into = rub
    return _INTO if into else near if less else 0.0
