"""The point of a level drilling in plan, and what it leaves beside a wall, by hand."""

import pytest
from msgspec.structs import replace

from geometry.checks.drill_points import beside
from geometry.layout.slots import slot_path
from geometry.solids import holes
from geometry.solids.pointed import level_tip, too_long
from geometry.solids.walls import Wall
from tests.geometry.checks.heads import SIDE, drawn, head, side

LEVEL = replace(holes(head(tuners=(side("a", 90.0),), patterns=(SIDE,)))[0].drillings[0], start=(0.0, 0.0, 8.0), direction=(1.0, 0.0, 0.0),
                depth=10.0, diameter=6.0)
"""Along x from the origin, 10 deep and 6 wide."""
WALL = Wall(slot_path(drawn("slot", (-20.0, 5.0), (50.0, 5.0), (50.0, 15.0), (-20.0, 15.0))))
"""Of a slot that runs along beside it from y = 5 on."""


def test_rim_and_point_lie_a_radius_beside_and_the_points_length_beyond_the_end():
    one, point, two = level_tip(replace(LEVEL, direction=(0.6, 0.8, 0.0)), 2.0)
    assert (one, point, two) == (pytest.approx((8.4, 6.2)), pytest.approx((7.2, 9.6)), pytest.approx((3.6, 9.8)))


@pytest.mark.parametrize(("y", "gap"), [(0.0, 2.0), (1.5, 0.5), (2.0, 0.0)])
def test_beside_a_wall_the_rim_is_nearest(y, gap):
    assert beside(replace(LEVEL, start=(0.0, y, 8.0)), 2.0, WALL, WALL.area) == pytest.approx(gap)


@pytest.mark.parametrize(("y", "lacks"), [(2.0, 0.0), (3.5, 1.0), (5.0, 2.0)])
def test_a_point_that_is_in_a_slot_has_to_come_back_until_its_cone_is_out(y, lacks):
    """1.5 mm off the axis, half the radius, half of the point's length is cone: so much reaches past y = 5 from an axis at 3.5."""
    shifted = replace(LEVEL, start=(0.0, y, 8.0))
    assert too_long(shifted, 2.0, WALL.area)[0] == pytest.approx(lacks)
    assert beside(shifted, 2.0, WALL, WALL.area) == pytest.approx(-lacks)
