"""The best assignment against brute force and against an independent solver."""

import math
from itertools import combinations, permutations, product

import numpy as np
import pytest
import shapely
from hypothesis import Phase, assume, given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from scipy.optimize import linear_sum_assignment

from geometry.beginning import Numbers, mended
from geometry.beginning.instruments import usual
from geometry.checks import check
from geometry.edits.rows import make_row
from geometry.edits.strings import serve, set_post
from geometry.errors import GeometryError
from geometry.layout import Nut, Ramp, String
from geometry.solids.pins_along import pins_along
from geometry.strings.assignment import assign, whole_cost
from geometry.strings.pairing import present, propose_pairing
from geometry.strings.rubs import rubs_between
from geometry.strings.runs import cross, runs
from tests.geometry.checks.heads import FACE, SIDE, bore, face, head, pattern, side, slot
from tests.property.layouts import DEMO

TALL = pattern("face", "face", bore(), post=(6.0, 40.0, 20.0))
"""A post that is higher than any string over the face."""


UNSHRUNK = (Phase.explicit, Phase.generate)
"""Each way of serving the posts is checked: shrinking would take minutes."""


def strings(count):
    return tuple(String(id=str(i + 1), diameter=0.5, course=i + 1) for i in range(count))


def layout_of(places, count=None, **rest):
    tuners = tuple(face(f"t{i}", *at, string=str(i + 1) if count is None or i < count else None, winds="treble", **rest)
                   for i, at in enumerate(places))
    return head(tuners=tuners, patterns=(TALL,), strings=strings(count or len(places)), nut=Nut(spread=30.0))


RUBS = {"string-to-post", "string-to-string", "string-to-wall", "string-to-ramp", "string-to-nut-end", "string-to-screw"}

FREED = {"string-to-ramp", "string-to-nut-end"}
"""what another ramp cures"""


def judged(layout):
    """(snags of strings that run into something, that rub, that bend wide) as the checks have it; None where strings cross above the face."""
    every = check(layout).snags
    snags = [s for s in every if s.kind in RUBS]
    if any(" cross " in s.text for s in snags):
        return None
    return sum(s.measured < -1e-6 and s.kind not in FREED for s in snags), len(snags), sum(s.kind == "side-angle" for s in every)


def every_way(layout):
    """(the layout served so, how many posts are wound the other way, side angles) for every order of posts and every side."""
    count, ids = len(layout.strings), [s.id for s in layout.strings]
    for order in permutations(range(len(layout.tuners)), count):
        for sides in product(("bass", "treble"), repeat=count):
            way = {k: (ids[i], side) for i, (k, side) in enumerate(zip(order, sides, strict=True))}
            tuners = tuple(replace(t, string=way[k][0], winds=way[k][1]) if k in way else replace(t, string=None)
                           for k, t in enumerate(layout.tuners))
            made = replace(layout, tuners=tuners)
            found = runs(made)
            if len(found) == count:
                yield (made, sum(a.winds != b.winds for a, b in zip(tuners, layout.tuners, strict=True)),
                       sum(cross(a, b) for a, b in combinations(found, 2)), sum(run.side_angle ** 2 for run in found))


def held_to_the_checks(layout):
    """A proposal rubs nowhere and bends nothing wide where some way of serving the posts does so, and is the least odd and the straightest
    of those; it runs into nothing where that can be."""
    ways = [(judged(made), turned + crossed, total) for made, turned, crossed, total in every_way(layout)]
    possible = [way for way in ways if way[0] is not None]
    if not possible:
        with pytest.raises(GeometryError, match="crossing"):
            propose_pairing(layout)
        return
    found = propose_pairing(layout)
    made = serve(layout, found.runs, found.winds)
    now = judged(made)
    assert found.proven and now is not None
    sound = [(odd, total) for rubs, odd, total in possible if rubs == (0, 0, 0)]
    assert (found.rubbing == 0) == (now[1] == 0)
    if sound:
        assert now == (0, 0, 0)
        turned = sum(a.winds != b.winds for a, b in zip(made.tuners, layout.tuners, strict=True))
        odd, total = min(sound)
        assert turned + found.crossings == odd and found.total == pytest.approx(total, abs=2e-6)
    elif min(rubs[0] for rubs, *_ in possible) == 0:
        assert now[0] == 0


@settings(max_examples=25, phases=UNSHRUNK)
@given(st.lists(st.tuples(st.integers(-14, 14), st.integers(25, 90)), min_size=3, max_size=3, unique=True), st.floats(6.0, 20.0))
def test_against_every_order_and_every_side(places, spread):
    """Judged by the checks, each way by itself: low posts and high ones, near each other and near the strings' ways."""
    assume(min(math.dist(a, b) for a, b in combinations(places, 2)) > 7.0)
    held_to_the_checks(replace(layout_of(places), nut=Nut(spread=spread)))


@settings(max_examples=8, phases=UNSHRUNK)
@given(st.lists(st.integers(70, 140), min_size=2, max_size=2, unique=True), st.integers(-10, 10), st.floats(8.0, 14.0), st.floats(10.0, 24.0))
def test_against_every_order_and_every_side_over_a_slot(alongs, x, width, spread):
    assume(abs(alongs[0] - alongs[1]) > 8)
    tuners = (*(side(f"s{i}", float(along)) for i, along in enumerate(alongs)), face("f", float(x) - 20.0, 80.0))
    held_to_the_checks(head(tuners=tuners, patterns=(FACE, SIDE), strings=strings(3), nut=Nut(spread=spread),
                            slots=(replace(slot(width=width, nut=50.0, tip=150.0), ramp=Ramp(length=25.0, depth=8.0)),)))


@settings(max_examples=40)
@given(st.integers(1, 4), st.integers(0, 1), st.integers(1, 2), st.floats(0.0, 1.0), st.integers(0, 10_000))
def test_any_costs_against_every_assignment(rows, more, ways, often, seed):
    """Of any table, with any cost of choices beside each other, some of which cannot be."""
    chance = np.random.default_rng(seed)
    shape = rows, rows + more, ways
    cost = chance.uniform(0, 1, shape)
    pairs = chance.choice([0.0, 0.3, 50.0, math.inf], shape + shape, p=[1 - often, often / 3, often / 3, often / 3])
    pairs = np.maximum(pairs, pairs.transpose(3, 4, 5, 0, 1, 2))
    options = [tuple(zip(columns, sides, strict=True)) for columns in permutations(range(rows + more), rows)
               for sides in product(range(ways), repeat=rows)]
    best = min(whole_cost(cost, lambda *at: pairs[at], option) for option in options)
    found, proven = assign(cost, lambda *at: pairs[at], lambda steps: None)
    assert proven and (found is None) == math.isinf(best)
    if found is not None:
        assert whole_cost(cost, lambda *at: pairs[at], found) == pytest.approx(best)
        assert assign(cost, lambda *at: pairs[at], lambda steps: None, options[0])[0] is not None


@settings(max_examples=40)
@given(st.integers(1, 9), st.integers(0, 3), st.integers(0, 10_000))
def test_without_clashes_against_another_solver(rows, more, seed):
    cost = np.random.default_rng(seed).uniform(0, 1, (rows, rows + more))
    found, proven = assign(cost[:, :, None], lambda *_: np.zeros((rows, rows + more, 1)), lambda steps: None)
    assert proven
    assert sum(cost[i, k] for i, (k, _) in enumerate(found)) == pytest.approx(cost[linear_sum_assignment(cost)].sum())


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


def near_each_other():
    """Level strings from x = -2 and 2, 0.5 thick: the first comes to x = -2 + 3.25 = 1.25 at y = 60, where the second, on its way to
    x = 5 - 3.25 = 1.75 at y = 100, is at 1.85: 0.6 between their middles, 0.1 of air. From the post there, which ends at 1, it has 0.6."""
    layout = layout_of([(-2.0, 60.0), (5.0, 100.0)])
    layout = replace(layout, nut=Nut(spread=4.0), tuners=(layout.tuners[0], replace(layout.tuners[1], winds="bass")))
    return replace(layout, nut=replace(layout.nut, height=runs(layout)[0].height))


def test_a_post_is_wound_the_other_way_where_strings_would_rub_on_each_other():
    layout = near_each_other()
    assert [s.text for s in check(layout).snags if s.kind in RUBS] == [
        "Strings 1 and 2 come within 0.10 mm of each other on their way to t0 and t1; 0.50 mm wanted."]
    assert present(layout).rubbing == 2
    found = propose_pairing(layout)
    made = serve(layout, found.runs, found.winds)
    assert judged(made)[:2] == (0, 0) and found.rubbing == 0
    # The other post would do as well, but its string would bend aside from 2 to 8.25.
    assert [(t.string, t.winds) for t in made.tuners] == [("1", "bass"), ("2", "bass")]


def test_a_post_is_not_wound_the_other_way_for_one_note_in_place_of_another():
    """Both leave the nut gently; round the other sides of their posts they would by 10.9 and 11.1 degrees: -2 to -4.5 - 3.25 on 30,
    2 to -6.55 - 3.25 on 60."""
    layout = layout_of([(-4.5, 30.0), (-6.55, 60.0)])
    layout = replace(layout, nut=Nut(spread=4.0, height=near_each_other().nut.height))
    assert [s.kind for s in check(layout).snags if s.kind in RUBS] == ["string-to-string"]
    found = propose_pairing(layout)
    assert found.proven and serve(layout, found.runs, found.winds) == layout


def test_a_post_is_wound_where_its_string_lacks_least_over_the_nut_end():
    """Over the post it has 0.23 mm of air over the ramp, under the post it goes 1.89 mm into it: both lack some of the 0.5."""
    under, over = (head(tuners=(replace(side("s", 70.0), string="1", winds=winds),), patterns=(SIDE,), strings=strings(1), nut=Nut(),
                        slots=(replace(slot(width=14.0, nut=50.0, tip=150.0), ramp=Ramp(length=12.0, depth=3.0)),))
                   for winds in ("treble", "bass"))
    assert [s.measured for layout in (under, over) for s in check(layout).snags if s.kind in RUBS] == pytest.approx([-1.885, 0.230], abs=1e-3)
    for layout in (under, over):
        found = propose_pairing(layout)
        assert found.winds == ("bass",) and found.rubbing == 1 and found.proven


def test_strings_of_one_course_want_no_more_than_not_to_touch():
    """The thickest pair of a mandolin whose posts follow the edge has less than 0.3 mm of air where it comes to its first post. As strings
    of two courses they would want 0.5, and where they touch it is told of a pair too."""
    layout = mended(usual("mandolin"))[1]
    layout = pins_along(layout, make_row(layout, (tuner.id for tuner in layout.tuners if tuner.id.startswith("bass"))))
    one, two = (run for run in runs(layout) if run.string in ("8", "7"))
    assert rubs_between([(one, two)], 0.5) == [(False, False)]
    assert rubs_between([(one, replace(two, course=2))], 0.5) == [(True, False)]
    assert not check(layout).snags
    near = replace(layout, nut=replace(layout.nut, pair=1.1))
    found = [s for s in check(near).snags if s.kind == "string-to-string"]
    assert [s.grade for s in found] == ["tight"] and found[0].measured < 0 and "into each other" in found[0].text


def test_held_posts_stay_wound():
    layout = near_each_other()
    layout = replace(layout, tuners=(replace(layout.tuners[0], held=True), layout.tuners[1]))
    found = propose_pairing(layout)
    made = serve(layout, found.runs, found.winds)
    assert made.tuners[0] == layout.tuners[0] and judged(made)[:2] == (0, 0)
    assert [(t.string, t.winds) for t in made.tuners] == [("1", "treble"), ("2", "treble")]


def test_strings_pass_each_other_down_in_a_slot_where_nothing_else_is_sound():
    """Of six strings a side, face and side in turn, some cross those beside them under the face, with air between them."""
    layout = mended(Numbers(6, 6, "mixed", "mixed", 26, courses=True, nut_width=48))[1]
    found = propose_pairing(layout)
    assert present(layout).rubbing == found.rubbing == 0 and found.total <= present(layout).total


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
