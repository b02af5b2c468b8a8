"""Boxes near each other, against a loop over all pairs."""

import numpy as np
import pytest

from geometry.solids.nearby import boxes_near_some, pairs_near, rows_of


def _boxes(n: int):
    chance = np.random.default_rng(n)
    low = chance.uniform(0, 100, (n, 3)).round(1)
    high = low + chance.uniform(0, 20, (n, 3)).round(1)
    empty = chance.random(n) < 0.2
    low[empty], high[empty] = np.inf, -np.inf
    return rows_of(low, high)


def _near(boxes, reach):
    """Straight from the definition."""
    return [(i, k) for i, (low, high) in enumerate(boxes) for k, (other_low, other_high) in enumerate(boxes)
            if all(max(low[c] - other_high[c], other_low[c] - high[c]) <= reach for c in range(3))]


@pytest.mark.parametrize("n", [0, 1, 9, 40, 200])
@pytest.mark.parametrize("reach", [0.0, 3.5])
def test_every_pair_within_reach_once_and_no_other(n, reach):
    boxes = _boxes(n)
    assert pairs_near(boxes, reach) == [(i, k) for i, k in _near(boxes, reach) if i <= k]


@pytest.mark.parametrize("axis", [0, 1])
def test_boxes_in_a_row_are_held_against_few_whether_they_lie_along_or_across(axis):
    taken = 0

    class Counted(float):
        def __sub__(self, other):
            nonlocal taken
            taken += 1
            return float(self) - float(other)

    many = 100
    corners = [[Counted(10.0 * i if c == axis else 0.0) for c in range(3)] for i in range(many)]
    boxes = [(low, [Counted(one + 4.0) for one in low]) for low in corners]
    assert pairs_near(boxes, 1.0) == [(i, i) for i in range(many)]
    assert many < taken < 20 * many


@pytest.mark.parametrize("n", [3, 30, 200])
@pytest.mark.parametrize("some", [[], [0], [2, 1]])
def test_some_beside_all(n, some):
    boxes = _boxes(n)
    every = _near(boxes, 2.0)
    assert boxes_near_some(some, boxes, 2.0) == [pair for one in some for pair in every if pair[0] == one]


def test_boxes_that_touch_are_near_at_no_reach():
    boxes = [((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)), ((1.0, 0.0, 0.0), (2.0, 1.0, 1.0))]
    assert boxes_near_some([0], boxes, 0.0) == [(0, 0), (0, 1)]
    assert pairs_near(boxes, 0.0) == [(0, 0), (0, 1), (1, 1)]
