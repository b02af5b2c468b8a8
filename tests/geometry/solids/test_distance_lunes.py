"""What is ruled out without a search is never where the least shift is."""

import math

import numpy as np
import pytest

from geometry.solids.cylinders import Cylinders, norms
from geometry.solids.distance_depth import escapes
from geometry.solids.distance_lunes import CREASES, at_least, creases
from geometry.solids.distance_proof import AGREE, Pairs

_TURNS = np.linspace(0.0, math.pi / 2, 181)[:, None, None]


def _pairs(count, c):
    """Pairs that overlap or nearly do, in their own frames: w, c, s, then length and radius of both."""
    random = np.random.RandomState(count)
    length_a, length_b = random.uniform(0.5, 20, (2, count))
    radius_a, radius_b = random.uniform(0.3, 8, (2, count))
    c = np.full(count, c) if c is not None else random.uniform(0, 1, count)
    w = np.stack([random.uniform(-6, 12, count), random.uniform(-12, 6, count), -random.uniform(0, 6, count)])
    return Pairs(np.array([*w, c, np.sqrt(1 - c * c), length_a, radius_a, length_b, radius_b]))


@pytest.mark.parametrize("c", [0.0, 0.05, 0.7, 0.999, None])
def test_bounds_hold_on_the_way_from_the_plane_of_both_axes(c):
    pairs = _pairs(300, c)
    ring = pairs.ring()
    around = pairs.shift(ring)
    ways = ring[None] * np.cos(_TURNS)[:, None]
    ways[:, 2] += np.sin(_TURNS)
    found = np.array([pairs.shift(one) for one in ways]).min(axis=0)
    assert (at_least(pairs, around) <= found + 1e-9).all()
    least, best = creases(pairs, ring, around)
    assert (least <= found[CREASES] + 1e-9).all()
    assert np.abs(np.vecdot(best, best, axis=0) - 1).max() < 1e-12
    if c == 0.0:
        # There they are the best themselves, but for the marks.
        shift = np.minimum(pairs.shift(best), np.minimum(pairs.shift(ring[:, CREASES]), pairs.radius_a + pairs.radius_b + pairs.wz))
        assert (shift <= found[CREASES] + 1e-9).all()


@pytest.mark.parametrize("lean", [0.0, 1e-10, 1e-8, 1e-4])
def test_square_axes_against_many_directions(lean):
    """Against 30,000 directions spread over the sphere, whatever the two do to each other."""
    random, many = np.random.RandomState(3), 30000
    count = 150
    up = np.tile((math.sin(lean), 0.0, math.cos(lean)), (count, 1))
    turn = random.uniform(0, 2 * math.pi, count)
    out = np.stack([np.cos(turn), np.sin(turn), np.zeros(count)], axis=1)
    a = Cylinders(random.uniform(-4, 4, (count, 3)), up, random.uniform(0.5, 18, count), random.uniform(0.4, 8, count))
    b = Cylinders(random.uniform(-4, 4, (count, 3)) - out * 3, out, random.uniform(0.5, 18, count), random.uniform(0.4, 8, count))
    depth, way = escapes(a, b)
    assert np.abs(norms(way) - 1).max() < 1e-12
    k = np.arange(many) + 0.5
    z, about = 1 - 2 * k / many, k * math.pi * (3 - math.sqrt(5))
    ball = np.stack([np.sqrt(1 - z * z) * np.cos(about), np.sqrt(1 - z * z) * np.sin(about), z], axis=1)
    overlapping = np.flatnonzero(depth > 0)
    assert len(overlapping) > 80
    for i in overlapping:
        one, two = (solid.pick(np.full(many, i)) for solid in (a, b))
        assert depth[i] <= (one.support(-ball) + two.support(ball)).min() + AGREE
