"""Slots, ramps and the outline as they are cut, held against what a layout draws."""

from __future__ import annotations

import math
from collections.abc import Iterable
from operator import attrgetter

import numpy as np
import shapely
from msgspec import Struct

from geometry import vectors as v
from geometry.by_size import of_shape
from geometry.layout.book import Shaped
from geometry.layout.outline import Loop
from geometry.layout.slots import DrawnSlot, Slot, StraightSlot, shape_path
from geometry.solids.per_thread import remembered_per_thread
from geometry.solids.ramps import RampCut, ramp_cut
from geometry.solids.walls import Wall
from geometry.tolerance import SAME_HOLE
from geometry.vectors import Vec2

STEP = 2.0
"""mm from spot to spot along a wall at which two of them are compared, beside their corners"""

Far = tuple[float, Vec2]
"""(mm, never negative, the place)"""
NOWHERE: Far = (0.0, (0.0, 0.0))


class Astray(Struct, frozen=True):
    """How what is cut and what is drawn differ."""

    gone: Far = NOWHERE
    """how far the cut goes beyond the line that is drawn: wood that the drawing wants"""
    left: Far = NOWHERE
    """how far it stays short of that line: wood that is to be cut still"""
    floor: int = 0
    """1 where the drawing has it deeper than it is cut, -1 less deep"""
    ramp: int = 0
    """1 where the ramp can be cut on to what is drawn, -1 where it cannot"""

    @property
    def same(self) -> bool:
        """Whether what is cut is what is drawn."""
        return self == _SAME

    @property
    def can_go_on(self) -> bool:
        """Whether cutting on makes one of the other: no wood is wanted that is gone."""
        return not self.gone[0] and self.floor >= 0 and self.ramp >= 0


_SAME = Astray()


def reach(begins: float, cuts: Iterable[Shaped]) -> float:
    """How far below the face it is cut without a gap from some depth on, mm; infinite where that is open at the back."""
    for cut in sorted(cuts, key=attrgetter("begins")):
        if cut.begins <= begins + SAME_HOLE:
            begins = max(begins, math.inf if cut.ends is None else cut.ends)
    return begins


def astray(was: Shaped, now: Slot | Loop, thickness: float) -> Astray:
    """How what was cut differs from a slot, or from the outline, of wood of that thickness (mm); by no more than SAME_HOLE it does not.

    What only clears the waste stays `light` short of its line: for so much the line may move.
    """
    shape = now.shape if isinstance(now, Slot) else DrawnSlot(loop=now)
    if was.ramp is not None:
        return Astray(ramp=_ramps(ramp_cut(Slot(id="cut", shape=was.shape, ramp=was.ramp)), ramp_cut(now) if isinstance(now, Slot) else None))
    gone = left = NOWHERE
    if was.shape != shape:
        gone, left = _beyond(was.shape, shape)
        if not isinstance(now, Slot):  # of the outline the wood outside goes
            gone, left = left, gone
        gone = gone if gone[0] - was.light > SAME_HOLE else NOWHERE
        left = left if left[0] - was.light > SAME_HOLE else NOWHERE
    return Astray((max(0.0, gone[0] - was.light), gone[1]), left, _floors(was, now, thickness) if isinstance(now, Slot) else 0)


def beyond(one: Wall, other: Wall) -> tuple[Far, Far]:
    """How far the inside of a closed wall goes beyond that of another, and where that is most; then the same of the other one.

    By spots STEP apart at the most: where the two run near each other within a hundredth of a mm, never short by more than STEP / 2.
    """
    spots = [shapely.get_coordinates(shapely.segmentize(wall.line, STEP)) for wall in (one, other)]
    here, there = other.about(spots[0]), one.about(spots[1])
    return _most(spots, -here, there), _most(spots, here, -there)


def _most(spots: list[np.ndarray], *far: np.ndarray) -> Far:
    most, i, k = max((float(values[k]), i, k) for i, values in enumerate(far) for k in (int(np.argmax(values)),))
    return (most, (float(spots[i][k][0]), float(spots[i][k][1]))) if most > 0 else NOWHERE


@remembered_per_thread(64, of_shape)
def _beyond(cut: StraightSlot | DrawnSlot, drawn: StraightSlot | DrawnSlot) -> tuple[Far, Far]:
    return beyond(_wall(cut), _wall(drawn))


@remembered_per_thread(64, of_shape)
def _wall(shape: StraightSlot | DrawnSlot) -> Wall:
    return Wall(shape_path(shape))


def _floors(was: Shaped, now: Slot, thickness: float) -> int:
    floor = None if now.through(thickness) else now.depth
    if floor is not None and (was.ends is None or was.ends > floor + SAME_HOLE):
        return -1
    return int(was.floor and was.ends is not None and (floor is None or floor > was.ends + SAME_HOLE))


def _ramps(was: RampCut, now: RampCut | None) -> int:
    """0 for the same ramp, 1 for one that holds the other, -1 for any other or none."""
    if now is None or v.distance(was.axis, now.axis) * max(was.length, now.length) > SAME_HOLE:
        return -1
    ends = v.distance(v.along(was.start, was.axis, was.length), v.along(now.start, now.axis, now.length))
    more = now.length - was.length, now.depth - was.depth, now.half - was.half
    if ends > SAME_HOLE or min(more) < -SAME_HOLE:
        return -1
    return int(max(more) > SAME_HOLE)
