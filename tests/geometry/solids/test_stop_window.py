"""Between which stops a side bore is through its rail and its drill's point clear of the slot's inner wall."""

import math

import pytest

from geometry.checks import check
from geometry.solids import side_bore
from tests.geometry.checks.heads import SIDE, bore, drawn, head, leaning, pattern, side, slot

POINT = 0.3 * 6.0
"""of the brad point in the rack of these heads, mm"""


def drilled(depth: float, post: float = 25.0, **rest):
    """A head with one side bore so deep from its seat."""
    of = pattern("of", "side", bore(surface="seat", depth=depth), post=(6.0, post, min(post, 26.0)))
    return head(tuners=(side("a", 90.0, of),), patterns=(of,), **{"slots": (slot(),), **rest})


def seat(degrees: float) -> float:
    """How far from the centreline the tuner sits where the edge leans inwards by that angle, mm."""
    return 40.0 - 90.0 * math.sin(math.radians(degrees))


def told(layout) -> set[str]:
    return {snag.kind for snag in check(layout).snags}


def test_square_to_edge_and_walls_it_is_rail_to_inner_wall_less_the_point():
    """The seat lies 10 in from the square edge, the slot from 20 to 32 farther in."""
    assert side_bore(drilled(25.0), "a").window == pytest.approx((10 + 20, 10 + 32 - POINT))


@pytest.mark.parametrize("degrees", [3.0, 8.0, 15.0])
def test_askew_to_the_walls_the_last_flank_is_through_and_the_point_comes_first(degrees):
    layout = drilled(25.0, outline=leaning(degrees), slots=(slot(x=seat(degrees) - 26.0),))
    found, lean = side_bore(layout, "a"), 3.0 * math.tan(math.radians(degrees))
    axis = (found.waste + found.crossing.enters, found.waste + found.crossing.leaves)
    assert found.window == pytest.approx((axis[0] + lean, axis[1] - max(POINT, lean)))


@pytest.mark.parametrize("shape", ["straight", "drawn"])
@pytest.mark.parametrize("degrees", [0.0, 6.0])
def test_the_checks_find_nothing_within_it_and_something_beyond_it(shape, degrees):
    x = seat(degrees)
    own = slot(x=x - 26.0) if shape == "straight" else drawn("slot", (x - 32, 60.0), (x - 18, 60.0), (x - 21, 150.0), (x - 34, 150.0))
    how = {"outline": leaning(degrees), "slots": (own,)}
    found = side_bore(drilled(25.0, **how), "a")
    low, high = (stop - found.waste for stop in found.window)
    for depth in (low, (low + high) / 2, high):
        assert not told(drilled(depth, post=23.0, **how)) & {"slot-not-reached", "point-to-wall"}
    assert "slot-not-reached" in told(drilled(low - 0.01, post=23.0, **how))
    assert "point-to-wall" in told(drilled(high + 0.01, post=23.0, **how))


def test_a_bore_that_goes_on_into_the_inner_wall_tells_how_deep_the_post_bears_there():
    deep, loose = side_bore(drilled(36.0, post=35.0), "a"), side_bore(drilled(36.0, post=30.0), "a")
    assert (deep.window, deep.bears) == (None, pytest.approx(3.0))
    assert (loose.window, loose.bears) == (None, 0.0)


@pytest.mark.parametrize(("room", "there"), [(0.05, False), (0.11, True)])
def test_room_that_nobody_could_set_a_stop_in_is_none(room, there):
    """Rounded up and down its ends would be told the wrong way round."""
    assert (side_bore(drilled(21.0, slots=(slot(width=POINT + room),)), "a").window is not None) == there


def test_without_a_slot_ahead_and_beside_the_end_of_one_there_is_none():
    assert side_bore(head(tuners=(side("a", 90.0),), patterns=(SIDE,)), "a").window is None
    assert side_bore(drilled(25.0, slots=(slot(nut=85.0, tip=85.0),)), "a").window is None


def test_other_slots_and_what_lies_nearer_or_farther_beside_its_own_wall_do_not_count():
    """A hook of the slot reaches beside the bore nearer to the edge; of two arms the nearer ends beside the bore, and the farther is not it."""
    hook = drawn("slot", (8.0, 60.0), (20.0, 60.0), (20.0, 100.0), (26.0, 100.0), (26.0, 91.0), (30.0, 91.0), (30.0, 106.0),
                 (20.0, 106.0), (20.0, 150.0), (8.0, 150.0))
    for slots in ((slot("other", x=-14.0), slot()), (hook,)):
        assert side_bore(drilled(25.0, slots=slots), "a").window == pytest.approx((30.0, 42.0 - POINT))
    arms = drawn("slot", (-10.0, 50.0), (20.0, 50.0), (20.0, 91.0), (8.0, 91.0), (8.0, 60.0), (0.0, 60.0), (0.0, 150.0), (-10.0, 150.0))
    assert side_bore(drilled(25.0, slots=(arms,)), "a").window is None
