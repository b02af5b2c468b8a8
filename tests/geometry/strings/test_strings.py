"""Places at the nut, tangents to posts, side and break angles."""

import math
from types import SimpleNamespace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry import vectors as v
from geometry.layout import Nut, String
from geometry.strings import Run, break_angle, nut_places, runs
from geometry.strings.runs import cross, fall_for, tangent_point
from tests.geometry.checks.heads import (
    FACE,
    SIDE,
    bore,
    face,
    head,
    leaning,
    pattern,
    side,
    slot,
)


def strings(*diameters, pair=False):
    return tuple(String(id=str(i), diameter=d, course=i // 2 + 1 if pair else i + 1) for i, d in enumerate(diameters))


def test_equal_centres():
    places = nut_places(Nut(spread=36.0), strings(*[1.0] * 7))
    assert places == pytest.approx((-18.0, -12.0, -6.0, 0.0, 6.0, 12.0, 18.0))


def test_equal_gaps_leave_the_same_air_between_skins():
    made = strings(1.2, 0.9, 0.6, 0.4, 0.3, 0.25)
    places = nut_places(Nut(spread=36.0, spacing="gaps"), made)
    air = [b - a - (s.diameter + t.diameter) / 2
           for a, b, s, t in zip(places, places[1:], made, made[1:], strict=False)]
    assert air == pytest.approx([air[0]] * 5)
    assert (places[0], places[-1]) == pytest.approx((-18.0, 18.0))


@pytest.mark.parametrize("spacing", ["centres", "gaps"])
def test_courses_stand_a_pair_apart(spacing):
    places = nut_places(Nut(spread=40.0, pair=2.2, spacing=spacing), strings(*[0.5] * 12, pair=True))
    assert [b - a for a, b in zip(places[::2], places[1::2], strict=True)] == pytest.approx([2.2] * 6)
    assert (places[0], places[-1]) == pytest.approx((-20.0, 20.0))
    steps = [b - a for a, b in zip(places[::2], places[2::2], strict=False)]
    assert steps == pytest.approx([steps[0]] * 5)


def test_one_string_and_none():
    assert nut_places(Nut(), strings(1.0)) == (0.0,)
    assert nut_places(Nut(), ()) == ()
    assert nut_places(Nut(pair=2.0), strings(1.0, 1.0, pair=True)) == (-1.0, 1.0)


@given(st.floats(-40, 40), st.floats(20, 150), st.floats(0.5, 6), st.booleans())
def test_a_tangent_touches_the_post_square_to_its_radius(x, y, radius, to_treble):
    start, centre = (3.0, 0.0), (x, y)
    touch = tangent_point(start, centre, radius, to_treble)
    assert v.distance(touch, centre) == pytest.approx(radius)
    assert v.dot(v.sub(touch, start), v.sub(touch, centre)) == pytest.approx(0.0, abs=1e-6)
    # The post lies to the left of a string that passes it on its treble side.
    assert (v.cross(v.sub(touch, start), v.sub(centre, start)) > 0) == to_treble


def test_no_tangent_from_inside_the_post():
    assert tangent_point((0.0, 0.0), (1.0, 0.0), 2.0, True) is None
    assert tangent_point((0.0, 0.0), (0.0, 0.0), 0.0, True) is None


def test_runs_of_both_mounts():
    layout = head(tuners=(face("f", 0.0, 100.0, string="0", winds="bass"), side("s", 100.0, string="1", winds="bass")),
                  patterns=(FACE, SIDE), slots=(slot(),), nut=Nut(spread=10.0), strings=strings(1.0, 1.0))
    one, two = runs(layout)
    # The post has a radius of 3 and the string of 0.5; the nut places are -5 and 5.
    assert one.side_angle == pytest.approx(math.atan2(5.0, 100.0) - math.asin(3.5 / math.hypot(5.0, 100.0)))
    assert one.height == 26.0
    # Over the post: in the plane square to it the nut lies 100 mm off and 6 + 8 mm above the axis.
    lean = math.asin(3.5 / math.hypot(100.0, 14.0)) - math.atan2(14.0, 100.0)
    reach = math.sqrt(100.0 ** 2 + 14.0 ** 2 - 3.5 ** 2)
    assert two.post == pytest.approx((14.0, reach * math.cos(lean)))
    assert two.height == pytest.approx(6.0 + reach * math.sin(lean))
    assert two.side_angle == pytest.approx(math.atan2(9.0, reach * math.cos(lean)))


@given(st.floats(30, 170), st.floats(1, 20), st.floats(-15, 15), st.sampled_from(["bass", "treble"]), st.sampled_from([0.0, 7.0, -7.0]))
def test_a_string_touches_a_side_post_by_the_distance_of_two_skew_lines(along, high, spread, winds, degrees):
    """The edge leans in by some degrees, and the post leaves it square, 26 mm to its string hole."""
    of = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0))
    layout = head(tuners=(side("s", along, of, string="1", winds=winds),), patterns=(of,), outline=leaning(degrees),
                  nut=Nut(height=high, spread=abs(spread) + 1), strings=strings(1.0, 1.0))
    run, = runs(layout)
    way = np.array(run.end) - np.array(run.start)
    lean = math.radians(degrees)
    into = np.array((-math.cos(lean), -math.sin(lean), 0.0))
    normal = np.cross(way, into)
    axis = np.array((40.0 - along * math.sin(lean), along * math.cos(lean), 8.0)) + 26.0 * into
    assert abs((axis - run.start) @ normal) / np.linalg.norm(normal) == pytest.approx(3.5)
    assert (run.height > -8.0) == (winds == "bass")
    assert (run.end - axis) @ into == pytest.approx(0.0, abs=1e-9)


def test_a_post_that_stands_on_its_strings_place_at_the_nut_gives_no_run():
    """From 3.5 mm on, the radius of post and string together, there is one."""
    for y, count in ((0.0, 0), (3.4, 0), (3.6, 1)):
        layout = head(tuners=(face("f", 0.0, y, string="0"),), patterns=(FACE,), strings=strings(1.0))
        assert len(runs(layout)) == count


def test_a_tuner_without_a_string_has_no_run():
    assert runs(head(tuners=(face("f", 0.0, 100.0),), patterns=(FACE,), strings=strings(1.0))) == ()


def test_break_angle_adds_the_drop_to_the_pitch():
    run = Run("1", "a", (0.0, 0.0), (0.0, 100.0), 0.0, -4.0, 6.0)
    assert break_angle(run, Nut(pitch=13.0)) == pytest.approx(math.radians(13) + math.atan(0.1))


def turned_about(axis, angle, p):
    """A place turned about an axis through the origin, by the textbook formula of rotation."""
    k, p = np.array(axis) / np.linalg.norm(axis), np.array(p)
    return p * math.cos(angle) + np.cross(k, p) * math.sin(angle) + k * np.dot(k, p) * (1 - math.cos(angle))


@given(pitch=st.floats(0, 30), slant=st.floats(-30, 30), x=st.floats(-40, 40), y=st.floats(30, 200), drop=st.floats(-3, 18))
def test_over_a_slanted_nut_a_string_falls_as_its_way_does_on_the_head_folded_about_the_nut_line(pitch, slant, x, y, drop):
    """The face is turned about the nut line in space; how steep the string then leaves the plane of the neck is measured there."""
    nut = Nut(pitch=pitch, slant=slant)
    run = Run("1", "a", (0.0, 0.0), (x, y), math.atan2(x, y), 6.0 - drop, 6.0)
    end = turned_about((*nut.at(1.0), 0.0), math.radians(pitch), (x, y, drop))
    assert break_angle(run, nut) == pytest.approx(math.asin(end[2] / np.linalg.norm(end)), abs=1e-9)


def test_a_nut_slanted_by_thirty_degrees_takes_two_degrees_from_the_pitch():
    """sin = cos 30 sin 15, of a string that runs straight on and level with the face: 12.95 degrees, not 15."""
    run = Run("1", "a", (0.0, 0.0), (0.0, 100.0), 0.0, 6.0, 6.0)
    assert math.degrees(break_angle(run, Nut(pitch=15.0, slant=30.0))) == pytest.approx(12.952, abs=1e-3)


@given(pitch=st.floats(0, 20), slant=st.floats(-30, 30), x=st.floats(-20, 20), down=st.floats(1, 25))
def test_the_fall_for_a_break_angle_gives_it(pitch, slant, x, down):
    nut, way = Nut(pitch=pitch, slant=slant), math.atan2(x, 100.0)
    run = Run("1", "a", (0.0, 0.0), (x, 100.0), way, 6.0, 6.0)
    fall = fall_for(math.radians(down), run, nut)
    led = Run("1", "a", (0.0, 0.0), (x, 100.0), way, 6.0 - math.tan(fall) * run.length, 6.0)
    assert math.degrees(break_angle(led, nut)) == pytest.approx(down, abs=1e-9)


@pytest.mark.parametrize(("post", "crosses"), [((4.0, 50.0), False), ((-4.0, 50.0), True), ((0.0, 50.0), False)])
def test_runs_cross_where_each_parts_the_ends_of_the_other(post, crosses) -> None:
    """A long run along x = 0, and a short one from its treble side."""
    long, short = (SimpleNamespace(nut=a, post=b) for a, b in (((0.0, 0.0), (0.0, 100.0)), ((10.0, 40.0), post)))
    beyond = SimpleNamespace(nut=(10.0, 140.0), post=(-10.0, 140.0))
    assert cross(long, short) is cross(short, long) is crosses
    assert not cross(long, beyond) and not cross(beyond, long)
