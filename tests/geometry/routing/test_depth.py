"""How deep each kind of follower lets its cutter go: every rule with numbers worked out by hand."""

import math

import pytest

from geometry.errors import GeometryError
from geometry.layout import GuideBush
from geometry.routing.depth import contact, reach_of, step_of
from geometry.routing.follower import follower_of
from geometry.routing.refusal import Refusal
from tests.geometry.routing.specimens import BUSH, bit, job


def what(tool, bush=None, **asked):
    return reach_of(follower_of(tool, bush), job(**asked))


def test_a_bare_shank_thicker_than_its_cutter_stays_out_of_the_wood():
    """Template 12, cutting length 16: at 7 mm depth 9 mm of edge stand in the template and leave 3 mm of shank."""
    found = what(bit(cutter=6, cutting=16, shank=8), template=12)
    assert (found.least, found.most) == (7, 16)
    assert "8 mm shank is thicker" in found.binds
    assert found.on_wall == math.inf


def test_a_shank_as_thick_as_its_cutter_follows_the_wall_down_to_its_stick_out():
    found = what(bit(cutter=8, cutting=16, shank=8, out=34), template=12)
    assert (found.least, found.most, found.on_wall) == (7, 34 - 12, 19)
    assert "stands 34 mm out of the router" in found.binds


def test_a_shank_slimmer_than_its_cutter_must_have_its_edges_down_in_the_wood_first():
    """Offset (8 - 12) / 2: edges in the template would eat it, so the first pass is the whole cutting length."""
    found = what(bit(cutter=12, cutting=16, shank=8, out=40), template=6)
    assert (found.least, found.most) == (16, 34)


def test_a_bearing_on_the_shank_as_wide_as_its_cutter():
    """Height 5: contact is 5 at most; the last 3 of it rub on a 6 mm template from 13 mm depth on."""
    found = what(bit(cutter=12, cutting=16, bearing="shank", high=5, out=38))
    assert (found.least, found.most, found.on_wall) == (13, 32, 19)


def test_a_wider_bearing_stays_out_of_the_wood():
    found = what(bit(cutter=10, cutting=14, bearing="shank", ring=12.7, high=5), template=9)
    assert (found.least, found.most) == (8, 14)
    assert "bearing is wider" in found.binds


def test_a_slimmer_bearing_leaves_the_template_from_below():
    """Height 5, 3 have to rub: no more than 2 mm below the template."""
    found = what(bit(cutter=12, cutting=10, bearing="shank", ring=10, high=5))
    assert (found.least, found.most) == (10, 12)


def test_a_bush_rubs_at_any_depth_until_the_reach_ends():
    found = what(bit(cutter=8, cutting=25, shank=8, out=40), BUSH)
    assert (found.least, found.most) == (0, 34)
    found = what(bit(cutter=6, cutting=15, shank=8, out=40), BUSH)
    assert (found.least, found.most) == (0, 15)


def test_a_wide_bearing_on_the_shank_stays_out_of_the_wood_in_a_bush_too():
    """Cutting length 15: deeper down the ring of 12 would meet the wall of a cut 10 wide."""
    found = what(bit(cutter=10, cutting=15, shank=8, bearing="shank", ring=12, out=40), BUSH)
    assert (found.least, found.most) == (0, 15) and "bearing is wider" in found.binds
    assert what(bit(cutter=10, cutting=15, shank=8, bearing="shank", ring=10, out=40), BUSH).most == 34


def test_a_bearing_has_to_pass_its_bush():
    assert follower_of(bit(cutter=10, bearing="shank", ring=15), BUSH).diameter == BUSH.outer
    with pytest.raises(GeometryError, match="16 mm bearing does not pass through"):
        follower_of(bit(cutter=10, bearing="shank", ring=16), BUSH)


def test_the_plunge_of_the_router_ends_the_reach_too():
    found = what(bit(cutter=8, cutting=25, shank=8, out=90), BUSH)
    assert found.most == 60 - 6 and "plunges 60 mm" in found.binds


@pytest.mark.parametrize(("tool", "bush", "asked", "words"), [
    (bit(cutter=8), GuideBush(id="long", outer=17, inner=15, length=8), {}, "stands 8 mm out of the base"),
    (bit(cutter=8), GuideBush(id="low", outer=17, inner=15, length=2), {}, "Only 2 mm of low"),
    (bit(cutter=8), None, {"template": 2.5}, "template is 2.5 mm thick and 3 mm of the follower"),
    (bit(bearing="shank", high=2.5), None, {}, "bearing is 2.5 mm high and 3 mm have to rub"),
    (bit(cutter=6.35, shank=8, bearing="shank"), None, {}, "8 mm shank is thicker than its 6.35 mm bearing"),
])
def test_what_cannot_guide_is_refused_in_a_sentence(tool, bush, asked, words):
    found = what(tool, bush, **asked)
    assert isinstance(found, Refusal) and words in found.reason and found.reason.endswith(".")


@pytest.mark.parametrize(("cutter", "cutting", "light", "hard", "step"), [
    (12, 16, False, False, 12), (12, 8, False, False, 8), (12, 30, True, False, 18), (6, 20, False, False, 6),
    (6, 20, False, True, 3), (6, 20, True, True, 4.5), (8, 20, False, True, 8),
])
def test_a_pass_takes_one_diameter_of_solid_wood(cutter, cutting, light, hard, step):
    """1.5 diameters where the waste is out; half in hard wood under 8 mm; never more than the edges are long."""
    assert step_of(bit(cutter=cutter, cutting=cutting), job(light=light, hard=hard)) == pytest.approx(step)


def test_the_formula_of_the_contact_left():
    """t - max(0, L - d) for a shank above the edges: t 6, L 16, d 14 leaves 4."""
    follower = follower_of(bit(cutter=8, cutting=16, shank=8.5), None)
    for depth, left in ((8, 0), (10, 0), (13, 3), (14, 4), (16, 6)):
        assert contact(follower, depth, 6)[0] == pytest.approx(left)


def test_a_bearing_that_has_left_the_template_rubs_on_the_wall():
    """Cutting length 12, bearing 5, depth 15: 3 mm of the bearing below the surface, 2 above it."""
    follower = follower_of(bit(cutter=12, cutting=12, bearing="shank", high=5), None)
    assert contact(follower, 15, 6) == pytest.approx((2, 3))
    assert contact(follower, 20, 6) == pytest.approx((0, 5))
    wide = follower_of(bit(cutter=12, cutting=12, bearing="shank", ring=14, high=5), None)
    assert contact(wide, 15, 6)[1] == 0
