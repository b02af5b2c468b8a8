"""The best assignment against brute force and against an independent solver."""

import math
from itertools import combinations, permutations

import numpy as np
import pytest
import shapely
from hypothesis import assume, given, settings
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
from tests.geometry.checks.heads import bore, face, head, pattern
from tests.property.layouts import DEMO

TALL = pattern("face", "face", bore(), post=(6.0, 40.0, 20.0))
"""A post that is higher than any string over the face."""


def strings(count):
    return tuple(String(id=str(i + 1), diameter=0.5, course=i + 1) for i in range(count))


def layout_of(places, count=None, **rest):
    tuners = tuple(face(f"t{i}", *at, string=str(i + 1) if count is None or i < count else None, winds="treble", **rest)
                   for i, at in enumerate(places))
    return head(tuners=tuners, patterns=(TALL,), strings=strings(count or len(places)), nut=Nut(spread=30.0))


@settings(max_examples=40)
@given(st.lists(st.tuples(st.floats(-30, 30), st.floats(30, 160)), min_size=4, max_size=6, unique=True),
       st.integers(2, 4))
def test_against_every_order(places, count):
    assume(min(math.dist(a, b) for a, b in combinations(places, 2)) > 12.0)
    layout = layout_of(places, count)
    placed = frames(layout)
    xs = nut_places(layout.nut, layout.strings)
    table = [[run_to(t, placed[t.id], TALL.post, s, (x, 0.0), 6.0) for t in layout.tuners]
             for s, x in zip(layout.strings, xs, strict=True)]
    best = None
    for order in permutations(range(len(places)), count):
        made = [table[i][k] for i, k in enumerate(order)]
        if None not in made and Pairing(tuple(made), False).crossings == 0:
            past = [nearest(run, layout) for run in made]
            best = min(filter(None, (best, (sum(gap < -1e-5 for gap in past), sum(gap < layout.margins.string_air - 1e-5 for gap in past),
                                            sum(run.side_angle ** 2 for run in made)))))
    if best is None:
        with pytest.raises(GeometryError, match="crossing"):
            propose_pairing(layout)
        return
    found = propose_pairing(layout)
    assert found.proven and found.crossings == 0
    past = [nearest(run, layout) for run in found.runs]
    assert sum(gap < -1e-5 for gap in past) == best[0]
    assert found.rubbing == sum(gap < layout.margins.string_air - 1e-5 for gap in past) == best[1]
    assert found.total == pytest.approx(best[2])


def nearest(run, layout):
    """Air in plan from a string to the nearest post of another tuner: all posts are upright and higher than any string."""
    way = shapely.LineString([run.nut, run.post])
    return min(way.distance(shapely.Point(t.place.at)) - (TALL.post.diameter + run.diameter) / 2
               for t in layout.tuners if t.id != run.tuner)


def test_six_in_line_serve_the_nearest_posts_first():
    """Posts that lean away from the nut: by side angles alone the first string would run through two posts to the third."""
    layout = layout_of([(-11.2, 38.1), (-9.1, 63.0), (-6.1, 87.9), (-3.0, 112.8), (0.5, 137.7), (4.6, 162.6)])
    found = propose_pairing(replace(layout, nut=Nut(spread=35.2)))
    assert [run.tuner for run in found.runs] == ["t0", "t1", "t2", "t3", "t4", "t5"]
    # The second string passes the first post at x = -10.6 + 4.7 * 38.1 / 63 = -7.7; the post ends at -8.2, the string's skin at -8.
    assert found.rubbing == 1 and found.proven
    assert [nearest(run, layout) > 0.15 for run in found.runs] == [True] * 6


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
