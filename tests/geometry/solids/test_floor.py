"""A level drilling below the floor of a blind slot: by hand, and against cylinders standing in the slot."""

import math
import random

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from geometry.layout.slots import straight_path
from geometry.solids import floor
from geometry.solids.cylinders import Cylinders
from geometry.solids.distance import gaps
from geometry.solids.drilling import Drilling
from geometry.solids.floor import floor_gap
from geometry.solids.walls import Wall

SLOT = Wall(straight_path((0.0, 0.0), (0.0, 100.0), 12.0))


def level(x, y, turn=0.0, depth=30.0, radius=3.0):
    """A drilling on its way along `turn` rad from +x."""
    return Drilling("d", "h", "t", "post", "post bore", 2 * radius, (x, y, 10.0), (math.cos(turn), math.sin(turn), 0.0),
                    depth, False, "treble edge", "brad", None, depth)


@pytest.mark.parametrize(("drilling", "height", "expected"), [
    # Right below the slot: the floor less the radius; through the floor where that is negative.
    (level(-20.0, 50.0), 5.0, 2.0), (level(-20.0, 50.0), 2.0, -1.0),
    # Ends 4 mm before the wall at x = 6: hypot(4, 5 - 3) from the rim of its end.
    (level(40.0, 50.0, math.pi), 5.0, math.hypot(4.0, 2.0)),
    # Runs beside the slot at x = 10: hypot(4, 3) to the axis.
    (level(10.0, 20.0, math.pi / 2), 3.0, 5.0 - 3.0),
    # Rises above the floor's level, but beside the slot: the lateral gap alone.
    (level(40.0, 50.0, math.pi), 2.0, 4.0)])
def test_by_hand(drilling, height, expected):
    gap, _ = floor_gap(drilling, SLOT, height)
    assert gap == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize(("drilling", "place"), [(level(-20.0, 50.0), (-6.0, 50.0)), (level(40.0, 50.0, math.pi), (6.0, 50.0))])
def test_the_place_is_on_the_floor_over_the_axis_or_on_its_rim(drilling, place):
    """Where the axis first comes under it; and the wall that it ends before."""
    _, found = floor_gap(drilling, SLOT, 5.0)
    assert found == pytest.approx(place, abs=1e-6)


@given(st.floats(-30, 30), st.floats(-30, 130), st.floats(0, 6.28), st.floats(1, 40), st.floats(0.5, 5),
       st.floats(0.1, 8))
def test_the_floor_is_as_far_as_the_nearest_of_many_posts_that_fill_it(x, y, turn, depth, radius, height):
    """Discs of 6 mm, 0.5 mm apart along the slot, fill it from below; they are flat cylinders above the axis."""
    drilling = level(x, y, turn, depth, radius)
    gap, _ = floor_gap(drilling, SLOT, height)
    count = 201
    discs = Cylinders.made([((0.0, 0.5 * i, 0.0), (0.0, 0.0, 1.0), 10.0 - height, 6.0) for i in range(count)])
    bore = Cylinders.made([(drilling.start, drilling.direction, depth, radius)] * count)
    nearest = float(np.min(gaps(bore, discs).distance))
    if min(gap, nearest) > 0.01:
        # Between two discs the wall is up to 6 - sqrt(36 - 0.0625) = 0.0052 mm nearer than either.
        assert nearest - 0.0075 <= gap <= nearest + 1e-6
    else:
        assert nearest <= 0.02 and gap <= 0.02


@pytest.mark.parametrize("turn", [0.3, 0.5, 0.8, 1.1, 1.4])
def test_one_side_of_a_bores_end_that_rises_through_the_floor_counts_in_full(turn):
    """Its axis ends 0.5 mm before the wall x = -6, which crosses its end 0.5 / sin(turn) beside the axis: there it is deepest in the slot."""
    drilling = level(-6.5 - 20.0 * math.cos(turn), 50.0 - 20.0 * math.sin(turn), turn, 20.0, 4.0)
    gap, _ = floor_gap(drilling, SLOT, 1.0)
    assert gap == pytest.approx(math.hypot(0.5 / math.sin(turn), 1.0) - 4.0, abs=1e-9)


@pytest.mark.parametrize("ahead", [0.0, 3.0])
def test_few_chords_of_the_rim_are_searched_and_none_of_the_others_is_nearer(monkeypatch, ahead):
    """What a chord's ends tell rules out most; where the search is let loose on every chord it finds nothing less."""
    asked, least = [], floor._least
    monkeypatch.setattr(floor, "_least", lambda a, b, *others: asked.append((a, b)) or least(a, b, *others))
    chances, searched = random.Random(4), []
    for _ in range(60):
        drilling = level(chances.uniform(-30, 30), chances.uniform(-30, 130), chances.uniform(0, 6.28), chances.uniform(1, 40))
        height = chances.uniform(0.1, 8)
        asked.clear()
        gap, _ = floor_gap(drilling, SLOT, height, ahead)
        searched.append(len(asked))
        if asked:
            into = np.array(drilling.direction[:2])
            rim = (SLOT.points - drilling.start[:2]) @ np.array([into, (-into[1], into[0])]).T
            whole = min(least(a, b, height, drilling.radius, drilling.depth, ahead)[0] for a, b in zip(rim, rim[1:], strict=False))
            assert gap - 1e-12 <= whole <= gap + SLOT.sagitta + 1e-12
    assert 1 <= sum(searched) / len(searched) <= len(SLOT.points) / 12


@pytest.mark.parametrize(("before", "expected"), [
    # From the rim of its end, 3 below the floor's level and `before` mm before the wall, a cone goes 4 on and 3 down.
    (6.0, 5.2), (10.0, math.hypot(6.0, 5.0)), (0.5, math.hypot(0.5, 2.0))])
def test_a_drills_point_below_the_floor_is_as_far_as_its_cone(before, expected):
    gap, _ = floor_gap(level(-36.0 - before, 50.0), SLOT, 5.0, 4.0)
    assert gap == pytest.approx(expected, abs=1e-9)
