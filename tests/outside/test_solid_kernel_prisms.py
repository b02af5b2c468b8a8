"""Distances of drillings to slots and to curved outlines against a solid-modelling kernel (see prism_pairs.py)."""

import math

import numpy as np
import pytest

from geometry.checks.hole_walls import slot_gap
from geometry.checks.scene import Opening
from geometry.checks.side_walls import slot_gap as level_gap
from geometry.layout import Loop, Node, Slot, StraightSlot
from geometry.layout.outline import loop_path
from geometry.layout.slots import slot_path
from geometry.solids.drilling import Drilling
from geometry.solids.walls import Wall
from tests.outside.prism_pairs import EACH, KINDS, THICK, VALUES, pairs

WITHIN = 0.0021
"""mm: the rim of a blind slot's floor is followed in chords of 0.002 mm and may be understated by that much"""


def _ours(kind, cylinder, shape):
    start, axis, length, radius = cylinder
    if kind == "upright, outline":
        wall = Wall(loop_path(Loop(nodes=tuple(Node(at=c[:2], bulge=c[2]) for c in shape))).counter_clockwise())
        return abs(wall.inside(start[:2])) - radius
    nut, tip, width, depth = shape
    slot = Slot(id="s", shape=StraightSlot(nut_end=nut, tip_end=tip, width=width),
                depth=None if depth == THICK else depth)
    wall = Wall(slot_path(slot))
    if kind.startswith("upright"):
        return slot_gap(-wall.inside(start[:2]) - radius, max(0.0, THICK - length - depth))
    drilling = Drilling("d", "d", "d", "post", "bore", 2 * radius, start, axis, length, False, "treble edge", "brad",
                        None, length)
    return level_gap(drilling, Opening("s", slot, wall), max(0.0, start[2] - depth))[0]


@pytest.fixture(scope="module")
def measured():
    every = pairs()
    kernel = np.array([float(line) for line in VALUES.read_text().split()])
    return np.array([kind for kind, *_ in every]), np.array([_ours(*pair) for pair in every]), kernel


@pytest.mark.parametrize("kind", KINDS)
def test_agrees_with_the_kernel(measured, kind):
    kinds, ours, kernel = measured
    ours, kernel = np.maximum(ours[kinds == kind], 0.0), kernel[kinds == kind]
    assert len(kernel) == EACH and (kernel > 0.01).sum() > 60
    assert np.abs(ours - kernel).max() < WITHIN


def test_never_overstates(measured):
    _, ours, kernel = measured
    assert (np.maximum(ours, 0.0) - kernel).max() < 1e-5
    assert math.isfinite(ours.sum())
