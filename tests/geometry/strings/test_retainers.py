"""Strings under retainers, and posts measured on the loose part: by hand."""

import math

import pytest
from msgspec.structs import replace

from geometry.layout import Nut, Post, Retainer, SingleHole, String
from geometry.solids.frames import frames
from geometry.strings.past_posts import post_solids
from geometry.strings.retainers import break_over_nut, held
from geometry.strings.runs import runs
from tests.geometry.checks.heads import FACE, bore, face, head, pattern, side, slot

ONE = (String(id="1", diameter=1.0, course=1),)
LOOSE = replace(FACE, post=Post(diameter=6.0, length=36.0, string_hole=28.0, winding=22.0, measured="plate"))


def one_string(pattern=FACE, holes=(), **nut):
    """A string up the centreline, 100 mm to its post; where it comes off is the pattern's."""
    return head(tuners=(face("a", 3.5, 100.0, pattern, string="1", winds="bass"),), patterns=(pattern,), strings=ONE,
                nut=Nut(**nut), holes=holes)


def retainer(id="r", x=0.0, y=40.0, height=3.0, width=8.0):
    return SingleHole(id=id, at=(x, y), diameter=2.0, depth=9.0, retainer=Retainer(height=height, width=width))


def over_nut(layout):
    run, = runs(layout)
    return math.degrees(break_over_nut(layout, run))


@pytest.mark.parametrize(("wood", "above"), [(16.0, 6.0), (12.0, 10.0), (20.5, 1.5)])
def test_a_thicker_head_takes_from_what_a_loose_post_stands_out(wood, above):
    layout = one_string(LOOSE)
    layout = replace(layout, blank=replace(layout.blank, thickness=wood))
    run, = runs(layout)
    assert run.height == pytest.approx(above)
    solid = post_solids([(frames(layout)["a"], LOOSE.post)])
    assert solid.length[0] == pytest.approx(36.0 - wood) and tuple(solid.start[0]) == (3.5, 100.0, 0.0)


def test_a_post_measured_as_fitted_stands_out_alike_in_any_wood():
    layout = one_string(replace(FACE, post=replace(LOOSE.post, measured="face")))
    run, = runs(replace(layout, blank=replace(layout.blank, thickness=12.0)))
    assert run.height == 22.0


def test_without_turns_it_comes_out_of_the_hole():
    run, = runs(one_string(replace(FACE, post=replace(LOOSE.post, winding=None))))
    assert run.height == pytest.approx(12.0)


def test_over_the_nut_it_bends_towards_the_retainer():
    free = over_nut(one_string(LOOSE, height=9.0, pitch=2.0))
    assert free == pytest.approx(2.0 + math.degrees(math.atan2(3.0, 100.0)), abs=1e-6)  # 9 down to 6
    under = over_nut(one_string(LOOSE, (retainer(),), height=9.0, pitch=2.0))
    assert under == pytest.approx(2.0 + math.degrees(math.atan2(6.0, 40.0)))


def test_the_steepest_of_two_retainers_decides():
    nearer, farther = retainer("n", y=20.0, height=8.0), retainer("f", y=60.0, height=2.0)
    both = over_nut(one_string(LOOSE, (nearer, farther), height=9.0, pitch=0.0))
    assert both == pytest.approx(math.degrees(math.atan2(7.0, 60.0)))  # 1 on 20 is less


@pytest.mark.parametrize("hole", [retainer(x=4.01), retainer(height=7.9), retainer(y=100.0), retainer(y=-1.0),
                                  replace(retainer(), retainer=None)])
def test_none_holds_what_it_does_not_reach(hole):
    # 40 mm from the nut the string runs 9 - 0.4 * 3 = 7.8 above the face.
    layout = one_string(LOOSE, (hole,), height=9.0)
    assert list(held(runs(layout)[0], layout.holes)) == []


def test_at_its_end_it_still_holds():
    layout = one_string(LOOSE, (retainer(x=4.0, height=7.7),), height=9.0)
    one, = held(runs(layout)[0], layout.holes)
    assert (one.hole, one.far, one.height) == ("r", pytest.approx(40.0), 7.7)


def test_a_string_that_goes_down_into_a_slot_is_not_held():
    deep = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0))
    layout = head(tuners=(side("a", 90.0, deep, string="1", winds="bass"),), patterns=(deep,), slots=(slot(),), strings=ONE,
                  holes=(retainer(x=5.0, height=0.5, width=60.0),), nut=Nut(height=9.0))
    assert list(held(runs(layout)[0], layout.holes)) == []
