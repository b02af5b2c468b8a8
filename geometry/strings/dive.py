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
from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from geometry import vectors as v
from geometry.curves import Arc, Line
from geometry.layout.slots import Slot, slot_path
from geometry.solids.ramps import NutEnd, RampCut, nut_end, ramp_cut
from geometry.solids.walls import Wall
from geometry.strings.near_curve import FACE, Pieces, Plane, Stretch, curve_gap
from geometry.strings.runs import Run
from geometry.vectors import Vec2, Vec3

_ACROSS = math.sqrt(0.5)
"""Sine of the angle between a string and a wall above which the wall is an end for it, not a side."""
_ROUND = 0.05
"""Sine of the angle to the slot's axis above which a wall in the slot's nut end belongs to that end's rounding."""


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

    @property
    def slope(self) -> float:
        """Depth gained for each mm in plan."""
        return (self.run.nut_height - self.run.height) / self.run.length

    @property
    def steep(self) -> float:
        """Cosine of the angle between string and face: turns an upright gap into a square one."""
        return 1 / math.hypot(1.0, self.slope)

    def at(self, far: float) -> Vec3:
        """The string's middle at a plan distance from the nut."""
        return (*v.along(self.run.nut, self.way, far), self.slope * far - self.run.nut_height)

    @property
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
        if self.low > 0 and not self.over_an_end:
            return Clearance(math.inf, self.edge)
        found = [self._rim(enough)]
        if self.ramp is not None:
            found += self._ramp(self.ramp)
        return min(found, key=lambda one: one.air)

    def _rim(self, enough: float) -> Clearance:
        """The edge between ramp (or face) and slot."""
        r = self.run.diameter / 2
        if self.low > 0:
            return Clearance(-self.low * self.steep - r, self.edge)
        wall, ends = _cut_up(self.wall), self._kinds[0]
        on_ramp = self._on_ramp(wall.pieces) if self.ramp is not None else np.zeros(len(ends), dtype=bool)
        under = ends & on_ramp
        found = []
        for mask, plane in ((under, self._plane), (ends & ~under, FACE)):
            group = wall.pieces.pick(np.flatnonzero(mask))
            far, _, there = curve_gap(self.edge, self.run.end, group, plane, enough + r)
            found.append(Clearance(far - r, there))
            enough = min(enough, far - r)
        return min([*found, *self._below_the_rim(ends, under, enough)], key=lambda one: one.air)

    def _below_the_rim(self, ends: np.ndarray, under: np.ndarray, enough: float) -> list[Clearance]:
        """Air to the rounding of the nut end where the string runs beside it, below its rim."""
        r = self.run.diameter / 2
        found: list[Clearance] = []
        wall = _cut_up(self.wall)
        level: dict[float, list[int]] = {}
        for i in np.flatnonzero(ends & (np.abs(_crossed(wall.tangents, self.way)) < _ACROSS)).tolist():
            top = min(self.ramp.level(tuple(p)) for p in (wall.pieces.p[i].tolist(), wall.pieces.q[i].tolist())
                      ) if under[i] else 0.0
            begins = (self.run.nut_height + top) / self.slope
            if begins < self.run.length:
                level.setdefault(max(begins, self.enters), []).append(i)
        for begins, group in level.items():
            one, two = self.at(begins), self.run.end
            far, near, there = curve_gap((*one[:2], 0.0), (*two[:2], 0.0), wall.pieces.pick(np.array(group)),
                                         enough=enough + r)
            found.append(Clearance(far - r, (*there[:2], one[2] + self.slope * math.dist(one[:2], near[:2]))))
            enough = min(enough, far - r)
        return found

    def _cut(self) -> float:
        """The least shift, upwards or aside, that takes the string's middle out of a wall, as a negative number."""
        return max(-self.low * self.steep, -self.wall.foot(self.at(self.surfaces)[:2]).distance)

    def _ramp(self, ramp: RampCut) -> list[Clearance]:
        """The line where the ramp leaves the face, and its sides."""
        r = self.run.diameter / 2
        found = []
        begins = self._meets(ramp)
        if begins is not None and 0 <= begins <= self.enters:
            spot = self.at(begins)
            if spot[2] > 0:
                found.append(Clearance(-spot[2] * self.steep - r, spot))
            else:
                line = Stretch(Line(ramp.corner(0.0, 1.0), ramp.corner(0.0, -1.0)), 0.0, 1.0)
                far, _, there = curve_gap(self.run.start, self.edge, Pieces([line]))
                found.append(Clearance(far - r, there))
        first = max(0.0, begins or 0.0)
        sunk = min(max(first, self.surfaces), self.enters)
        sides = [Stretch(Line(ramp.corner(0.0, s), ramp.corner(ramp.length, s)), 0.0, 1.0) for s in (1.0, -1.0)]
        if sunk > first:
            far, _, there = curve_gap(self.at(first), self.at(sunk), Pieces(sides))
            found.append(Clearance(far - r, there))
        if self.surfaces < self.enters:
            for far in (sunk, self.enters):
                p = self.at(far)
                found.append(Clearance(ramp.half - ramp.across(p[:2]) - r, p))
        return found

    def _meets(self, ramp: RampCut) -> float | None:
        """Plan distance at which the string passes over the start of the ramp."""
        speed = v.dot(self.way, ramp.axis)
        return -ramp.along(self.run.nut) / speed if speed > 1e-9 else None

    # ---- the walls beside it -----------------------------------------------
    def beside(self, enough: float = math.inf) -> Clearance:
        """Air to the walls that run along with it, above the face to their edge and below it level; `enough` as in end."""
        r = self.run.diameter / 2
        if self.low > 0 and not self.over_an_end:
            return Clearance(self._cut() - r, self.edge)
        walls = _cut_up(self.wall).pieces.pick(np.flatnonzero(self._kinds[1]))
        down = min(max(self.surfaces, self.enters), self.run.length)
        found = []
        if down > self.enters:
            far, _, there = curve_gap(self.edge, self.at(down), walls, enough=enough + r)
            found.append(Clearance(far - r, there))
        if down < self.run.length:
            one, two = self.at(down), self.run.end
            far, near, there = curve_gap((*one[:2], 0.0), (*two[:2], 0.0), walls, enough=enough + r)
            deep = one[2] + self.slope * math.dist(one[:2], near[:2])
            found.append(Clearance(far - r, (*there[:2], deep)))
        return min(found, key=lambda one: one.air, default=Clearance(math.inf, self.edge))

    # ---- pieces of the wall -------------------------------------------------
    @cached_property
    def _kinds(self) -> tuple[np.ndarray, np.ndarray]:
        """Which pieces of the wall end the slot behind the string's post, and which run along with it, as masks.

        What ends the slot before the post is neither.
        """
        wall = _cut_up(self.wall)
        across = self._across(wall.middles, wall.tangents)
        passed = (wall.middles - np.array(self.run.post)) @ np.array(self.way) < 0
        return across & passed, ~across

    def _across(self, p: np.ndarray, tangents: np.ndarray) -> np.ndarray:
        """Whether pieces of wall at p (n, 2) belong to an end of the slot rather than to its sides."""
        end = self.nut_end
        rounding = (((p - np.array(end.at)) @ np.array(end.axis) <= end.room + 1e-6)
                    & (np.abs(_crossed(tangents, end.axis)) > _ROUND))
        return rounding | (np.abs(_crossed(tangents, self.way)) >= _ACROSS - 1e-12)

    def _ends(self, p: Vec2, tangent: Vec2) -> bool:
        """Whether a piece of wall at p belongs to an end of the slot rather than to its sides."""
        return bool(self._across(np.array([p]), np.array([tangent]))[0])

    def _on_ramp(self, pieces: Pieces) -> np.ndarray:
        """Whether both ends of each piece lie on the ramp."""
        ramp = self.ramp
        made = np.ones(len(pieces), dtype=bool)
        for points in (pieces.p, pieces.q):
            from_start = points - np.array(ramp.start)
            along = from_start @ np.array(ramp.axis)
            made &= ((np.abs(_crossed(from_start, ramp.axis)) <= ramp.half + 1e-9)
                     & (along >= 0) & (along <= ramp.reach + 1e-9))
        return made

    @property
    def _plane(self) -> Plane:
        ramp = self.ramp
        if ramp is None:
            return FACE
        a, b = ramp.axis[0] * ramp.slope, ramp.axis[1] * ramp.slope
        return a, b, -(a * ramp.start[0] + b * ramp.start[1])


@dataclass(frozen=True, slots=True, eq=False)
class _CutUp:
    """A wall in pieces, with the middle and the direction of each: the same for every string."""

    pieces: Pieces
    middles: np.ndarray
    tangents: np.ndarray


@lru_cache(maxsize=64)
def _cut_up(wall: Wall) -> _CutUp:
    found: list[Stretch] = []
    for segment in wall.path.segments:
        pieces = max(4, math.ceil(abs(segment.sweep) / (math.pi / 16))) if isinstance(segment, Arc) else 16
        found += Stretch(segment, 0.0, 1.0).cut(pieces)
    middles = [(s.segment, (s.t0 + s.t1) / 2) for s in found]
    return _CutUp(Pieces(found), np.array([segment.point(t) for segment, t in middles]),
                  np.array([segment.tangent(t) for segment, t in middles]))


def _crossed(many: np.ndarray, one: Vec2) -> np.ndarray:
    """Cross products of many vectors (n, 2) with one."""
    return many[:, 0] * one[1] - many[:, 1] * one[0]


def dive(run: Run, slot: Slot, wall: Wall | None = None) -> Dive | None:
    """The dive of a string into a slot, or None when its post does not lie in that slot or it stays above the face.

    `wall` is the slot's wall where it is at hand. GeometryError when the slot has no inside.
    """
    if run.height >= 0 or run.length == 0:
        return None
    wall = Wall(slot_path(slot)) if wall is None else wall
    back = v.unit(v.sub(run.nut, run.post))
    stretches = wall.stretches(run.post, back)
    if not stretches or stretches[0][0] > 0:
        return None
    return Dive(run, wall, ramp_cut(slot), nut_end(slot), max(0.0, run.length - stretches[0][1]))
