"""The best assignment against brute force and against an independent solver."""

import math
from itertools import permutations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from scipy.optimize import linear_sum_assignment

from geometry.edits.strings import serve, set_post
from geometry.errors import GeometryError
from geometry.layout import Nut, String
from geometry.solids.frames import frames
from geometry.strings.nut import nut_places
from geometry.strings.pairing import Pairing, assign, cross, present, propose_pairing
from geometry.strings.runs import run_to
from tests.geometry.checks.heads import FACE, face, head
from tests.property.layouts import DEMO


def strings(count):
    return tuple(String(id=str(i + 1), diameter=0.5, course=i + 1) for i in range(count))


def layout_of(places, count=None, **rest):
    tuners = tuple(face(f"t{i}", *at, string=str(i + 1) if count is None or i < count else None, winds="treble", **rest)
                   for i, at in enumerate(places))
    return head(tuners=tuners, patterns=(FACE,), strings=strings(count or len(places)), nut=Nut(spread=30.0))


@settings(max_examples=40)
@given(st.lists(st.tuples(st.floats(-30, 30), st.floats(30, 160)), min_size=4, max_size=6, unique=True),
       st.integers(2, 4))
def test_against_every_order(places, count):
    layout = layout_of(places, count)
    placed = frames(layout)
    xs = nut_places(layout.nut, layout.strings)
    table = [[run_to(t, placed[t.id], FACE.post, s, x, 6.0) for t in layout.tuners]
             for s, x in zip(layout.strings, xs, strict=True)]
    least = math.inf
    for order in permutations(range(len(places)), count):
        made = [table[i][k] for i, k in enumerate(order)]
        if None not in made and Pairing(tuple(made), False).crossings == 0:
            least = min(least, sum(run.side_angle ** 2 for run in made))
    if math.isinf(least):
        with pytest.raises(GeometryError, match="crossing"):
            propose_pairing(layout)
        return
    found = propose_pairing(layout)
    assert found.proven and found.crossings == 0
    assert found.total == pytest.approx(least)


@settings(max_examples=40)
@given(st.integers(1, 9), st.integers(0, 3), st.integers(0, 10_000))
def test_without_clashes_against_another_solver(rows, more, seed):
    cost = np.random.default_rng(seed).uniform(0, 1, (rows, rows + more))
    found, proven = assign(cost.tolist(), [[0] * (rows + more) for _ in range(rows)])
    assert proven
    assert sum(cost[i, k] for i, k in enumerate(found)) == pytest.approx(cost[linear_sum_assignment(cost)].sum())


def test_two_crossed_strings_change_posts():
    layout = layout_of([(15.0, 100.0), (-15.0, 100.0)])
    assert present(layout).crossings == 1
    found = propose_pairing(layout)
    assert [(run.string, run.tuner) for run in found.runs] == [("1", "t1"), ("2", "t0")]
    made = serve(layout, found.runs)
    assert [t.string for t in made.tuners] == ["2", "1"] and present(made).crossings == 0


def test_held_posts_keep_their_strings():
    layout = layout_of([(15.0, 100.0), (-15.0, 100.0), (25.0, 140.0)])
    layout = replace(layout, tuners=(replace(layout.tuners[0], string="1", held=True),
                                     *(replace(t, string=None) for t in layout.tuners[1:])),
                     strings=strings(2))
    found = propose_pairing(layout)
    assert {run.string: run.tuner for run in found.runs} == {"1": "t0", "2": "t2"}


def test_the_demo_gains_and_is_quick():
    found = propose_pairing(DEMO)
    assert found.proven and found.crossings == 0
    assert found.total <= present(DEMO).total + 1e-12


def test_refusals():
    with pytest.raises(GeometryError, match="no strings"):
        propose_pairing(head())
    with pytest.raises(GeometryError, match="only 1 posts"):
        propose_pairing(replace(layout_of([(0.0, 90.0)]), strings=strings(2)))


def test_a_post_changed_by_hand_swaps_the_two():
    layout = layout_of([(-15.0, 100.0), (15.0, 100.0), (25.0, 140.0)], 2)
    assert [t.string for t in set_post(layout, "1", "t1").tuners] == ["2", "1", None]
    assert [t.string for t in set_post(layout, "1", "t2").tuners] == [None, "2", "1"]
    assert [t.string for t in set_post(layout, "1", None).tuners] == [None, "2", None]
    with pytest.raises(GeometryError):
        set_post(layout, "1", "elsewhere")


def test_crossing_needs_more_than_a_touch():
    one, two = present(layout_of([(-15.0, 100.0), (15.0, 100.0)])).runs
    assert not cross(one, two) and not cross(one, one)
