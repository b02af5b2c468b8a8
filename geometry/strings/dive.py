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
from functools import cached_property

import numpy as np
from msgspec import Struct

from geometry import vectors as v
from geometry.layout.slots import DrawnSlot, Slot, StraightSlot
from geometry.solids.ramps import NutEnd, RampCut, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.cut_walls import ACROSS, Sides, of_rounding, ramp_lines, rims, sides_of
from geometry.strings.near_curve import FACE, Ask, Pieces, Plane, at_least, first_within
from geometry.strings.plain_slots import surely_clear
from geometry.strings.runs import Run
from geometry.vectors import Vec2, Vec3


class Clearance(Struct, frozen=True):
    """Air between a string's skin and wood (mm), negative by the depth of a cut, and where."""

    air: float
    where: Vec3


class Dive:
    """One string over the edge of the slot that its post lies across."""

    def __init__(self, run: Run, wall: Wall, ramp: RampCut | None, end: NutEnd, enters: float, shape: StraightSlot | DrawnSlot) -> None:
        """`enters`: plan distance from the nut to where the string crosses the slot's edge, mm."""
        self.run, self.wall, self.ramp, self.nut_end, self.enters, self._shape = run, wall, ramp, end, enters, shape
        self.way = v.unit(v.sub(run.post, run.nut))
        """unit direction of the string in plan, from the nut on"""
        self.slope = (run.nut_height - run.height) / run.length
        """depth gained for each mm in plan"""
        self.steep = 1 / math.hypot(1.0, self.slope)
        """cosine of the angle between string and face: turns an upright gap into a square one"""
        self.surfaces = run.nut_height / self.slope if self.slope > 0 else math.inf
        """plan distance at which the string's middle comes down to the level of the face; infinite if it never does"""
        self.edge = self.at(enters)
        """the string's middle where it crosses the slot's edge"""
        self.low = self.edge[2] - (0.0 if ramp is None else ramp.level(self.edge[:2]))
        """how far the string's middle lies below the top of the wood at that edge, mm; negative above it"""

    def with_ramp(self, ramp: RampCut | None) -> Dive:
        """The same string where the slot has another ramp, or none."""
        again = Dive(self.run, self.wall, ramp, self.nut_end, self.enters, self._shape)
        again._sides = self._sides
        return again

    @cached_property
    def _sides(self) -> Sides:
        return sides_of(self.wall, self.nut_end, [self.way], [self.run.post])[0]

    def surely_clear(self, wanted: float) -> bool:
        """Whether it certainly has so much air over the end and beside it, mm; told for a straight slot without a ramp. False says nothing."""
        return (self.ramp is None and isinstance(self._shape, StraightSlot)
                and surely_clear(self.run, self.edge, self.enters, self._shape, wanted))

    def at(self, far: float) -> Vec3:
        """The string's middle at a plan distance from the nut."""
        return (*v.along(self.run.nut, self.way, far), self.slope * far - self.run.nut_height)

    @cached_property
    def over_an_end(self) -> bool:
        """Whether it crosses the slot's edge at its nut end, or where that lies across its way."""
        return self.enters <= 0 or self._ends(self.edge[:2], self.wall.foot(self.edge[:2]).tangent)

    @property
    def into_a_side(self) -> bool:
        """Whether it comes below the top of the wood beside the slot and cuts into the wall there: it goes over no end."""
        return self.low > 0 and not self.over_an_end

    # ---- the end that it dives over ----------------------------------------
    def end(self, enough: float = math.inf) -> Clearance:
        """Air over the nut end of the slot, or over its ramp; infinite where it cuts into a wall beside it instead.

        Air of `enough` mm or more need not be exact, only never too much.
        """
        return self._least(*self.end_parts, enough)

    @cached_property
    def end_parts(self) -> tuple[list[Clearance], list[Ask]]:
        """What is known of the air over the end without measuring, and what has to be measured."""
        known, asks = self._known_of_end
        return known, asks if self.low > 0 else self._rim() + asks

    @cached_property
    def _known_of_end(self) -> tuple[list[Clearance], list[Ask]]:
        """As end_parts, without the rim."""
        if self.into_a_side:
            return [Clearance(math.inf, self.edge)], []
        known, asks = ([], []) if self.ramp is None else self._ramp(self.ramp)
        if self.low > 0:
            known = [Clearance(-self.low * self.steep - self.run.diameter / 2, self.edge), *known]
        return known, asks

    def _least(self, known: list[Clearance], asks: list[Ask], enough: float) -> Clearance:
        r = self.run.diameter / 2
        found = list(known)
        enough = min([enough, *(one.air for one in known)])
        # What may be nearest is measured first; what the chords alone show to be no nearer is not measured at all.
        least = at_least(asks).tolist()
        for i in sorted(range(len(asks)), key=least.__getitem__):
            if least[i] - r >= enough:
                found.append(Clearance(least[i] - r, self.edge))
                break
            far, near, there = asks[i].gap(enough + r)
            if asks[i].flat and far < math.inf:
                there = (*there[:2], self.at(math.dist(self.run.nut, near[:2]))[2])
            found.append(Clearance(far - r, there))
            enough = min(enough, far - r)
        return min(found, key=lambda one: one.air, default=Clearance(math.inf, self.edge))

    def _rim(self) -> list[Ask]:
        """The edge between ramp (or face) and slot, and its rounding where the string runs beside it, below its rim."""
        pieces, ends, askew = self._sides.pieces, self._sides.ends, self._sides.askew
        length, nut_height = self.run.length, self.run.nut_height
        asks: list[Ask] = []
        if self.ramp is None:
            asks.append(Ask(self.edge, self.run.end, pieces, ends))
            begins = nut_height / self.slope if askew.size else math.inf
            return [*asks, self._in_plan(max(begins, self.enters), pieces, askew)] if begins < length else asks
        is_end, is_askew = np.zeros((2, len(pieces)), dtype=bool)
        is_end[ends] = is_askew[askew] = True
        for rim in rims(self.wall, self.ramp):
            ending = is_end[rim.of]
            asks += [Ask(self.edge, self.run.end, rim.pieces, (ending & rim.under).nonzero()[0], self._plane),
                     Ask(self.edge, self.run.end, rim.pieces, (ending & ~rim.under).nonzero()[0])]
            level: dict[float, list[int]] = {}
            for i in is_askew[rim.of].nonzero()[0].tolist():
                begins = (nut_height + rim.tops[i]) / self.slope
                if begins < length:
                    level.setdefault(max(begins, self.enters), []).append(i)
            asks += [self._in_plan(begins, rim.pieces, np.asarray(group)) for begins, group in level.items()]
        return asks

    def _in_plan(self, begins: float, walls: Pieces, index: np.ndarray) -> Ask:
        """The string from a plan distance on, beside upright walls."""
        return Ask((*self.at(begins)[:2], 0.0), (*self.run.post, 0.0), walls, index, flat=True)

    def _cut(self) -> float:
        """The least shift, upwards or aside, that takes the string's middle out of a wall, as a negative number."""
        return max(-self.low * self.steep, -self.wall.foot(self.at(self.surfaces)[:2]).distance)

    def _ramp(self, ramp: RampCut) -> tuple[list[Clearance], list[Ask]]:
        """The line where the ramp leaves the face, and its sides."""
        r = self.run.diameter / 2
        known, asks = [], []
        begins = self._meets(ramp)
        lines = ramp_lines(self.wall, ramp, self._shape.width / 2 if isinstance(self._shape, StraightSlot) else None)
        if begins is not None and 0 <= begins <= self.enters:
            spot = self.at(begins)
            if spot[2] > 0:
                known.append(Clearance(-spot[2] * self.steep - r, spot))
            else:
                asks.append(Ask(self.run.start, self.edge, lines, np.array([0])))
        first = max(0.0, begins or 0.0)
        down = min(max(first, self.surfaces), self.run.length)
        if down > first:
            asks.append(Ask(self.at(first), self.at(down), lines, np.array([1, 2])))
        if down < self.run.length:
            asks.append(Ask((*self.at(down)[:2], 0.0), (*self.run.post, 0.0), lines, np.array([1, 2]), flat=True))
        if self.surfaces < self.enters:
            sunk = min(max(first, self.surfaces), self.enters)
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
        if self.into_a_side:
            return [Clearance(self._cut() - self.run.diameter / 2, self.edge)], []
        walls = self._sides.beside
        down = min(max(self.surfaces, self.enters), self.run.length)
        asks = []
        if down > self.enters:
            asks.append(Ask(self.edge, self.at(down), self._sides.pieces, walls))
        if down < self.run.length:
            asks.append(self._in_plan(down, self._sides.pieces, walls))
        return [], asks

    def _ends(self, p: Vec2, tangent: Vec2) -> bool:
        """Whether a piece of wall at p belongs to an end of the slot rather than to its sides."""
        return of_rounding(self.nut_end, p, tangent) or abs(v.cross(tangent, self.way)) >= ACROSS - 1e-12

    @property
    def _plane(self) -> Plane:
        ramp = self.ramp
        if ramp is None:
            return FACE
        a, b = ramp.axis[0] * ramp.slope, ramp.axis[1] * ramp.slope
        return a, b, -(a * ramp.start[0] + b * ramp.start[1])


def first_lacking(dives: Sequence[Dive], needed: float) -> int | None:
    """Which of some strings has less than `needed` mm of air over the end, one of them if several; None where all have it."""
    for i, one in enumerate(dives):
        if any(known.air < needed for known in one._known_of_end[0]):
            return i
    # Most often a string lacks air because it leaves the ramp sideways: that is told without the rim.
    for asked in (lambda one: one._known_of_end[1], lambda one: [] if one.low > 0 else one._rim()):
        found = [(i, ask) for i, one in enumerate(dives) for ask in asked(one)]
        at = first_within([ask for _, ask in found], [needed + dives[i].run.diameter / 2 for i, _ in found])
        if at is not None:
            return found[at][0]
    return None


def surely(dives: Sequence[Dive], enough: Sequence[float]) -> list[tuple[bool, bool]]:
    """Whether each string certainly has so much air (mm) over the end, and beside it: told for all at once, never wrongly.

    False says nothing: then it has to be measured.
    """
    told = [one.surely_clear(wanted) for one, wanted in zip(dives, enough, strict=True)]
    left = [one for one, sure in zip(dives, told, strict=True) if not sure]
    parts = iter([(one.end_parts, one.beside_parts) for one in left])
    least = iter(at_least([ask for one in left for _, asks in (one.end_parts, one.beside_parts) for ask in asks]).tolist())
    clear = []
    for one, wanted, sure in zip(dives, enough, told, strict=True):
        reach = wanted + one.run.diameter / 2
        clear.append((True, True) if sure else tuple(
            [all([next(least) >= reach for _ in asks]) and all(each.air >= wanted for each in known) for known, asks in next(parts)]))
    return clear


def dives_into(runs: Sequence[Run], slot: Slot, wall: Wall) -> list[Dive | None]:
    """The dive of each of some strings into a slot, None where its post does not lie in that slot or it stays above the face.

    A string under retainers comes as it does from the last of them.
    """
    runs = [run.last_leg for run in runs]
    enters = [_enters(run, wall) for run in runs]
    if not any(far is not None for far in enters):
        return [None] * len(runs)
    end, ramp = nut_end(slot), ramp_cut(slot)
    made = [None if far is None else Dive(run, wall, ramp, end, far, slot.shape) for run, far in zip(runs, enters, strict=True)]
    ours = [one for one in made if one is not None]
    if ramp is not None or not isinstance(slot.shape, StraightSlot):
        # What the wall is to each string is asked in any case, so it is told for all of them at once.
        for one, sides in zip(ours, sides_of(wall, end, [one.way for one in ours], [one.run.post for one in ours]), strict=True):
            one._sides = sides
    return made


def _enters(run: Run, wall: Wall) -> float | None:
    """How far from the nut a string crosses the edge of the slot in which its post lies, mm in plan; None where it does not dive."""
    if run.height >= 0 or run.length == 0:
        return None
    x0, y0, x1, y1 = wall.path.box
    if not (x0 <= run.post[0] <= x1 and y0 <= run.post[1] <= y1):
        return None
    stretches = wall.stretches(run.post, v.unit(v.sub(run.nut, run.post)))
    if not stretches or stretches[0][0] > 0:
        return None
    return max(0.0, run.length - stretches[0][1])
