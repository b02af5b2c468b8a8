"""Depth of overlap: the same least shift that an independent search finds, proved for shapes that could go wrong."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import minimize

from geometry.solids.cylinders import Cylinders, norms
from geometry.solids.distance import gaps
from geometry.solids.distance_depth import escapes
from geometry.solids.distance_proof import AGREE

UP, OUT = (0.0, 0.0, 1.0), (1.0, 0.0, 0.0)
_k = np.arange(1500) + 0.5
_turn, _z = _k * math.pi * (3 - math.sqrt(5)), 1 - 2 * _k / len(_k)
BALL = np.stack([np.sqrt(1 - _z * _z) * np.cos(_turn), np.sqrt(1 - _z * _z) * np.sin(_turn), _z], axis=1)


def leaning(angle, about=0.0):
    return (math.sin(angle) * math.cos(about), math.sin(angle) * math.sin(about), math.cos(angle))


def searched(a, b):
    """The least shift by another library's search from the best of many directions."""
    def shift(n):
        n = np.atleast_2d(n)
        n = n / norms(n)[:, None]
        many = [one.pick(np.zeros(len(n), dtype=int)) for one in (a, b)]
        return many[0].support(-n) + many[1].support(n)
    starts = BALL[np.argsort(shift(BALL))[:4]]
    return min(minimize(lambda n: float(shift(n)[0]), start, method="Nelder-Mead",
                        options={"xatol": 1e-8, "fatol": 1e-8}).fun for start in starts)


BORE = ((0.0, 0.0, 0.0), UP, 16.0, 4.0)
PAIRS = {
    "nested, both axes level": (((-20.0, 0.0, 8.0), OUT, 40.0, 5.0), ((-3.0, 0.5, 8.2), OUT, 4.0, 1.0)),
    "nested, askew": (((-20.0, 0.0, 8.0), OUT, 40.0, 5.0), ((0.0, 0.5, 8.2), leaning(0.7, 0.4), 3.0, 0.8)),
    "stepped: a counterbore over its bore": (BORE, ((0.0, 0.0, 0.0), UP, 6.0, 7.0)),
    "stepped, the axes not quite one": (BORE, ((0.01, 0.0, 0.0), leaning(1e-4, 1.0), 6.0, 7.0)),
    "end on: a level bore stops inside an upright one": (BORE, ((-20.0, 0.0, 8.0), OUT, 17.5, 3.0)),
    "end on, off the middle": (BORE, ((-20.0, 2.5, 13.5), OUT, 18.0, 3.0)),
    "end to end on one axis": (BORE, ((0.0, 0.0, 15.4), UP, 9.0, 4.0)),
    "end to end, a hair off parallel": (BORE, ((0.5, 0.0, 15.4), leaning(3e-3), 9.0, 4.0)),
    "one axis, one length": (BORE, BORE),
    "coaxial, one leaning a little": (BORE, ((0.0, 0.0, -2.0), leaning(0.02), 20.0, 2.0)),
    "through each other at the middle": (BORE, ((-20.0, 0.0, 8.0), OUT, 40.0, 3.0)),
    "across the rim": (BORE, ((2.0, 2.0, 14.0), leaning(0.9, 0.7), 10.0, 2.0)),
    "rim into rim, barely": (BORE, ((5.2, 0.0, 15.0), leaning(0.6, 0.0), 8.0, 2.0)),
    "a disc in a flank": (BORE, ((3.0, 0.0, 5.0), leaning(1.2, 2.0), 0.4, 5.0)),
    "opposite ways on one axis": (BORE, ((0.0, 0.0, 20.0), (0.0, 0.0, -1.0), 10.0, 2.0)),
}


@pytest.mark.parametrize(("first", "second"), PAIRS.values(), ids=PAIRS)
def test_against_another_search(first, second):
    a, b = Cylinders.made([first]), Cylinders.made([second])
    (depth,), way = escapes(a, b)
    assert norms(way)[0] == pytest.approx(1.0)
    assert depth == pytest.approx((a.support(-way) + b.support(way))[0], abs=1e-12)
    assert depth <= searched(a, b) + AGREE
    # Shifted by it the two just touch.
    parted = gaps(a.moved(way * (depth + 0.05)), b).distance[0]
    assert 0.05 - 2e-3 <= parted <= 0.05 + AGREE


_number = st.floats(-5, 5)
_lean = st.one_of(st.sampled_from([0.0, math.pi / 2, 1e-9, 1e-6, 1e-3]), st.floats(0, math.pi))
_cylinder = st.tuples(st.tuples(_number, _number, _number), st.builds(leaning, _lean, st.floats(0, 6.3)),
                      st.floats(0.5, 20), st.floats(0.5, 8))


@given(_cylinder, _cylinder)
def test_no_direction_of_many_is_better(first, second):
    a, b = Cylinders.made([first]), Cylinders.made([second])
    if gaps(a, b).distance[0] < 0:
        (depth,), _ = escapes(a, b)
        many = [one.pick(np.zeros(len(BALL), dtype=int)) for one in (a, b)]
        assert depth <= (many[0].support(-BALL) + many[1].support(BALL)).min() + AGREE


def _crowd(count=40):
    random = np.random.RandomState(11)
    axes = random.normal(size=(2 * count, 3))
    axes[::3] = UP
    axes /= norms(axes)[:, None]
    return [Cylinders(random.uniform(-3, 3, (count, 3)), axes[i::2], random.uniform(4, 20, count),
                      random.uniform(1, 6, count)) for i in (0, 1)]


def test_the_same_alone_as_in_company_and_either_way_round():
    """What is kept of one check is used in the next beside other pairs: not a bit may change."""
    a, b = _crowd()
    together, ways = escapes(a, b)
    for i in range(len(a)):
        one, two = (part.pick(np.array([i])) for part in (a, b))
        alone, way = escapes(one, two)
        assert alone[0] == together[i] and (way[0] == ways[i]).all()
        back, other = escapes(two, one)
        assert back[0] == alone[0] and (other == -way).all()
