"""Level bores beside curved outlines, strings over ramps and depths of overlap against a solid-modelling kernel (see more_pairs.py)."""

import math

import numpy as np

from geometry.layout import Loop, Node, Ramp, Slot, StraightSlot, loop_path
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance_depth import escapes
from geometry.solids.walls import Wall, oblong
from geometry.strings.runs import Run
from tests.one_dive import dive
from tests.outside.more_pairs import BORES, NUT_Y, PAST, STRINGS, TIP_Y, VALUES, WIDTH, bores, overlaps, strings

WITHIN = 0.01
"""mm"""
LINES = VALUES.read_text().splitlines()


def test_level_bores_beside_a_curved_outline():
    kernel = np.array([float(line) for line in LINES[:BORES]])
    ours = []
    for (start, axis, length, radius), corners in bores():
        outline = Wall(loop_path(Loop(nodes=tuple(Node(at=c[:2], bulge=c[2]) for c in corners))))
        ours.append(Wall(oblong(start[:2], axis[:2], length, radius)).to(outline)[0])
    far = kernel > 0.01
    assert far.sum() > 60
    assert np.abs(np.array(ours) - kernel)[far].max() < 1e-4
    assert (np.array(ours) - kernel).max() < 1e-5


def _air(x, up, post, deep, diameter, length, depth):
    """What is left between a string and the wood with its ramp: over the slot's end or the ramp, and to the walls beside it."""
    slot = Slot(id="s", shape=StraightSlot(nut_end=(0.0, NUT_Y), tip_end=(0.0, TIP_Y), width=WIDTH),
                ramp=Ramp(length=length, depth=depth))
    way = (post[0] - x, post[1])
    run = Run("1", "t", (x, 0.0), post, math.atan2(*way), -deep, up, diameter)
    found = dive(run, slot)
    return min(found.end().air, found.beside().air)


def test_strings_over_ramps():
    kernel = np.array([float(line) for line in LINES[BORES:BORES + STRINGS]])
    ours = np.array([_air(*case) for case in strings()])
    clear = kernel > 0.01
    assert clear.sum() > 30 and (~clear).sum() > 20
    assert np.abs(ours - kernel)[clear].max() < WITHIN
    assert (ours[~clear] < 0.02).all()


def test_depths_of_overlap_are_what_was_proved():
    """Shifted PAST beyond the recorded depth the two stand exactly PAST apart; SHY short of it no other direction frees them."""
    proved = np.array([[float(c) for c in line.split()] for line in LINES[BORES + STRINGS:]])
    assert np.abs(proved[:, 4] - PAST).max() < WITHIN / 10 and proved[:, 5].max() == 0.0
    one, two = zip(*overlaps(), strict=True)
    depth, n = escapes(Cylinders.made(list(one)), Cylinders.made(list(two)))
    assert len(depth) == len(proved)
    assert np.abs(depth - proved[:, 0]).max() < WITHIN
    # Two ways out may be as cheap; elsewhere it is the recorded one.
    assert (np.abs((n * proved[:, 1:4]).sum(axis=1)) > 0.999).mean() > 0.9
