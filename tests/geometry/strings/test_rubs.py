"""Which strings need not be measured against each other: told by hand, and against the polygon library."""

import pytest
import shapely
from hypothesis import example, given
from hypothesis import strategies as st

from geometry.layout import SingleHole
from geometry.strings.rubs import screw_air, surely_apart
from geometry.strings.runs import Run
from geometry.tolerance import TOUCH


def run(nut, post, diameter=1.0, course=0, height=0.0, nut_height=0.0):
    return Run("s", "t", nut, post, 0.0, height, nut_height, diameter, course=course)


@pytest.mark.parametrize(("one", "two", "air", "apart"), [
    (run((0.0, 0.0), (0.0, 100.0)), run((5.0, 0.0), (5.0, 60.0)), 9.0, True),
    (run((0.0, 0.0), (-5.0, 100.0)), run((5.0, 0.0), (15.0, 60.0)), 9.0, True),
    # From 10 to 4 over 100: 4 less the two halves of 1 are 3, square to the slanting one 0.007 less.
    (run((0.0, 0.0), (0.0, 100.0)), run((10.0, 0.0), (4.0, 100.0)), 2.99, True),
    (run((0.0, 0.0), (0.0, 100.0)), run((10.0, 0.0), (4.0, 100.0)), 3.0, False),
    # Led on in line the longer one would come nearer: at the shorter one's end they are 7 apart.
    (run((0.0, 0.0), (0.0, 50.0)), run((10.0, 0.0), (4.0, 100.0)), 5.9, True),
    # They cross.
    (run((0.0, 0.0), (9.0, 100.0)), run((5.0, 0.0), (5.0, 100.0)), 0.0, False),
    # The slanting one runs 1 aside for each along, so that 4 at its end are 2.83.
    (run((0.0, 0.0), (0.0, 40.0)), run((44.0, 0.0), (4.0, 40.0)), 1.82, True),
    (run((0.0, 0.0), (0.0, 40.0)), run((44.0, 0.0), (4.0, 40.0)), 1.83, False),
    # Strings of one course want no air.
    (run((0.0, 0.0), (0.0, 100.0), course=2), run((3.0, 0.0), (1.2, 100.0), course=2), 9.0, True),
    (run((0.0, 0.0), (0.0, 100.0), course=2), run((3.0, 0.0), (1.2, 100.0), course=1), 9.0, False),
    # One ends before the other begins.
    (run((0.0, 0.0), (0.0, 4.0)), run((30.0, 5.0), (30.0, 100.0)), 0.0, False)])
def test_strings_that_draw_apart_or_stay_so_far_apart_need_no_measuring(one, two, air, apart):
    mirrored = [run((-own.nut[0], own.nut[1]), (-own.post[0], own.post[1]), own.diameter, own.course) for own in (one, two)]
    assert [surely_apart(one, two, air), surely_apart(two, one, air), surely_apart(*mirrored, air)] == [apart] * 3


_string = st.builds(run, st.tuples(st.floats(-20, 20), st.floats(-5, 5)), st.tuples(st.floats(-30, 30), st.floats(20, 150)), st.floats(0.2, 1.5))


@given(_string, _string, st.floats(0, 5))
@example(run((0.0, 0.0), (0.0, 100.0)), run((10.0, 5.0), (2.0, 90.0)), 1.0)
@example(run((0.0, 5.0), (3.0, 100.0)), run((10.0, 0.0), (16.0, 90.0)), 9.0)
def test_what_is_not_measured_has_its_air_or_what_the_nut_gives_it(one, two, air):
    """Seen on the face; two whose lines stay apart are nowhere nearer than where one of them leaves the nut, or have their air."""
    if surely_apart(one, two, air):
        lines = [shapely.LineString((own.nut, own.post)) for own in (one, two)]
        nearest = shapely.distance(*lines)
        at_nut = min(shapely.distance(shapely.Point(one.nut), lines[1]), shapely.distance(shapely.Point(two.nut), lines[0]))
        assert nearest - (one.diameter + two.diameter) / 2 >= air - 1e-9 or nearest >= at_nut - TOUCH


@pytest.mark.parametrize(("x", "y", "height", "air"), [
    # Up 2 at the nut, down 4 at a post 60 on: level with the face 20 on.
    (3.0, 20.0, 0.0, 2.0), (-3.0, 10.0, 1.0, 2.0), (4.0, 24.0, -0.4, 3.0), (3.0, 26.0, None, None), (0.0, -4.0, 2.0, 3.0)])
def test_the_screw_of_a_retainer_is_near_a_string_above_the_face_alone(x, y, height, air):
    told = screw_air(SingleHole(id="h", at=(x, y), diameter=1.0), run((0.0, 0.0), (0.0, 60.0), height=-4.0, nut_height=2.0))
    assert told == (None if air is None else (pytest.approx(air), pytest.approx((0.0, max(0.0, y))), pytest.approx(height)))
