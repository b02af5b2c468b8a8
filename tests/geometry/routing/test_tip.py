"""Bearings on the tip: a template below, or the wall that another bit has cut."""

import math

import pytest
from msgspec.structs import replace

from geometry.layout import Router
from geometry.routing.follower import follower_of
from geometry.routing.passes import Pass
from geometry.routing.refusal import Refusal
from geometry.routing.tip import finish, finishing_pass, template_below
from tests.geometry.routing.specimens import bit, job

OPEN = {"light": True, "entry": 14.0}


def tip(**k):
    return follower_of(bit(**({"cutter": 12, "cutting": 20, "out": 40, "bearing": "tip", "high": 5} | k)), None)


def test_one_pass_with_the_template_below():
    """Edges from -16 to +4, bearing 5 in a template of 6."""
    found = template_below(tip(), job(**OPEN))
    assert isinstance(found, Pass)
    assert (found.side, found.begins, found.ends, found.rubs_on, found.contact) == ("face", 0, 16, "template below", 5)


def test_beside_the_outline_there_is_always_room():
    assert isinstance(template_below(tip(), job(light=True, entry=math.inf, width=None)), Pass)


def test_a_router_that_does_not_plunge_so_far_is_named():
    shallow = replace(job(**OPEN), router=Router(plunge=18.0))
    found = template_below(tip(out=40), shallow)
    assert isinstance(found, Refusal) and "needs 21 mm under the base, and the router plunges only 18 mm" in found.reason


@pytest.mark.parametrize(("tool", "asked", "words"), [
    ({}, {"depth": 9.0, **OPEN}, "off the floor of a blind slot"),
    ({}, {"light": True, "entry": 0.0}, "no drill of the rack opens the waste"),
    ({}, {"light": True, "entry": 11.0}, "12 mm does not go into a hole of 11 mm"),
    ({"ring": 8.0}, {"light": True, "entry": 11.0}, "12 mm does not go into a hole of 11 mm"),
    ({"ring": 16.0}, {"light": True, "entry": 14.0}, "16 mm does not go into a hole of 14 mm"),
    ({"cutting": 15}, OPEN, "whole 16 mm at once, and its cutting edges are 15 mm"),
    ({"cutter": 10}, OPEN, "the deepest pass that suits it is 15 mm"),
    ({"out": 20}, OPEN, "needs 21 mm under the base, and it stands only 20 mm out of it"),
    ({"high": 2}, OPEN, "Only 2 mm of its bearing would rub"),
])
def test_what_it_cannot_do(tool, asked, words):
    found = template_below(tip(**tool), job(**asked))
    assert isinstance(found, Refusal) and words in found.reason


@pytest.mark.parametrize(("tool", "asked"), [
    ({"high": 3}, {}), ({"cutting": 16}, {}), ({"out": 21}, {}), ({}, {"entry": 12.0}), ({"ring": 13.0}, {"entry": 13.0})])
def test_what_just_does_does(tool, asked):
    """3 mm of bearing rub, edges of 16 in wood of 16, 21 mm out of the base for 16 and a bearing of 5, a hole as wide as bit or bearing."""
    assert isinstance(template_below(tip(**tool), job(**(OPEN | asked))), Pass)


def test_finishing_on_the_cut_wall():
    """Wood 20, edges 14: 3 mm to rub and 1 mm past the seam ask for 4 mm cut, the edges for 20 + 1 - 14 = 7 mm."""
    asked = job(depth=20, thickness=20, **OPEN)
    assert finish(tip(cutting=14), asked) == (7, 20)
    done = finishing_pass(tip(cutting=14), asked, 7)
    assert (done.side, done.begins, done.ends, done.rubs_on, done.contact) == ("back", 0, 14, "wall already cut", 5)
    assert isinstance(finish(tip(high=3), asked), tuple), "just enough of its bearing rubs"
    assert finish(tip(cutting=40), asked)[0] == pytest.approx(4)
    assert finishing_pass(tip(cutting=40), asked, 4).contact == pytest.approx(3)


def test_finishing_ends_where_the_bit_ends():
    """Standing 15 mm out with a bearing of 5, 10 mm of reach are left: 11 mm have to be cut from the face."""
    assert finish(tip(out=15), job(depth=20, thickness=20, **OPEN)) == (11, 20)
    assert isinstance(finish(tip(out=5.5), job(depth=20, thickness=20, **OPEN)), Refusal)


def test_a_bearing_of_another_size_copies_nothing():
    found = finish(tip(ring=11), job(depth=20, thickness=20, **OPEN))
    assert isinstance(found, Refusal) and "differ in size" in found.reason


def test_a_bearing_lower_than_what_has_to_rub_guides_nothing():
    found = finish(tip(high=2.5), job(depth=20, thickness=20, **OPEN))
    assert isinstance(found, Refusal) and "is 2.5 mm high and 3 mm have to rub" in found.reason
    assert finish(tip(high=3), job(depth=20, thickness=20, **OPEN))[1] == 20


def test_how_far_below_the_base_it_is_set():
    """The base rests on the wood: 16 + 5 through it, as many as the refusal above asks for; finishing 14 + 5."""
    assert template_below(tip(), job(**OPEN)).below_base(6.0) == 21
    asked = job(depth=20, thickness=20, **OPEN)
    assert finishing_pass(tip(cutting=14), asked, 7).below_base(6.0) == 19
