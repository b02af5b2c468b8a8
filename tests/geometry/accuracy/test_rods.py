"""Cylinders over many trials against the exact distances of geometry.solids."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from geometry.accuracy.rods import AGREE, Rod, gap
from geometry.solids.distance import gaps


def rod(random: np.random.Generator, count: int, kind: str) -> Rod:
    """Random cylinders; `upright` and `level` ones lean by a degree or so, as drilled ones do."""
    axis = random.standard_normal((3, count))
    if kind == "upright":
        axis = np.array([[0.0], [0.0], [1.0]]) + 0.02 * axis
    elif kind == "level":
        axis = np.array([[0.97], [0.24], [0.0]]) + 0.02 * axis
    axis /= np.linalg.norm(axis, axis=0)
    start = random.uniform(-9.0, 9.0, (3, count))
    return Rod(tuple(start), tuple(axis), random.uniform(3.0, 30.0, count), float(random.uniform(0.7, 5.5)))


@pytest.mark.parametrize(("one", "two"), [("upright", "upright"), ("upright", "level"), ("level", "level"),
                                          ("any", "any")])
def test_wood_between_cylinders_is_that_of_the_exact_routine(one: str, two: str) -> None:
    for seed in range(6):
        random = np.random.default_rng(seed)
        a, b = rod(random, 200, one), rod(random, 200, two)
        every = np.arange(200)
        exact, found = gaps(a.picked(every), b.picked(every)).distance, gap(a, b)
        apart = exact > 1e-3
        assert np.abs(found[apart] - exact[apart]).max(initial=0) <= AGREE
        assert (found[exact < -1e-3] < 0).all()
        # An overlap may look deeper than its least escape, never shallower.
        assert (found[exact < 0] <= exact[exact < 0] + 2e-3).all()


def test_gaps_by_hand() -> None:
    def one(start, axis, length, radius):
        return Rod(tuple(np.array([c]) for c in start), tuple(np.array([c]) for c in axis), np.array([length]), radius)

    upright = one((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), 16.0, 3.0)
    assert gap(upright, one((10.0, 0.0, 0.0), (0.0, 0.0, 1.0), 16.0, 2.0))[0] == pytest.approx(5.0)
    # A level bore passes 8 mm aside at mid height.
    assert gap(upright, one((8.0, -20.0, 8.0), (0.0, 1.0, 0.0), 40.0, 3.2))[0] == pytest.approx(1.8)
    # It ends 2 mm before the flank.
    assert gap(upright, one((20.0, 0.0, 8.0), (-1.0, 0.0, 0.0), 15.0, 1.0))[0] == pytest.approx(2.0, abs=AGREE)
    # It runs right through: 3 + 1 mm to part them sideways.
    assert gap(upright, one((20.0, 0.0, 8.0), (-1.0, 0.0, 0.0), 40.0, 1.0))[0] == pytest.approx(-4.0, abs=1e-6)
    # One above the other on one axis.
    assert gap(upright, one((0.0, 0.0, 20.0), (0.0, 0.0, 1.0), 5.0, 1.0))[0] == pytest.approx(4.0)
    # Inside each other: the shallower one has 16 mm to go down, or 5 aside.
    assert gap(upright, one((1.0, 0.0, 2.0), (0.0, 0.0, 1.0), 30.0, 3.0))[0] == pytest.approx(-5.0)


@settings(max_examples=60)
@given(st.integers(0, 10_000))
def test_no_point_strays_farther_than_is_said(seed: int) -> None:
    random = np.random.default_rng(seed)
    meant, built = rod(random, 1, "level"), rod(random, 1, "level")
    built = Rod(tuple(m + 0.3 * d for m, d in zip(meant.start, built.start, strict=True)), built.axis,
                meant.length + random.uniform(-0.5, 0.5), meant.radius)
    other = rod(random, 1, "any")
    strayed = built.strayed(meant)[0]
    before, after = max(gap(meant, other)[0], 0.0), max(gap(built, other)[0], 0.0)
    assert abs(before - after) <= strayed + 2 * AGREE


def test_what_does_not_move_does_not_stray() -> None:
    one = rod(np.random.default_rng(1), 5, "upright")
    assert one.strayed(one).max() == 0
    shifted = Rod((one.start[0] + 0.3, one.start[1] - 0.4, one.start[2]), one.axis, one.length, one.radius)
    assert shifted.strayed(one) == pytest.approx(np.full(5, math.hypot(0.3, 0.4)))
