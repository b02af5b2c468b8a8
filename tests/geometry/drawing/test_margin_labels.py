"""Words beside a drawing never lie on each other and keep their order."""

from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LineString

from geometry.drawing import Cross, Disc, Label, Stroke
from geometry.drawing.margin_labels import LONGEST, Named, margin_labels, short_lines, spread


def test_levels_that_have_room_stay_where_they_are():
    assert spread([0.0, 5.0, 12.0], [4.0] * 3) == [0.0, 5.0, 12.0]


def test_crowded_levels_part_evenly_about_their_mean():
    assert spread([10.0, 10.0, 10.0], [4.0] * 3) == pytest.approx([6.0, 10.0, 14.0])
    assert spread([10.0, 10.0], [2.0, 6.0]) == pytest.approx([8.0, 12.0])


def test_nothing_to_spread():
    assert spread([], []) == []


@given(st.lists(st.floats(-300, 300), max_size=40).map(sorted), st.lists(st.floats(0.5, 8), min_size=40, max_size=40))
def test_spread_levels_keep_order_and_distance_and_centre(wanted, sizes):
    levels = spread(wanted, sizes[:len(wanted)])
    assert all(levels[i + 1] - levels[i] >= (sizes[i] + sizes[i + 1]) / 2 - 1e-9 for i in range(len(levels) - 1))
    assert sum(levels) == pytest.approx(sum(wanted), abs=1e-6 * (len(wanted) + 1))


def test_each_thing_is_named_on_its_nearer_side_with_a_leader_that_stops_at_its_rim():
    things = [Named((-10.0, 5.0), 3.0, ("left one",), "a"), Named((12.0, 8.0), 2.0, ("right", "one"), "b")]
    marks = margin_labels(things, -30.0, 30.0, 1.6, 0.0, 90.0)
    labels = {mark.text: mark for mark in marks if isinstance(mark, Label)}
    assert labels["left one"].anchor == "right" and labels["left one"].at[0] == -30.0
    assert labels["right"].anchor == "left" and labels["right"].at[1] > labels["one"].at[1]
    leaders = [mark.path for mark in marks if isinstance(mark, Stroke)]
    assert leaders[0].end == pytest.approx((-13.0, 5.0))
    assert leaders[1].end == pytest.approx((14.0, 8.0))


@pytest.mark.parametrize("n, on_left", [(20, 0), (27, 2), (60, 30)])
def test_of_a_column_higher_than_the_drawing_what_is_needed_goes_to_the_other_side(n, on_left):
    """Labels of one line take 4 mm: 25 of them make 100 mm. Those farthest left go."""
    things = [Named((20.0 + i, 50.0), 1.0, (f"dot {i}",), "a") for i in range(n)]
    labels = [mark for mark in margin_labels(things, -50.0, 90.0, 2.0, 0.0, 100.0) if isinstance(mark, Label)]
    assert {mark.text for mark in labels if mark.anchor == "right"} == {f"dot {i}" for i in range(on_left)} and len(labels) == n


def test_labels_stay_between_the_ends_of_the_drawing_where_they_fit():
    """Six lines of 4 mm about y = 5 would reach from -7 to 17."""
    assert spread([5.0] * 6, [4.0] * 6, 0.0, 90.0) == pytest.approx([2.0, 6.0, 10.0, 14.0, 18.0, 22.0])
    assert spread([85.0] * 6, [4.0] * 6, 0.0, 90.0) == pytest.approx([68.0, 72.0, 76.0, 80.0, 84.0, 88.0])
    assert spread([5.0] * 6, [4.0] * 6, 0.0, 20.0) == pytest.approx([-5.0, -1.0, 3.0, 7.0, 11.0, 15.0]), "more than fits stays at its mean"


def test_leaders_of_neighbours_do_not_cross():
    """Eight holes in two columns: the farther one of each row lies a little higher, its label is pushed past that of the nearer."""
    things = [Named((x, 40.0 + 3.0 * row + up), 1.0, (f"{row} {x}",), "a") for row in range(4) for x, up in ((-30.0, 0.0), (-5.0, 0.5))]
    leaders = [LineString([mark.path.start, mark.path.end]) for mark in margin_labels(things, -50.0, 90.0, 2.0, 0.0, 100.0) if isinstance(mark, Stroke)]
    assert len(leaders) == 8 and not any(a.crosses(b) for a, b in combinations(leaders, 2))


@pytest.mark.parametrize("words", ["abcdefghij klmnop 12 1 1/2\" through", 'abcdefghijklmnop qrstuv 8 mm', "abcdefghijklmnopqrs 24 000 x"])
def test_no_line_ends_within_a_number(words):
    lines = short_lines(words)
    assert " ".join(lines) == words and max(map(len, lines)) <= LONGEST and len(lines) > 1
    assert not any(line[-1].isdigit() and after.split()[0] in ('1/2"', "mm", "000") for line, after in pairwise(lines))


def test_a_leader_leaves_the_cross_of_another_hole_free():
    """A screw 20 mm behind a bore 0.3 mm lower: its leader would run past the middle of the bore's cross and be pricked there."""
    screw, bore = Cross((0.0, 50.0), 1.8, "cross"), Cross((-20.0, 49.7), 4.2, "cross")
    marks = margin_labels([Named((0.0, 50.0), 1.3, ("screw",), "a")], -40.0, 90.0, 2.0, 0.0, 100.0, (screw, bore))
    parts = [mark.path for mark in marks if isinstance(mark, Stroke)]
    assert len(parts) == 2 and parts[1].end == pytest.approx((-1.3, 50.0))
    assert parts[0].end[0] == pytest.approx(-22.0, abs=0.05) and parts[1].start[0] == pytest.approx(-18.0, abs=0.05)


def test_a_leader_is_interrupted_at_the_hole_of_another_and_not_at_its_own():
    """A screw 12 mm behind a post bore of 7: the leader comes on one side and goes on at the other."""
    screw, post = Disc((0.0, 50.0), 0.8, "screw pilot"), Disc((-12.0, 50.0), 3.5, "post bore")
    found = margin_labels([Named(screw.centre, 0.8, ("screw",), "a")], -40.0, 60.0, 2.0, 0.0, 100.0, (screw, post))
    pieces = sorted((mark.path.start[0], mark.path.end[0]) for mark in found if isinstance(mark, Stroke))
    assert pieces == [pytest.approx((-39.2, -16.1)), pytest.approx((-7.9, -0.8))]
