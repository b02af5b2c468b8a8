"""Gaps of flat-ended cylinders: values by hand, proofs that need no other program, and depth of overlap."""

import math

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from geometry.solids.cylinders import Cylinders, norms
from geometry.solids.distance import clear, gaps
from geometry.solids.distance_depth import escapes


def gap(a, b):
    return float(gaps(a, b).distance[0])


UP, OUT = (0.0, 0.0, 1.0), (1.0, 0.0, 0.0)


def one(start, axis, length, radius):
    return Cylinders.made([(start, axis, length, radius)])


POST = one((0, 0, 0), UP, 16, 3)
BY_HAND = [
    ("side by side", one((10, 0, 0), UP, 16, 2), 5.0),
    ("touching", one((5, 0, 0), UP, 16, 2), 0.0),
    ("overlapping side by side", one((4, 0, 0), UP, 16, 2), -1.0),
    ("above, apart along the axis", one((0, 0, 20), UP, 5, 2), 4.0),
    ("above and aside: rim to rim", one((8, 0, 19), UP, 5, 2), math.hypot(3, 3)),
    ("upside down", one((10, 0, 16), (0.0, 0.0, -1.0), 16, 2), 5.0),
    ("crossing square, axes apart", one((-20, 9, 8), OUT, 40, 2), 4.0),
    ("end on: flat end to lateral", one((7, 0, 8), OUT, 10, 2), 4.0),
    ("level, over the top: lateral to flat end", one((-20, 0, 20), OUT, 40, 2), 2.0),
    ("level, over the top's rim, ending before it", one((3 + 3, 0, 20), OUT, 10, 2), math.hypot(3, 2)),
    ("inside: out through the end is nearest", one((0, 0, 14), UP, 1, 1), -2.0),
    ("a stepped bore shares its axis", one((0, 0, 0), UP, 8, 5), -8.0),
]


@pytest.mark.parametrize(("what", "other", "expected"), BY_HAND, ids=[row[0] for row in BY_HAND])
def test_by_hand(what, other, expected):
    assert gap(POST, other) == pytest.approx(expected, abs=1e-6)
    assert gap(other, POST) == pytest.approx(expected, abs=1e-6)


def test_the_capsule_about_an_axis_is_not_the_cylinder():
    # Flat ends that face each other 4 apart, axes 3 aside: a capsule would say hypot(4, 3) less both radii.
    assert gap(one((0, 0, 0), UP, 10, 3), one((3, 0, 14), UP, 10, 3)) == pytest.approx(4.0, abs=1e-9)


def test_far_pairs_are_left_at_their_lower_bound():
    found = gaps(POST, one((100, 0, 20), (0.6, 0.8, 0.0), 10, 2), beyond=5.0)
    assert not found.exact[0]
    assert 5.0 < found.distance[0] <= gap(POST, one((100, 0, 20), (0.6, 0.8, 0.0), 10, 2))


_number = st.floats(-12, 12)
_axis = st.one_of(
    st.sampled_from([UP, OUT, (0.0, 1.0, 0.0), (0.0, 0.0, -1.0)]),
    st.tuples(_number, _number, _number).filter(lambda v: math.hypot(*v) > 0.1).map(
        lambda v: tuple(c / math.hypot(*v) for c in v)))
_cylinder = st.tuples(st.tuples(_number, _number, _number), _axis, st.floats(0.5, 30), st.floats(0.3, 8))


def _nearly_square(a, b):
    lean = abs(float(np.dot(a.axis[0], b.axis[0])))
    return lean < 0.15 or lean > 0.99


@given(_cylinder, _cylinder)
@example(((0.0, -11.375, 0.0), UP, 1.0, 7.75), ((0.0, 4.25, 0.0), (8 / 9, 1 / 9, 4 / 9), 1.0, 7.9375))  # 0.02 mm apart
def test_every_gap_carries_its_proof(first, second):
    """Two points of the solids that far apart, and a slab between them as thick: no other program is needed."""
    a, b = Cylinders.made([first]), Cylinders.made([second])
    found = gaps(a, b)
    distance = float(found.distance[0])
    p, q = found.on_a, found.on_b
    if distance > 1e-6:
        assert norms(a.nearest(p) - p)[0] < 1e-9 and norms(b.nearest(q) - q)[0] < 1e-9
        far = norms(q - p)[0]
        n = (q - p) / norms(q - p)[:, None]
        slab = -(a.support(n) + b.support(-n))[0]
        assert slab - 1e-6 <= distance <= far + 1e-9
        # Where a flat end meets a flank at a hair's breadth from square, the points are found less sharply.
        # Points that are a hair aside turn the line between them the more, the nearer they are to each other.
        sharp = far - slab < 1e-6 + (2e-4 / far) ** 2 and far - distance < (1e-6 if far > 1e-3 else 1e-3)
        assert sharp or _nearly_square(a, b) and far - distance < 0.01
    elif distance < -1e-6:
        depth, way = escapes(a, b)
        assert depth[0] == pytest.approx(-distance, abs=1e-6)
        # The shift parts them, and one that is 0.01 mm shorter in the best direction would not.
        assert 0.0098 <= gaps(a.moved(way * (depth + 0.01)[:, None]), b).distance[0] <= 0.02


@given(_cylinder, _cylinder)
def test_the_same_either_way_round(first, second):
    a, b = Cylinders.made([first]), Cylinders.made([second])
    assert gap(a, b) == pytest.approx(gap(b, a), abs=2e-3 if gap(a, b) < 1e-3 else 1e-6)


@given(_cylinder, _cylinder, st.floats(0, 12))
def test_the_decision_agrees_with_the_gap(first, second, needed):
    a, b = Cylinders.made([first]), Cylinders.made([second])
    distance = gap(a, b)
    if abs(distance - needed) > 1e-5 and abs(distance) > 1e-3:
        assert bool(clear(a, b, np.array([needed]))[0]) == (distance >= needed)


def test_depth_is_the_least_over_all_directions():
    """Against 4,000 directions spread over the sphere."""
    random = np.random.RandomState(7)
    count, many = 60, 4000
    axes = random.normal(size=(2 * count, 3))
    axes /= norms(axes)[:, None]
    made = [Cylinders(random.uniform(-4, 4, (count, 3)), axes[i::2], random.uniform(3, 20, count),
                      random.uniform(1, 6, count)) for i in (0, 1)]
    found = gaps(*made)
    k = np.arange(many) + 0.5
    z, turn = 1 - 2 * k / many, k * math.pi * (3 - math.sqrt(5))
    ball = np.stack([np.sqrt(1 - z * z) * np.cos(turn), np.sqrt(1 - z * z) * np.sin(turn), z], axis=1)
    overlapping = np.flatnonzero(found.distance < 0)
    assert len(overlapping) > 20
    for i in overlapping:
        a, b = (one.pick(np.full(many, i)) for one in made)
        assert -found.distance[i] <= (a.support(-ball) + b.support(ball)).min() + 1e-9


def test_boxes_hold_the_cylinder_and_touch_it():
    tilted = one((1, 2, 3), (0.6, 0.0, 0.8), 10, 2)
    low, high = tilted.boxes()
    assert low[0] == pytest.approx([1 - 1.6, 0, 3 - 1.2])
    assert high[0] == pytest.approx([7 + 1.6, 4, 11 + 1.2])
