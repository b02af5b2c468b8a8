"""Boxes near each other: the few by plain numbers, the middling by arrays and the many by a tree, against a loop over all pairs."""

import numpy as np
import pytest

from geometry.solids import nearby


def _boxes(n: int, seed: int):
    chance = np.random.default_rng(seed)
    low = chance.uniform(0, 100, (n, 3)).round(1)
    high = low + chance.uniform(0, 20, (n, 3)).round(1)
    empty = chance.random(n) < 0.2
    low[empty], high[empty] = np.inf, -np.inf
    return low, high


def _near(one, two, reach):
    """Straight from the definition."""
    return [(i, k) for i in range(len(one[0])) for k in range(len(two[0]))
            if all(max(one[0][i][c] - two[1][k][c], two[0][k][c] - one[1][i][c]) <= reach for c in range(3))]


@pytest.mark.parametrize("n", [0, 1, 9, 40, 70])
@pytest.mark.parametrize("reach", [0.0, 3.5])
def test_every_pair_within_reach_and_no_other(n, reach):
    boxes = _boxes(n, n)
    assert list(zip(*map(np.ndarray.tolist, nearby.boxes_near(boxes, boxes, reach)), strict=True)) == _near(boxes, boxes, reach)


@pytest.mark.parametrize("n", [0, 1, 9, 40, 70])
@pytest.mark.parametrize("reach", [0.0, 3.5])
def test_pairs_of_a_group_whether_swept_or_told_by_arrays(n, reach):
    boxes = _boxes(n, n + 100)
    expected = [(i, k) for i, k in _near(boxes, boxes, reach) if i <= k]
    assert nearby.pairs_near(nearby.rows_of(boxes), reach) == nearby.pairs_near(boxes, reach) == expected


@pytest.mark.parametrize("n", [3, 30, 200])
@pytest.mark.parametrize("some", [[], [0], [2, 1], "all"])
def test_some_beside_all(n, some):
    boxes = _boxes(n, 7 * n)
    some = list(range(n)) if some == "all" else some
    expected = [(some[i], k) for i, k in _near((boxes[0][some], boxes[1][some]), boxes, 2.0)]
    assert nearby.boxes_near_some(some, boxes, 2.0) == expected
    kept = nearby.with_boxes(boxes, [], [])
    assert nearby.boxes_near_some(some, kept, 2.0) == expected


@pytest.mark.parametrize("n", [3, 200])
def test_boxes_at_some_places_become_others_and_the_group_before_stays(n):
    boxes, made = _boxes(n, 1), _boxes(2, 2)
    first = nearby.with_boxes(boxes, [], [])
    before = nearby.boxes_near_some([0], first, 9.0)
    second = nearby.with_boxes(first, [2, 0], nearby.rows_of(made))
    low, high = (side.copy() for side in boxes)
    low[[2, 0]], high[[2, 0]] = made
    assert nearby.boxes_near_some([0, 1], second, 9.0) == nearby.boxes_near_some([0, 1], (low, high), 9.0)
    assert nearby.boxes_near_some([0], first, 9.0) == before == nearby.boxes_near_some([0], boxes, 9.0)


def test_boxes_that_touch_are_near_at_no_reach():
    boxes = np.array([[0.0, 0, 0], [1, 0, 0]]), np.array([[1.0, 1, 1], [2, 1, 1]])
    assert nearby.boxes_near_some([0], boxes, 0.0) == [(0, 0), (0, 1)]
