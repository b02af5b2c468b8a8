"""A string that goes down into a slot: how much air it has to the wood on its way.

The wood is what the slot and its ramp leave standing. A string can come near it in
two ways: at the end that it dives over (the nut end, or the ramp cut into
it), and beside it (the slot's long walls, the sides of the ramp). Clearances
are measured in space from the string's skin, on the exact curves, and are never overstated
by more than 1e-9 mm; a string that cuts into the wood has a negative one,
the least shift down or aside that frees it.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from geometry import vectors as v
from geometry.layout.slots import Slot, slot_path
from geometry.solids.ramps import NutEnd, RampCut, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.cut_walls import crossed, cut_up, of_rounding, on_ramp, ramp_lines, rim_levels, rounding
from geometry.strings.near_curve import FACE, Ask, Plane, at_least
from geometry.strings.runs import Run
from geometry.vectors import Vec2, Vec3

_ACROSS = math.sqrt(0.5)
"""Sine of the angle between a string and a wall above which the wall is an end for it, not a side."""


@dataclass(frozen=True, slots=True)
class Clearance:
    """Air between a string's skin and wood (mm), negative by the depth of a cut, and where."""

    air: float
    where: Vec3


@dataclass(frozen=True)
class Dive:
    """One string over the edge of the slot that its post lies across."""

    run: Run
    wall: Wall
    ramp: RampCut | None
    nut_end: NutEnd
    enters: float
    """plan distance from the nut to where the string crosses the slot's edge, mm"""

    @cached_property
    def way(self) -> Vec2:
        """Unit direction of the string in plan, from the nut on."""
        return v.unit(v.sub(self.run.post, self.run.nut))

    @cached_property
    def slope(self) -> float:
        """Depth gained for each mm in plan."""
        return (self.run.nut_height - self.run.height) / self.run.length

    @cached_property
    def steep(self) -> float:
        """Cosine of the angle between string and face: turns an upright gap into a square one."""
        return 1 / math.hypot(1.0, self.slope)

    def at(self, far: float) -> Vec3:
        """The string's middle at a plan distance from the nut."""
        return (*v.along(self.run.nut, self.way, far), self.slope * far - self.run.nut_height)

    @cached_property
    def surfaces(self) -> float:
        """Plan distance at which the string's middle comes down to the level of the face; infinite if it never does."""
        return self.run.nut_height / self.slope if self.slope > 0 else math.inf

    @cached_property
    def edge(self) -> Vec3:
        """The string's middle where it crosses the slot's edge."""
        return self.at(self.enters)

    @cached_property
    def low(self) -> float:
        """How far the string's middle lies below the top of the wood at that edge, mm; negative above it."""
        top = 0.0 if self.ramp is None else self.ramp.level(self.edge[:2])
        return self.edge[2] - top

    @cached_property
    def over_an_end(self) -> bool:
        """Whether it crosses the slot's edge at its nut end, or where that lies across its way."""
        return self.enters <= 0 or self._ends(self.edge[:2], self.wall.foot(self.edge[:2]).tangent)

    # ---- the end that it dives over ----------------------------------------
    def end(self, enough: float = math.inf) -> Clearance:
        """Air over the nut end of the slot, or over its ramp; infinite where it cuts into a wall beside it instead.

        Air of `enough` mm or more need not be exact, only never too much.
        """
        return self._least(*self.end_parts, enough)

    @cached_property
    def end_parts(self) -> tuple[list[Clearance], list[Ask]]:
        """What is known of the air over the end without measuring, and what has to be measured."""
        if self.low > 0 and not self.over_an_end:
            return [Clearance(math.inf, self.edge)], []
        known: list[Clearance] = []
        asks: list[Ask] = []
        if self.low > 0:
            known.append(Clearance(-self.low * self.steep - self.run.diameter / 2, self.edge))
        else:
            asks += self._rim()
        if self.ramp is not None:
            on_ramp, off_ramp = self._ramp(self.ramp)
            known, asks = known + on_ramp, asks + off_ramp
        return known, asks

    def _least(self, known: list[Clearance], asks: list[Ask], enough: float) -> Clearance:
        r = self.run.diameter / 2
        found = list(known)
        enough = min([enough, *(one.air for one in known)])
        # What may be nearest is measured first; what the chords alone show to be no nearer is not measured at all.
        bounds = at_least(asks).tolist()
        for i in sorted(range(len(asks)), key=bounds.__getitem__):
            if bounds[i] - r >= enough:
                found.append(Clearance(bounds[i] - r, self.edge))
                break
            far, near, there = asks[i].gap(enough + r)
            if asks[i].flat and far < math.inf:
                there = (*there[:2], self.at(math.dist(self.run.nut, near[:2]))[2])
            found.append(Clearance(far - r, there))
            enough = min(enough, far - r)
        return min(found, key=lambda one: one.air, default=Clearance(math.inf, self.edge))

    def _rim(self) -> list[Ask]:
        """The edge between ramp (or face) and slot, and its rounding where the string runs beside it, below its rim."""
        wall, ends = cut_up(self.wall), self._kinds[0]
        under = ends & on_ramp(self.wall, self.ramp) if self.ramp is not None else np.zeros(len(ends), dtype=bool)
        asks = [Ask(self.edge, self.run.end, wall.pieces, mask.nonzero()[0], plane)
                for mask, plane in ((under, self._plane), (ends & ~under, FACE))]
        level: dict[float, list[int]] = {}
        beside = (ends & (self._across < _ACROSS)).nonzero()[0]
        if not beside.size:
            return asks
        slope, length, tops = self.slope, self.run.length, () if self.ramp is None else rim_levels(self.wall, self.ramp)
        for i, on in zip(beside.tolist(), under[beside].tolist(), strict=True):
            begins = (self.run.nut_height + (tops[i] if on else 0.0)) / slope
            if begins < length:
                level.setdefault(max(begins, self.enters), []).append(i)
        return asks + [self._in_plan(begins, np.array(group)) for begins, group in level.items()]

    def _in_plan(self, begins: float, index: np.ndarray) -> Ask:
        """The string from a plan distance on, beside upright walls."""
        return Ask((*self.at(begins)[:2], 0.0), (*self.run.post, 0.0), cut_up(self.wall).pieces, index, flat=True)

    def _cut(self) -> float:
        """The least shift, upwards or aside, that takes the string's middle out of a wall, as a negative number."""
        return max(-self.low * self.steep, -self.wall.foot(self.at(self.surfaces)[:2]).distance)

    def _ramp(self, ramp: RampCut) -> tuple[list[Clearance], list[Ask]]:
        """The line where the ramp leaves the face, and its sides."""
        r = self.run.diameter / 2
        known, asks = [], []
        begins = self._meets(ramp)
        lines = ramp_lines(ramp)
        if begins is not None and 0 <= begins <= self.enters:
            spot = self.at(begins)
            if spot[2] > 0:
                known.append(Clearance(-spot[2] * self.steep - r, spot))
            else:
                asks.append(Ask(self.run.start, self.edge, lines, np.array([0])))
        first = max(0.0, begins or 0.0)
        sunk = min(max(first, self.surfaces), self.enters)
        if sunk > first:
            asks.append(Ask(self.at(first), self.at(sunk), lines, np.array([1, 2])))
        if self.surfaces < self.enters:
            for far in (sunk, self.enters):
                p = self.at(far)
                known.append(Clearance(ramp.half - ramp.across(p[:2]) - r, p))
        return known, asks

    def _meets(self, ramp: RampCut) -> float | None:
        """Plan distance at which the string passes over the start of the ramp."""
        speed = v.dot(self.way, ramp.axis)
        return -ramp.along(self.run.nut) / speed if speed > 1e-9 else None

    # ---- the walls beside it -----------------------------------------------
    def beside(self, enough: float = math.inf) -> Clearance:
        """Air to the walls that run along with it, above the face to their edge and below it level; `enough` as in end."""
        return self._least(*self.beside_parts, enough)

    @cached_property
    def beside_parts(self) -> tuple[list[Clearance], list[Ask]]:
        """As end_parts, of the air beside it."""
        if self.low > 0 and not self.over_an_end:
            return [Clearance(self._cut() - self.run.diameter / 2, self.edge)], []
        walls = self._kinds[1].nonzero()[0]
        down = min(max(self.surfaces, self.enters), self.run.length)
        asks = []
        if down > self.enters:
            asks.append(Ask(self.edge, self.at(down), cut_up(self.wall).pieces, walls))
        if down < self.run.length:
            asks.append(self._in_plan(down, walls))
        return [], asks

    # ---- pieces of the wall -------------------------------------------------
    @cached_property
    def _kinds(self) -> tuple[np.ndarray, np.ndarray]:
        """Which pieces of the wall end the slot behind the string's post, and which run along with it, as masks.

        What ends the slot before the post is neither.
        """
        wall, way = cut_up(self.wall), self.way
        across = rounding(self.wall, self.nut_end) | (self._across >= _ACROSS - 1e-12)
        passed = (wall.middles[:, 0] - self.run.post[0]) * way[0] + (wall.middles[:, 1] - self.run.post[1]) * way[1] < 0
        return across & passed, ~across

    @cached_property
    def _across(self) -> np.ndarray:
        """Sine of the angle between the string and each piece of the wall."""
        return np.abs(crossed(cut_up(self.wall).tangents, self.way))

    def _ends(self, p: Vec2, tangent: Vec2) -> bool:
        """Whether a piece of wall at p belongs to an end of the slot rather than to its sides."""
        return of_rounding(self.nut_end, p, tangent) or abs(v.cross(tangent, self.way)) >= _ACROSS - 1e-12

    @property
    def _plane(self) -> Plane:
        ramp = self.ramp
        if ramp is None:
            return FACE
        a, b = ramp.axis[0] * ramp.slope, ramp.axis[1] * ramp.slope
        return a, b, -(a * ramp.start[0] + b * ramp.start[1])


def surely(dives: Sequence[Dive], enough: Sequence[float]) -> list[tuple[bool, bool]]:
    """Whether each string certainly has so much air (mm) over the end, and beside it: told for all at once, never wrongly.

    False says nothing: then it has to be measured.
    """
    parts = [part for one in dives for part in (one.end_parts, one.beside_parts)]
    least = iter(at_least([ask for _, asks in parts for ask in asks]).tolist())
    clear = []
    for i, (known, asks) in enumerate(parts):
        wanted = enough[i // 2]
        bounds = [next(least) - dives[i // 2].run.diameter / 2 for _ in asks]
        clear.append(all(one.air >= wanted for one in known) and all(bound >= wanted for bound in bounds))
    return list(zip(clear[::2], clear[1::2], strict=True))


def dive(run: Run, slot: Slot, wall: Wall | None = None) -> Dive | None:
    """The dive of a string into a slot, or None when its post does not lie in that slot or it stays above the face.

    `wall` is the slot's wall where it is at hand. GeometryError when the slot has no inside.
    """
    if run.height >= 0 or run.length == 0:
        return None
    wall = Wall(slot_path(slot)) if wall is None else wall
    x0, y0, x1, y1 = wall.path.box
    if not (x0 <= run.post[0] <= x1 and y0 <= run.post[1] <= y1):
        return None
    back = v.unit(v.sub(run.nut, run.post))
    stretches = wall.stretches(run.post, back)
    if not stretches or stretches[0][0] > 0:
        return None
    return Dive(run, wall, ramp_cut(slot), nut_end(slot), max(0.0, run.length - stretches[0][1]))
