"""Strings over ramps, as wide as their slots or narrower, against points strewn over the wood that slot and ramp leave standing.

The wood is made anew here: the face is z = 0, less what lies in the slot, and lower by the ramp's slope between the ramp's
sides, which go on past the nut end to where the slot is as wide as the ramp. Each point of wood has more wood straight below it.
"""

import math
from itertools import product

import numpy as np
import pytest

from geometry.layout import DrawnSlot, Loop, Node, Ramp, Slot, StraightSlot
from geometry.strings.runs import Run
from tests.one_dive import dive

NUT_END, HALF, THICK = 30.0, 8.0, 0.5
LENGTH, DEPTH = 6.0, 1.8


def wood(half):
    """(n, 3): the rim of the slot and the edges of a ramp of that half width; a slot along y with its nut end at y = 30."""
    angle = np.linspace(math.pi, 2 * math.pi, 6001)
    x, y = HALF * np.cos(angle), NUT_END + HALF + HALF * np.sin(angle)
    rim = np.column_stack([x, y, np.where(np.abs(x) <= half, (y - NUT_END + LENGTH) * DEPTH / LENGTH, 0.0)])
    along = np.linspace(NUT_END + HALF, 120.0, 8001)
    walls = [np.column_stack([np.full_like(along, side), along, np.zeros_like(along)]) for side in (-HALF, HALF)]
    along = np.linspace(NUT_END - LENGTH, NUT_END + HALF - math.sqrt(HALF ** 2 - half ** 2), 4001)
    sides = [np.column_stack([np.full_like(along, side), along, np.zeros_like(along)]) for side in (-half, half)]
    across = np.linspace(-half, half, 2001)
    start = np.column_stack([across, np.full_like(across, NUT_END - LENGTH), np.zeros_like(across)])
    return np.concatenate([rim, *walls, *sides, start])


def air(run, points):
    """From the string's skin to the nearest of some points or to the wood straight below one, mm."""
    a, b = np.array(run.start), np.array(run.end)
    way = b - a
    share = np.clip((points - a) @ way / (way @ way), 0, 1)
    straight = np.linalg.norm(a + share[:, None] * way - points, axis=1).min()
    share = np.clip((points[:, :2] - a[:2]) @ way[:2] / (way[:2] @ way[:2]), 0, 1)
    at = a + share[:, None] * way
    beside = np.hypot(*(at - points)[:, :2].T)[at[:, 2] >= points[:, 2]]
    return min([straight, *([beside.min()] if beside.size else [])]) - run.diameter / 2


def compared(found, sampled):
    """Whether a string stays above the face's wood, so that its air (mm) can be compared; then what is told is what was sampled.

    The least distance to points of the wood is too much by what lies between two of them, never too little.
    """
    if found.low > 0 or sampled < 0:
        return False
    told = min(found.end().air, found.beside().air)
    assert told <= sampled + 1e-9
    assert told == pytest.approx(sampled, abs=0.01)
    return True


SLOTS = {"straight": StraightSlot(nut_end=(0.0, NUT_END + HALF), tip_end=(0.0, 120.0), width=2 * HALF),
         "drawn": DrawnSlot(loop=Loop(nodes=(Node(at=(-HALF, NUT_END + HALF), bulge=1.0), Node(at=(HALF, NUT_END + HALF)),
                                             Node(at=(HALF, 120.0), bulge=1.0), Node(at=(-HALF, 120.0)))))}


def flat_end(half, askew):
    """As `wood`, of a slot with a straight nut end across its axis, `askew` mm farther from the nut on its treble side."""
    x = np.linspace(-HALF, HALF, 16001)
    y = NUT_END + askew * (x + HALF) / (2 * HALF)
    rim = np.column_stack([x, y, np.where(np.abs(x) <= half, (y - NUT_END + LENGTH) * DEPTH / LENGTH, 0.0)])
    along = np.linspace(NUT_END - LENGTH, NUT_END + askew, 4001)
    sides = [np.column_stack([np.full_like(along, side), along, np.zeros_like(along)])[along <= NUT_END + askew * (side + HALF) / (2 * HALF)]
             for side in (-half, half)]
    across = np.linspace(-half, half, 4001)
    start = np.column_stack([across, np.full_like(across, NUT_END - LENGTH), np.zeros_like(across)])
    along = np.linspace(NUT_END + askew, 120.0, 8001)
    walls = [np.column_stack([np.full_like(along, side), along, np.zeros_like(along)]) for side in (-HALF, HALF)]
    return np.concatenate([rim, *sides, start, *walls])


@pytest.mark.parametrize("askew", [0.0, 2.5])
@pytest.mark.parametrize("half", [HALF, 7.0, 4.0])
def test_the_air_of_strings_over_a_ramp_into_a_slot_with_a_straight_nut_end(half, askew):
    """Between the sides of a ramp narrower than the slot the end lies lower, beside them it does not: one line is both."""
    ends = Loop(nodes=(Node(at=(-HALF, NUT_END)), Node(at=(HALF, NUT_END + askew)), Node(at=(HALF, 120.0)), Node(at=(-HALF, 120.0))))
    slot = Slot(id="slot", shape=DrawnSlot(loop=ends), ramp=Ramp(length=LENGTH, depth=DEPTH, width=None if half == HALF else 2 * half))
    points, seen = flat_end(half, askew), 0
    for nut, post, up, low in product((-5.0, -2.0, 0.0, 1.5, 4.5), (-6.0, -1.0, 2.5), (3.0, 4.5), (1.5, 6.0)):
        run = Run("1", "a", (nut, 0.0), (post, 60.0), 0.0, -low, up, THICK)
        found = dive(run, slot)
        sampled = air(run, points)
        if compared(found, sampled):
            seen += 1
    assert seen >= 20


@pytest.mark.parametrize("mirrored", [1, -1])
@pytest.mark.parametrize("half", [HALF, 7.2])
@pytest.mark.parametrize("shape", SLOTS)
def test_the_air_of_strings_that_come_near_the_side_of_a_ramp_beyond_the_nut_end(shape, half, mirrored):
    slot = Slot(id="slot", shape=SLOTS[shape], ramp=Ramp(length=LENGTH, depth=DEPTH, width=None if half == HALF else 2 * half))
    points, seen, lean = wood(half), 0, 0
    for nut, post, up, low in product((3.0, 5.0, 6.2), (6.2, 6.9, 7.4), (5.0, 6.5), (1.5, 4.0)):
        run = Run("1", "a", (mirrored * nut, 0.0), (mirrored * post, 48.0), 0.0, -low, up, THICK)
        found = dive(run, slot)
        sampled = air(run, points)
        if compared(found, sampled):
            seen += 1
            lean += post > nut
    assert seen >= 15 and lean >= 10


@pytest.mark.parametrize("turn", [-0.7, 0.4])
@pytest.mark.parametrize("half", [HALF, 7.2, 4.0])
def test_a_slot_that_leans_leaves_its_strings_the_air_of_one_that_stands(half, turn):
    """Slot, ramp and strings turned on the face by `turn` rad: the distances to the points of wood are those from before."""
    def turned(x, y):
        return x * math.cos(turn) - y * math.sin(turn), x * math.sin(turn) + y * math.cos(turn)

    slot = Slot(id="slot", shape=StraightSlot(nut_end=turned(0.0, NUT_END + HALF), tip_end=turned(0.0, 120.0), width=2 * HALF),
                ramp=Ramp(length=LENGTH, depth=DEPTH, width=None if half == HALF else 2 * half))
    points, seen = wood(half), 0
    for nut, post, up, low in product((-6.0, -2.0, 3.0, 5.0), (-6.5, 1.0, 6.9), (3.0, 6.5), (1.5, 4.0)):
        found = dive(Run("1", "a", turned(nut, 0.0), turned(post, 48.0), 0.0, -low, up, THICK), slot)
        sampled = air(Run("1", "a", (nut, 0.0), (post, 48.0), 0.0, -low, up, THICK), points)
        if compared(found, sampled):
            seen += 1
    assert seen >= 15
