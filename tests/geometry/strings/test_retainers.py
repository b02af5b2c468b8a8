"""Strings under retainers, and posts measured on the loose part: by hand."""

import math

import numpy as np
import pytest
from msgspec.structs import replace

from geometry.checks import LiveCheck, check
from geometry.layout import Nut, Post, Retainer, SingleHole, String
from geometry.solids import holes
from geometry.solids.frames import frames
from geometry.strings import dives
from geometry.strings.past_posts import post_solids
from geometry.strings.retainers import passes
from geometry.strings.rubs import rubs_alone
from geometry.strings.runs import break_angle, runs
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
    return math.degrees(break_angle(run, layout.nut))


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
    assert runs(layout)[0].under == ()


def test_at_its_end_it_still_holds():
    layout = one_string(LOOSE, (retainer(x=4.0, height=7.7),), height=9.0)
    one, = runs(layout)[0].under
    assert (one.hole, one.far, one.height) == ("r", pytest.approx(40.0), 7.7)


def test_over_a_slanted_nut_it_is_as_far_from_where_the_string_crosses_that():
    """A string that crosses the nut 6 mm before the base line meets a retainer at 40 after 34 of its 94 mm along, wherever it comes from."""
    at, far = passes((-15.0, 6.0), (4.0, 100.0), 40.0)
    assert at == pytest.approx(-15.0 + 19.0 * 34.0 / 94.0) and far == pytest.approx(math.hypot(19.0, 94.0) * 34.0 / 94.0)
    assert passes((-15.0, 6.0), (4.0, 100.0), 5.0) is None


def test_of_several_screws_the_nearest_to_a_string_is_told():
    """The string runs 0 to 0.5 mm beside the axis of the head; pilots of 2 mm beside it and 12 mm off."""
    for screws, rubs in (((retainer("far", x=12.0),), False), ((retainer("far", x=12.0), retainer("near", x=1.0, y=60.0)), True)):
        layout = one_string(LOOSE, screws, height=9.0)
        ((near, into), _), = rubs_alone(layout, frames(layout), runs(layout))
        assert near == into == rubs


def test_seen_from_the_side_it_bends_up_at_each_that_it_presses_on():
    """9 at the nut, 6 at the post 100 mm on: 2 at 60 lies deepest, 6 at 20 still below the line to it, 5 at 80 above the line on from it."""
    holes = (retainer("c", y=80.0, height=5.0), retainer("b", y=60.0, height=2.0), retainer("a", y=20.0, height=6.0))
    run, = runs(one_string(LOOSE, holes, height=9.0))
    assert [(one.hole, round(one.far, 9)) for one in run.under] == [("a", 20.0), ("b", 60.0)]
    assert [run.level(far) for far in (0.0, 10.0, 20.0, 40.0, 60.0, 80.0, 100.0)] == pytest.approx([9.0, 7.5, 6.0, 4.0, 2.0, 4.0, 6.0])
    legs = run.legs
    assert [(leg.nut, leg.post) for leg in legs] == [((0.0, 0.0), pytest.approx((0.0, 20.0))), (pytest.approx((0.0, 20.0)), pytest.approx((0.0, 60.0))),
                                                     (pytest.approx((0.0, 60.0)), (0.0, 100.0))]
    assert [(leg.nut_height, leg.height) for leg in legs] == [(9.0, 6.0), (6.0, 2.0), (2.0, pytest.approx(6.0))]


def test_a_string_that_goes_down_into_a_slot_comes_from_its_retainer():
    """From 9 over the nut it is held 1 mm above the face 40 mm on; its tangent to the post 8 mm below the face begins there."""
    deep = pattern("of", "side", bore(surface="seat", depth=30.0), post=(6.0, 25.0, 26.0))
    layout = head(tuners=(side("a", 90.0, deep, string="1", winds="bass"),), patterns=(deep,), slots=(slot(),), strings=ONE,
                  nut=Nut(height=9.0))
    free, = runs(layout)
    under, = runs(replace(layout, holes=(retainer(x=5.0, height=1.0, width=60.0),)))
    assert free.under == () and len(under.under) == 1
    (y, z), r = (90.0, -8.0), 3.5
    lean, far = math.atan2(z - 1.0, y - 40.0), math.hypot(y - 40.0, z - 1.0)
    lean += math.asin(r / far)  # over the post: the tangent passes it on its upper side
    touch = math.sqrt(far * far - r * r)
    assert under.post[1] == pytest.approx(40.0 + touch * math.cos(lean), abs=1e-9)
    assert under.height == pytest.approx(1.0 + touch * math.sin(lean), abs=1e-9)
    into, = dives(replace(layout, holes=(retainer(x=5.0, height=1.0, width=60.0),)), layout.slots[0])
    assert into.slope == pytest.approx(-math.tan(lean) / math.hypot(1.0, (under.post[0] - under.nut[0]) / under.post[1]), rel=1e-6)
    assert into.at(under.under[0].far)[2] == pytest.approx(-1.0)
    assert -into.edge[2] < free.level(into.enters) - 1.0, "lower over the nut end than without"


def test_a_string_held_down_passes_a_post_that_it_would_pass_above():
    """Straight from 9 to 26 it passes 22 above the face over a post beside it that ends at 12; a retainer before it holds it at 3."""
    low = replace(FACE, id="low", post=Post(diameter=6.0, length=12.0, string_hole=8.0))
    layout = head(tuners=(face("a", 3.5, 150.0, FACE, string="1", winds="bass"), face("b", -3.4, 110.0, low)), patterns=(FACE, low),
                  strings=ONE, nut=Nut(height=9.0))
    held = replace(layout, holes=(retainer(y=90.0, height=3.0),))

    def told(of):
        return [snag.measured for snag in check(of).snags if snag.kind == "string-to-post"]
    run, = runs(held)
    assert run.level(110.0) < 12.0 < runs(layout)[0].level(110.0)
    assert told(layout) == [] and told(held) == [pytest.approx(3.4 - 3.0 - 0.5, abs=1e-9)]
    live = LiveCheck()
    live.check(layout)
    assert [snag.measured for snag in live.check(held).snags if snag.kind == "string-to-post"] == told(held)


def test_held_lower_than_both_its_ends_it_meets_what_lies_below_them():
    """A post that ends 4 above the face beside a string that comes from 9 and goes to 26: held at 2 right beside it, it rubs there."""
    low = replace(FACE, id="low", post=Post(diameter=6.0, length=4.0, string_hole=3.0))
    layout = head(tuners=(face("a", 3.5, 150.0, FACE, string="1", winds="bass"), face("b", -3.4, 75.0, low)), patterns=(FACE, low),
                  strings=ONE, nut=Nut(height=9.0), holes=(retainer(y=75.0, height=2.0),))
    assert [snag.measured for snag in check(layout).snags if snag.kind == "string-to-post"] == [pytest.approx(3.4 - 3.0 - 0.5)]


def test_two_strings_of_which_one_is_held_down_are_measured_on_their_legs():
    """They cross on the face at y = 50: one at its straight level, the other pressed to 3 there; sampled."""
    two = (String(id="1", diameter=1.0, course=1), String(id="2", diameter=0.6, course=2))
    tuners = (face("a", 20.0, 100.0, string="1", winds="bass"), face("b", -20.0, 100.0, string="2", winds="treble"))
    layout = head(tuners=tuners, patterns=(FACE,), strings=two, nut=Nut(spread=30.0, height=9.0))
    free = next(snag.measured for snag in check(layout).snags if snag.kind == "string-to-string")
    one = runs(layout)[0]
    hole = retainer(x=one.nut[0] + (one.post[0] - one.nut[0]) * 0.35, y=one.nut[1] + (one.post[1] - one.nut[1]) * 0.35, height=3.0, width=1.0)
    held = replace(layout, holes=(hole,))
    a, b = runs(held)
    assert a.under and not b.under

    def points(run):
        far = np.linspace(0.0, run.length, 4001)
        plan = np.array(run.nut) + np.outer(far / run.length, np.subtract(run.post, run.nut))
        return np.column_stack([plan, np.interp(far, *zip(*run.corners, strict=True))])
    least = min(float(np.linalg.norm(points(b) - p, axis=1).min()) for p in points(a)[::2])
    told = [snag for snag in check(held).snags if snag.kind == "string-to-string"]
    assert free < 0 and least > 2.0 and [snag.grade for snag in told] == ["note"], "they cross with air between them"
    near = replace(held, margins=replace(held.margins, string_air=least))
    told, = [snag.measured for snag in check(near).snags if snag.kind == "string-to-string"]
    assert told == pytest.approx(least - 0.8, abs=0.01)


def test_what_is_not_open_at_the_face_carries_none():
    at_back = replace(retainer(), surface="back")
    layout = one_string(LOOSE, (at_back,), height=9.0)
    assert runs(layout)[0].under == ()
    assert {snag.kind for snag in check(layout).snags if "r" in snag.between} >= {"retainer-no-hole"}
    assert runs(one_string(LOOSE, (replace(at_back, depth=None),), height=9.0))[0].under != ()


def test_its_screw_has_the_margins_of_a_pilot():
    """3.5 mm from the outline's edge at x = 40: a bore of 2 leaves 2.5 there, less than a bore wants and as much as a screw does."""
    hole = retainer(x=36.5)
    layout = one_string(FACE, (hole,), height=9.0)
    layout = replace(layout, margins=replace(layout.margins, bore_outline=4.0, screw_outline=2.5))
    assert not [snag for snag in check(layout).snags if set(snag.between) == {"r", "outline"}]
    plain = replace(layout, holes=(replace(hole, retainer=None),))
    assert [snag.measured for snag in check(plain).snags if set(snag.between) == {"r", "outline"}] == [pytest.approx(2.5)]
    drilling, = next(one for one in holes(layout) if one.id == "r").drillings
    assert (drilling.operation, drilling.drill) == ("screw pilot", "twist")
